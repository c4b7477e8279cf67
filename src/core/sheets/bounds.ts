/** What no plan can do without: the least that all sheets together must cost. */
import { holds, sidesOf, type Field, type FieldPiece, type FieldStock } from './field';
import { exactPlan } from './few-pieces';

/** In units of cost; a plan that costs as much is proven best. */
export function leastCost(field: Field): number {
  const { pieces, stock } = field;
  if (pieces.length === 0) return 0;
  const kinds = stock.filter(({ count }) => count > 0);
  const exact = exactPlan(field);
  if (exact) return exact.cost;
  const step = stepOf(kinds.map(({ cost }) => cost));
  const only = kinds.length === 1 ? kinds[0] : undefined;
  const bySheets = only ? sheetBound(pieces, only) * only.cost : shareBound(pieces, kinds);
  const least = Math.max(areaBound(pieces, kinds), bySheets, pieceBound(pieces, kinds));
  return step > 0 ? Math.ceil(least / step - 1e-6) * step : least;
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
function areaBound(pieces: readonly FieldPiece[], kinds: readonly FieldStock[]): number {
  let area = pieces.reduce((sum, { width, height }) => sum + width * height, 0) * (1 - 1e-12);
  let cost = 0;
  const priced = kinds.map((kind) => ({ ...kind, each: kind.width * kind.height }));
  for (const { each, cost: price, count } of priced.toSorted((a, b) => a.cost / a.each - b.cost / b.each)) {
    const taken = Math.min(count, area / each);
    cost += taken * price;
    area -= taken * each;
    if (area <= 0) break;
  }
  return cost;
}

/** No plan costs less than the cheapest sheet that holds its most demanding piece. */
function pieceBound(pieces: readonly FieldPiece[], kinds: readonly FieldStock[]): number {
  return Math.max(...pieces.map((piece) => Math.min(...kinds.filter((kind) => holds(kind, piece)).map(({ cost }) => cost)))); // prettier-ignore
}

/**
 * Sheets of several sizes: each piece pays the part of a sheet that a dual feasible function says it takes, of the sheet where
 * that costs least. What pieces on one sheet pay is never more than the sheet costs, whichever it is.
 */
function shareBound(pieces: readonly FieldPiece[], kinds: readonly FieldStock[]): number {
  // Counted sheets, such as remnants, would make everything free that fits them: only what does not fit them pays.
  const counted = kinds.filter(({ count }) => count < Infinity);
  const paying = pieces.filter((piece) => !counted.some((kind) => holds(kind, piece)));
  let most = 0;
  for (const f of SHARED) {
    for (const g of SHARED) {
      const sum = paying.reduce((total, piece) => {
        const parts = kinds.flatMap(
          ({ width, height, cost }) =>
          sidesOf(piece).flatMap(([wide, high]) => (wide <= width && high <= height ? [cost * f(wide / width) * g(high / height)] : [])), // prettier-ignore
        );
        return total + Math.min(...parts);
      }, 0);
      most = Math.max(most, sum);
    }
  }
  return most;
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
  return [(x) => x, ...chosen.map(beyond), ...ROUNDED];
}

/** What is longer than all but a little takes a whole side, a little takes nothing. */
function beyond(limit: number): Feasible {
  return (x) => (x > 1 - limit + SAME ? 1 : x < limit - SAME ? 0 : x);
}

const ROUNDED = [1, 2, 3, 4, 5].map((k): Feasible => (x) => {
  const whole = (k + 1) * x;
  return Math.abs(whole - Math.round(whole)) < SAME ? x : Math.floor(whole) / k;
});

/** For sheets of several sizes, of which no sides tell thresholds. */
const SHARED: readonly Feasible[] = [(x) => x, ...[0.5, 0.4, 0.3, 0.2, 0.1].map(beyond), ...ROUNDED];
