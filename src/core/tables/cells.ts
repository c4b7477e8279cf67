/** Reads single cells of a row of a table: lengths, masses, amounts, words; a problem says the line and the column. */
import { fixedLimitText } from '../limit-text';
import { readMass } from '../mass';
import { readMoney, type Money } from '../money';
import { nearestWord } from '../nearest-word';
import type { Problem } from '../problem';
import type { Row, Table } from './read-table';
import { readLength, type Showing, type Unit } from '../units';

interface LengthLimits {
  /** True when the length may be zero. */
  readonly zero?: boolean;
  /** mm. */
  readonly most: number;
}

/** Letters of a name, as job files have it, and of any cell. */
const MOST_NAME = 200;
const MOST_TEXT = 2000;
/** Signs that control a terminal or a printer; tabs and ends of lines part words. */
const CONTROL = /(?![\t\n\r])\p{Cc}/u;

export class Cells<Key extends string> {
  readonly problems: Problem[] = [];
  readonly #row: Row<Key>;
  readonly #table: Table<Key>;
  readonly #unit: Unit | undefined;

  /** @param unit of bare numbers under headings that give none; undefined: they are refused. */
  constructor(row: Row<Key>, table: Table<Key>, unit?: Unit) {
    this.#row = row;
    this.#table = table;
    this.#unit = unit;
    for (const [key, text] of Object.entries(row.cells) as [Key, string][]) this.#checkText(key, text);
  }

  get line(): number {
    return this.#row.line;
  }

  text(key: Key): string | undefined {
    return this.#row.cells[key];
  }

  /** What something is called: short enough for a label; undefined where the cell is empty. */
  name(key: Key): string | undefined {
    const text = this.text(key);
    if (text !== undefined && text.length > MOST_NAME) {
      this.wrong('text-too-long', key, `“${text.slice(0, 40)}…” has ${text.length} letters; a name has ${MOST_NAME} at the most`); // prettier-ignore
    }
    return text;
  }

  /** mm; undefined where the cell is empty, or after a problem. */
  length(key: Key, { zero = false, most }: LengthLimits): number | undefined {
    const text = this.text(key);
    if (text === undefined) return undefined;
    return this.lengthIn(text, key, { zero, most });
  }

  /** As finely as lengths can be told, in the unit that the cell is written in. */
  showing(key: Key): Showing {
    const unit = this.#table.units[key] ?? this.#unit ?? 'mm';
    const reading = readLength(this.text(key)?.split(';')[0] ?? '', unit);
    return showingIn(reading.ok ? reading.unit : unit);
  }

  /** Several lengths in one cell, parted by semicolons. */
  lengths(key: Key, limits: LengthLimits): number[] {
    const parts = (this.text(key) ?? '').split(';').filter((part) => part.trim() !== '');
    return parts.flatMap((part) => this.lengthIn(part, key, limits) ?? []);
  }

  /** A part of a cell that is a length, mm; undefined after a problem. */
  lengthIn(text: string, key: Key, { zero = false, most }: LengthLimits): number | undefined {
    const unit = this.#table.units[key] ?? this.#unit;
    const reading = readLength(text, unit ?? 'mm');
    if (!reading.ok) {
      this.wrong('length-unreadable', key, `${reading.message}; ${reading.remedy}`);
      return undefined;
    }
    if (reading.bare && unit === undefined && reading.mm !== 0) {
      this.wrong(
        'length-without-unit',
        key,
        `${text} does not say its unit; write ${text} in or ${text} mm, or give the column one, like “${key} (in)”`,
      );
      return undefined;
    }
    if (reading.mm > most || reading.mm < 0 || (reading.mm === 0 && !zero)) {
      this.wrong(
        'length-out-of-range',
        key,
        `“${text.slice(0, 40)}” is out of range; it must be ${zero ? 'from 0' : 'more than 0 and'} up to ${fixedLimitText(most, showingIn(reading.unit))}`,
      );
      return undefined;
    }
    return reading.mm;
  }

