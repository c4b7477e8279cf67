/** A shelf as the text of its file, which reads back to the same shelf. */
import { exactText } from '../job/exact-text';
import { KG_PER_POUND } from '../mass';
import { csvText, type Cell } from '../tables/csv-text';
import type { Unit } from '../units';
import { SHELF_COLUMNS, type ShelfColumn } from './columns';
import type { Shelf, ShelfItem } from './shelf';

/**
 * Comma-separated values with every length in `unit`, or, where none is given, in inches or millimetres, whichever has the
 * shorter exact number; said in each cell. Columns that nothing fills are left out.
 */
export function printShelf(shelf: Shelf, unit?: Unit): string {
  const rows = shelf.map((item) => cellsOf(item, unit));
  const used = SHELF_COLUMNS.filter(({ key }) => rows.some((row) => row[key] !== undefined));
  const columns = used.length > 0 ? used : SHELF_COLUMNS;
  return csvText([
    columns.map(({ names: [name] }) => name),
    ...rows.map((row) => columns.map(({ key }): Cell => row[key] ?? '')),
  ]);
}

/** What its row holds; a cell without a text is left out. */
export function cellsOf(item: ShelfItem, unit: Unit | undefined): Partial<Record<ShelfColumn, Cell>> {
  const cells: Partial<Record<ShelfColumn, Cell>> = { kind: item.kind, name: item.name };
  const put = (key: ShelfColumn, value: Cell | undefined) => {
    if (value !== undefined) cells[key] = value;
  };
  const length = (mm: number | undefined) => lengthCell(mm, unit);
  const values = item as ShelfItem & Readonly<Record<string, unknown>>;
  const size = 'size' in item ? item.size : undefined;
  put('width', length(size?.width));
  put('height', length(size?.height));
  for (const key of ['thickness', 'rabbetDepth', 'lip', 'face', 'depth', 'stick', 'step', 'seat', 'length'] as const) {
    put(key, length(values[key] as number | undefined));
  }
  for (const key of ['colour', 'note'] as const) put(key, values[key] as string | undefined);
  for (const key of ['load', 'breaksAt', 'weight'] as const)
    put(key, massCell(values[key] as number | undefined, unit));
  if (item.kind === 'frame') {
    put('build', item.build);
    put('corners', item.corners);
    put('comesWith', item.comesWith.length > 0 ? item.comesWith.join('; ') : undefined);
    const grooves = item.grooves.map((groove) => lengthText(groove, unit)).join('; ');
    put('grooves', grooves === '' ? undefined : { quoted: grooves });
  }
  if (item.kind === 'glazing') {
    put('material', item.material);
    put('uv', item.uvFilter ? 'yes' : 'no');
    put('antistatic', yesOrNo(item.antistatic));
  }
  if (item.kind === 'board') {
    const { fibre, ph, reserve, photoTested } = item.quality ?? {};
    put('fibre', fibre);
    put('ph', ph);
    put('reserve', reserve);
    put('photoTested', yesOrNo(photoTested));
  }
  put('count', item.count);
  put('price', item.price?.amount.toFixed());
  put('per', item.price?.per);
  return cells;
}

function yesOrNo(said: boolean | undefined): Cell | undefined {
  return said === undefined ? undefined : said ? 'yes' : 'no';
}

/** Quoted, so that no spreadsheet takes a fraction for a date. @param unit as `printShelf` has it. */
export function lengthCell(mm: number | undefined, unit: Unit | undefined): Cell | undefined {
  return mm === undefined ? undefined : { quoted: lengthText(mm, unit) };
}

function lengthText(mm: number, unit: Unit | undefined): string {
  if (unit !== undefined) return `${exactText(mm, unit)} ${unit}`;
  const [inches, millimetres] = [exactText(mm, 'in'), exactText(mm, 'mm')];
  const isInches = inches.includes('/') ? !/^\d+$/.test(millimetres) : inches.length < millimetres.length;
  return isInches ? `${inches} in` : `${millimetres} mm`;
}

function massCell(kg: number | undefined, unit: Unit | undefined): Cell | undefined {
  return kg === undefined ? undefined : massWritten(kg, unit);
}

/** As a job file says it. */
export function massWritten(kg: number, unit: Unit | undefined): string {
  const [pounds, kilograms] = [trimmed(kg / KG_PER_POUND), trimmed(kg)];
  const isPounds = unit === undefined ? pounds.length < kilograms.length : unit === 'in';
  return isPounds ? `${pounds} lb` : `${kilograms} kg`;
}

/** Twelve figures, without the last bits that a change of units leaves. */
function trimmed(value: number): string {
  return String(Number(value.toPrecision(12)));
}
