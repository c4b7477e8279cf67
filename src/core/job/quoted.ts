/** What was written, in a message: as it stands and without escapes. */

/** Between quotes, which are curly where straight ones stand in the text itself. */
export function quoted(text: string): string {
  return text.includes('"') ? `“${text}”` : `"${text}"`;
}
