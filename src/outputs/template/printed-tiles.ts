/** Which cells of a grid are printed: those that hold something, and those needed to join them. */

/** A grid of cells, row after row. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
}

/** The marked cells, with as few more as join what lies apart: the nearest first, from the first marked cell on. */
export function joinedUp(marked: readonly boolean[], grid: Grid): readonly boolean[] {
  const chosen = [...marked];
  for (;;) {
    const way = wayToNextPiece(chosen, grid);
    if (way.length === 0) return chosen;
    for (const cell of way) chosen[cell] = true;
  }
}

/** Cells from the piece of the first chosen one to the nearest chosen cell outside it; none when all hang together. */
function wayToNextPiece(chosen: readonly boolean[], grid: Grid): readonly number[] {
  const first = chosen.indexOf(true);
  if (first < 0) return [];
  const piece = spread([first], grid, (cell) => chosen[cell] === true);
  const reached = spread([...piece.keys()], grid, () => true);
  const found = [...reached.keys()].find((cell) => chosen[cell] === true && !piece.has(cell));
  const way: number[] = [];
  for (let cell = found; cell !== undefined && !piece.has(cell); cell = reached.get(cell)) way.push(cell);
  return way;
}

/** Cells reached from others over common edges, the nearest first, each with the cell it was reached from. */
function spread(
  from: readonly number[],
  grid: Grid,
  enters: (cell: number) => boolean,
): ReadonlyMap<number, number | undefined> {
  const reached = new Map<number, number | undefined>(from.map((cell) => [cell, undefined]));
  // A map is walked in the order of entry, what is added on the way included.
  for (const cell of reached.keys()) {
    for (const next of neighbours(cell, grid)) {
      if (!reached.has(next) && enters(next)) reached.set(next, cell);
    }
  }
  return reached;
}

function neighbours(cell: number, { columns, rows }: Grid): readonly number[] {
  const [column, row] = [cell % columns, Math.floor(cell / columns)];
  return [
    ...(column > 0 ? [cell - 1] : []),
    ...(column < columns - 1 ? [cell + 1] : []),
    ...(row > 0 ? [cell - columns] : []),
    ...(row < rows - 1 ? [cell + columns] : []),
  ];
}
