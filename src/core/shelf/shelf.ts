/** What a shop has on its shelf and works with: frames, mouldings, boards, glazing, and what frames are fixed and hung with. */
import type { Size } from '../geometry/box';
import type { FrameBuild, FrameCorners, FramePart } from '../job/job';
import type { GlazingMaterial, Quality } from '../job/package';
import { GLAZINGS } from '../job/written-package';
import type { Price } from '../money';

export const GLAZING_MATERIALS = GLAZINGS.filter((material) => material !== 'none');

interface Thing {
  readonly name: string;
  readonly price?: Price;
  /** How many there are; undefined: as many as are wanted. */
  readonly count?: number;
  readonly note?: string;
}

/** A frame of one size. */
export interface ShelfFrame extends Thing {
  readonly kind: 'frame';
  /** Frame size (the blank), as written; it may hang either way. */
  readonly size: Size;
  readonly rabbetDepth?: number;
  readonly lip?: number;
  /** Face width of the moulding. */
  readonly face?: number;
  /** Of the moulding, front to back. */
  readonly depth?: number;
  readonly colour?: string;
  readonly build: FrameBuild;
  readonly corners: FrameCorners;
  readonly comesWith: readonly FramePart[];
  /** Distances from the back of the lip to the front of each groove that a back slides into. */
  readonly grooves: readonly number[];
  /** Of the empty frame, kg. */
  readonly weight?: number;
}

/** Stick moulding for frames made to size. */
export interface Moulding extends Thing {
  readonly kind: 'moulding';
  readonly face: number;
  readonly lip?: number;
  readonly rabbetDepth?: number;
  readonly depth?: number;
  /** Length of a stick as bought. */
  readonly stick?: number;
  readonly colour?: string;
  /** Of one metre, kg. */
  readonly weight?: number;
}

export interface ShelfBoard extends Thing {
  readonly kind: 'board';
  readonly colour?: string;
  readonly thickness?: number;
  /** Of a sheet as bought. */
  readonly size?: Size;
  /** As far as its maker states it. */
  readonly quality?: Quality;
}

export interface ShelfGlazing extends Thing {
  readonly kind: 'glazing';
  readonly material: GlazingMaterial;
  readonly uvFilter: boolean;
  /** True where its maker treats it so that it holds no charge. */
  readonly antistatic?: boolean;
  readonly thickness?: number;
  readonly size?: Size;
}

export interface ShelfWire extends Thing {
  readonly kind: 'wire';
  /** Rated load, kg. */
  readonly load?: number;
  /** Where it breaks, kg. */
  readonly breaksAt?: number;
}

/** A hook for the wall. */
export interface WallHook extends Thing {
  readonly kind: 'hook';
  readonly load?: number;
  /** From the nail's hole down to where the wire or ring sits. */
  readonly seat?: number;
}

/** What sits on the frame: a ring on a plate, a toothed hanger, a cleat. */
export interface Hanger extends Thing {
  readonly kind: 'ring' | 'sawtooth' | 'cleat';
  /** Of one, kg. */
  readonly load?: number;
}

/** A bent strip that holds a canvas in its frame. */
export interface OffsetClip extends Thing {
  readonly kind: 'clip';
  /** How far the canvas may stand out behind the frame. */
  readonly step: number;
}

export interface Screw extends Thing {
  readonly kind: 'screw';
  readonly length: number;
}

export type ShelfItem =
  ShelfFrame | Moulding | ShelfBoard | ShelfGlazing | ShelfWire | WallHook | Hanger | OffsetClip | Screw;
export type ShelfKind = ShelfItem['kind'];
export const SHELF_KINDS = [
  'frame',
  'moulding',
  'board',
  'glazing',
  'wire',
  'hook',
  'ring',
  'sawtooth',
  'cleat',
  'clip',
  'screw',
] as const satisfies readonly ShelfKind[];

export type Shelf = readonly ShelfItem[];

/** Those of one kind, in the shelf's order. */
export function ofKind<K extends ShelfKind>(shelf: Shelf, kind: K): Extract<ShelfItem, { kind: K }>[] {
  return shelf.filter((item): item is Extract<ShelfItem, { kind: K }> => item.kind === kind);
}
