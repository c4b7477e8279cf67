/** Which rails come from which stick of moulding: as few sticks as there can be, and what is left of them. */
import { cutStock } from './cut-stock';
import { CUTS_OF_RAIL, type FrameMoulding, type Rail } from './moulding';
import type { Wanted } from './stock';

/** One rail of one frame. */
export interface NamedRail {
  /** Which of the frames, from 0. */
  readonly frame: number;
  readonly sides: Rail['sides'];
  /** At the outer edge, long point to long point, mm. */
  readonly length: number;
}

export interface Stick {
  /** The longest first. */
  readonly rails: readonly NamedRail[];
  /** mm: rails, kerfs and rest add up to the stick. */
  readonly kerfs: number;
  readonly rest: number;
  /** True where the rest is worth keeping, and no waste. */
  readonly isKept: boolean;
}

export interface SticksPlan {
  readonly stick: number;
  /** Of one cut, mm; each rail takes two. */
  readonly kerf: number;
  readonly cuts: number;
  /** The fullest first. */
  readonly sticks: readonly Stick[];
  /** No plan needs fewer sticks; where it is as many as there are, that is proven. */
  readonly atLeast: number;
  /** All rails end to end, all kerfs, all ends that are too short for use, and all that is kept, mm: they add up to the sticks. */
  readonly rails: number;
  readonly kerfs: number;
  readonly ends: number;
  readonly kept: number;
  /** A rest is kept from here on: the shortest of the rails could be cut from it, with its two cuts. Our rule. */
  readonly keptFrom: number;
}

/** A stick's length in whole numbers of these is exact far beyond a saw, mm. */
const GRAIN = 1e-6;
/** A stick may be longer by this, so that what fills it to the last bit is not refused, mm. */
const LAST_BITS = 1e-4;

/** The four rails of each frame, in the frames' order. */
export function railsOf(frames: readonly Pick<FrameMoulding, 'rails'>[]): NamedRail[] {
  return frames.flatMap(({ rails }, frame) =>
    rails.flatMap(({ sides, count, outside }) =>
      Array.from({ length: count }, () => ({ frame, sides, length: outside })),
    ),
  );
}

/** Rails that no stick is long enough for, with their two cuts. */
export function railsTooLong(rails: readonly NamedRail[], stick: number, kerf: number): NamedRail[] {
  return rails.filter(({ length }) => length + CUTS_OF_RAIL * kerf > stick + LAST_BITS);
}

/** Undefined where a rail is too long for the stick. Equal asks have equal plans. */
export function planSticks(rails: readonly NamedRail[], stick: number, kerf: number): SticksPlan | undefined {
  if (railsTooLong(rails, stick, kerf).length > 0) return undefined;
  const whole = Math.floor((stick + LAST_BITS) / GRAIN);
  const queues = alike(rails, kerf, whole);
  const wanted = queues.map(({ size, rails: { length: count } }): Wanted => ({ size, count }));
  const { patterns, atLeast } = cutStock({ stick: whole, wanted });
  const taken = queues.map(() => 0);
  const keptFrom = Math.min(...rails.map(({ length }) => length)) + CUTS_OF_RAIL * kerf;
  const sticks = patterns.map((pattern): Stick => {
    const from = pattern.flatMap((count, index) => {
      const start = taken[index] ?? 0;
      taken[index] = start + count;
      return queues[index]?.rails.slice(start, start + count) ?? [];
    });
    const kerfs = from.length * CUTS_OF_RAIL * kerf;
    const rest = Math.max(0, stick - kerfs - sum(from.map(({ length }) => length)));
    return { rails: from, kerfs, rest, isKept: rest >= keptFrom - LAST_BITS };
  });
  return {
    stick,
    kerf,
    cuts: rails.length * CUTS_OF_RAIL,
    sticks,
    atLeast,
    rails: sum(rails.map(({ length }) => length)),
    kerfs: sum(sticks.map(({ kerfs }) => kerfs)),
    ends: sum(sticks.map(({ rest, isKept }) => (isKept ? 0 : rest))),
    kept: sum(sticks.map(({ rest, isKept }) => (isKept ? rest : 0))),
    keptFrom,
  };
}

/** Rails of one length together, the longest first. */
function alike(
  rails: readonly NamedRail[],
  kerf: number,
  longest: number,
): { readonly size: number; readonly rails: readonly NamedRail[] }[] {
  const queues = new Map<number, NamedRail[]>();
  for (const rail of rails) {
    const size = Math.min(longest, Math.round((rail.length + CUTS_OF_RAIL * kerf) / GRAIN));
    const queue = queues.get(size);
    if (queue) queue.push(rail);
    else queues.set(size, [rail]);
  }
  return [...queues].map(([size, rails]) => ({ size, rails })).sort((a, b) => b.size - a.size);
}

function sum(lengths: readonly number[]): number {
  return lengths.reduce((all, one) => all + one, 0);
}
