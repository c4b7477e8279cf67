/** What is to be cut of every board, for one job or a whole show, and what it may be cut from. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { sold } from '../pieces/cost';
import { jobPieces } from '../pieces/job-pieces';
import { isBoard, type Piece } from '../pieces/piece';
import type { Problem } from '../problem';
import type { Shelf, ShelfBoard, ShelfGlazing } from '../shelf/shelf';
import { showingOf } from '../units';
import type { Pin, SheetAim, SheetsAsk, Stock, WantedPiece } from './ask';
import { boardStock } from './board-stock';
import { falloutsOf, windowsIn } from './fallouts';
import type { KeepRule } from './remnants';
import { sizeTaken, tooLarge } from './size-problems';
import type { StockSheet } from './stock-sheet';

export interface SheetsChoice {
  readonly stock: readonly StockSheet[];
  readonly shelf: Shelf;
  /** Of boards for which the list of stock says none, mm. */
  readonly kerf: number;
  readonly trim: number;
  readonly stages?: number;
  /** mm. */
  readonly longestCut?: number;
  /** Boards, in small letters, whose pieces lie as they hang though the list says nothing of grain. */
  readonly upright: ReadonlySet<string>;
  /** Whether small pieces may come from what falls out of the windows of these mats. */
  readonly fallouts: boolean;
  readonly aim: SheetAim;
  readonly perSheet?: number;
  readonly remnantWorth?: number;
  readonly keep?: KeepRule;
  /** By boards, in small letters. */
  readonly pins?: ReadonlyMap<string, readonly Pin[]>;
  readonly seed: number;
}

export interface BoardAsk {
  readonly board: string;
  /** Whether every new sheet of it has a price, so that costs are money. */
  readonly isPriced: boolean;
  readonly ask: SheetsAsk;
}

/** Pieces that nobody lists sheets for. */
export interface Unplanned {
  readonly material: string;
  /** Such as `Glazing`, of one job or several. */
  readonly name: string;
  readonly count: number;
}

export interface BoardAsks {
  readonly asks: readonly BoardAsk[];
  readonly unplanned: readonly Unplanned[];
  readonly problems: readonly Problem[];
}

interface LaidJob {
  readonly job: Job;
  readonly layout: Layout;
  /** How often it is made; once unless said. */
  readonly copies?: number;
}

/** Pieces of one material on their way to an ask. */
interface Lot {
  readonly board: string;
  readonly listed: readonly StockSheet[];
  readonly sold: readonly (ShelfBoard | ShelfGlazing)[];
  readonly pieces: WantedPiece[];
  readonly fallouts: Stock[];
}

/** In the order in which the boards are met. Errors: no sheet of a board is large enough for a piece. */
export function boardAsks(jobs: readonly LaidJob[], choice: SheetsChoice): BoardAsks {
  const lots = new Map<string, Lot>();
  const unplanned = new Map<string, Unplanned>();
  jobs.forEach((laid, index) => {
    const before = jobs.length === 1 ? '' : `${index + 1} ${laid.job.title}: `;
    for (const piece of jobPieces(laid.job, laid.layout).pieces) {
      if (piece.comesWithFrame) continue;
      const lot = lotFor(lots, laid.job, piece, choice);
      if (lot) addPiece(lot, laid, piece, { index, before }, choice);
      else {
        const key = `${piece.name} ${piece.material}`;
        const count = (unplanned.get(key)?.count ?? 0) + piece.count * (laid.copies ?? 1);
        unplanned.set(key, { name: piece.name, material: piece.material, count });
      }
    }
  });
  const showing = showingOf(jobs[0]?.job ?? { units: 'mm', steps: { in: 16, mm: 0.5 } });
  const problems: Problem[] = [];
  const asks = [...lots.values()].flatMap((lot): BoardAsk[] => {
    const known = boardStock(lot.listed, lot.sold, showing.unit);
    if (known.isTaken) problems.push(sizeTaken(lot.board, showing));
    const ask = askOf(lot, known, choice);
    const wrong = tooLarge(lot.board, ask, choice, showing);
    problems.push(...wrong);
    return wrong.length > 0 ? [] : [{ board: lot.board, isPriced: known.isPriced, ask }];
  });
  return { asks, unplanned: [...unplanned.values()], problems };
}

function askOf(
  { board, pieces, fallouts }: Lot,
  known: ReturnType<typeof boardStock>,
  choice: SheetsChoice,
): SheetsAsk {
  const { stages, longestCut, perSheet, remnantWorth, keep, aim, seed } = choice;
  const pins = choice.pins?.get(board.toLowerCase());
  return {
    pieces: known.hasGrain ? pieces.map((piece) => ({ ...piece, mayTurn: false })) : pieces,
    stock: [...known.stock, ...fallouts],
    kerf: known.kerf ?? choice.kerf,
    trim: choice.trim,
    aim,
    seed,
    ...(stages === undefined ? {} : { stages }),
    ...(longestCut === undefined ? {} : { longestCut }),
    // An amount can’t be held against areas.
    ...(perSheet === undefined || !known.isPriced ? {} : { perSheet }),
    ...(remnantWorth === undefined ? {} : { remnantWorth }),
    ...(keep === undefined ? {} : { keep }),
    ...(pins === undefined || pins.length === 0 ? {} : { pins }),
  };
}

/** Undefined where a piece is no board that is always cut, and nobody lists sheets of its material. */
function lotFor(lots: Map<string, Lot>, job: Job, piece: Piece, { stock, shelf }: SheetsChoice): Lot | undefined {
  const offered = sold(job, shelf, piece).filter(({ size }) => size !== undefined);
  const names = [piece.material, ...offered.map(({ name }) => name)].map((name) => name.toLowerCase());
  const listed = stock.filter(({ board }) => names.includes(board.toLowerCase()));
  if (!isBoard(piece) && listed.length === 0 && offered.length === 0) return undefined;
  // Glass of one thickness is another thing on the shelf than glass of another.
  const board = piece.kind === 'glazing' ? (offered[0]?.name ?? listed[0]?.board ?? piece.material) : piece.material;
  const key = board.toLowerCase();
  const lot = lots.get(key) ?? { board, listed, sold: offered, pieces: [], fallouts: [] };
  lots.set(key, lot);
  return lot;
}

function addPiece(
  lot: Lot,
  { job, layout, copies = 1 }: LaidJob,
  piece: Piece,
  { index, before }: { readonly index: number; readonly before: string },
  { upright, fallouts }: SheetsChoice,
): void {
  const id = before + piece.name;
  const layer = piece.kind === 'mat' ? (piece.layer ?? 1) : undefined;
  if (layer !== undefined && fallouts) {
    const which = { layer, piece: lot.pieces.length, from: id, showing: showingOf(job) };
    lot.fallouts.push(...falloutsOf(layout, which).map((one) => ({ ...one, count: copies })));
  }
  lot.pieces.push({
    id,
    width: piece.cut.width,
    height: piece.cut.height,
    count: piece.count * copies,
    mayTurn: !upright.has(lot.board.toLowerCase()),
    from: {
      job: index,
      title: job.title,
      kind: piece.kind,
      name: piece.name,
      ...(layer === undefined ? {} : { layer, layers: layout.layers.length }),
      windows: layer === undefined ? [] : windowsIn(layout, layer, piece.cut),
    },
  });
}
