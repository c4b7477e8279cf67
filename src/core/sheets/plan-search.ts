/**
 * Goal-driven ruin and recreate on trees of cuts (after Gardeyn and Wauters, European Journal of Operational Research 301,
 * 2022): sheets that cost less than the best plan so far are filled, a few parts are taken out again and put back another
 * way, and what is no worse than some tries ago is gone on from (late acceptance, Burke and Bykov 2017), until every piece
 * has a place and the goal is set lower.
 */
import { leastCost, stepOf } from './bounds';
import { exactPlan } from './few-pieces';
import type { Field } from './field';
import type { Found } from './climb';
import { BETWEEN, Contest } from './contest';
import { insertAll, Sheets } from './insert';
import { ordersOf } from './orders';
import { inStrips } from './strips';
import { randomFrom, type Random } from './random';

/** Where a search stands. */
export interface Progress {
  readonly field: Field;
  /** Undefined while pieces are left over in every try. */
  readonly best: Found | undefined;
  /** No plan costs less. */
  readonly bound: number;
  readonly rounds: number;
}

/** Ends when the best is proven best; else goes on for as long as it is asked. */
export function* searchSheets(field: Field, seed: number): Generator<Progress, Progress> {
  const random = randomFrom(seed);
  let bound = leastCost(field);
  let best = stripPlan(field);
  let rounds = 0;
  const progress = (): Progress => ({ field, best, bound, rounds });
  // So that there is something to see at once.
  if (best) yield progress();
  best = fewPieces(field, orderPlan(field, random, best));
  yield progress();
  if (!best) return progress();
  const step = stepOf(field.stock.map(({ cost }) => cost));
  const orders = ordersOf(field);
  while (best.cost > bound + 1e-9) {
    const goal: number = step > 0 ? best.cost - step : best.cost * (1 - 1e-9);
    const contest = new Contest(field, random, orders, best, goal);
    // No mix of sheets within the goal has room for all: the best is proven.
    if (contest.isHopeless) {
      bound = best.cost;
      yield progress();
      break;
    }
    let found: Found | undefined;
    while (!found) {
      for (let round = 0; round < BETWEEN && !found; round++) {
        found = contest.round();
        rounds++;
      }
      if (!found) yield progress();
    }
    best = found;
    yield progress();
  }
  return progress();
}

/** Of few pieces the best that can be, where no limit of the cutter stands against it. */
function fewPieces(field: Field, best: Found | undefined): Found | undefined {
  if (field.stages < Infinity || field.longest < Infinity) return best;
  const exact = exactPlan(field);
  return exact && !(best && best.cost <= exact.cost + 1e-9) ? exact : best;
}

/** The best in strips; undefined where some piece is always left. */
function stripPlan(field: Field): Found | undefined {
  let best: Found | undefined;
  const look = (sheets: Sheets | undefined) => {
    if (sheets && (!best || sheets.cost < best.cost)) best = { sheets: sheets.list, cost: sheets.cost };
  };
  for (const stock of field.byPrice) {
    for (const way of [0, 1] as const) {
      for (const across of ['as it is', 'shorter', 'longer'] as const) look(inStrips(field, { way, across, stock }));
    }
  }
  return best;
}

/** The best of every order of the pieces into each kind of sheet first, or what there was. */
function orderPlan(field: Field, random: Random, before: Found | undefined): Found | undefined {
  let best = before;
  for (const order of ordersOf(field)) {
    const pieces = field.pieces.map((_, index) => index).sort((a, b) => order[a]! - order[b]!);
    for (const first of field.byPrice) {
      const sheets = new Sheets([], field);
      const choose = (open: readonly number[]) => (open.includes(first) ? first : open[0]!);
      const left = insertAll(sheets, pieces, { field, random, blink: 0, budget: Infinity, choose });
      if (left.length === 0 && !(best && best.cost <= sheets.cost)) best = { sheets: sheets.list, cost: sheets.cost };
    }
  }
  return best;
}
