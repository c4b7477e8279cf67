/** A plan of sheets in words: what to take, how to cut it in order, and what is left. */
import { heightOf, widthOf, type Box } from '../geometry/box';
import { counted } from '../phrases';
import { lengthText, settingBesideMark, sizeText, type Showing } from '../units';
import type { PieceKind } from '../pieces/piece';
import type { Stock } from './ask';
import { accountOf, shareOf } from './account';
import { alikeSheets, type AlikeSheets } from './alike-sheets';
import { partInHand } from './cut-lines';
import type { CutStep, PlannedSheet } from './plan';
import type { Unplanned } from './board-asks';
import type { PlannedBoard } from './planned-board';
import { inShape } from './fallout-words';
import { paidText } from './plan-total';
import { keepingOf, USUAL_KEEP, type KeepRule, type Keeping } from './remnants';

/** How much is taken, what it costs, and whether it could be better. */
export function planWords({ plan, ask, isPriced }: PlannedBoard): string {
  const { sheets, cost, atLeast } = plan;
  const many = counted(sheets.filter(({ stock }) => stock.kind === 'sheet').length, 'new sheet');
  const paid = paidText({ plan, isPriced });
  const costs = paid === '' ? '' : `, ${paid} in all`;
  const less = ask.aim === 'sheets' || !isPriced ? 'takes less' : 'costs less';
  const best = cost <= atLeast + 1e-9;
  const proven = best ? `proven: no plan ${less}` : 'the best that was found; it is not proven that there is none better'; // prettier-ignore
  // What the largest remnant is worth comes off, and how large it may be is not known.
  const weighed = best && weighsRemnant(ask) ? ' before its remnant is taken off; that none leaves more for less is not proven' : ''; // prettier-ignore
  return `${many}${costs}; ${proven}${weighed}.`;
}

function weighsRemnant({ aim, remnantWorth }: PlannedBoard['ask']): boolean {
  return (remnantWorth ?? (aim === 'remnant' ? 1 : 0)) > 0;
}

/** Whether it is proven that no plan costs or takes less, where that is all that is asked. */
export function isProven({ plan: { cost, atLeast }, ask }: Pick<PlannedBoard, 'plan' | 'ask'>): boolean {
  return cost <= atLeast + 1e-9 && !weighsRemnant(ask);
}

/** What to fetch before the first cut: `2 new sheets, 32 x 40 in; 1 remnant, 20 x 24 in`. */
export function takeWords({ plan: { sheets } }: PlannedBoard, showing: Showing): string {
  const many = new Map<string, { readonly what: string; readonly size: string; count: number }>();
  for (const { stock } of sheets) {
    // What falls out of windows comes by itself.
    if (stock.kind === 'fallout') continue;
    const [what, size] = [stock.kind === 'sheet' ? 'new sheet' : 'remnant', sizeText(stock, showing)];
    const one = many.get(`${what} ${size}`) ?? { what, size, count: 0 };
    one.count += 1;
    many.set(`${what} ${size}`, one);
  }
  const taken = [...many.values()].map(({ what, size, count }) => `${counted(count, what)}, ${size}`);
  return taken.length === 0 ? 'nothing' : taken.join('; ');
}

/** What nobody lists sheets of; empty where all is planned. */
export function unplannedWords(unplanned: readonly Unplanned[]): string {
  if (unplanned.length === 0) return '';
  const told = unplanned.map(({ name, material, count }) => `${count} x ${name} (${material})`).join(', ');
  return `Not planned, since no sheets of it are listed: ${told}.`;
}

/** Such as `Sheet 2: new sheet, 32 x 40 in, 91 % used`. */
export function sheetTitle(sheet: PlannedSheet, index: number, showing: Showing): string {
  return `Sheet ${index + 1}: ${sheetWords(sheet, showing)}`;
}

/** The same without its number. */
export function sheetWords(sheet: PlannedSheet, showing: Showing): string {
  const { stock, pieces } = sheet;
  const { sheet: whole, pieces: used } = accountOf({ ...sheet, pieces, left: [] });
  const what = stock.kind === 'fallout' ? `${inShape(stock)}what falls out of ${stock.id}` : stock.kind === 'sheet' ? 'new sheet' : stock.kind; // prettier-ignore
  return `${what}, ${sizeText(stock, showing)}, ${Math.round(100 * shareOf(used, whole))} % used`;
}

/** Numbers, what, size, and whether it lies turned. */
export function pieceRows({ pieces }: PlannedSheet, showing: Showing): string[][] {
  const alike = new Map<string, { readonly row: string[]; readonly numbers: number[] }>();
  for (const { piece, turned, number } of pieces) {
    const row = [piece.id, sizeText(piece, showing), turned ? 'turned' : ''];
    const there = alike.get(row.join('|'));
    if (there) there.numbers.push(number);
    else alike.set(row.join('|'), { row, numbers: [number] });
  }
  return [...alike.values()].map(({ row, numbers }) => [numbersText(numbers), ...row]);
}

