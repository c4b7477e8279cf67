/** How much board a mat keeps: its sheet less its windows, with their curves and bevels as they are. */
import { heightOf, widthOf, type Box } from '../geometry/box';
import { areaOf, lengthOf } from '../geometry/outline';
import type { LayerOpening, Layout } from '../layout/layout';

/** Square mm of what is cut out of a layer, by volume: between the areas on its face and on its back. */
export function cutOutOf({ windows, layers }: Pick<Layout, 'windows' | 'layers'>, index: number): number {
  const run = layers[index]?.bevel.run ?? 0;
  return windows.reduce((sum, window) => {
    const opening = window.layers[index];
    return opening ? sum + meanArea(opening, run) : sum;
  }, 0);
}

/**
 * A bevel of run `r` is followed at every depth by a parallel curve of the opening, whose area grows as
 * `A + P s + c s²` with the distance `s` (Steiner's formula): the mean over the depth follows from both ends and `P`.
 * Exact for rectangles, ovals and whatever keeps its corners; where two curves meet in a hollow corner, or an edge ends
 * within the bevel, good to a hundred-thousandth part.
 */
function meanArea(opening: LayerOpening, run: number): number {
  const [small, face, back] = edgesOf(opening);
  const wide = Math.max(face.area, back.area);
  return (2 * small.area + wide) / 3 + (small.length * run) / 6;
}

interface Edge {
  readonly area: number;
  readonly length: number;
}

function edgesOf({ opening, face, back, outlines }: LayerOpening): readonly [Edge, Edge, Edge] {
  if (!outlines) return [boxEdge(opening), boxEdge(face), boxEdge(back)];
  const of = (which: 'opening' | 'face' | 'back') => ({
    area: areaOf(outlines[which]),
    length: lengthOf(outlines[which]),
  });
  return [of('opening'), of('face'), of('back')];
}

function boxEdge(box: Box): Edge {
  const [width, height] = [widthOf(box), heightOf(box)];
  return { area: width * height, length: 2 * (width + height) };
}
