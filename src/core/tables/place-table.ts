/** Where the rows and cells of a table stand in its text, so that one can be changed and all else stays as it is. */
import Papa from 'papaparse';
import { assert } from '../problem';
import { SEPARATORS } from './read-table';

/** Places in the text, in characters: from the first to behind the last. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export interface PlacedRow {
  /** With the line's end. */
  readonly line: Span;
  /** With quotes, without blanks round them. */
  readonly cells: readonly Span[];
  /** Where its last cell ends, and a further one would begin. */
  readonly end: number;
}

export interface PlacedTable {
  /** Those that hold anything, the heading first, as `readTable` has them. */
  readonly rows: readonly PlacedRow[];
  readonly separator: string;
  readonly lineEnd: string;
}

/** @param text of a table that `readTable` reads. */
export function placeTable(text: string): PlacedTable {
  const start = text.startsWith('\uFEFF') ? 1 : 0;
  const rows: PlacedRow[] = [];
  let [from, separator, lineEnd] = [start, ',', '\r\n'];
  Papa.parse(text.slice(start), {
    delimitersToGuess: SEPARATORS,
    step: ({ data, meta }) => {
      const to = start + meta.cursor;
      [separator, lineEnd] = [meta.delimiter, meta.linebreak];
      if (data.some((cell) => cell.trim() !== '')) {
        const row = placeRow(text, { from, to }, separator, lineEnd);
        assert(row.cells.length === data.length, 'cells are parted as they are read');
        rows.push(row);
      }
      from = to;
    },
  });
  return { rows, separator, lineEnd };
}

function placeRow(text: string, line: Span, separator: string, lineEnd: string): PlacedRow {
  const end = text.slice(line.from, line.to).endsWith(lineEnd) ? line.to - lineEnd.length : line.to;
  const cells: Span[] = [];
  for (let from = line.from; from <= end;) {
    const to = cellEnd(text, from, end, separator);
    cells.push(withoutBlanks(text, { from, to }));
    from = to + separator.length;
  }
  return { line, cells, end };
}

/** A cell is quoted only where it begins with the mark: `32"` is a length. */
function cellEnd(text: string, from: number, end: number, separator: string): number {
  let place = from;
  if (text[from] === '"') {
    place = text.indexOf('"', from + 1);
    while (text[place + 1] === '"') place = text.indexOf('"', place + 2);
  }
  const found = text.indexOf(separator, place);
  return found < 0 || found > end ? end : found;
}

function withoutBlanks(text: string, { from, to }: Span): Span {
  const cell = text.slice(from, to);
  const begin = from + (cell.length - cell.trimStart().length);
  return { from: begin, to: Math.max(begin, from + cell.trimEnd().length) };
}

/** What takes the place of a span; of an empty one it is put in there. */
export interface Replacement extends Span {
  readonly text: string;
}

/** All at once; those that begin at one place follow each other as they are given. */
export function replaceSpans(text: string, replacements: readonly Replacement[]): string {
  let [done, place] = ['', 0];
  for (const { from, to, text: put } of replacements.toSorted((a, b) => a.from - b.from || a.to - b.to)) {
    assert(from >= place, 'no span lies over another');
    done += text.slice(place, from) + put;
    place = to;
  }
  return done + text.slice(place);
}
