/** What a cut card tells: runs at one setting and edge, starts and stops from the edge beside it, and cuts by marks. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cutCard, faceCard } from '../../../src/core/cutting/cut-card';
import { cutsOfLine } from '../../../src/core/cutting/line-cuts';
import { contents } from '../arbitrary-jobs';
import { planned, tryPlan, written, type Contents } from '../open';

const IN = 25.4;
/** Inches without the last bits of a double. */
const inches = (mm = NaN) => Number((mm / IN).toFixed(9));
// Worked by hand: 8 x 10 in 16 x 20, bottom 1 in heavier: sides 4, top 4 1/2, bottom 5 1/2 in.
const WEIGHTED: Contents = {
  frame: { size: '16 x 20 in' },
  windows: { kind: 'window', size: '8 x 10 in' },
  borders: { rule: 'bottom-amount', amount: '1 in' },
  cutting: { overcut: '1/8 in' },
};

it('goes from the widest setting to the narrowest and measures each cut from the edge the blade comes from', () => {
  const { plan } = planned(WEIGHTED);
  const { runs, byMarks } = cutCard(plan, plan.layers[0]!, 'back');
  const told = runs.map(({ setting, edge, from, moveGuide, turnBoard, cuts }) => [
    inches(setting),
    edge,
    from,
    moveGuide,
    turnBoard,
    ...cuts.map(({ measures }) => [inches(measures.start), inches(measures.stop)]),
  ]);
  // Waste on the right: clockwise round the window, so up along the left edge, to the right along the top.
  expect(told).toEqual([
    [5.5, 'bottom', 'right', true, false, [3.875, 12.125]],
    [4.5, 'top', 'left', true, true, [3.875, 12.125]],
    [4, 'right', 'top', true, true, [4.375, 14.625]],
    [4, 'left', 'bottom', false, true, [5.375, 15.625]],
  ]);
  expect(byMarks).toEqual([]);
});

it('gives the scale reading where it differs, and leaves what the guide does not reach to marks', () => {
  const cutter = { name: 'Bench cutter', reach: '5 in', scaleOffset: '1/32 in' };
  const { plan } = planned({ ...WEIGHTED, cutting: { cutter } });
  const { runs, byMarks } = cutCard(plan, plan.layers[0]!, 'back');
  expect(runs.map(({ reading }) => inches(reading))).toEqual([4.53125, 4.03125, 4.03125]);
  expect(byMarks.map(({ line }) => [line.side, inches(line.beyondReach)])).toEqual([['bottom', 5.5]]);
});

it('tells every cut of the plan once, in the order of the plan, whatever the job', () => {
  fc.assert(
    fc.property(contents(), fc.constantFrom('front' as const, 'back' as const), (job, view) => {
      const { planned: opened } = tryPlan(written(job));
      if (!opened) return;
      const { plan } = opened;
      for (const layer of plan.layers) {
        const { runs, byMarks } = cutCard(plan, layer, view);
        const told = [...runs.flatMap(({ cuts }) => cuts), ...byMarks];
        expect(told.map(({ number, line }) => [number, line])).toEqual(
          layer.order[view].map(({ number, window, cut }) => [number, layer.windows[window]!.cuts[view][cut]]),
        );
        for (const { cuts, ...run } of runs) {
          for (const { measures } of cuts) {
            expect(measures).toMatchObject({ edge: run.edge, from: run.from });
            expect(Math.abs(measures.setting - run.setting)).toBeLessThanOrEqual(0.005);
            expect(measures.stop).toBeGreaterThan(measures.start);
          }
        }
      }
    }),
    { endOnFailure: true, numRuns: 60 },
  );
});

it('tells grooves and ruled lines pass by pass, in front view, each run with one tool and one direction', () => {
  const lines = [
    { kind: 'groove', distance: '3/4 in', width: '1/16 in' } as const,
    { kind: 'ruled', distance: '3/8 in' } as const,
  ];
  const { plan } = planned({ ...WEIGHTED, mat: { layers: [{}], lines } });
  const [layer] = plan.layers;
  const { runs, byMarks } = faceCard(plan, layer!);
  expect(byMarks).toEqual([]);
  const told = runs.flatMap(({ cuts }) => cuts);
  expect(told.map(({ number, line }) => [number, line])).toEqual(
    layer!.lineOrder.map(({ number, line, cut }) => [number, cutsOfLine(layer!.lines[line]!)[cut]]),
  );
  // Worked by hand: the window's face edge lies 1/16 in outside its opening, 5 7/16 in from the bottom; the line's middle 3/8 in further out.
  expect(told[0]).toMatchObject({ name: 'A ruled line, bottom', measures: { edge: 'bottom' } });
  expect(inches(told[0]!.measures.setting)).toBe(5.5 - 1 / 16 - 3 / 8);
  for (const { cuts, from } of runs) {
    expect(new Set(cuts.map(({ made }) => made?.kind)).size).toBe(1);
    for (const { measures } of cuts) expect(measures.from).toBe(from);
  }
  expect(faceCard(plan, { ...layer!, lines: [], lineOrder: [] })).toEqual({ runs: [], byMarks: [] });
});
