/** Finds the measures and percentages in a text, so that a line never breaks inside one and only its fraction is set as one. */

export interface TextPart {
  readonly text: string;
  /** Kept on one line. */
  readonly isMeasure: boolean;
}

/** Of rules: an inch is halved and halved again, so that no date, ratio or number of a publication is taken for a part of it. */
const PARTS = String.raw`(?:1\/2|[13]\/4|[1357]\/8|(?:[13579]|1[135])\/16|(?:[1-9]|[12]\d|3[01])\/32|(?:[1-9]|[1-5]\d|6[0-3])\/64)(?![\d/])`;
const NUMBER = String.raw`(?:(?:\d+[ \u2009])?(?<![\d/])${PARTS}|\d+(?:[.,]\d+)*)`;
const UNIT = String.raw`(?:sq )?(?:in|ft|mm|cm|m²|m|lb|oz|kg|g|g\/cm³)\b`;
const MEASURE = new RegExp(
  String.raw`\d+(?:[.,]\d+)* %|(?:≈[ \u00a0]?)?[−-]?(?:${NUMBER} ${UNIT}(?: \d+(?:\.\d+)? oz\b)?|(?:\d+[ \u2009])?(?<![\d/])${PARTS})`,
  'gu',
);

/** The text in parts, which put together are the text. */
export function measuresIn(text: string): TextPart[] {
  const parts: TextPart[] = [];
  let at = 0;
  for (const { 0: found, index } of text.matchAll(MEASURE)) {
    if (index > at) parts.push({ text: text.slice(at, index), isMeasure: false });
    parts.push({ text: found, isMeasure: true });
    at = index + found.length;
  }
  if (at < text.length) parts.push({ text: text.slice(at), isMeasure: false });
  return parts;
}
