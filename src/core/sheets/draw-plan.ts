/** Gives the trees of a search their places on sheets, their cuts an order, and pieces and parts in hand their names. */
import type { Box } from '../geometry/box';
import { lettersOf } from '../letters';
import { trimOf, type SheetsAsk, type Stock } from './ask';
import { orderCuts, type OrderedCut } from './cut-order';
import type { Found } from './climb';
import type { Cut, Tree } from './cut-tree';
import { toGrid, toMm } from './grid';
import type { OpenSheet } from './open-sheet';
import type { Progress } from './plan-search';
import type { CutStep, PlacedPiece, PlannedSheet, SheetPlan } from './plan';
import { inCuttingOrder } from './sheet-order';

export function drawPlan(
  ask: SheetsAsk,
  { field, best, bound, rounds }: Progress & { readonly best: Found },
): SheetPlan {
  const wanted = (index: number) => field.pieces[index]!.wanted;
  const firstPin = field.pieces.length - (ask.pins?.length ?? 0);
  const drawn = best.sheets.map((sheet) => drawSheet(ask, sheet, { wanted, firstPin }));
  return { sheets: inCuttingOrder(ask, drawn), cost: best.cost, atLeast: bound, rounds };
}

/** Of a part in hand: what it is called, and how much of it is cut off so far, in grid units. */
interface InHand {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly stage: number;
  off: number;
  parts: readonly Tree[];
}

/** Which of the wanted pieces a piece of the search is; from the first pin on they are pinned. */
interface Names {
  readonly wanted: (piece: number) => number;
  readonly firstPin: number;
}

function drawSheet(ask: SheetsAsk, { stock, tree }: OpenSheet, names: Names): PlannedSheet {
  const from = ask.stock[stock]!;
  const corner = toGrid(trimOf(from, ask));
  const drawing = new Drawing(ask, names);
  drawing.put(tree, corner, corner, 0);
  for (const cut of orderCuts(tree, toGrid(ask.kerf))) drawing.cut(cut);
  const { pieces, left, steps } = drawing;
  return { stock: from, pieces, left, steps: [...firstSteps(ask, from), ...steps] };
}

/** What makes a sheet square and clean before its first cut. */
function firstSteps(ask: SheetsAsk, stock: Stock): CutStep[] {
  const { kind, width, height, window } = stock;
  const setting = trimOf(stock, ask) || (window?.run ?? 0);
  if (setting === 0) return [];
  const part: Box = { left: 0, bottom: 0, right: width, top: height };
  const what = kind === 'sheet' ? 'trim' : 'square';
  return [{ kind: what, part, of: '', way: 'upright', setting, times: 4, stage: 1, guideStays: false, gives: [] }];
}

class Drawing {
  readonly pieces: PlacedPiece[] = [];
  readonly left: Box[] = [];
  readonly steps: CutStep[] = [];
  readonly #hands = new Map<Cut, InHand>();
  readonly #saw: number;

  constructor(
    private readonly ask: SheetsAsk,
    private readonly names: Names,
  ) {
    this.#saw = toGrid(ask.kerf);
  }

  /** A part that is by itself now; its name as steps tell it, empty where it is of no use. */
  put(tree: Tree, x: number, y: number, depth: number): string {
    if (tree.kind === 'cut') {
      const name = depth === 0 ? '' : lettersOf(this.#hands.size - 1);
      this.#hands.set(tree, { name, x, y, stage: depth + 1, off: 0, parts: tree.parts });
      return name;
    }
    const box = this.#box(tree, x, y);
    if (tree.kind === 'free') {
      // A rest no wider than the kerf is sawdust.
      if (box.right > box.left && box.top > box.bottom) this.left.push(box);
      return '';
    }
    const { wanted, firstPin } = this.names;
    const piece = this.ask.pieces[wanted(tree.piece)]!;
    const number = this.pieces.length + 1;
    const pin = this.ask.pins?.[tree.piece - firstPin];
    this.pieces.push({ piece, box, turned: pin?.turned ?? tree.turned, number, ...(pin ? { pinned: true } : {}) });
    return String(number);
  }

  cut({ cut, off, setting }: OrderedCut): void {
    const hand = this.#hands.get(cut)!;
    const part = this.#rest(cut, hand);
    const gives = this.put(off, ...this.#corner(cut, hand), hand.stage);
    hand.parts = hand.parts.filter((one) => one !== off);
    hand.off += cut.way === 0 ? off.width : off.height;
    const [rest] = hand.parts;
    const leaves = hand.parts.length === 1 && rest ? this.put(rest, ...this.#corner(cut, hand), hand.stage) : undefined;
    this.#tell(
      { kind: 'cut', part, of: hand.name, way: cut.way === 0 ? 'upright' : 'lying', setting: toMm(setting), times: 1, stage: hand.stage },
      gives,
      leaves,
    ); // prettier-ignore
  }

  /** Cuts of one part at one setting are one step. */
  #tell(step: Omit<CutStep, 'gives' | 'guideStays'>, gives: string, leaves: string | undefined): void {
    const last = this.steps.at(-1);
    const end = leaves === undefined ? {} : { leaves };
    const guideStays = last?.setting === step.setting;
    if (last && guideStays && last.of === step.of)
      this.steps[this.steps.length - 1] = { ...last, times: last.times + 1, gives: [...last.gives, gives], ...end };
    else this.steps.push({ ...step, guideStays, gives: [gives], ...end });
  }

  #corner({ way }: Cut, { x, y, off }: InHand): [number, number] {
    return way === 0 ? [x + off, y] : [x, y + off];
  }

  /** What is left of a part in hand. */
  #rest(cut: Cut, hand: InHand): Box {
    const [x, y] = this.#corner(cut, hand);
    const { left, bottom } = this.#box(cut, x, y);
    const { right, top } = this.#box(cut, hand.x, hand.y);
    return { left, bottom, right, top };
  }

  /** In the tree every part has a kerf beyond its far sides; on the sheet it ends before it. */
  #box({ width, height }: Tree, x: number, y: number): Box {
    const saw = this.#saw;
    return { left: toMm(x), bottom: toMm(y), right: toMm(x + width - saw), top: toMm(y + height - saw) };
  }
}
