/** Written sizes the other way round, in the words they were written in. */
import { unitWord } from '../units';
import type { WrittenSize } from './written';

const CROSS = /\s*[x×*]\s*|\s+by\s+/i;
/** A unit in letters or primes, with the space before it. */
const ENDING = /[\s\p{L}.'"‘’“”′″]+$/u;

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

function turnedName(name: string): string {
  return /\b(landscape|lying)\b/i.test(name)
    ? name.replace(/\s*\b(landscape|lying)\b/i, '')
    : `${name.replace(/\s*\b(portrait|upright)\b/i, '')} landscape`;
}
