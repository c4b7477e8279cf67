/** What fills in for a length that a job leaves out: one value for inch jobs, one for metric jobs. */
import type { Unit } from '../units';

/** Inch jobs, metric jobs, mm. Allowance, lip, bevel angle: as defined for the measures; the rest common practice, no source. */
const LENGTHS = {
  overlap: [25.4 / 8, 3],
  reveal: [25.4 / 4, 6],
  boardThickness: [25.4 / 16, 1.5],
  pictureThickness: [0.25, 0.25],
  canvasDepth: [76.2 / 4, 19],
  panelThickness: [25.4 / 8, 3],
  allowance: [25.4 / 8, 3],
  lip: [25.4 / 4, 6],
  mouldingWidth: [76.2 / 4, 20],
  floatGap: [25.4 / 4, 6],
  backingThickness: [76.2 / 16, 5],
  fixingRoom: [25.4 / 8, 3],
  gap: [25.4, 25],
  border: [76.2, 75],
  leastBorder: [38.1, 40],
  bottomAmount: [25.4 / 2, 12],
  borderStep: [25.4 / 4, 6],
  cornerRadius: [25.4 / 2, 12],
  cornerStep: [25.4 / 2, 12],
  cornerCut: [25.4, 25],
  hollowRadius: [25.4, 25],
  behindTrim: [25.4 / 4, 6],
  lineDistance: [25.4 / 2, 12],
  grooveWidth: [25.4 / 16, 1.5],
  ruledWidth: [0.5, 0.5],
  wireBelowTop: [50.8, 50],
  knots: [101.6, 100],
  standOff: [25.4 / 8, 3],
  outOfLevel: [25.4 / 8, 3],
  wallCentre: [57 * 25.4, 1450],
  wallGap: [101.6, 100],
} as const;

export type DefaultLength = keyof typeof LENGTHS;

/** The default length, mm, for a job in these units. */
export function defaultLength(name: DefaultLength, units: Unit): number {
  return LENGTHS[name][units === 'in' ? 0 : 1];
}

export const DEFAULT_POLYGON_SIDES = 8;
export const DEFAULT_BEVEL_DEGREES = 45;
/** 45 : 55 of the leftover height. */
export const DEFAULT_TOP_SHARE = 0.45;
/** Bottom to top 6 : 5 (photographic handbooks). */
export const DEFAULT_BOTTOM_RATIO = 1.2;
export const DEFAULT_BORDER_RATIO = 1.1;

/** Board colours from the top layer down, and what the layers are called until they are named. */
export const DEFAULT_LAYERS = [
  { board: 'Top board', colour: '#f3eee2' },
  { board: 'Second board', colour: '#5f7a76' },
  { board: 'Third board', colour: '#c9b48a' },
  { board: 'Fourth board', colour: '#3c4048' },
] as const;
/** Ink of ruled lines: a warm grey. */
export const DEFAULT_INK = '#5b5348';
export const DEFAULT_CORE = '#fdfcf8';
export const DEFAULT_FRAME_COLOUR = '#5b4636';
