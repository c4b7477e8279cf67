/** Cells: the windows of a job with their sizes, as leaves of a tree of rows, columns, grids and rings. */
import type { Box, Point, Size } from '../geometry/box';
import type { Outline } from '../geometry/outline';
import type { FaceLine, GapRule, WindowItem, WindowShape } from '../job/job';
import type { PlacedPicture } from './layout';
import type { Measure } from './leaf-shape';

/** `across` runs from left to right, `up` from the top down as rows are read. */
export type Axis = 'across' | 'up';
export type Align = 'start' | 'centre' | 'end' | 'baseline';

/** A picture behind a leaf, with boxes measured from the lower left corner of the leaf's window. */
export interface LeafPicture extends Pick<PlacedPicture, 'index' | 'part' | 'turned'> {
  readonly sheet: Box;
  readonly image: Box;
}

/** What is wrong with a shape before it has a place on the mat; `at` is the path of the opening it concerns. */
export type ShapeFault =
  /** A measure that the opening has no room for, or an outline of one's own that runs into itself at the size. */
  | {
      readonly kind: 'misfit';
      readonly at: string;
      readonly title: string;
      readonly shape: WindowShape;
      readonly size: Size;
      readonly measure: Measure | 'too small';
    }
  /** A joined opening that does not reach the rest; `number` counts the window itself as 1. */
  | {
      readonly kind: 'apart';
      readonly at: string;
      readonly title: string;
      readonly number: number;
      readonly distance: number;
    }
  /** Joined openings that leave a loose piece of board between them. */
  | { readonly kind: 'island'; readonly at: string; readonly size: Size };

/** One window. */
export interface Leaf {
  readonly kind: 'leaf';
  readonly at: string;
  readonly use: WindowItem['use'];
  readonly title: string;
  /** Of the opening of the bottom layer. */
  readonly size: Size;
  readonly shape: WindowShape;
  /** From the window's lower left corner; undefined of a plain rectangle. */
  readonly outline?: Outline;
  /** What keeps the shape from being cut. */
  readonly faults: readonly ShapeFault[];
  /** Of the window itself without what is joined to it, from its lower left corner; said only where something is. */
  readonly main?: Box;
  /** Openings joined to it, likewise. */
  readonly parts?: readonly { readonly title: string; readonly box: Box }[];
  readonly picture?: LeafPicture;
  /** Round it on the face of the top layer. */
  readonly lines: readonly FaceLine[];
  /** Groups it stands in, outermost first. */
  readonly groups: readonly Group[];
  /** How the size came about, for those who follow the sum. */
  readonly from: 'overlap' | 'written' | 'written at face' | 'spread';
}

/** A row (`across`) or a column (`up`). */
export interface Line {
  readonly kind: 'line';
  readonly axis: Axis;
  readonly cells: readonly Cell[];
  readonly gap: GapRule;
  readonly gapAt: string;
  readonly align: Align;
}

export interface Grid {
  readonly kind: 'grid';
  readonly cells: readonly Cell[];
  readonly columns: number;
  readonly gap: Readonly<Record<Axis, GapRule>>;
  readonly gapAt: Readonly<Record<Axis, string>>;
  readonly align: Readonly<Record<Axis, Align>>;
}

/** Windows that stand round another, or on an ellipse, whatever room there is. */
export interface Ring {
  readonly kind: 'ring';
  readonly size: Size;
  readonly cells: readonly Leaf[];
  /** All but the one in the middle, as they follow one another. */
  readonly around: readonly Leaf[];
  /** Lower left corners of the windows, from that of the box round all of them. */
  readonly corners: readonly Point[];
  /** Of the gap from the middle window, or of the ellipse. */
  readonly gapAt: string;
  /** From the first cell, in the middle, to each of the others; undefined on an ellipse. */
  readonly gap?: number;
}

export type Group = Line | Grid | Ring;
export type Cell = Leaf | Group;

/** All windows of a cell, in reading order. */
export function allLeaves(cell: Cell): Leaf[] {
  return cell.kind === 'leaf' ? [cell] : cell.cells.flatMap(allLeaves);
}
