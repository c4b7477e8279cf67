/** A job as it is understood: every default filled in and every length in millimetres. */
import type { PerSide, Size } from '../geometry/box';
import type { Shape } from '../geometry/shapes';
import type { InchStep, MetricStep, Unit } from '../units';
import type { BORDER_RULES } from './written-borders';
import type { Hanging } from './hanging';
import type { Package, Quality, Varies } from './package';
import type { Wall } from './wall';
import type { CONCERNS, PICTURE_KINDS, WINDOW_USES, WrittenNode } from './written';
import type { FRAME_BUILDS, FRAME_CORNERS, FRAME_PARTS } from './written-frame';

export type PictureKind = (typeof PICTURE_KINDS)[number];
export type BorderRule = (typeof BORDER_RULES)[number];
export type WindowUse = (typeof WINDOW_USES)[number];

export type Concern = (typeof CONCERNS)[number];
export type FrameBuild = (typeof FRAME_BUILDS)[number];
export type FrameCorners = (typeof FRAME_CORNERS)[number];
export type FramePart = (typeof FRAME_PARTS)[number];

export interface Picture {
  readonly id: string;
  readonly title: string;
  readonly kind: PictureKind;
  /** The whole sheet. */
  readonly sheet: Size;
  readonly image: Size;
  /** Sheet's margin on each side of the image; all zero when the image fills the sheet. */
  readonly margins: PerSide;
  readonly overlapFrom: 'image' | 'sheet';
  /** Positive covers, negative shows paper. */
  readonly overlap: PerSide;
  /** Of a canvas, the depth of its stretcher. */
  readonly thickness: number;
  /** False where the job leaves it out and it is taken as usual. */
  readonly thicknessSaid: boolean;
  /** Between what it may lie; equal to the thickness where the job does not say. */
  readonly thinnest: number;
  readonly thickest: number;
  readonly varies: Varies;
  /** kg, where the job says it. */
  readonly weight?: number;
  readonly concerns: readonly Concern[];
  readonly file?: string;
}

export interface Frame {
  /** Undefined: made to fit the borders. */
  readonly blank?: Size;
  readonly readyMade?: string;
  /** Which way it hangs, where the size as written had to be turned for that. */
  readonly turned?: 'portrait' | 'landscape';
  /** Of a float frame the gap on both sides. */
  readonly allowance: number;
  /** A float frame has none: 0. */
  readonly lip: number;
  readonly mouldingWidth: number;
  /** Front to back. */
  readonly mouldingDepth?: number;
  readonly rabbetDepth?: number;
  readonly colour: string;
  /** What it is called on the shelf: a frame, or the moulding it is made of. */
  readonly name?: string;
  readonly build: FrameBuild;
  readonly corners: FrameCorners;
  readonly comesWith: readonly FramePart[];
  /** From the back of the lip to the front of each groove for a back; the nearest first. */
  readonly grooves: readonly number[];
  readonly float: {
    readonly gap: number;
    readonly insideDepth?: number;
    /** How far the canvas's face lies behind the front of the frame. */
    readonly setBack: number;
  };
  /** Of the empty frame, kg. */
  readonly weight?: number;
  /** Of its wood, g/cm³. */
  readonly density?: number;
}

export interface Layer {
  readonly board: string;
  readonly colour: string;
  readonly core: string;
  readonly thickness: number;
  /** Between what it may lie; as is usual for board where the job does not say. */
  readonly thinnest: number;
  readonly thickest: number;
  readonly varies: Varies;
  readonly quality: Quality;
  readonly bevel: { readonly angleDegrees: number; readonly direction: 'standard' | 'reverse' };
  /** Zero on all sides for the top layer. */
  readonly reveal: PerSide;
}

/** A decorative line on the face of the top layer round a window, which it follows at one distance. */
export type FaceLine = Groove | RuledLine;

interface LineMeasures extends Item {
  /** From the window's edge on the face outward to the middle of the line. */
  readonly distance: number;
  /** Of a groove's mouth, or of the pen. */
  readonly width: number;
}

export interface Groove extends LineMeasures {
  readonly kind: 'groove';
  /** Of each slope, from the face's normal. */
  readonly angleDegrees: number;
}

export interface RuledLine extends LineMeasures {
  readonly kind: 'ruled';
  readonly colour: string;
}

/** A fixed length, or shared out. */
export type GapRule = number | 'with-borders' | 'between';

/** A shape with its measures, mm; the rise of an arch is left out where it follows from the width. */
export type WindowShape =
  | Exclude<Shape, { kind: 'arch' | 'pointed' | 'oval' }>
  | { readonly kind: 'oval'; readonly reveal: 'parallel' | 'axes' }
  | { readonly kind: 'arch'; readonly rise?: number }
  | { readonly kind: 'pointed'; readonly rise?: number }
  /** A drawing of one's own: SVG path data, which is one closed line that does not cross itself. */
  | { readonly kind: 'outline'; readonly path: string };

export type QuarterTurn = 0 | 90 | 180 | 270;

interface Item {
  /** Path in the written job. */
  readonly at: string;
}

