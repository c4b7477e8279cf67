/** How grooves and ruled lines are made: passes whose blade leans to the middle, overcuts that end where valleys meet, and their order. */
import { describe, expect, it } from 'vitest';
import { cutsOfLine } from '../../../src/core/cutting/line-cuts';
import { bladePath } from '../../../src/core/cutting/outline-cuts';
import type { CutLine, LinePlan } from '../../../src/core/cutting/plan';
import { planToolPaths } from '../../../src/core/cutting/tool-paths';
import { directionOn, pointOn, sweptArea } from '../../../src/core/geometry/edge';
import { SHAPE_KINDS } from '../../../src/core/job/written-shape';
import { trueDistance } from '../geometry/true-distance';
import { planned, type Contents } from '../open';

const IN = 25.4;
const GROOVE = { kind: 'groove', distance: '1/2 in', width: '1/16 in' };

function job(shape: unknown, lines: object[], more: object = {}): Contents {
  return {
    frame: { size: '16 x 20 in' },
    mat: { layers: [{ thickness: '1/16 in' }, { thickness: '1/16 in' }] },
    windows: { kind: 'window', size: '8.5 x 10 in', shape, lines },
    ...more,
  } as Contents;
}

function lineOf(contents: Contents): LinePlan {
  const [line] = planned(contents).plan.layers[0]!.lines;
  if (!line) throw new Error('the window has a line');
  return line;
}

/** Signed area round which a pass travels: positive anticlockwise. */
function sense(cuts: readonly CutLine[]): number {
  return Math.sign(
    cuts
      .flatMap(({ curve, start, end }) => curve ?? [{ kind: 'line' as const, from: start, to: end }])
      .reduce((sum, edge) => sum + sweptArea(edge), 0),
  );
}

describe.each(['right', 'left'] as const)('with the waste on the %s', (waste) => {
  it.each(SHAPE_KINDS)('both slopes of a groove round %s lean to its middle, by one lean of the blade', (shape) => {
    const line = lineOf(job(shape, [GROOVE], { cutting: { waste } }));
    expect(line.passes.map(({ name }) => name)).toEqual(['inner', 'outer']);
    expect(new Set(cutsOfLine(line).map(({ bevelSide }) => bevelSide))).toEqual(
      new Set([waste === 'right' ? 'left' : 'right']),
    );
    const [inner, outer] = line.passes.map(({ cuts }) => sense(cuts));
    expect(inner).toBe(waste === 'right' ? -1 : 1);
    expect(outer).toBe(-inner!);
    for (const cut of cutsOfLine(line)) {
      for (const edge of cut.curve ?? [{ kind: 'line' as const, from: cut.start, to: cut.end }]) {
        const [at, way] = [pointOn(edge, 0.5), directionOn(edge, 0.5)];
        const side = cut.bevelSide === 'left' ? 1 : -1;
        const tip = { x: at.x - side * way.y * (line.width / 2), y: at.y + side * way.x * (line.width / 2) };
        // The tip lies under the middle but where a short bend of the mouth has none beneath it.
        expect(trueDistance(line.middle, tip)).toBeLessThan(line.width / 4);
      }
    }
  });

  it('along straight sides the tip is just under the middle', () => {
    const line = lineOf(job('rectangle', [GROOVE], { cutting: { waste } }));
    for (const cut of cutsOfLine(line)) {
      const [dx, dy] = [Math.sign(cut.end.x - cut.start.x), Math.sign(cut.end.y - cut.start.y)];
      const side = cut.bevelSide === 'left' ? 1 : -1;
      const half = { x: (cut.start.x + cut.end.x) / 2, y: (cut.start.y + cut.end.y) / 2 };
      const tip = { x: half.x - side * dy * (line.width / 2), y: half.y + side * dx * (line.width / 2) };
      expect(trueDistance(line.middle, tip)).toBeLessThan(1e-9);
    }
  });

  it('the inner pass runs on to where the valleys meet, half the width past a square corner; the outer stops', () => {
    const line = lineOf(job('rectangle', [GROOVE], { cutting: { waste, overcut: '1/4 in' } }));
    const [inner, outer] = line.passes;
    for (const cut of inner!.cuts) {
      expect([cut.overcutStart, cut.overcutEnd]).toEqual([IN / 32, IN / 32]);
      const [first] = bladePath(cut);
      expect(trueDistance(line.middle, first!.from)).toBeLessThan(1e-9);
    }
    for (const cut of outer!.cuts) expect([cut.overcutStart, cut.overcutEnd]).toEqual([0, 0]);
  });
});

