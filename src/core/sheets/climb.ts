/** Ruin and recreate toward one goal: a few parts are taken out and put back another way, and what is no worse is gone on from. */
import { countParts, partAt, piecesIn, withoutPart } from './cut-tree';
import type { Field } from './field';
import { insertAll, Sheets, type Insertion } from './insert';
import type { Mix } from './mixes';
import type { OpenSheet } from './open-sheet';
import type { Random } from './random';

export interface Found {
  readonly sheets: readonly OpenSheet[];
  /** In units of cost. */
  readonly cost: number;
}

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
/** How often pieces are put back in each order; else in none. */
const ORDER_SHARES = [0.3, 0.25, 0.1, 0.1] as const;

/** Toward one goal, from the best plan with as many sheets put back as that takes. */
export class Climb {
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
    let cost = best.cost;
    const drop = (at: number) => {
      const [sheet] = kept.splice(at, 1);
      cost -= field.stock[sheet!.stock]!.cost;
    };
    for (const [stock, count] of mix?.entries() ?? []) {
      const over = kept.filter((sheet) => sheet.stock === stock).slice(count);
      for (const sheet of over) drop(kept.indexOf(sheet));
    }
    while (cost > goal + 1e-9) drop(kept.length - 1);
    const placed = new Set(kept.flatMap(({ tree }) => piecesIn(tree)));
    const left = field.pieces.map((_, index) => index).filter((index) => !placed.has(index));
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
      // The whole is a part like any other.
      const at = Math.floor(random() * (countParts(sheet.tree) + 1));
      const taken = partAt(sheet.tree, at) ?? (sheet.tree.kind === 'free' ? undefined : sheet.tree);
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
