/** A length that varies: what it is called, and what it may be at least and at most, mm. */
export interface Range {
  readonly least: number;
  readonly nominal: number;
  readonly greatest: number;
}

export const NOTHING: Range = { least: 0, nominal: 0, greatest: 0 };

/** What double arithmetic may add or lose in sums of thicknesses, mm. */
export const SLACK = 1e-6;

export function exactly(mm: number): Range {
  return { least: mm, nominal: mm, greatest: mm };
}

export function sum(ranges: readonly Range[]): Range {
  return ranges.reduce((a, b) => each((of) => of(a) + of(b)), NOTHING);
}

/** What is left of the first when the second is taken away: least where that is greatest. */
export function less(from: Range, taken: Range): Range {
  return {
    least: from.least - taken.greatest,
    nominal: from.nominal - taken.nominal,
    greatest: from.greatest - taken.least,
  };
}

/** The thickest of several that lie side by side. */
export function thickestOf(ranges: readonly Range[]): Range {
  return each((of) => Math.max(0, ...ranges.map(of)));
}

/** A range worked out measure by measure, which is right of whatever only grows with what goes into it. */
export function each(value: (of: (range: Range) => number) => number): Range {
  return {
    least: value(({ least }) => least),
    nominal: value(({ nominal }) => nominal),
    greatest: value(({ greatest }) => greatest),
  };
}
