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
import { lostLetters } from '../paper/lost-letters';
import { drawPlainFrame, plainBody } from '../template/sheet-frame';
import { backBlock } from './back-drawing';
import { askOf } from './hanging-context';
import { sectionBlocks, tableBlocks } from '../paper/section-blocks';
import { wallBlock } from './wall-drawing';

/** How the drawings lie: how high they are at the most, mm, and whether the wall stands beside the frame. */
interface Way {
  readonly back: number;
  readonly wall: number;
  readonly isBeside: boolean;
}

/** From the roomiest on: first the wall gets smaller; beside the frame it stands only where that saves a page. */
const TALLEST = [96, 76, 56];
const WAYS = [false, true].flatMap((isBeside) =>
  TALLEST.flatMap((back) => TALLEST.map((wall): Way => ({ back, wall, isBeside }))).toSorted(
    (a, b) => b.back + b.wall - (a.back + a.wall) || b.back - a.back,
  ),
);
/** Of the width, for the frame with the wall beside it. */
const FRAME_PART = 0.5;
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
  const ways = WAYS.map((way) => sheetBlocks(context, hung.value, words, setting, way));
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
  way: Way,
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
  const back = (wide: number) => backBlock({ plan: hanging, frame: layout.frame, length, unit }, wide, way.back);
  const onWall = (wide: number) => wallBlock({ wall, length, unit }, wide, way.wall);
  return [
    way.isBeside
      ? besideBlock(back(FRAME_PART * width), onWall((1 - FRAME_PART) * width), FRAME_PART * width)
      : back(width),
    ...words.frame.flatMap((section) => unparted(sectionBlocks(section, setting))),
    ...(wallHead ? [wallHead] : []),
    ...(way.isBeside ? [] : [{ ...onWall(width), withNext: true }]),
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

function besideBlock(left: Block, right: Block, across: number): Block {
  return {
    height: Math.max(left.height, right.height),
    draw: (surface, corner) => {
      left.draw(surface, corner);
      right.draw(surface, { ...corner, x: corner.x + across });
    },
  };
}
