/** Gives the trees of a search their places on sheets: strips of one size side by side, so that the guide is set seldom. */
import type { Box } from '../geometry/box';
import type { SheetsAsk } from './ask';
import type { Cut, Tree } from './cut-tree';
import { toGrid, toMm } from './grid';
import type { OpenSheet } from './open-sheet';
import type { Progress } from './plan-search';
import type { CutStep, PlacedPiece, PlannedSheet, SheetPlan } from './plan';

/** Undefined where the search has found no plan. */
export function drawPlan(ask: SheetsAsk, { field, best, bound, rounds }: Progress): SheetPlan | undefined {
  if (!best) return undefined;
  const sheets = best.sheets.map((sheet) => drawSheet(ask, sheet, (index) => field.pieces[index]!.wanted));
  return { sheets, cost: best.cost, atLeast: bound, rounds };
}

interface Drawing {
  readonly ask: SheetsAsk;
  readonly wanted: (piece: number) => number;
  readonly pieces: PlacedPiece[];
  readonly left: Box[];
  readonly steps: CutStep[];
}

function drawSheet(ask: SheetsAsk, { stock, tree }: OpenSheet, wanted: (piece: number) => number): PlannedSheet {
  const from = ask.stock[stock]!;
  const drawing: Drawing = { ask, wanted, pieces: [], left: [], steps: [] };
  const corner = from.kind === 'sheet' ? toGrid(ask.trim) : 0;
  draw(drawing, tree, corner, corner, 1);
  const { pieces, left, steps } = drawing;
  return { stock: from, pieces, left, steps };
}

/** In the tree every part has a kerf beyond its far sides; on the sheet it ends before it. */
function boxOf({ ask }: Drawing, x: number, y: number, { width, height }: Tree): Box {
  const saw = toGrid(ask.kerf);
  return { left: toMm(x), bottom: toMm(y), right: toMm(x + width - saw), top: toMm(y + height - saw) };
}

function draw(drawing: Drawing, tree: Tree, x: number, y: number, stage: number): void {
  const box = boxOf(drawing, x, y, tree);
  if (tree.kind === 'free') {
    // A rest no wider than the kerf is sawdust.
    if (box.right > box.left && box.top > box.bottom) drawing.left.push(box);
    return;
  }
  if (tree.kind === 'piece') {
    const piece = drawing.ask.pieces[drawing.wanted(tree.piece)]!;
    drawing.pieces.push({ piece, box, turned: tree.turned });
    return;
  }
  const places = placesIn(tree, x, y);
  drawing.steps.push(...stepsOf(drawing, tree, x, y, stage));
  for (const { part, x: left, y: bottom } of places) draw(drawing, part, left, bottom, stage + 1);
}

/** Parts of one size beside each other, the largest first; what is free comes last. */
function inOrder({ way, parts }: Cut): readonly Tree[] {
  const along = (part: Tree) => (way === 0 ? part.width : part.height);
  return [...parts].sort((a, b) => Number(a.kind === 'free') - Number(b.kind === 'free') || along(b) - along(a));
}

function placesIn(cut: Cut, x: number, y: number): { readonly part: Tree; readonly x: number; readonly y: number }[] {
  let [left, bottom] = [x, y];
  return inOrder(cut).map((part) => {
    const place = { part, x: left, y: bottom };
    if (cut.way === 0) left += part.width;
    else bottom += part.height;
    return place;
  });
}

/** One cut after each part but the last, from the edge of what is then left of the part in hand. */
function stepsOf(drawing: Drawing, cut: Cut, x: number, y: number, stage: number): CutStep[] {
  const saw = toGrid(drawing.ask.kerf);
  const whole = boxOf(drawing, x, y, cut);
  const steps: CutStep[] = [];
  for (const { part: each, x: left, y: bottom } of placesIn(cut, x, y).slice(0, -1)) {
    const setting = toMm((cut.way === 0 ? each.width : each.height) - saw);
    const last = steps.at(-1);
    const part = cut.way === 0 ? { ...whole, left: toMm(left) } : { ...whole, bottom: toMm(bottom) };
    if (last?.setting === setting) steps[steps.length - 1] = { ...last, times: last.times + 1 };
    else steps.push({ part, way: cut.way === 0 ? 'upright' : 'lying', setting, times: 1, stage });
  }
  return steps;
}
