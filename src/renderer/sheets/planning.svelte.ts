/** Boards on their way to plans: what each is asked, its best plan so far, and which is at work. */
import { assert } from '../../core/problem';
import type { BoardAsk } from '../../core/sheets/board-asks';
import type { PlannerNews } from '../../core/sheets/plan-in-turn';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import { Planner } from './planner';

export interface Slot {
  readonly asked: BoardAsk;
  /** What is asked as a text, to be known again. */
  readonly text: string;
  /** The best so far; undefined while there is none, or where there are too few sheets. */
  readonly planned?: PlannedBoard;
  /** True while that is the plan of what was asked before, which stays until there is another. */
  readonly isOld?: boolean;
  /** `ended`: the search ended by itself. `looked`: its time is over. `none`: there is no plan. */
  readonly state: 'waiting' | 'looked' | 'ended' | 'none';
  /** ms that were looked for. */
  readonly looked: number;
}

/** Which board is at work, counted from 0, and which part of its time is spent. */
export interface AtWork {
  readonly board: number;
  readonly spent: number;
}

/** Of all boards that are planned now. */
export interface Progress {
  /** Which part of their time is spent. */
  readonly part: number;
  /** s that are left at the most: of what is proven before, the rest is not needed. */
  readonly left: number;
}

/** How many times longer is looked when asked to. */
const LONGER = 4;

export class Planning {
  readonly #planner = new Planner();
  slots = $state.raw<readonly Slot[]>([]);
  readonly boards = $derived(this.slots.map(({ planned }) => planned));
  /** Undefined while nothing is planned. */
  atWork = $state.raw<AtWork>();
  /** Boards that are planned now, in their order. */
  #places = $state.raw<readonly number[]>([]);
  readonly progress = $derived.by<Progress | undefined>(() => {
    const { atWork } = this;
    const places = this.#places.filter((place) => this.slots[place]?.state !== 'none');
    if (!atWork || places.length === 0) return undefined;
    const gone = places.filter((place) => place < atWork.board).length + atWork.spent;
    return { part: gone / places.length, left: Math.ceil((places.length - gone) * this.#seconds) };
  });
  /** True from a stop by hand until something is planned anew. */
  isStopped = $state(false);
  /** What kept the planner from answering. */
  failure = $state<string>();
  /** Plans don't change while it is held. */
  #isHeld = false;
  #waiting: (() => void)[] = [];
  #seconds = 0;

  /** @param refuse told of the boards without a plan at each first answer; true: something else is asked instead, and this is not told. */
  constructor(private readonly refuse: (without: readonly BoardAsk[]) => boolean) {}

  /** Gets ready, so that the first plan is there at once. */
  warm(): void {
    this.#planner.warm();
  }

  /** Plans what is asked; of what was planned already only what is asked otherwise. */
  plan(asks: readonly BoardAsk[], seconds: number): void {
    const slots = asks.map((asked): Slot => {
      const text = JSON.stringify(asked);
      const before = this.slots.find((slot) => slot.text === text);
      const isEnough =
        before && (before.state === 'ended' || before.state === 'none' || before.looked >= seconds * 1000);
      if (before) return isEnough ? before : { ...before, state: 'waiting' };
      const last = this.slots.find((slot) => slot.asked.board === asked.board)?.planned;
      return { asked, text, state: 'waiting', looked: 0, isOld: true, ...(last ? { planned: last } : {}) };
    });
    const isSame =
      slots.length === this.slots.length && slots.every(({ text }, index) => text === this.slots[index]?.text);
    if (isSame && (this.isStopped || this.atWork) && this.#seconds === seconds) return;
    this.#begin(slots, seconds);
  }

  /** Looks longer for each board whose search has not ended. */
  planLonger(): void {
    const slots = this.slots.map((slot): Slot => (slot.state === 'looked' ? { ...slot, state: 'waiting' } : slot));
    this.#begin(slots, this.isStopped ? this.#seconds : this.#seconds * LONGER);
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

  #begin(slots: readonly Slot[], seconds: number): void {
    const each = seconds * 1000;
    this.#planner.stop();
    this.#waiting = [];
    this.#seconds = seconds;
    this.slots = slots;
    this.isStopped = false;
    this.failure = undefined;
    const places = slots.flatMap(({ state }, index) => (state === 'waiting' ? [index] : []));
    this.#places = places;
    const [first] = places;
    this.atWork = first === undefined ? undefined : { board: first, spent: 0 };
    if (first === undefined) return;
    performance.mark('sheets-asked');
    this.#planner.start(
      { asks: places.map((place) => slots[place]!.asked), each },
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
    assert(place !== undefined, 'the planner tells of boards that it was asked for');
    if (news.kind === 'board-done') {
      this.#put(place, { state: news.isEnded ? 'ended' : 'looked', looked: each }, news.planned);
    } else {
      this.atWork = { board: place, spent: news.spent };
      if (news.planned) this.#put(place, {}, news.planned);
    }
  }

  #hearFirst(boards: readonly (PlannedBoard | undefined)[], places: readonly number[]): void {
    performance.measure('first sheet plan', 'sheets-asked');
    if (this.refuse(boards.flatMap((planned, index) => (planned ? [] : [this.slots[places[index]!]!.asked])))) return;
    boards.forEach((planned, index) => {
      const place = places[index]!;
      const { asked, text } = this.slots[place]!;
      if (planned) this.#put(place, {}, planned);
      else this.slots = this.slots.with(place, { asked, text, state: 'none', looked: 0 });
    });
  }

  /** A search that begins again is for some time no better than what is there. */
  #put(place: number, change: Partial<Slot>, planned: PlannedBoard): void {
    const slot = this.slots[place];
    if (!slot) return;
    const before = slot.isOld ? undefined : slot.planned?.plan;
    const isBetter = !before || planned.plan.rounds >= before.rounds || planned.plan.cost < before.cost;
    this.slots = this.slots.with(place, { ...slot, ...change, isOld: false, ...(isBetter ? { planned } : {}) });
  }
}
