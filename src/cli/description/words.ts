/** Lengths and sizes in the words of a description. */
import { SIDES, type PerSide, type Side, type Size } from '../../core/geometry/box';
import type { Derivation } from '../../core/layout/layout';
import { lengthText, sizeText, type Showing } from '../../core/units';
import { columns } from '../print/text';

/** How one description shows what it says. */
export interface Words {
  readonly showing: Showing;
  readonly width: number;
  readonly length: (mm: number) => string;
  readonly size: (size: Size) => string;
  /** `1/4 in on every side`, or each side with its name. */
  readonly sides: (sides: PerSide) => string;
  /** The same for overlaps, in the words of the job file: `covers 1/8 in on every side`. */
  readonly overlap: (sides: PerSide, of?: readonly Side[]) => string;
}

export function wordsFor(showing: Showing, width: number): Words {
  const length = (mm: number) => lengthText(mm, showing);
  return {
    showing,
    width,
    length,
    size: (size) => sizeText(size, showing),
    sides: (sides) => sidesText(sides, length),
    overlap: (sides, of = SIDES) => overlapText(sides, of, length),
  };
}

function sidesText(sides: PerSide, of: (mm: number) => string, which: readonly Side[] = SIDES): string {
  const texts = which.map((side) => of(sides[side]));
  if (new Set(texts).size === 1 && which.length === SIDES.length) return `${texts[0]} on every side`;
  return which.map((side, index) => `${side} ${texts[index]}`).join(', ');
}

function overlapText(sides: PerSide, of: readonly Side[], length: (mm: number) => string): string {
  const shows = of.filter((side) => sides[side] < 0).length;
  if (shows === 0) return `covers ${sidesText(sides, length, of)}`;
  if (shows === of.length) return `shows ${sidesText(sides, (mm) => length(-mm), of)}`;
  return sidesText(sides, (mm) => (mm < 0 ? `shows ${length(-mm)}` : `covers ${length(mm)}`), of);
}

/** One line of what was derived: what it is, its value, how it was reached. */
export type Row = readonly [label: string, value: string, how: string];

/** Rows below a heading: label, value, and the sum, which goes on below itself where the line is too short. */
export function rowsText(rows: readonly Row[], indent: number, { width }: Words): string[] {
  return columns(rows, { indent, width });
}

/** The derivations of a width and a height as one row, or one for each where the sums differ. */
export function sizeRow(label: string, derivations: readonly Derivation[], name: string, { size }: Words): Row[] {
  const [width, height] = ['width', 'height'].map((side) => derivations.find((one) => one.name === `${name}.${side}`));
  if (!width || !height) return [];
  const shown = size({ width: width.value, height: height.value });
  if (width.how === height.how) return [[label, shown, width.how]];
  return [
    [label, shown, `width: ${width.how}`],
    ['', '', `height: ${height.how}`],
  ];
}

/** Four given lengths: one row when they are alike, else one for each. */
export function givenRows(label: string, sides: PerSide, how: string, { length }: Words): Row[] {
  return alikeRows(
    label,
    SIDES.map((side) => ({ side, value: length(sides[side]), how })),
  );
}

/** The derivations of four sides: one row when they are alike, else one for each. */
export function sideRows(label: string, derivations: readonly Derivation[], name: string, { length }: Words): Row[] {
  const found = SIDES.flatMap((side) => {
    const one = derivations.find((derivation) => derivation.name === `${name}.${side}`);
    return one ? [{ side, value: length(one.value), how: one.how }] : [];
  });
  return alikeRows(label, found);
}

function alikeRows(label: string, found: readonly { side: string; value: string; how: string }[]): Row[] {
  const [first] = found;
  if (!first) return [];
  const alike = found.every(({ value, how }) => value === first.value && how === first.how);
  return alike
    ? [[label, first.value, `on every side: ${first.how}`]]
    : found.map(({ side, value, how }) => [`${label}, ${side}`, value, how]);
}