/** `3`, `3, 4`, `3 to 7`. */
export function numbersText(numbers: readonly number[]): string {
  const runs: { from: number; to: number }[] = [];
  for (const number of numbers.toSorted((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && last.to === number - 1) last.to = number;
    else runs.push({ from: number, to: number });
  }
  return runs
    .map(({ from, to }) => (from === to ? `${from}` : `${from}${to === from + 1 ? ',' : ' to'} ${to}`))
    .join(', ');
}

/** Number, what is done, how often, out of what, and what comes of it. */
export function stepRows({ stock, steps }: PlannedSheet, showing: Showing): string[][] {
  return steps.map((step, index) => [String(index + 1), guideWords(step, showing), timesWords(step), inHandWords(step, stock, showing), comesWords(step)]); // prettier-ignore
}

function guideWords({ kind, setting, guideStays }: CutStep, showing: Showing): string {
  const at = settingBesideMark(setting, showing);
  if (kind === 'square') return `cut the bevel off, ${at}`;
  if (kind === 'trim') return `trim, guide at ${at}`;
  return guideStays ? `guide stays at ${at}` : `guide at ${at}`;
}

function timesWords({ kind, times, way }: CutStep): string {
  if (kind !== 'cut') return 'all round';
  return `${way}, ${times === 1 ? 'once' : `${times} times`}`;
}

function inHandWords(step: CutStep, stock: Stock, showing: Showing): string {
  const part = partInHand(step);
  return `${handName(step, stock)}, ${lengthText(widthOf(part), showing)} x ${lengthText(heightOf(part), showing)}`;
}

/** What the part in hand is called: its letter, or what it was taken as. */
export function handName({ of }: CutStep, { kind }: Stock): string {
  if (of !== '') return of;
  return kind === 'fallout' ? 'the fallout' : 'the sheet';
}

/** Such as `gives 1, 2; leaves A`. */
function comesWords({ gives, leaves }: CutStep): string {
  const off = gives.filter((name) => name !== '');
  const parts = [
    ...(off.length > 0 ? [`gives ${off.join(', ')}`] : []),
    ...(leaves === undefined ? [] : [leaves === '' ? 'the rest is left' : `leaves ${leaves}`]),
  ];
  return parts.join('; ');
}

/** How many cuts there are, and how often the guide is set: once for all sheets that are cut alike, which are cut together. */
export function settingsWords(sheets: readonly PlannedSheet[]): string {
  const cuts = sheets.flatMap(({ steps }) => steps).reduce((sum, { times }) => sum + times, 0);
  const set = alikeSheets(sheets).flatMap(({ sheet: { steps } }) => steps.filter(({ guideStays }) => !guideStays));
  return `${counted(cuts, 'cut')}, ${counted(set.length, 'setting')} of the guide`;
}

/** What is worth keeping first: `keep 16 x 40 in; strip 4 x 30 in; waste 1 x 8 in`. Empty where nothing is left. */
export function leftWords({ left }: PlannedSheet, showing: Showing, rule: KeepRule = USUAL_KEEP): string {
  const sizes = (kind: Keeping) =>
    left
      .filter((box) => keepingOf(box, rule) === kind)
      .sort((a, b) => areaOf(b) - areaOf(a))
      .map((box) => sizeText({ width: widthOf(box), height: heightOf(box) }, showing));
  const parts = (['board', 'strip', 'waste'] as const).map((kind) => ({ kind, told: sizes(kind) }));
  return parts
    .filter(({ told }) => told.length > 0)
    .map(({ kind, told }) => `${KEEPING_WORDS[kind]} ${told.join(', ')}`)
    .join('; ');
}

export const KEEPING_WORDS: Readonly<Record<Keeping, string>> = { board: 'keep', strip: 'keep as strips', waste: 'waste' }; // prettier-ignore

/** Of sheets that are told once: how many they are, that they are cut together, and the numbers that their pieces have. */
export function alikeWords(sheets: readonly PlannedSheet[], { sheet: { steps }, places }: AlikeSheets): string {
  if (places.length < 2) return '';
  const [, ...others] = places;
  const numbers = (place: number) => numbersText(sheets[place]?.pieces.map(({ number }) => number) ?? []);
  const told = others.map((place) => `of sheet ${place + 1}: ${numbers(place)}`).join('; ');
  const together = steps.length === 0 ? '' : ' Make each cut on all of them before the guide is moved.';
  return `${counted(places.length, 'sheet')} like this.${together} The numbers of the pieces are, in the same order, ${told}.`;
}

/** Upon which face a label goes: the one that is not seen in the frame. */
export function labelFace(kind: PieceKind | undefined): string {
  return kind === 'glazing' ? 'label comes off before framing' : 'label on the back';
}

/** Whether glass is among what is cut. */
export function hasGlass(boards: readonly PlannedBoard[]): boolean {
  return boards.some(({ ask }) => ask.pieces.some(({ from }) => from?.kind === 'glazing'));
}

function areaOf(box: Box): number {
  return widthOf(box) * heightOf(box);
}
