/** A sheet of a plan as blocks that flow from page to page: its drawing, the steps that cut it, its pieces, and what is left. */
import { capital } from '../../core/phrases';
import type { AlikeSheets } from '../../core/sheets/alike-sheets';
import { cutFirstWords, keepFalloutWords } from '../../core/sheets/fallout-words';
import { alikeWords, leftWords, pieceRows, sheetWords, stepRows } from '../../core/sheets/sheet-words';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import type { PlannedSheet } from '../../core/sheets/plan';
import type { Scale } from '../paper/scale';
import { endedBy, unparted, type Block } from '../paper/flow';
import { tableBlocks } from '../paper/section-blocks';
import { headingBlock, paragraphBlock, type Setting } from '../paper/text-blocks';
import type { PapersContext } from './papers-context';
import { BESIDE_DRAWING, drawingBlock, sheetScale } from './sheet-drawing';

/** Of the drawing itself at the most, mm; smaller where that saves a page. */
const HEIGHTS = [300, 215, 170, 130, 100];
/** No piece is drawn narrower for the sake of a page, mm. */
const READABLE = 10;
/** Pieces that still stand in one column. */
const MANY = 6;
/** Rows that are not parted between two pages; they fill no page, even when every one wraps. */
const TOGETHER = 16;
const STEP_HEADS = ['Step', 'Guide', 'How', 'In hand', 'What comes of it'] as const;
const PIECE_HEADS = ['Number', 'Piece', 'Size', 'Lies'] as const;

/** The same sheet drawn smaller and smaller. */
export function sheetWays(
  board: PlannedBoard,
  alike: AlikeSheets,
  { setting, room }: PageRoom,
  context: PapersContext,
): (readonly Block[])[] {
  const { sheet } = alike;
  const heads = headBlocks(board, alike, setting, context);
  const scales = HEIGHTS.map((most) => scaleUnder(heads, sheet, { setting, room }, context, most));
  const narrowest = narrowestOf(sheet);
  const ways = scales.filter(({ factor }, index) => index === 0 || (factor !== scales[index - 1]?.factor && narrowest * factor >= READABLE)); // prettier-ignore
  const { showing } = context;
  const view = { sheet, kerf: board.ask.kerf };
  return ways.map((scale) => [
    ...heads,
    drawingBlock(view, scale, setting, context),
    ...(sheet.steps.length === 0
      ? [paragraphBlock('The sheet is the piece: nothing is cut off it.', setting)]
      : tableBlocks('Cuts', { heads: STEP_HEADS, rows: stepRows(sheet, showing) }, setting)),
    ...piecesBlocks(sheet, setting, context),
  ]);
}

/**
 * Whether a sheet is drawn on pages that lie: where its pieces are too narrow to be read at the scale that an upright page has
 * room for, and a lying one has room for a larger.
 */
export function isDrawnLying(
  board: PlannedBoard,
  alike: AlikeSheets,
  pages: Readonly<Record<'upright' | 'lying', PageRoom>>,
  context: PapersContext,
): boolean {
  const { sheet } = alike;
  const factorOn = ({ setting, room }: PageRoom) =>
    scaleUnder(headBlocks(board, alike, setting, context), sheet, { setting, room }, context).factor;
  const upright = factorOn(pages.upright);
  return narrowestOf(sheet) * upright < READABLE && factorOn(pages.lying) > upright;
}

export interface PageRoom {
  readonly setting: Setting;
  /** Height, mm. */
  readonly room: number;
}

/** @param most height of the drawing itself, mm. */
function scaleUnder(
  heads: readonly Block[],
  sheet: PlannedSheet,
  { setting, room }: PageRoom,
  context: PapersContext,
  most = Infinity,
): Scale {
  const left = room - BESIDE_DRAWING - heads.reduce((sum, { height }) => sum + height, 0);
  return sheetScale(sheet, setting.width, Math.min(most, left), context);
}

function narrowestOf({ pieces }: PlannedSheet): number {
  return Math.min(...pieces.map(({ piece }) => Math.min(piece.width, piece.height)));
}

/** On one page where they are not too many, so that two columns are read down and not across pages. */
function piecesBlocks(sheet: PlannedSheet, setting: Setting, context: PapersContext): readonly Block[] {
  const table = piecesTable(sheet, context);
  const blocks = endedBy(tableBlocks('Pieces', table, setting), leftBlocks(sheet, setting, context));
  return table.rows.length <= TOGETHER ? unparted(blocks) : blocks;
}

/** In two columns where they are many. */
function piecesTable(sheet: PlannedSheet, { showing }: PapersContext) {
  const { heads, rows } = withoutEmpty(PIECE_HEADS, pieceRows(sheet, showing));
  if (rows.length <= MANY) return { heads, rows };
  const half = Math.ceil(rows.length / 2);
  const none = heads.map(() => '');
  return { heads: [...heads, ...heads], rows: rows.slice(0, half).map((row, index) => [...row, ...(rows[half + index] ?? none)]) }; // prettier-ignore
}

function leftBlocks(sheet: PlannedSheet, setting: Setting, { showing, keep }: PapersContext): Block[] {
  if (sheet.left.length === 0) return [];
  return [headingBlock('Left'), paragraphBlock(`${capital(leftWords(sheet, showing, keep))}.`, setting)];
}

/** A table without the columns in which nothing stands. */
export function withoutEmpty(heads: readonly string[], rows: readonly (readonly string[])[]) {
  const isTold = (_: string, column: number) => rows.some((row) => row[column] !== '');
  return { heads: heads.filter(isTold), rows: rows.map((row) => row.filter(isTold)) };
}

function headBlocks(board: PlannedBoard, alike: AlikeSheets, setting: Setting, { showing }: PapersContext): Block[] {
  const title = `${board.board}, sheet ${(alike.places[0] ?? 0) + 1}: ${sheetWords(alike.sheet, showing)}`;
  const { places } = alike;
  const told = [
    alikeWords(board.plan.sheets, alike),
    cutFirstWords(board, places, showing),
    keepFalloutWords(board, places),
  ];
  return [
    { ...paragraphBlock(title, setting, { size: 11, weight: 'bold' }), withNext: true },
    ...told.filter((words) => words !== '').map((words) => ({ ...paragraphBlock(words, setting), withNext: true })),
  ];
}
