/** A grid turned by a quarter or turned over: its rows become columns, or run the other way. */
import type { Problem } from '../problem';
import { isQuarterTurn, isReversed, type Motion } from './motion';
import { movableAlign, movedAlign } from './turn-align';
import type { WrittenGrid, WrittenNode } from './written';

type Inner = (item: WrittenNode, index: number) => WrittenNode;

export function movedGrid(
  node: WrittenGrid,
  at: string,
  inner: Inner,
  motion: Motion,
  say: (problem: Problem) => void,
): WrittenGrid {
  const columns = Math.min(node.columns, node.items.length);
  const over = node.items.length % columns;
  if (over > 0) {
    say(unfilled(at, over, columns));
    return node;
  }
  const rows = node.items.length / columns;
  const [acrossBack, upBack] = [isReversed(motion, 'across'), isReversed(motion, 'up')];
  const moved = node.items.map(inner);
  const { columnGap, rowGap, alignColumns, alignRows: written, columns: _columns, items: _items, ...rest } = node;
  const alignRows = movableAlign(written, node.items, `${at}.alignRows`, motion, say);
  const align = {
    column: alignColumns && movedAlign(alignColumns, motion),
    row: alignRows && movedAlign(alignRows, motion),
  };
  const itemAt = (row: number, column: number) =>
    moved[(upBack ? rows - 1 - row : row) * columns + (acrossBack ? columns - 1 - column : column)] as WrittenNode;
  if (!isQuarterTurn(motion)) {
    const items = Array.from({ length: moved.length }, (_, index) =>
      itemAt(Math.floor(index / columns), index % columns),
    );
    return { ...node, items, ...said({ alignColumns: align.column, alignRows: align.row }) };
  }
  // What stood in one column then stands in one row.
  const items = Array.from({ length: moved.length }, (_, index) => itemAt(index % rows, Math.floor(index / rows)));
  return {
    ...rest,
    columns: rows,
    ...said({ columnGap: rowGap, rowGap: columnGap, alignColumns: align.row, alignRows: align.column }),
    items,
  } as WrittenGrid;
}

/** Only what has a value, so that nothing is written that was not. */
function said<T extends object>(keys: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(keys).filter(([, value]) => value !== undefined)) as never;
}

function unfilled(at: string, over: number, columns: number): Problem {
  return {
    code: 'turn-of-unfilled-grid',
    severity: 'error',
    at,
    message: `The last row of this grid holds ${over} of ${columns}; moved so, the grid would begin with empty places, which a grid can't have. Fill the row, take ${over === 1 ? 'the one' : `the ${over}`} out of the grid, or make it rows in a column.`,
    value: String(over),
    limit: String(columns),
    remedy: `a full last row of ${columns}`,
  };
}
