/** How the drawing of sheets stands: its scale, what is chosen, pointed at and lit. */
import { tick } from 'svelte';
import type { Point } from '../../core/geometry/box';
import type { HeldPin } from '../edits/pins';
import { LARGEST, SMALLEST } from './fit-sheets';

/** A piece that is told from others though plans change: the nth of those of one name on a board. */
export interface ChosenPiece {
  readonly board: string;
  readonly id: string;
  readonly nth: number;
  /** Of a pinned one: by its pin, whatever becomes of the others. */
  readonly pin?: HeldPin;
}

/** A sheet of the plans, counted from 0. */
export interface SheetPlace {
  readonly board: number;
  readonly sheet: number;
}

/** A piece of them. */
export interface PiecePlace extends SheetPlace {
  /** On its sheet. */
  readonly piece: number;
}

/** So long after the last step it is drawn anew, ms. */
const AT_REST = 120;

export class SheetsView {
  /** What scrolls. */
  scroller: HTMLElement | undefined;
  /** Pixels a millimetre at which all is seen, set by what draws. */
  fitted = $state(0.3);
  #own = $state<number>();
  readonly scale = $derived(this.#own ?? this.fitted);
  /** While it is zoomed the drawing stays as it is and is shown larger or smaller; where it has room for words is found out after. */
  #kept = $state<number>();
  /** Pixels a millimetre at which it is drawn. */
  readonly drawn = $derived(this.#kept ?? this.scale);
  /** What is zoomed in the next frame. */
  #next: { readonly factor: number; readonly at: Point | undefined } | undefined;
  #rest: ReturnType<typeof setTimeout> | undefined;
  chosen = $state.raw<ChosenPiece>();
  /** Whose cuts are listed. */
  sheet = $state.raw<SheetPlace>({ board: 0, sheet: 0 });
  /** The piece whose card is shown, by its place in the plan. */
  pointed = $state.raw<PiecePlace>();
  /** The step of the chosen sheet whose cuts are shown. */
  step = $state<number>();

  fit(): void {
    this.#own = undefined;
  }

  /** Once in a frame, however often it is asked for. @param at stays where it is on the screen, pixels of the window; undefined: the middle. */
  zoom(factor: number, at?: Point): void {
    const isAsked = this.#next !== undefined;
    this.#next = { factor: (this.#next?.factor ?? 1) * factor, at };
    if (!isAsked) requestAnimationFrame(() => this.#zoomNow());
  }

  #zoomNow(): void {
    const { scroller } = this;
    const { factor, at } = this.#next ?? { factor: 1, at: undefined };
    this.#next = undefined;
    const before = this.scale;
    this.#kept ??= before;
    this.#own = Math.min(LARGEST, Math.max(SMALLEST, before * factor));
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => (this.#kept = undefined), AT_REST);
    if (!scroller) return;
    const box = scroller.getBoundingClientRect();
    const point = at ?? { x: box.left + box.width / 2, y: box.top + box.height / 2 };
    const sheet = nearestSheet(scroller, point);
    if (!sheet) return;
    const old = sheet.getBoundingClientRect();
    const grown = this.scale / before;
    void tick().then(() => {
      const now = sheet.getBoundingClientRect();
      scroller.scrollLeft += now.left + (point.x - old.left) * grown - point.x;
      scroller.scrollTop += now.top + (point.y - old.top) * grown - point.y;
    });
  }

  pan(by: Point): void {
    this.scroller?.scrollBy(-by.x, -by.y);
  }
}

function nearestSheet(scroller: HTMLElement, { x, y }: Point): Element | undefined {
  const distance = (element: Element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    return Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
  };
  // Its heading stays as large as it is.
  return [...scroller.querySelectorAll('[data-sheet] > svg')].reduce<Element | undefined>(
    (a, b) => (a && distance(a) <= distance(b) ? a : b),
    undefined,
  );
}
