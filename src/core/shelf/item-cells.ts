/** One thing of the shelf as the texts of its cells, to be changed by hand and read again. */
import type { Problem } from '../problem';
import { csvText } from '../tables/csv-text';
import type { Unit } from '../units';
import { columnsOf, SHELF_COLUMNS, type ShelfColumn } from './columns';
import { cellsOf } from './print-shelf';
import { readShelf } from './read-shelf';
import type { ShelfItem, ShelfKind } from './shelf';

export type ItemCells = Readonly<Partial<Record<ShelfColumn, string>>>;

/** Lengths in `unit`, which each cell says. */
export function itemCells(item: ShelfItem, unit: Unit): ItemCells {
  const cells: Partial<Record<ShelfColumn, string>> = {};
  for (const [key, cell] of Object.entries(cellsOf(item, unit)) as [ShelfColumn, string | { quoted: string }][]) {
    cells[key] = typeof cell === 'object' ? cell.quoted : String(cell);
  }
  return cells;
}

export interface ReadCells {
  /** Undefined while something is wrong. */
  readonly item?: ShelfItem;
  /** What is wrong, by the column it stands in. */
  readonly wrong: ReadonlyMap<ShelfColumn, string>;
}

/** @param unit of bare numbers. */
export function readItemCells(kind: ShelfKind, cells: ItemCells, unit: Unit): ReadCells {
  const columns = columnsOf(kind);
  // Through the reader of files, so that a thing typed here and one from a file are held to the same.
  const text = csvText([
    ['kind', ...columns.map(({ names: [name] }) => name)],
    [kind, ...columns.map(({ key }) => ({ quoted: cells[key] ?? '' }))],
  ]);
  const read = readShelf(text, unit);
  const [item] = read.ok ? read.value : [];
  return { ...(item ? { item } : {}), wrong: new Map(read.problems.flatMap(placed)) };
}

function placed({ at, message }: Problem): [ShelfColumn, string][] {
  const name = /column (.*)$/.exec(at)?.[1];
  const column = SHELF_COLUMNS.find(({ names: [first] }) => first === name);
  const words = message.replace(/^Line \d+(, column “[^”]*”)?: /, '');
  return column ? [[column.key, `${words.charAt(0).toUpperCase()}${words.slice(1)}`]] : [];
}
