/** Which tiles of a layer are printed: those that hold a cut, a border or a line on the face, and those needed to join them. */
import type { CutLine } from '../../core/cutting/plan';
import type { Box } from '../../core/geometry/box';
import { borderStrips } from './border-strips';
import { cutMeets } from './curve-drawing';
import { clipLine, shared, type ViewLayer } from './view-geometry';

/** A grid of cells, row after row. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
}

/**
 * For each part of the blank, row after row, whether it is printed. A part with nothing but the blank's edge is paper
 * wasted: borders reach all four edges, so that what is printed still lies edge on edge. All that is printed hangs
 * together by joins: where cuts lie far apart, parts between them are printed too.
 */
export function printedParts(parts: readonly Box[], grid: Grid, layer: ViewLayer): readonly boolean[] {
  const strips = borderStrips(layer).map(({ strip }) => strip);
  const holds = parts.map(
    (part) =>
      layer.windows.some((window) => window.lines.some((line) => lineMeets(line, part))) ||
      strips.some((strip) => shared(strip, part)) ||
      // On the back they are only shown where there is something else to show.
      (layer.view === 'front' &&
        layer.lines.some(({ inner, outer }) => cutMeets(inner, part) || cutMeets(outer, part))),
  );
  return joinedUp(holds, grid);
}

function lineMeets({ bladeStart, bladeEnd, curve }: CutLine, part: Box): boolean {
  return curve ? cutMeets(curve, part) : clipLine(bladeStart, bladeEnd, part) !== undefined;
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
