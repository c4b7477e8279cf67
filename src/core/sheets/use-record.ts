/** The record of the last use of a stock's file, by which it can be taken back: kept as JSON beside the file. */
import { jsonFault } from '../job/json-fault';
import { bad, good, type Problem, type Result } from '../problem';
import type { RemovedLines } from '../tables/removed-lines';
import { printStock } from './print-stock';
import { readStock } from './read-stock';
import type { StockStep } from './stock-steps';

export interface UseRecord {
  /** What was done, a line for each board. */
  readonly words: readonly string[];
  /** Names the file's text before the use: while it is still that, the use was never made. */
  readonly before: string;
  /** That undo it. */
  readonly back: readonly StockStep[];
  /** Lines that the use took out of the file. */
  readonly removed: RemovedLines;
}

const FORMAT = 'matwright-stock-use';
const VERSION = 1;

/** Rows go in as the lines of a table that they are, since prices are exact there. */
export function printUseRecord({ back, ...record }: UseRecord): string {
  const steps = back.map(({ row, ...step }) => ({ ...step, row: printStock([row]) }));
  return `${JSON.stringify({ format: FORMAT, version: VERSION, ...record, back: steps }, undefined, 2)}\n`;
}

export function parseUseRecord(text: string): Result<UseRecord> {
  const fault = jsonFault(text);
  if (fault !== undefined)
    return bad([damaged(`it is no JSON from line ${text.slice(0, fault).split('\n').length} on`)]);
  try {
    return good(recordOf(JSON.parse(text)));
  } catch (wrong) {
    return bad([damaged(wrong instanceof Error ? wrong.message : String(wrong))]);
  }
}

function damaged(what: string): Problem {
  return {
    code: 'use-record-unreadable',
    severity: 'error',
    at: '',
    message: `The record of the last use is damaged: ${what}. That use can’t be taken back with it: change the counts in the list by hand, and delete the record; the next use makes a new one.`,
    remedy: 'the record as it was written, or none',
  };
}

/** Of a file without a record. */
export function nothingToTakeBack(file: string): Problem {
  return {
    code: 'no-use-to-take-back',
    severity: 'error',
    at: file,
    message: `No use of “${file}” is kept that could be taken back; only the last one is, until it was taken back.`,
  };
}

type Fields = Readonly<Record<string, unknown>>;

/** @throws where something is not as it was written. */
function recordOf(value: unknown): UseRecord {
  const { format, version, words, before, back, removed } = fieldsOf(value, 'the record');
  if (format !== FORMAT || version !== VERSION) throw new Error(`it is no ${FORMAT} of version ${VERSION}`);
  const { heading, lines } = fieldsOf(removed, '“removed”');
  return {
    words: textsOf(words, '“words”'),
    before: textOf(before, '“before”'),
    back: listOf(back, '“back”').map(stepOf),
    removed: { heading: textOf(heading, '“heading”'), lines: textsOf(lines, '“lines”') },
  };
}

function stepOf(value: unknown): StockStep {
  const { row, takes, puts, atNone, below } = fieldsOf(value, 'a step');
  const [sheet] = rowsOf(textOf(row, 'a step’s “row”'));
  if (!sheet) throw new Error('a step has no row');
  if (atNone !== undefined && atNone !== 'stays' && atNone !== 'goes') throw new Error('a step’s “atNone” is neither stays nor goes'); // prettier-ignore
  return {
    row: sheet,
    takes: wholeOf(takes, 'a step’s “takes”'),
    puts: wholeOf(puts, 'a step’s “puts”'),
    ...(atNone === undefined ? {} : { atNone }),
    ...(below === undefined ? {} : { below: textOf(below, 'a step’s “below”') }),
  };
}

function rowsOf(text: string) {
  const read = readStock(text);
  if (!read.ok) throw new Error(`a step’s “row” is no row of a stock (${read.problems[0]?.message.replace(/\.$/, '')})`); // prettier-ignore
  return read.value;
}

function fieldsOf(value: unknown, what: string): Fields {
  if (typeof value !== 'object' || value === null) throw new Error(`${what} holds nothing`);
  return value as Fields;
}

function listOf(value: unknown, what: string): readonly unknown[] {
  if (!Array.isArray(value)) throw new Error(`${what} is no list`);
  return value;
}

function textsOf(value: unknown, what: string): readonly string[] {
  return listOf(value, what).map((one) => textOf(one, what));
}

function wholeOf(value: unknown, what: string): number {
  if (typeof value !== 'number' || !Number.isSafeInteger(value) || value < 0) throw new Error(`${what} is no count`);
  return value;
}

function textOf(value: unknown, what: string): string {
  if (typeof value !== 'string') throw new Error(`${what} is no text`);
  return value;
}
