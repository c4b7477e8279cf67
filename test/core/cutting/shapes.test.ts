/** Cuts of windows that are no rectangles: closed, the waste on its side, overcuts by the corner, guide settings where a guide can go. */
import { describe, expect, it } from 'vitest';
import { directionOn, distance, pointOn, type Edge } from '../../../src/core/geometry/edge';
import { isInside } from '../../../src/core/geometry/nearness';
import { areaOf, lengthOf, mirrorOutline } from '../../../src/core/geometry/outline';
import { bladeLength, bladePath } from '../../../src/core/cutting/outline-cuts';
import type { CutLine, LayerPlan, View } from '../../../src/core/cutting/plan';
import { SHAPE_KINDS, type WrittenShape } from '../../../src/core/job/written-shape';
import { planned, type Contents } from '../open';

const IN = 25.4;
const KINDS = SHAPE_KINDS.filter((kind) => kind !== 'rectangle');
const VIEWS = ['front', 'back'] as const;

function layersOf(shape: WrittenShape, more: Contents = {}): readonly LayerPlan[] {
  return planned({
    frame: { size: '16 x 20 in' },
    mat: { layers: [{ thickness: '1/16 in' }, { thickness: '1/16 in', reveal: '1/4 in' }] },
    windows: { kind: 'window', size: '8 x 10 in', shape },
    borders: { rule: 'bottom-amount', amount: '1 in' },
    ...more,
  }).plan.layers;
}

function edgesOf(line: CutLine): readonly Edge[] {
  return line.curve ?? [{ kind: 'line', from: line.start, to: line.end }];
}

function cutsOf(layer: LayerPlan, view: View): readonly CutLine[] {
  return layer.windows[0]?.cuts[view] ?? [];
}

describe.each(KINDS)('%s', (kind) => {
  it.each(VIEWS)('from the %s: the cuts close and are as long as the edge they follow', (view) => {
    for (const layer of layersOf(kind)) {
      const lines = cutsOf(layer, view);
      lines.forEach((line, index) => {
        const next = lines[(index + 1) % lines.length];
        expect(distance(line.end, next?.start ?? { x: NaN, y: NaN })).toBeLessThan(1e-7);
      });
      const outlines = layer.windows[0]?.outlines;
      const edge = (view === 'front' ? outlines?.face : outlines?.back) ?? [];
      const length = lines.flatMap(edgesOf).reduce((sum, each) => sum + lengthOf([each]), 0);
      expect(length).toBeCloseTo(lengthOf(edge), 6);
      expect(new Set(lines.map(({ name }) => name)).size).toBe(lines.length);
    }
  });

  it.each(VIEWS)('from the %s: the waste lies on the side that is asked for, all the way round', (view) => {
    for (const waste of ['left', 'right'] as const) {
      for (const layer of layersOf(kind, { cutting: { waste } })) {
        const outlines = layer.windows[0]?.outlines;
        const edge = (view === 'front' ? outlines?.face : outlines?.back) ?? [];
        const seen = view === 'front' ? edge : mirrorOutline(edge, layer.blank.width);
        for (const each of cutsOf(layer, view).flatMap(edgesOf)) {
          const [at, way] = [pointOn(each, 0.5), directionOn(each, 0.5)];
          const beside = waste === 'left' ? { x: -way.y, y: way.x } : { x: way.y, y: -way.x };
          expect(isInside(seen, { x: at.x + 0.05 * beside.x, y: at.y + 0.05 * beside.y })).toBe(true);
          expect(isInside(seen, { x: at.x - 0.05 * beside.x, y: at.y - 0.05 * beside.y })).toBe(false);
        }
      }
    }
  });

  it('the back is the front turned over, a bevel run further in', () => {
    const [layer] = layersOf(kind);
    const outlines = layer?.windows[0]?.outlines;
    const back = (layer && cutsOf(layer, 'back').flatMap(edgesOf)) ?? [];
    expect(Math.abs(back.reduce((sum, edge) => sum + areaOf([edge]), 0))).toBeCloseTo(areaOf(outlines?.back ?? []), 5);
  });

  it('every cut is made once, and only the last lets the window fall out', () => {
    for (const layer of layersOf(kind)) {
      for (const view of VIEWS) {
        const steps = layer.order[view];
        expect(steps.map(({ cut }) => cut).toSorted((a, b) => a - b)).toEqual(
          cutsOf(layer, view).map((_, index) => index),
        );
        expect(steps.map(({ dropsOut }) => dropsOut)).toEqual(steps.map((_, index) => index === steps.length - 1));
        for (const { cut, guideSetting } of steps) expect(guideSetting).toBe(cutsOf(layer, view)[cut]?.guideSetting);
      }
    }
  });

  it('a guide is set only for straight cuts along a side, to their distance from its edge', () => {
    for (const layer of layersOf(kind)) {
      for (const line of cutsOf(layer, 'back')) {
        expect(line.guideSetting === undefined).toBe(line.side === undefined);
        if (!line.side) continue;
        expect(line.curve).toBeUndefined();
        const { start } = line;
        const { width, height } = layer.blank;
        const far = { left: start.x, right: width - start.x, bottom: start.y, top: height - start.y }[line.side];
        expect(line.guideSetting).toBeCloseTo(far, 9);
      }
    }
  });
});

