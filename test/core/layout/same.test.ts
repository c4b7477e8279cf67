/** What must not change a layout: the unit of display, or a blank made to fit and then given. */
import { describe, expect, it } from 'vitest';
import { SIDES, type Box } from '../../../src/core/geometry/box';
import { setAt } from '../../../src/core/job/edit';
import { tryPlan, written, type Planned } from '../open';
import { KINDS, forAllJobs } from './for-all-jobs';

/** As near as two roads through doubles come, mm. */
const NEAR = 1e-7;

function expectNear(one: Box | undefined, other: Box | undefined): void {
  for (const side of SIDES) expect(Math.abs((one?.[side] ?? NaN) - (other?.[side] ?? NaN))).toBeLessThan(NEAR);
}

function plannedOf(job: unknown): Planned {
  const { planned, problems } = tryPlan(job);
  if (!planned) throw new Error(problems.map(({ message }) => message).join('\n'));
  return planned;
}

describe.each(KINDS)('of jobs whose frame is %s', (kind) => {
  it('the unit and the step of display never change a cut', () => {
    forAllJobs(
      kind,
      ({ plan, layout }, job) => {
        for (const units of ['in', 'mm', 'cm'] as const) {
          for (const steps of [{}, { in: '1/64', mm: '0.1' }, { in: '1/8', mm: '1' }] as const) {
            const other = plannedOf(written({ ...job, units, steps }));
            expect(other.plan).toEqual(plan);
            expect(other.layout.borders).toEqual(layout.borders);
            expect(other.layout.gaps).toEqual(layout.gaps);
          }
        }
      },
      25,
    );
  });
});

it('a frame made to fit and then given that very size is the same layout', () => {
  forAllJobs('made to fit', ({ written: before, layout }) => {
    const { width, height } = layout.frame.blank;
    const given = setAt(before, 'frame.size', { width: `${width} mm`, height: `${height} mm` });
    const kept = plannedOf(given).layout;
    expect(kept.windows).toHaveLength(layout.windows.length);
    kept.windows.forEach((window, index) => expectNear(window.window, layout.windows[index]?.window));
  });
});
