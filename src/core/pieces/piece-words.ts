/** Cuts list, weights and costs in words, the same on screen, paper and terminal. */
import { massText } from '../mass';
import { roundedText } from '../money';
import { areaText, showSetting, sizeText, type Showing, type Unit } from '../units';
import type { Costs } from './cost';
import type { WordsRow } from './moulding-words';
import type { Piece } from './piece';
import { isExact, type Range } from './range';
import type { Weighed } from './weight';
import { listed, uncapital } from '../phrases';

/** Headings of the cuts list's columns. */
export const PIECE_HEADS = ['count', 'piece', 'of', 'thick', 'cut to', 'order', 'area'] as const;

export function pieceRow(piece: Piece, showing: Showing): string[] {
  const { count, name, material, thickness, cut, order, area, comesWithFrame } = piece;
  const net = area.net === area.full ? '' : `, ${areaText(area.net, showing)} without windows`;
  return [
    `${count} x`,
    name,
    material,
    // A step of a rule would show glass of 2.5 mm as 1/8 in.
    thickness ? showSetting(thickness.nominal, showing).withUnit : 'unknown',
    sizeText(cut, showing),
    comesWithFrame ? 'comes with the frame' : sizeText(order, showing),
    areaText(area.full, showing) + net,
  ];
}

/** How the sizes come about, each rule once with the pieces it is for. */
export function sizeRules(pieces: readonly Piece[]): string[] {
  const names = new Map<string, string[]>();
  for (const { rule, name } of pieces) names.set(rule, [...(names.get(rule) ?? []), name]);
  return [...names].map(([rule, of]) => `${of.join('; ')}: ${rule}.`);
}

/** Where densities come from, each once. */
export function densitySources({ items }: Weighed): string[] {
  const sources = items.flatMap(({ how, source }) => (source === undefined ? [] : `${how}: ${source}.`));
  return [...new Set(sources)];
}

const SAW = 'Keep hands clear of the saw, and follow its manual.';

/** For whoever cuts what the list says. */
export const PIECES_CAUTION = `Glass breaks and its edges cut: wear cut-resistant gloves and eye protection. ${SAW}`;

/** Without a word of glass where none is among the pieces. */
export function piecesCaution(pieces: readonly Pick<Piece, 'kind'>[]): string {
  return hasGlazing(pieces) ? PIECES_CAUTION : SAW;
}

export function hasGlazing(pieces: readonly Pick<Piece, 'kind'>[]): boolean {
  return pieces.some(({ kind }) => kind === 'glazing');
}

/** One weight, or between what it lies. */
export function rangeText(kg: Range, unit: Unit): string {
  const [least, nominal, greatest] = [kg.least, kg.nominal, kg.greatest].map((one) => massText(one, unit));
  return isExact(kg) || least === greatest ? `${nominal}` : `${nominal} (${least} to ${greatest})`;
}

export function weightRows({ items, counted, notCounted }: Weighed, unit: Unit): WordsRow[] {
  const known =
    notCounted.length === 0 ? 'everything is counted' : `without ${listed(notCounted)}, which are not known`;
  const without = notCounted.length === 1 ? known.replace('which are', 'which is') : known;
  return [
    ...items.map(({ name, kg, how }): WordsRow => [name, kg ? rangeText(kg, unit) : 'not counted', how]),
    // The sum of nothing is no weight.
    ['Counted', items.some(({ kg }) => kg) ? rangeText(counted, unit) : 'nothing', without],
  ];
}

/** How costs come about, in one line. */
const BASIS =
  'whole sheets where the price is by the sheet, else the area as cut; of the moulding its length with the saw cuts; a frame of the shelf as it is. Where frames are ranked, boards and glazing count by their shares of a sheet, which can come to less';

export function costRows({ lines, counted, notCounted }: Costs): WordsRow[] {
  return [
    ...lines.map(({ what, amount, basis }): WordsRow => [what, amount ? roundedText(amount) : 'not counted', basis]),
    [
      'Counted',
      // The sum of nothing is no price.
      lines.some(({ amount }) => amount) ? roundedText(counted) : 'nothing',
      notCounted.length === 0 ? 'everything is counted' : `without ${listed(notCounted.map(uncapital))}`,
    ],
    ['Basis', 'what it takes', BASIS],
  ];
}
