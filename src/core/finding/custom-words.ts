/** Frames made to size, in sentences: what they would be, and what they cost more than the best on the shelf. */
import type { Job } from '../job/job';
import { rangeReasons } from './reasons';
import { showFor, type Show } from '../layout/show';
import { fitOf } from '../package/fit';
import { mayNotFitWords, shallowWords, wantedDepthWords } from '../package/room-words';
import { stackOf } from '../package/stack';
import { roundedText, type Money } from '../money';
import { SAME } from '../layout/solve-borders';
import { standOutOf } from '../package/stand-out';
import { depthWords as standOutDepthWords } from '../package/stand-out-words';
import { boardArea } from './area-text';
import { bareSentences } from './bare-words';
import type { Custom, More } from './custom';
import { bestOf, type Found } from './find-frames';
import { borderSentences, candidateTitle, costWords, usedWords } from './words';

const KINDS: Readonly<Record<Custom['kind'], string>> = {
  picture: 'as large as the picture',
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
  const { borders, misses, more, used, cost, nearestAbove, layout, made } = custom;
  return [
    ...(custom.kind === 'picture' ? bareSentences(layout, made) : borderSentences(borders, job)),
    ...rangeReasons(misses, job).map(({ words }) => words),
    ...(nearestAbove ? [`The nearest above on the shelf is ${nearestAbove.name}.`] : []),
    offerWords(custom, show),
    ...depthWords(custom, show),
    usedWords(used, job),
    costWords(cost, true),
    ...(best && more ? [moreWords(more, candidateTitle(best), job, show)] : []),
  ];
}

/** Whether equal borders are to be had without a frame made to size. */
export function equalityWords({ candidates, job }: Found): string {
  if (job.layers.length === 0) return 'Without a mat a frame is made as large as the picture, with play in its rabbet.';
  const best = bestOf(candidates);
  if (!best?.evenness) return 'Nothing on the shelf works, so there is nothing to hold a frame made to size against.';
  return best.evenness.by <= SAME
    ? `Even borders cost nothing more: ${candidateTitle(best)} has them.`
    : `The borders of ${candidateTitle(best)} are not even; what it costs to have them so, and what else can be made:`;
}

function offerWords({ offers: [first], length }: Custom, show: Show): string {
  if (!first) return `It takes ${show.length(length)} of moulding as wide as the job's; there is none on the shelf.`;
  const { moulding, amount } = first;
  const price = amount ? `, ${roundedText(amount)}` : ', price not known';
  return `It takes ${show.length(length)} of ${moulding.name}${price}, waste and work not counted.`;
}

/** Of the moulding at hand what is against it; where there is none, or none that was measured, what it has to be. */
function depthWords({ made, layout, offers: [first] }: Custom, show: Show): string[] {
  const stack = stackOf(made, layout);
  const standOut = standOutOf(made, layout, stack, { shelf: [], wallGap: made.hanging.bumpers });
  if (standOut) return standOutDepthWords(standOut, show);
  const fit = fitOf(made, stack);
  const words = shallowWords(made, fit, show) ?? mayNotFitWords(made, fit, show);
  if (words !== undefined) return [`${first ? `${first.moulding.name}: ` : ''}${words}.`];
  return fit.verdict === 'depth unknown' ? [`Its rabbet has to be ${wantedDepthWords(made, fit.needs, show)}.`] : [];
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
