/** A cutter's own measures in the plan: overcut by thickness, bevel, side of the blade, scale, and a guide too short. */
import { describe, expect, it } from 'vitest';
import { beyondReach } from '../../../src/core/cutting/beyond-reach';
import { scaleReading, tabledOvercut } from '../../../src/core/cutting/cutter';
import { measureGuided } from '../../../src/core/cutting/guided';
import { checkCutters, parseCutters, printCutters } from '../../../src/core/job/cutter-list';
import { readJob } from '../../../src/core/job/read';
import { planned, problemsOf as saidOf, type Contents } from '../open';

const IN = 25.4;
// Invented numbers.
const BENCH = {
  name: 'Bench cutter',
  reach: '5 in',
  scaleOffset: '1/32 in',
  overcuts: [
    { thickness: '1/8 in', overcut: '1/8 in' },
    { thickness: '1/16 in', overcut: '3/64 in' },
  ],
};
const ONE = {
  frame: { size: '16 x 20 in' },
  windows: { kind: 'window', size: '10 x 14 in' },
} as const;

describe('overcut', () => {
  const table = [
    { thickness: 1, overcut: 2 },
    { thickness: 2, overcut: 4 },
  ];
  it.each([
    [0.5, 2],
    [1, 2],
    [1.25, 2.5],
    [2, 4],
    [3, 4],
  ])('for a board of %f mm is %f mm', (thickness, overcut) => {
    expect(tabledOvercut({ overcuts: table }, thickness)).toBeCloseTo(overcut, 12);
  });

  it('is not known from an empty table', () => {
    expect(tabledOvercut({ overcuts: [] }, 1)).toBeUndefined();
  });

  const overcutOf = (cutting: Contents['cutting'], thickness = '1/16 in') => {
    const layer = planned({ ...ONE, mat: { layers: [{ thickness }] }, cutting }).plan.layers[0]!;
    expect(layer.windows[0]!.cuts.back.every(({ overcutStart }) => overcutStart === layer.overcut.length)).toBe(true);
    return layer.overcut;
  };

  it('is the job’s where it is said, else the cutter’s for the board, else the bevel’s run', () => {
    expect(overcutOf({ overcut: '0.1 in', cutter: BENCH })).toEqual({ length: 2.54, from: 'job' });
    expect(overcutOf({ cutter: BENCH })).toMatchObject({ from: 'cutter' });
    expect(overcutOf({ cutter: BENCH }).length / IN).toBeCloseTo(3 / 64, 12);
    expect(overcutOf({ cutter: BENCH }, '3/32 in').length / IN).toBeCloseTo((3 / 64 + 1 / 8) / 2, 12);
    expect(overcutOf({ cutter: { name: 'Other' } })).toMatchObject({ from: 'board' });
    expect(overcutOf({}).length).toBeCloseTo(IN / 16, 12);
  });
});

describe('bevel and blade', () => {
  const cutter = { name: 'Other', bevelAngle: 52, waste: 'left' } as const;

  it('come from the cutter where the job says nothing', () => {
    const { plan } = planned({ ...ONE, cutting: { cutter } });
    expect(plan.waste).toBe('left');
    expect(plan.layers[0]!.bevel.angleDegrees).toBe(52);
  });

  it('keep to the job, which is told where the angle differs', () => {
    const job = { ...ONE, mat: { layers: [{ bevel: { angle: 45 } }] }, cutting: { cutter, waste: 'right' as const } };
    const { plan } = planned(job);
    expect(plan.waste).toBe('right');
    expect(plan.layers[0]!.bevel.angleDegrees).toBe(45);
    expect(saidOf(job)).toContainEqual(
      expect.objectContaining({ code: 'bevel-differs-from-cutter', severity: 'warning', value: '45°', limit: '52°' }),
    );
  });
});

describe('a guide', () => {
  it('that reaches all settings leads every cut', () => {
    const { job, layout, plan } = planned({ ...ONE, cutting: { cutter: BENCH } });
    expect(beyondReach(job, layout)).toEqual([]);
    expect(plan.layers[0]!.order.back.every(({ guideSetting }) => guideSetting !== undefined)).toBe(true);
  });

  it('that is too short leaves the far cuts to marks, after all others, and says which', () => {
    // Borders left 6, right 2, top 3, bottom 3 in; the guide reaches 5 in.
    const free = [{ size: '8 x 14 in', at: { left: '6 in', top: '3 in' } }];
    const { job, layout, plan } = planned({ frame: ONE.frame, free, cutting: { cutter: BENCH } });
    const { order, windows } = plan.layers[0]!;
    const lines = order.back.map(({ cut }) => windows[0]!.cuts.back[cut]!);
    const last = lines.at(-1)!;
    expect(lines.map(({ guideSetting }) => guideSetting !== undefined)).toEqual([true, true, true, false]);
    // Seen from the back the left of the mat lies to the right.
    expect(last.side).toBe('right');
    expect(last.beyondReach! / IN).toBeCloseTo(6, 12);
    expect(order.back.map(({ dropsOut }) => dropsOut)).toEqual([false, false, false, true]);
    const [problem, ...more] = beyondReach(job, layout);
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ code: 'beyond-reach', severity: 'warning', value: '6 in', limit: '5 in' });
    expect(problem!.message).toContain('A left 6 in');
  });

  it('is measured from the edge that the blade comes from, overcut included', () => {
    const { plan } = planned({ ...ONE, cutting: { overcut: '1/8 in' } });
    const { blank, windows } = plan.layers[0]!;
    const measured = windows[0]!.cuts.back.map((line) => measureGuided(line, blank)!);
    expect(measured.map(({ edge, from }) => `${edge} from ${from}`)).toEqual([
      'right from top', 'top from left', 'left from bottom', 'bottom from right',
    ]); // prettier-ignore
    for (const { edge, start, stop, setting } of measured) {
      const [length, border] = edge === 'left' || edge === 'right' ? [14, 3] : [10, 3];
      expect(setting / IN).toBeCloseTo(3, 12);
      expect(start / IN).toBeCloseTo(border - 1 / 8, 12);
      expect(stop / IN).toBeCloseTo(border + length + 1 / 8, 12);
    }
  });
});

