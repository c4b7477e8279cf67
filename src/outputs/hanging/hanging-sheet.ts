/** The hanging sheet: the back of the frame and the wall to scale, with places, wire, loads and cautions in words. */
import { hang, type Hung } from '../../core/hanging/hang';
import { hangingWords, type HangingWords } from '../../core/hanging/words/hanging-words';
import type { HookTable } from '../../core/hanging/words/wall-words';
import { good, type Result } from '../../core/problem';
import { lengthText } from '../../core/units';
import { titleOf, type MakerHooks, type OutputContext } from '../context';
import { drawDocument, openTypesetter, type PagePlan } from '../paper/document';
import { drawBlocks, flowTight, unparted, type Block } from '../paper/flow';
import { listPaper } from '../paper/page';
import { headingBlock, pairedBlocks, type Setting } from '../paper/text-blocks';
import { lostLetters } from '../template/lost-letters';
import { drawPlainFrame, plainBody } from '../template/sheet-frame';
import { backBlock } from './back-drawing';
import { askOf } from './hanging-context';
import { sectionBlocks, tableBlocks } from '../paper/section-blocks';
import { wallBlock } from './wall-drawing';

/** How high frame and wall are drawn at the most, mm; smaller where that saves a page, the wall first. */
const TALLEST = [96, 76, 56, 42];
const HEIGHTS = TALLEST.flatMap((back) => TALLEST.map((wall) => ({ back, wall }))).toSorted(
  (a, b) => b.back + b.wall - (a.back + a.wall) || b.back - a.back,
);
/** A table of more rows may be parted where a page ends. */
const ROWS_TOGETHER = 12;

/** Problems: those of a frame that can't hang as it is written. Rejects with the signal's reason when cancelled. */
export async function makeHangingSheet(context: OutputContext, hooks: MakerHooks = {}): Promise<Result<Uint8Array>> {
  const ask = askOf(context);
  const hung = hang(ask);
  if (!hung.ok) return hung;
  const { options, showing, fonts } = context;
  const paper = listPaper(options.paper, showing.unit);
  const body = plainBody(paper);
  const setting = { typesetter: openTypesetter(fonts), width: body.right - body.left };
  const words = hangingWords(ask, hung.value);
  const ways = HEIGHTS.map((heights) => sheetBlocks(context, hung.value, words, setting, heights));
  const pages = flowTight(ways, body.top - body.bottom).map((lot): PagePlan => ({
    size: paper,
    step: 'Writing the hanging sheet',
    draw: (surface, { number, count }) => {
      drawPlainFrame(surface, {
        title: titleOf(context),
        under: 'How the framed picture hangs',
        page: `Page ${number} of ${count}`,
        place: 'hanging sheet · drawings to the scales they say',
      });
      drawBlocks(surface, lot, { x: body.left, y: body.top });
    },
  }));
  const { bytes, lost } = await drawDocument(pages, titleOf(context), fonts, hooks);
  return good(bytes, lostLetters(context, lost));
}

function sheetBlocks(
  { layout, showing }: OutputContext,
  { hanging, wall }: Hung,
  words: HangingWords,
  setting: Setting,
  most: (typeof HEIGHTS)[number],
): Block[] {
  const length = (mm: number) => lengthText(mm, showing);
  const { width } = setting;
  const { unit } = showing;
  const [wallHead, ...wallRows] = sectionBlocks(words.wall, setting);
  const cautions = words.cautions.map((caution) => caution.words);
  const guidance = words.guidance.rows.map(({ label, how }) => `${label}: ${how}`);
  const tabled = (heading: string, table: HookTable) => {
    const blocks = tableBlocks(heading, table, setting);
    return table.rows.length > ROWS_TOGETHER ? blocks : unparted(blocks);
  };
  return [
    backBlock({ plan: hanging, frame: layout.frame, length, unit }, width, most.back),
    ...words.frame.flatMap((section) => unparted(sectionBlocks(section, setting))),
    ...(wallHead ? [wallHead] : []),
    { ...wallBlock({ wall, length, unit }, width, most.wall), withNext: true },
    ...unparted(wallRows),
    ...tabled('Frames', words.frames),
    ...tabled('Hooks and nails', words.hooks),
    // Together, so that no page is begun for a line or two.
    ...unparted([
      headingBlock('Take care'),
      ...pairedBlocks(cautions, setting, { size: 8 }),
      headingBlock('What others advise'),
      ...pairedBlocks(guidance, setting, { size: 8 }),
    ]),
  ];
}
