/** How far materials vary in thickness from what they are called, where a job does not say it. */
import type { BackingMaterial, GlazingMaterial, Thickness, Varies } from './package';

export type Material = GlazingMaterial | BackingMaterial;

/** `± (fixed + share x thickness)` for thicknesses up to a limit, mm. */
interface Band {
  readonly upTo: number;
  readonly fixed: number;
  readonly share: number;
}

export interface Tolerance {
  /** From the thinnest up. */
  readonly bands: readonly Band[];
  /** Where it is published, or that it is not. */
  readonly source: string;
}

const always = (fixed: number, share: number): readonly Band[] => [{ upTo: Infinity, fixed, share }];
const TENTH = { bands: always(0, 0.1), source: 'a tenth, taken to be safe; no source' };

/** Undefined: nothing is known of it. */
export const TOLERANCES: Readonly<Record<Material, Tolerance | undefined>> = {
  // 4 points of 0.001 in.
  'mat board': { bands: always(0.1016, 0), source: 'board may vary by 4 points: S. Saitzyk, Art Hardware, 1987' },
  glass: {
    bands: [
      { upTo: 6, fixed: 0.2, share: 0 },
      { upTo: Infinity, fixed: 0.3, share: 0 },
    ],
    source: 'EN 572-2, from memory',
  },
  acrylic: { bands: always(0.4, 0.1), source: 'ISO 7823-1 (cast sheet), from memory' },
  polycarbonate: { bands: always(0, 0.1), source: 'ISO 11963, from memory' },
  hardboard: {
    bands: [
      { upTo: 3.5, fixed: 0.3, share: 0 },
      { upTo: 5.5, fixed: 0.5, share: 0 },
      { upTo: Infinity, fixed: 0.7, share: 0 },
    ],
    source: 'EN 622-1, from memory',
  },
  plywood: { bands: always(0.4, 0.03), source: 'EN 315, from memory' },
  'foam board': TENTH,
  'corrugated board': TENTH,
  'polypropylene board': TENTH,
  other: undefined,
};

/** How far a sheet called so thick may be thinner or thicker, mm; 0 where nothing is known. */
export function toleranceOf(material: Material, nominal: number): number {
  const band = TOLERANCES[material]?.bands.find(({ upTo }) => nominal <= upTo);
  return band ? band.fixed + band.share * nominal : 0;
}

/** The greatest nominal thickness that is sure not to be more than this, mm; 0 or less where there is none. */
export function thickestWithin(material: Material, room: number): number {
  const bands = TOLERANCES[material]?.bands ?? always(0, 0);
  const most = bands.map(({ upTo, fixed, share }) => Math.min(upTo, (room - fixed) / (1 + share)));
  // In a band where it comes out below the band before, the tolerance is not its own.
  return Math.max(...most.map((one, band) => (one > (bands[band - 1]?.upTo ?? -Infinity) ? one : -Infinity)));
}

/** A sheet called so thick, as thin and as thick as it usually is. */
export function asUsual(material: Material, nominal: number): Thickness {
  const usual = toleranceOf(material, nominal);
  return { nominal, least: Math.max(0, nominal - usual), greatest: nominal + usual, varies: variesAs(false, material) };
}

export function variesAs(given: boolean, material: Material | undefined): Varies {
  if (given) return 'as given';
  return material !== undefined && TOLERANCES[material] ? 'as usual' : 'unknown';
}

/** Between what a sheet of a nominal thickness lies where nothing more is said, mm. */
export function usualThickness(material: Material, nominal: number): Thickness {
  const usual = toleranceOf(material, nominal);
  return {
    nominal,
    least: Math.max(0, nominal - usual),
    greatest: nominal + usual,
    varies: variesAs(false, material),
  };
}
