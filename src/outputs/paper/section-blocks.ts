/** What is worked out as blocks that flow from page to page: sections of three columns, and tables. */
import type { Block } from './flow';
import { filling, type Column } from './table';
import { headingsBlock, rowBlock } from './table-blocks';
import { headingBlock, type Setting } from './text-blocks';
import { fractions } from './type';

/** What it is, its value, and how it was reached or what it means. */
interface Row {
  readonly label: string;
  readonly value: string;
  readonly how: string;
}

interface Section {
  readonly heading: string;
  readonly rows: readonly Row[];
}

interface Table {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

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
export function tableBlocks(heading: string, { heads, rows }: Table, setting: Setting): Block[] {
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
  // No row stands alone, neither under the headings nor on the page that the table ends on.
  const isHeld = (index: number) => rows.length > 1 && (index === 0 || index === rows.length - 2);
  const blocks = rows.map((row, index): Block => ({ ...rowBlock(setting.typesetter, columns, row.map(fractions)), again: [head], ...(isHeld(index) ? { withNext: true } : {}) })); // prettier-ignore
  return [headingBlock(heading), head, ...blocks];
}
