/** Arrow keys on a freely placed window: it moves by the shown step, or by eight of them with Shift. */
import { stepLength } from '../../core/units';
import { moveFreeEdits } from '../edits/free-windows';
import type { Picture, Session } from '../session/session.svelte';

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

interface Ground {
  readonly session: Session;
  readonly picture: Picture;
}

/** Moves the window at a path; true when the key was for it. */
export function nudgeFree(event: KeyboardEvent, at: string | undefined, { session, picture }: Ground): boolean {
  const arrow = ARROWS[event.key];
  const free = session.committed.free?.[Number(/^free\[(\d+)\]$/.exec(at ?? '')?.[1])];
  const window = picture.layout.windows.find((each) => each.at === at);
  const isBare = picture.layout.layers.length === 0;
  if (!arrow || !free || !window || picture.stale || isBare) return false;
  event.preventDefault();
  event.stopPropagation();
  const step = stepLength(session.showing) * (event.shiftKey ? 8 : 1);
  const corner = { x: window.window.left + arrow[0] * step, y: window.window.bottom + arrow[1] * step };
  session.edit(
    moveFreeEdits(free, window.at, window, picture.layout, corner, picture.job.units),
    `Move window ${window.name}`,
    `move ${window.at}`,
  );
  return true;
}
