/** The few pens everything on paper is drawn with: black, thin, and told apart by width and dash. */

/** Width and dash in mm: length of a dash and of the space after it. */
export interface Pen {
  readonly width: number;
  readonly dash?: readonly [number, number];
  /** Black where nothing is said. */
  readonly colour?: string;
}

export const PENS = {
  /** Where the blade goes, from corner to corner. */
  cut: { width: 0.4 },
  /** How far the blade runs past a corner. */
  overcut: { width: 0.15, dash: [0.8, 0.6] },
  /** The blank's edge, frames of tables and drawings. */
  edge: { width: 0.25 },
  /** Where pages are trimmed and joined. */
  join: { width: 0.12, dash: [3, 1.2] },
  /** Scales, registration and corner marks: fine enough to read a tenth of a millimetre by. */
  mark: { width: 0.15 },
  /** Both edges of a groove's mouth, where its blade goes. */
  groove: { width: 0.2 },
  /** Where a pen goes. */
  ruled: { width: 0.3, dash: [7, 0.8] },
  /** What lies on the other side of the board. */
  behind: { width: 0.2, dash: [0.4, 1.2], colour: '#8a8a8a' },
  /** The axes of an oval; the bottom of a groove. */
  axis: { width: 0.1, dash: [5, 1.2] },
  /** Dimension lines and hatching. */
  hair: { width: 0.1 },
  /** What lies under numbers in a small drawing. */
  faint: { width: 0.2, colour: '#9a9a9a' },
  /** What the eye should find first in a small drawing. */
  strong: { width: 0.7 },
} as const satisfies Record<string, Pen>;
