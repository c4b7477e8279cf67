/** Plans of sheets as the terminal tells them, and as data. */
import type { Box } from '../../core/geometry/box';
import { moneyText, ofParts } from '../../core/money';
import type { Unplanned } from '../../core/sheets/board-asks';
import { COST_PLACES } from '../../core/sheets/board-stock';
import { cutFirstWords, keepDropWords } from '../../core/sheets/drop-words';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import { keepingOf, type KeepRule } from '../../core/sheets/remnants';
import { sheetCautions } from '../../core/sheets/sheet-cautions';
import { falloutWords, leftWords, pieceRows, planWords, settingsWords, shareWords, sheetTitle, stepRows, unplannedWords } from '../../core/sheets/sheet-words'; // prettier-ignore
import { unusedFallouts } from '../../core/sheets/unused-fallouts';
import type { Showing } from '../../core/units';
import { columns, paragraph, wrap } from './text';

/** The plan as data, with what becomes of each part that is left; amounts as texts, since they are exact. */
export function boardData(planned: PlannedBoard, rule: KeepRule): object {
  const { board, plan, ask, isPriced } = planned;
  const left = (boxes: readonly Box[]) => boxes.map((box) => ({ ...box, keeping: keepingOf(box, rule) }));
  const isMoney = isPriced && ask.aim !== 'sheets';
  const told = (cost: number) => (isMoney ? moneyText(ofParts(cost, COST_PLACES)) : cost);
  const counts = isMoney ? 'money' : ask.aim === 'sheets' ? 'new sheets' : 'area of new sheets, 1000 mm²';
  const sheets = plan.sheets.map(({ stock, ...sheet }) => {
    const cost = isPriced ? moneyText(ofParts(stock.cost, COST_PLACES)) : stock.cost;
    return { ...sheet, stock: { ...stock, cost }, left: left(sheet.left) };
  });
  const fallouts = falloutData(planned, rule);
  return { board, ...plan, cost: told(plan.cost), atLeast: told(plan.atLeast), counts, sheets, fallouts };
}

/** What falls out of windows and no piece is cut from, which is worth keeping or not. */
function falloutData(planned: PlannedBoard, rule: KeepRule): object[] {
  return unusedFallouts(planned, rule).map(({ stock: { id, width, height }, ...more }) => ({ id, width, height, ...more })); // prettier-ignore
}

export function boardText(planned: PlannedBoard, rule: KeepRule, showing: Showing, width: number): string {
  const { board, plan } = planned;
  const lines = plan.sheets.flatMap((sheet, index) => [
    ...paragraph(sheetTitle(sheet, index, showing), 2, width),
    ...[cutFirstWords(planned, [index], showing), keepDropWords(planned, [index])].flatMap((words) =>
      words === '' ? [] : paragraph(words, 4, width),
    ),
    ...columns(pieceRows(sheet, showing), { indent: 6, width, wraps: 1 }),
    ...(sheet.steps.length > 0 ? ['    Cuts', ...columns(stepRows(sheet, showing), { indent: 6, width, right: [0] })] : []), // prettier-ignore
    ...(sheet.left.length > 0 ? paragraph(`Left: ${leftWords(sheet, showing, rule)}`, 4, width) : []),
  ]);
  const sums = `${shareWords(planned, rule)}; ${settingsWords(plan.sheets)}.`;
  const fallen = falloutWords(planned, showing, rule);
  if (fallen !== '') lines.push(...paragraph(fallen, 2, width));
  return `${[...wrap(`${board}: ${planWords(planned)}`, width), ...paragraph(sums, 2, width), ...lines].join('\n')}\n`;
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
