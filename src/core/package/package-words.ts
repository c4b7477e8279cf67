/** The package in words, the same on screen, paper and terminal: the stack as a table, and what to change. */
import type { FrameBuild, Job } from '../job/job';
import type { Show } from '../layout/show';
import { behindWords } from './fit-words';
import { SLACK, type Range } from './range';
import type { Remedy } from './remedies';
import type { Stack, StackItem } from './stack';

/** A frame as its check list calls it. */
export const BUILD_WORDS: Readonly<Record<FrameBuild, string>> = {
  'open back': 'frame with an open back',
  'with back': 'frame with a back of its own',
  deep: 'deep frame',
  float: 'float frame',
};

const DRIVING = 'Drive points, brads and screws away from the picture and from your hands.';
const WHOSE = 'A picture that is valuable, old or fragile is for a conservator to mount.';

/**
 * Without a word of glass where none goes into the frame, and none comes with it.
 *
 * @param isWarned where something else already warns of glass.
 */
export function packageCautions(
  { package: { glazing }, frame: { comesWith } }: Pick<Job, 'package' | 'frame'>,
  isWarned = false,
): string[] {
  const hasGlazing = glazing !== undefined || comesWith.includes('glazing');
  const glass = hasGlazing && !isWarned ? 'Glass breaks and its edges cut: gloves and eye protection. ' : '';
  return [`${glass}${DRIVING}`, WHOSE];
}

export const STACK_HEADS = ['From the front', 'thick', 'least to greatest', 'behind the lip'] as const;

export interface StackWords {
  /** Under `STACK_HEADS`; the last is the sum. */
  readonly rows: readonly (readonly string[])[];
  /** Where ranges come from, by the number that a row gives. */
  readonly notes: readonly string[];
}

/** Nothing of an empty frame. */
export function stackWords({ items, whole }: Stack, show: Show): StackWords {
  if (items.length === 0) return { rows: [], notes: [] };
  const sources = [...new Set(items.flatMap(({ source }) => source ?? []))];
  return {
    rows: [
      ...items.map((item) => itemRow(item, sources, show)),
      ['In all', show.limit(whole.nominal), varying(whole, show), ''],
    ],
    notes: sources.map((source, index) => `[${index + 1}] as usual: ${source}`),
  };
}

function itemRow({ name, thickness, varies, source, from }: StackItem, sources: readonly string[], show: Show) {
  const why = source === undefined ? (varies === 'as given' ? ' as given' : '') : ` [${sources.indexOf(source) + 1}]`;
  const range = varying(thickness, show);
  return [name, show.limit(thickness.nominal), range === '' ? '' : `${range}${why}`, show.limit(from.nominal)];
}

/** Nothing where it does not vary. */
function varying({ least, greatest }: Range, show: Show): string {
  if (least === greatest) return '';
  return `${show.fine(least).replace(/ \w+$/, '')} to ${show.fine(greatest)}`;
}

export interface RemedyGroup {
  readonly heading: string;
  readonly words: readonly string[];
}

const HELP: readonly (readonly [Remedy['enough'], string])[] = [
  ['sure', 'Any one of these is enough:'],
  ['as named', 'Enough if all is as thick as it is called:'],
  ['not alone', 'These help, but not alone:'],
];

/** What does by itself first; the rest only helps. */
export function remedyGroups(remedies: readonly Remedy[], show: Show): RemedyGroup[] {
  return HELP.flatMap(([enough, heading]) => {
    const words = remedies.filter((one) => one.enough === enough).map((one) => remedyWords(one, show));
    return words.length === 0 ? [] : [{ heading, words }];
  });
}

function remedyWords({ words, caution, free, behind, enough }: Remedy, show: Show): string {
  const left =
    free.nominal < -SLACK && enough === 'not alone'
      ? `: then it is still ${show.limit(-free.nominal)} too deep, ${show.limit(-free.worst)} at its thickest`
      : free.worst >= 0
        ? `: then ${show.limit(free.nominal)} stays free, ${show.limit(free.worst)} at its thickest`
        : '';
  const held = behind ? `; ${behindWords(behind, show)}` : '';
  return `${words}${left}${held}${caution === undefined ? '' : `; ${caution}`}.`;
}