describe('overcuts', () => {
  const [octagon] = layersOf({ kind: 'polygon', sides: 8 });
  const thick = IN / 16;

  it('run on by the bevel run x tan(turn / 2): at a corner of an octagon 0.4142 of that at a square one', () => {
    for (const line of octagon ? cutsOf(octagon, 'back') : []) {
      expect(line.overcutStart).toBeCloseTo(thick * Math.tan(Math.PI / 8), 9);
      expect(distance(line.end, line.bladeEnd)).toBeCloseTo(line.overcutEnd, 9);
      expect(bladeLength(line)).toBeCloseTo(distance(line.start, line.end) + 2 * line.overcutStart, 9);
    }
  });

  it('there are none where a side runs smoothly into an arc, or at corners that jut into the window', () => {
    const [arch] = layersOf('arch');
    const names = ['left', 'right', 'bottom', 'curve'];
    const by = new Map((arch ? cutsOf(arch, 'back') : []).map((line) => [line.name, line]));
    expect([...by.keys()].toSorted()).toEqual(names.toSorted());
    expect([by.get('curve')?.overcutStart, by.get('curve')?.overcutEnd]).toEqual([0, 0]);
    expect(by.get('bottom')?.overcutStart).toBeCloseTo(thick, 9);
    const [stepped] = layersOf('stepped');
    const overcuts = (stepped ? cutsOf(stepped, 'back') : []).flatMap(({ overcutStart, overcutEnd }) => [
      overcutStart,
      overcutEnd,
    ]);
    // Of 12 corners 8 are convex; each is the end of one cut and the start of another.
    expect(overcuts.filter((one) => one > 0)).toHaveLength(16);
  });

  it('a curve without corners is one cut, which runs on past its start', () => {
    const [layer] = layersOf('oval');
    const lines = layer ? cutsOf(layer, 'back') : [];
    expect(lines.map(({ name }) => name)).toEqual(['curve']);
    const [line] = lines;
    const path = line ? bladePath(line) : [];
    expect(line?.overcutStart).toBe(0);
    expect(line?.overcutEnd).toBeCloseTo(thick, 9);
    const length = path.reduce((sum, edge) => sum + lengthOf([edge]), 0);
    expect(length).toBeCloseTo(lengthOf(layer?.windows[0]?.outlines?.back ?? []) + thick, 6);
    path.slice(1).forEach((edge, index) => expect(distance(edge.from, path[index]?.to ?? edge.to)).toBeLessThan(1e-7));
  });
});
