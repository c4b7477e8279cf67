/** What to change where a package does not fit: every change is really made to the job and the stack worked out again. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Shelf } from '../shelf/shelf';
import { airOf } from './air';
import type { Change, Trouble } from './change';
import { fitOf } from './fit';
import { backingChange, glazingChanges, layerChange, spacerChange } from './change-package';
import { biggerRoom, builtUp, clipChange } from './change-frame';
import { leastLeft } from './groove-fit';
import { SLACK } from './range';
import type { Free } from './room';
import { stackOf } from './stack';

export interface Remedy extends Omit<Change, 'job'> {
  /** Room left then. */
  readonly free: Free;
  /** Wood left behind the back of a frame with grooves. */
  readonly behind?: Free;
  /** `sure`: it fits with all at its thickest. `as named`: if all is as thick as it is called. `not alone`: it helps. */
  readonly enough: 'sure' | 'as named' | 'not alone';
}

/** In the order in which one would think of them; nothing where the package fits, or its depth is not asked. */
export function remediesFor(job: Job, layout: Layout, shelf: Shelf): Remedy[] {
  const fit = fitOf(job, stackOf(job, layout));
  const { room, free } = fit;
  if (!room || !free || (fit.verdict !== 'may not fit' && fit.verdict !== 'does not fit')) return [];
  const trouble: Trouble = { job, layout, fit: { ...fit, room, free }, shelf };
  const changes = [
    ...backingChange(trouble),
    ...glazingChanges(trouble),
    ...spacerChange(trouble),
    ...layerChange(trouble),
    ...biggerRoom(trouble),
    ...builtUp(trouble),
    ...clipChange(trouble),
  ];
  return changes.flatMap((change) => tried(change, trouble));
}

/** The change made: nothing where it gains nothing, or where the picture would then have too little air. */
function tried({ job, ...change }: Change, { job: before, layout, fit }: Trouble): Remedy[] {
  const { free, behind, verdict } = fitOf(job, stackOf(job, layout));
  if (!free || isAirless(job, before, layout)) return [];
  const held = behind ? { behind } : {};
  if (leastLeft({ free, ...held }) <= leastLeft(fit) + SLACK) return [];
  const sure = verdict === 'fits' || verdict === 'held behind';
  return [{ ...change, free, ...held, enough: sure ? 'sure' : verdict === 'may not fit' ? 'as named' : 'not alone' }];
}

/** True where a picture then has less air than is published, and had enough before. */
function isAirless(job: Job, before: Job, layout: Layout): boolean {
  const had = airOf(before, layout);
  return airOf(job, layout).some(
    ({ lack }, place) => lack?.severity === 'warning' && lack.code !== had[place]?.lack?.code,
  );
}
