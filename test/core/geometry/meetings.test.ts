/** Meetings of edges against closed forms and against chords of the same curves, and crossings of outlines with themselves. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/core/geometry/box';
import { arc, distance, line, oval, pointOn, reversed, type Edge } from '../../../src/core/geometry/edge';
import { meetingsOf } from '../../../src/core/geometry/meetings';
import { quarterTurned, type Outline } from '../../../src/core/geometry/outline';
import { crossingOf } from '../../../src/core/geometry/region';
import { outlineOf } from '../../../src/core/geometry/shapes';

const at = (x: number, y: number): Point => ({ x, y });
const turned = (centre: Point, radius: number, start: number, sweep: number) => {
  const on = (angle: number) => at(centre.x + radius * Math.cos(angle), centre.y + radius * Math.sin(angle));
  return arc(on(start), on(start + sweep), centre, sweep);
};
const points = (a: Edge, b: Edge) => meetingsOf(a, b).map(({ point }) => point);
/** A point of touch is known no better than what lies within the touch: the root of twice its radius times a billionth of a mm. */
const near = (found: readonly Point[], wanted: readonly Point[], within = 1e-9) => {
  expect(found).toHaveLength(wanted.length);
  for (const point of wanted) expect(Math.min(...found.map((one) => distance(one, point)))).toBeLessThan(within);
};
const TOUCHING = 3e-4;

describe('where two edges meet', () => {
  it('lines cross, touch with an end, lie on one another for a stretch, or miss', () => {
    near(points(line(at(0, 0), at(4, 4)), line(at(0, 4), at(4, 0))), [at(2, 2)]);
    near(points(line(at(0, 0), at(4, 0)), line(at(3, 0), at(3, 5))), [at(3, 0)]);
    near(points(line(at(0, 0), at(4, 0)), line(at(6, 0), at(1, 0))), [at(4, 0), at(1, 0)]);
    near(points(line(at(0, 0), at(4, 0)), line(at(0, 1), at(4, 1))), []);
    near(points(line(at(0, 0), at(4, 0)), line(at(5, -1), at(5, 1))), []);
  });

  it('a circle: 3-4-5 with a line, a tangent once, two circles in the lens, arcs of one circle at their ends', () => {
    const half = turned(at(0, 0), 5, 0, Math.PI);
    near(points(half, line(at(-9, 3), at(9, 3))), [at(-4, 3), at(4, 3)]);
    near(points(half, line(at(-9, 5), at(9, 5))), [at(0, 5)]);
    near(points(half, turned(at(6, 0), 5, 0, Math.PI)), [at(3, 4)]);
    near(points(half, turned(at(0, 12), 7, Math.PI, Math.PI)), [at(0, 5)]);
    near(points(half, reversed(turned(at(0, 0), 5, Math.PI / 2, Math.PI))), [at(0, 5), at(-5, 0)]);
  });

  it('an ellipse: x²/a² + y²/b² = 1 with lines, its vertices with circles, its own stretch at the ends', () => {
    const upper = oval(at(0, 0), at(10, 6), 0, 0, Math.PI);
    const y = 6 * Math.sqrt(1 - 0.49);
    near(points(upper, line(at(7, -1), at(7, 20))), [at(7, y)]);
    near(points(line(at(-20, 3), at(20, 3)), upper), [at(-10 * Math.sqrt(0.75), 3), at(10 * Math.sqrt(0.75), 3)]);
    near(points(upper, line(at(-20, 6), at(20, 6))), [at(0, 6)], TOUCHING);
    near(points(upper, turned(at(0, 0), 6, 0, Math.PI)), [at(0, 6)], TOUCHING);
    // x² + y² = 64 on the ellipse: 100 c² + 36 (1 - c²) = 64.
    const c = Math.sqrt(28 / 64);
    const s = Math.sqrt(1 - c * c);
    near(points(upper, turned(at(0, 0), 8, 0, Math.PI)), [at(10 * c, 6 * s), at(-10 * c, 6 * s)]);
    near(points(upper, oval(at(0, 0), at(6, 10), 0, 0, Math.PI / 2)), [at(60 / Math.sqrt(136), 60 / Math.sqrt(136))]);
    const part = oval(at(0, 0), at(10, 6), 0, 1, 3);
    near(points(upper, part), [part.from, upper.to]);
    near(points(upper, oval(at(0, 0), at(10, 6), 2, 0, Math.PI)), []);
    // The parallel curve passes 2 beyond each vertex.
    near(points(oval(at(0, 0), at(10, 6), 2, 0, Math.PI), line(at(-12, 0), at(-12, 9))), [at(-12, 0)]);
  });

  const coordinate = fc.double({ min: -60, max: 60, noNaN: true });
  const length = fc.double({ min: 5, max: 60, noNaN: true });
  const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
  const sweep = fc.double({ min: 0.1, max: Math.PI, noNaN: true });
  const place = fc.record({ x: coordinate, y: coordinate });
  const edge = fc.oneof(
    fc.tuple(place, place).map(([from, to]) => line(from, to)),
    fc.tuple(place, length, angle, sweep).map((all) => turned(...all)),
    fc
      .tuple(place, fc.record({ x: length, y: length }), fc.double({ min: 0, max: 20, noNaN: true }), angle, sweep)
      .map((all) => oval(...all)),
  );

  it('any two: on both where they say, and as many as chords of the same curves cross', () => {
    fc.assert(
      fc.property(edge, edge, fc.boolean(), (one, other, back) => {
        const b = back ? reversed(other) : other;
        const found = meetingsOf(one, b);
        for (const meeting of found) {
          expect(distance(pointOn(one, meeting.a), meeting.point)).toBeLessThan(2e-6);
          expect(distance(pointOn(b, meeting.b), meeting.point)).toBeLessThan(2e-6);
        }
        for (const crossing of chordCrossings(one, b))
          expect(Math.min(Infinity, ...found.map(({ point }) => distance(point, crossing)))).toBeLessThan(0.1);
      }),
      { numRuns: 1000, endOnFailure: true },
    );
  });
});

