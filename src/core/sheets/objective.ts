/** What a plan is judged by: its cost, what its largest remnant is worth of that, and among equals how much is left that is worth keeping. */
import type { Found } from './climb';
import type { Field } from './field';
import { freeParts, type FreePart } from './free-parts';

export interface Judged {
  readonly found: Found;
  /** The cost less what the remnant is worth. */
  readonly cost: number;
  /** The largest that is kept, else the largest. */
  readonly remnant: FreePart | undefined;
  /** The largest sheet that is there anyway and stays whole. */
  readonly whole: number;
  /** The more, the fewer and larger the parts that are left. */
  readonly order: number;
  /** The same of what is kept alone, and of sheets that are there anyway and stay whole. */
  readonly keeps: number;
}

export class Objective {
  /** @param worth of what a part of a sheet cost, from 0 to 1. */
  constructor(
    private readonly field: Field,
    readonly worth: number,
  ) {}

  judge(found: Found): Judged {
    const parts = freeParts(found, this.field);
    const valued = parts.map((part) => ({ part, credit: this.#creditOf(part) }));
    const [most] = valued.toSorted((a, b) => b.credit - a.credit || b.part.kept - a.part.kept);
    const order = parts.reduce((sum, { area }) => sum + this.#useOf(area), 0);
    const kept = parts.reduce((sum, part) => sum + (part.kept < part.area ? 0 : this.#useOf(part.area)), 0);
    const wholes = freeStock(this.field, found).map((stock) => ({ area: this.#areaOf(stock), count: this.#spareOf(found, stock) })); // prettier-ignore
    const keeps = wholes.reduce((sum, { area, count }) => sum + count * this.#useOf(area), kept);
    const whole = Math.max(0, ...wholes.map(({ area }) => area));
    return { found, cost: found.cost - (most?.credit ?? 0), remnant: most?.part, whole, order, keeps };
  }

  isBetter(one: Judged, other: Judged): boolean {
    const less =
      compare(one.cost, other.cost) ||
      compare(Math.max(other.whole, keptIn(other)), Math.max(one.whole, keptIn(one))) ||
      compare(other.keeps, one.keeps) ||
      one.found.sheets.length - other.found.sheets.length ||
      compare(keptIn(other), keptIn(one)) ||
      compare(other.order, one.order);
    return less < 0;
  }

  /** How large a remnant of this stock must be for a plan of this cost to be better; undefined where it can't be. */
  areaFor(cost: number, stock: number, than: Judged): number | undefined {
    const { cost: price } = this.field.stock[stock]!;
    const lacking = cost - than.cost;
    if (this.worth * price > 0 && lacking > 1e-9) return (lacking / (this.worth * price)) * this.#areaOf(stock);
    if (lacking > 1e-9) return undefined;
    return lacking < -1e-9 ? 0 : keptIn(than);
  }

  #spareOf(found: Found, stock: number): number {
    return this.field.stock[stock]!.count - usedOf(found, stock);
  }

  /** One part is of more use than two that are half as large. */
  #useOf(area: number): number {
    return (area / this.field.largest) ** 1.5;
  }

  #creditOf({ kept, area, stock }: FreePart): number {
    return kept < area ? 0 : (this.worth * this.field.stock[stock]!.cost * area) / this.#areaOf(stock);
  }

  #areaOf(stock: number): number {
    const { width, height } = this.field.stock[stock]!;
    return (width - this.field.saw) * (height - this.field.saw);
  }
}

/** Which of the stock is there anyway, and not all used. */
export function freeStock({ stock }: Field, found: Found): number[] {
  return stock.flatMap(({ isThere, count }, index) => (isThere && usedOf(found, index) < count ? [index] : []));
}

function usedOf({ sheets }: Found, stock: number): number {
  return sheets.reduce((sum, sheet) => sum + (sheet.stock === stock ? 1 : 0), 0);
}

function keptIn({ remnant }: Judged): number {
  return remnant?.kept ?? 0;
}

/** Of two sums whose last bits don't count. */
function compare(one: number, other: number): number {
  return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(other)) ? 0 : one - other;
}
