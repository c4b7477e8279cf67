/** Grooves for a frame's own back: what lies before the back has to go in front of one, and the back itself within the frame. */
import type { Job } from '../job/job';
import { freeIn, verdictOf, type Free, type Room, type Verdict } from './room';
import { each, SLACK, sum, type Range } from './range';
import type { ItemKind, Stack } from './stack';

export interface GrooveFit {
  readonly room: Room;
  /** Before the back. */
  readonly free: Free;
  /**
   * Of the rabbet's depth behind the back, mm: the wood that holds it there, so that nothing left is as bad as less than
   * that. Undefined: the rabbet's depth or the back's thickness is not known.
   */
  readonly behind?: Free;
  readonly verdict: Verdict;
}

const BEHIND: readonly ItemKind[] = ['backing', 'room for fixing'];

export function inFrontOfBack({ items }: Stack): Range {
  return sum(items.filter(({ kind }) => !BEHIND.includes(kind)).map(({ adds }) => adds));
}

/** Of every groove, the nearest first. */
export function grooveFits(job: Job, stack: Stack): GrooveFit[] {
  const needs = inFrontOfBack(stack);
  return job.frame.grooves.map((depth, index) => {
    const room: Room = { kind: 'groove', name: `groove ${index + 1}`, at: `frame.grooves[${index}]`, depth };
    const free = freeIn(depth, needs);
    const behind = leftBehind(job, depth);
    return { room, free, ...(behind ? { behind } : {}), verdict: worse(verdictOf(free), behind && heldAs(behind)) };
  });
}

/** The nearest that holds it; else that which may; else that which lacks least. */
export function bestGroove(grooves: readonly GrooveFit[]): GrooveFit | undefined {
  return (
    grooves.find(({ verdict }) => verdict === 'fits') ??
    grooves.find(({ verdict }) => verdict === 'may not fit') ??
    grooves.toSorted((a, b) => leastLeft(b) - leastLeft(a))[0]
  );
}

/** What is left at the tighter of both places, with all at its thickest. */
export function leastLeft({ free, behind }: Pick<GrooveFit, 'behind' | 'free'>): number {
  return Math.min(free.worst, behind?.worst ?? Infinity);
}

function leftBehind({ frame: { rabbetDepth }, package: { backing } }: Job, depth: number): Free | undefined {
  if (rabbetDepth === undefined || !backing) return undefined;
  return freeIn(
    rabbetDepth,
    each((of) => depth + of(backing.thickness)),
  );
}

/** A back that ends where the frame ends has nothing behind it. */
function heldAs({ best, nominal, worst }: Free): Verdict {
  return verdictOf({ best, nominal: nominal - 2 * SLACK, worst: worst - 2 * SLACK });
}

const RANK: readonly Verdict[] = ['fits', 'may not fit', 'does not fit'];

function worse(one: Verdict, other: Verdict | undefined): Verdict {
  return other !== undefined && RANK.indexOf(other) > RANK.indexOf(one) ? other : one;
}
