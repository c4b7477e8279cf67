/** Slopes on the proof: the bevels round windows and the members of the moulding, with their light and shade. */
import { SIDES, towards, type Box, type Point, type Side } from '../../core/geometry/box';
import { line } from '../../core/geometry/edge';
import { pathData } from '../../core/geometry/path-data';
import { stripBetween } from '../../core/geometry/strip';
import type { LayerOpening } from '../../core/layout/layout';
import { FINE, type Place } from './place';
import { shaded } from './shade';
import { element } from './xml';

export interface NamedOpening extends LayerOpening {
  readonly name: string;
}

/** A bevel falls away into the window: the upper and left ones lie in shade, the lower and right ones in light. */
const BEVEL_LIGHT: Readonly<Record<Side, number>> = { left: -0.1, top: -0.16, right: 0.35, bottom: 0.55 };
/** A moulding stands up: its upper and left members are lit. */
const MOULDING_LIGHT: Readonly<Record<Side, number>> = { left: 0.1, top: 0.18, right: -0.12, bottom: -0.2 };

/** The bevel round one opening, where it shows the core. */
export function bevelOf(
  { name, opening, face, outlines }: NamedOpening,
  core: string,
  place: Place,
): readonly string[] {
  if (!outlines) return SIDES.map((side) => bevel(side, face, opening, core, name, place));
  const pieces = stripBetween(outlines.opening, outlines.face);
  const light = { class: 'bevel', 'data-window': name };
  if (pieces) {
    return pieces.map(({ edges, normal }) =>
      element('path', { d: pathData(edges, place, FINE), fill: shaded(core, towards(BEVEL_LIGHT, normal)), ...light }),
    );
  }
  // Some bends have vanished on the way to the face: the slope as a whole, without light and shade.
  const d = `${pathData(outlines.face, place, FINE)}${pathData(outlines.opening, place, FINE)}`;
  return [element('path', { d, fill: core, 'fill-rule': 'evenodd', ...light })];
}

function bevel(side: Side, outer: Box, inner: Box, core: string, window: string, place: Place): string {
  return element('path', {
    d: outline(member(side, outer, inner), place),
    fill: shaded(core, BEVEL_LIGHT[side]),
    class: 'bevel',
    'data-window': window,
    'data-side': side,
  });
}

/** Four members of a frame, mitred at the corners. */
export function moulding(outer: Box, inner: Box, colour: string, place: Place): string {
  const members = SIDES.map((side) =>
    element('path', {
      d: outline(member(side, outer, inner), place),
      fill: shaded(colour, MOULDING_LIGHT[side]),
      stroke: shaded(colour, -0.35),
      'stroke-width': 0.15,
      'stroke-linejoin': 'round',
      class: 'member',
      'data-side': side,
    }),
  );
  return element('g', { class: 'frame' }, members);
}

/** The mitred strip between two boxes on one side. */
function member(side: Side, outer: Box, inner: Box): readonly Point[] {
  const [a, b, c, d] = corners(outer);
  const [e, f, g, h] = corners(inner);
  if (side === 'bottom') return [a, b, f, e];
  if (side === 'right') return [b, c, g, f];
  if (side === 'top') return [c, d, h, g];
  return [d, a, e, h];
}

/** Anticlockwise from the lower left. */
function corners({ left, bottom, right, top }: Box): readonly [Point, Point, Point, Point] {
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

function outline(points: readonly Point[], place: Place): string {
  const edges = points.map((from, index) => line(from, points[(index + 1) % points.length] ?? from));
  return pathData(edges, place, FINE);
}
