/** Openings as rings to draw: boxes as they are, outlines in chords too short to be seen, and the slopes of their bevels. */
import { towards, type PerSide, type Point } from '../../core/geometry/box';
import { flatten, type Outline } from '../../core/geometry/outline';
import { stripBetween } from '../../core/geometry/strip';
import type { LayerOpening, ShapedOpening } from '../../core/layout/layout';
import { lightColour } from './colour';
import { ringOf, type Ring, type Shape } from './drawing';

/** How far a chord may lie from its curve, mm: under a pixel at the closest look. */
export const FINE = 0.02;

const rings = new WeakMap<Outline, Ring>();

/** Drawn once for as long as the outline stays the same. */
export function ringAlong(outline: Outline): Ring {
  const known = rings.get(outline);
  if (known) return known;
  const made = flatten(outline, FINE);
  rings.set(outline, made);
  return made;
}

/** One of the three edges of a cut. */
export function edgeRing(cut: LayerOpening, edge: 'opening' | 'face' | 'back'): Ring {
  return cut.outlines ? ringAlong(cut.outlines[edge]) : ringOf(cut[edge]);
}

/** Levels of light that a curved slope is drawn in; each is one shape, however many windows there are. */
const LEVELS = 12;

/** The slopes between the edges of shaped cuts, each piece in the light it faces; on the whole core where bends have vanished. */
export function curvedSlopes(
  key: string,
  core: string,
  cuts: readonly ShapedOpening[],
  light: PerSide,
  from: 'opening' | 'back' = 'opening',
): Shape[] {
  if (cuts.length === 0) return [];
  const base: Ring[] = [];
  const levels = new Map<number, Ring[]>();
  for (const cut of cuts) {
    base.push(ringAlong(cut.back), ringAlong(cut.face));
    const pieces = from === 'back' ? stripBetween(cut.face, cut.back) : stripBetween(cut.opening, cut.face);
    for (const { edges, normal } of pieces ?? []) {
      const level = Math.round(towards(light, normal) * LEVELS) / LEVELS;
      const own = levels.get(level) ?? [];
      if (own.length === 0) levels.set(level, own);
      own.push(flatten(edges, FINE));
    }
  }
  const lit = [...levels].toSorted(([a], [b]) => a - b);
  return [
    { kind: 'area', key: `${key} core`, rings: base, fill: core },
    ...lit.map(([level, area]): Shape => ({
      kind: 'area',
      key: `${key} light ${level}`,
      rings: area,
      fill: lightColour(core, level),
    })),
  ];
}

/** The shadow along the upper left edges of a shape: what it does not share with itself moved down and to the right. */
export function shiftedPair(ring: Ring, by: number): Ring[] {
  return [ring, ring.map(({ x, y }): Point => ({ x: x + by, y: y - by }))];
}