export interface WindowItem extends Item {
  readonly kind: 'window';
  /** Index into `pictures`. */
  readonly picture?: number;
  readonly use: WindowUse | 'picture';
  readonly title: string;
  /** As written: at the opening or at the face, as `measuredAt` says. */
  readonly size?: Size;
  readonly shape: WindowShape;
  /** Degrees anticlockwise, with the picture in it. */
  readonly turned: QuarterTurn;
  /** The shape alone, left for right, before it is turned. */
  readonly mirrored: boolean;
  /** Openings that become one with it. */
  readonly joined: readonly JoinedPart[];
  /** Its own, or the mat's. */
  readonly lines: readonly FaceLine[];
}

/** From the edges of the window it is joined to, inward; what is left out is centred. */
export interface JoinedPart extends Item {
  readonly title: string;
  readonly size: Size;
  readonly shape: WindowShape;
  readonly turned: QuarterTurn;
  readonly mirrored: boolean;
  readonly left?: number;
  readonly right?: number;
  readonly top?: number;
  readonly bottom?: number;
}

export interface SpreadItem extends Item {
  readonly kind: 'spread';
  readonly picture: number;
  readonly title: string;
  readonly along: 'row' | 'column';
  readonly bars: 'hide' | 'split';
  readonly gap: number;
  /** One for each window, adding up to 1. */
  readonly shares: readonly number[];
  /** Degrees anticlockwise by which the picture is turned behind them. */
  readonly turned: QuarterTurn;
  /** Round each of its windows. */
  readonly lines: readonly FaceLine[];
}

export type Horizontal = 'left' | 'centre' | 'right';
export type Vertical = 'top' | 'centre' | 'bottom' | 'baseline';

export interface RowItem extends Item {
  readonly kind: 'row';
  readonly items: readonly Arrangement[];
  readonly gap: GapRule;
  readonly align: Vertical;
}
export interface ColumnItem extends Item {
  readonly kind: 'column';
  readonly items: readonly Arrangement[];
  readonly gap: GapRule;
  readonly align: Horizontal;
}
export interface GridItem extends Item {
  readonly kind: 'grid';
  readonly items: readonly Arrangement[];
  readonly columns: number;
  readonly columnGap: GapRule;
  readonly rowGap: GapRule;
  /** Paths of the written gaps. */
  readonly columnGapAt: string;
  readonly rowGapAt: string;
  readonly alignColumns: Horizontal;
  readonly alignRows: Vertical;
}
/** Windows round another, or on an ellipse. */
export interface RingItem extends Item {
  readonly kind: 'ring';
  readonly middle?: WindowItem;
  readonly around: readonly WindowItem[];
  /** From the outline of the middle one; not asked on an ellipse. */
  readonly gap: number;
  readonly on?: Size;
  readonly spacing: 'equal gaps' | 'equal angles';
  /** Radians anticlockwise from the right. */
  readonly start: number;
}
export type Arrangement = WindowItem | SpreadItem | RowItem | ColumnItem | GridItem | RingItem;

export interface FreeWindow {
  readonly window: WindowItem;
  readonly left?: number;
  readonly right?: number;
  readonly top?: number;
  readonly bottom?: number;
}

export interface Borders {
  readonly rule: BorderRule;
  readonly measured: 'as cut' | 'as seen';
  readonly all?: number;
  readonly sides?: number;
  readonly left?: number;
  readonly right?: number;
  readonly top?: number;
  readonly bottom?: number;
  readonly amount: number;
  readonly ratio?: number;
  /** Top's part of the leftover height, 0 to 1. */
  readonly topShare: number;
  readonly step: number;
  /** What every border should lie within, measured as `measured` says. */
  readonly range: {
    readonly least: number;
    readonly greatest?: number;
    /** True where the job says nothing of the least, so that nobody is told of narrower borders. */
    readonly isUsual?: true;
  };
}

/** A cutter as its user has measured it. */
export interface Cutter {
  readonly name: string;
  /** Longest setting of its guide; undefined: longer than any board. */
  readonly reach?: number;
  /** Scale reading less guide setting. */
  readonly scaleOffset?: number;
  /** From the thinnest board to the thickest. */
  readonly overcuts: readonly { readonly thickness: number; readonly overcut: number }[];
  readonly bevelAngleDegrees?: number;
  /** The side of its blade that the waste lies on, seen in the direction of travel. */
  readonly waste?: 'right' | 'left';
}

export interface Cutting {
  /** As the user gave it, whatever the board. */
  readonly overcut?: number;
  readonly waste: 'right' | 'left';
  readonly cutter?: Cutter;
  /** `behind`: a lower layer is fixed behind the cut one above it and cut from its edges. */
  readonly layers: 'apart' | 'behind';
  /** By how much a layer that is cut behind is smaller on every side. */
  readonly behindTrim: number;
}

export interface Job {
  readonly title: string;
  readonly units: Unit;
  readonly steps: { readonly in: InchStep; readonly mm: MetricStep };
  readonly pictures: readonly Picture[];
  readonly frame: Frame;
  readonly package: Package;
  /** Up to 4, from the top layer down; none: the picture goes into its frame as it is. */
  readonly layers: readonly Layer[];
  readonly measuredAt: 'opening' | 'face';
  /** Undefined when there are only freely placed windows. */
  readonly windows?: Arrangement;
  /** What "windows" would say where the job leaves it out. */
  readonly impliedWindows?: WrittenNode;
  readonly free: readonly FreeWindow[];
  readonly borders: Borders;
  readonly cutting: Cutting;
  readonly hanging: Hanging;
  readonly wall: Wall;
}