const CHORDS = 200;

/** Where chords of both curves plainly cross, not all but along one another and not in the last chords, which a curve may leave. */
function chordCrossings(a: Edge, b: Edge): Point[] {
  const chords = (edge: Edge) =>
    Array.from({ length: CHORDS }, (_, i) => line(pointOn(edge, i / CHORDS), pointOn(edge, (i + 1) / CHORDS)));
  const found: Point[] = [];
  const others = chords(b).slice(1, -1);
  for (const one of chords(a).slice(1, -1))
    for (const other of others) {
      const d = cross(one.from, one.to, other.from, other.to);
      if (Math.abs(d) < 0.1 * distance(one.from, one.to) * distance(other.from, other.to)) continue;
      const s = cross(one.from, other.from, other.from, other.to) / d;
      const t = cross(one.from, other.from, one.from, one.to) / d;
      if (s > 0 && s < 1 && t > 0 && t < 1) found.push(pointOn(one, s));
    }
  return found;
}

/** Of the ways from `a` to `b` and from `c` to `d`. */
function cross(a: Point, b: Point, c: Point, d: Point): number {
  return (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
}

describe('where an outline crosses itself', () => {
  const polygon = (...corners: [number, number][]): Outline =>
    corners.map(([x, y], i) => line(at(x, y), at(...(corners[(i + 1) % corners.length] ?? [0, 0]))));

  it('is nowhere on any shape', () => {
    const size = { width: 120, height: 90 };
    for (const shape of [
      { kind: 'rectangle' },
      { kind: 'oval' },
      { kind: 'rounded', radius: 45 },
      { kind: 'scooped', radius: 30 },
      { kind: 'arch', rise: 60 },
      { kind: 'pointed', rise: 80 },
      { kind: 'stepped', step: 7, count: 3 },
      { kind: 'cut-corners', cut: 20 },
      { kind: 'polygon', sides: 9 },
    ] as const)
      for (const made of [outlineOf(shape, size), quarterTurned(outlineOf(shape, size))])
        expect(crossingOf(made)).toBeUndefined();
  });

  it('is the first crossing, touching corner, or place where it goes back on itself', () => {
    expect(crossingOf(polygon([0, 0], [10, 10], [10, 0], [0, 10]))).toEqual(at(5, 5));
    expect(crossingOf(polygon([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]))).toEqual(at(5, 0));
    expect(crossingOf(polygon([0, 0], [10, 0], [10, 10], [10, 4], [0, 4]))).toBeDefined();
    expect(crossingOf(polygon([0, 0], [10, 0], [10, 10], [0, 10]))).toBeUndefined();
  });

  it('is told of a figure of eight, at its waist', () => {
    const half = Math.PI / 2;
    const left = [0, 1, 2, 3].map((quarter) => oval(at(20, 20), at(20, 20), 0, quarter * half, half));
    const right = [2, 1, 0, -1].map((quarter) => oval(at(60, 20), at(20, 20), 0, quarter * half, -half));
    expect(distance(crossingOf([...left, ...right]) ?? at(0, 0), at(40, 20))).toBeLessThan(1e-9);
  });
});
