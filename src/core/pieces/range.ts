/** A value that is known only between bounds: what it is called, the least and the greatest it may be. */

export interface Range {
  readonly least: number;
  readonly nominal: number;
  readonly greatest: number;
}

/** A value that is known. */
export function exactly(value: number): Range {
  return { least: value, nominal: value, greatest: value };
}

/** The product of values that are not negative. */
export function product(factors: readonly Range[]): Range {
  return each((pick) => factors.reduce((all, one) => all * pick(one), 1));
}

export function total(terms: readonly Range[]): Range {
  return each((pick) => terms.reduce((all, one) => all + pick(one), 0));
}

/** True where all three are the same. */
export function isExact({ least, nominal, greatest }: Range): boolean {
  return least === nominal && nominal === greatest;
}

function each(of: (pick: (range: Range) => number) => number): Range {
  return {
    least: of(({ least }) => least),
    nominal: of(({ nominal }) => nominal),
    greatest: of(({ greatest }) => greatest),
  };
}
