/** What is to be cut of every board, for one job or a whole show, and what it may be cut from. */
import { heightOf, widthOf, type Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { inParts } from '../money';
import { jobPieces } from '../pieces/job-pieces';
import type { Problem } from '../problem';
import { ofKind, type Shelf } from '../shelf/shelf';
import { MM_PER_INCH, showingOf, sizeText, type Showing, type Unit } from '../units';
import type { SheetAim, SheetsAsk, Stock, WantedPiece } from './ask';
import type { StockSheet } from './read-stock';

export interface SheetsChoice {
  readonly stock: readonly StockSheet[];
  readonly shelf: Shelf;
  /** mm. */
  readonly kerf: number;
  readonly trim: number;
  readonly stages?: number;
  /** Boards, in small letters, whose pieces lie as they hang: their grain or pattern runs one way. */
  readonly upright: ReadonlySet<string>;
  /** Whether small pieces may come from what falls out of the windows of these mats. */
  readonly fallouts: boolean;
  readonly aim: SheetAim;
  readonly seed: number;
}

export interface BoardAsk {
  readonly board: string;
  /** Whether every new sheet of it has a price, so that costs are money. */
  readonly isPriced: boolean;
  readonly ask: SheetsAsk;
}

interface LaidJob {
  readonly job: Job;
  readonly layout: Layout;
}

/** Places of decimals that costs are counted in. */
export const COST_PLACES = 2;

/** In the order in which the boards are met. Errors: no sheet of a board is large enough for a piece. */
export function boardAsks(
  jobs: readonly LaidJob[],
  choice: SheetsChoice,
): { readonly asks: readonly BoardAsk[]; readonly problems: readonly Problem[] } {
  const wanted = new Map<
    string,
    { readonly board: string; readonly pieces: WantedPiece[]; readonly fallouts: Stock[] }
  >();
  jobs.forEach((laid, index) => {
    const { job, layout } = laid;
    const name = jobs.length === 1 ? '' : `${index + 1} ${job.title}: `;
    for (const piece of jobPieces(job, layout).pieces) {
      if (piece.comesWithFrame || (piece.kind !== 'mat' && piece.kind !== 'mount board' && !isStocked(piece.material, choice))) continue; // prettier-ignore
      const key = piece.material.toLowerCase();
      const group = wanted.get(key) ?? { board: piece.material, pieces: [], fallouts: [] };
      wanted.set(key, group);
      const { width, height } = piece.cut;
      group.pieces.push({
        id: name + piece.name,
        width,
        height,
        count: piece.count,
        mayTurn: !choice.upright.has(key),
      });
      if (piece.kind === 'mat' && choice.fallouts) group.fallouts.push(...falloutsOf(laid, piece.layer ?? 1, name + piece.name)); // prettier-ignore
    }
  });
  const showing = showingOf(jobs[0]?.job ?? { units: 'mm', steps: { in: 16, mm: 0.5 } });
  const problems: Problem[] = [];
  const asks = [...wanted.values()].flatMap(({ board, pieces, fallouts }): BoardAsk[] => {
    const known = stockOf(board, choice);
    if (known.length === 0) problems.push(sizeTaken(board, showing));
    const stock = [...(known.length > 0 ? known : [usualSheet(showing.unit)]), ...fallouts];
    const { kerf, trim, stages, aim, seed } = choice;
    const ask = { pieces, stock, kerf, trim, aim, seed, ...(stages === undefined ? {} : { stages }) };
    const wrong = tooLarge(board, ask, showing);
    problems.push(...wrong);
    return wrong.length > 0 ? [] : [{ board, isPriced: isPriced(board, choice), ask }];
  });
  return { asks, problems };
}

function isStocked(material: string, { stock }: SheetsChoice): boolean {
  return stock.some(({ board }) => board.toLowerCase() === material.toLowerCase());
}

function isPriced(board: string, choice: SheetsChoice): boolean {
  const news = sheetsOf(board, choice).filter(({ kind }) => kind === 'sheet');
  return news.length > 0 && news.every(({ price }) => price !== undefined);
}

/** Of the list of stock, and where that has no new sheets, of the shelf. */
function sheetsOf(board: string, { stock, shelf }: SheetsChoice): readonly StockSheet[] {
  const isOf = (name: string) => name.toLowerCase() === board.toLowerCase();
  const listed = stock.filter((one) => isOf(one.board));
  return listed.some(({ kind }) => kind === 'sheet')
    ? listed
    : [
        ...listed,
        ...ofKind(shelf, 'board').flatMap(({ name, size, price, count }): StockSheet[] =>
          isOf(name) && size ? [{ board, kind: 'sheet', ...size, ...(price?.per === 'sheet' ? { price: price.amount } : {}), ...(count === undefined ? {} : { count }) }] : [],
        ), // prettier-ignore
      ];
}

/** Money only where every new sheet has a price: areas and amounts can't be held against one another. */
function stockOf(board: string, choice: SheetsChoice): Stock[] {
  const inMoney = isPriced(board, choice);
  const costOf = ({ kind, width, height, price }: StockSheet) => {
    if (inMoney && price) return inParts(price, COST_PLACES);
    // What is there anyway costs nothing; new sheets of no known price count by their area.
    return kind === 'remnant' ? 0 : Math.ceil((width * height) / 1000);
  };
  return sheetsOf(board, choice).map((sheet, index) => ({
    id: `${sheet.kind} ${index + 1}`,
    kind: sheet.kind,
    width: sheet.width,
    height: sheet.height,
    cost: costOf(sheet),
    ...(sheet.count === undefined ? {} : { count: sheet.count }),
  }));
}

/** A window's drop is as large as its opening where that is smallest; only rectangles give a rectangle. */
function falloutsOf({ layout }: LaidJob, layer: number, from: string): Stock[] {
  return layout.windows.flatMap((window): Stock[] => {
    const opening = window.layers[layer - 1]?.opening;
    if (window.shape !== 'rectangle' || !opening) return [];
    return [{ id: `window ${window.name} of ${from}`, kind: 'fallout', width: widthOf(opening), height: heightOf(opening), cost: 0, count: 1 }]; // prettier-ignore
  });
}

/** Mat board is sold so where nothing else is known: common practice, no source; the metric size from memory. */
const USUAL = { in: { width: 32 * MM_PER_INCH, height: 40 * MM_PER_INCH }, mm: { width: 800, height: 1200 } };

function usualSheet(units: Unit): Stock {
  const size = units === 'in' ? USUAL.in : USUAL.mm;
  return { id: 'sheet 1', kind: 'sheet', ...size, cost: 1 };
}

function sizeTaken(board: string, showing: Showing): Problem {
  const size = sizeText(usualSheet(showing.unit), showing);
  return {
    code: 'sheet-size-taken',
    severity: 'note',
    at: 'stock',
    message: `How large the sheets of “${board.slice(0, 60)}” are, is not said; ${size} is taken (common practice). List them in the stock, or say it on the shelf.`,
    value: size,
    remedy: 'a list of stock, or a shelf',
  };
}

/** Says which side misses, and that two halves can be joined. */
function tooLarge(board: string, { pieces, stock, trim }: SheetsAsk, showing: Showing): Problem[] {
  const sheets = stock.filter(({ kind }) => kind !== 'fallout');
  const roomOf = ({ kind, width, height }: Stock): Size => {
    const off = kind === 'sheet' ? 2 * trim : 0;
    return { width: width - off, height: height - off };
  };
  const isIn = (piece: Size, room: Size) => piece.width <= room.width + 1e-6 && piece.height <= room.height + 1e-6;
  return pieces.flatMap((piece): Problem[] => {
    const turned = { width: piece.height, height: piece.width };
    if (sheets.some((sheet) => isIn(piece, roomOf(sheet)) || (piece.mayTurn && isIn(turned, roomOf(sheet))))) return [];
    const largest = sheets.reduce((a, b) => (b.width * b.height > a.width * a.height ? b : a));
    const size = sizeText(piece, showing);
    return [
      {
        code: 'piece-larger-than-sheets',
        severity: 'error',
        at: 'stock',
        message: `“${piece.id}”, ${size}, comes from no sheet of “${board}”: the largest is ${sizeText(largest, showing)}. List a larger sheet, or make it of two parts and join them.`,
        value: size,
        limit: sizeText(largest, showing),
        remedy: 'a larger sheet',
      },
    ];
  });
}

/** Of a board that no plan was found for, though each piece comes from some sheet. */
export function tooFew({ board }: BoardAsk): Problem {
  return {
    code: 'too-few-sheets',
    severity: 'error',
    at: 'stock',
    message: `There are too few sheets of “${board}” for all its pieces; list more, or leave their count empty.`,
    value: board,
    remedy: 'more sheets',
  };
}
