/** What no plan can do without: the least that all sheets together must cost. */
import type { Field, FieldPiece } from './field';

/** In units of cost; a plan that costs as much is proven best. */
export function leastCost(field: Field): number {
  const { pieces, stock } = field;
  if (pieces.length === 0) return 0;
  const step = stepOf(stock.map(({ cost }) => cost));
  const byArea = areaBound(field);
  const only = stock.length === 1 ? stock[0] : undefined;
  const bySheets = only ? sheetBound(pieces, only) * only.cost : 0;
  const least = Math.max(byArea, bySheets);
  return step > 0 ? Math.ceil(least / step - 1e-9) * step : least;
}

/** Costs are whole multiples of it; 0 where they are not whole numbers, or all nothing. */
export function stepOf(costs: readonly number[]): number {
  if (costs.some((cost) => !Number.isInteger(cost))) return 0;
  return costs.reduce((a, b) => gcd(a, b), 0);
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

/** Area bought where it is cheapest, a sheet in part where it must be. */
function areaBound({ pieces, stock, byPrice }: Field): number {
  const largest = Math.max(...stock.map(({ width, height }) => width * height));
  let area = pieces.reduce((sum, piece) => sum + piece.area, 0) * (1 - 1e-12);
  let cost = 0;
  for (const index of byPrice) {
    const { width, height, cost: price, count } = stock[index]!;
    const each = (width * height) / largest;
    const taken = Math.min(count, area / each);
    cost += taken * price;
    area -= taken * each;
    if (area <= 0) break;
  }
  return cost;
}

/**
 * Sheets of one size: the most of dual feasible functions on both sides (Fekete and Schepers 2001). A piece that may turn
 * counts for the less of its two ways, which holds whichever way it is laid.
 */
function sheetBound(
  pieces: readonly FieldPiece[],
  { width, height }: { readonly width: number; readonly height: number },
): number {
  const across = functionsFor(pieces.flatMap((piece) => sidesOf(piece).map(([wide]) => wide / width)));
  const up = functionsFor(pieces.flatMap((piece) => sidesOf(piece).map(([, high]) => high / height)));
  let most = 0;
  for (const f of across) {
    for (const g of up) {
      const sum = pieces.reduce(
        (total, piece) => total + Math.min(...sidesOf(piece).map(([wide, high]) => f(wide / width) * g(high / height))),
        0,
      );
      most = Math.max(most, Math.ceil(sum - 1e-6));
    }
  }
  return most;
}

function sidesOf({ width, height, mayTurn }: FieldPiece): (readonly [number, number])[] {
  return mayTurn ? [[width, height], [height, width]] : [[width, height]]; // prettier-ignore
}

type Feasible = (part: number) => number;

/** So many thresholds are tried, evenly out of those that tell pieces apart. */
const MOST_THRESHOLDS = 24;
/** Of two doubles that mean the same part of a side. */
const SAME = 1e-9;

function functionsFor(parts: readonly number[]): Feasible[] {
  const below = [
    ...new Set(parts.map((part) => Math.min(part, 1 - part)).filter((part) => part > SAME && part <= 0.5)),
  ];
  below.sort((a, b) => a - b);
  const every = Math.max(1, Math.ceil(below.length / MOST_THRESHOLDS));
  const chosen = below.filter((_, index) => index % every === 0);
  const rounded = [1, 2, 3, 4, 5].map((k): Feasible => (x) => {
    const whole = (k + 1) * x;
    return Math.abs(whole - Math.round(whole)) < SAME ? x : Math.floor(whole) / k;
  });
  return [
    (x) => x,
    // What is longer than all but a little takes a whole side, a little takes nothing.
    ...chosen.map(
      (limit): Feasible =>
        (x) =>
          x > 1 - limit + SAME ? 1 : x < limit - SAME ? 0 : x,
    ),
    ...rounded,
  ];
}
