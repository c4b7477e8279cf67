/** What a job can't say and still decides how long a picture lasts: the light it hangs in, and how its hinges are made. */
import type { Size } from '../geometry/box';
import { MM_PER_INCH } from '../units';
import { isLarger } from './air';
import { SOURCES, type Source } from './sources';
import { isPainting, type Subject } from './subject';

export interface Advice {
  readonly topic: 'light' | 'hinges';
  readonly words: string;
  readonly sources: readonly Source[];
}

/** Illuminance, lux, and dose in a year, lux hours (Science Museum of Minnesota). */
export const LIGHT = {
  'very sensitive': { lux: 50, dose: 12_000 },
  sensitive: { lux: 150, dose: 100_000 },
} as const;

/** Hours in a year in which the light uses up its dose. */
export function hoursOfLight({ lux, dose }: { readonly lux: number; readonly dose: number }): number {
  return dose / lux;
}

export function adviceFor(subject: Subject): Advice[] {
  return [...lightAdvice(subject), ...(subject.hasPaper ? hingeAdvice(subject) : [])];
}

function lightAdvice({ held, hasPaper }: Subject): Advice[] {
  const paintings = held.some(({ picture }) => isPainting(picture));
  return [...(hasPaper ? paperLight() : []), ...(paintings ? [dose('sensitive', 'Paintings')] : [])].map((one) => ({
    topic: 'light',
    ...one,
  }));
}

type Told = Pick<Advice, 'words' | 'sources'>;

function paperLight(): Told[] {
  return [
    dose('very sensitive', 'Paper, photographs and cloth'),
    {
      words:
        'Ultraviolet at most 75 µW/lm, better 0 to 10; no more than three months on show at a time. What light has done adds up and can’t be undone',
      sources: [SOURCES.texas],
    },
    {
      words:
        'A UV filter is no cure: to colours that fade, ultraviolet does less than half of the harm, often a tenth. Less light and shorter hours do more',
      sources: [SOURCES.cciLight],
    },
  ];
}

function dose(kind: keyof typeof LIGHT, what: string): Told {
  const light = LIGHT[kind];
  const hours = Math.floor(hoursOfLight(light));
  const days = Math.floor(hours / 8);
  return {
    words: `${what}: at most ${light.lux} lux, and ${thousands(light.dose)} lux hours in a year, which is ${hours} hours at ${light.lux} lux, or ${days} days of eight hours`,
    sources: [SOURCES.minnesota],
  };
}

function thousands(value: number): string {
  return String(value).replace(/(\d)(?=(?:\d{3})+$)/g, '$1,');
}

/** Common practice, no source: from here on, mm, a sheet takes two people and more than two hinges. */
const OVERSIZE: Size = { width: 30 * MM_PER_INCH, height: 40 * MM_PER_INCH };

function hingeAdvice({ held }: Subject): Advice[] {
  const large = held.some(({ picture }) => isLarger(picture.sheet, OVERSIZE));
  const told: Told[] = [
    {
      words:
        'At least two hinges at the upper edge, of paper lighter than the picture’s own; more and larger ones with its weight. T-hinges hold more than V-hinges, which are for what floats. Only someone who has learned it should paste them',
      sources: [SOURCES.lcHinges],
    },
    ...(large
      ? [
          {
            words:
              'A published example for a very large sheet: a map of 5 x 5 ft by eight hinges of 4 x 4 in, four above and four below, at 6 and 22 in from each edge',
            sources: [SOURCES.oversize],
          },
        ]
      : []),
  ];
  return told.map((one) => ({ topic: 'hinges', ...one }));
}
