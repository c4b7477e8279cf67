/** Grooves and ruled lines as they are drawn: on the face in their own light and ink, from the back a pale hint of them. */
import { towards, type Point } from '../../core/geometry/box';
import { flatten, type Outline } from '../../core/geometry/outline';
import { stripBetween } from '../../core/geometry/strip';
import type { Layout, PlacedLine } from '../../core/layout/layout';
import { lightColour } from './colour';
import type { Ring, Shape } from './drawing';
import { SLOPE_LIGHT } from './light';
import { FINE, ringAlong } from './shape-rings';

/** On the board's back, where they lie on the other side. */
const HINT = '#ddd5c3';
/** Levels of light, as curved bevels have. */
const LEVELS = 12;

export function frontLines({ windows, layers }: Layout): Shape[] {
  const placed = windows.flatMap(({ lines }) => lines);
  if (placed.length === 0) return [];
  const grooves = placed.filter(({ line }) => line.kind === 'groove');
  return [...grooveShapes(grooves, layers[0]?.core ?? HINT), ...ruledShapes(placed)];
}

export function backLines({ windows }: Layout): Shape[] {
  const rings = windows.flatMap(({ lines }) => lines.flatMap(ringsOf));
  return rings.length === 0 ? [] : [{ kind: 'area', key: 'lines on the other side', rings, fill: HINT }];
}

/** A ring and the ring within it, which make a band. */
function ringsOf({ inner, outer }: PlacedLine): Ring[] {
  return [ringAlong(outer), ringAlong(inner)];
}

function ruledShapes(placed: readonly PlacedLine[]): Shape[] {
  const inks = new Map<string, Ring[]>();
  for (const one of placed) {
    if (one.line.kind !== 'ruled') continue;
    const rings = inks.get(one.line.colour) ?? [];
    inks.set(one.line.colour, rings);
    rings.push(...ringsOf(one));
  }
  return [...inks].map(([fill, rings]) => ({ kind: 'area', key: `ruled ${fill}`, rings, fill }));
}

/** The slope nearer to the window falls away from it, the other one towards it. */
function grooveShapes(grooves: readonly PlacedLine[], core: string): Shape[] {
  if (grooves.length === 0) return [];
  const levels = new Map<number, Ring[]>();
  const light = (near: Outline, far: Outline, falls: 1 | -1) => {
    for (const { edges, normal } of stripBetween(near, far) ?? []) {
      const facing: Point = { x: falls * normal.x, y: falls * normal.y };
      const level = Math.round(towards(SLOPE_LIGHT, facing) * LEVELS) / LEVELS;
      const rings = levels.get(level) ?? [];
      levels.set(level, rings);
      rings.push(flatten(edges, FINE));
    }
  };
  for (const { inner, middle, outer } of grooves) {
    light(inner, middle, -1);
    light(middle, outer, 1);
  }
  return [
    { kind: 'area', key: 'grooves', rings: grooves.flatMap(ringsOf), fill: core },
    ...[...levels]
      .toSorted(([a], [b]) => a - b)
      .map(([level, rings]): Shape => ({
        kind: 'area',
        key: `groove light ${level}`,
        rings,
        fill: lightColour(core, level),
      })),
  ];
}
