/** Opening jobs in tests the way the program does: written value -> job -> layout -> cut plan. */
import { planCuts } from '../../src/core/cutting/plan-cuts';
import type { CutPlan } from '../../src/core/cutting/plan';
import type { Job } from '../../src/core/job/job';
import { readJob } from '../../src/core/job/read';
import type { WrittenJob } from '../../src/core/job/written';
import { layOut } from '../../src/core/layout/lay-out';
import type { Layout } from '../../src/core/layout/layout';
import type { Problem } from '../../src/core/problem';

/** What a job file says besides its heading. */
export type Contents = Omit<WrittenJob, 'format' | 'version'>;

export interface Planned {
  readonly written: WrittenJob;
  readonly job: Job;
  readonly layout: Layout;
  readonly plan: CutPlan;
}

export function written(contents: Contents): WrittenJob {
  return { format: 'matwright-job', version: 1, ...contents };
}

/** Everything up to the cut plan; throws with the problems when there is no plan. */
export function planned(contents: Contents): Planned {
  const found = tryPlan(written(contents));
  if (!found.planned) throw new Error(found.problems.map(({ at, message }) => `${at}: ${message}`).join('\n'));
  return found.planned;
}

/** The plan, if there is one, and every problem that was said on the way. */
export function tryPlan(value: unknown): {
  readonly planned?: Planned;
  readonly problems: readonly Problem[];
} {
  const opened = readJob(value);
  if (!opened.ok) return { problems: opened.problems };
  const { job } = opened.value;
  const layout = layOut(job);
  const problems = [...opened.problems, ...layout.problems];
  if (!layout.ok) return { problems };
  return {
    planned: {
      written: opened.value.written,
      job,
      layout: layout.value,
      plan: planCuts(job, layout.value),
    },
    problems,
  };
}

/** The problems of a job by code. */
export function problemsOf(contents: Contents): readonly Problem[] {
  return tryPlan(written(contents)).problems;
}

/** The one problem of a kind; throws when it is not there. */
export function problemOf(contents: Contents, code: string): Problem {
  const problems = problemsOf(contents);
  const found = problems.find((problem) => problem.code === code);
  if (!found) throw new Error(`no ${code} among: ${problems.map((problem) => problem.code).join(', ') || 'none'}`);
  return found;
}
