/** Keeps the focus on its piece, or on the nearest, while plans change under it. */
import { untrack } from 'svelte';
import { placeOf } from './drag-pieces';
import type { SheetsDesk } from './sheets-desk.svelte';
import type { ChosenPiece, PiecePlace } from './sheets-view.svelte';

interface Focused {
  readonly which: ChosenPiece;
  readonly place: PiecePlace;
}

/** Listens on what holds the drawing; the answer stops listening. Called where effects can be made. */
export function keepFocus(scroller: HTMLElement, desk: SheetsDesk): () => void {
  let focused: Focused | undefined;
  const stop = new AbortController();
  const { signal } = stop;

  scroller.addEventListener('focusin', ({ target }) => (focused = focusedOn(target)), { signal });
  scroller.addEventListener(
    'focusout',
    ({ target }) =>
      // Where its piece is no longer drawn it was not the user who took it away.
      queueMicrotask(() => {
        if (target instanceof Element && target.isConnected && !scroller.contains(document.activeElement))
          focused = undefined;
      }),
    { signal },
  );
  $effect(() => {
    void desk.boards;
    untrack(() => focused && giveBack(focused));
  });
  return () => stop.abort();

  function focusedOn(target: EventTarget | null): Focused | undefined {
    const element = target instanceof Element ? target.closest<SVGElement>('[data-piece]') : undefined;
    if (!element) return undefined;
    const place = { ...placeOf(element), piece: Number(element.dataset['piece']) };
    const piece = desk.boards[place.board]?.plan.sheets[place.sheet]?.pieces[place.piece];
    const which = piece && desk.told(place, piece);
    return which && { which, place };
  }

  function giveBack({ which, place }: Focused): void {
    const { activeElement } = document;
    if (activeElement !== document.body && !activeElement?.closest('[data-piece]')) return;
    const { chosen } = desk.view;
    // What was pinned meanwhile is told by its pin.
    const isChosen = chosen?.board === which.board && chosen.id === which.id && chosen.nth === which.nth;
    const there = desk.find(isChosen ? chosen : which)?.place ?? nearest(place);
    const element = (there && elementAt(there)) ?? scroller;
    if (element !== activeElement) element.focus({ preventScroll: true });
    else focused = focusedOn(element);
  }

  function nearest({ board, sheet, piece }: PiecePlace): PiecePlace | undefined {
    const sheets = desk.boards[board]?.plan.sheets ?? [];
    const near = Math.min(sheet, sheets.length - 1);
    const last = (sheets[near]?.pieces.length ?? 0) - 1;
    return last < 0 ? undefined : { board, sheet: near, piece: Math.min(piece, last) };
  }

  function elementAt({ board, sheet, piece }: PiecePlace): SVGElement | null {
    return scroller.querySelector(`[data-board="${board}"][data-index="${sheet}"] [data-piece="${piece}"]`);
  }
}
