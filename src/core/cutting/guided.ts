/** A guided cut in the measures of the bench: the edge at the guide, and start and stop from the edge beside it. */
import type { Side, Size } from '../geometry/box';
import type { CutLine } from './plan';

export interface GuidedMeasures {
  /** Edge of the board, in the view, that lies at the guide, and how far from it the cut runs, mm. */
  readonly edge: Side;
  readonly setting: number;
  /** Edge that the blade comes from. From it, along the cut, to where the blade enters and to where it leaves, mm. */
  readonly from: Side;
  readonly start: number;
  readonly stop: number;
}

/** Undefined of a cut that no guide leads. */
export function measureGuided(line: CutLine, board: Size): GuidedMeasures | undefined {
  const { side: edge, guideSetting: setting, bladeStart, bladeEnd } = line;
  if (edge === undefined || setting === undefined) return undefined;
  const upright = edge === 'left' || edge === 'right';
  const [start, stop] = upright ? [bladeStart.y, bladeEnd.y] : [bladeStart.x, bladeEnd.x];
  const length = upright ? board.height : board.width;
  return start <= stop
    ? { edge, setting, from: upright ? 'bottom' : 'left', start, stop }
    : { edge, setting, from: upright ? 'top' : 'right', start: length - start, stop: length - stop };
}
