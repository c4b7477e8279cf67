/** Parallel curves of outlines: every edge moved square to itself by one distance, corners kept as corners. */
import { cleaned } from './clean';
import { directionOn } from './edge';
import type { Outline } from './outline';
import { rawParallel } from './raw-parallel';
import { crossingOf } from './region';
import type { Strand } from './strand';

export interface Parallel {
  readonly outline: Outline;
  /** Edges of the outline that shrank to nothing on the way, by their index in it. */
  readonly vanished: readonly number[];
  /** Corners that could not be kept as points: rounded, or cut off square. */
  readonly blunted: number;
}

/**
 * The curve at a distance outward (negative: inward), mm, of a simple, anticlockwise outline. Undefined where nothing is
 * left, or where it falls into several pieces or closes round a hole.
 *
 * Corners stay corners, outward and inward: neighbours are lengthened or shortened to where they, or the circles and ovals
 * they lie on, meet. A corner of two lines that would run out further than 8 times the distance from the outline's is cut
 * off square there; one of curves that do not meet so near, or only in a much sharper point of less than 30 degrees, is
 * rounded at the distance. What far parts of the outline run over is left out.
 */
export function parallelTo(outline: Outline, away: number): Parallel | undefined {
  const raw = rawParallel(outline, away);
  const edges = raw.map(({ edge }) => edge);
  // Nothing lies in its way where every edge keeps its direction and the curve meets itself nowhere.
  const isSimple = raw.every(({ within }) => !within) && (isConvex(outline) || !crossingOf(edges));
  const strands = isSimple ? raw : cleaned(raw);
  return strands && parallelOf(outline, strands);
}

function parallelOf(outline: Outline, strands: readonly Strand[]): Parallel {
  const followed = new Set(strands.map(({ follows }) => follows));
  return {
    outline: strands.map(({ edge }) => edge),
    vanished: [...outline.keys()].filter((index) => !followed.has(index)),
    blunted: strands.filter(({ follows }) => follows === undefined).length,
  };
}

/** Turns that are less are none. */
const STRAIGHT = 1e-9;

/** True of an outline that bends to the left only: none of its parallel curves can run into itself. */
function isConvex(outline: Outline): boolean {
  return outline.every((edge, index) => {
    const next = outline[(index + 1) % outline.length];
    if (!next || (edge.kind !== 'line' && edge.sweep < 0)) return false;
    const [a, b] = [directionOn(edge, 1), directionOn(next, 0)];
    return a.x * b.y - a.y * b.x > -STRAIGHT;
  });
}
