/** Parallel curves of any outline: their distance measured at many points, and their area beside what Clipper2 finds. */
import { areaD, EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/core/geometry/box';
import { directionOn, distance, pointOn, type Edge } from '../../../src/core/geometry/edge';
import { nearest } from '../../../src/core/geometry/nearness';
import { parallelTo } from '../../../src/core/geometry/offset';
import { areaOf, flatten, isClosed, lengthOf, type Outline } from '../../../src/core/geometry/outline';
import { crossingOf } from '../../../src/core/geometry/region';
import { outlineOf } from '../../../src/core/geometry/shapes';
import { anyChain, anyPolygon, anyShape, anyStar } from './random-outlines';
import { trueDistance } from './true-distance';

/** Nothing that is cut may be further off, mm. */
const BOUND = 0.005;

const reveal = fc
  .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.boolean())
  .map(([share, outward]) => (outward ? 1 : -1) * 0.5 * 60 ** share);

interface OpenCorner {
  readonly at: Point;
  readonly edges: readonly [Edge, Edge];
  /** Angle by which the outline turns there, radians. */
  readonly turn: number;
}

/** Corners that a distance opens. */
function openCorners(outline: Outline, away: number): OpenCorner[] {
  return outline.flatMap((edge, index) => {
    const next = outline[(index + 1) % outline.length] ?? edge;
    const [a, b] = [directionOn(edge, 1), directionOn(next, 0)];
    const turn = Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
    return turn * away > 0 || Math.abs(turn) > 3.14 ? [{ at: edge.to, edges: [edge, next], turn: Math.abs(turn) }] : [];
  });
}

/** True of a point that is part of a corner: as far as the bisector says where two lines meet, else up to 8 times the distance. */
function isInCorner(point: Point, corners: readonly OpenCorner[], away: number): boolean {
  return corners.some(({ at, edges: [before, after], turn }) => {
    const far = distance(point, at);
    const most = 8 * Math.abs(away);
    if (before.kind !== 'line' || after.kind !== 'line') return far <= most + BOUND;
    const tip = Math.abs(away) / Math.cos(turn / 2);
    if (tip <= most) return far <= tip + BOUND;
    // Cut square: on the cut itself, or before it.
    const [a, b] = [directionOn(before, 0), directionOn(after, 0)];
    const size = Math.hypot(a.x - b.x, a.y - b.y);
    return ((point.x - at.x) * (a.x - b.x) + (point.y - at.y) * (a.y - b.y)) / size <= most + BOUND;
  });
}

function check(outline: Outline, away: number): void {
  const found = parallelTo(outline, away)?.outline;
  if (!found) return;
  expect(isClosed(found)).toBe(true);
  expect(areaOf(found) > areaOf(outline)).toBe(away > 0);
  expect(crossingOf(found)).toBeUndefined();
  const corners = openCorners(outline, away);
  for (const edge of found)
    for (const part of [0.02, 0.4, 0.77]) {
      const point = pointOn(edge, part);
      const off = trueDistance(outline, point) - Math.abs(away);
      expect(off).toBeGreaterThan(-BOUND);
      if (off > BOUND) expect(isInCorner(point, corners, away)).toBe(true);
    }
}

describe('the parallel curve', () => {
  it('of a circle drawn as an ellipse of equal axes is a smaller or a larger circle', () => {
    for (const radius of [30, 299.9999999999992])
      for (const away of [-20, -0.5, 0.5, 30]) {
        const circle = outlineOf({ kind: 'oval' }, { width: 2 * radius, height: 2 * radius });
        const found = parallelTo(circle, away)?.outline ?? [];
        expect(areaOf(found) / (Math.PI * (radius + away) ** 2)).toBeCloseTo(1, 12);
        expect(lengthOf(found) / (2 * Math.PI * (radius + away))).toBeCloseTo(1, 12);
      }
  });

  it.each([
    ['shapes of every kind', anyShape, 6000],
    ['polygons', anyPolygon, 1500],
    ['stars of lines and arcs', anyStar, 1500],
    ['smooth chains of arcs', anyChain, 1000],
  ] as const)(
    'of %s keeps its distance, further only in a corner, and never crosses itself',
    (_, outlines, numRuns) => {
      fc.assert(fc.property(outlines, reveal, check), { numRuns });
    },
  );
});

/** mm. */
const NECK = 0.002;

/** Areas of the pieces that Clipper2 makes. */
function inflated(outline: Outline, away: number): number[] {
  const paths = inflatePathsD([flatten(outline, FLATNESS)], away, JoinType.Miter, EndType.Polygon, 8, 5);
  return paths.map((path) => areaD(path));
}

/** By how much what chords lie off a curve grows on the way to the parallel curve: as the radius of its tightest bend does. */
function spreading(outline: Outline, away: number): number {
  const bends = outline.flatMap((edge) => (edge.kind === 'arc' ? [(edge.radius + Math.abs(away)) / edge.radius] : []));
  return Math.max(1, ...bends);
}

/** Chords no further from the curves given to Clipper2, mm. */
const FLATNESS = 0.0005;
/** Smaller pieces are left over from its rounding, square mm. */
const SPECK = 0.01;

describe('beside Clipper2 (Angus Johnson, an independent library) on finely flattened outlines', () => {
  it.each([
    ['polygons', anyPolygon, 400],
    ['smooth chains of arcs', anyChain, 150],
  ] as const)('%s have as large a parallel curve, or like theirs none or several', (_, outlines, numRuns) => {
    fc.assert(
      fc.property(outlines, reveal, (outline, away) => {
        // A tip cut square is cut elsewhere by Clipper2.
        const runsOut = openCorners(outline, away).some(({ turn }) => 1 / Math.cos(turn / 2) > 7.9);
        fc.pre(!runsOut);
        const found = parallelTo(outline, away)?.outline;
        if (!found) {
          // Where a neck is just closing, chords close it a little sooner or later.
          const counts = [0, NECK, -NECK].map((more) => inflated(outline, away + more).length);
          expect(counts.some((count) => count !== 1)).toBe(true);
          return;
        }
        const areas = inflated(outline, away).filter((area) => Math.abs(area) > SPECK);
        const sum = areas.reduce((total, area) => total + area, 0);
        const slack = SPECK + 2 * FLATNESS * (lengthOf(outline) + lengthOf(found) * spreading(outline, away));
        expect(Math.abs(areaOf(found) - sum)).toBeLessThan(slack);
      }),
      { numRuns },
    );
  });
});

describe('hollow corners at half their radius, where line and circle only graze one another', () => {
  it.each([0.4, 0.49, 0.4999999, 0.5, 0.5000001, 0.51, 0.7, 0.99])(
    'at %d of it the outline is whole, closed and as far away as it should be',
    (part) => {
      const outline = outlineOf({ kind: 'scooped', radius: 12.7 }, { width: 101.6, height: 127 });
      const parallel = parallelTo(outline, part * 12.7);
      expect(parallel?.outline.filter(({ kind }) => kind === 'arc').length).toBeGreaterThanOrEqual(4);
      expect(parallel?.blunted).toBe(part < 0.45 ? 0 : 8);
      const edges = parallel?.outline ?? [];
      edges.forEach((edge, index) => {
        const next = edges[(index + 1) % edges.length] ?? edge;
        expect(Math.hypot(next.from.x - edge.to.x, next.from.y - edge.to.y)).toBeLessThan(1e-9);
      });
      expect(nearest(outline, edges).distance).toBeCloseTo(part * 12.7, 6);
    },
  );
});
