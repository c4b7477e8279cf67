/** What is told of hanging as blocks that flow from page to page: sections of three columns, tables, paragraphs. */
import type { Row, Section } from '../../core/hanging/words/section';
import type { HookTable } from '../../core/hanging/words/wall-words';
import type { Block } from '../paper/flow';
import { filling, type Column } from '../paper/table';
import { headingsBlock, rowBlock } from '../paper/table-blocks';
import { headingBlock, type Setting } from '../paper/text-blocks';
import { fractions } from '../paper/type';

const SMALL = { size: 8 } as const;

const SECTION_COLUMNS: readonly Column[] = [
  { heading: 'What', width: 42, style: SMALL },
  { heading: 'Value', width: 48, style: { size: 8, weight: 'bold' } },
  { heading: 'How', width: 92, style: SMALL },
];

export function sectionBlocks({ heading, rows }: Section, setting: Setting): Block[] {
  const columns = filling(SECTION_COLUMNS, setting.width);
  const cells = ({ label, value, how }: Row) => [label, value, how].map(fractions);
  const blocks = rows.map((row) => rowBlock(setting.typesetter, columns, cells(row)));
  return [headingBlock(heading), ...blocks];
}

/** Columns share the width by the longest of what stands in them. */
export function tableBlocks(heading: string, { heads, rows }: HookTable, setting: Setting): Block[] {
  const longest = heads.map((head, index) => Math.max(head.length, ...rows.map((row) => row[index]?.length ?? 0)));
  const columns = filling(
    heads.map((head, index): Column => ({
      heading: head,
      width: Math.min(30, (longest[index] ?? 1) + 3),
      style: SMALL,
    })),
    setting.width,
  );
  const head = headingsBlock(columns);
  const blocks = rows.map((row) => ({ ...rowBlock(setting.typesetter, columns, row.map(fractions)), again: [head] }));
  return [headingBlock(heading), head, ...blocks];
}
