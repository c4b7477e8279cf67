/** A plan of sheets as two tables of comma-separated values: where each piece lies, and every step of cutting. */
import { heightOf, widthOf } from '../../core/geometry/box';
import type { Stock } from '../../core/sheets/ask';
import { partInHand } from '../../core/sheets/cut-lines';
import type { CutStep, PlacedPiece } from '../../core/sheets/plan';
import { handName } from '../../core/sheets/sheet-words';
import { csvText, type Cell } from '../../core/tables/csv-text';
import { decimalCell, shownCell } from '../../core/tables/length-cells';
import { showSetting, type Showing } from '../../core/units';
import type { PapersContext } from './papers-context';

const PLACE = ['board', 'sheet', 'sheet kind'];

const PIECE_LENGTHS = ['x', 'y', 'width', 'height'] as const;
const PIECES_HEADING: readonly string[] = [
  ...PLACE,
  ...['number', 'piece', 'job', 'job number', 'layer', 'unit'],
  ...PIECE_LENGTHS.flatMap((name) => [name, `${name} shown`]),
  ...['turned', 'windows'],
];

/** x and y from the sheet's lower left corner, width and height as the piece lies there. */
export function sheetPiecesCsv(context: PapersContext): string {
  const rows = ofEachSheet(context, ({ pieces }, place) =>
    pieces.map((piece) => [...place, ...pieceCells(piece, context.showing)]),
  );
  return csvText([PIECES_HEADING, ...rows]);
}

function pieceCells({ piece, box, turned, number }: PlacedPiece, showing: Showing): Cell[] {
  const { id, from } = piece;
  const lengths = [box.left, box.bottom, widthOf(box), heightOf(box)];
  return [
    ...[number, from?.name ?? id, from?.title ?? '', from ? from.job + 1 : '', from?.layer ?? '', showing.unit],
    ...lengths.flatMap((mm): Cell[] => [decimalCell(mm, showing), shownCell(mm, showing)]),
    turned ? 'yes' : 'no',
    (from?.windows ?? []).map(({ name }) => name).join(' '),
  ];
}

const STEP_LENGTHS = ['part x', 'part y', 'part width', 'part height'] as const;
const STEPS_HEADING: readonly string[] = [
  ...PLACE,
  ...['step', 'kind', 'in hand', 'unit', ...STEP_LENGTHS, 'way', 'setting', 'setting shown'],
  ...['times', 'guide stays', 'gives', 'leaves', 'stage'],
];

/** The setting is counted from the left edge of the part in hand for upright cuts, from its lower edge for lying ones. */
export function sheetCutsCsv(context: PapersContext): string {
  const rows = ofEachSheet(context, ({ stock, steps }, place) =>
    steps.map((step, index) => [...place, index + 1, ...stepCells(step, stock, context.showing)]),
  );
  return csvText([STEPS_HEADING, ...rows]);
}

function stepCells(step: CutStep, stock: Stock, showing: Showing): Cell[] {
  const part = partInHand(step);
  const { kind, way, setting, times, guideStays, gives, leaves, stage } = step;
  const lengths = [part.left, part.bottom, widthOf(part), heightOf(part)];
  return [
    ...[kind, handName(step, stock), showing.unit],
    ...lengths.map((mm) => decimalCell(mm, showing)),
    ...[kind === 'cut' ? way : 'all round', decimalCell(setting, showing)],
    { quoted: showSetting(setting, showing).withUnit },
    ...[times, guideStays ? 'yes' : 'no'],
    ...[gives.filter((name) => name !== '').join(' '), leaves ?? '', stage],
  ];
}

type Sheet = PapersContext['boards'][number]['plan']['sheets'][number];

function ofEachSheet({ boards }: PapersContext, rowsOf: (sheet: Sheet, place: readonly Cell[]) => Cell[][]): Cell[][] {
  return boards.flatMap(({ board, plan }) =>
    plan.sheets.flatMap((sheet, index) => rowsOf(sheet, [board, index + 1, sheet.stock.kind])),
  );
}
