/**
 * A judge of sheet plans, written apart from the planner: it knows only the pieces asked for, the stock, and the boxes and
 * cuts of the plan. Everything that is wrong, in words; nothing where the plan can be cut as it says.
 */
import type { Box } from '../../../src/core/geometry/box';
import type { SheetsAsk, Stock } from '../../../src/core/sheets/ask';
import type { CutStep, PlannedSheet, SheetPlan } from '../../../src/core/sheets/plan';

/** What double arithmetic may add or lose, mm. */
const SLACK = 1e-5;

export function wrongInPlan(ask: SheetsAsk, plan: SheetPlan): string[] {
  return [
    ...countsWrong(ask, plan),
    ...orderWrong(ask, plan),
    ...pinsWrong(ask, plan),
    ...plan.sheets.flatMap((sheet, index) => sheetWrong(ask, sheet).map((words) => `sheet ${index + 1}: ${words}`)),
    ...costWrong(ask, plan),
  ];
}

function countsWrong(ask: SheetsAsk, { sheets }: SheetPlan): string[] {
  const wrong: string[] = [];
  for (const piece of ask.pieces) {
    const found = sheets.flatMap(({ pieces }) => pieces).filter((one) => one.piece === piece).length;
    if (found !== piece.count) wrong.push(`${piece.id}: ${found} of ${piece.count}`);
  }
  for (const stock of ask.stock) {
    const used = sheets.filter((sheet) => sheet.stock === stock).length;
    if (stock.count !== undefined && used > stock.count) wrong.push(`${stock.id}: ${used} of ${stock.count} there`);
  }
  return wrong;
}

/** What is pinned lies where it was put, and pins of one sheet on one. */
function pinsWrong({ pins = [], pieces, stock }: SheetsAsk, { sheets }: SheetPlan): string[] {
  const found = sheets.flatMap((sheet) => sheet.pieces.filter(({ pinned }) => pinned).map((one) => ({ sheet, one })));
  const wrong = found.length === pins.length ? [] : [`${found.length} of ${pins.length} pins`];
  const sheetOf = new Map<number, unknown>();
  for (const pin of pins) {
    const at = found.findIndex(
      ({ sheet, one }) =>
        one.piece === pieces[pin.piece] &&
        sheet.stock === stock[pin.stock] &&
        one.turned === pin.turned &&
        near(one.box.left, pin.left) &&
        near(one.box.bottom, pin.bottom) &&
        (sheetOf.get(pin.sheet) ?? sheet) === sheet,
    );
    if (at < 0) wrong.push('a pin is not where it was put');
    else sheetOf.set(pin.sheet, found.splice(at, 1)[0]?.sheet);
  }
  return wrong;
}

/** Pieces are numbered through, and what falls out of a window is cut after its mat. */
function orderWrong(ask: SheetsAsk, { sheets }: SheetPlan): string[] {
  const wrong: string[] = [];
  const numbers = sheets.flatMap(({ pieces }) => pieces.map(({ number }) => number));
  if (numbers.toSorted((a, b) => a - b).some((number, index) => number !== index + 1)) wrong.push('numbers do not run through'); // prettier-ignore
  const cut = new Set<unknown>();
  for (const { stock, pieces } of sheets) {
    if (stock.window && !cut.has(ask.pieces[stock.window.piece])) wrong.push(`${stock.id} is not there yet`);
    for (const { piece } of pieces) cut.add(piece);
  }
  return wrong;
}

