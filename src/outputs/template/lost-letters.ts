/** Tells which of a job's names hold characters that the printed type does not have. */
import type { Problem } from '../../core/problem';
import type { OutputContext } from '../context';

export interface Named {
  readonly at: string;
  readonly words: string;
}

/** More of them say nothing new. */
const MOST_TOLD = 5;

/** A warning for each name that is not printed whole. */
export function lostLetters(
  { job, layout }: Pick<OutputContext, 'job' | 'layout'>,
  lost: ReadonlySet<string>,
): Problem[] {
  if (lost.size === 0) return [];
  const names: Named[] = [
    { at: 'title', words: job.title },
    ...job.pictures.map(({ title }, index) => ({ at: `pictures[${index}].title`, words: title })),
    ...job.layers.map(({ board }, index) => ({ at: `mat.layers[${index}].board`, words: board })),
    ...new Map(job.wall.frames.map(({ at, title }) => [at, { at: `${at}.title`, words: title }])).values(),
    ...(job.cutting.cutter ? [{ at: 'cutting.cutter.name', words: job.cutting.cutter.name }] : []),
    ...layout.windows
      .filter(({ picture, title }) => !picture || !title.startsWith(job.pictures[picture.index]?.title ?? ''))
      .map(({ at, title }) => ({ at: `${at}.title`, words: title })),
  ];
  return lostIn(names, lost);
}

/** The same of names that come from elsewhere. */
export function lostIn(names: readonly Named[], lost: ReadonlySet<string>): Problem[] {
  return names.flatMap(({ at, words }): Problem[] => {
    const found = [...lost].filter((sign) => words.normalize('NFC').includes(sign));
    if (found.length === 0) return [];
    const told = found.slice(0, MOST_TOLD).join(' ') + (found.length > MOST_TOLD ? ' …' : '');
    return [
      {
        code: 'letters-not-printed',
        severity: 'warning',
        at,
        message: `"${words.slice(0, 40)}" has characters that the type on paper does not have: ${told}. A small square stands for each; the name itself is kept.`,
        value: told,
        remedy: 'write it in Latin, Greek or Cyrillic letters where it is to be printed',
      },
    ];
  });
}
