/** The layout: every window and layer placed on the blank, in front view, mm from its lower left corner. */
import type { Box, PerSide, Size } from '../geometry/box';
import type { Outline } from '../geometry/outline';
import type { FaceLine, GapRule, QuarterTurn, WindowShape } from '../job/job';
import type { Problem } from '../problem';

/** How one layer is cut round one window. */
export interface LayerOpening {
  /** The smallest outline one can see through this layer (back edge of a standard bevel, face edge of a reverse one). */
  readonly opening: Box;
  /** The cut's edge on the layer's face. */
  readonly face: Box;
  /** The cut's edge on the layer's back. */
  readonly back: Box;
  /** The same three of a window that is no rectangle; the boxes then lie round them. */
  readonly outlines?: ShapedOpening;
}

/** Edges of a cut that follows a shape. */
export interface ShapedOpening {
  readonly opening: Outline;
  readonly face: Outline;
  readonly back: Outline;
  /** How many edges of the window's shape are too short, or bend too tightly, to be followed this far out. */
  readonly vanished: number;
  /** Corners that could not be kept as points so far out, and are rounded or cut off. */
  readonly blunted: number;
  /** How far the opening of the layer above lies away, where that differs along an oval; undefined for the top layer. */
  readonly reveal?: { readonly least: number; readonly greatest: number };
}

/** Where a picture lies behind a window. */
export interface PlacedPicture {
  /** Index into the job's pictures. */
  readonly index: number;
  /** The whole sheet of paper. */
  readonly sheet: Box;
  /** The image on it; equal to the sheet when it fills it. */
  readonly image: Box;
  /** Degrees anticlockwise by which it is turned behind the window. */
  readonly turned?: QuarterTurn;
  /** How far the opening, without what is joined to it, covers the image on each side; negative: paper shows. */
  readonly overlap: PerSide;
  /** How far the opening covers the sheet on each side; negative: the sheet floats. */
  readonly hold: PerSide;
  /** Of a picture spread over several windows: which part this is, from 0, of how many. */
  readonly part?: { readonly index: number; readonly count: number; readonly way: 'hidden' | 'split' };
}

/** A line as it lies on the face, mm of the front view. */
export interface PlacedLine {
  readonly line: FaceLine;
  /** Where the pen goes, or the bottom of a groove. */
  readonly middle: Outline;
  /** Both edges of the stroke, or of the groove's mouth: the one towards the window, and the other. */
  readonly inner: Outline;
  readonly outer: Outline;
  /** Of a groove, square to the face. */
  readonly depth?: number;
  /** Edges of the window on the face that are too short to be followed this far out. */
  readonly vanished: number;
  /** Corners that could not be kept as points so far out, and are rounded or cut off. */
  readonly blunted: number;
}

export interface PlacedWindow {
  /** Short name for the bench: A, B, ... Z, AA, in reading order of the job. */
  readonly name: string;
  /** The picture's title, or what the window is for. */
  readonly title: string;
  /** Path of the item in the written job, such as `windows.items[1]`; for a window made from the job's defaults `windows`. */
  readonly at: string;
  readonly use: 'picture' | 'title' | 'caption' | 'signature' | 'empty';
  readonly shape: WindowShape['kind'] | 'joined';
  /** Its own part without what is joined to it, in the bottom layer; said only where something is. */
  readonly main?: Box;
  /** Boxes of the openings joined to it, with what is seen in each. */
  readonly parts?: readonly { readonly title: string; readonly box: Box }[];
  /** The window: the opening of the bottom layer. */
  readonly window: Box;
  /** The bottom layer's edge on its face. */
  readonly windowAtFace: Box;
  readonly picture?: PlacedPicture;
  /** From the top layer (0) to the bottom layer. */
  readonly layers: readonly LayerOpening[];
  /** Grooves and ruled lines on the face of the top layer. */
  readonly lines: readonly PlacedLine[];
  /** From each edge of the blank to the window, as cut. */
  readonly borders: PerSide;
}

/** A measured distance between two neighbouring windows, or between a window and the edge of the blank, for dimension lines. */
export interface Gap {
  readonly axis: 'across' | 'up';
  /** From and to along the axis, and where on the other axis the dimension sits best. */
  readonly from: number;
  readonly to: number;
  readonly beside: number;
  /** Indices into `windows`. */
  readonly between: readonly [number, number];
  /** `to - from`: the gap at the bottom layer's openings. */
  readonly gap: number;
  /** Board left between the openings of the top layer. */
  readonly bridge: number;
  /** Board left on the face of the top layer: the bridge less the bevels. */
  readonly faceBridge: number;
  /** Path of the written gap that governs it, such as `windows.gap`; undefined between freely placed windows. */
  readonly at?: string;
  /** What that gap is: a length, or shared out. */
  readonly rule?: GapRule;
}

/** The board of one layer, with what the layout needs of it. */
export interface LayoutLayer {
  /** 1 is the top layer, nearest the glazing. */
  readonly number: number;
  readonly board: string;
  readonly colour: string;
  readonly core: string;
  readonly thickness: number;
  readonly bevel: { readonly angleDegrees: number; readonly direction: 'standard' | 'reverse'; readonly run: number };
  /** From this layer's opening to the opening of the layer above, per side; zero for the top layer. */
  readonly reveal: PerSide;
  /** The coloured strip of this layer's face that is really seen: reveal less the bevel run of a standard bevel; zero for the top layer. */
  readonly shownStrip: PerSide;
}

/** How one number was reached, for people who want to follow the sum. */
export interface Derivation {
  /** Path or plain name of the number, such as `borders.left`. */
  readonly name: string;
  /** What it is, in words. */
  readonly label: string;
  readonly value: number;
  /** The sum in words and shown lengths: `(20 - 14 1/2) / 2`. */
  readonly how: string;
}

export interface FrameSizes {
  readonly blank: Size;
  readonly rabbet: Size;
  readonly sight: Size;
  readonly outside: Size;
  readonly allowance: number;
  readonly lip: number;
  readonly mouldingWidth: number;
  readonly colour: string;
  /** How much of a border is hidden on each side: `lip - allowance / 2`. */
  readonly hidden: number;
  /** True of a float frame: it has no lip, its rabbet is its inside, and its allowance the gap on both sides. */
  readonly isFloat: boolean;
}

export interface Layout {
  /** Name of the blank's size when it is one sold ready-made, such as `11 x 14 in`. */
  readonly sizeName?: string;
  readonly frame: FrameSizes;
  /** None where the picture goes into its frame without a mat. */
  readonly layers: readonly LayoutLayer[];
  /** Without a mat the one picture: its window has no layers, and is what is seen of it. */
  readonly windows: readonly PlacedWindow[];
  /** Smallest box round all the windows of the arrangement (not the freely placed ones). */
  readonly content: Box;
  /** From the edge of the blank to `content`, as cut, and as seen from the sight edge; without a mat, what the frame covers. */
  readonly borders: { readonly cut: PerSide; readonly seen: PerSide };
  /** The same of the top layer: border less the sum of the reveals. */
  readonly topBorders: { readonly cut: PerSide; readonly seen: PerSide };
  readonly gaps: readonly Gap[];
  readonly derivations: readonly Derivation[];
  /** Warnings and notes; a layout with errors is not made, so that nothing can be cut from it. */
  readonly problems: readonly Problem[];
}

/** A layout before its sums and problems are added. */
export type PlacedLayout = Omit<Layout, 'derivations' | 'problems'>;
