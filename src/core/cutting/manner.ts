/** How all cuts of a layer are made in one view. */
import type { CutLine } from './plan';

export interface Manner {
  /** Seen in the direction of travel. */
  readonly waste: 'right' | 'left';
  readonly slopesTo: CutLine['slopesTo'];
  readonly bevelSide: CutLine['bevelSide'];
  /** The bevel's, mm. */
  readonly run: number;
  /** What the user has set it to at a square corner, mm. */
  readonly overcut?: number;
  /** Longest setting of the guide, mm; undefined: long enough. */
  readonly reach?: number;
}

/** Directions that differ by less go on smoothly, radians: far below what a hand or a machine can tell. */
export const SMOOTH = 1e-6;

/** A blade that runs past a sharper corner than this would, goes no further, as a multiple of that past a square one. */
const MOST = 3;

/**
 * How far the blade must run past a corner, mm; `turn` is how far the outline turns there, anticlockwise round the window
 * positive, radians. Where the far edge of the cut lies outside the line the corner is wider there by the bevel run, and
 * the far edges meet only beyond it: `run x tan(turn / 2)`. At a corner that juts into the window, the other way round.
 */
export function overcutAt(turn: number, { slopesTo, run, overcut }: Manner): number {
  if (Math.abs(turn) < SMOOTH) return 0;
  const wider = turn > 0 ? 'border' : 'window';
  const square = overcut !== undefined && turn > 0 ? overcut : slopesTo === wider ? (overcut ?? run) : 0;
  return Math.abs(Math.abs(turn) - Math.PI / 2) < 1e-9 ? square : square * Math.min(MOST, Math.tan(Math.abs(turn) / 2));
}

/** A setting longer than the guide's reach by no more than this is within it, mm. */
const REACHED = 1e-6;

/** The guide setting of a cut along an edge, or how far the guide would have to reach. */
export function guideOf(setting: number, { reach }: Manner): Pick<CutLine, 'guideSetting' | 'beyondReach'> {
  return reach !== undefined && setting > reach + REACHED ? { beyondReach: setting } : { guideSetting: setting };
}
