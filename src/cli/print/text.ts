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
}

/** Rows of texts, each column as wide as its longest; what the last column can't hold goes on below itself. */
export function columns(rows: readonly (readonly string[])[], { indent, width, right = [] }: Columns): string[] {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count - 1 }, (_, column) =>
    Math.max(0, ...rows.map((row) => (row[column] ?? '').length)),
  );
  const start = widths.reduce((sum, one) => sum + one + 2, indent);
  return rows.flatMap((row) => {
    const cells = widths.map((one, column) => {
      const text = row[column] ?? '';
      return right.includes(column) ? text.padStart(one) : text.padEnd(one);
    });
    const [first = '', ...rest] = wrap(row[count - 1] ?? '', Math.max(20, width - start));
    const lead = ' '.repeat(indent) + cells.map((cell) => `${cell}  `).join('');
    return [lead + first, ...rest.map((line) => ' '.repeat(start) + line)].map((line) => line.trimEnd());
  });
}
