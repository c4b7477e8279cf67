/**
 * Goal-driven ruin and recreate on trees of cuts (after Gardeyn and Wauters, European Journal of Operational Research 301,
 * 2022): sheets that cost less than the best plan so far are filled, a few parts are taken out again and put back another
 * way, and what is no worse than some tries ago is gone on from (late acceptance, Burke and Bykov 2017), until every piece
 * has a place and the goal is set lower.
 */
import { leastCost, stepOf } from './bounds';
import { partsOf, piecesIn, withoutPart } from './cut-tree';
import type { Field } from './field';
import { insertAll, Sheets, type Insertion } from './insert';
import { mixesWithin, type Mix } from './mixes';
import type { OpenSheet } from './open-sheet';
import { inStrips } from './strips';
import { randomFrom, type Random } from './random';

export interface Found {
  readonly sheets: readonly OpenSheet[];
  /** In units of cost. */
  readonly cost: number;
}

/** Where a search stands. */
export interface Progress {
  readonly field: Field;
  /** Undefined while pieces are left over in every try. */
  readonly best: Found | undefined;
  /** No plan costs less. */
  readonly bound: number;
  readonly rounds: number;
}

/** Rounds between two looks at the clock. */
const BETWEEN = 32;
/** Part of the places that are passed over, as a rule and now and then. */
const BLINK = 0.02;
const LONG_BLINK = 0.3;
const LONG_BLINKS = 0.05;
/** Parts taken out in one round. */
const LEAST_RUIN = 2;
const MOST_RUIN = 7;
/** Sheets that they are taken out of at most. */
const MOST_SHEETS = 3;
/** Tries that a try is held against. */
const HISTORY = 20;
/** What a free part is worth beside pieces without a place, both as parts of the largest sheet. */
const WORTH = 0.05;
/** Part of new sheets that are the cheapest for their area; the others are any that fit. */
const CHEAPEST = 0.6;

/** Ends when the best is proven best; else goes on for as long as it is asked. */
export function* searchSheets(field: Field, seed: number): Generator<Progress, Progress> {
  const random = randomFrom(seed);
  let bound = leastCost(field);
  let best = firstPlan(field, random);
  let rounds = 0;
  const progress = (): Progress => ({ field, best, bound, rounds });
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

/** The best of strips, and of every order of the pieces into each kind of sheet first; undefined where some are always left. */
function firstPlan(field: Field, random: Random): Found | undefined {
  let best: Found | undefined;
  const look = (sheets: Sheets | undefined) => {
    if (sheets && (!best || sheets.cost < best.cost)) best = { sheets: sheets.list, cost: sheets.cost };
  };
  for (const stock of field.byPrice) {
    for (const way of [0, 1] as const) {
      for (const across of ['as it is', 'shorter', 'longer'] as const) look(inStrips(field, { way, across, stock }));
    }
  }
  for (const order of ordersOf(field)) {
    const pieces = field.pieces.map((_, index) => index).sort((a, b) => order[a]! - order[b]!);
    for (const first of field.byPrice) {
      const sheets = new Sheets([], field);
      const choose = (open: readonly number[]) => (open.includes(first) ? first : open[0]!);
      const left = insertAll(sheets, pieces, { field, random, blink: 0, budget: Infinity, choose });
      if (left.length === 0) look(sheets);
    }
  }
  return best;
}

/** Ranks of the pieces in orders that fill sheets well: by area, by the longer side, by width, by height; the largest first. */
function ordersOf({ pieces }: Field): readonly Int32Array[] {
  const longer = (index: number) => Math.max(pieces[index]!.width, pieces[index]!.height);
  const keys: readonly ((index: number) => number)[] = [
    (index) => pieces[index]!.area,
    longer,
    (index) => pieces[index]!.width,
    (index) => pieces[index]!.height,
  ];
  return keys.map((key) => {
    const sorted = pieces
      .map((_, index) => index)
      .sort((a, b) => key(b) - key(a) || pieces[b]!.area - pieces[a]!.area || a - b);
    const ranks = new Int32Array(pieces.length);
    sorted.forEach((index, rank) => (ranks[index] = rank));
    return ranks;
  });
}

/** How often pieces are put back in each order; else in none. */
const ORDER_SHARES = [0.3, 0.25, 0.1, 0.1] as const;

/** Rounds in which any mix of sheets is tried, before each is tried by itself. */
const FREE = 6000;
/** Rounds of each climb before the worse half of them is given up. */
const HEAT = 400;
/** The last climb goes on for so many rounds before all begin anew. */
const LAST = 6000;

/** Climbs toward one goal: first with any mix of sheets, then side by side, one for each mix, the better half after each heat. */
class Contest {
  #climbs: Climb[];
  #rounds = 0;
  readonly #mixes: readonly Mix[] | undefined;

  constructor(
    private readonly field: Field,
    private readonly random: Random,
    private readonly orders: readonly Int32Array[],
    private readonly best: Found,
    private readonly goal: number,
  ) {
    this.#mixes = mixesWithin(field, goal);
    this.#climbs = [this.#climb(undefined)];
  }

  /** True where no mix of sheets within the goal has room for all. */
  get isHopeless(): boolean {
    return this.#mixes?.length === 0;
  }

  round(): Found | undefined {
    const climb = this.#climbs[Math.floor(this.#rounds++ / BETWEEN) % this.#climbs.length]!;
    const found = climb.round();
    if (!found && this.#rounds >= this.#heat) this.#endHeat();
    return found;
  }

  get #heat(): number {
    const [only, ...others] = this.#climbs;
    if (others.length > 0) return HEAT * this.#climbs.length;
    return only?.isFree ? FREE : LAST;
  }

  #endHeat(): void {
    this.#rounds = 0;
    // One kind of sheet has one mix.
    if (!this.#mixes || this.field.stock.length === 1) return;
    if (this.#climbs.length > 1) {
      this.#climbs.sort((a, b) => a.lacking - b.lacking);
      this.#climbs = this.#climbs.slice(0, Math.ceil(this.#climbs.length / 2));
      return;
    }
    this.#climbs = this.#climbs[0]?.isFree ? this.#mixes.map((mix) => this.#climb(mix)) : [this.#climb(undefined)];
  }

  #climb(mix: Mix | undefined): Climb {
    return new Climb(this.field, this.random, this.orders, this.best, this.goal, mix);
  }
}