it('a scale reads the setting and its offset', () => {
  const { job } = planned({ ...ONE, cutting: { cutter: { name: 'Other', scaleOffset: '-1/16 in' } } });
  expect(scaleReading(3 * IN, job.cutting.cutter)! / IN).toBeCloseTo(2.9375, 12);
  expect(scaleReading(3 * IN, undefined)).toBeUndefined();
  expect(scaleReading(3 * IN, { name: 'Other', overcuts: [] })).toBeUndefined();
});

describe('a job’s cutter', () => {
  const problemsOf = (cutter: object) =>
    readJob({ format: 'matwright-job', version: 1, ...ONE, cutting: { cutter } }).problems.map(({ code, at }) => [
      code,
      at,
    ]);

  it.each([
    [{ name: 'A', reach: 'far' }, 'length-unreadable', 'cutting.cutter.reach'],
    [{ name: 'A', reach: '0 in' }, 'length-out-of-range', 'cutting.cutter.reach'],
    [{ name: 'A', bevelAngle: 80 }, 'number-out-of-range', 'cutting.cutter.bevelAngle'],
    [{ name: 'A', overcuts: [{ thickness: '1/16', overcut: '-1/8' }] }, 'length-out-of-range', 'cutting.cutter.overcuts[0].overcut'],
    [{ name: 'A', overcuts: [{ thickness: '1/16', overcut: '1' }, { thickness: '0.0625', overcut: '1/8' }] }, 'overcut-said-twice', 'cutting.cutter.overcuts[1]'],
    [{ reach: '5 in' }, 'value-missing', 'cutting.cutter.name'],
    [{ name: 'A', brand: 'B' }, 'key-unknown', 'cutting.cutter.brand'],
  ])('%j is refused', (cutter, code, at) => {
    expect(problemsOf(cutter)).toEqual([[code, at]]);
  }); // prettier-ignore

  it('with no board so thick tells which overcut is taken', () => {
    const thick = { ...ONE, mat: { layers: [{ thickness: '3/16 in' }] }, cutting: { cutter: BENCH } };
    expect(saidOf(thick).map(({ code }) => code)).toContain('overcut-from-nearest-board');
  });
});

describe('cutters that are kept', () => {
  it('are read back as they were written, one alone or many', () => {
    const two = [BENCH, { name: 'Other' }];
    expect(parseCutters(printCutters(two))).toMatchObject({ ok: true, value: two });
    expect(parseCutters(JSON.stringify(BENCH))).toMatchObject({ ok: true, value: [BENCH] });
    const job = { format: 'matwright-job', version: 1, title: 'Fern', cutting: { cutter: BENCH } };
    expect(parseCutters(JSON.stringify(job))).toMatchObject({ ok: true, value: [BENCH] });
    const none = parseCutters(JSON.stringify({ ...job, cutting: {} }));
    expect(none.ok ? [] : none.problems.map(({ code }) => code)).toEqual(['cutter-not-in-job']);
  });

  it.each([
    ['{ "name": ', 'not-json', ''],
    ['{ "name": "A", "reach": "5" }', 'cutter-length-without-unit', 'cutter.reach'],
    ['{ "name": "A", "reach": 5 }', 'cutter-length-without-unit', 'cutter.reach'],
    ['{ "format": "matwright-cutters", "version": 2, "cutters": [] }', 'value-unknown', 'version'],
    [printCutters([{ name: 'A' }, { name: 'A' }]), 'cutter-named-twice', 'cutters[1].name'],
    ['[]', 'value-of-wrong-kind', ''],
  ])('%s is refused', (text, code, at) => {
    expect(parseCutters(text).problems.map((problem) => [problem.code, problem.at])).toEqual([[code, at]]);
  });

  it('need no unit for nothing', () => {
    expect(checkCutters([{ name: 'A', scaleOffset: 0 }]).ok).toBe(true);
  });
});
