/** The wall as it is understood: how frames stand on it, mm and kg. */
import type { Size } from '../geometry/box';
import type { WALL_ALIGNS, WALL_EDGES } from './written-wall';

export type WallEdge = (typeof WALL_EDGES)[number];
export type WallAlign = (typeof WALL_ALIGNS)[number];

/** A frame for the wall; what is left out is as `hanging` has it. */
export interface WallFrame {
  /** Path in the written job. */
  readonly at: string;
  readonly title: string;
  /** Outside; undefined: the job's own frame. */
  readonly size?: Size;
  /** From its top to where it sits on its hooks. */
  readonly drop?: number;
  readonly hooks?: 1 | 2;
  readonly hooksApart?: number;
  /** kg. */
  readonly weight?: number;
  /** Front to back. */
  readonly depth?: number;
  /** In a group: from its start to the nearer edge. */
  readonly edge?: number;
  /** In a group: from the floor to its middle. */
  readonly centre?: number;
}

export type WallArrangement =
  | { readonly kind: 'row'; readonly gap: number; readonly align: WallAlign }
  | { readonly kind: 'grid'; readonly columns: number; readonly columnGap: number; readonly rowGap: number }
  /** Undefined: as the widest frame and the gap have it, and as stairs usually rise. */
  | { readonly kind: 'stairs'; readonly gap: number; readonly run?: number; readonly rise?: number }
  | { readonly kind: 'group'; readonly gap: number };

export interface Wall {
  readonly width?: number;
  readonly height?: number;
  /** From the floor to the line that frames are centred on. */
  readonly centre: number;
  readonly from: WallEdge;
  /** From that edge to where the frames begin; undefined: in the middle. */
  readonly offset?: number;
  /** One frame by itself is a row. */
  readonly arrangement: WallArrangement;
  /** Height of what stands below. */
  readonly furniture?: number;
  /** Each by itself, however many the job counts in one. */
  readonly frames: readonly WallFrame[];
}
