/** Runs a property over random jobs that can be cut. */
import fc from 'fast-check';
import { contents, type Wanted } from '../arbitrary-jobs';
import { tryPlan, written, type Contents, type Planned } from '../open';

export const KINDS: readonly Wanted[] = ['made to fit', 'given', 'given, gaps take the rest'];

/** Nearly all of the random jobs can be cut; those that can't are passed over. */
export function forAllJobs(wanted: Wanted, property: (planned: Planned, job: Contents) => void, runs = 60): void {
  fc.assert(
    fc.property(contents(wanted), (job) => {
      const { planned } = tryPlan(written(job));
      fc.pre(planned !== undefined);
      property(planned, job);
    }),
    { numRuns: runs, maxSkipsPerRun: 3 },
  );
}

/** Millimetres to compare at: what doubles lose in a few sums, and nothing that could be seen. */
export const CLOSE = 1e-9;
