/** What guidance asks of a board that lies in a package: what it is made of, how acid it is, its reserve, its thickness. */
import type { Quality } from '../job/package';
import type { Show } from '../layout/show';
import type { Demand } from './judgement';
import { SOURCES, type Source } from './sources';

/** The least thickness that is published for a 4-ply board, mm: 0.045 in (FACTS cl. 10.01, quoted). */
export const FOUR_PLY = (45 * 254) / 10_000;

/** What the pictures in a package ask beyond what every paper asks. */
export interface BoardNeeds {
  /** It holds photographs. */
  readonly photo: boolean;
  /** A cyanotype lies against it. */
  readonly neutral: boolean;
}

interface PhRange {
  readonly least: number;
  readonly greatest: number;
}

/**
 * Of board without a reserve, and of all that lies against a cyanotype. CCI Notes 11/5: pH 7; LC 200-201-16: "about
 * 7.0". Half a unit either way is our reading of "about".
 */
const NEUTRAL: PhRange = { least: 6.5, greatest: 7.5 };
/** Of all other board. LC guide: 7 to 8.5; CCI Notes 11/5: 7.5 to 8.5; LC 300-313-16: 8.0 to 9.5; ISO 18902 (from memory): 7 to 9.5. */
const BUFFERED: PhRange = { least: 7, greatest: 9.5 };
/** What is not asked, but harms no more than it: ISO 9706, which is for paper, and AIC (quoted) go up to 10. */
const TOO_ALKALINE = 10;

/** The one range that is asked of a board. */
function phAsked({ reserve: buffer }: Quality, needsNeutral = false): PhRange {
  return needsNeutral || buffer === 0 ? NEUTRAL : BUFFERED;
}

/** `7 to 9.5`: the pH that is asked of a board. */
export function phAskedText(quality: Quality, needsNeutral: boolean): string {
  return rangeText(phAsked(quality, needsNeutral));
}

function rangeText({ least, greatest }: PhRange): string {
  return `${least} to ${greatest}`;
}
/** Percent of calcium carbonate: LC 300-313-16; ISO 9706 and AIC ask 2 at least, CCAHA recommends 3.5. */
const RESERVE = { least: 2, greatest: 5 } as const;

export function boardDemands(quality: Quality, needs: BoardNeeds, thinnest: number | undefined, show: Show): Demand[] {
  return [
    fibreSaid(quality),
    notAcid(quality, needs.neutral),
    ...pulpBuffered(quality),
    ...pulpPurified(quality),
    ...(needs.neutral ? [neutral(quality)] : [...phWithin(quality), reserve(quality)]),
    ...(needs.photo ? [photoTested(quality)] : []),
    ...(thinnest === undefined ? [] : [fourPly(thinnest, show)]),
  ];
}

function fibreSaid({ fibre }: Quality): Demand {
  return {
    from: 'protective',
    met: fibre !== undefined,
    words:
      fibre === undefined ? 'What it is made of is not said; cotton or purified pulp is asked' : `It is of ${fibre}`,
    sources: [SOURCES.lcGuide, SOURCES.ccaha],
  };
}

function notAcid(quality: Quality, needsNeutral: boolean): Demand {
  const { ph } = quality;
  const range = phAsked(quality, needsNeutral);
  const asked = `${rangeText(range)} is asked`;
  const sources = needsNeutral
    ? [SOURCES.ccaha, SOURCES.cciMatting, SOURCES.lcUnbuffered]
    : [...phSources(quality), SOURCES.iso9706];
  const demand = (met: boolean, words: string): Demand => ({ from: 'protective', met, words, sources });
  // Of board without a word on its reserve either range may be the one that is asked.
  const unbuffered = quality.reserve === undefined && !needsNeutral ? `, unbuffered ${rangeText(NEUTRAL)}` : '';
  if (ph === undefined) return demand(false, `Its pH is not said; ${asked}${unbuffered}`);
  if (ph < range.least) return demand(false, `Its pH of ${ph} is acid; ${asked}`);
  if (ph > TOO_ALKALINE) return demand(false, `Its pH of ${ph} is too alkaline; ${asked}`);
  return demand(true, 'It is not acid');
}

function phSources({ reserve: buffer }: Quality): Source[] {
  const buffered = [SOURCES.lcGuide, SOURCES.cciMatting, SOURCES.lcBuffered, SOURCES.iso18902];
  return buffer === 0 ? [SOURCES.cciMatting, SOURCES.lcUnbuffered] : buffered;
}

