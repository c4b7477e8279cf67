/** Outlines made from path data, beside paper.js: areas, lengths, bounds, and how far their arcs lie from the curves. */
import fc from 'fast-check';
import paper from 'paper/dist/paper-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { directionOn, pointOn } from '../../../src/core/geometry/edge';
import { parallelTo } from '../../../src/core/geometry/offset';
import { areaOf, boundsOf, isClosed, lengthOf, type Outline } from '../../../src/core/geometry/outline';
import { outlineInSize, readOutlinePath } from '../../../src/core/outlines/path-outline';
import { trueDistance } from '../geometry/true-distance';
import { anyCurvedPath, anyPathData } from './random-paths';

/** What the program promises, mm. */
const TOLERANCE = 0.001;
const SIZE = { width: 200, height: 260 };

beforeAll(() => {
  paper.setup(new paper.Size(10, 10));
});

function made(path: string, size = SIZE): Outline {
  const read = readOutlinePath(path);
  if (!read.ok) throw new Error(JSON.stringify(read.fault));
  const outline = outlineInSize(path, size);
  if (!outline) throw new Error('too small');
  return outline;
}

/** The same path stretched to the size by paper, y up. */
function stretched(path: string, { width, height } = SIZE): paper.Path {
  const drawn = new paper.Path(path);
  const { x, y, width: across, height: up } = drawn.bounds;
  drawn.translate(new paper.Point(-x, -y - up));
  drawn.scale(width / across, -height / up, new paper.Point(0, 0));
  return drawn;
}

const faultOf = (path: string) => {
  const read = readOutlinePath(path);
  return read.ok ? undefined : read.fault;
};

const CURVED = {
  drop: 'M50 0C50 0 100 50 100 80C100 110 70 120 50 120C30 120 0 110 0 80C0 50 50 0 50 0Z',
  'quadratic leaf': 'M0 0Q60 10 100 80T100 200Q20 180 10 100Z',
  'a cusp': 'M0 0C100 60 0 60 100 0L100 100L0 100Z',
  'handles of no length': 'M0 0C0 0 80 0 80 80C80 80 40 80 0 0Z',
  'an S': 'M0 40C0 0 100 0 100 40S60 60 60 90L40 90C40 40 80 70 80 45C80 15 20 15 20 40Z',
  'a circle by four curves': 'M0 5C0 2.2386 2.2386 0 5 0S10 2.2386 10 5 7.7614 10 5 10 0 7.7614 0 5Z',
};

/** Length of a curve by a thousand chords. */
function chordsAlong(piece: paper.Curve): number {
  const points = Array.from({ length: 1001 }, (_, step) => piece.getPointAtTime(step / 1000));
  return points.slice(1).reduce((sum, point, index) => sum + point.getDistance(points[index]!), 0);
}

function checkCurves(path: string): void {
  const outline = made(path);
  const curve = stretched(path);
  expect(isClosed(outline)).toBe(true);
  // A strip of the tolerance's width along the whole line, at the most.
  expect(Math.abs(areaOf(outline) - Math.abs(curve.area))).toBeLessThan(TOLERANCE * curve.length);
  const chords = curve.curves.reduce((sum, piece) => sum + chordsAlong(piece), 0);
  expect(Math.abs(lengthOf(outline) - chords)).toBeLessThan(1e-4 * chords);
  const box = boundsOf(outline);
  for (const off of [box.left, box.bottom, box.right - SIZE.width, box.top - SIZE.height])
    expect(Math.abs(off)).toBeLessThan(TOLERANCE);
  for (const piece of curve.curves) {
    for (let step = 0; step <= 40; step += 1)
      expect(trueDistance(outline, piece.getPointAtTime(step / 40))).toBeLessThan(TOLERANCE);
  }
  for (const edge of outline) {
    const at = new paper.Point(pointOn(edge, 0.5));
    expect(curve.getNearestPoint(at).getDistance(at)).toBeLessThan(TOLERANCE);
  }
}