it('is made in front view, at guide settings from the edges of the blank', () => {
  const { plan } = planned(job('rectangle', [GROOVE]));
  const [layer, below] = plan.layers;
  expect(below?.lines).toEqual([]);
  // 16 in less the window, its reveal, its bevel and the middle of the groove, less or more half its width.
  const left = (16 - 8.5) / 2 - 1 / 4 - 1 / 16 - 1 / 2;
  const settings = cutsOfLine(layer!.lines[0]!).flatMap(({ side, guideSetting = NaN }) =>
    side === 'left' || side === 'right' ? [guideSetting / IN] : [],
  );
  const wanted = [left + 1 / 32, left + 1 / 32, left - 1 / 32, left - 1 / 32];
  expect(settings).toHaveLength(4);
  settings.forEach((setting, index) => expect(setting).toBeCloseTo(wanted[index]!, 9));
});

it('a cutter whose guide is too short for a groove does it by the line', () => {
  const cutting = { cutter: { name: 'Bench', reach: '1 in' } };
  const line = lineOf(job('rectangle', [GROOVE], { cutting }));
  expect(cutsOfLine(line).every(({ guideSetting }) => guideSetting === undefined)).toBe(true);
});

describe('the order', () => {
  const lines = [
    { kind: 'groove', distance: '1/4 in' },
    { kind: 'ruled', distance: '1/2 in' },
    { kind: 'groove', distance: '3/4 in', width: '3/64 in' },
    { kind: 'ruled', distance: '1 in', colour: '#203040' },
    { kind: 'groove', distance: '1 1/4 in' },
  ];

  it('makes every cut of every line once: pens first, and what is set alike together', () => {
    const [layer] = planned(job('rectangle', lines)).plan.layers;
    const steps = layer!.lineOrder;
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, index) => index + 1));
    const made = steps.map(({ line, cut }) => `${line} ${cut}`);
    const all = layer!.lines.flatMap((line, index) => cutsOfLine(line).map((_, cut) => `${index} ${cut}`));
    expect([...made].sort()).toEqual(all.sort());
    const runs = steps.map(({ line }) => line).filter((line, index, list) => line !== list[index - 1]);
    expect(runs.filter((line) => line === 1 || line === 3)).toEqual([1, 3]);
    expect(runs.slice(0, 2)).toEqual([1, 3]);
    // Two grooves of one width need no change of depth between them.
    expect(runs.lastIndexOf(0)).toBeLessThan(runs.indexOf(2));
    expect(runs.lastIndexOf(4)).toBeLessThan(runs.indexOf(2));
  });

  it('for a machine: ruled lines in one stroke each, then grooves, then windows; none of it from the back', () => {
    const { plan } = planned(job('rectangle', lines));
    const front = planToolPaths(plan, { view: 'front', corner: 'lower-left' }).layers[0]!;
    const kinds = front.paths.map(({ kind }) => kind).filter((kind, index, list) => kind !== list[index - 1]);
    expect(kinds).toEqual(['ruled line', 'groove', 'window']);
    const ruled = front.paths.filter(({ kind }) => kind === 'ruled line');
    expect(ruled).toHaveLength(2);
    for (const { edges, from, to } of ruled) {
      expect(edges).toHaveLength(4);
      expect(Math.hypot(from.x - to.x, from.y - to.y)).toBeLessThan(1e-9);
    }
    expect(front.paths.filter(({ kind }) => kind === 'groove')).toHaveLength(3 * 2 * 4);
    expect(front.paths.find(({ kind }) => kind === 'groove')?.depth).toBeCloseTo(IN / 32, 12);
    const back = planToolPaths(plan, { view: 'back', corner: 'lower-left' }).layers[0]!;
    expect(new Set(back.paths.map(({ kind }) => kind))).toEqual(new Set(['window']));
  });

  it('the windows are cut just as they are without any lines', () => {
    const windows = (list: object[]) => {
      const [layer] = planned(job('arch', list)).plan.layers;
      return [layer!.windows, layer!.order];
    };
    expect(windows(lines.slice(0, 2))).toEqual(windows([]));
  });
});
