/** Written overlaps: a length, and whether it covers the picture or shows paper. */

export interface WrittenOverlap {
  readonly way: 'covers' | 'shows';
  /** The length as it was typed, without its word or sign. */
  readonly length: string;
}

/** `covers 1/8 in`, `1/8 in`, `shows 1/4` or `-1/4`; undefined where nothing is written. */
export function readOverlapText(written: string | number | undefined): WrittenOverlap | undefined {
  if (written === undefined) return undefined;
  const text = String(written).trim();
  const worded = /^(covers|shows)\s+(.*)$/i.exec(text);
  if (worded) return { way: worded[1]?.toLowerCase() === 'shows' ? 'shows' : 'covers', length: worded[2] ?? '' };
  const negative = /^[-−]\s*(.*)$/.exec(text);
  return negative ? { way: 'shows', length: negative[1] ?? '' } : { way: 'covers', length: text };
}

/** The text to store: a typed sign or word is taken as meant. */
export function overlapText(way: WrittenOverlap['way'], typed: string): string {
  const said = readOverlapText(typed);
  if (said && (/^(covers|shows)\b/i.test(typed.trim()) || said.way === 'shows')) return `${said.way} ${said.length}`;
  return `${way} ${typed}`;
}
