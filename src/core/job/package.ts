/** The package of a job as it is understood: what goes into the frame beside mats and pictures, mm and kg. */
import type { BACKINGS, FIXINGS, GLAZINGS, HINGINGS } from './written-package';
import type { FIBRES } from './written-material';

/** Where the range of a thickness comes from: the job, what is usual for the material, or nowhere, and then it is none. */
export type Varies = 'as given' | 'as usual' | 'unknown';

/** How thick a thing is: what it is called, and between what it may lie. */
export interface Thickness {
  readonly nominal: number;
  readonly least: number;
  readonly greatest: number;
  readonly varies: Varies;
}

/** How sound a board is, as far as its maker states it; what is left out is unknown. */
export interface Quality {
  readonly fibre?: (typeof FIBRES)[number];
  readonly ph?: number;
  /** Percent of calcium carbonate; 0 is unbuffered. */
  readonly reserve?: number;
  readonly photoTested?: boolean;
}

export type GlazingMaterial = Exclude<(typeof GLAZINGS)[number], 'none'>;
export type Hinging = (typeof HINGINGS)[number];
export type BackingMaterial = Exclude<(typeof BACKINGS)[number], 'none'>;
export type FixingKind = (typeof FIXINGS)[number];

interface Item {
  readonly thickness: Thickness;
  /** g/cm³, where the job says it. */
  readonly density?: number;
}

export interface Package {
  /** Undefined: none. */
  readonly glazing?: Item & {
    readonly material: GlazingMaterial;
    readonly uvFilter: boolean;
    readonly antistatic: boolean;
  };
  /** A board: what it is cut from; none: strips that are bought. */
  readonly spacer?: Item & { readonly board?: string };
  readonly hinging: {
    /** Undefined: unknown. */
    readonly method?: Hinging;
    readonly thickness: Thickness;
  };
  readonly mountBoard?: Item & { readonly board: string; readonly quality: Quality };
  readonly backing?: Item & { readonly material: BackingMaterial; readonly quality: Quality };
  readonly fixing: {
    readonly kind: FixingKind;
    readonly room: number;
    /** Of its screws. */
    readonly screw?: number;
  };
  readonly sealed: boolean;
  readonly dustCover: boolean;
}