/** Toward one goal, from the best plan with as many sheets put back as that takes. */
class Climb {
  #sheets: readonly OpenSheet[];
  #left: readonly number[];
  #cost: number;
  readonly #history: Float64Array;
  #at = 0;
  readonly #insertion: Insertion;

  constructor(
    private readonly field: Field,
    private readonly random: Random,
    private readonly orders: readonly Int32Array[],
    best: Found,
    goal: number,
    private readonly mix: Mix | undefined,
  ) {
    const filled = (sheet: OpenSheet) =>
      piecesIn(sheet.tree).reduce((sum, index) => sum + field.pieces[index]!.area, 0) /
      Math.max(1e-9, field.stock[sheet.stock]!.cost);
    const kept = [...best.sheets].sort((a, b) => filled(b) - filled(a));
    const left: number[] = [];
    let cost = best.cost;
    for (const [stock, count] of mix?.entries() ?? []) {
      const over = kept.filter((sheet) => sheet.stock === stock).slice(count);
      for (const sheet of over) {
        kept.splice(kept.indexOf(sheet), 1);
        cost -= field.stock[stock]!.cost;
        piecesIn(sheet.tree, left);
      }
    }
    while (cost > goal + 1e-9) {
      const sheet = kept.pop()!;
      cost -= field.stock[sheet.stock]!.cost;
      piecesIn(sheet.tree, left);
    }
    this.#insertion = {
      field,
      random,
      blink: BLINK,
      budget: goal + 1e-9,
      ...(mix ? { mix } : {}),
      choose: (open) => this.#choose(open),
    };
    this.#sheets = kept;
    this.#left = left;
    this.#cost = this.#worse(kept, left);
    this.#history = new Float64Array(HISTORY).fill(this.#cost);
  }

  /** True where any mix of sheets will do. */
  get isFree(): boolean {
    return this.mix === undefined;
  }

  /** Area of the pieces without a place, less what is free in large parts; the less the nearer. */
  get lacking(): number {
    return this.#cost;
  }

  /** A plan that reaches the goal, or undefined. */
  round(): Found | undefined {
    const sheets = new Sheets([...this.#sheets], this.field);
    const out = this.#ruin(sheets);
    if (this.random() < 0.7) sheets.dropEmpty();
    const blink = this.random() < LONG_BLINKS ? LONG_BLINK : BLINK;
    const left = insertAll(sheets, this.#ordered([...this.#left, ...out]), { ...this.#insertion, blink });
    if (left.length === 0) {
      sheets.dropEmpty();
      return { sheets: sheets.list, cost: sheets.cost };
    }
    const cost = this.#worse(sheets.list, left);
    const slot = this.#at++ % HISTORY;
    if (cost <= this.#cost || cost <= this.#history[slot]!) {
      this.#sheets = sheets.list;
      this.#left = left;
      this.#cost = cost;
    }
    this.#history[slot] = Math.min(this.#history[slot]!, this.#cost);
    return undefined;
  }

  /** Pieces without a place, less what is free in large parts. */
  #worse(sheets: readonly OpenSheet[], left: readonly number[]): number {
    const lacking = left.reduce((sum, index) => sum + this.field.pieces[index]!.area, 0);
    return lacking - WORTH * sheets.reduce((sum, { worth }) => sum + worth, 0);
  }

  /** Takes a few parts out of a few sheets. */
  #ruin(sheets: Sheets): number[] {
    const { random } = this;
    const out: number[] = [];
    if (sheets.list.length === 0) return out;
    const some = 1 + Math.floor(random() * Math.min(MOST_SHEETS, sheets.list.length));
    const chosen = Array.from({ length: some }, () => Math.floor(random() * sheets.list.length));
    const parts = LEAST_RUIN + Math.floor(random() * (MOST_RUIN - LEAST_RUIN + 1));
    for (let part = 0; part < parts; part++) {
      const sheet = sheets.own(chosen[Math.floor(random() * some)]!);
      if (sheet.isEmpty) continue;
      const found = partsOf(sheet.tree);
      // The whole is a part like any other.
      const at = Math.floor(random() * (found.length + 1));
      const taken = found[at] ?? (sheet.tree.kind === 'free' ? undefined : sheet.tree);
      if (!taken) continue;
      piecesIn(taken, out);
      sheet.set(withoutPart(sheet.tree, taken, this.field.trees) ?? sheet.tree);
    }
    return out;
  }

  #ordered(pieces: number[]): number[] {
    let share = this.random();
    for (const [index, part] of ORDER_SHARES.entries()) {
      share -= part;
      if (share >= 0) continue;
      const order = this.orders[index]!;
      return pieces.sort((a, b) => order[a]! - order[b]!);
    }
    for (let at = pieces.length - 1; at > 0; at--) {
      const other = Math.floor(this.random() * (at + 1));
      [pieces[at], pieces[other]] = [pieces[other]!, pieces[at]!];
    }
    return pieces;
  }

  #choose(open: readonly number[]): number {
    return this.random() < CHEAPEST ? open[0]! : open[Math.floor(this.random() * open.length)]!;
  }
}
