/** The cut plan: for each layer, every cut with its lines in both views, its guide setting and its place in the order. */
import type { Box, PerSide, Point, Side, Size } from '../geometry/box';
import type { Edge } from '../geometry/edge';
import type { Outline } from '../geometry/outline';
import type { Cutter, Cutting } from '../job/job';
import type { PlacedWindow, ShapedOpening } from '../layout/layout';
import type { UsedOvercut } from './cutter';

export type View = 'front' | 'back';

/** One cut as it lies in one view, mm from the lower left corner of that view: a straight line, or a curve without corners. */
export interface CutLine {
  /** Unique in the window and the view: its side, such as `left`, or `slant 1`, `curve 2`. */
  readonly name: string;
  /** Which side of the window it is in this view (left and right change places in the back view); undefined where it runs along none. */
  readonly side?: Side;
  /** Where it starts and where it ends, in the direction of travel; without overcut. */
  readonly start: Point;
  readonly end: Point;
  /** What it follows from start to end; undefined of a straight cut. */
  readonly curve?: readonly Edge[];
  /** Where the blade enters and leaves, overcut included. */
  readonly bladeStart: Point;
  readonly bladeEnd: Point;
  /** How far the blade runs past either end. */
  readonly overcutStart: number;
  readonly overcutEnd: number;
  /** Towards which side the cut slopes as it goes into the board, seen in the direction of travel. */
  readonly bevelSide: 'left' | 'right' | 'none';
  /** The same in words of the mat: towards the border, or towards the window's waste; `none` for a straight cut. */
  readonly slopesTo: 'border' | 'window' | 'none';
  /** From the edge of the blank parallel to the cut, on the cut's own side in this view; undefined where no parallel guide can lead it. */
  readonly guideSetting?: number;
  /** The guide setting it would need, where that is more than the cutter's guide reaches. */
  readonly beyondReach?: number;
}

export interface WindowPlan {
  /** The window's short name, such as `A`. */
  readonly name: string;
  readonly title: string;
  /** Index into the layout's windows. */
  readonly index: number;
  readonly shape: PlacedWindow['shape'];
  /** In front view; round a window that is no rectangle. */
  readonly opening: Box;
  readonly face: Box;
  readonly back: Box;
  /** Of a window that is no rectangle, in front view. */
  readonly outlines?: ShapedOpening;
  /** From each edge of the blank to the opening of this layer, in front view. */
  readonly borders: PerSide;
  /** In each view, round the window: of a rectangle left, top, right, bottom as seen from the front. */
  readonly cuts: Readonly<Record<View, readonly CutLine[]>>;
}

/** A step of the cutting order: one cut, made with the guide at one setting or without it. */
export interface CutStep {
  /** 1, 2, 3, ... */
  readonly number: number;
  /** Index into `windows`, and into that window's cuts in the view. */
  readonly window: number;
  readonly cut: number;
  /** Undefined of a cut that no guide can lead. */
  readonly guideSetting?: number;
  /** True when the guide has to be moved before this step. */
  readonly moveGuide: boolean;
  /** True when the board has to be turned before this step. */
  readonly turnBoard: boolean;
  /** True when the window falls out with this cut. */
  readonly dropsOut: boolean;
}

/** Once round a line without a change of tool or lean. */
export interface LinePass {
  /** Which edge of a groove's mouth it follows, seen from the window; `line` of a pen. */
  readonly name: 'inner' | 'outer' | 'line';
  /** In the order of travel; overcuts as the slope asks for. */
  readonly cuts: readonly CutLine[];
}

interface LineMeasures {
  /** Such as `groove 1`. */
  readonly name: string;
  /** The window it goes round: its short name, and its index into `windows`. */
  readonly window: string;
  readonly windowIndex: number;
  /** From the window's edge on the face to the middle of the line. */
  readonly distance: number;
  /** Of the mouth, or of the pen. */
  readonly width: number;
  /** In front view: the middle, and both edges. */
  readonly middle: Outline;
  readonly inner: Outline;
  readonly outer: Outline;
  readonly passes: readonly LinePass[];
}

/** A groove or ruled line on the face of a layer; everything of it is in front view, since it is made from there. */
export type LinePlan =
  | (LineMeasures & { readonly kind: 'groove'; readonly angleDegrees: number; readonly depth: number })
  | (LineMeasures & { readonly kind: 'ruled'; readonly colour: string });

/** A step of making the lines on the face; they come before the windows and have numbers of their own. */
export interface LineStep extends Omit<CutStep, 'window' | 'dropsOut'> {
  /** Index into `lines`, and `cut` into all cuts of its passes. */
  readonly line: number;
}

export interface LayerPlan {
  /** 1 is the top layer. */
  readonly number: number;
  readonly board: string;
  readonly colour: string;
  readonly thickness: number;
  readonly blank: Size;
  readonly bevel: { readonly angleDegrees: number; readonly direction: 'standard' | 'reverse'; readonly run: number };
  /** How far cuts run past a square corner. */
  readonly overcut: UsedOvercut;
  /** The board whose edges lie at the guide: of a layer that is cut behind the top one, the top one. */
  readonly guideOn: { readonly number: number; readonly board: string };
  /** By how much the board is smaller than the blank on every side while it is cut. */
  readonly trim: number;
  readonly windows: readonly WindowPlan[];
  /** On its face; of the top layer alone. */
  readonly lines: readonly LinePlan[];
  readonly lineOrder: readonly LineStep[];
  /** The order for a guided cut, in each view. */
  readonly order: Readonly<Record<View, readonly CutStep[]>>;
}

export interface CutPlan {
  readonly blank: Size;
  /** Seen in the direction of travel, the side the waste lies on. */
  readonly waste: 'right' | 'left';
  /** `behind`: each lower layer is fixed behind the cut one above it. */
  readonly way: Cutting['layers'];
  readonly cutter?: Cutter;
  /** The rule of the cutting order, in words. */
  readonly orderRule: string;
  readonly layers: readonly LayerPlan[];
}
