/** Densities that are published, g/cm³ (kg per litre), with where they come from; what is not here is not counted. */
import type { GlazingMaterial } from '../job/package';
import { exactly, type Range } from './range';

export interface Density extends Range {
  /** What it is of, and who says so, for whoever doubts the weight. */
  readonly of: string;
  readonly source?: string;
}

export const GLAZING_DENSITIES: Readonly<Record<GlazingMaterial, Density>> = {
  // 2.5 kg/m² for every mm of thickness.
  glass: { ...exactly(2.5), of: 'soda-lime glass', source: 'EN 572-1 as quoted in a glass handbook' },
  acrylic: {
    least: 1.18,
    nominal: 1.19,
    greatest: 1.2,
    of: 'acrylic',
    source: 'US Unified Facilities Guide Specifications, Table 3-1 (ASTM D792)',
  },
  polycarbonate: { ...exactly(1.2), of: 'polycarbonate', source: 'from memory' },
};

/** No table of mat board by weight is published; the middle stands for what is not known. */
export const BOARD_DENSITY: Density = {
  least: 0.65,
  nominal: 0.725,
  greatest: 0.8,
  of: 'paperboard',
  source: 'above 0.65 g/cm³ by CAMEO, “Paperboard” (Museum of Fine Arts, Boston), up to 0.80 from memory',
};

/** What the job says itself. */
export function givenDensity(density: number): Density {
  return { ...exactly(density), of: 'as the job says' };
}
