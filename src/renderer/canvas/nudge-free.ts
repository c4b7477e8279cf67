/** Arrow keys on a freely placed window: it moves by the shown step, or by eight of them with Shift. */
import { moveFreeEdits } from '../edits/free-windows';
import type { Picture, Session } from '../session/session.svelte';
import { nudgeOf } from './nudge';

interface Ground {
  readonly session: Session;
  readonly picture: Picture;
}

/** Moves the window at a path; true when the key was for it. */
export function nudgeFree(event: KeyboardEvent, at: string | undefined, { session, picture }: Ground): boolean {
  const by = nudgeOf(event, session.showing);
  const free = session.committed.free?.[Number(/^free\[(\d+)\]$/.exec(at ?? '')?.[1])];
  const window = picture.layout.windows.find((each) => each.at === at);
  const isBare = picture.layout.layers.length === 0;
  if (!by || !free || !window || picture.stale || isBare) return false;
  event.preventDefault();
  event.stopPropagation();
  const corner = { x: window.window.left + by.x, y: window.window.bottom + by.y };
  session.edit(
    moveFreeEdits(free, window.at, window, picture.layout, corner, picture.job.units),
    `Move window ${window.name}`,
    `move ${window.at}`,
  );
  return true;
}
