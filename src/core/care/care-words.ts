/** The judgement in sentences: the same on the screen, on the command line and on paper. */
import { roundedText } from '../money';
import type { Care, NextGrade } from './judge-care';
import type { Demand, Judgement } from './judgement';
import type { Source } from './sources';
import { uncapital } from '../phrases';

/** What the grade is, or why there is none, in one or two sentences. */
export function gradeWords({ grade, unknown, holding, next }: Care): string {
  if (grade === undefined) {
    const [what] = unknown.map((item) => item.what);
    const made = unknown.length > 1 ? `and ${unknown.length - 1} more are made of` : 'is made of';
    return `No grade yet: without knowing the boards there is none. It is not said what ${uncapital(what ?? 'a board')} ${made}.`;
  }
  if (next === undefined) return `Grade: ${grade}. Every item that counts is as published guidance asks.`;
  return `Grade: ${grade}. It is held there by ${holding.length === 1 ? 'one item' : `${holding.length} items`}: ${holding.map(({ what }) => uncapital(what)).join('; ')}.`;
}

/** What an item reaches: `protective`, `decorative, not known`, `conservation, not counted`. */
export function standingWords({ grade, known, counts }: Judgement): string {
  return [grade, ...(known ? [] : ['not known']), ...(counts ? [] : ['not counted'])].join(', ');
}

/** What it falls short of, or else what it meets. @param marks as of `demandWords`. */
export function findingWords(item: Judgement, marks?: (sources: readonly Source[]) => string): string {
  const missed = item.demands.filter(({ met }) => !met);
  return demandWords(missed.length > 0 ? missed : item.demands, marks);
}

/** In sentences. @param marks of the guidance that one rests on, such as ` [3]`. */
export function demandWords(
  demands: readonly Demand[],
  marks: (sources: readonly Source[]) => string = () => '',
): string {
  return demands.map(({ words, sources }) => `${words}${marks(sources)}.`).join(' ');
}

/** What costs of steps are reckoned by. */
const BASIS =
  'It is by how much the cost of the pieces changes: whole sheets as bought, each step after those before it.';

/** What the steps come to, as far as it is counted. */
export function costWords({ steps, cost, notCounted }: NextGrade): string {
  const counted = steps.length - notCounted;
  if (counted === 0) return 'Cost: not counted.';
  const rest = notCounted === 0 ? '' : `, and ${notCounted} not counted`;
  const less = cost.isNegative() ? ' less' : '';
  const basis = steps.some(({ step }) => step.taken !== undefined) ? ` ${BASIS}` : '';
  return `Cost: ${roundedText(cost.abs())}${less} for ${counted} of ${steps.length} steps${rest}.${basis}`;
}
