/** Shapes and their parallel curves against closed forms, and against distances measured at many points. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boundsOf,
  areaOf,
  isClosed,
  lengthOf,
  mirrorOutline,
  quarterTurned,
  shiftOutline,
} from '../../../src/core/geometry/outline';
import { pointOn, type Edge } from '../../../src/core/geometry/edge';
import { parallelTo } from '../../../src/core/geometry/offset';
import { outlineOf, polygonHeight, type Shape } from '../../../src/core/geometry/shapes';
import { widthOf, heightOf } from '../../../src/core/geometry/box';

const IN = 25.4;

describe('closed forms', () => {
  it('circle: 2 pi r and pi r² (plane geometry)', () => {
    const circle = outlineOf({ kind: 'oval' }, { width: 100, height: 100 });
    expect(areaOf(circle)).toBeCloseTo(Math.PI * 2500, 9);
    expect(lengthOf(circle)).toBeCloseTo(Math.PI * 100, 9);
  });

  it('ellipse of 127 x 101.6 mm half axes: perimeter 720.38636437995189283 mm (complete elliptic integral E, DLMF ch. 19)', () => {
    const ellipse = outlineOf({ kind: 'oval' }, { width: 254, height: 203.2 });
    expect(lengthOf(ellipse)).toBeCloseTo(720.3863643799519, 10);
    // An oval of 8 x 10 in: pi x 4 x 5 in.
    expect(areaOf(ellipse) / IN ** 2).toBeCloseTo(62.83185307179586, 10);
  });

  it('parallel curve of an ellipse: length L + 2 pi d, area A + L d + pi d² (Steiner 1840)', () => {
    const ellipse = outlineOf({ kind: 'oval' }, { width: 254, height: 203.2 });
    const [length, area] = [lengthOf(ellipse), areaOf(ellipse)];
    for (const d of [6.35, 25.4, -10]) {
      const moved = parallelTo(ellipse, d)!.outline;
      expect(lengthOf(moved)).toBeCloseTo(length + 2 * Math.PI * d, 9);
      expect(areaOf(moved)).toBeCloseTo(area + length * d + Math.PI * d * d, 7);
      expect(widthOf(boundsOf(moved))).toBeCloseTo(254 + 2 * d, 10);
    }
  });

  it('rounded rectangle: w h - (4 - pi) r², and its corners round about the same centres', () => {
    const made = outlineOf({ kind: 'rounded', radius: 10 }, { width: 80, height: 60 });
    expect(areaOf(made)).toBeCloseTo(4800 - (4 - Math.PI) * 100, 10);
    expect(lengthOf(made)).toBeCloseTo(2 * 60 + 2 * 40 + 2 * Math.PI * 10, 10);
    const wider = parallelTo(made, 5)!.outline;
    expect(areaOf(wider)).toBeCloseTo(90 * 70 - (4 - Math.PI) * 225, 9);
    const gone = parallelTo(made, -12)!;
    expect(gone.vanished).toHaveLength(4);
    expect(areaOf(gone.outline)).toBeCloseTo(56 * 36, 6);
  });

  it('arch 8 wide, rise 2, taken in by 1/4: r 5 -> 4.75, width 7.5, rise 1.834, spring line lower by 0.085', () => {
    const made = outlineOf({ kind: 'arch', rise: 2 }, { width: 8, height: 10 });
    const [head] = made;
    expect(head).toMatchObject({ kind: 'arc', radius: 5 });
    const inner = parallelTo(made, -0.25)!.outline;
    const arc = inner.find((edge): edge is Extract<Edge, { kind: 'arc' }> => edge.kind === 'arc')!;
    expect(arc.radius).toBeCloseTo(4.75, 12);
    expect(arc.from.x - arc.to.x).toBeCloseTo(7.5, 12);
    const box = boundsOf(inner);
    expect(box.top - arc.from.y).toBeCloseTo(4.75 - Math.sqrt(4.75 ** 2 - 3.75 ** 2), 12);
    expect(box.top - arc.from.y).toBeCloseTo(1.8345, 4);
    expect(8 - arc.from.y).toBeCloseTo(0.085, 3);
  });

  it.each([3, 4, 5, 6, 8, 12])('regular polygon of %i sides, by trigonometry', (sides) => {
    const width = 120;
    const height = polygonHeight(width, sides);
    const made = outlineOf({ kind: 'polygon', sides }, { width, height });
    const side = lengthOf(made) / sides;
    expect(areaOf(made)).toBeCloseTo((sides * side * side) / (4 * Math.tan(Math.PI / sides)), 8);
    expect(widthOf(boundsOf(made))).toBeCloseTo(width, 10);
    expect(heightOf(boundsOf(made))).toBeCloseTo(height, 10);
    // The apothem grows by the distance.
    const wider = parallelTo(made, 5)!.outline;
    const apothem = (edges: number) => edges / sides / (2 * Math.tan(Math.PI / sides));
    expect(apothem(lengthOf(wider))).toBeCloseTo(apothem(lengthOf(made)) + 5, 9);
  });

  it('octagon by cut corners, steps and scoops: what is taken from the rectangle', () => {
    const size = { width: 100, height: 80 };
    expect(areaOf(outlineOf({ kind: 'cut-corners', cut: 12 }, size))).toBeCloseTo(8000 - 2 * 144, 9);
    expect(areaOf(outlineOf({ kind: 'stepped', step: 6, count: 1 }, size))).toBeCloseTo(8000 - 4 * 36, 9);
    expect(areaOf(outlineOf({ kind: 'stepped', step: 5, count: 3 }, size))).toBeCloseTo(8000 - 4 * 25 * 6, 9);
    expect(areaOf(outlineOf({ kind: 'scooped', radius: 9 }, size))).toBeCloseTo(8000 - Math.PI * 81, 9);
  });

  it('pointed arch: two arcs of one radius that spring upright', () => {
    const made = outlineOf({ kind: 'pointed', rise: (Math.sqrt(3) / 2) * 60 }, { width: 60, height: 150 });
    const arcs = made.filter((edge) => edge.kind === 'arc');
    // Equilateral: each arc is struck from the other's foot, a sixth of a turn.
    for (const edge of arcs) {
      expect(edge.radius).toBeCloseTo(60, 10);
      expect(edge.sweep).toBeCloseTo(Math.PI / 3, 10);
    }
  });
});

const size = fc.record({
  width: fc.double({ min: 40, max: 600, noNaN: true }),
  height: fc.double({ min: 40, max: 600, noNaN: true }),
});
const shaped = size.chain(({ width, height }) => {
  const least = Math.min(width, height);
  const part = (most: number) => fc.double({ min: 0.02, max: most, noNaN: true });
  const of = (shape: fc.Arbitrary<Shape>) => shape.map((one) => ({ shape: one, size: { width, height } }));
  return fc.oneof(
    of(fc.constantFrom<Shape>({ kind: 'rectangle' }, { kind: 'oval' })),
    of(part(0.5).map((p) => ({ kind: 'rounded', radius: p * least }))),
    of(part(0.45).map((p) => ({ kind: 'scooped', radius: p * least }))),
    of(part(0.45).map((p) => ({ kind: 'cut-corners', cut: p * least }))),
    of(
      fc
        .tuple(part(0.1), fc.integer({ min: 1, max: 3 }))
        .map(([p, count]) => ({ kind: 'stepped', step: p * least, count })),
    ),
    of(part(0.5).map((p) => ({ kind: 'arch', rise: p * Math.min(width, 2 * height) * 0.99 }))),
    of(
      part(0.45).map((p) =>
        height > width * 0.55 ? { kind: 'pointed', rise: Math.min(height, width * (0.5 + p)) } : { kind: 'oval' },
      ),
    ),
    fc.integer({ min: 3, max: 12 }).map((sides) => ({
      shape: { kind: 'polygon', sides } as Shape,
      size: { width, height: polygonHeight(width, sides) },
    })),
  );
});

describe('any shape', () => {
  it('is closed, anticlockwise, and as wide and high as its size', () => {
    fc.assert(
      fc.property(shaped, ({ shape, size }) => {
        const made = outlineOf(shape, size);
        expect(isClosed(made)).toBe(true);
        expect(areaOf(made)).toBeGreaterThan(0);
        const box = boundsOf(made);
        for (const [found, wanted] of [
          [box.left, 0],
          [box.bottom, 0],
          [box.right, size.width],
          [box.top, size.height],
        ] as const)
          expect(Math.abs(found - wanted)).toBeLessThan(1e-9 * 600);
      }),
      { numRuns: 1000 },
    );
  });

  it('mirrored, moved or turned keeps area and length; four quarter turns bring it back', () => {
    fc.assert(
      fc.property(shaped, ({ shape, size }) => {
        const made = outlineOf(shape, size);
        const [area, length] = [areaOf(made), lengthOf(made)];
        for (const other of [mirrorOutline(made, 700), shiftOutline(made, { x: -31, y: 77 }), quarterTurned(made)]) {
          expect(isClosed(other, 1e-7)).toBe(true);
          expect(areaOf(other)).toBeCloseTo(area, 6);
          expect(lengthOf(other)).toBeCloseTo(length, 8);
        }
        const round = [1, 2, 3, 4].reduce((one) => quarterTurned(one), made);
        round.forEach((edge, index) => {
          expect(edge.from.x).toBeCloseTo(made[index]!.from.x, 8);
          expect(edge.from.y).toBeCloseTo(made[index]!.from.y, 8);
        });
      }),
      { numRuns: 300 },
    );
  });
});

/** Distance from a point to an outline, by close samples and a search between them. */
function distanceTo(outline: readonly Edge[], at: { x: number; y: number }): number {
  let best = Infinity;
  for (const edge of outline) {
    const far = (part: number) => {
      const point = pointOn(edge, part);
      return Math.hypot(point.x - at.x, point.y - at.y);
    };
    const steps = 64;
    let near = 0;
    for (let step = 0; step <= steps; step += 1) if (far(step / steps) < far(near)) near = step / steps;
    let [low, high] = [Math.max(0, near - 1 / steps), Math.min(1, near + 1 / steps)];
    for (let turn = 0; turn < 80; turn += 1) {
      const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
      if (far(a) < far(b)) high = b;
      else low = a;
    }
    best = Math.min(best, far((low + high) / 2));
  }
  return best;
}

