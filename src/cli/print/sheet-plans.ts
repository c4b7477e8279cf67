/** Plans of sheets as the terminal tells them, and as data. */
import type { Box } from '../../core/geometry/box';
import type { Unplanned } from '../../core/sheets/board-asks';
import { cutFirstWords, keepDropWords } from '../../core/sheets/drop-words';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import { keepingOf, type KeepRule } from '../../core/sheets/remnants';
import { leftWords, pieceRows, planWords, settingsWords, shareWords, sheetTitle, stepRows, unplannedWords } from '../../core/sheets/sheet-words'; // prettier-ignore
import type { Showing } from '../../core/units';
import { columns, paragraph, wrap } from './text';

/** The plan as data, with what becomes of each part that is left. */
export function boardData({ board, plan }: PlannedBoard, rule: KeepRule): object {
  const left = (boxes: readonly Box[]) => boxes.map((box) => ({ ...box, keeping: keepingOf(box, rule) }));
  return { board, ...plan, sheets: plan.sheets.map((sheet) => ({ ...sheet, left: left(sheet.left) })) };
}

export function boardText(planned: PlannedBoard, rule: KeepRule, showing: Showing, width: number): string {
  const { board, plan } = planned;
  const lines = plan.sheets.flatMap((sheet, index) => [
    ...paragraph(sheetTitle(sheet, index, showing), 2, width),
    ...[cutFirstWords(planned, [index]), keepDropWords(planned, [index])].flatMap((words) =>
      words === '' ? [] : paragraph(words, 4, width),
    ),
    ...columns(pieceRows(sheet, showing), { indent: 6, width, wraps: 1 }),
    ...(sheet.steps.length > 0 ? ['    Cuts', ...columns(stepRows(sheet, showing), { indent: 6, width, right: [0] })] : []), // prettier-ignore
    ...(sheet.left.length > 0 ? paragraph(`Left: ${leftWords(sheet, showing, rule)}`, 4, width) : []),
  ]);
  const sums = `${shareWords(planned, rule)}; ${settingsWords(plan.sheets)}.`;
  return `${[...wrap(`${board}: ${planWords(planned)}`, width), ...paragraph(sums, 2, width), ...lines].join('\n')}\n`;
}

export function unplannedText(unplanned: readonly Unplanned[], width: number): string[] {
  const words = unplannedWords(unplanned);
  return words === '' ? [] : [`${wrap(words, width).join('\n')}\n`];
}

export function usedText(words: readonly string[], width: number): string {
  return `${['Used', ...words.flatMap((line) => paragraph(`${line}.`, 2, width))].join('\n')}\n`;
}
