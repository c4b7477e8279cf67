/** The judgement of a build as a text: cautions first, then the grade, every item with its sources, and the next grade. */
import { NO_CERTIFICATE } from '../../core/care/cautions';
import { costWords, demandWords, gradeWords, standingWords } from '../../core/care/care-words';
import type { Care, NextGrade } from '../../core/care/judge-care';
import type { Judgement } from '../../core/care/judgement';
import { NumberedSources } from '../../core/care/numbered-sources';
import { columns, paragraph, wrap } from '../print/text';
import type { Section } from './section';

export function describeCare(title: string, care: Care, width: number): string {
  const sources = new NumberedSources();
  const sections: Section[] = [
    {
      heading: 'First of all',
      lines: care.cautions.flatMap((one) => paragraph(`${one.words}${sources.marks(one.sources)}`, 2, width)),
    },
    {
      heading: `Care of the build: ${title}`,
      lines: [...paragraph(gradeWords(care), 2, width), ...paragraph(NO_CERTIFICATE, 2, width)],
    },
    { heading: 'Item by item', lines: care.items.flatMap((item) => itemLines(item, sources, width)) },
    ...(care.next ? [nextSection(care.next, width)] : []),
    {
      heading: 'What a job can’t say',
      lines: care.advice.flatMap((one) => paragraph(`${one.words}${sources.marks(one.sources)}.`, 2, width)),
    },
  ];
  const told = [...sections, { heading: 'Sources', lines: columns(sources.rows(), { indent: 2, width, right: [0] }) }];
  return told
    .filter(({ lines }) => lines.length > 0)
    .map(({ heading, lines }) => `${[...wrap(heading, width), ...lines].join('\n')}\n`)
    .join('\n');
}

/** What it lacks stands beside the grade that asks it; what lacks nothing tells what it meets. */
function itemLines(item: Judgement, sources: NumberedSources, width: number): string[] {
  const lacks = (['protective', 'conservation'] as const).flatMap((grade) => {
    const missed = item.demands.filter(({ from, met }) => from === grade && !met);
    return missed.length === 0 ? [] : [[`for ${grade}`, demandWords(missed, sources.marks)]];
  });
  const rows = [
    ['now', item.now],
    ...(lacks.length > 0 ? lacks : [['as asked', demandWords(item.demands, sources.marks)]]),
  ];
  return [...paragraph(`${item.what}: ${standingWords(item)}`, 2, width), ...columns(rows, { indent: 5, width })];
}

/** Steps that can be written into the job, and those that can only be done. */
function nextSection(next: NextGrade, width: number): Section {
  const rows = next.steps.map(({ item, step }, index) => [
    String(index + 1),
    item.what,
    `${step.words}. ${step.fix ? '' : 'A job can’t say it. '}Cost: ${step.cost.words}.`,
  ]);
  const lines = columns(rows, { indent: 2, width, right: [0] });
  return {
    heading: `What the grade “${next.grade}” would take`,
    lines: [...lines, ...paragraph(costWords(next), 2, width)],
  };
}
