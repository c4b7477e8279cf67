/** A whole job turned or turned over is laid out as the same mat turned or turned over. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isError } from '../../../src/core/problem';
import { contents } from '../arbitrary-jobs';
import { tryPlan, written, type Contents, type Planned } from '../open';
import { TURNED_JOBS } from '../turned-jobs';
import { KINDS } from './for-all-jobs';
import { expectMoved, movable, plannedAfter, turned, WAYS } from './turn';

/** As near as two roads through doubles come, mm. */
const NEAR = 1e-9;
/** A border or a gap that had to be held is written to a millionth of a millimetre, or a hundred-millionth of an inch. */
const HELD = 3e-6;
/** Windows round a ring stand where a search ends, mm. */
const SEARCHED = 1e-6;

function nearOf(before: Planned, way: (typeof WAYS)[number]): number {
  const moved = turned(before, way);
  if (moved.problems.some(({ code }) => code === 'borders-held' || code === 'gaps-held')) return HELD;
  return JSON.stringify(before.written).includes('"ring"') ? SEARCHED : NEAR;
}

/** A sheet that can't be turned over with its window may then reach past the edge of the board, which is told. */
function reachesPast(before: Planned, way: (typeof WAYS)[number]): boolean {
  const moved = turned(before, way);
  const problems = moved.ok ? tryPlan(moved.value).problems.filter(isError) : [];
  return problems.length > 0 && problems.every(({ code }) => code === 'picture-larger-than-frame');
}

describe.each(TURNED_JOBS)('%s', (_, before) => {
  it.each(WAYS)('moved: %s', (way) => {
    const moved = turned(before, way);
    if (!moved.ok) return expect(moved.problems.map(({ code }) => code)).toContain('turn-of-baseline');
    expectMoved(before.layout, plannedAfter(before, way).layout, way, nearOf(before, way));
  });

  it('in four rotations, the last of them the first again', () => {
    if (!turned(before, 'left').ok) return;
    let [now, near] = [before, NEAR];
    for (let turn = 0; turn < 4; turn += 1) {
      near += nearOf(now, 'left');
      now = plannedAfter(now, 'left');
    }
    expectMoved(before.layout, plannedAfter(now, 'left').layout, 'left', near + HELD);
  });
});

describe.each(KINDS)('any job whose frame is %s', (kind) => {
  const jobs = contents(kind).map((job): Contents => ({ ...job, windows: job.windows && movable(job.windows) }));

  it.each(WAYS)('moved: %s', (way) => {
    fc.assert(
      fc.property(jobs, (job) => {
        const before = tryPlan(written(job)).planned;
        fc.pre(before !== undefined && !reachesPast(before, way));
        expectMoved(before.layout, plannedAfter(before, way).layout, way, nearOf(before, way));
      }),
      { numRuns: 40, maxSkipsPerRun: 5, endOnFailure: true },
    );
  });
});

it('a baseline and a grid that is not full are turned as far as they can be, or refused with what would do', () => {
  fc.assert(
    fc.property(contents('made to fit'), fc.constantFrom(...WAYS), (job, way) => {
      const before = tryPlan(written(job)).planned;
      fc.pre(before !== undefined && !reachesPast(before, way));
      const moved = turned(before, way);
      if (moved.ok) return expectMoved(before.layout, plannedAfter(before, way).layout, way, nearOf(before, way));
      const codes = new Set(moved.problems.filter(({ severity }) => severity === 'error').map(({ code }) => code));
      expect([...codes].every((code) => code === 'turn-of-baseline' || code === 'turn-of-unfilled-grid')).toBe(true);
    }),
    { numRuns: 60, maxSkipsPerRun: 5, endOnFailure: true },
  );
});
