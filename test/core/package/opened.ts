/** Jobs of tests with their layout, with or without a mat. */
import type { Job } from '../../../src/core/job/job';
import type { Layout } from '../../../src/core/layout/layout';
import { fitOf, type Fit } from '../../../src/core/package/fit';
import { stackOf, type Stack } from '../../../src/core/package/stack';
import { planned, type Contents } from '../open';

export interface Opened {
  readonly job: Job;
  readonly layout: Layout;
}

export function opened(contents: Contents): Opened {
  const { job, layout } = planned(contents);
  return { job, layout };
}

/** The same with no layer of mat. */
export function withoutMat(contents: Contents): Opened {
  const { job, layout } = opened(contents);
  return { job: { ...job, layers: [] }, layout };
}

/** The same in a float frame, though the layout may say that it does not belong there. */
export function inFloatFrame({ job, layout }: Opened): Opened {
  return { job: { ...job, frame: { ...job.frame, build: 'float' } }, layout };
}

export function stackIn({ job, layout }: Opened): Stack {
  return stackOf(job, layout);
}

export function fitIn({ job, layout }: Opened): Fit {
  return fitOf(job, stackOf(job, layout));
}

/** Millimetres in inches, to a thousand millionth. */
export function inches(mm: number | undefined): number {
  return Math.round(((mm ?? NaN) / 25.4) * 1e9) / 1e9;
}

/** So thick and not varying, as measured. */
export function measured(thickness: string) {
  return { thickness, thinnest: thickness, thickest: thickness };
}
