/** Comma-separated values as RFC 4180 has them, with texts that no spreadsheet takes for a formula. */

/** A text is quoted when it must be; a length with a fraction always is, so that it is never taken for a date. */
export type Cell = string | number | { readonly quoted: string };

/** Rows to a file's text: CRLF after every row, quotes doubled. */
export function csvText(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map((cell) => cellText(cell)).join(',')}\r\n`).join('');
}

/** One cell as it stands between separators. */
export function cellText(cell: Cell, separator = ','): string {
  if (typeof cell === 'number') return String(cell);
  if (typeof cell === 'object') return quoted(cell.quoted);
  const text = harmless(cell);
  return text.includes(separator) || /["\r\n]|^\s|\s$/.test(text) ? quoted(text) : text;
}

function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** Spreadsheets run what starts with one of these signs (also in full width); an apostrophe makes it plain text. */
function harmless(text: string): string {
  return /^[=+\-@\t\r\n＝＋－＠]/.test(text) ? `'${text}` : text;
}
