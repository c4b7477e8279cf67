/** The cost sheets on paper, for the shop: every line with its basis, the sums, and variants side by side. */
import type { Result } from '../../core/problem';
import { compareSheets, type ComparedRow } from '../../core/cost/compare';
import {
  COMPARED_HEAD,
  comparedCell,
  comparedWhat,
  GROUP_WORDS,
  groupsOf,
  LINE_HEADS,
  lineRow,
  roundingNote,
  sumRows,
  togetherWords,
} from '../../core/cost/cost-words';
import type { MakerHooks } from '../context';
import { openTypesetter } from '../paper/document';
import { unparted, type Block } from '../paper/flow';
import { filling, type Column } from '../paper/table';
import { headingsBlock, rowBlock } from '../paper/table-blocks';
import { headingBlock, paragraphBlock, type Setting } from '../paper/text-blocks';
import { fractions, type TextStyle } from '../paper/type';
import { bodyOf, drawCosts, lotsOf, titleBlocks, type CostsOnPaper, type Variant } from './costs-on-paper';

export interface CostSheetsChoice {
  /** True where the jobs are variants of one, which have no sum. */
  readonly isCompared: boolean;
}

const SMALL: TextStyle = { size: 8 };
const FIGURES: TextStyle = { size: 8, tabular: true };
const BOLD: TextStyle = { size: 8, weight: 'bold', tabular: true };

/** Rejects with the signal's reason when cancelled. */
export function makeCostSheets(
  context: CostsOnPaper,
  { isCompared }: CostSheetsChoice,
  hooks: MakerHooks = {},
): Promise<Result<Uint8Array>> {
  const { variants, fonts } = context;
  const setting = { typesetter: openTypesetter(fonts), width: bodyOf(context).width };
  const [first] = variants;
  const blocks = [
    ...(first ? [paragraphBlock(roundingNote(first.sheet), setting, SMALL)] : []),
    ...(isCompared ? titleBlocks(context, setting) : []),
    ...(isCompared ? comparedBlocks(variants, setting) : []),
    ...variants.flatMap((variant) => sheetBlocks(variant, setting)),
    ...(isCompared || variants.length < 2 || !first
      ? []
      : [headingBlock(togetherWords(variants.map(({ sheet }) => sheet)))]),
  ];
  const heads = { title: 'Cost sheet', under: 'What it costs, and how that comes about', place: 'for the shop', step: 'Writing the cost sheet' }; // prettier-ignore
  return drawCosts(context, [blocks], heads, hooks);
}

const LINE_COLUMNS: readonly Omit<Column, 'heading'>[] = [
  { width: 34, style: SMALL },
  { width: 26, style: SMALL },
  { width: 20, style: BOLD, align: 'right' },
  { width: 96, style: SMALL },
];

/** The sums stand under the amounts of the lines. */
const SUM_COLUMNS: readonly Column[] = [
  { heading: '', width: 42, style: SMALL },
  { heading: '', width: 38, style: BOLD, align: 'right' },
  { heading: '', width: 96, style: SMALL },
];

function sheetBlocks({ name, sheet }: Variant, setting: Setting): Block[] {
  const { typesetter, width } = setting;
  const columns = filling(LINE_COLUMNS.map((column, index) => ({ ...column, heading: LINE_HEADS[index] ?? '' })), width); // prettier-ignore
  const sums = filling(SUM_COLUMNS, width);
  const again = { again: [headingsBlock(columns)] };
  const groups = groupsOf(sheet).flatMap(({ group, lines }): Block[] => [
    { ...headingBlock(GROUP_WORDS[group], 9), ...again },
    ...lines.map((line) => ({ ...rowBlock(typesetter, columns, lineRow(line, sheet).map(fractions)), ...again })),
  ]);
  const rows = sumRows(sheet).map((row) => rowBlock(typesetter, sums, row.map(fractions)));
  const title = paragraphBlock(name, setting, { size: 11, weight: 'bold' });
  return [
    { height: 3, draw: () => undefined, withNext: true },
    { ...title, withNext: true },
    headingsBlock(columns),
    ...groups,
    ...unparted([headingBlock('Sums', 9), ...rows]),
  ];
}

/** An amount and what it is more than the first stand in a column each, so that the decimals of either are under one another. */
function comparedBlocks(variants: readonly Variant[], setting: Setting): Block[] {
  const [first] = variants;
  if (!first) return [];
  const rows = compareSheets(variants.map(({ sheet }) => sheet));
  return lotsOf(variants.map((_, index) => index)).flatMap((lot): readonly Block[] => {
    const columns = filling(
      [
        { heading: COMPARED_HEAD, width: 36, style: SMALL },
        ...lot.flatMap((): Column[] => [
          { heading: '', width: 20, style: FIGURES, align: 'right' },
          { heading: '', width: 16, style: FIGURES, align: 'right' },
        ]),
      ],
      setting.width,
    );
    const [head, ...amounts] = columns;
    if (!head) return [];
    const bold: Column = { ...head, style: { size: 8, weight: 'bold' } };
    const heads = [bold, ...lot.map((_, index): Column => ({ ...bold, align: 'right', width: (amounts[2 * index]?.width ?? 0) + (amounts[2 * index + 1]?.width ?? 0) }))]; // prettier-ignore
    const names = ['', ...lot.map((index) => variants[index]?.name ?? '')];
    const cells = ({ what, cells: all }: ComparedRow) => [
      comparedWhat(what, first.sheet),
      ...lot.flatMap((index) => {
        const cell = all[index];
        const { told = '', more = '' } = cell ? comparedCell(cell, first.sheet) : {};
        return [told, more];
      }),
    ];
    return unparted([
      headingBlock('Side by side'),
      rowBlock(setting.typesetter, heads, names.map(fractions)),
      ...rows.map((row) => rowBlock(setting.typesetter, columns, cells(row).map(fractions))),
    ]);
  });
}
