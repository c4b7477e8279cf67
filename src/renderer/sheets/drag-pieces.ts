/** Pointer and wheel on the drawing of sheets: a piece is chosen or dragged, the rest moves the view. */
import type { Point } from '../../core/geometry/box';
import type { PlacedPiece } from '../../core/sheets/plan';
import { stepLength } from '../../core/units';
import type { Workbench } from '../workbench';
import type { Lift } from './lift.svelte';
import type { SheetPlace } from './sheets-view.svelte';

/** A press becomes a drag after this many pixels. */
const SLACK = 3;
/** How near an edge pulls, pixels. */
const REACH = 8;
/** What one turn of the wheel zooms at most. */
const MOST_AT_ONCE = 1.25;

interface Press {
  readonly id: number;
  readonly start: Point;
  last: Point;
  readonly hit: { readonly place: SheetPlace; readonly piece: PlacedPiece; readonly element: SVGElement } | undefined;
  mode: 'press' | 'drag' | 'pan';
}

/** Listens on what scrolls; the answer stops listening. */
export function dragPieces(scroller: HTMLElement, { desk, session }: Workbench, lift: Lift): () => void {
  let press: Press | undefined;
  const stop = new AbortController();
  const on = <K extends keyof HTMLElementEventMap>(type: K, hear: (event: HTMLElementEventMap[K]) => void) =>
    scroller.addEventListener(type, hear, { signal: stop.signal, passive: false });

  on('pointerdown', (event) => {
    const target = event.target instanceof Element ? event.target : undefined;
    const isOnBar = event.offsetX > scroller.clientWidth || event.offsetY > scroller.clientHeight;
    if (!target || target.closest('button') || (target === scroller && isOnBar)) return;
    const hit = event.button === 0 ? pieceAt(target) : undefined;
    if (event.button !== 0 && event.button !== 1) return;
    event.preventDefault();
    const start = { x: event.clientX, y: event.clientY };
    press = { id: event.pointerId, start, last: start, hit, mode: 'press' };
    scroller.setPointerCapture(event.pointerId);
  });
  on('pointermove', (event) => {
    if (press?.id !== event.pointerId) return;
    const at = { x: event.clientX, y: event.clientY };
    if (press.mode === 'press' && Math.hypot(at.x - press.start.x, at.y - press.start.y) > SLACK) {
      press.mode = press.hit ? 'drag' : 'pan';
      if (press.hit) lift.take(press.hit.piece, press.hit.place);
      desk.view.pointed = undefined;
    }
    if (press.mode === 'drag') drag(press, at);
    if (press.mode === 'pan') desk.view.pan({ x: at.x - press.last.x, y: at.y - press.last.y });
    press.last = at;
  });
  on('pointerup', (event) => {
    if (press?.id !== event.pointerId) return;
    const { mode, hit } = press;
    press = undefined;
    if (mode === 'drag') lift.put();
    if (mode !== 'press') return;
    if (!hit) desk.choosePiece(undefined, undefined);
    else {
      desk.choosePiece(hit.place, hit.piece);
      hit.element.focus({ preventScroll: true });
    }
  });
  const cancel = () => {
    if (press?.mode === 'drag') lift.letGo();
    press = undefined;
  };
  on('pointercancel', cancel);
  on('lostpointercapture', cancel);
  // Caught on the way down, so that Escape ends the drag and nothing else.
  window.addEventListener(
    'keydown',
    (event) => {
      if (press?.mode !== 'drag') return;
      if (event.key === 'Escape') cancel();
      else if (event.key.toLowerCase() === 't') lift.turn();
      else return;
      event.stopPropagation();
    },
    { signal: stop.signal, capture: true },
  );
  // One listener for all pieces, since there may be hundreds.
  const point = ({ target }: Event) => {
    if (press?.mode === 'drag') return;
    const hit = target instanceof Element ? pieceAt(target) : undefined;
    desk.view.pointed = hit && { ...hit.place, piece: Number(hit.element.dataset['piece']) };
  };
  on('pointerover', point);
  on('focusin', point);
  on('pointerleave', () => (desk.view.pointed = undefined));
  // A piece that goes out of the drawing loses the focus while that is being drawn, when nothing may be changed yet.
  on('focusout', ({ target }) =>
    queueMicrotask(() => {
      const { activeElement } = document;
      if (activeElement === target) return;
      if (!activeElement?.closest('[data-piece]')) desk.view.pointed = undefined;
      // What was taken in the hand by key is let go where one goes on elsewhere.
      if (press?.mode !== 'drag') lift.letGo();
    }),
  );
  on('wheel', (event) => {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 20 : 1;
    const factor = Math.exp(-event.deltaY * unit * 0.012);
    desk.view.zoom(Math.min(MOST_AT_ONCE, Math.max(1 / MOST_AT_ONCE, factor)), { x: event.clientX, y: event.clientY });
  });
  return () => {
    cancel();
    stop.abort();
  };

  function pieceAt(target: Element): Press['hit'] {
    const element = target.closest<SVGElement>('[data-piece]');
    const place = element && placeOf(element);
    const piece = place && desk.boards[place.board]?.plan.sheets[place.sheet]?.pieces[Number(element.dataset['piece'])];
    return element && place && piece ? { place, piece, element } : undefined;
  }

  /** Keeps the place in it by which the piece is held. */
  function drag({ start, hit }: Press, at: Point): void {
    if (!hit || !lift.now) return;
    const { scale } = desk.view;
    const over = sheetUnder(hit.place.board, at) ?? sheetOf(hit.place);
    const home = sheetOf(hit.place)?.getBoundingClientRect();
    const there = over?.getBoundingClientRect();
    if (!over || !home || !there) return;
    const { box } = hit.piece;
    const held = { x: (start.x - home.left) / scale - box.left, y: (home.bottom - start.y) / scale - box.bottom };
    const corner = { x: (at.x - there.left) / scale - held.x, y: (there.bottom - at.y) / scale - held.y };
    lift.move(placeOf(over).sheet, corner, REACH / scale, stepLength(session.showing));
  }

  function sheetUnder(board: number, { x, y }: Point): Element | undefined {
    return [...scroller.querySelectorAll(`[data-sheet][data-board="${board}"] > svg`)].find((svg) => {
      const { left, right, top, bottom } = svg.getBoundingClientRect();
      return x >= left && x <= right && y >= top && y <= bottom;
    });
  }

  function sheetOf({ board, sheet }: SheetPlace): Element | null {
    return scroller.querySelector(`[data-board="${board}"][data-index="${sheet}"] > svg`);
  }
}

/** Of the sheet that something is drawn on. */
export function placeOf(within: Element): SheetPlace {
  const { board, index } = within.closest<HTMLElement>('[data-sheet]')?.dataset ?? {};
  return { board: Number(board), sheet: Number(index) };
}
