/** The desk on which sheets are planned: what is asked, the best plans so far, what is pinned, and how it all stands. */
import { assert } from '../../core/problem';
import { inParts, money } from '../../core/money';
import type { Problem } from '../../core/problem';
import type { Shelf } from '../../core/shelf/shelf';
import { boardAsks, type BoardAsk, type BoardAsks } from '../../core/sheets/board-asks';
import { COST_PLACES } from '../../core/sheets/board-stock';
import type { PlannerNews } from '../../core/sheets/plan-in-turn';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import { tooFew } from '../../core/sheets/size-problems';
import type { StockSheet } from '../../core/sheets/stock-sheet';
import { pinOf, putPin, withPins, type Putting } from '../edits/pins';
import type { Look } from '../session/look.svelte';
import type { Notice } from '../session/notice.svelte';
import type { Session } from '../session/session.svelte';
import { PinHistory } from './pin-history.svelte';
import { Planner } from './planner';
import { rememberChoices, rememberedChoices, type SheetChoices } from './sheet-choices';
import { SheetsView } from './sheets-view.svelte';

/** A board on the desk. */
export interface Slot {
  readonly asked: BoardAsk;
  /** As it is asked, to be known again. */
  readonly text: string;
  /** The best so far; undefined while there is none, or where there are too few sheets. */
  readonly planned?: PlannedBoard;
  /** True while that is the plan of what was asked before, which stays until there is another. */
  readonly isOld?: boolean;
  /** `ended`: the search ended by itself. `looked`: its time is over. */
  readonly state: 'waiting' | 'looked' | 'ended' | 'none';
  /** ms that were looked for. */
  readonly looked: number;
}

/** Which board is at work, counted from 0, and which part of its time is spent. */
export interface AtWork {
  readonly board: number;
  readonly spent: number;
}

interface Sources {
  readonly session: Session;
  readonly look: Look;
  readonly notice: Notice;
  readonly shelf: () => Shelf;
  readonly stock: () => readonly StockSheet[];
}

const SEED = 1;

export class SheetsDesk {
  readonly view = new SheetsView();
  readonly pins = new PinHistory();
  readonly #planner = new Planner();
  choices = $state.raw<SheetChoices>(rememberedChoices());
  slots = $state.raw<readonly Slot[]>([]);
  /** Undefined while nothing is planned. */
  atWork = $state.raw<AtWork>();
  /** True from a stop by hand until something is planned anew. */
  isStopped = $state(false);
  /** What kept the planner from answering. */
  failure = $state<string>();
  /** While a piece is held in the hand plans don't change under it. */
  #isHeld = false;
  #waiting: (() => void)[] = [];
  /** The board that a pin was last put on, until there is a plan with it. */
  #justPinned: string | undefined;

  constructor(private readonly from: Sources) {}

