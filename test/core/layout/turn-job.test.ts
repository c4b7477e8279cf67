/** A whole job turned or turned over is laid out as the same mat turned or turned over. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isError } from '../../../src/core/problem';
import { contents } from '../arbitrary-jobs';
import { planned, tryPlan, written, type Contents, type Planned } from '../open';
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

describe('the frame', () => {
  it.each([
    [{ size: '16 x 20 in' }, { size: '20 x 16 in' }],
    [{ size: 'A2' }, { size: 'A2 landscape' }],
    [{ size: { width: '16 in', height: 20 } }, { size: { width: 20, height: '16 in' } }],
    [
      { readyMade: '16x20 in', lip: '1/4 in' },
      { readyMade: '20x16 in', lip: '1/4 in' },
    ],
    [{ readyMade: '16 × 20' }, { readyMade: '20 × 16' }],
    [{ readyMade: 'A2' }, { readyMade: 'A2', hung: 'landscape' }],
    [
      { readyMade: 'A2', hung: 'landscape' },
      { readyMade: 'A2', hung: 'portrait' },
    ],
    [
      { size: '20 x 16 in', hung: 'portrait' },
      { size: '20 x 16 in', hung: 'landscape' },
    ],
    [{ lip: '1/2 in' }, { lip: '1/2 in' }],
  ] as const)('%j turns to %j', (frame, after) => {
    const before = planned({ frame, pictures: [{ size: '8 x 10 in' }] } as Contents);
    expect(turned(before, 'left')).toMatchObject({ ok: true, value: { frame: after } });
    expect(turned(before, 'top-bottom')).toMatchObject({ ok: true, value: { frame } });
  });
});

describe('the borders', () => {
  /** A window of 7 x 4 in, as in the reference's sums, in a frame of 10 x 8 in or one made to fit. */
  const bordersAfter = (
    borders: Contents['borders'],
    way: (typeof WAYS)[number],
    frame: object = { size: '10 x 8 in' },
  ) => {
    const before = planned({ frame, borders, windows: { kind: 'window', size: '7 x 4 in' } });
    const moved = turned(before, way);
    return moved.ok ? [moved.value.borders, moved.problems.map(({ code }) => code)] : [];
  };
  const held = (lengths: object) => [{ rule: 'by-hand', ...lengths }, ['borders-held']];
  const fitted = {};

  it.each([
    [{ rule: 'centred' }, 'left', { rule: 'centred' }],
    [{ rule: 'centred', top: '2 in' }, 'left', { rule: 'centred', sides: '2 in' }],
    [{ rule: 'by-hand', left: '1 in', top: '3 in' }, 'left', { rule: 'by-hand', bottom: '1 in', left: '3 in' }],
    [{ rule: 'by-hand', left: '1 in', top: '3 in' }, 'left-right', { rule: 'by-hand', right: '1 in', top: '3 in' }],
    [{ rule: 'by-hand', sides: '1 1/2 in', top: '3 in' }, 'right', { rule: 'by-hand', top: '1 1/2 in', bottom: '1 1/2 in', right: '3 in' }],
    [{ rule: 'bottom-ratio', ratio: 1.2 }, 'left-right', { rule: 'bottom-ratio', ratio: 1.2 }],
  ] as const)('%j, %s: %j', (borders, way, after) => {
    expect(bordersAfter(borders, way)).toEqual([after, []]);
  }); // prettier-ignore

  it.each([
    // As the reference's sums have them: 1 1/2 in at each side, and 4 in above and below together.
    [{ rule: 'bottom-amount', amount: '1/2 in' }, 'left', { bottom: '1 1/2', left: '1 3/4' }],
    [{ rule: 'bottom-amount', amount: '1/2 in' }, 'top-bottom', { left: '1 1/2', bottom: '1 3/4' }],
    [{ rule: 'height-share', share: '45:55' }, 'right', { top: '1 1/2', right: '1.8' }],
    [{ rule: 'top-as-sides' }, 'left', { bottom: '1 1/2', left: '1 1/2' }],
  ] as const)('%j, %s: held as %j', (borders, way, after) => {
    expect(bordersAfter(borders, way)).toEqual(held(after));
  });

  it('made to fit are all four said', () => {
    const rule = { rule: 'bottom-amount', sides: '3 in', amount: '1 in' } as const;
    expect(bordersAfter(rule, 'left', fitted)).toEqual(held({ bottom: '3 in', left: '3', top: '3 in', right: '4' }));
    expect(bordersAfter({ rule: 'centred', top: '2 in' }, 'left', fitted)).toEqual([{ rule: 'centred', sides: '2 in', top: '3' }, []]);
    expect(bordersAfter({ rule: 'equal', all: '3 in' }, 'left', fitted)).toEqual([{ rule: 'equal', all: '3 in' }, []]);
  }); // prettier-ignore

  it('that gaps share keep those gaps as they are, where the border comes to their other end', () => {
    const items = ['3 x 4 in', '3 x 4 in'].map((size) => ({ kind: 'window' as const, size }));
    const before = planned({
      frame: { size: '16 x 8 in' },
      borders: { rule: 'by-hand', left: '2 in' },
      windows: { kind: 'row', gap: 'share with borders', items },
    });
    // 16 - 2 - 3 - 2 - 3 leaves 6 in at the right.
    const moved = turned(before, 'left-right');
    expect(moved).toMatchObject({ ok: true, value: { windows: { gap: '2' }, borders: { right: '2 in' } } });
    expect(moved.problems.map(({ code }) => code)).toEqual(['gaps-held']);
    // Turned right, the left border comes to the top, from where a column is read.
    expect(turned(before, 'right')).toMatchObject({ ok: true, value: { windows: { gap: 'share with borders' } } });
  });
});
