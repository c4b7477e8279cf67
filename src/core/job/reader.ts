/** Reads single written values of a job, collecting a problem with its path for each that cannot be right. */
import { allSides, eachSide, type PerSide, type Size } from '../geometry/box';
import { isoSize } from '../frame/iso-216';
import { fixedLimitText, missedLimit } from '../limit-text';
import { readMass } from '../mass';
import type { Problem } from '../problem';
import {
  MM_PER_INCH,
  readLength,
  showingOf,
  sizeText,
  spokenLength,
  unitWord,
  type Showing,
  type Unit,
} from '../units';
import type { WrittenLength, WrittenPerSide, WrittenSize } from './written';

/** Nothing at a framer's bench is larger, mm: 400 in. */
export const LARGEST = 400 * MM_PER_INCH;

const LAST_BITS = 1e-9;

/** What a length must lie within, mm, and what it is called in a problem. */
export interface Limits {
  readonly name: string;
  readonly least?: number;
  /** True when the least value itself is not allowed. */
  readonly above?: boolean;
  readonly most?: number;
  /** True when the greatest is the same whatever the job, so that it is told as a round length. */
  readonly isFixed?: boolean;
  /** What else may be written in place of a length, or before one. */
  readonly words?: string;
}

export class Reader {
  readonly problems: Problem[] = [];
  readonly showing: Showing;

  constructor(
    readonly units: Unit,
    steps: { readonly in: Showing['inchStep']; readonly mm: Showing['metricStep'] },
  ) {
    this.showing = showingOf({ units, steps });
  }

  say(problem: Omit<Problem, 'severity'> & { readonly severity?: Problem['severity'] }): void {
    this.problems.push({ severity: 'error', ...problem });
  }

  /** A written length, or the fallback where none is written; NaN after a problem, so that reading can go on. */
  length(written: WrittenLength | undefined, at: string, limits: Limits, fallback: number): number {
    return this.optionalLength(written, at, limits) ?? fallback;
  }

  optionalLength(written: WrittenLength | undefined, at: string, limits: Limits): number | undefined {
    if (written === undefined) return undefined;
    const reading = readLength(written, this.units);
    if (!reading.ok) {
      const remedy = limits.words === undefined ? reading.remedy : `${reading.remedy}, or ${limits.words}`;
      this.say({
        code: 'length-unreadable',
        at,
        message: `${limits.name}: ${reading.message}; ${remedy}.`,
        value: String(written).slice(0, 60),
        remedy,
      });
      return NaN;
    }
    return this.within(reading.mm, at, limits);
  }

  /** A size in any of its written forms; NaN sides after a problem. */
  size(written: WrittenSize, at: string, what: string): Size {
    if (typeof written === 'string') return this.sizeText(written, at, what);
    const { width, height } = written;
    return this.sides(width, `${at}.width`, height, `${at}.height`, what);
  }

  /** One value or one for each side; `read` turns a written value into mm. */
  perSide<T extends WrittenLength>(
    written: WrittenPerSide<T> | undefined,
    at: string,
    fallback: number,
    read: (value: T, at: string) => number,
  ): PerSide {
    if (written === undefined) return allSides(fallback);
    if (typeof written !== 'object') return allSides(read(written, at));
    return eachSide((side) => {
      const value = written[side];
      return value === undefined ? fallback : read(value, `${at}.${side}`);
    });
  }

  /** kg; undefined where none is written, NaN after a problem. */
  optionalMass(written: string | undefined, at: string, name: string): number | undefined {
    if (written === undefined) return undefined;
    const reading = readMass(written);
    if (reading.ok && reading.kg > 0) return reading.kg;
    this.say({
      code: 'mass-unreadable',
      at,
      message: `${name}: ${reading.ok ? 'it must be more than nothing' : reading.message}.`,
      value: written,
    });
    return NaN;
  }

  number(value: number | undefined, at: string, name: string, least: number, most: number, fallback: number): number {
    if (value === undefined) return fallback;
    if (value >= least && value <= most) return value;
    this.say({
      code: 'number-out-of-range',
      at,
      message: `${name} is ${value}; it must lie from ${least} to ${most}.`,
      value: String(value),
      limit: `${least} to ${most}`,
    });
    return NaN;
  }

  show(mm: number): string {
    return spokenLength(mm, this.showing);
  }

  showSize(size: Size): string {
    return sizeText(size, this.showing);
  }

  private sizeText(written: string, at: string, what: string): Size {
    const named = /^\s*([AB]\d{1,2})(?:\s+(portrait|upright|landscape|lying))?\s*$/i.exec(written);
    const iso = named ? isoSize(named[1] ?? '') : undefined;
    if (iso) {
      const lying = /landscape|lying/i.test(named?.[2] ?? '');
      return lying ? { width: iso.height, height: iso.width } : iso;
    }
    const sides = written.split(/\s*[x×*]\s*|\s+by\s+/i);
    if (sides.length !== 2 || sides.some((side) => side.trim() === '')) {
      this.say({
        code: 'size-unreadable',
        at,
        message: `Size of ${what}: "${written.slice(0, 40)}" is not a size; write width x height like 8 x 10 in, or A4.`,
        value: written.slice(0, 60),
        remedy: 'write width x height like 8 x 10 in, or A4',
      });
      return { width: NaN, height: NaN };
    }
    // "8 x 10 in" says its unit once, for both.
    const [first = '', second = ''] = sides;
    return this.sides(withUnit(first, unitWord(second)), at, withUnit(second, unitWord(first)), at, what);
  }

  private sides(width: WrittenLength, widthAt: string, height: WrittenLength, heightAt: string, what: string): Size {
    const limits = { least: 0, above: true, most: LARGEST };
    return {
      width: this.length(width, widthAt, { name: `Width of ${what}`, ...limits }, NaN),
      height: this.length(height, heightAt, { name: `Height of ${what}`, ...limits }, NaN),
    };
  }

  private within(mm: number, at: string, limits: Limits): number {
    const { name, least = -LARGEST, above = false, most = LARGEST } = limits;
    // The length that the limit comes from could not be read, and has its own problem.
    if (Number.isNaN(least) || Number.isNaN(most)) return mm;
    // A limit may be a sum or a difference of other lengths; its last bits are nobody's fault.
    if ((above ? mm > least : mm >= least - LAST_BITS) && mm <= most + LAST_BITS) return mm;
    const low = mm <= least;
    const missed = missedLimit(mm, low ? least : most, low ? 'least' : 'most', this.showing);
    const { value } = missed;
    const limit = limits.isFixed && !low ? fixedLimitText(most, this.showing) : missed.limit;
    const words = low ? (above ? `more than ${limit}` : `${limit} or more`) : `${limit} or less`;
    this.say({
      code: 'length-out-of-range',
      at,
      message: `${name} is ${value}; it must be ${words}.`,
      value,
      limit,
      remedy: words,
    });
    return NaN;
  }
}

/** The length with a unit behind it, unless it says its own or there is none. */
function withUnit(length: string, unit: string | undefined): string {
  return unit === undefined || unitWord(length) !== undefined ? length : `${length} ${unit}`;
}
