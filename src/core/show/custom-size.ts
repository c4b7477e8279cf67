/** The smallest frame to be made for a picture that keeps its borders in range. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import { LARGEST } from '../job/reader';
import { SLACK } from '../layout/limits/slack';
import { showFor } from '../layout/show';
import { hiddenBorder } from '../layout/frame-sizes';
import { stepLength, showingOf } from '../units';
import type { Trial } from './trial';

/**
 * On the job's step, since that is how frames are ordered; off it only where the rule asks for a size of its own (four equal
 * borders, borders that are given). Undefined where no frame does: the range is narrower than the rule, say.
 *
 * @param job of the pattern.
 */
export function customSize(trial: Trial, job: Job): Size | undefined {
  const { natural } = trial;
  if (!natural) return undefined;
  const { borders, frame } = job;
  const around = 2 * (borders.range.least + (borders.measured === 'as seen' ? hiddenBorder(job) : 0));
  const exact = { width: natural.width + around, height: natural.height + around };
  const { stepUp } = showFor(job);
  const width = stepUp(exact.width);
  const height = leastHeight(trial, job, width, stepUp(exact.height));
  const ways = [height === undefined ? undefined : { width, height }, exact, trial.fitted(frame)];
  return ways.find((blank) => blank && isUsable(blank) && trial.suits({ ...frame, blank }));
}

function isUsable({ width, height }: Size): boolean {
  return width > 0 && height > 0 && width <= LARGEST && height <= LARGEST;
}

/** The first height from `start`, step by step, that leaves enough above and below: found by doubling, then by halving. */
function leastHeight(trial: Trial, job: Job, width: number, start: number): number | undefined {
  const step = stepLength(showingOf(job));
  const heightAt = (steps: number) => start + steps * step;
  const isEnough = (steps: number) => leavesEnough(trial, job, { width, height: heightAt(steps) });
  let [below, above] = [-1, 0];
  while (!isEnough(above)) {
    below = above;
    above = Math.max(1, 2 * above);
    if (heightAt(above) > LARGEST) return undefined;
  }
  while (above - below > 1) {
    const middle = Math.floor((below + above) / 2);
    if (isEnough(middle)) above = middle;
    else below = middle;
  }
  return heightAt(above);
}

function leavesEnough(trial: Trial, { frame, borders }: Job, blank: Size): boolean {
  const tried = trial.solved({ ...frame, blank });
  return tried.ok && Math.min(tried.borders.top, tried.borders.bottom) >= borders.range.least - SLACK;
}
