/** What using planned boards does to a list of stock: what it takes, what it puts back, and what is not in the list. */
import { heightOf, widthOf, type Box } from '../geometry/box';
import { listed as listWords } from '../phrases';
import { assert } from '../problem';
import { toGrid, toMm } from './grid';
import type { PlannedSheet } from './plan';
import type { PlannedBoard } from './planned-board';
import { keepingOf, USUAL_KEEP, type Keeping, type KeepRule } from './remnants';
import { hasGrain, isSameStock, plainName, stockName, type Grain, type StockSheet } from './stock-sheet';
import type { StockStep } from './stock-steps';
import { unusedFallouts } from './unused-fallouts';

export interface StockAmount {
  readonly row: StockSheet;
  readonly count: number;
}

export interface PutBack extends StockAmount {
  readonly keeping: Exclude<Keeping, 'waste'>;
}

export interface BoardUse {
  readonly board: string;
  /** Of rows of the list. What falls out of a window is in no list. */
  readonly takes: readonly StockAmount[];
  /** What is worth keeping, as remnants. */
  readonly puts: readonly PutBack[];
  /** New sheets that the list does not have: to be bought, or taken off the shelf. */
  readonly buys: readonly StockAmount[];
}

type Planned = Pick<PlannedBoard, 'board' | 'ask' | 'plan'>;

/** @param list that was planned from. */
export function usePlans(
  planned: readonly PlannedBoard[],
  list: readonly StockSheet[],
  rule: KeepRule = USUAL_KEEP,
): readonly BoardUse[] {
  return planned.map((one) => useOf(one, list, rule));
}

export function stepsOf(uses: readonly BoardUse[]): readonly StockStep[] {
  return uses.flatMap(({ takes, puts }) => [
    ...takes.map(({ row, count }) => ({ row, takes: count, puts: 0 })),
    ...puts.map(({ row, count }) => ({ row, takes: 0, puts: count })),
  ]);
}

function useOf({ board, ask, plan }: Planned, list: readonly StockSheet[], rule: KeepRule): BoardUse {
  const [takes, buys, puts]: [StockAmount[], StockAmount[], PutBack[]] = [[], [], []];
  for (const sheet of plan.sheets) {
    const { kind } = sheet.stock;
    const from = rowOf(sheet, list);
    const whole = wholeOf(board, sheet, from);
    if (from) addTo(takes, { row: from, count: 1 }, isOneRow);
    else if (kind === 'sheet') addTo(buys, { row: whole, count: 1 }, isOneRow);
    const grain = grainIn(whole, ask);
    for (const box of sheet.left) {
      const keeping = keepingOf(box, rule);
      if (keeping === 'waste') continue;
      const row: StockSheet = { board: whole.board, kind: 'remnant', ...lyingAs(box, grain), ...kerfOf(whole, list), ...noteOf(sheet) }; // prettier-ignore
      addTo(puts, { row, count: 1, keeping }, isSameStock);
    }
  }
  for (const put of falloutsBack({ board, ask, plan }, list, rule)) addTo(puts, put, isSameStock);
  return { board, takes, puts, buys };
}

/** What falls out of windows and is worth keeping, with the grain of the sheet that its mat is cut from. */
function falloutsBack({ board, ask, plan }: Planned, list: readonly StockSheet[], rule: KeepRule): PutBack[] {
  return unusedFallouts({ ask, plan }, rule).flatMap(({ stock, count, keeping }): PutBack[] => {
    const mat = ask.pieces[stock.window?.piece ?? -1];
    const sheet = plan.sheets.find(({ pieces }) => pieces.some(({ piece }) => piece.id === mat?.id));
    if (keeping === 'waste' || !sheet) return [];
    const whole = wholeOf(board, sheet, rowOf(sheet, list));
    const box = { left: 0, bottom: 0, right: stock.width, top: stock.height };
    const title = mat?.from?.title.trim() ?? '';
    const note = `left from ${title === '' ? '' : `${title}, `}window ${stock.window?.name ?? ''}`;
    const row: StockSheet = { board: whole.board, kind: 'remnant', ...lyingAs(box, grainIn(whole, ask)), ...kerfOf(whole, list), note }; // prettier-ignore
    return [{ row, count, keeping }];
  });
}

function wholeOf(board: string, { stock: { width, height } }: PlannedSheet, row: StockSheet | undefined): StockSheet {
  return row ?? { board, kind: 'sheet', width, height };
}

/** Of the sheet, or as all pieces are held upright. */
function grainIn(whole: StockSheet, { pieces }: PlannedBoard['ask']): Grain | undefined {
  if (hasGrain(whole)) return whole.grain;
  return pieces.length > 0 && pieces.every(({ mayTurn }) => !mayTurn) ? 'height' : undefined;
}

function rowOf({ stock: { listed } }: PlannedSheet, list: readonly StockSheet[]): StockSheet | undefined {
  if (listed === undefined) return undefined;
  const row = list.find((one) => stockName(one) === listed);
  assert(row, `the list that was planned from has no row ${listed}`);
  return row;
}

/** Of its board; one row says it for all. */
function kerfOf(sheet: StockSheet, list: readonly StockSheet[]): Pick<StockSheet, 'kerf'> {
  const kerf = list.find((one) => one.kerf !== undefined && plainName(one) === plainName(sheet))?.kerf;
  return kerf === undefined ? {} : { kerf };
}

/** Plans hold sheets with the grain upright; without grain either way round is the same, and the shorter side goes first. */
function lyingAs(box: Box, grain: Grain | undefined): Pick<StockSheet, 'width' | 'height' | 'grain'> {
  const [across, up] = [widthOf(box), heightOf(box)].map((mm) => toMm(toGrid(mm))) as [number, number];
  if (grain === undefined) return { width: Math.min(across, up), height: Math.max(across, up) };
  return grain === 'width' ? { width: up, height: across, grain } : { width: across, height: up, grain };
}

/** Jobs whose pieces come from the same sheet, so that one knows later where a remnant is from. */
function noteOf({ pieces }: PlannedSheet): Pick<StockSheet, 'note'> {
  const titles = new Set(pieces.map(({ piece }) => piece.from?.title.trim() ?? '').filter((title) => title !== ''));
  return titles.size === 0 ? {} : { note: `left from ${listWords([...titles], 3)}` };
}

/** A row is taken from as it is listed, though another may list the same thing the other way round. */
function isOneRow(one: StockSheet, other: StockSheet): boolean {
  return stockName(one) === stockName(other);
}

function addTo<T extends StockAmount>(
  amounts: T[],
  more: T,
  isSame: (one: StockSheet, other: StockSheet) => boolean,
): void {
  const index = amounts.findIndex(({ row }) => isSame(row, more.row));
  const there = amounts[index];
  if (there) amounts[index] = { ...there, count: there.count + more.count };
  else amounts.push(more);
}