describe('curves', () => {
  it.each(Object.entries(CURVED))('%s: its arcs lie within 0.001 mm of it', (_, path) => checkCurves(path));

  it('any: the same', () => {
    fc.assert(
      fc.property(anyCurvedPath, (path) => {
        fc.pre(readOutlinePath(path).ok);
        checkCurves(path);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('smooth ones go on without a corner, as written with few figures', () => {
    const outline = made(CURVED['a circle by four curves']);
    const turns = outline.map((edge, index) => {
      const [a, b] = [directionOn(outline.at(index - 1)!, 1), directionOn(edge, 0)];
      return Math.abs(a.x * b.y - a.y * b.x);
    });
    expect(Math.max(...turns)).toBeLessThan(1e-9);
    expect(outline.length).toBeLessThan(120);
  });

  it('bends that agree within half a degree are cut as one; a real corner stays one', () => {
    const bent = (angle: number) => `M0 0C30 0 70 ${-angle} 100 0C130 ${angle} 170 0 200 0V90H0Z`;
    const corners = (path: string) =>
      made(path).filter((edge, index, all) => {
        const [a, b] = [directionOn(all.at(index - 1)!, 1), directionOn(edge, 0)];
        return Math.abs(a.x * b.y - a.y * b.x) > 1e-6;
      }).length;
    expect(corners('M0 0C30 0 70 -20 100 0C130 20.05 170 0 200 0V90H0Z')).toBe(4);
    expect(corners(bent(20))).toBe(4);
    expect(corners('M0 0C30 0 70 -20 100 0C130 30 170 0 200 0V90H0Z')).toBe(5);
  });
});

describe('lines and ellipses stay what they are', () => {
  it('a polygon has its lines and no more', () => {
    const outline = made('M0 0 30 0 30 20 15 28 0 20Z', { width: 60, height: 56 });
    expect(outline.map(({ kind }) => kind)).toEqual(['line', 'line', 'line', 'line', 'line']);
    expect(areaOf(outline)).toBeCloseTo((30 * 20 + (30 * 8) / 2) * 4, 9);
  });

  it('a circle is arcs, and stretched an ellipse: pi a b', () => {
    const circle = 'M0 5a5 5 0 1 0 10 0a5 5 0 1 0-10 0z';
    expect(made(circle, { width: 80, height: 80 }).every(({ kind }) => kind === 'arc')).toBe(true);
    expect(areaOf(made(circle, { width: 80, height: 80 }))).toBeCloseTo(Math.PI * 1600, 9);
    const oval = made(circle, { width: 80, height: 120 });
    expect(oval.every(({ kind }) => kind === 'oval')).toBe(true);
    expect(areaOf(oval)).toBeCloseTo(Math.PI * 40 * 60, 9);
  });

  it('an ellipse turned by a quarter is level', () => {
    const outline = made('M0 0A20 50 90 0 1 100 0A20 50 90 0 1 0 0Z', { width: 100, height: 40 });
    expect(outline.every(({ kind }) => kind === 'oval')).toBe(true);
    expect(areaOf(outline)).toBeCloseTo(Math.PI * 50 * 20, 9);
  });

  it('a slanting one is arcs of circles within the tolerance, with the area pi a b', () => {
    const path = 'M-40 -30A50 20 36.87 0 1 40 30A50 20 36.87 0 1-40-30Z';
    const read = readOutlinePath(path);
    if (!read.ok) throw new Error('an outline');
    const outline = made(path, read.natural);
    expect(outline.every(({ kind }) => kind === 'arc')).toBe(true);
    expect(Math.abs(areaOf(outline) - Math.PI * 50 * 20)).toBeLessThan(TOLERANCE * lengthOf(outline));
    // Half its width: sqrt(a² cos² + b² sin²) of the angle it is turned by.
    const turn = (36.87 / 180) * Math.PI;
    expect(read.natural.width / 2).toBeCloseTo(Math.hypot(50 * Math.cos(turn), 20 * Math.sin(turn)), 9);
  });

  it('goes round anticlockwise, whichever way it was drawn', () => {
    for (const path of ['M0 0H10V10H0Z', 'M0 0V10H10V0Z', CURVED.drop]) expect(areaOf(made(path))).toBeGreaterThan(0);
  });
});

describe('what is no outline', () => {
  it.each([
    ['', 'empty'],
    ['M0 0', 'empty'],
    ['M0 0L10 0L0 0Z', 'empty'],
    ['M0 0H10V10', 'open'],
    ['M0 0H10V10H0ZM2 2H4V4H2Z', 'many'],
    ['M0 0H10V10H0Z M20 0', undefined],
    ['M0 0 10 10H0L10 0Z', 'crosses'],
    ['M0 0H10V10H5L5 0L5 10H0Z', 'crosses'],
    ['M0 0H10L5 0 5 10Z', 'crosses'],
    ['M0 0C100 100 -90 100 10 0Z', 'crosses'],
    ['L0 0H10V10Z', 'unreadable'],
    ['M0 0H10V10R3 4 5 6Z', 'unreadable'],
    ['M0 0H1e999V10Z', 'far-away'],
    ['a fern', 'unreadable'],
    ['M0 0H1e8V10Z', 'far-away'],
    ['M0 0H1e-9V1e-9Z', 'empty'],
  ])('%s: %s', (path, kind) => expect(faultOf(path)?.kind).toBe(kind));

  it('more characters, or more lines, than any outline needs are refused', () => {
    expect(faultOf(`M0 0${'H1V1H0V0'.repeat(600)}Z`)).toMatchObject({ kind: 'too-large', count: 2400 });
    expect(faultOf(`M0 0${' '.repeat(100_000)}Z`)).toMatchObject({ kind: 'too-large', count: 100_005 });
  });

  it('tells where a loop crosses itself, in the path’s own numbers', () => {
    expect(faultOf('M100 100l20 20h-20l20 -20z')).toEqual({
      kind: 'crosses',
      at: { x: expect.closeTo(110, 6), y: expect.closeTo(110, 6) },
    });
  });

  it('tells where an open one begins and ends, and how far apart', () => {
    expect(faultOf('M1 2H10V10L4 6')).toMatchObject({ start: { x: 1, y: 2 }, end: { x: 4, y: 6 }, gap: 5 });
  });

  it('takes ends that rounding has parted for one', () => {
    const outline = made('M0 0L100 0L100 80.00001L0.00004 80.0L0.00003 0.00002', { width: 100, height: 80 });
    expect(outline).toHaveLength(4);
    expect(isClosed(outline)).toBe(true);
  });

  it('a size that its arms are too near one another for is told', () => {
    const path = 'M0 0H100V50H50.001V10H50V50H0Z';
    expect(outlineInSize(path, { width: 500, height: 500 })).toBeDefined();
    expect(outlineInSize(path, { width: 0.02, height: 0.02 })).toBeUndefined();
  });
});

describe('any path data', () => {
  it('is an outline or is refused, and never throws; an outline can be followed or not, without a throw', () => {
    let outlines = 0;
    fc.assert(
      fc.property(anyPathData, fc.double({ min: -20, max: 20, noNaN: true }), (path, away) => {
        if (!readOutlinePath(path).ok) return;
        const outline = outlineInSize(path, SIZE);
        if (!outline) return;
        outlines += 1;
        expect(isClosed(outline, 1e-6)).toBe(true);
        const box = boundsOf(outline);
        expect(box.right - box.left).toBeCloseTo(SIZE.width, 2);
        parallelTo(outline, away);
      }),
      { numRuns: 500, endOnFailure: true },
    );
    expect(outlines).toBeGreaterThan(10);
  });
});
