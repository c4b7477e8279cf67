/** The order in which frames suit a job, and what puts one before the next. */
import { roundedText } from '../money';
import type { Show } from '../layout/show';
import type { Unit } from '../units';
import { boardArea } from './area-text';
import type { Candidate } from './candidate';
import { SURETY, suretyOf } from './held';

/**
 * What frames are put in order by, the first that tells two apart:
 *
 * 1. it works, and there is one; it works, but none is left; it does not work;
 * 2. of those that do not work: by how much the worst border misses its range, the least first; without a mat by how much
 *    the frame's size is not the picture's;
 * 3. of float frames: by how much the gap round the canvas is not the wanted one, the least first; a frame whose lip covers
 *    the edges stands with those that have it;
 * 4. evenness: widest border less narrowest, as `Evenness` measures it, the least first (common practice, no source: ready-made
 *    sizes are chosen by how even the border comes out, not by their size);
 * 5. board used, the least first;
 * 6. price as far as it is known: first those of which fewer parts are unknown, then the lowest;
 * 7. how sure it is that it holds the job's depth, as `SURETY` has it: a frame that hides a canvas before one behind which it
 *    stands out. That comes so late because clips are the usual way to hold a canvas, cost next to nothing and are seen from
 *    beside alone, and because what may not fit is told in words (our own rule);
 * 8. name, by letters; and of one frame the way up in which its size is written.
 *
 * Lengths count as the same within a millionth of a millimetre, areas within a thousandth of a square millimetre, so that
 * neither the unit that they were typed in nor the way up of the whole job changes the order.
 */
type Step = 'works' | 'shortfall' | 'gap' | 'evenness' | 'board' | 'price' | 'depth' | 'name';

const STEPS: readonly (readonly [Step, (a: Candidate, b: Candidate) => number])[] = [
  ['works', (a, b) => stateOf(a) - stateOf(b)],
  ['shortfall', (a, b) => (a.works ? 0 : steps(a.shortfall, LENGTH) - steps(b.shortfall, LENGTH))],
  ['gap', (a, b) => steps(a.held?.gapOff ?? 0, LENGTH) - steps(b.held?.gapOff ?? 0, LENGTH)],
  ['evenness', (a, b) => steps(a.evenness?.by ?? FAR, LENGTH) - steps(b.evenness?.by ?? FAR, LENGTH)],
  ['board', (a, b) => steps(a.used.board, AREA) - steps(b.used.board, AREA)],
  ['price', comparePrices],
  ['depth', (a, b) => surety(a) - surety(b)],
  ['name', (a, b) => byLetters(a.frame.name, b.frame.name) || Number(a.turned) - Number(b.turned)],
];

/** What doubles may differ by when they mean the same, mm and mm². */
const LENGTH = 1e-6;
const AREA = 1e-3;
/** Longer than any border, mm. */
const FAR = 1e9;

export function ranked(candidates: readonly Candidate[]): Candidate[] {
  return candidates.toSorted((a, b) => STEPS.map(([, compare]) => compare(a, b)).find((order) => order !== 0) ?? 0);
}

/** Why the first of two stands before the second; without the frames' names. */
export function whyBefore(first: Candidate, second: Candidate, show: Show, unit: Unit): string {
  const [step] = STEPS.find(([, compare]) => compare(first, second) !== 0) ?? ['name'];
  switch (step) {
    case 'works':
      return first.works && second.works ? 'of the other none is left' : 'the other does not work';
    case 'shortfall':
      return `it misses the range by ${show.length(second.shortfall - first.shortfall)} less`;
    case 'gap':
      return first.layout?.frame.isFloat
        ? `its gap is nearer to the wanted one by ${show.length((second.held?.gapOff ?? 0) - (first.held?.gapOff ?? 0))}`
        : 'the gap of the other is not the wanted one';
    case 'evenness':
      return `its borders are more even by ${show.length((second.evenness?.by ?? 0) - (first.evenness?.by ?? 0))}`;
    case 'board':
      return `${asEven(first)}takes ${boardArea(second.used.board - first.used.board, unit)} less board`;
    case 'price':
      return pricesApart(first, second);
    case 'depth':
      return `they come to the same in all else, and in this one the package ${SURETY[surety(first)]}, in the other it ${SURETY[surety(second)]}`;
    case 'name':
      return first.frame === second.frame
        ? 'it is the same the other way up'
        : 'they come to the same, and stand by name';
  }
}

function stateOf({ works, isThere }: Candidate): number {
  if (!works) return 2;
  return isThere ? 0 : 1;
}

/** Steps begin where no half of a sixty-fourth of an inch and no tenth of a millimetre lies, which the last bits could then part. */
function steps(value: number, size: number): number {
  return Math.floor(value / size + 0.3);
}

function comparePrices({ cost: a }: Candidate, { cost: b }: Candidate): number {
  const unknown = a.notCounted.length - b.notCounted.length;
  if (unknown !== 0 || !a.counted || !b.counted) return unknown;
  return a.counted.cmp(b.counted);
}

function pricesApart(before: Candidate, after: Candidate): string {
  const [first, second] = [before.cost, after.cost];
  if (first.notCounted.length !== second.notCounted.length || !first.counted || !second.counted) {
    return before.evenness ? 'it is as even, and more of its price is known' : 'more of its price is known';
  }
  return `${asEven(before)}costs ${roundedText(second.counted.minus(first.counted))} less`;
}

/** Without a mat there are no borders to be even. */
function asEven({ evenness }: Candidate): string {
  return evenness ? 'it is as even, and ' : 'it ';
}

function surety({ held }: Candidate): number {
  return suretyOf(held) ?? SURETY.length;
}

function byLetters(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
