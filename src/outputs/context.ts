/** What every output is made from, and how a maker reports its progress and is stopped. */
import type { ExportOptions } from '../bridge';
import type { CutPlan } from '../core/cutting/plan';
import type { Job } from '../core/job/job';
import type { Layout } from '../core/layout/layout';
import type { Shelf } from '../core/shelf/shelf';
import type { Showing } from '../core/units';

/** The two weights of the one type family, as font files' bytes. */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export interface OutputContext {
  readonly job: Job;
  readonly layout: Layout;
  readonly plan: CutPlan;
  readonly showing: Showing;
  readonly options: ExportOptions;
  readonly fonts: Fonts;
  /** What the user has, for loads and prices; undefined where it was not given. */
  readonly shelf?: Shelf;
  /** Pictures' files as data URLs, by their index in the job; those without one are shown as cards. */
  readonly pictures: ReadonlyMap<number, string>;
}

export interface MakerHooks {
  /** Called with the part done, 0 to 1, and the step in words. */
  readonly onProgress?: (done: number, step: string) => void;
  readonly signal?: AbortSignal;
}

/** The job's title, or a word for one without. */
export function titleOf(context: OutputContext): string {
  return context.job.title.trim() === '' ? 'Untitled mat' : context.job.title;
}
