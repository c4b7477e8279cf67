/** Ovals as arcs and as lines: within the tolerance everywhere, end to end, and without a corner between arcs. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arc, directionOn, distance, lengthOfEdge, oval, pointOn, type Edge } from '../../../src/core/geometry/edge';
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

/** How far points of the curve lie from the nearest of the pieces, each within its own part of the plane. */
function errorOf(edge: Edge, pieces: readonly Edge[]): number {
  const drawn = pieces.flatMap((piece) =>
    Array.from({ length: 65 }, (_, index) => ({ piece, at: pointOn(piece, index / 64) })),
  );
  let worst = 0;
  for (let index = 0; index <= 200; index += 1) {
    const at = pointOn(edge, index / 200);
    const near = drawn.reduce((best, one) => (distance(one.at, at) < distance(best.at, at) ? one : best));
    const { piece } = near;
    const away =
      piece.kind === 'arc'
        ? Math.abs(distance(at, piece.centre) - piece.radius)
        : Math.abs((at.x - piece.from.x) * directionOn(piece, 0).y - (at.y - piece.from.y) * directionOn(piece, 0).x);
    worst = Math.max(worst, away);
  }
  return worst;
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
      { numRuns: 150 },
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
      { numRuns: 150 },
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
