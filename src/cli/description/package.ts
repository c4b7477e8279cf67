/** The package of a job in words: the stack as a table, then what follows from it. */
import type { Job } from '../../core/job/job';
import { showFor, type Show } from '../../core/layout/show';
import type { PackageAnswer } from '../../core/package/answer';
import type { CheckItem } from '../../core/package/check-item';
import type { Range } from '../../core/package/range';
import type { Remedy } from '../../core/package/remedies';
import type { StackItem } from '../../core/package/stack';
import { columns, paragraph, wrap } from '../print/text';
import type { Section } from './section';

export function packageText(job: Job, answer: PackageAnswer, width: number): string {
  const show = showFor(job);
  const { fit, air, pressure, standOut, float } = answer;
  const told = (heading: string, words: readonly string[]): Section => ({
    heading,
    lines: words.flatMap((one) => paragraph(one, 2, width)),
  });
  const sections: Section[] = [
    { heading: 'The stack, from the back of the lip', lines: stackLines(answer, show, width) },
    told('Fit', fit.words),
    { heading: 'What to change', lines: remedyLines(answer.remedies, show, width) },
    told('Air', air.words),
    told('The mat on the picture', pressure.words),
    told('What stands out behind', standOut?.words ?? []),
    told('Float frame', float?.words ?? []),
    { heading: `Check list: ${BUILDS[job.frame.build]}`, lines: checkLines(answer.checkList, width) },
    told('Cautions', CAUTIONS),
  ];
  return sections
    .filter(({ lines }) => lines.length > 0)
    .map(({ heading, lines }) => `${[...wrap(heading, width), ...lines].join('\n')}\n`)
    .join('\n');
}

const BUILDS = {
  'open back': 'frame with an open back',
  'with back': 'frame with a back of its own',
  deep: 'deep frame',
  float: 'float frame',
} as const;

const CAUTIONS = [
  'Glass breaks and its edges cut: gloves and eye protection. Drive points, brads and screws away from the picture and from your hands.',
  'A picture that is valuable, old or fragile is for a conservator to mount.',
];

function stackLines({ stack }: PackageAnswer, show: Show, width: number): string[] {
  if (stack.items.length === 0) return [];
  const sources = [...new Set(stack.items.flatMap(({ source }) => source ?? []))];
  const rows = [
    ['', 'thick', 'least to greatest', 'from the lip'],
    ...stack.items.map((item) => itemRow(item, sources, show)),
    ['In all', show.limit(stack.whole.nominal), varying(stack.whole, show), ''],
  ];
  const notes = sources.flatMap((source, index) => paragraph(`[${index + 1}] as usual: ${source}`, 2, width));
  return [...columns(rows, { indent: 2, width }), ...notes];
}

function itemRow(
  { name, thickness, varies, source, from }: StackItem,
  sources: readonly string[],
  show: Show,
): string[] {
  const why = source === undefined ? (varies === 'as given' ? ' as given' : '') : ` [${sources.indexOf(source) + 1}]`;
  const range = varying(thickness, show);
  return [name, show.limit(thickness.nominal), range === '' ? '' : `${range}${why}`, show.limit(from.nominal)];
}

/** Nothing where it does not vary. */
function varying({ least, greatest }: Range, show: Show): string {
  if (least === greatest) return '';
  return `${show.fine(least).replace(/ \w+$/, '')} to ${show.fine(greatest)}`;
}

/** What does by itself first; the rest only helps. */
function remedyLines(remedies: readonly Remedy[], show: Show, width: number): string[] {
  const rows = (some: readonly Remedy[]) =>
    columns(
      some.map((one) => ['-', remedyText(one, show)]),
      { indent: 2, width },
    );
  const under = (heading: string, enough: Remedy['enough']) => {
    const some = remedies.filter((one) => one.enough === enough);
    return some.length === 0 ? [] : [...paragraph(heading, 2, width), ...rows(some)];
  };
  return [
    ...under('Any one of these is enough:', 'sure'),
    ...under('Enough if all is as thick as it is called:', 'as named'),
    ...under('These help, but not alone:', 'not alone'),
  ];
}

function remedyText({ words, caution, free, enough }: Remedy, show: Show): string {
  const left =
    enough === 'not alone'
      ? `: then it is still ${show.limit(-free.nominal)} too deep, ${show.limit(-free.worst)} at its thickest`
      : free.worst >= 0
        ? `: then ${show.limit(free.nominal)} stays free, ${show.limit(free.worst)} at its thickest`
        : '';
  return `${words}${left}${caution === undefined ? '' : `; ${caution}`}.`;
}

const STATES = { done: '[x]', needed: '[ ]', look: 'look' } as const;

function checkLines(items: readonly CheckItem[], width: number): string[] {
  return columns(
    items.map(({ state, what, words }) => [STATES[state], what, words]),
    { indent: 2, width },
  );
}
