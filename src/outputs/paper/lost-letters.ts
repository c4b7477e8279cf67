/** Tells which of a job's names hold characters that the printed type does not have. */
import type { Problem } from '../../core/problem';
import type { OutputContext } from '../context';

export interface Named {
  readonly at: string;
  readonly words: string;
}

/** More of them say nothing new. */
const MOST_TOLD = 5;

/** A warning for each name that is not printed whole, and one for what else was printed so. */
export function lostLetters(context: Pick<OutputContext, 'job' | 'layout'>, lost: ReadonlySet<string>): Problem[] {
  return lostIn(namesIn(context), lost);
}

/** What the user has given names to that papers tell. */
export function namesIn({ job, layout }: Pick<OutputContext, 'job' | 'layout'>): Named[] {
  return [
    { at: 'title', words: job.title },
    ...job.pictures.map(({ title }, index) => ({ at: `pictures[${index}].title`, words: title })),
    ...job.layers.map(({ board }, index) => ({ at: `mat.layers[${index}].board`, words: board })),
    ...new Map(job.wall.frames.map(({ at, title }) => [at, { at: `${at}.title`, words: title }])).values(),
    ...(job.cutting.cutter ? [{ at: 'cutting.cutter.name', words: job.cutting.cutter.name }] : []),
    ...layout.windows
      .filter(({ picture, title }) => !picture || !title.startsWith(job.pictures[picture.index]?.title ?? ''))
      .map(({ at, title }) => ({ at: `${at}.title`, words: title })),
  ];
}

/** As `lostLetters`, of names that come from elsewhere; names that several jobs share are told once. */
export function lostIn(names: readonly Named[], lost: ReadonlySet<string>): Problem[] {
  const unnamed = new Set(lost);
  const found = new Map<string, Problem>();
  for (const { at, words } of names) {
    const signs = [...lost].filter((sign) => words.normalize('NFC').includes(sign));
    signs.forEach((sign) => unnamed.delete(sign));
    if (signs.length > 0) found.set(`${at} ${words}`, notPrinted(at, `"${words.slice(0, 40)}" has`, signs, 'the name itself is kept')); // prettier-ignore
  }
  // Such as what a board on the shelf or a part of the package is called.
  const others =
    unnamed.size > 0 ? [notPrinted('', 'What is printed has', [...unnamed], 'what you wrote is kept')] : [];
  return [...found.values(), ...others];
}

function notPrinted(at: string, subject: string, signs: readonly string[], kept: string): Problem {
  const told = signs.slice(0, MOST_TOLD).join(' ') + (signs.length > MOST_TOLD ? ' …' : '');
  return {
    code: 'letters-not-printed',
    severity: 'warning',
    at,
    message: `${subject} characters that the type on paper does not have: ${told}. A small square stands for each; ${kept}.`,
    value: told,
    remedy: 'write it in Latin, Greek or Cyrillic letters where it is to be printed',
  };
}
