/** The hanging sheet: the back of the frame and the wall to scale, with places, wire, loads and cautions in words. */
import { hang, type Hung } from '../../core/hanging/hang';
import { hangingWords, type HangingWords } from '../../core/hanging/words/hanging-words';
import { good, type Result } from '../../core/problem';
import { lengthText } from '../../core/units';
import { titleOf, type MakerHooks, type OutputContext } from '../context';
import { drawDocument, openTypesetter, type PagePlan } from '../paper/document';
import { drawBlocks, flow, type Block } from '../paper/flow';
import { listPaper } from '../paper/page';
import { headingBlock, paragraphBlock, type Setting } from '../paper/text-blocks';
import { lostLetters } from '../template/lost-letters';
import { drawPlainFrame, plainBody } from '../template/sheet-frame';
import { drawBack } from './back-drawing';
import { askOf } from './hanging-context';
import { sectionBlocks, tableBlocks } from '../paper/section-blocks';
import { drawWall } from './wall-drawing';

const BACK_HEIGHT = 96;
const WALL_HEIGHT = 84;

/** Problems: those of a frame that can't hang as it is written. Rejects with the signal's reason when cancelled. */
export async function makeHangingSheet(context: OutputContext, hooks: MakerHooks = {}): Promise<Result<Uint8Array>> {
  const ask = askOf(context);
  const hung = hang(ask);
  if (!hung.ok) return hung;
  const { options, showing, fonts } = context;
  const paper = listPaper(options.paper, showing.unit);
  const body = plainBody(paper);
  const setting = { typesetter: openTypesetter(fonts), width: body.right - body.left };
  const blocks = sheetBlocks(context, hung.value, hangingWords(ask, hung.value), setting);
  const pages = flow(blocks, body.top - body.bottom).map((lot): PagePlan => ({
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

function sheetBlocks(context: OutputContext, hung: Hung, words: HangingWords, setting: Setting): Block[] {
  const length = (mm: number) => lengthText(mm, context.showing);
  const { width } = setting;
  const back: Block = {
    height: BACK_HEIGHT,
    draw: (surface, { x, y }) => {
      const room = { left: x, right: x + width, top: y - 2, bottom: y - BACK_HEIGHT + 4 };
      drawBack(surface, room, { plan: hung.hanging, frame: context.layout.frame, length });
    },
  };
  const wall: Block = {
    height: WALL_HEIGHT,
    draw: (surface, { x, y }) =>
      drawWall(surface, { left: x, right: x + width, top: y - 2, bottom: y - WALL_HEIGHT + 4 }, hung.wall, length),
  };
  const [wallHead, ...wallRows] = sectionBlocks(words.wall, setting);
  return [
    back,
    ...words.frame.flatMap((section) => sectionBlocks(section, setting)),
    ...(wallHead ? [wallHead] : []),
    { ...wall, withNext: true },
    ...wallRows,
    ...tableBlocks('Frames', words.frames, setting),
    ...tableBlocks('Hooks and nails', words.hooks, setting),
    headingBlock('Take care'),
    ...words.cautions.map((caution) => paragraphBlock(caution.words, setting, { size: 8 })),
    headingBlock('What others advise'),
    ...words.guidance.rows.map(({ label, how }) => paragraphBlock(`${label}: ${how}`, setting, { size: 8 })),
  ];
}
