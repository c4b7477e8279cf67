/** The desk on which sheets are planned: what is asked, the best plans so far, what is pinned, and how it all stands. */
import { inParts, money } from '../../core/money';
import { bySeverity, isError, type Problem } from '../../core/problem';
import type { Shelf } from '../../core/shelf/shelf';
import { keepRule } from '../../core/sheets/keep-rule';
import { USUAL_KEEP } from '../../core/sheets/remnants';
import { boardAsks, type BoardAsk, type BoardAsks } from '../../core/sheets/board-asks';
import { COST_PLACES } from '../../core/sheets/board-stock';
import type { PlacedPiece } from '../../core/sheets/plan';
import { refusedBoards } from '../../core/sheets/refused-boards';
import { whyNoPlan } from '../../core/sheets/why-no-plan';
import type { StockSheet } from '../../core/sheets/stock-sheet';
import { pinnedPieces, putPin, withPins, type PinnedPieces, type Putting } from '../edits/pins';
import type { Look, SheetJob } from '../session/look.svelte';
import type { Notice } from '../session/notice.svelte';
import type { Session } from '../session/session.svelte';
import { PinHistory } from './pin-history.svelte';
import { Planning } from './planning.svelte';
import { rememberChoices, rememberedChoices, type SheetChoices } from './sheet-choices';
import { SheetsView, type ChosenPiece, type PiecePlace, type SheetPlace } from './sheets-view.svelte';

interface Sources {
  readonly session: Session;
  readonly look: Look;
  readonly notice: Notice;
  readonly shelf: () => Shelf;
  readonly stock: () => readonly StockSheet[];
  /** Why the stock can't be read. */
  readonly damage: () => string | undefined;
  /** Whether a change of the stock was not taken back yet. */
  readonly stands: (change: number) => boolean;
}

/** What using the plan did to the stock. */
export interface Used {
  /** A line for each board. */
  readonly lines: readonly string[];
  /** Which change of the stock that is; undefined while it is being made. */
  readonly change?: number;
}

const SEED = 1;

