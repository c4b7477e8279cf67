/** One line of the cuts list: pieces of one size and stuff. */
import type { Size } from '../geometry/box';
import type { Range } from './range';

/** What a spacer is made of that is bought. */
export const SPACER_STRIP = 'spacer strip';

export type PieceKind = 'glazing' | 'spacer' | 'mat' | 'mount board' | 'backing' | 'dust cover';

export interface Piece {
  readonly kind: PieceKind;
  /** Such as `Mat layer 1`; different for each line of one job. */
  readonly name: string;
  /** The board's name, or what it is made of. */
  readonly material: string;
  readonly count: number;
  /** Width x height as it hangs, mm. */
  readonly cut: Size;
  /** What to ask for where it is bought cut to size, mm. */
  readonly order: Size;
  /** mm; undefined: unknown. */
  readonly thickness?: Range;
  /** Of one, square mm: the whole blank, and what is left of it when its windows are cut. */
  readonly area: { readonly full: number; readonly net: number };
  /** 1 is the top layer. */
  readonly layer?: number;
  /** True where it is bought with the frame, so that none has to be cut. */
  readonly comesWithFrame: boolean;
  /** How its size comes about, in words. */
  readonly rule: string;
}

/** Mats, mount boards, and spacers that are cut from mat board. */
export function isBoard({ kind, material }: Pick<Piece, 'kind' | 'material'>): boolean {
  return kind === 'mat' || kind === 'mount board' || (kind === 'spacer' && material !== SPACER_STRIP);
}