describe('parallel curves', () => {
  it('of any shape keep their distance: never nearer, and further only beyond a corner', () => {
    fc.assert(
      fc.property(shaped, fc.double({ min: -12, max: 30, noNaN: true }), ({ shape, size }, away) => {
        const made = outlineOf(shape, size);
        const found = parallelTo(made, away);
        if (!found) return;
        expect(isClosed(found.outline, 1e-6)).toBe(true);
        for (const edge of found.outline) {
          for (const part of [0.13, 0.5, 0.81]) {
            const off = distanceTo(made, pointOn(edge, part));
            expect(off).toBeGreaterThan(Math.abs(away) - 1e-4);
            const hollow = shape.kind === 'stepped' || shape.kind === 'scooped';
            if (away <= 0 ? !hollow : shape.kind === 'oval' || shape.kind === 'rounded')
              expect(off).toBeLessThan(Math.abs(away) + 1e-4);
          }
        }
      }),
      { numRuns: 400 },
    );
  });

  it('of any shape outward can be had', () => {
    fc.assert(
      fc.property(shaped, fc.double({ min: 0.01, max: 40, noNaN: true }), ({ shape, size }, away) => {
        expect(parallelTo(outlineOf(shape, size), away)).toBeDefined();
      }),
      { numRuns: 1000 },
    );
  });
});
