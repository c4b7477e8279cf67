/** Reads from which edges something is held, and how far: one across and one up, or in the middle. */
import type { PerSide, Side } from '../geometry/box';
import type { Reader } from './reader';
import type { WrittenPlace } from './written-lengths';

interface Held {
  /** What is held, in a sentence. */
  readonly what: string;
  /** Of a distance; undefined where it may be negative. */
  readonly least?: number;
}

/** mm; sides that say nothing are left out. */
export function readPlace(written: WrittenPlace, at: string, { what, least }: Held, reader: Reader): Partial<PerSide> {
  for (const [one, other] of [
    ['left', 'right'],
    ['top', 'bottom'],
  ] as const) {
    if (written[one] === undefined || written[other] === undefined) continue;
    reader.say({
      code: 'place-said-twice',
      at,
      message: `${what} is held from ${one} and ${other} at once; its size is its own, so keep one of them.`,
      remedy: `take away "${one}" or "${other}"`,
      fix: { label: `Take away the ${other}`, edits: [{ at: `${at}.${other}`, value: undefined }] },
    });
  }
  const sides: readonly Side[] = ['left', 'right', 'top', 'bottom'];
  const held = sides.flatMap((side) => {
    const limits = { name: `Distance from the ${side}`, ...(least === undefined ? {} : { least }) };
    const length = reader.optionalLength(written[side], `${at}.${side}`, limits);
    return length === undefined ? [] : [[side, length] as const];
  });
  return Object.fromEntries(held);
}
