/** Plain text for a terminal: words wrapped to a width, rows set in columns. */

/** Lines of at most `width` characters; a length such as `6 1/2 in` is never parted. */
export function wrap(text: string, width: number): string[] {
  const bound = text.replace(/(\d) (?=\d+\/\d)|(\d) (?=(?:in|mm|cm)\b|%)|([≈×+−]) /g, (found) =>
    found.replace(' ', '\u00a0'),
  );
  const lines: string[] = [];
  let line = '';
  for (const word of bound.split(/[ \n]+/)) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line].map((one) => one.replaceAll('\u00a0', ' '));
}

/** A paragraph, each line of it indented. */
export function paragraph(text: string, indent: number, width: number): string[] {
  return wrap(text, width - indent).map((line) => ' '.repeat(indent) + line);
}

export interface Columns {
  readonly indent: number;
  readonly width: number;
  /** Columns, from 0, whose texts end at the same place. */
  readonly right?: readonly number[];
  /** A column, from 0, that gives way where the rows would be wider: its texts go on below themselves, as those of the last do. */
  readonly wraps?: number;
}

/** No column is made narrower. */
const NARROWEST = 20;

/** Rows of texts, each column as wide as its longest; what the last column can't hold goes on below itself. */
export function columns(rows: readonly (readonly string[])[], { indent, width, right = [], wraps }: Columns): string[] {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const longest = Array.from({ length: count }, (_, column) =>
    Math.max(0, ...rows.map((row) => (row[column] ?? '').length)),
  );
  const over = longest.reduce((sum, one) => sum + one + 2, indent - 2) - width;
  const widths = longest.slice(0, -1).map((one, column) => (column === wraps && over > 0 ? Math.max(Math.min(one, NARROWEST), one - over) : one)); // prettier-ignore
  const start = widths.reduce((sum, one) => sum + one + 2, indent);
  const last = Math.max(NARROWEST, width - start);
  return rows.flatMap((row) => {
    const cells = Array.from({ length: count }, (_, column): readonly string[] => {
      const text = row[column] ?? '';
      if (column === count - 1) return wrap(text, last);
      return column === wraps ? brokenAt(text, widths[column] ?? 0) : [text];
    });
    const high = Math.max(0, ...cells.map(({ length }) => length));
    return Array.from({ length: high }, (_, line) => {
      const told = cells.map((lines, column) => set(lines[line] ?? '', widths[column] ?? 0, right.includes(column)));
      return (' '.repeat(indent) + told.join('  ')).trimEnd();
    });
  });
}

function set(text: string, width: number, isRight: boolean): string {
  return isRight ? text.padStart(width) : text.padEnd(width);
}

/** Wrapped, and what has no spaces broken where it is full. */
function brokenAt(text: string, width: number): string[] {
  if (text.length <= width) return [text];
  return wrap(text, width).flatMap((line) => line.match(new RegExp(`.{1,${width}}`, 'gu')) ?? ['']);
}
