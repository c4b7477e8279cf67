/** Whether the package goes into the depth there is: the rabbet's, or that of a groove for the frame's back. */
import type { Job } from '../job/job';
import { each, exactly, less, SLACK, sum, type Range } from './range';
import type { ItemKind, Stack } from './stack';

/** A depth that something has to go into, from the back of the lip. */
export interface Room {
  readonly kind: 'rabbet' | 'groove';
  /** `the rabbet`, `groove 2`. */
  readonly name: string;
  readonly at: string;
  readonly depth: number;
}

/** Room less what goes into it, mm; negative where it does not fit. */
export interface Free {
  /** With all at its thinnest. */
  readonly best: number;
  readonly nominal: number;
  /** With all at its thickest. */
  readonly worst: number;
}

/** `may not fit`: as named it does, at its thickest it doesn't. `held behind`: it stands out, and clips hold it there. */
export type Verdict = 'fits' | 'may not fit' | 'does not fit' | 'held behind' | 'depth unknown' | 'float frame';

export interface Fit {
  /** What has to go into the room. */
  readonly needs: Range;
  /** The rabbet, or of several grooves the nearest that holds it, else the furthest back. */
  readonly room?: Room;
  readonly free?: Free;
  readonly verdict: Verdict;
}

export interface GrooveFit {
  readonly room: Room;
  readonly free: Free;
  readonly verdict: Verdict;
}

export function fitOf(job: Job, stack: Stack): Fit {
  const { frame, package: held } = job;
  if (frame.build === 'float') return { needs: stack.whole, verdict: 'float frame' };
  if (held.fixing.kind === 'groove' && frame.grooves.length > 0) return fitInGrooves(job, stack);
  if (frame.rabbetDepth === undefined) return { needs: stack.whole, verdict: 'depth unknown' };
  const room: Room = { kind: 'rabbet', name: 'the rabbet', at: 'frame.rabbetDepth', depth: frame.rabbetDepth };
  const free = freeIn(room, stack.whole);
  const verdict = verdictOf(free);
  const clipped = held.fixing.kind === 'offset clips' && verdict !== 'fits';
  return { needs: stack.whole, room, free, verdict: clipped ? 'held behind' : verdict };
}

/** In each groove slides the back: what lies in front of that has to go before the groove. */
export function grooveFits(job: Job, stack: Stack): GrooveFit[] {
  const needs = inFrontOfBack(stack);
  return job.frame.grooves.map((depth, index) => {
    const room: Room = { kind: 'groove', name: `groove ${index + 1}`, at: `frame.grooves[${index}]`, depth };
    const free = freeIn(room, needs);
    return { room, free, verdict: verdictOf(free) };
  });
}

const BEHIND: readonly ItemKind[] = ['backing', 'room for fixing'];

export function inFrontOfBack({ items }: Stack): Range {
  return sum(items.filter(({ kind }) => !BEHIND.includes(kind)).map(({ adds }) => adds));
}

function fitInGrooves(job: Job, stack: Stack): Fit {
  const grooves = grooveFits(job, stack);
  const best =
    grooves.find(({ verdict }) => verdict === 'fits') ??
    grooves.find(({ verdict }) => verdict === 'may not fit') ??
    grooves.at(-1);
  return { needs: inFrontOfBack(stack), ...(best ?? { verdict: 'depth unknown' as const }) };
}

function freeIn({ depth }: Room, needs: Range): Free {
  const { least, nominal, greatest } = less(exactly(depth), needs);
  return { best: greatest, nominal, worst: least };
}

function verdictOf({ nominal, worst }: Free): Verdict {
  if (worst >= -SLACK) return 'fits';
  return nominal >= -SLACK ? 'may not fit' : 'does not fit';
}

/** By how much what can't stand out is too thick, mm; nothing where it fits. */
export function squeezeOf({ free, verdict }: Fit): Range | undefined {
  if (!free || (verdict !== 'may not fit' && verdict !== 'does not fit')) return undefined;
  const over: Range = { least: -free.best, nominal: -free.nominal, greatest: -free.worst };
  return each((of) => Math.max(0, of(over)));
}
