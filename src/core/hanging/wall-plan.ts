/** Frames as they hang on the wall, mm: x to the right from the wall's left edge, y up from the floor. */
import type { Box, Point, Size } from '../geometry/box';
import type { HangerKind } from '../job/hanging';
import type { WallArrangement, WallEdge } from '../job/wall';

/** A frame with all that decides where its hooks come to lie. */
export interface MeasuredFrame {
  /** Path in the written job. */
  readonly at: string;
  readonly title: string;
  /** True of the job's own frame. */
  readonly isOwn: boolean;
  /** Outside. */
  readonly size: Size;
  /** From its top to where it sits on its hooks. */
  readonly drop: number;
  /** Whether the drop was measured, or follows from how this job's frame hangs. */
  readonly dropFrom: 'measured' | 'as hanging has it';
  /** Between its hooks; 0 for one. */
  readonly hooksApart: number;
  /** kg; left out where it is not known, or not whole. */
  readonly weight?: number;
  /** From the wall to its front, as far as it is known. */
  readonly front?: number;
  readonly edge?: number;
  readonly centre?: number;
}

export interface HookPlace {
  /** Where the wire, ring, teeth or cleat sit. */
  readonly seat: Point;
  /** The nail's hole; undefined: where the hook has it is unknown. */
  readonly nail?: Point;
  /** From the edge that places are counted from. */
  readonly across: number;
}

export interface HungFrame extends MeasuredFrame {
  /** From 1, from that edge, rows from the top. */
  readonly number: number;
  readonly box: Box;
  /** From that edge to its nearer side and to its middle. */
  readonly near: number;
  readonly middle: number;
  /** Height of its middle. */
  readonly height: number;
  /** From left to right. */
  readonly hooks: readonly HookPlace[];
}

export interface WallPlan {
  /** What sits on the hooks. */
  readonly kind: HangerKind;
  readonly from: WallEdge;
  /** Undefined: unknown. */
  readonly width?: number;
  /** From floor to ceiling; undefined: unknown. */
  readonly height?: number;
  readonly centre: number;
  readonly furniture?: number;
  readonly arrangement: WallArrangement;
  /** From the nail's hole down to the seat; undefined: unknown. */
  readonly seat?: number;
  readonly frames: readonly HungFrame[];
  /** The box round all frames. */
  readonly around: Box;
  /** From the edge that is counted from to the frames; and from them to the other edge, where the wall's width is known. */
  readonly before: number;
  readonly after?: number;
  /** How many of these frames fit in the row; only of a row of frames alike on a wall of known width. */
  readonly most?: number;
}
