/** Keys on a piece of a sheet: from piece to piece, and taken in the hand over the sheet. */
import type { PlacedPiece } from '../../core/sheets/plan';
import { arrowOf, nudgeOf } from '../canvas/nudge';
import type { Workbench } from '../workbench';
import type { Lift } from './lift.svelte';
import type { SheetPlace } from './sheets-view.svelte';

interface Ground {
  readonly bench: Workbench;
  readonly lift: Lift;
  readonly board: string;
  readonly piece: PlacedPiece;
  readonly place: SheetPlace;
}

export function hearPieceKeys(event: KeyboardEvent, ground: Ground): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const isHeld = ground.lift.now?.piece === ground.piece;
  if (!(isHeld ? heldKey(event, ground) : freeKey(event, ground))) return;
  event.preventDefault();
  event.stopPropagation();
}

function heldKey(event: KeyboardEvent, { bench, lift }: Ground): boolean {
  const { key } = event;
  const by = nudgeOf(event, bench.session.showing);
  if (by) lift.nudge(by);
  else if (key === 'PageUp') lift.pass(-1);
  else if (key === 'PageDown') lift.pass(1);
  else if (key === 't' || key === 'T') lift.turn();
  else if (key === 'Enter' || key === ' ') lift.put();
  else if (key === 'Escape') {
    lift.letGo();
    bench.notice.say('The piece lies where it was.');
  } else return false;
  return true;
}

function freeKey(event: KeyboardEvent, { bench, lift, piece, place }: Ground): boolean {
  const { desk, notice } = bench;
  const { key, target } = event;
  const arrow = arrowOf(event);
  if (arrow && target instanceof Element) focusNext(target, arrow.x - arrow.y);
  else if (key === 'Enter' || key === ' ') {
    desk.choosePiece(place, piece);
    lift.take(piece, place);
    notice.say(
      `Piece ${piece.number} is in the hand. Arrow keys move it, with Shift further; Page up and Page down to another sheet; T turns it. Enter pins it, Escape lets go.`,
    );
  } else if (key === 'Delete' || key === 'Backspace') desk.unpin(piece);
  else return false;
  return true;
}

/** The piece after or before it in the order of the plan. */
function focusNext(from: Element, direction: number): void {
  const all = [...(from.closest('[data-sheets]')?.querySelectorAll<SVGElement>('[data-piece]') ?? [])];
  const at = all.findIndex((one) => one === from);
  const next = all[at + (direction > 0 ? 1 : -1)];
  next?.focus();
  next?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
}
