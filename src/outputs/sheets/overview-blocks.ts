/** The first page of a plan of sheets: what to fetch, what it costs, how good the plan is, and how it is cut. */
import { capital } from '../../core/phrases';
import { areaWords, shareWords } from '../../core/sheets/account-words';
import { trimOf } from '../../core/sheets/ask';
import { falloutWords } from '../../core/sheets/fallout-words';
import { jobTitles, jobWords } from '../../core/sheets/job-words';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import { BLADE_CAUTION, GLASS_CAUTION } from '../../core/sheets/sheet-cautions';
import { paidText, totalWords } from '../../core/sheets/plan-total';
import { hasGlass, planWords, settingsWords, takeWords, unplannedWords } from '../../core/sheets/sheet-words';
import { lengthText } from '../../core/units';
import { unparted, type Block } from '../paper/flow';
import { tableBlocks } from '../paper/section-blocks';
import { headingBlock, numberedBlocks, paragraphBlock, type Setting } from '../paper/text-blocks';
import type { PapersContext } from './papers-context';
import { withoutEmpty } from './sheet-blocks';

const SMALL = { size: 8 } as const;
/** Under a table. */
const AIR: Block = { height: 2, draw: () => undefined, withNext: true };

export function overviewBlocks(context: PapersContext, setting: Setting): Block[] {
  const { boards, unplanned, showing, keep } = context;
  const missing = unplannedWords(unplanned);
  const total = totalWords(boards);
  const rows = boards.map((board) => [
    board.board,
    takeWords(board, showing),
    paidText(board),
    kerfWords(board, context),
  ]);
  const goodness = boards.map((board) => [
    board.board,
    planWords(board),
    [
      `${shareWords(board, keep)}; ${settingsWords(board.plan.sheets)}.`,
      `${areaWords(board, showing, keep)}.`,
      falloutWords(board, showing, keep),
    ]
      .join(' ')
      .trim(),
  ]);
  return [
    ...jobsBlocks(boards, setting),
    ...tableBlocks('To fetch', withoutEmpty(['Board', 'Sheets', 'Cost', 'Trim and saw'], rows), setting),
    ...(total === '' ? [] : [AIR, paragraphBlock(total, setting)]),
    ...tableBlocks('How it comes out', { heads: ['Board', 'How good it is', 'Where the board goes'], rows: goodness }, setting),
    ...(missing === '' ? [] : [headingBlock('Not on these sheets'), paragraphBlock(missing, setting)]),
    // On one page, so that no page holds the cautions alone.
    ...unparted([
      headingBlock('How to cut'),
      ...numberedBlocks(STEPS, setting),
      headingBlock('Take care'),
      ...[BLADE_CAUTION, ...(hasGlass(boards) ? [GLASS_CAUTION] : [])].map((words) => paragraphBlock(words, setting, SMALL)),
    ]),
  ]; // prettier-ignore
}

const STEPS = [
  'Take the sheets in the order of the pages, and of each the steps in their order. Every cut runs from edge to edge of the part in hand.',
  'The guide is set from the left edge of the part in hand for an upright cut, from its lower edge for a lying one. Turn the part so that this edge lies at the guide; where the guide stays, leave it as it was.',
  'What comes off is a piece, by its number, or a part by its letter that is cut later. Measure the first piece at each setting.',
  'Write the number and an arrow to its top on the back of each piece as it comes off, or put on its label.',
];

/** By the numbers that their pieces name. */
function jobsBlocks(boards: readonly PlannedBoard[], setting: Setting): Block[] {
  const titles = jobTitles(boards);
  if (titles.size < 2) return [];
  const told = [...titles].map(([job, title]) => jobWords({ job, title }, titles.size));
  const words = `Jobs: ${told.join('; ')}.`;
  // In several paragraphs where they are many, so that the list goes on from page to page.
  return inParts(words.split(/(?<=;) /)).map((part) => paragraphBlock(part, setting));
}

/** Signs of one paragraph, unless a single title is longer. */
const PART = 600;

function inParts(items: readonly string[]): string[] {
  const parts: string[] = [];
  for (const item of items) {
    const last = parts.at(-1);
    if (last === undefined || last.length + item.length >= PART) parts.push(item);
    else parts[parts.length - 1] = `${last} ${item}`;
  }
  return parts;
}

function kerfWords({ ask, plan }: PlannedBoard, { showing }: PapersContext): string {
  const { kerf } = ask;
  const trims = [...new Set(plan.sheets.map(({ stock }) => trimOf(stock, ask)))].filter((trim) => trim > 0);
  const parts = [
    ...(trims.length > 0 ? [`trim ${trims.map((trim) => lengthText(trim, showing)).join(' or ')} all round`] : []),
    ...(kerf > 0 ? [`a cut takes ${lengthText(kerf, showing)}`] : []),
  ];
  return capital(parts.join('; '));
}