export class SheetsDesk {
  readonly view = new SheetsView();
  readonly pins = new PinHistory();
  choices = $state.raw<SheetChoices>(rememberedChoices());
  readonly planning = new Planning((without) => this.#refuse(without));
  #used = $state.raw<Used>();
  /** While a use stands the plan stays as it is, until another is wanted; whoever takes it back, it is used no longer. */
  readonly used = $derived.by(() => {
    const change = this.#used?.change;
    return change === undefined || this.from.stands(change) ? this.#used : undefined;
  });
  /** The board that a pin was last put on, until there is a plan with it. */
  #justPinned: string | undefined;

  constructor(private readonly from: Sources) {}

  /** Why the job on the screen is not planned; undefined where it is. */
  readonly notPlanned = $derived.by(() => {
    const { session } = this.from;
    return session.errors.length > 0 || !session.picture || session.picture.stale
      ? 'The job on the screen has errors, listed at the foot of the window; mend them first.'
      : undefined;
  });
  readonly #jobs = $derived.by(() => {
    const { session, look } = this.from;
    const own = this.notPlanned === undefined && session.picture ? [{ ...session.picture, copies: look.copies }] : [];
    return [...own, ...look.sheetJobs.flatMap(({ laid, copies }) => (laid ? [{ ...laid, copies }] : []))];
  });
  readonly asked = $derived.by<BoardAsks>(() => {
    const { shelf, stock } = this.from;
    const { aim, kerf = 0, trim = 0, longestCut, stages, fallouts, upright, remnantPercent } = this.choices;
    const found = boardAsks(this.#jobs, {
      stock: stock(),
      shelf: shelf(),
      kerf,
      trim,
      fallouts,
      keep: this.keep,
      aim,
      upright: new Set(upright),
      seed: SEED,
      ...(longestCut === undefined ? {} : { longestCut }),
      ...(stages === undefined ? {} : { stages }),
      ...(remnantPercent === undefined ? {} : { remnantWorth: remnantPercent / 100 }),
    });
    return { ...found, asks: found.asks.map((one) => this.#worth(one)) };
  });
  readonly #keeping = $derived.by(() => {
    const { keepWidth: width, keepHeight: height, keepStrip: strip, discard: least } = this.choices;
    const board = { width: width ?? USUAL_KEEP.board.width, height: height ?? USUAL_KEEP.board.height };
    return keepRule({ board, strip, least }, this.from.session.showing);
  });
  /** By which what is left is kept; as usual while what was chosen contradicts itself. */
  readonly keep = $derived(this.#keeping.ok ? this.#keeping.value : USUAL_KEEP);
  readonly pinned = $derived(withPins(this.asked.asks, this.pins.held));
  readonly boards = $derived(this.planning.boards);
  readonly #pinnedBy = $derived.by<PinnedPieces>(() => {
    const { waiting } = this.pinned;
    const held = this.pins.held.filter((pin) => !waiting.includes(pin));
    return new Map(this.boards.flatMap((one) => (one ? [...pinnedPieces(one.plan.sheets, one.board, held)] : [])));
  });
  /** Boards that have pieces and no plan. */
  readonly without = $derived.by(() => [
    ...(this.asked.problems.some(isError) ? refusedBoards(this.#jobs, this.asked) : []),
    ...this.planning.slots.flatMap(({ state, asked }) => (state === 'none' ? [asked.board] : [])),
  ]);
  /** The worst first. */
  readonly problems = $derived.by(() =>
    bySeverity([
      ...this.#stockDamaged,
      ...this.asked.problems,
      ...this.#keeping.problems,
      ...this.planning.slots.flatMap(({ state, asked }) =>
        state === 'none' ? [whyNoPlan(asked, this.from.session.showing)] : [],
      ),
      ...this.from.look.sheetJobs.flatMap(leftOut),
    ]),
  );
  readonly #stockDamaged = $derived.by((): Problem[] => {
    const damage = this.from.damage();
    if (damage === undefined) return [];
    const message = `Your stock can’t be read, and this plan is made as if it were empty. ${damage}`;
    return [{ code: 'stock-unreadable', severity: 'error', at: 'stock', message }];
  });

  /** @param used undefined: the plan is used no longer, and another may come in its place. */
  use(used: Used | undefined): void {
    this.#used = used;
  }

  choose(change: Partial<SheetChoices>): void {
    this.choices = { ...this.choices, ...change };
    rememberChoices(this.choices);
  }

  /** The piece that is chosen, where it lies now; undefined where none is, or it is no longer asked for. */
  readonly chosenPiece = $derived(this.view.chosen && this.find(this.view.chosen));

  /** A piece that was told before plans changed, where it lies now. */
  find({ board: name, id, nth, pin }: ChosenPiece): { piece: PlacedPiece; place: PiecePlace } | undefined {
    const board = this.boards.findIndex((one) => one?.board === name);
    const all = (this.boards[board]?.plan.sheets ?? []).flatMap(({ pieces }, sheet) =>
      pieces.map((piece, index) => ({ piece, place: { board, sheet, piece: index } })),
    );
    const held = pin && all.find(({ piece }) => this.#pinnedBy.get(piece) === pin);
    return held ?? all.filter(({ piece }) => piece.piece.id === id)[nth];
  }

  /** A piece as it can be told though plans change. */
  told(place: SheetPlace, piece: PlacedPiece): ChosenPiece | undefined {
    const board = this.boards[place.board];
    if (!board) return undefined;
    const alike = board.plan.sheets.flatMap(({ pieces }) => pieces.filter((one) => one.piece.id === piece.piece.id));
    const pin = this.#pinnedBy.get(piece);
    return { board: board.board, id: piece.piece.id, nth: alike.indexOf(piece), ...(pin ? { pin } : {}) };
  }

  choosePiece(place: SheetPlace | undefined, piece: PlacedPiece | undefined): void {
    this.view.chosen = place && piece && this.told(place, piece);
    if (place && this.view.chosen) this.chooseSheet(place);
  }

  chooseSheet(place: SheetPlace): void {
    const { view } = this;
    if (view.sheet.board !== place.board || view.sheet.sheet !== place.sheet) view.step = undefined;
    view.sheet = { board: place.board, sheet: place.sheet };
  }

  /** The sheet whose cuts are listed; the first where that which was chosen is no longer there. */
  readonly shownSheet = $derived.by(() => {
    const { board, sheet } = this.view.sheet;
    const planned = this.boards[board] ?? this.boards.find((one) => one !== undefined);
    const found = planned?.plan.sheets[sheet] ?? planned?.plan.sheets[0];
    if (!planned || !found) return undefined;
    return { planned, sheet: found, place: { board: this.boards.indexOf(planned), sheet: planned.plan.sheets.indexOf(found) } }; // prettier-ignore
  });

  /** Pins a piece; where it can't stay it is said why. @param board counted from 0. */
  pin(board: number, putting: Putting): void {
    const { notice } = this.from;
    const asked = this.planning.slots[board]?.asked;
    if (!asked) return;
    if (this.used) return notice.fail('This plan is used and stays as it is. “Plan anew” makes another.');
    const { number, piece } = putting.piece;
    const put = putPin(asked, this.pins.held, putting, this.#pinnedBy, this.from.session.showing);
    if ('wrong' in put) return notice.fail(put.wrong);
    const told = this.told({ board, sheet: 0 }, putting.piece);
    this.pins.put(put.held, `Pin piece ${number}`);
    const pin = put.held.at(-1);
    this.view.chosen = told && { ...told, ...(pin ? { pin } : {}) };
    this.#justPinned = asked.board;
    notice.say(`Piece ${number}, ${piece.id}, is pinned; the rest is planned anew.`);
  }

  unpin(piece: PlacedPiece): void {
    const own = this.#pinnedBy.get(piece);
    if (!own) return;
    this.pins.put(this.pins.held.filter((pin) => pin !== own), 'Unpin a piece'); // prettier-ignore
    this.from.notice.say(`Piece ${piece.number}, ${piece.piece.id}, is no longer pinned; all is planned anew.`);
  }

  unpinAll(): void {
    if (this.pins.held.length === 0) return;
    this.pins.put([], 'Unpin all');
    this.from.notice.say('Nothing is pinned any more; all is planned anew.');
  }

  /** A pin that leaves no plan is let go again. */
  #refuse(without: readonly BoardAsk[]): boolean {
    const pinned = this.#justPinned;
    this.#justPinned = undefined;
    if (!without.some(({ board }) => board === pinned)) return false;
    this.pins.drop();
    this.from.notice.fail('With the piece there the rest could not be cut; it was let go again.');
    return true;
  }

  /** Only where costs are money can one sheet fewer be worth some. */
  #worth(one: BoardAsk): BoardAsk {
    const { perSheet } = this.choices;
    if (perSheet === undefined || !one.isPriced) return one;
    return { ...one, ask: { ...one.ask, perSheet: inParts(money(String(perSheet)), COST_PLACES) } };
  }
}

/** Of a job whose file can't be read, by name, since nothing in the plan shows that it is missing. */
function leftOut({ title, wrong }: SheetJob): Problem[] {
  if (wrong === undefined) return [];
  const message = `“${title || 'Untitled'}” is not planned: ${wrong}`;
  return [{ code: 'sheet-job-left-out', severity: 'warning', at: 'jobs', message }];
}
