/** Frames made to size, in sentences: what they would be, and what they cost more than the best on the shelf. */
import type { Job } from '../job/job';
import { rangeReasons } from './reasons';
import { showFor, type Show } from '../layout/show';
import { roundedText, type Money } from '../money';
import { SAME } from '../layout/solve-borders';
import { boardArea } from './area-text';
import type { Custom, More } from './custom';
import { bestOf, type Found } from './find-frames';
import { borderSentences, candidateTitle, costWords, usedWords } from './words';

const KINDS: Readonly<Record<Custom['kind'], string>> = {
  own: 'as the job has it',
  least: 'the smallest in range',
  'even narrow': 'even, as narrow as the best',
  'even wide': 'even, as wide as the best',
};

/** `13 x 15 in, as the job has it`. */
export function customTitle({ blank, kind }: Custom, job: Job): string {
  return `${showFor(job).size(blank)}, ${KINDS[kind]}`;
}

export function customWords({ job, candidates }: Found, custom: Custom): string[] {
  const show = showFor(job);
  const best = bestOf(candidates);
  const { borders, misses, more, used, cost, nearestAbove } = custom;
  return [
    ...borderSentences(borders, job),
    ...rangeReasons(misses, job).map(({ words }) => words),
    ...(nearestAbove ? [`The nearest above on the shelf is ${nearestAbove.name}.`] : []),
    offerWords(custom, show),
    usedWords(used, job),
    costWords(cost, true),
    ...(best && more ? [moreWords(more, candidateTitle(best), job, show)] : []),
  ];
}

/** Whether equal borders are to be had without a frame made to size. */
export function equalityWords({ candidates }: Found): string {
  const best = bestOf(candidates);
  if (!best?.evenness) return 'Nothing on the shelf works, so there is nothing to hold a frame made to size against.';
  return best.evenness.by <= SAME
    ? `Even borders cost nothing more: ${candidateTitle(best)} has them.`
    : `The borders of ${candidateTitle(best)} are not even; what it costs to have them so, and what else can be made:`;
}

function offerWords({ offers: [first], length }: Custom, show: Show): string {
  if (!first) return `It takes ${show.length(length)} of moulding as wide as the job's; there is none on the shelf.`;
  const { moulding, isDeepEnough, amount } = first;
  const price = amount ? `, ${roundedText(amount)}` : ', price not known';
  return `It takes ${show.length(length)} of ${moulding.name}${price}, waste and work not counted${isDeepEnough ? '' : '; its rabbet is too shallow'}.`;
}

function moreWords({ length, board, glazing, amount, notCounted }: More, best: string, job: Job, show: Show): string {
  const area = (squareMm: number) => boardArea(Math.abs(squareMm), job.units);
  const parts = [
    `${show.length(Math.abs(length))} ${moreOrLess(length)} moulding round it`,
    `${area(board)} ${moreOrLess(board)} board`,
    ...(glazing === 0 ? [] : [`${area(glazing)} ${moreOrLess(glazing)} glazing`]),
  ].join(', ');
  const missing = notCounted.length > 0 ? ` (not counted: ${notCounted.join(', ')})` : '';
  const money = amount ? `${signed(amount)}${missing}` : `the difference in price is not known${missing}`;
  return `Beside ${best}: ${parts}; ${money}.`;
}

function moreOrLess(value: number): string {
  return value < 0 ? 'less' : 'more';
}

function signed(amount: Money): string {
  return `it costs ${roundedText(amount.abs())} ${amount.isNegative() ? 'less' : 'more'}`;
}
