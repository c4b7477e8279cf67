/** Letters in place of numbers, for what is told apart at the bench. */

/** 0 is A, 25 is Z, 26 is AA. */
export function lettersOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : lettersOf(Math.floor(index / 26) - 1) + last;
}
