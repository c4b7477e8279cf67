/** Signs of life for work that takes longer than a moment: one passing line on a terminal, and nothing in a log. */
import type { Progress } from '../../bridge';
import type { World } from '../world';

/** Nothing is told before this, nor more often than the second, in milliseconds. */
const MOMENT = 300;
const BETWEEN = 100;

export type TellProgress = (progress: Progress) => void;

/** The line goes when all is done, or when anything else is said. */
export function tellProgress(world: World, now: () => number = () => performance.now()): TellProgress {
  if (!world.isWatched) return () => undefined;
  let next = now() + MOMENT;
  return ({ done, step }) => {
    if (done >= 1) world.passing.clear();
    else if (now() >= next) {
      world.passing.show(`${String(Math.floor(done * 100)).padStart(3)} %  ${step}`);
      next = now() + BETWEEN;
    }
  };
}

/** The same of work that can't say how far it is, before it begins. */
export function tellBeginning(world: World, step: string): void {
  if (world.isWatched) world.passing.show(`${step} …`);
}
