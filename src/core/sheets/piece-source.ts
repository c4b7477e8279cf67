/** Where a piece of a sheet plan comes from: its job, what it is there, and the windows that are cut into it. */
import type { Box } from '../geometry/box';
import type { PieceKind } from '../pieces/piece';

export interface PieceSource {
  /** Place of its job among those that are planned together, from 0. */
  readonly job: number;
  /** The job's title. */
  readonly title: string;
  readonly kind: PieceKind;
  /** Such as `Mat layer 1`; different for each line of one job. */
  readonly name: string;
  /** 1 is the top layer. */
  readonly layer?: number;
  /** Of a mat: how many layers its job has. */
  readonly layers?: number;
  readonly windows: readonly WindowInPiece[];
}

/** A window as it is cut into the piece, seen from the front. */
export interface WindowInPiece {
  readonly name: string;
  readonly title: string;
  /** mm from the piece's lower left corner, as it hangs; of a shape the box that lies round it. */
  readonly box: Box;
  /** False of a shape that is no rectangle. */
  readonly isRectangle: boolean;
}
