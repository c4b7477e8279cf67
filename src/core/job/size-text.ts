/** Written sizes taken apart and put together again, in the words they were written in. */
import { isoSize } from '../frame/iso-216';
import { unitWord } from '../units';
import type { WrittenLength, WrittenSize } from './written';

const CROSS = /\s*[x×*]\s*|\s+by\s+/i;
/** A unit in letters or primes, with the space before it. */
const ENDING = /[\s\p{L}.'"‘’“”′″]+$/u;
const NAME = /^\s*([AB]\d{1,2})(?:\s+(portrait|upright|landscape|lying))?\s*$/i;

/** The same size the other way round, written as it was. */
export function turnedSize(written: WrittenSize): WrittenSize {
  if (typeof written === 'object') return { width: written.height, height: written.width };
  const cross = CROSS.exec(written)?.[0];
  const [first = '', second] = written.split(CROSS);
  if (cross === undefined || second === undefined) return turnedName(written);
  if (unitWord(first) !== undefined) return `${second}${cross}${first}`;
  const unit = ENDING.exec(second)?.[0] ?? '';
  return `${second.slice(0, second.length - unit.length)}${cross}${first}${unit}`;
}

/** Width and height of a size that can be read, each with the unit that was written for both. */
export function sideTexts(written: WrittenSize): { readonly width: WrittenLength; readonly height: WrittenLength } {
  if (typeof written === 'object') return written;
  const name = NAME.exec(written);
  const iso = name && isoSize(name[1] ?? '');
  if (iso) {
    const [width, height] = [`${iso.width} mm`, `${iso.height} mm`];
    return /landscape|lying/i.test(name[2] ?? '') ? { width: height, height: width } : { width, height };
  }
  const [first = '', second = ''] = written.split(CROSS);
  return { width: withUnitOf(first, second), height: withUnitOf(second, first) };
}

function withUnitOf(length: string, other: string): string {
  const unit = unitWord(other);
  return unit === undefined || unitWord(length) !== undefined ? length.trim() : `${length.trim()} ${unit}`;
}

function turnedName(name: string): string {
  return /\b(landscape|lying)\b/i.test(name)
    ? name.replace(/\s*\b(landscape|lying)\b/i, '')
    : `${name.replace(/\s*\b(portrait|upright)\b/i, '')} landscape`;
}
