/** A plan of sheets in words: what to take, how to cut it in order, and what is left. */
import { heightOf, widthOf, type Box } from '../geometry/box';
import { ofParts, roundedText } from '../money';
import { counted } from '../phrases';
import { lengthText, showSetting, sizeText, type Showing } from '../units';
import { COST_PLACES } from './board-asks';
import { keepingOf, type Keeping } from './remnants';
import type { CutStep, PlannedSheet, SheetPlan } from './plan';

/** Whether it could be better, in a sentence. */
export function planWords({ sheets, cost, atLeast }: SheetPlan, isMoney: boolean): string {
  const many = counted(sheets.filter(({ stock }) => stock.kind === 'sheet').length, 'new sheet');
  const costs = isMoney ? `, ${roundedText(ofParts(cost, COST_PLACES))} in all` : '';
  const proven = cost <= atLeast + 1e-9 ? 'proven: no plan takes less' : 'fewer were not found; it is not proven that there are none'; // prettier-ignore
  return `${many}${costs}; ${proven}.`;
}

/** Such as `sheet 2, 32 x 40 in, 91 % used`. */
export function sheetTitle({ stock, pieces }: PlannedSheet, index: number, showing: Showing): string {
  const used = pieces.reduce((sum, { box }) => sum + areaOf(box), 0) / (stock.width * stock.height);
  const what = stock.kind === 'fallout' ? `what falls out of ${stock.id}` : stock.kind;
  return `${index + 1}  ${what}, ${sizeText(stock, showing)}, ${Math.round(100 * used)} % used`;
}

/** Count, what, size, and whether it lies turned. */
export function pieceRows({ pieces }: PlannedSheet, showing: Showing): string[][] {
  const alike = new Map<string, { readonly row: string[]; count: number }>();
  for (const { piece, turned } of pieces) {
    const row = [piece.id, sizeText(piece, showing), turned ? 'turned' : ''];
    const there = alike.get(row.join('|'));
    if (there) there.count += 1;
    else alike.set(row.join('|'), { row, count: 1 });
  }
  return [...alike.values()].map(({ row, count }) => [`${count} x`, ...row]);
}

/** One for each setting of the guide. */
export function stepRows({ steps }: PlannedSheet, showing: Showing): string[][] {
  return steps.map(({ part, way, setting, times, stage }: CutStep, index) => [
    String(index + 1),
    `guide at ${showSetting(setting, showing).withUnit}`,
    times === 1 ? 'once' : `${times} times`,
    `${way}, out of ${lengthText(widthOf(part), showing)} x ${lengthText(heightOf(part), showing)}`,
    `stage ${stage}`,
  ]);
}

/** What is worth keeping first: `keep 16 x 40 in; strip 4 x 30 in; waste 1 x 8 in`. Empty where nothing is left. */
export function leftWords({ left }: PlannedSheet, showing: Showing): string {
  const sizes = (kind: Keeping) =>
    left
      .filter((box) => keepingOf(box) === kind)
      .sort((a, b) => areaOf(b) - areaOf(a))
      .map((box) => sizeText({ width: widthOf(box), height: heightOf(box) }, showing));
  const parts = (['board', 'strip', 'waste'] as const).map((kind) => ({ kind, told: sizes(kind) }));
  return parts
    .filter(({ told }) => told.length > 0)
    .map(({ kind, told }) => `${KEEPING_WORDS[kind]} ${told.join(', ')}`)
    .join('; ');
}

const KEEPING_WORDS: Readonly<Record<Keeping, string>> = { board: 'keep', strip: 'keep as strips', waste: 'waste' };

function areaOf(box: Box): number {
  return widthOf(box) * heightOf(box);
}
