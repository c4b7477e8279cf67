/** Grooves and ruled lines on the proof: the two slopes of a groove in their light and shade, a ruled line in its ink. */
import { towards, type Side } from '../../core/geometry/box';
import type { Outline } from '../../core/geometry/outline';
import { pathData } from '../../core/geometry/path-data';
import { stripBetween } from '../../core/geometry/strip';
import type { LayoutLayer, PlacedLine, PlacedWindow } from '../../core/layout/layout';
import { FINE, type Place } from './place';
import { shaded } from './shade';
import { element } from './xml';

/** A slope that falls towards the window, by the side of the window it lies on: as a bevel, but seldom so deep. */
const LIGHT: Readonly<Record<Side, number>> = { left: -0.14, top: -0.2, right: 0.35, bottom: 0.55 };

/** On the top layer alone. */
export function lineShapes(windows: readonly PlacedWindow[], top: LayoutLayer, place: Place): readonly string[] {
  return windows.flatMap(({ name, lines }) =>
    lines.flatMap((placed) => {
      const { line, middle } = placed;
      if (line.kind === 'groove') return groove(placed, name, top.core, place);
      const stroke = { fill: 'none', stroke: line.colour, 'stroke-width': line.width, 'stroke-linejoin': 'miter' };
      const named = { class: 'ruled-line', 'data-window': name };
      return [element('path', { d: pathData(middle, place, FINE), ...stroke, ...named })];
    }),
  );
}

function groove({ inner, middle, outer }: PlacedLine, window: string, core: string, place: Place): string[] {
  return [
    ...slope(inner, middle, 'inner', -1, window, core, place),
    ...slope(middle, outer, 'outer', 1, window, core, place),
  ];
}

/** `falls` is 1 where the slope falls towards the window, -1 where it falls away from it. */
function slope(
  near: Outline,
  far: Outline,
  edge: 'inner' | 'outer',
  falls: 1 | -1,
  window: string,
  core: string,
  place: Place,
): string[] {
  const named = { class: 'groove', 'data-window': window, 'data-slope': edge };
  const pieces = stripBetween(near, far);
  if (!pieces) {
    // Some bends have vanished on the way: the slope as a whole, without light and shade.
    const d = `${pathData(far, place, FINE)}${pathData(near, place, FINE)}`;
    return [element('path', { d, fill: shaded(core, falls * -0.1), 'fill-rule': 'evenodd', ...named })];
  }
  return pieces.map(({ edges, normal }) => {
    const facing = { x: falls * normal.x, y: falls * normal.y };
    return element('path', { d: pathData(edges, place, FINE), fill: shaded(core, towards(LIGHT, facing)), ...named });
  });
}
