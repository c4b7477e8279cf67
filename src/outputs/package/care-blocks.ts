/** How well the build keeps its pictures, as blocks: the grade, every item with its sources, and the next grade. */
import { NO_CERTIFICATE } from '../../core/care/cautions';
import { costWords, findingWords, gradeWords, standingWords } from '../../core/care/care-words';
import type { Care, NextGrade } from '../../core/care/judge-care';
import type { Judgement } from '../../core/care/judgement';
import { NumberedSources } from '../../core/care/numbered-sources';
import type { Block } from '../paper/flow';
import { sectionBlocks } from '../paper/section-blocks';
import { headingBlock, numberedBlocks, pairedBlocks, paragraphBlock, type Setting } from '../paper/text-blocks';
import { capital } from '../../core/phrases';

const SMALL = { size: 8 } as const;

export function careBlocks(care: Care, setting: Setting): Block[] {
  const sources = new NumberedSources();
  const small = (words: string) => paragraphBlock(words, setting, SMALL);
  const body = [
    headingBlock('Care'),
    ...care.cautions.map((one) => paragraphBlock(`${one.words}${sources.marks(one.sources)}`, setting)),
    paragraphBlock(gradeWords(care), setting),
    small(NO_CERTIFICATE),
    ...sectionBlocks({ heading: 'Item by item', rows: care.items.map((item) => itemRow(item, sources)) }, setting),
    ...(care.next ? nextBlocks(care.next, setting) : []),
    ...(care.advice.length === 0 ? [] : [headingBlock('What a job can’t say')]),
    ...care.advice.map((one) => small(`${capital(one.words)}${sources.marks(one.sources)}.`)),
  ];
  const rows = sources.rows();
  return rows.length === 0
    ? body
    : [
        ...body,
        headingBlock('Sources'),
        ...pairedBlocks(
          rows.map(([mark, words]) => `${mark} ${words}`),
          setting,
          SMALL,
        ),
      ];
}

/** What it lacks, or else what it meets. */
function itemRow(item: Judgement, sources: NumberedSources) {
  return { label: item.what, value: standingWords(item), how: `${item.now}. ${findingWords(item, sources.marks)}` };
}

function nextBlocks(next: NextGrade, setting: Setting): Block[] {
  const steps = next.steps.map(({ item, step }) => `${item.what}: ${step.words}. Cost: ${step.cost.words}.`);
  return [
    headingBlock(`What the grade “${next.grade}” would take`),
    ...numberedBlocks(steps, setting, SMALL),
    paragraphBlock(costWords(next), setting, SMALL),
  ];
}