function sheetWrong(ask: SheetsAsk, { stock, pieces, left, steps }: PlannedSheet): string[] {
  const wrong: string[] = [];
  const trim = stock.kind === 'sheet' ? (stock.trim ?? ask.trim) : 0;
  const room: Box = { left: trim, bottom: trim, right: stock.width - trim, top: stock.height - trim };
  const all = [...pieces.map(({ box }) => box), ...left];
  for (const { piece, box, turned } of pieces) {
    const [wide, high] = turned ? [piece.height, piece.width] : [piece.width, piece.height];
    if (turned && !piece.mayTurn) wrong.push(`${piece.id} is turned`);
    if (!near(box.right - box.left, wide) || !near(box.top - box.bottom, high))
      wrong.push(`${piece.id} has another size`);
  }
  for (const box of all) {
    if (box.left < room.left - SLACK || box.bottom < room.bottom - SLACK || box.right > room.right + SLACK || box.top > room.top + SLACK) wrong.push('reaches out of the sheet'); // prettier-ignore
  }
  all.forEach((one, index) => {
    for (const other of all.slice(index + 1))
      if (!areApart(one, other, ask.kerf)) wrong.push('lies in another or its kerf');
  });
  if (!canBeCut(all, room, ask)) wrong.push('can’t be cut edge to edge');
  wrong.push(...areaWrong(all, room, ask));
  const parting = steps.filter(({ kind }) => kind === 'cut');
  const cuts = parting.reduce((sum, { times }) => sum + times, 0);
  // Each cut parts one rectangle into two.
  if (ask.kerf === 0 && all.length > 0 && cuts !== all.length - 1) wrong.push(`${cuts} cuts for ${all.length} parts`);
  wrong.push(...firstStepsWrong(ask, stock, steps));
  wrong.push(...stepsWrong(parting, room, { pieces, left }, ask.kerf));
  wrong.push(...cutsTooLong(ask, parting));
  const deepest = Math.max(0, ...steps.map(({ stage }) => stage));
  if (ask.stages !== undefined && deepest > ask.stages) wrong.push(`${deepest} stages of ${ask.stages}`);
  return wrong;
}

/** A new sheet is trimmed and a fallout made square before anything else, and nothing else is. */
function firstStepsWrong(
  ask: SheetsAsk,
  { kind, trim = ask.trim, window }: Stock,
  steps: readonly CutStep[],
): string[] {
  const wanted = kind === 'sheet' ? trim : (window?.run ?? 0);
  const first = steps.filter((step) => step.kind !== 'cut');
  if (wanted === 0) return first.length === 0 ? [] : ['is trimmed though nothing comes off'];
  const isRight = first.length === 1 && first[0] === steps[0] && first[0]?.kind === (kind === 'sheet' ? 'trim' : 'square') && near(first[0].setting, wanted); // prettier-ignore
  return isRight ? [] : ['is not trimmed or made square first'];
}

function cutsTooLong({ longestCut = Infinity }: SheetsAsk, steps: readonly CutStep[]): string[] {
  return steps.flatMap(({ part, way }) => {
    const length = way === 'upright' ? part.top - part.bottom : part.right - part.left;
    return length > longestCut + SLACK ? [`a cut is ${length} long`] : [];
  });
}

/** A part by the name that steps give it. */
interface Held {
  readonly name: string;
  readonly box: Box;
}

