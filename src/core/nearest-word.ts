/** Which of the known words a misspelt one was meant to be. */

/** The known word that a misspelt one was most likely meant to be; undefined where none is near. */
export function nearestWord(written: string, words: readonly string[]): string | undefined {
  const least = words
    .map((word) => ({ word, far: distance(written.toLowerCase(), word.toLowerCase()) }))
    .reduce((best, one) => (one.far < best.far ? one : best), { word: '', far: Infinity });
  return least.far <= Math.ceil(written.length / 3) ? least.word : undefined;
}

/** Letters to put in, take out, change, or swap with their neighbour (Damerau 1964, Levenshtein 1966; each once). */
function distance(one: string, other: string): number {
  let before: readonly number[] = [];
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  [...one].forEach((letter, line) => {
    const next = [line + 1];
    for (let index = 0; index < other.length; index += 1) {
      const changed = (row[index] ?? 0) + (other[index] === letter ? 0 : 1);
      const swaps = line > 0 && index > 0 && letter === other[index - 1] && one[line - 1] === other[index];
      const swapped = swaps ? (before[index - 1] ?? 0) + 1 : Infinity;
      next.push(Math.min(changed, swapped, (row[index + 1] ?? 0) + 1, (next[index] ?? 0) + 1));
    }
    [before, row] = [row, next];
  });
  return row[other.length] ?? 0;
}
