/** Air and pressure in words: what there is, what is asked, what would give it. */
import type { Job } from '../job/job';
import type { Show } from '../layout/show';
import type { Air, Lack } from './air';
import { calledOf } from './pictures';
import type { MatOnPicture } from './pressure';

/** Names of several, after which the rest is counted. */
const MOST_NAMED = 4;

/** `picture "Lady fern"`, `pictures 1, 2 and 5 more`. */
export function picturesCalled(job: Job, indices: readonly number[]): string {
  const names = indices.slice(0, MOST_NAMED).flatMap((index) => {
    const picture = job.pictures[index];
    return picture ? [calledOf({ picture, index })] : [];
  });
  const rest = indices.length - names.length;
  const last = rest > 0 ? `${rest} more` : names.length > 1 ? names.pop() : undefined;
  return last === undefined ? (names[0] ?? '') : `${names.join(', ')} and ${last}`;
}

/** `1/16 in of air lies between glazing and picture "Lady fern" (0.059 to 0.067 in): one layer of mat`. */
export function airWords({ air, layers }: Air, names: string, spacer: boolean, show: Show): string {
  if (air.greatest === 0) return `Nothing keeps the glazing off ${names}.`;
  const by = [
    ...(layers > 0 ? [layers === 1 ? 'one layer of mat' : `${layers} layers of mat`] : []),
    ...(spacer ? ['the spacer'] : []),
  ];
  const range = `${show.fine(air.least)} to ${show.fine(air.greatest)}`;
  return `Between the glazing and ${names}: ${show.limit(air.nominal)} (${range}), from ${by.join(' and ')}.`;
}

/** What is lacking, of pictures that are named. */
export const LACK_WORDS: Readonly<Record<Lack['code'], (names: string) => string>> = {
  'picture-touches-glazing': (names) =>
    `Nothing keeps the glazing off ${names}: damp that settles there makes it stick and lets mould grow`,
  'air-too-little': (names) => `There is too little air before ${names}`,
  'air-for-medium': (names) =>
    `A second layer of mat, or a spacer as thick, belongs before ${names}, for such a surface sticks to glass or rubs off on it`,
  'air-for-size': (names) =>
    `There is little air before ${names}, and sheets as large cockle with damp until they touch the glazing`,
};

export function matWords({ kind, strips }: MatOnPicture, names: string, show: Show): string {
  const height = show.limit(strips);
  return kind === 'presses'
    ? `The mat rests on the image of ${names}, which is raised or rubs off. Let the window show a margin all round, or carry the mat on strips ${height} high beside the picture.`
    : `Round ${names} the mat has nothing to lie on and bends down. Fill the step with strips of board ${height} high, so that it lies flat.`;
}
