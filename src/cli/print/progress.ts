/** Signs of life for work that takes longer than a moment: short lines on a terminal, and none in a log. */
import type { Progress } from '../../bridge';
import type { World } from '../world';

/** Nothing is told before this, nor more often, in milliseconds. */
const MOMENT = 500;

export function tellProgress(world: World, now: () => number = () => performance.now()): (progress: Progress) => void {
  if (!world.isWatched) return () => undefined;
  let next = now() + MOMENT;
  return ({ done, step }) => {
    if (now() < next || done >= 1) return;
    world.tell(`${String(Math.floor(done * 100)).padStart(3)} %  ${step}\n`);
    next = now() + MOMENT;
  };
}