/** Wood pulp turns acid again as soon as there is nothing in it to take the acid up. */
function pulpBuffered({ fibre, reserve: buffer }: Quality): Demand[] {
  if (fibre !== 'wood pulp') return [];
  const met = buffer !== undefined && buffer >= RESERVE.least;
  const words = met
    ? `A reserve of ${buffer} % holds its acid back for a while`
    : `Wood pulp without a reserve of at least ${RESERVE.least} % turns acid`;
  return [{ from: 'protective', met, words, sources: [SOURCES.aicTreasures, SOURCES.iso9706] }];
}

function pulpPurified({ fibre }: Quality): Demand[] {
  if (fibre !== 'wood pulp') return [];
  const words = 'It is of wood pulp, which no buffer makes fit; cotton or purified pulp is asked';
  return [{ from: 'conservation', met: false, words, sources: [SOURCES.lcGuide] }];
}

/** What lies below is acid, and told as such. */
function phWithin(quality: Quality): Demand[] {
  const { ph, reserve: buffer } = quality;
  const range = phAsked(quality);
  if (ph === undefined || ph < range.least) return [];
  const met = ph <= range.greatest;
  const words = met
    ? `Its pH of ${ph} lies within ${rangeText(range)}`
    : `Its pH of ${ph} is above ${rangeText(range)}, which is asked${buffer === 0 ? ' of a board without reserve' : ''}`;
  return [{ from: 'conservation', met, words, sources: phSources(quality) }];
}

/** Unbuffered board will do for works on paper, buffered is recommended; between them is neither. */
function reserve({ reserve: buffer }: Quality): Demand {
  const { least, greatest } = RESERVE;
  const met = buffer !== undefined && (buffer === 0 || (buffer >= least && buffer <= greatest));
  const asked = `${least} to ${greatest} % is asked (3.5 % recommended), or none in a neutral board`;
  const words =
    buffer === undefined
      ? `Its alkaline reserve is not said; ${asked}`
      : met
        ? buffer === 0
          ? 'It is unbuffered'
          : `Its reserve is ${buffer} %`
        : `Its reserve is ${buffer} %; ${asked}`;
  return {
    from: 'conservation',
    met,
    words,
    sources: [SOURCES.lcBuffered, SOURCES.ccaha, SOURCES.cciMatting, SOURCES.iso18902],
  };
}

/** True of what is known to be neutral and without a reserve. */
function neutral({ ph, reserve: buffer }: Quality): Demand {
  const met = buffer === 0 && ph !== undefined && ph >= NEUTRAL.least && ph <= NEUTRAL.greatest;
  const words = met
    ? 'It is neutral and unbuffered, as a cyanotype asks'
    : `A cyanotype lies against it and bleaches where it is alkaline; neutral board is asked (pH ${rangeText(NEUTRAL)}, no reserve)`;
  return { from: 'protective', met, words, sources: [SOURCES.ccaha, SOURCES.cyanotypes] };
}

/** True of what is said to be alkaline, and so bleaches a cyanotype that lies against it. */
export function isAlkaline({ ph, reserve: buffer }: Quality): boolean {
  return (buffer ?? 0) > 0 || (ph ?? 0) > NEUTRAL.greatest;
}

/** True of what is said to be acid. */
export function isAcid(quality: Quality, needsNeutral: boolean): boolean {
  return quality.ph !== undefined && quality.ph < phAsked(quality, needsNeutral).least;
}

function photoTested({ photoTested: tested }: Quality): Demand {
  const met = tested === true;
  const words = met
    ? 'It has passed the photographic activity test'
    : `It ${tested === false ? 'has not' : 'is not said to have'} passed the photographic activity test, which is asked beside photographs`;
  return { from: 'conservation', met, words, sources: [SOURCES.lcGuide, SOURCES.ccaha, SOURCES.iso18916] };
}

function fourPly(thinnest: number, show: Show): Demand {
  const met = thinnest >= FOUR_PLY - 1e-9;
  const words = met
    ? `It is ${show.length(thinnest)} thick`
    : `It may be only ${show.missing(thinnest, FOUR_PLY)} thick; 4-ply is asked, which is ${show.limit(FOUR_PLY)} at least`;
  return { from: 'conservation', met, words, sources: [SOURCES.lcPly, SOURCES.cciMatting, SOURCES.factsGap] };
}

/** `cotton, pH 7, no reserve`; `not said` where nothing is. */
export function qualityText({ fibre, ph, reserve: buffer, photoTested: tested }: Quality): string {
  const parts = [
    ...(fibre === undefined ? [] : [fibre]),
    ...(ph === undefined ? [] : [`pH ${ph}`]),
    ...(buffer === undefined ? [] : [buffer === 0 ? 'no reserve' : `reserve ${buffer} %`]),
    ...(tested === true ? ['tested for photographs'] : []),
  ];
  return parts.length === 0 ? 'not said' : parts.join(', ');
}
