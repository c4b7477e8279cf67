/** Keys on a piece of a sheet: from piece to piece, and taken in the hand over the sheet. */
import type { PlacedPiece } from '../../core/sheets/plan';
import { stepLength } from '../../core/units';
import type { Workbench } from '../workbench';
import type { Lift } from './lift.svelte';
import type { SheetPlace } from './sheets-view.svelte';

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

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

function heldKey({ key, shiftKey }: KeyboardEvent, { bench, lift }: Ground): boolean {
  const arrow = ARROWS[key];
  const step = stepLength(bench.session.showing) * (shiftKey ? 8 : 1);
  if (arrow) lift.nudge({ x: arrow[0] * step, y: arrow[1] * step });
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

function freeKey({ key, target }: KeyboardEvent, { bench, lift, piece, place }: Ground): boolean {
  const { desk, notice } = bench;
  const arrow = ARROWS[key];
  if (arrow && target instanceof Element) focusNext(target, arrow[0] - arrow[1]);
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
