/** Reads how thick a thing is, and between what its thickness lies. */
import type { Thickness } from './package';
import type { Reader } from './reader';
import type { WrittenLength } from './written';

interface WrittenThickness {
  readonly thickness?: WrittenLength | undefined;
  readonly thinnest?: WrittenLength | undefined;
  readonly thickest?: WrittenLength | undefined;
}

/** Nothing in a frame is thicker, mm. */
const THICKEST = 300;

/**
 * What is not said is the nominal thickness itself.
 *
 * @param what as messages call it: "the glazing".
 * @param mayBeNothing true where 0 is allowed.
 */
export function readThickness(
  written: WrittenThickness,
  at: string,
  what: string,
  fallback: number,
  reader: Reader,
  mayBeNothing = false,
): Thickness {
  const nominal = reader.length(
    written.thickness,
    `${at}.thickness`,
    { name: `Thickness of ${what}`, least: 0, above: !mayBeNothing, most: THICKEST },
    fallback,
  );
  return { nominal, ...readRange(written, at, what, nominal, reader) };
}

/** The range of a thing whose nominal thickness is known. */
export function readRange(
  { thinnest, thickest }: WrittenThickness,
  at: string,
  what: string,
  nominal: number,
  reader: Reader,
): { readonly least: number; readonly greatest: number } {
  const least = reader.length(
    thinnest,
    `${at}.thinnest`,
    { name: `Least thickness of ${what}`, least: 0, most: nominal },
    nominal,
  );
  const greatest = reader.length(
    thickest,
    `${at}.thickest`,
    { name: `Greatest thickness of ${what}`, least: nominal, most: THICKEST },
    nominal,
  );
  return { least, greatest };
}
