/** Lines on the face round outlines at random: clear of the window, as wide as they are said to be, and touching just where a search says so. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearest } from '../../../src/core/geometry/nearness';
import { areaOf, boundsOf, shiftOutline, type Outline } from '../../../src/core/geometry/outline';
import { placeLine } from '../../../src/core/layout/face-lines';
import { Gaps, type Ring } from '../../../src/core/layout/limits/ring-gaps';
import { anyChain, anyShape, anyStar } from '../geometry/random-outlines';

describe('round any outline', () => {
  const any = fc.oneof(anyShape, anyStar, anyChain);

  it('the edges of a line lie outside the window and one outside the other, as far apart as it is wide', () => {
    fc.assert(
      fc.property(
        any,
        fc.double({ min: 0.5, max: 40, noNaN: true }),
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        (face, distance, share) => {
          const line = {
            kind: 'ruled',
            at: 'mat.lines[0]',
            distance,
            width: distance * share,
            colour: '#000000',
          } as const;
          const box = boundsOf(face);
          const made = placeLine(line, {
            opening: box,
            face: box,
            back: box,
            outlines: { opening: face, face, back: face, vanished: 0, blunted: 0 },
          });
          fc.pre(made !== undefined);
          const { inner, middle, outer } = made;
          const areas = [face, inner, middle, outer].map(areaOf);
          areas.slice(1).forEach((area, index) => expect(area).toBeGreaterThan(areas[index]!));
          expect(nearest(face, middle).distance).toBeGreaterThan(distance - 1e-4);
          expect(nearest(face, inner).distance).toBeGreaterThan(0);
          expect(nearest(middle, inner).distance).toBeGreaterThan(line.width / 2 - 1e-4);
          expect(nearest(middle, outer).distance).toBeGreaterThan(line.width / 2 - 1e-4);
          expect(nearest(inner, outer).distance).toBeGreaterThan(line.width - 1e-4);
        },
      ),
      { numRuns: 120, endOnFailure: true },
    );
  });

  it('two of them touch just where a search along all their edges says so', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    let met = 0;
    fc.assert(
      fc.property(
        any,
        any,
        number(0, 2 * Math.PI),
        number(0.7, 2.2),
        number(1, 30),
        number(1, 30),
        (one, other, angle, apart, near, far) => {
          const [a, b] = [boundsOf(one), boundsOf(other)];
          const way =
            (apart *
              (Math.hypot(a.right - a.left, a.top - a.bottom) + Math.hypot(b.right - b.left, b.top - b.bottom))) /
            2;
          const moved = shiftOutline(other, { x: way * Math.cos(angle), y: way * Math.sin(angle) });
          // Windows that collide are told of elsewhere.
          fc.pre(nearest(one, moved).distance > 0.1);
          const [ring, beside] = [ringOf(one, near), ringOf(moved, far)];
          fc.pre(ring !== undefined && beside !== undefined);
          const edges = [
            [ring.outer, beside.outer],
            [ring.outer, beside.inner],
            [ring.inner, beside.outer],
            [ring.inner, beside.inner],
          ] as const;
          const gap = Math.min(...edges.map(([x, y]) => nearest(x!, y!).distance));
          // On the edge itself either answer will do.
          fc.pre(gap < 1e-9 || gap > 1e-4);
          if (gap < 1e-9) met += 1;
          expect(new Gaps().touch(ring, beside)).toBe(gap < 1e-9);
        },
      ),
      { numRuns: 150, endOnFailure: true },
    );
    expect(met).toBeGreaterThan(0);
  });
});

function ringOf(face: Outline, distance: number): Ring | undefined {
  const line = { kind: 'ruled', at: '', distance, width: Math.min(1, distance / 2), colour: '#000000' } as const;
  const box = boundsOf(face);
  const made = placeLine(line, {
    opening: box,
    face: box,
    back: box,
    outlines: { opening: face, face, back: face, vanished: 0, blunted: 0 },
  });
  if (!made) return undefined;
  const { inner, outer } = made;
  return { line, inner, outer, box: boundsOf(outer), from: face, reach: distance + line.width / 2, plain: false };
}
