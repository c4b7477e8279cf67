/** Where a long side is divided into pages: on round measures from the origin, and clear of the cuts where possible. */

/** A join should stay this far from a cut, mm, so that no corner lies in the glue. */
const CLEAR = 10;

/**
 * Divides `length` into as few parts as `most` allows and returns where parts begin and end: 0, the joins, `length`.
 * Joins lie on multiples of the first of the steps that will do, so that they can be written without rounding; as
 * far from the positions to avoid as they can, then as even as they can.
 */
export function divide(
  length: number,
  most: number,
  steps: readonly number[],
  avoid: readonly number[],
): readonly number[] {
  const fewest = Math.max(1, Math.ceil(length / most - 1e-9));
  // A part more than needed always leaves room for round measures.
  for (const count of [fewest, fewest + 1]) {
    for (const step of steps) {
      const ends = inParts(length, count, most, step, avoid);
      if (ends) return ends;
    }
  }
  return Array.from({ length: fewest + 1 }, (_, index) => (index * length) / fewest);
}

function inParts(
  length: number,
  count: number,
  most: number,
  step: number,
  avoid: readonly number[],
): readonly number[] | undefined {
  const ends = [0];
  for (let left = count - 1; left >= 1; left--) {
    const join = bestJoin(ends[ends.length - 1] ?? 0, length, left, most, step, avoid);
    if (join === undefined) return undefined;
    ends.push(join);
  }
  return [...ends, length];
}

function bestJoin(
  before: number,
  length: number,
  left: number,
  most: number,
  step: number,
  avoid: readonly number[],
): number | undefined {
  const even = before + (length - before) / (left + 1);
  const low = Math.max(length - left * most, before + step);
  const high = Math.min(before + most, length - step);
  let best: { at: number; clear: number; off: number } | undefined;
  for (let index = Math.ceil(low / step - 1e-9); index * step <= high + 1e-9; index++) {
    const at = index * step;
    const clear = Math.min(CLEAR, ...avoid.map((position) => Math.abs(position - at)));
    const off = Math.abs(at - even);
    if (!best || clear > best.clear + 1e-9 || (clear > best.clear - 1e-9 && off < best.off)) best = { at, clear, off };
  }
  return best?.at;
}
