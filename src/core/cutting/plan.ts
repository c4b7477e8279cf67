/** The cut plan: for each layer, every cut with its lines in both views, its guide setting and its place in the order. */
import type { Box, PerSide, Point, Side, Size } from '../geometry/box';

export type View = 'front' | 'back';

/** One straight cut as it lies in one view, mm from the lower left corner of that view. */
export interface CutLine {
  /** Which side of the window it is in this view (left and right change places in the back view). */
  readonly side: Side;
  /** The corner it starts at and the corner it ends at, in the direction of travel; without overcut. */
  readonly start: Point;
  readonly end: Point;
  /** Where the blade enters and leaves, overcut included. */
  readonly bladeStart: Point;
  readonly bladeEnd: Point;
  /** How far the blade runs past each corner. */
  readonly overcut: number;
  /** Towards which side the cut slopes as it goes into the board, seen in the direction of travel. */
  readonly bevelSide: 'left' | 'right' | 'none';
  /** The same in words of the mat: towards the border, or towards the window's waste; `none` for a straight cut. */
  readonly slopesTo: 'border' | 'window' | 'none';
  /** From the edge of the blank parallel to the cut, on the cut's own side in this view. */
  readonly guideSetting: number;
}

/** One of the four cuts of a window. */
export interface Cut {
  /** Unique in the layer: window name and side of the front view, such as `A left`. */
  readonly name: string;
  /** Side of the window in front view. */
  readonly side: Side;
  readonly front: CutLine;
  readonly back: CutLine;
}

export interface WindowPlan {
  /** The window's short name, such as `A`. */
  readonly name: string;
  readonly title: string;
  /** Index into the layout's windows. */
  readonly index: number;
  /** In front view. */
  readonly opening: Box;
  readonly face: Box;
  readonly back: Box;
  /** From each edge of the blank to the opening of this layer, in front view. */
  readonly borders: PerSide;
  /** Left, top, right, bottom of the front view. */
  readonly cuts: readonly Cut[];
}

/** A step of the cutting order: one cut made with the guide at one setting. */
export interface CutStep {
  /** 1, 2, 3, ... */
  readonly number: number;
  /** Index into `windows`, and into that window's `cuts`. */
  readonly window: number;
  readonly cut: number;
  readonly guideSetting: number;
  /** True when the guide has to be moved before this step. */
  readonly moveGuide: boolean;
  /** True when the board has to be turned before this step. */
  readonly turnBoard: boolean;
  /** True when the window falls out with this cut. */
  readonly dropsOut: boolean;
}

export interface LayerPlan {
  /** 1 is the top layer. */
  readonly number: number;
  readonly board: string;
  readonly colour: string;
  readonly thickness: number;
  readonly blank: Size;
  readonly bevel: { readonly angleDegrees: number; readonly direction: 'standard' | 'reverse'; readonly run: number };
  readonly windows: readonly WindowPlan[];
  /** The order for a guided cut, in each view. */
  readonly order: Readonly<Record<View, readonly CutStep[]>>;
}

export interface CutPlan {
  readonly blank: Size;
  /** Seen in the direction of travel, the side the waste lies on. */
  readonly waste: 'right' | 'left';
  /** The rule of the cutting order, in words. */
  readonly orderRule: string;
  readonly layers: readonly LayerPlan[];
}
