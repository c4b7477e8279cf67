/** Ovals as arcs and as lines: within the tolerance everywhere, end to end, and without a corner between arcs. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arc, directionOn, distance, lengthOfEdge, oval, pointOn, type Edge } from '../../../src/core/geometry/edge';
import { nearestOn } from '../../../src/core/geometry/nearness';
import { arcsOf, chordsOf, withoutSpecks } from '../../../src/outputs/machine/approximate';

const edges = fc
  .record({
    x: fc.double({ min: 5, max: 400, noNaN: true }),
    flat: fc.double({ min: 0.1, max: 10, noNaN: true }),
    away: fc.double({ min: 0, max: 60, noNaN: true }),
    start: fc.double({ min: -4, max: 4, noNaN: true }),
    sweep: fc.double({ min: 0.01, max: 3.1, noNaN: true }),
    back: fc.boolean(),
  })
  .map(({ x, flat, away, start, sweep, back }) =>
    oval({ x: 120, y: -35 }, { x, y: x * flat }, away, start, back ? -sweep : sweep),
  );
const tolerances = fc.constantFrom(0.001, 0.01, 0.1, 1);

/** How far points of the curve lie from the nearest of the pieces. */
function errorOf(edge: Edge, pieces: readonly Edge[]): number {
  const points = Array.from({ length: 201 }, (_, index) => pointOn(edge, index / 200));
  const off = points.map((at) => Math.min(...pieces.map((piece) => distance(nearestOn(piece, at), at))));
  return Math.max(...off);
}

function joined(edge: Edge, pieces: readonly Edge[]): void {
  expect(pieces[0]!.from).toEqual(edge.from);
  expect(pieces.at(-1)!.to).toEqual(edge.to);
  pieces.slice(1).forEach((piece, index) => expect(piece.from).toEqual(pieces[index]!.to));
}

describe('arcs for an oval', () => {
  it('stay within the tolerance and run on without a corner', () => {
    fc.assert(
      fc.property(edges, tolerances, (edge, tolerance) => {
        const arcs = arcsOf(edge, tolerance);
        joined(edge, arcs);
        expect(errorOf(edge, arcs)).toBeLessThanOrEqual(tolerance);
        arcs.slice(1).forEach((piece, index) => {
          const [a, b] = [directionOn(arcs[index]!, 1), directionOn(piece, 0)];
          expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-6);
        });
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('are one arc where the oval is a circle', () => {
    const circle = oval({ x: 0, y: 0 }, { x: 30, y: 30 }, 5, 0, Math.PI / 2);
    expect(arcsOf(circle, 0.01)).toMatchObject([{ kind: 'arc', radius: 35, sweep: Math.PI / 2 }]);
  });
});

describe('lines for a curve', () => {
  it('stay within the tolerance', () => {
    const arcs = edges
      .map(({ from, centre, sweep }) => arc(from, from, centre, sweep))
      .map((one) => ({
        ...one,
        to: pointOn(one, 1),
      }));
    fc.assert(
      fc.property(fc.oneof(edges, arcs), tolerances, (edge, tolerance) => {
        const chords = chordsOf(edge, tolerance);
        joined(edge, chords);
        expect(errorOf(edge, chords)).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });
});

describe('a curve whose ends would round to one point', () => {
  it('is a line, since as an arc it would be a whole circle', () => {
    const speck = oval({ x: 0, y: 0 }, { x: 30, y: 20 }, 0, 0, 1e-7);
    const long = oval({ x: 0, y: 0 }, { x: 30, y: 20 }, 0, 1e-7, 1);
    const [first, second] = withoutSpecks([speck, long]);
    expect(first).toEqual({ kind: 'line', from: speck.from, to: speck.to });
    expect(second).toBe(long);
    expect(lengthOfEdge(first!)).toBeLessThan(1e-5);
  });
});
