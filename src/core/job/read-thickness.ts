/** Reads how thick a thing is, and between what its thickness lies. */
import type { Thickness } from './package';
import type { Reader } from './reader';
import { toleranceOf, variesAs, type Material } from './tolerances';
import type { WrittenLength } from './written';

interface WrittenThickness {
  readonly thickness?: WrittenLength | undefined;
  readonly thinnest?: WrittenLength | undefined;
  readonly thickest?: WrittenLength | undefined;
}

/** What is measured, in the words of messages and in what it is made of. */
interface Measured {
  /** Path of the group that the thickness stands in. */
  readonly at: string;
  /** "the glazing". */
  readonly what: string;
  /** Of what is known to vary. */
  readonly material?: Material;
}

/** Nothing in a frame is thicker, mm. */
const THICKEST = 300;

/** @param mayBeNothing true where 0 is allowed. */
export function readThickness(
  written: WrittenThickness,
  measured: Measured,
  fallback: number,
  reader: Reader,
  mayBeNothing = false,
): Thickness {
  const nominal = reader.length(
    written.thickness,
    `${measured.at}.thickness`,
    { name: `Thickness of ${measured.what}`, least: 0, above: !mayBeNothing, most: THICKEST },
    fallback,
  );
  return { nominal, ...readRange(written, measured, nominal, reader) };
}

/** The range of a thing whose nominal thickness is known; what the job does not say is as usual for the material. */
export function readRange(
  { thinnest, thickest }: WrittenThickness,
  { at, what, material }: Measured,
  nominal: number,
  reader: Reader,
): Omit<Thickness, 'nominal'> {
  const usual = material === undefined ? 0 : toleranceOf(material, nominal);
  const least = reader.length(
    thinnest,
    `${at}.thinnest`,
    { name: `Least thickness of ${what}`, least: 0, most: nominal },
    Math.max(0, nominal - usual),
  );
  const greatest = reader.length(
    thickest,
    `${at}.thickest`,
    { name: `Greatest thickness of ${what}`, least: nominal, most: THICKEST },
    nominal + usual,
  );
  return { least, greatest, varies: variesAs(thinnest !== undefined || thickest !== undefined, material) };
}
