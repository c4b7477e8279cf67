/** Lays the pieces of each sheet anew, so that what is left of it is in fewer and larger parts. */
import type { Field } from './field';
import { insertAll, Sheets } from './insert';
import type { Judged, Objective } from './objective';
import { OpenSheet } from './open-sheet';
import { piecesIn, Trees } from './cut-tree';
import type { Random } from './random';
import { tightened } from './tighten';

/** How often each sheet is laid anew. */
const TRIES = 60;
/** Part of the places that are passed over: none, some, and so many that pieces lie almost anyhow. */
const BLINKS = [0, 0.2, 0.5] as const;

/** Yields after every sheet; the same pieces stay on the same sheets. */
export function* tidied(field: Field, random: Random, objective: Objective, start: Judged): Generator<Judged, Judged> {
  let best = start;
  // To whoever keeps it every part is worth something, also where no piece of this plan goes into it.
  const each: Field = { ...field, trees: new Trees(field.largest, 0) };
  for (const index of start.found.sheets.keys()) {
    best = better(objective, best, index, tightenedSheet(best.found.sheets[index]!, each));
    for (let time = 0; time < TRIES; time++) {
      const { stock, tree } = best.found.sheets[index]!;
      const laid = laidAnew(each, random, { stock, pieces: piecesIn(tree) }, time);
      for (const sheet of laid ? [laid, tightenedSheet(laid, each)] : []) best = better(objective, best, index, sheet);
    }
    yield best;
  }
  return best;
}

/** The better of two plans: as it is, or with another sheet in one place. */
function better(objective: Objective, best: Judged, index: number, sheet: OpenSheet): Judged {
  const sheets = best.found.sheets.map((one, at) => (at === index ? sheet : one));
  const judged = objective.judge({ ...best.found, sheets });
  return objective.isBetter(judged, best) ? judged : best;
}

function tightenedSheet({ stock, tree }: OpenSheet, { trees }: Field): OpenSheet {
  return new OpenSheet(stock, tightened(tree, trees));
}

/** Pieces on one sheet: the largest first at the first try, then in any order; undefined where one finds no place. */
export function laidAnew(
  field: Field,
  random: Random,
  { stock, pieces: all }: { readonly stock: number; readonly pieces: readonly number[] },
  time: number,
): OpenSheet | undefined {
  const { width, height, depth } = field.stock[stock]!;
  const rank = (piece: number) => field.pieces[piece]!.area * (time === 0 ? 1 : random());
  const pieces = all
    .map((piece) => ({ piece, rank: rank(piece) }))
    .sort((a, b) => b.rank - a.rank || a.piece - b.piece)
    .map(({ piece }) => piece);
  const sheets = new Sheets([new OpenSheet(stock, field.trees.free(width, height), depth)], field);
  const blink = BLINKS[time % BLINKS.length]!;
  const left = insertAll(sheets, pieces, { field, random, blink, budget: 0, choose: () => stock });
  return left.length === 0 && sheets.list.length === 1 ? sheets.list[0] : undefined;
}
