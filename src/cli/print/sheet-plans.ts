/** Plans of sheets as the terminal tells them, and as data. */
import type { Box } from '../../core/geometry/box';
import { moneyText, ofParts } from '../../core/money';
import type { Unplanned } from '../../core/sheets/board-asks';
import { accountOf, squareMmText, totalOf, type SheetAccount } from '../../core/sheets/account';
import { areaWords, shareWords } from '../../core/sheets/account-words';
import { alikeSheets, type AlikeSheets } from '../../core/sheets/alike-sheets';
import { COST_PLACES } from '../../core/sheets/board-stock';
import { cutFirstWords, falloutWords, keepFalloutWords } from '../../core/sheets/fallout-words';
import { toGrid, toMm } from '../../core/sheets/grid';
import { paidFor, planTotal, totalWords } from '../../core/sheets/plan-total';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import { keepingOf, type KeepRule } from '../../core/sheets/remnants';
import { sheetCautions } from '../../core/sheets/sheet-cautions';
import { alikeWords, leftWords, pieceRows, planWords, settingsWords, sheetTitle, stepRows, unplannedWords } from '../../core/sheets/sheet-words'; // prettier-ignore
import { unusedFallouts } from '../../core/sheets/unused-fallouts';
import type { Showing } from '../../core/units';
import { jsonText } from './problems';
import { columns, paragraph, wrap } from './text';

/**
 * The plan as data, with what becomes of each part that is left; amounts and areas as texts, since they are exact. `cost` is
 * what is paid; `weighed` and `atLeast` are what the search compared, with what one more sheet is worth avoiding.
 */
export function boardData(planned: PlannedBoard, rule: KeepRule): object {
  const { board, plan, ask, isPriced } = planned;
  const { cost: weighed, atLeast, sheets: all, ...more } = plan;
  const left = (boxes: readonly Box[]) => boxes.map((box) => ({ ...box, keeping: keepingOf(box, rule) }));
  const amount = (cost: number) => moneyText(ofParts(cost, COST_PLACES));
  const isMoney = isPriced && ask.aim !== 'sheets';
  const told = (cost: number) => (isMoney ? amount(cost) : cost);
  const counts = isMoney ? 'money' : ask.aim === 'sheets' ? 'new sheets' : 'area of new sheets, 1000 mm²';
  const accounts = all.map((sheet) => accountOf(sheet, rule));
  const sheets = all.map(({ stock, ...sheet }, index) => {
    const cost = isPriced ? amount(stock.cost) : stock.cost;
    return { ...sheet, stock: { ...stock, cost }, left: left(sheet.left), account: accountData(accounts[index]!) };
  });
  const paid = paidFor(planned);
  return {
    board,
    ...(paid ? { cost: moneyText(paid) } : {}),
    weighed: told(weighed),
    atLeast: told(atLeast),
    counts,
    ...more,
    account: accountData(totalOf(accounts)),
    sheets,
    fallouts: falloutData(planned, rule),
  };
}

/** Square millimetres. */
function accountData({ sheet, pieces, kept, waste, cuts }: SheetAccount): object {
  const areas = { sheet, pieces, kept, waste, cuts };
  return Object.fromEntries(Object.entries(areas).map(([name, area]) => [name, squareMmText(area)]));
}

/** Of all boards: what they cost, or which have no price. */
export function totalData(boards: readonly PlannedBoard[]): object {
  const { cost, unpriced } = planTotal(boards);
  return cost ? { cost: moneyText(cost) } : { unpriced };
}

/** As JSON, with lengths without what doubles lose on their way: to the grid that all is planned on. */
export function planJson(value: object): string {
  const rounded = (_: string, one: unknown) => (typeof one === 'number' && !Number.isInteger(one) ? toMm(toGrid(one)) : one); // prettier-ignore
  return jsonText(value, rounded);
}

/** What falls out of windows and no piece is cut from, which is worth keeping or not. */
function falloutData(planned: PlannedBoard, rule: KeepRule): object[] {
  return unusedFallouts(planned, rule).map(({ stock: { id, width, height }, ...more }) => ({ id, width, height, ...more })); // prettier-ignore
}

export function boardText(planned: PlannedBoard, rule: KeepRule, showing: Showing, width: number): string {
  const { board, plan } = planned;
  const lines = alikeSheets(plan.sheets).flatMap((alike) => sheetLines(planned, alike, rule, showing, width));
  const sums = `${shareWords(planned, rule)}; ${settingsWords(plan.sheets)}.`;
  const fallen = falloutWords(planned, showing, rule);
  if (fallen !== '') lines.push(...paragraph(fallen, 2, width));
  const head = [sums, `${areaWords(planned, showing, rule)}.`].flatMap((words) => paragraph(words, 2, width));
  return `${[...wrap(`${board}: ${planWords(planned)}`, width), ...head, ...lines].join('\n')}\n`;
}

/** Sheets that are cut alike are told once. */
function sheetLines(
  planned: PlannedBoard,
  alike: AlikeSheets,
  rule: KeepRule,
  showing: Showing,
  width: number,
): string[] {
  const { sheet, places } = alike;
  const told = [
    alikeWords(planned.plan.sheets, alike),
    cutFirstWords(planned, places, showing),
    keepFalloutWords(planned, places),
  ];
  return [
    ...paragraph(sheetTitle(sheet, places[0] ?? 0, showing), 2, width),
    ...told.flatMap((words) => (words === '' ? [] : paragraph(words, 4, width))),
    ...columns(pieceRows(sheet, showing), { indent: 6, width, wraps: 1 }),
    ...(sheet.steps.length > 0 ? ['    Cuts', ...columns(stepRows(sheet, showing), { indent: 6, width, right: [0] })] : []), // prettier-ignore
    ...(sheet.left.length > 0 ? paragraph(`Left: ${leftWords(sheet, showing, rule)}`, 4, width) : []),
  ];
}

/** Nothing of a single board, which says it itself. */
export function totalText(boards: readonly PlannedBoard[], width: number): string[] {
  const words = totalWords(boards);
  return words === '' ? [] : [`${wrap(words, width).join('\n')}\n`];
}

export function unplannedText(unplanned: readonly Unplanned[], width: number): string[] {
  const words = unplannedWords(unplanned);
  return words === '' ? [] : [`${wrap(words, width).join('\n')}\n`];
}

export function usedText(words: readonly string[], width: number): string {
  return `${['Used', ...words.flatMap((line) => paragraph(`${line}.`, 2, width))].join('\n')}\n`;
}

export function cautionsText(boards: readonly PlannedBoard[], width: number): string[] {
  const lines = sheetCautions(boards).flatMap((words) => paragraph(words, 2, width));
  return lines.length === 0 ? [] : [`${['Take care', ...lines].join('\n')}\n`];
}
