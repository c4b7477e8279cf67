/** Whether the package goes into the depth there is: the rabbet's, or that of a groove for the frame's back. */
import type { Job } from '../job/job';
import { bestGroove, grooveFits, inFrontOfBack } from './groove-fit';
import { freeIn, verdictOf, type Free, type Room, type Verdict } from './room';
import { each, type Range } from './range';
import type { Stack } from './stack';

export interface Fit {
  /** What has to go into the room. */
  readonly needs: Range;
  /** The rabbet, or of several grooves the nearest that holds it, else that which lacks least. */
  readonly room?: Room;
  readonly free?: Free;
  /** Of a groove, what the frame's depth leaves behind its back. */
  readonly behind?: Free;
  readonly verdict: Verdict;
}

export function fitOf(job: Job, stack: Stack): Fit {
  const { frame, package: held } = job;
  if (frame.build === 'float') return { needs: stack.whole, verdict: 'float frame' };
  if (held.fixing.kind === 'groove' && frame.grooves.length > 0) {
    return {
      needs: inFrontOfBack(stack),
      ...(bestGroove(grooveFits(job, stack)) ?? { verdict: 'depth unknown' as const }),
    };
  }
  if (frame.rabbetDepth === undefined) return { needs: stack.whole, verdict: 'depth unknown' };
  const room: Room = { kind: 'rabbet', name: 'the rabbet', at: 'frame.rabbetDepth', depth: frame.rabbetDepth };
  const free = freeIn(room.depth, stack.whole);
  const verdict = verdictOf(free);
  const clipped = held.fixing.kind === 'offset clips' && verdict !== 'fits';
  return { needs: stack.whole, room, free, verdict: clipped ? 'held behind' : verdict };
}

/** By how much what can't stand out is too thick, mm; nothing where it fits. */
export function squeezeOf({ free, verdict }: Fit): Range | undefined {
  if (!free || (verdict !== 'may not fit' && verdict !== 'does not fit')) return undefined;
  const over: Range = { least: -free.best, nominal: -free.nominal, greatest: -free.worst };
  return each((of) => Math.max(0, of(over)));
}
