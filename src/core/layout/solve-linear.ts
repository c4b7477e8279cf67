/** Linear equations by Gauss's elimination with the largest pivot of each column. */

/** The unknowns of `rows . unknowns = right`; undefined where the rows do not tell them apart. */
export function solveLinear(rows: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  const table = rows.map((row, index) => [...row, right[index] ?? 0]);
  const count = table.length;
  for (let column = 0; column < count; column += 1) {
    const below = table.slice(column).map((row) => Math.abs(row[column] ?? 0));
    const pivot = column + below.indexOf(Math.max(...below));
    const [here, best] = [table[column], table[pivot]];
    if (!here || !best || Math.abs(best[column] ?? 0) < 1e-12) return undefined;
    [table[column], table[pivot]] = [best, here];
    for (const row of table.slice(column + 1)) {
      const factor = (row[column] ?? 0) / (best[column] ?? 1);
      for (let place = column; place <= count; place += 1) row[place] = (row[place] ?? 0) - factor * (best[place] ?? 0);
    }
  }
  const found = Array.from({ length: count }, () => 0);
  for (let row = count - 1; row >= 0; row -= 1) {
    const known = found.reduce(
      (sum, value, column) => sum + (column > row ? value * (table[row]?.[column] ?? 0) : 0),
      0,
    );
    found[row] = ((table[row]?.[count] ?? 0) - known) / (table[row]?.[row] ?? 1);
  }
  return found;
}