  /** kg. */
  mass(key: Key): number | undefined {
    const text = this.text(key);
    if (text === undefined) return undefined;
    const reading = readMass(text);
    if (reading.ok && reading.kg > 0) return reading.kg;
    this.wrong('mass-unreadable', key, reading.ok ? 'it must be more than nothing' : reading.message);
    return undefined;
  }

  money(key: Key): Money | undefined {
    const text = this.text(key);
    if (text === undefined) return undefined;
    const reading = readMoney(text);
    if (reading.ok) return reading.value;
    this.wrong('amount-unreadable', key, reading.message);
    return undefined;
  }

  /** A whole number from `least` to `most`. */
  whole(key: Key, least: number, most: number): number | undefined {
    const text = this.text(key);
    if (text === undefined) return undefined;
    const value = /^\d{1,9}$/.test(text) ? Number(text) : NaN;
    if (value >= least && value <= most) return value;
    this.wrong('count-unreadable', key, `“${text.slice(0, 40)}” is not a whole number from ${least} to ${most}`);
    return undefined;
  }

  /** A number with either decimal mark, from `least` to `most`. */
  number(key: Key, least: number, most: number): number | undefined {
    const text = this.text(key);
    if (text === undefined) return undefined;
    const value = /^\d{1,9}(?:[.,]\d{1,9})?$/.test(text) ? Number(text.replace(',', '.')) : NaN;
    if (value >= least && value <= most) return value;
    this.wrong('number-unreadable', key, `“${text.slice(0, 40)}” is not a number from ${least} to ${most}`);
    return undefined;
  }

  /** One of some words, without regard to capitals. */
  word<W extends string>(key: Key, words: readonly W[]): W | undefined {
    const text = this.text(key);
    return text === undefined ? undefined : this.oneOf(text, key, words);
  }

  /** Several of some words in one cell, parted by semicolons. */
  words<W extends string>(key: Key, words: readonly W[]): W[] {
    const parts = (this.text(key) ?? '').split(/[;+]/).filter((part) => part.trim() !== '');
    return [...new Set(parts.flatMap((part) => this.oneOf(part, key, words) ?? []))];
  }

  yes(key: Key): boolean | undefined {
    const text = this.text(key)?.toLowerCase();
    if (text === undefined) return undefined;
    if (text === 'yes' || text === 'no') return text === 'yes';
    this.wrong('word-unknown', key, `“${text.slice(0, 40)}” is neither yes nor no`);
    return undefined;
  }

  /** Says that a cell which this row needs is empty. */
  need(key: Key, what: string): void {
    this.wrong('cell-empty', key, `${what} needs it, and the cell is empty`);
  }

  wrong(code: string, key: Key, message: string): void {
    const column = this.#table.headings[key] ?? key;
    this.problems.push({
      code,
      severity: 'error',
      at: `line ${this.line}, column ${column}`,
      message: `Line ${this.line}, column “${column}”: ${message}.`,
    });
  }

  #checkText(key: Key, text: string): void {
    const found = CONTROL.exec(text);
    if (found) {
      const code = found[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
      const before = text.slice(Math.max(0, found.index - 20), found.index);
      const where = before === '' ? 'at its beginning' : `behind “${before}”`;
      this.wrong('sign-unprintable', key, `it holds a sign that can’t be printed (U+${code}) ${where}; take it out`);
    }
    if (text.length > MOST_TEXT) {
      this.wrong('text-too-long', key, `it has ${text.length} letters; a cell has ${MOST_TEXT} at the most`);
    }
  }

  private oneOf<W extends string>(text: string, key: Key, words: readonly W[]): W | undefined {
    const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
    const found = words.find((word) => word === plain);
    if (found !== undefined) return found;
    const near = nearestWord(plain, words);
    const meant = near === undefined ? '' : `; perhaps “${near}” is meant`;
    this.wrong('word-unknown', key, `“${plain.slice(0, 40)}” is not one of ${words.join(', ')}${meant}`);
    return undefined;
  }
}

function showingIn(unit: Unit): Showing {
  return { unit, inchStep: 64, metricStep: 0.1 };
}
