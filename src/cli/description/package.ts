/** The package of a job in words: the stack as a table, then what follows from it. */
import type { Job } from '../../core/job/job';
import { showFor, type Show } from '../../core/layout/show';
import type { PackageAnswer } from '../../core/package/answer';
import type { CheckItem } from '../../core/package/check-item';
import { BUILD_WORDS, packageCautions, remedyGroups, STACK_HEADS, stackWords } from '../../core/package/package-words';
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
    { heading: 'What to change', lines: remedyLines(answer, show, width) },
    told('Air', air.words),
    told('The mat on the picture', pressure.words),
    told('What stands out behind', standOut?.words ?? []),
    told('Float frame', float?.words ?? []),
    { heading: `Check list: ${BUILD_WORDS[job.frame.build]}`, lines: checkLines(answer.checkList, width) },
    told('Cautions', packageCautions(job)),
  ];
  return sections
    .filter(({ lines }) => lines.length > 0)
    .map(({ heading, lines }) => `${[...wrap(heading, width), ...lines].join('\n')}\n`)
    .join('\n');
}

function stackLines({ stack }: PackageAnswer, show: Show, width: number): string[] {
  const { rows, notes } = stackWords(stack, show);
  if (rows.length === 0) return [];
  const [, ...heads] = STACK_HEADS;
  return [
    ...columns([['', ...heads], ...rows], { indent: 2, width }),
    ...notes.flatMap((note) => paragraph(note, 2, width)),
  ];
}

function remedyLines({ remedies }: PackageAnswer, show: Show, width: number): string[] {
  return remedyGroups(remedies, show).flatMap(({ heading, words }) => [
    ...paragraph(heading, 2, width),
    ...columns(words.map((one) => ['-', one]), { indent: 2, width }), // prettier-ignore
  ]);
}

const STATES = { done: '[x]', needed: '[ ]', look: 'look' } as const;

function checkLines(items: readonly CheckItem[], width: number): string[] {
  return columns(
    items.map(({ state, what, words }) => [STATES[state], what, words]),
    { indent: 2, width },
  );
}
