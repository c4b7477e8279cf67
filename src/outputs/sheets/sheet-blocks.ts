/** A sheet of a plan as blocks that flow from page to page: its drawing, the steps that cut it, its pieces, and what is left. */
import type { AlikeSheets } from '../../core/sheets/alike-sheets';
import { alikeWords, leftWords, pieceRows, sheetTitle, stepRows } from '../../core/sheets/sheet-words';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import type { Block } from '../paper/flow';
import { tableBlocks } from '../paper/section-blocks';
import { paragraphBlock, type Setting } from '../paper/text-blocks';
import type { PapersContext } from './papers-context';
import { drawingBlock, sheetScale } from './sheet-drawing';

/** Of the drawing itself at the most, mm; smaller where that saves a page. */
const HEIGHTS = [215, 170, 130, 100];
/** No piece is drawn narrower for the sake of a page, mm. */
const READABLE = 10;
const STEP_HEADS = ['Step', 'Guide', 'How', 'In hand', 'What comes of it'] as const;
const PIECE_HEADS = ['Number', 'Piece', 'Size', 'Lies'] as const;

/** The same sheet drawn smaller and smaller. */
export function sheetWays(
  board: PlannedBoard,
  alike: AlikeSheets,
  setting: Setting,
  context: PapersContext,
): (readonly Block[])[] {
  const { sheet } = alike;
  const scales = HEIGHTS.map((most) => sheetScale(sheet, setting.width, most, context));
  const narrowest = Math.min(...sheet.pieces.map(({ piece }) => Math.min(piece.width, piece.height)));
  const ways = scales.filter(({ factor }, index) => index === 0 || (factor !== scales[index - 1]?.factor && narrowest * factor >= READABLE)); // prettier-ignore
  const { showing } = context;
  const view = { sheet, kerf: board.ask.kerf };
  return ways.map((scale) => [
    ...headBlocks(board, alike, setting, context),
    drawingBlock(view, scale, setting, context),
    ...(sheet.steps.length === 0
      ? [paragraphBlock('The sheet is the piece: nothing is cut.', setting)]
      : tableBlocks('Cuts', { heads: STEP_HEADS, rows: stepRows(sheet, showing) }, setting)),
    ...(sheet.left.length === 0 ? [] : [paragraphBlock(`Left: ${leftWords(sheet, showing, context.keep)}.`, setting)]),
    ...tableBlocks('Pieces', { heads: PIECE_HEADS, rows: pieceRows(sheet, showing) }, setting),
  ]);
}

function headBlocks(board: PlannedBoard, alike: AlikeSheets, setting: Setting, { showing }: PapersContext): Block[] {
  const title = `${board.board}, sheet ${sheetTitle(alike.sheet, alike.places[0] ?? 0, showing)}`;
  const like = alikeWords(board.plan.sheets, alike);
  return [
    { ...paragraphBlock(title, setting, { size: 11, weight: 'bold' }), withNext: true },
    ...(like === '' ? [] : [{ ...paragraphBlock(like, setting), withNext: true }]),
  ];
}
