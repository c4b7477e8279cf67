/** The openings of all layers round a window that is no rectangle: parallel curves of the bottom opening, or larger ellipses. */
import { grow, type Box } from '../geometry/box';
import { oval, type OvalEdge } from '../geometry/edge';
import { greatestDistance, nearest } from '../geometry/nearness';
import { parallelTo, type Parallel } from '../geometry/offset';
import { boundsOf, boxOutline, type Outline } from '../geometry/outline';
import type { LayerOpening, LayoutLayer, ShapedOpening } from './layout';
import { lostBends } from './lost-bends';

/** Whether each layer follows the one below at one distance, or is an ellipse with larger axes. */
export type Way = 'parallel' | 'axes';

/**
 * From the top layer down. Where an outline cannot be followed so far out or in, the layer is left with its boxes alone.
 * Every edge is a parallel curve of the bottom opening itself, so that no error adds up from layer to layer.
 */
export function shapedOpenings(
  window: Box,
  outline: Outline,
  way: Way,
  layers: readonly LayoutLayer[],
): readonly LayerOpening[] {
  const openings: LayerOpening[] = [];
  let away = 0;
  let below: Outline | undefined;
  for (const layer of layers.toReversed()) {
    const made = shapedOpening(outline, way, away, layer);
    if (below && made && way === 'axes') {
      const first = openings[0];
      const reveal = { least: nearest(below, made.opening).distance, greatest: greatestDistance(below, made.opening) };
      if (first?.outlines) openings[0] = { ...first, outlines: { ...first.outlines, reveal } };
    }
    openings.unshift(made ? { ...boxesOf(made), outlines: made } : plainOpening(grow(window, away), layer));
    below = made?.opening;
    away += layer.reveal.left;
  }
  return openings;
}

function shapedOpening(outline: Outline, way: Way, away: number, layer: LayoutLayer): ShapedOpening | undefined {
  const opening = way === 'axes' ? largerEllipse(outline, away) : followed(outline, away);
  const { run } = layer.bevel;
  const wide = opening && (way === 'axes' ? followed(opening.outline, run) : followed(outline, away + run));
  if (!opening || !wide) return undefined;
  const standard = layer.bevel.direction === 'standard';
  return {
    opening: opening.outline,
    face: standard ? wide.outline : opening.outline,
    back: standard ? opening.outline : wide.outline,
    vanished: Math.max(lostBends(outline, opening, away), lostBends(outline, wide, away + run)),
    blunted: Math.max(opening.blunted, wide.blunted),
  };
}

function followed(outline: Outline, away: number): Parallel | undefined {
  return away === 0 ? { outline, vanished: [], blunted: 0 } : parallelTo(outline, away);
}

/** An ellipse with both half axes longer. */
function largerEllipse(outline: Outline, by: number): Parallel {
  const larger = ({ centre, radii, start, sweep }: OvalEdge) =>
    oval(centre, { x: radii.x + by, y: radii.y + by }, 0, start, sweep);
  return { outline: outline.map((edge) => (edge.kind === 'oval' ? larger(edge) : edge)), vanished: [], blunted: 0 };
}

function boxesOf({ opening, face, back }: ShapedOpening): LayerOpening {
  return { opening: boundsOf(opening), face: boundsOf(face), back: boundsOf(back) };
}

/** What is seen through, as an outline also where it is a plain box. */
export function openingOutline({ opening, outlines }: LayerOpening): Outline {
  return outlines?.opening ?? boxOutline(opening);
}

/** Round a plain rectangle, or in place of a shape that cannot be followed. */
export function plainOpening(opening: Box, layer: LayoutLayer): LayerOpening {
  const wide = grow(opening, layer.bevel.run);
  const standard = layer.bevel.direction === 'standard';
  return { opening, face: standard ? wide : opening, back: standard ? opening : wide };
}