  /** Why the job on the screen is not planned; undefined where it is. */
  readonly notPlanned = $derived.by(() => {
    const { session } = this.from;
    return session.errors.length > 0 || !session.picture || session.picture.stale
      ? 'The job on the screen has errors; mend them first.'
      : undefined;
  });
  readonly asked = $derived.by<BoardAsks>(() => {
    const { session, look, shelf, stock } = this.from;
    const own = this.notPlanned === undefined && session.picture ? [session.picture] : [];
    const copies = [
      ...own.flatMap((one) => Array.from({ length: look.copies }, () => one)),
      ...look.sheetJobs.flatMap(({ laid, copies }) => (laid ? Array.from({ length: copies }, () => laid) : [])),
    ];
    const { aim, kerf = 0, trim = 0, longestCut, stages, fallouts, upright, remnantPercent } = this.choices;
    const found = boardAsks(copies, {
      stock: stock(),
      shelf: shelf(),
      kerf,
      trim,
      fallouts,
      aim,
      upright: new Set(upright),
      seed: SEED,
      ...(longestCut === undefined ? {} : { longestCut }),
      ...(stages === undefined ? {} : { stages }),
      ...(remnantPercent === undefined ? {} : { remnantWorth: remnantPercent / 100 }),
    });
    return { ...found, asks: found.asks.map((one) => this.#worth(one)) };
  });
  readonly pinned = $derived(withPins(this.asked.asks, this.pins.held));
  readonly boards = $derived(this.slots.map(({ planned }) => planned));
  readonly problems = $derived<readonly Problem[]>([
    ...this.asked.problems,
    ...this.slots.flatMap(({ state, asked }) => (state === 'none' ? [tooFew(asked.board)] : [])),
  ]);

  choose(change: Partial<SheetChoices>): void {
    this.choices = { ...this.choices, ...change };
    rememberChoices(this.choices);
  }

  warm(): void {
    this.#planner.warm();
  }

  /** Plans what is asked; of what was planned already only what is asked otherwise. */
  plan(asks: readonly BoardAsk[], seconds: number): void {
    const each = seconds * 1000;
    const slots = asks.map((asked): Slot => {
      const text = JSON.stringify(asked);
      const before = this.slots.find((slot) => slot.text === text);
      const isEnough = before && (before.state === 'ended' || before.state === 'none' || before.looked >= each);
      if (isEnough) return before;
      if (before) return { ...before, state: 'waiting' };
      const last = this.slots.find((slot) => slot.asked.board === asked.board)?.planned;
      return { asked, text, state: 'waiting', looked: 0, isOld: true, ...(last ? { planned: last } : {}) };
    });
    const isSame = slots.length === this.slots.length && slots.every((slot, index) => slot.text === this.slots[index]?.text); // prettier-ignore
    if (isSame && (this.isStopped || this.atWork) && this.#seconds === seconds) return;
    this.#begin(slots, seconds);
  }

  #seconds = 0;

  /** Looks longer for each board that is not proven. */
  planLonger(): void {
    const seconds = Math.max(this.#seconds, this.choices.seconds) * 4;
    this.#begin(
      this.slots.map((slot) => (slot.state === 'looked' || slot.state === 'waiting' ? { ...slot, state: 'waiting' } : slot)),
      seconds,
    );
  }

  stop(): void {
    this.#planner.stop();
    this.atWork = undefined;
    this.isStopped = true;
  }

  /** Plans don't change from now until the answer is called. */
  hold(): () => void {
    this.#isHeld = true;
    return () => {
      this.#isHeld = false;
      for (const change of this.#waiting.splice(0)) change();
    };
  }

  /** Pins a piece; where it can't stay it is said why. @param board counted from 0. */
  pin(board: number, putting: Putting): void {
    const { notice } = this.from;
    const asked = this.slots[board]?.asked;
    if (!asked) return;
    const { number, piece } = putting.piece;
    const put = putPin(asked, this.pins.held, putting);
    if ('wrong' in put) return notice.fail(put.wrong);
    this.pins.put(put.held, `Pin piece ${number}`);
    this.#justPinned = asked.board;
    notice.say(`Piece ${number}, ${piece.id}, is pinned; the rest is planned anew.`);
  }

  unpin(board: number, piece: Putting['piece']): void {
    const own = pinOf(piece, this.slots[board]?.asked.board ?? '', this.pins.held);
    if (own) this.pins.put(this.pins.held.filter((pin) => pin !== own), 'Unpin a piece'); // prettier-ignore
  }

  unpinAll(): void {
    if (this.pins.held.length > 0) this.pins.put([], 'Unpin all');
  }

  #begin(slots: readonly Slot[], seconds: number): void {
    const each = seconds * 1000;
    this.#planner.stop();
    this.#seconds = seconds;
    this.slots = slots;
    this.isStopped = false;
    this.failure = undefined;
    const places = slots.flatMap(({ state }, index) => (state === 'waiting' ? [index] : []));
    this.atWork = places.length > 0 ? { board: places[0]!, spent: 0 } : undefined;
    if (places.length === 0) return;
    performance.mark('sheets-asked');
    const asks = places.map((place) => slots[place]!.asked);
    this.#planner.start(
      { asks, each },
      (news) => this.#whenFree(() => this.#hear(news, places, each)),
      (why) => {
        this.atWork = undefined;
        this.failure = why;
      },
    );
  }

  #whenFree(change: () => void): void {
    if (this.#isHeld) this.#waiting.push(change);
    else change();
  }

  #hear(news: PlannerNews, places: readonly number[], each: number): void {
    if (news.kind === 'done') {
      this.atWork = undefined;
      return;
    }
    if (news.kind === 'first') return this.#hearFirst(news.boards, places);
    const place = places[news.board];
    assert(place !== undefined, 'the planner tells of boards it was asked for');
    if (news.kind === 'board-done') {
      const state = news.isEnded ? 'ended' : 'looked';
      this.#put(place, { state, looked: each }, news.planned);
    } else {
      this.atWork = { board: place, spent: news.spent };
      if (news.planned) this.#put(place, {}, news.planned);
    }
  }

  #hearFirst(boards: readonly (PlannedBoard | undefined)[], places: readonly number[]): void {
    performance.measure('first sheet plan', 'sheets-asked');
    const without = boards.findIndex((one) => one === undefined);
    const lost = without < 0 ? undefined : this.slots[places[without]!];
    const pinned = this.#justPinned;
    this.#justPinned = undefined;
    if (lost && pinned !== undefined && lost.asked.board === pinned) {
      this.pins.drop();
      this.from.notice.fail('With the piece there the rest could not be cut from edge to edge; it was let go again.');
      return;
    }
    boards.forEach((planned, index) => {
      const { asked, text } = this.slots[places[index]!]!;
      if (planned) this.#put(places[index]!, {}, planned);
      else this.slots = this.slots.with(places[index]!, { asked, text, state: 'none', looked: 0 });
    });
  }

  /** A search that begins again is for some time no better than what is there. */
  #put(place: number, change: Partial<Slot>, planned: PlannedBoard): void {
    const slot = this.slots[place];
    if (!slot) return;
    const isBetter = slot.isOld || !slot.planned || planned.plan.cost <= slot.planned.plan.cost;
    this.slots = this.slots.with(place, { ...slot, ...change, isOld: false, ...(isBetter ? { planned } : {}) });
  }

  /** Only where costs are money can one sheet fewer be worth some. */
  #worth(one: BoardAsk): BoardAsk {
    const { perSheet } = this.choices;
    if (perSheet === undefined || !one.isPriced) return one;
    return { ...one, ask: { ...one.ask, perSheet: inParts(money(String(perSheet)), COST_PLACES) } };
  }
}
