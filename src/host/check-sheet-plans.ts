/** Checks that a plan of sheets can be drawn: what lies on a sheet is within it, is as large as it is told, and has its own number. */
import type { SheetPlans } from '../bridge';
import type { Box } from '../core/geometry/box';
import type { PlannedBoard } from '../core/sheets/planned-board';
import type { CutStep, PlacedPiece, PlannedSheet } from '../core/sheets/plan';

/** What doubles lose on their way, mm. */
const LAST_BITS = 1e-5;
/** More would take minutes to draw. */
const MOST_PIECES = 5000;

/** The first thing that is wrong, with its place in the request; undefined where nothing is. */
export function wrongInPlans({ boards }: SheetPlans): string | undefined {
  const pieces = boards.flatMap(({ plan }) => plan.sheets.map((sheet) => sheet.pieces.length));
  const count = pieces.reduce((sum, one) => sum + one, 0);
  if (count > MOST_PIECES) return `The plan has ${count} pieces; at most ${MOST_PIECES} go on paper together.`;
  for (const [index, board] of boards.entries()) {
    const wrong = wrongInBoard(board);
    if (wrong !== undefined) return `boards[${index}].plan.${wrong}`;
  }
  return undefined;
}

function wrongInBoard({ plan }: PlannedBoard): string | undefined {
  const numbers = new Set<number>();
  for (const [index, sheet] of plan.sheets.entries()) {
    const wrong = wrongInSheet(sheet, numbers);
    if (wrong !== undefined) return `sheets[${index}].${wrong}`;
  }
  return undefined;
}

function wrongInSheet({ stock, pieces, left, steps }: PlannedSheet, numbers: Set<number>): string | undefined {
  const isOff = ({ right, top }: Box) => right > stock.width + LAST_BITS || top > stock.height + LAST_BITS;
  const limit = `the sheet, which is ${stock.width} x ${stock.height} mm`;
  for (const [index, piece] of pieces.entries()) {
    const at = `pieces[${index}]`;
    if (isOff(piece.box)) return `${at} reaches out of ${limit}.`;
    if (!isItsSize(piece)) return `${at} is drawn larger or smaller than the piece it is, ${piece.piece.width} x ${piece.piece.height} mm.`; // prettier-ignore
    if (numbers.has(piece.number)) return `${at} has the number ${piece.number}, which another piece has already.`;
    numbers.add(piece.number);
  }
  const rest = left.findIndex(isOff);
  if (rest >= 0) return `left[${rest}] reaches out of ${limit}.`;
  const part = steps.findIndex((step) => isOff(step.part));
  if (part >= 0) return `steps[${part}] cuts a part that reaches out of ${limit}.`;
  const beside = steps.findIndex(cutsBeside);
  return beside >= 0 ? `steps[${beside}] sets the guide beyond the part in hand.` : undefined;
}

function isItsSize({ piece, box, turned }: PlacedPiece): boolean {
  const [width, height] = turned ? [piece.height, piece.width] : [piece.width, piece.height];
  return Math.abs(box.right - box.left - width) < LAST_BITS && Math.abs(box.top - box.bottom - height) < LAST_BITS;
}

function cutsBeside({ kind, part, way, setting, times }: CutStep): boolean {
  const along = way === 'upright' ? part.right - part.left : part.top - part.bottom;
  return kind === 'cut' && setting * times > along + LAST_BITS;
}
