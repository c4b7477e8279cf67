/** How a frame hangs, as text for a terminal. */
import type { HangingWords } from '../../core/hanging/words/hanging-words';
import type { Section } from '../../core/hanging/words/section';
import type { HookTable } from '../../core/hanging/words/wall-words';
import type { Job } from '../../core/job/job';
import { columns, paragraph, wrap } from '../print/text';

export function hangingText({ title }: Pick<Job, 'title'>, words: HangingWords, width: number): string {
  const parts = [
    wrap(title, width),
    ...[...words.frame, words.wall].map((section) => sectionLines(section, width)),
    tableLines('Frames', words.frames, width),
    tableLines('Hooks and nails', words.hooks, width),
    ['What others advise', ...words.guidance.rows.flatMap(({ label, how }) => paragraph(`${label}: ${how}`, 2, width))],
    ['Take care', ...words.cautions.flatMap((caution) => paragraph(caution.words, 2, width))],
  ];
  return parts.map((lines) => `${lines.join('\n')}\n`).join('\n');
}

function sectionLines({ heading, rows }: Section, width: number): string[] {
  const cells = rows.map(({ label, value, how }) => [label, value, how]);
  return [heading, ...columns(cells, { indent: 2, width })];
}

function tableLines(heading: string, { heads, rows }: HookTable, width: number): string[] {
  // The last column would be wrapped to what is left of the line.
  const cells = [heads, ...rows].map((row) => [...row, '']);
  return [heading, ...columns(cells, { indent: 2, width: Math.max(width, 200) })];
}