/** Does what the steps say with a sheet in hand: what comes of it has to be the pieces, by their numbers, and what is left. */
function stepsWrong(
  steps: readonly CutStep[],
  room: Box,
  { pieces, left }: Pick<PlannedSheet, 'pieces' | 'left'>,
  kerf: number,
): string[] {
  const all = [...pieces.map(({ box }) => box), ...left];
  let held: readonly Held[] = [{ name: '', box: room }];
  let guide: number | undefined;
  for (const { part, of, way, setting, times, gives, leaves, guideStays } of steps) {
    if (guideStays !== (guide === setting)) return ['a step says the wrong thing of the guide'];
    guide = setting;
    const found = held.find((one) => one.name === of && isSame(one.box, part));
    if (!found) return ['a step cuts a part that is not there'];
    if (gives.length !== times) return ['a step does not tell all that it gives'];
    const made: Held[] = [];
    let rest = found.box;
    for (let time = 0; time < times; time++) {
      const [off, left] =
        way === 'upright'
          ? [{ ...rest, right: rest.left + setting }, { ...rest, left: rest.left + setting + kerf }]
          : [{ ...rest, top: rest.bottom + setting }, { ...rest, bottom: rest.bottom + setting + kerf }]; // prettier-ignore
      made.push({ name: gives[time] ?? '', box: off });
      rest = left;
    }
    held = [...held.filter((one) => one !== found), ...made, { name: leaves ?? of, box: rest }];
  }
  // A rest no wider than the saw is dust.
  const there = held.filter(({ box }) => box.right - box.left > SLACK && box.top - box.bottom > SLACK);
  const lacking = all.filter((box) => !there.some((one) => isSame(one.box, box)));
  // A sheet that is one piece needs no cut that could name it.
  const named = steps.length === 0 ? [] : pieces;
  const misnamed = named.filter(({ box, number }) => !there.some((one) => isSame(one.box, box) && one.name === String(number))); // prettier-ignore
  return [
    ...(lacking.length > 0 ? ['the steps do not cut all'] : []),
    ...(misnamed.length > 0 ? ['the steps call a piece by another number'] : []),
    ...(there.length > all.length ? ['the steps leave something that is not told'] : []),
  ];
}

function isSame(one: Box, other: Box): boolean {
  return near(one.left, other.left) && near(one.right, other.right) && near(one.bottom, other.bottom) && near(one.top, other.top); // prettier-ignore
}

function near(one: number, other: number): boolean {
  return Math.abs(one - other) < SLACK;
}

function areApart(one: Box, other: Box, kerf: number): boolean {
  const gap = Math.max(other.left - one.right, one.left - other.right, other.bottom - one.top, one.bottom - other.top);
  return gap >= kerf - SLACK;
}

/** Some line from edge to edge crosses none of them, and so on for both sides. */
function canBeCut(boxes: readonly Box[], room: Box, ask: SheetsAsk): boolean {
  if (boxes.length <= 1) return true;
  const ways = [
    { low: (box: Box) => box.left, high: (box: Box) => box.right },
    { low: (box: Box) => box.bottom, high: (box: Box) => box.top },
  ];
  for (const { low, high } of ways) {
    for (const at of new Set(boxes.map(high))) {
      const before = boxes.filter((box) => high(box) <= at + SLACK);
      const after = boxes.filter((box) => low(box) >= at + ask.kerf - SLACK);
      if (after.length === 0 || before.length + after.length !== boxes.length) continue;
      if (canBeCut(before, room, ask) && canBeCut(after, room, ask)) return true;
    }
  }
  return false;
}

/** With a knife, pieces and what is left fill the sheet; with a saw the rest is sawdust, no more than its cuts could make. */
function areaWrong(all: readonly Box[], room: Box, { kerf }: SheetsAsk): string[] {
  const area = ({ left, right, bottom, top }: Box) => (right - left) * (top - bottom);
  const rest = area(room) - all.reduce((sum, box) => sum + area(box), 0);
  const dust = kerf * (room.right - room.left + room.top - room.bottom + kerf) * (all.length + 1);
  return rest < -SLACK || rest > dust + 1e-3 ? [`${rest} mm² are unaccounted for`] : [];
}

function costWrong(ask: SheetsAsk, { sheets, cost, atLeast }: SheetPlan): string[] {
  const sum = sheets.reduce(
    (total, { stock }) =>
      total + (ask.aim === 'sheets' ? Number(stock.kind === 'sheet') : stock.cost + (stock.kind === 'sheet' ? (ask.perSheet ?? 0) : 0)), // prettier-ignore
    0,
  );
  return [
    ...(near(sum, cost) ? [] : [`costs ${sum}, not ${cost}`]),
    ...(atLeast > cost + SLACK ? [`costs less than the bound of ${atLeast}`] : []),
  ];
}
