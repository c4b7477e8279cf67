/** The plan of a show: which sizes, what they cost, and the frame and mat of every picture. */
import type { Size } from '../geometry/box';
import type { Layout } from '../layout/layout';
import type { WrittenJob } from '../job/written';
import type { Fit } from '../package/fit';
import type { Range } from '../package/range';
import type { Problem } from '../problem';
import type { ShelfFrame } from '../shelf/shelf';
import type { Showing } from '../units';
import type { FrameSize, LeftOut } from './candidates';
import type { Cost } from './costs';
import type { Range as BorderRange } from './pattern';
import type { ShowPicture } from './picture';

export const AIMS = ['cost', 'sizes'] as const;
/** `cost`: the least cost with at most so many sizes. `sizes`: the fewest sizes that hold every picture, at the least cost. */
export type Aim = (typeof AIMS)[number];

/** Rows of the trade-off. */
export const TABLE_SIZES = 6;
export const MOST_SIZES = 50;

export interface ShowOptions {
  readonly aim?: Aim;
  /** Sizes at most, where the aim is cost; 6 unless said. */
  readonly most?: number;
  /** Borders in place of the pattern's range. */
  readonly range?: BorderRange;
  /** True where counts on the shelf are limits; otherwise more can be ordered. */
  readonly onShelfOnly?: boolean;
  /** True where pictures that no frame takes get one made to size. */
  readonly allowCustom?: boolean;
  /** What costs are counted in; money where the shelf has prices. */
  readonly by?: Cost['by'];
}

/** How many pictures a size holds. */
export interface SizeUse {
  readonly size: FrameSize;
  readonly pictures: number;
}

/** The best there is with at most so many sizes. */
export interface Choice {
  readonly most: number;
  /** From the smallest. */
  readonly uses: readonly SizeUse[];
  readonly held: number;
  readonly cost: Cost;
  /** False where the search was given up: then no choice holds more than `bound.held`, nor as many as this for less than `bound.cost`. */
  readonly proven: boolean;
  readonly bound: { readonly held: number; readonly cost: Cost };
}

export interface TradeOffRow extends Choice {
  /** Beside one size fewer, where that holds as many. */
  readonly saves?: Cost;
}

/** A picture with its frame and mat. */
export interface HungPlace {
  readonly state: 'framed' | 'made to size';
  readonly blank: Size;
  /** Undefined of one made to size. */
  readonly frame?: ShelfFrame;
  /** Undefined where it isn't counted. */
  readonly cost?: Cost;
  /** As cut and as seen. */
  readonly borders: Layout['borders'];
  /** All windows together, in the bottom layer. */
  readonly window: Size;
  readonly written: WrittenJob;
  /** Of the job and its layout: warnings and notes. */
  readonly problems: readonly Problem[];
  /** True of a frame that the list binds it to, with borders out of range. */
  readonly outOfRange: boolean;
  /** Whether it goes into the frame's depth; `room` is none where nobody has measured that. */
  readonly depth: Fit;
}

/** A picture without. */
export interface BarePlace {
  readonly state: 'own' | 'left';
  readonly why: string;
  /** A frame to be made that would do, and how deep its rabbet has to be. */
  readonly custom?: Size & { readonly rabbet: Range };
}

export type Place = {
  readonly picture: ShowPicture;
  /** From 1, of a row that counts several. */ readonly copy: number;
} & (HungPlace | BarePlace);

export interface ToBuy {
  readonly frame: ShelfFrame;
  readonly needed: number;
  /** On the shelf; undefined: as many as are wanted. */
  readonly there?: number;
  readonly toOrder: number;
  /** Of all that are needed, frames alone; undefined where it has no price. */
  readonly price?: Cost;
}

export interface ShowPlan {
  readonly showing: Showing;
  readonly range: { readonly least: number; readonly greatest?: number; readonly measured: 'as cut' | 'as seen' };
  readonly aim: Aim;
  readonly by: Cost['by'];
  /** Beside the frames, in money. */
  readonly counted: readonly string[];
  readonly notCounted: readonly string[];
  /** Pictures, counted as often as they are there. */
  readonly pictures: number;
  /** Sizes on the shelf that are chosen from. */
  readonly sizes: readonly FrameSize[];
  /** Frames that are not. */
  readonly leftOut: readonly LeftOut[];
  /** Pictures that the shelf can hold; fewer than `least` sizes can't hold them, and `sizes` do. */
  readonly fewest: { readonly held: number; readonly least: number; readonly sizes: number };
  readonly tradeOff: readonly TradeOffRow[];
  readonly chosen: Choice;
  /** In the order of the list. */
  readonly places: readonly Place[];
  readonly toBuy: readonly ToBuy[];
  /** Warnings and notes. */
  readonly problems: readonly Problem[];
}
