/** Type on paper: the styles, true fractions, and texts that hold nothing the font cannot draw. */

export type Weight = 'regular' | 'bold';

export interface TextStyle {
  /** Type size in points. */
  readonly size: number;
  readonly weight?: Weight;
  readonly align?: 'left' | 'centre' | 'right';
  /** Degrees anticlockwise: 90 reads upward. */
  readonly turn?: 0 | 90;
  /** Figures of one width, for columns. */
  readonly tabular?: boolean;
}

/** Height of Inter's capitals and figures as a part of the type size (1490 / 2048 in its OS/2 table). */
export const CAP_HEIGHT = 1490 / 2048;

/**
 * Figures of one width, without the features that look at their neighbours: a long list is laid out several times
 * faster so. fontkit takes features to switch on and off; pdfkit's types know only those to switch on.
 */
export const TABULAR = {
  features: { tnum: true, calt: false, kern: false, ccmp: false, mark: false, mkmk: false } as unknown as ['tnum'],
};

/** No type on paper is smaller, points. */
export const SMALLEST = 5;

/** Stands where a character has no glyph, so that nothing is lost unseen. */
export const NEUTRAL_MARK = '□';

/** Graphemes; far more than any line holds, and little enough to measure at once. */
const LONGEST_TEXT = 2000;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * Gives the fractions of an inch in a text their fraction slash, with which the font sets them true. Others, such as the
 * number of a leaflet, 10/8, stay as they are.
 */
export function fractions(text: string): string {
  return text.replace(
    /(?<![\d/])(\d{1,2})\/(2|3|4|6|8|12|16|24|32|48|64)(?![\d/])/g,
    (all, over: string, under: string) => (Number(over) < Number(under) ? `${over}\u2044${under}` : all),
  );
}

/**
 * The text as it can be drawn: composed, on one line, of reasonable length, and with a neutral mark in place of
 * every character that the font has no glyph for; each of these is told.
 */
export function printable(
  text: string,
  hasGlyph: (codePoint: number) => boolean,
  tellLost: (sign: string) => void = () => undefined,
): string {
  if (text.length <= LONGEST_TEXT && /^[\x20-\x7e]*$/.test(text)) return text;
  if (text.length <= LONGEST_TEXT && drawable(text, hasGlyph)) return text;
  // Line ends and tabs are spaces on one line; other control characters have no shape of their own.
  const oneLine = text
    .slice(0, LONGEST_TEXT * 4)
    .normalize('NFC')
    .replace(/[\t-\r\u2028\u2029]+/gu, ' ')
    .replace(/\p{Cc}/gu, '');
  const all = Array.from(graphemes.segment(oneLine), ({ segment }) => {
    const seen = drawn(segment, hasGlyph);
    if (seen === NEUTRAL_MARK && segment !== NEUTRAL_MARK) tellLost(segment);
    return seen;
  });
  return all.length > LONGEST_TEXT ? `${all.slice(0, LONGEST_TEXT).join('')}…` : all.join('');
}

/** True of a text that needs nothing done: every character has a glyph and stands for itself. */
function drawable(text: string, hasGlyph: (codePoint: number) => boolean): boolean {
  return (
    !/[\p{C}\p{M}\u2028\u2029]/u.test(text) && Array.from(text).every((sign) => hasGlyph(sign.codePointAt(0) ?? 0))
  );
}

function drawn(grapheme: string, hasGlyph: (codePoint: number) => boolean): string {
  const seen = grapheme.replace(/\p{Cf}|\p{Variation_Selector}/gu, '');
  return Array.from(seen).every((sign) => hasGlyph(sign.codePointAt(0) ?? 0)) ? seen : NEUTRAL_MARK;
}

/** The longest beginning of a text, with … after it, that is no wider than `most` by the given measure. */
export function fitted(text: string, most: number, widthOf: (text: string) => number): string {
  if (widthOf(text) <= most) return text;
  const parts = Array.from(graphemes.segment(text), ({ segment }) => segment);
  let low = 0;
  let high = parts.length;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (widthOf(`${parts.slice(0, middle).join('')}…`) <= most) low = middle;
    else high = middle - 1;
  }
  return `${parts.slice(0, low).join('').trimEnd()}…`;
}

/** A word in parts that are each no wider than `most`: a long name goes on in the next line rather than being lost. */
export function broken(word: string, most: number, widthOf: (text: string) => number): readonly string[] {
  if (widthOf(word) <= most) return [word];
  const parts: string[] = [];
  for (const { segment } of graphemes.segment(word)) {
    const last = parts.at(-1);
    if (last !== undefined && widthOf(last + segment) <= most) parts[parts.length - 1] = last + segment;
    else parts.push(segment);
  }
  return parts;
}
