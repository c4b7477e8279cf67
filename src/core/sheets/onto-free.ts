/**
 * Moves pieces onto sheets that are there anyway and stay whole (remnants, what falls out of windows), as long as more worth
 * keeping is left by that: the search for the least cost has no reason to.
 */
import type { Found } from './climb';
import { piecesIn, Trees, withoutPiece, type Tree } from './cut-tree';
import { holds, type Field } from './field';
import { insertAll, Sheets } from './insert';
import { freeStock, type Judged, type Objective } from './objective';
import { OpenSheet } from './open-sheet';
import type { Random } from './random';
import { laidAnew } from './tidy';
import { tightened } from './tighten';

/** How often what stays on its sheet is laid anew. */
const TRIES = 9;

/** Yields after every sheet that is tried; ends when no move is better. */
export function* ontoFree(
  field: Field,
  random: Random,
  objective: Objective,
  start: Judged,
): Generator<Judged, Judged> {
  // To whoever keeps it every part is worth something, also where no piece of this plan goes into it.
  const each: Field = { ...field, trees: new Trees(field.largest, 0) };
  let best = start;
  for (let before: Judged | undefined; best !== before;) {
    before = best;
    for (const stock of freeStock(field, best.found)) {
      for (const index of best.found.sheets.keys()) {
        const moved = movesFrom(each, random, best.found, index, stock)
          .map((found) => objective.judge(found))
          .reduce((a, b) => (objective.isBetter(b, a) ? b : a), best);
        yield moved;
        if (moved === best) continue;
        best = moved;
        break;
      }
    }
  }
  return best;
}

/** Each kind of piece of that sheet first onto a new one of that stock, with what else of it has room there. */
function movesFrom(field: Field, random: Random, { sheets, cost }: Found, index: number, stock: number): Found[] {
  const from = sheets[index]!;
  const there = piecesIn(from.tree);
  const kinds = new Map(there.map((piece) => [field.pieces[piece]!.wanted, piece]));
  return [...kinds.values()].flatMap((first) => {
    if (!holds(field.stock[stock]!, field.pieces[first]!)) return [];
    const others = there
      .filter((piece) => piece !== first)
      .sort((a, b) => field.pieces[b]!.area - field.pieces[a]!.area);
    const { taken, left } = filled(field, random, stock, [first, ...others]);
    if (left.length === there.length) return [];
    const rest = sheets.filter((_, at) => at !== index);
    if (left.length === 0) return [{ cost: cost - field.stock[from.stock]!.cost, sheets: [...rest, taken] }];
    return staying(field, random, from, left).map((stays) => ({ cost, sheets: [...rest, stays, taken] }));
  });
}

/** What goes onto one sheet, in this order, and what does not. */
function filled(
  field: Field,
  random: Random,
  stock: number,
  pieces: readonly number[],
): { taken: OpenSheet; left: readonly number[] } {
  const { width, height, depth } = field.stock[stock]!;
  const sheets = new Sheets([new OpenSheet(stock, field.trees.free(width, height), depth)], field);
  const left = insertAll(sheets, pieces, { field, random, blink: 0, budget: -1, choose: () => stock });
  const [taken] = sheets.list;
  return { taken: new OpenSheet(stock, tightened(taken!.tree, field.trees), depth), left };
}

/** The sheet with these of its pieces, where they lay and laid anew. */
function staying(field: Field, random: Random, from: OpenSheet, left: readonly number[]): OpenSheet[] {
  const { depth } = field.stock[from.stock]!;
  const gone = piecesIn(from.tree).filter((piece) => !left.includes(piece));
  const tree = gone.reduce((rest: Tree, piece) => withoutPiece(rest, piece, field.trees), from.tree);
  const trees = [tree];
  for (let time = 0; time < TRIES; time++) {
    const laid = laidAnew(field, random, { stock: from.stock, pieces: left }, time);
    if (laid) trees.push(laid.tree);
  }
  return trees.flatMap((one) => [one, tightened(one, field.trees)]).map((one) => new OpenSheet(from.stock, one, depth));
}
