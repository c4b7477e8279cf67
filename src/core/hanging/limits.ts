/** Where one way of hanging ends and another begins: sizes in mm, weights in kg, each with what it comes from. */
import { KG_PER_POUND } from '../mass';
import { MM_PER_INCH } from '../units';

/** A sawtooth hanger holds frames of this size, either way round, and no larger. Common practice, no source. */
export const SAWTOOTH_SIZE = { width: 8 * MM_PER_INCH, height: 10 * MM_PER_INCH } as const;
/** And no heavier, whatever its rating. Common practice, no source. */
export const SAWTOOTH_WEIGHT = 5 * KG_PER_POUND;
/** Over this: hung by a professional (Earthquake Country Alliance, hanging objects); here also a cleat in place of wire. */
export const HEAVY = 50 * KG_PER_POUND;
/** From this on, where the earth quakes: a closed hook in a stud (Earthquake Country Alliance, hanging objects). */
export const QUAKE_HEAVY = 20 * KG_PER_POUND;
/** A wire pulled harder than this many times the weight is too flat. Common practice, no source. */
export const GREATEST_TENSION = 2;
/** Rings sit between these parts of the height below the top. Common practice, no source. */
export const RINGS_DOWN = { least: 1 / 4, usual: 0.3, greatest: 1 / 3 } as const;
/** ADAAG 4.4.1: what juts out further from the wall, with its leading edge between these heights, is struck by people. */
export const PROTRUSION = { most: 4 * MM_PER_INCH, from: 27 * MM_PER_INCH, to: 80 * MM_PER_INCH } as const;
/** Sacher and LaGasa, as quoted: above furniture at least this. */
export const ABOVE_FURNITURE = 8 * MM_PER_INCH;
