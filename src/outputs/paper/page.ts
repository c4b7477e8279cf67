/** Paper: its sizes, its margin, and the only place where millimetres become points. */
import type { PaperName, UnitName } from '../../bridge';
import type { Box, Size } from '../../core/geometry/box';
import { MM_PER_INCH } from '../../core/units';

/** A PDF's default unit is 1/72 in (ISO 32000-1, 8.3.2.3). */
const POINTS_PER_INCH = 72;

/** Longest side of a page in points: 14,400 units of 1/72 in, that is 200 in (ISO 32000-1, Annex C). */
const LONGEST_SIDE_POINTS = 14400;

/** Longest side of a page, mm. */
export const LONGEST_SIDE = fromPoints(LONGEST_SIDE_POINTS);

/** Printers lose what lies nearer to the paper's edge than this; nothing that matters goes there. */
export const SAFE_MARGIN = 12;

export type TilePaper = Exclude<PaperName, 'blank'>;

/** Upright sizes, mm: A3 and A4 of ISO 216, the others in inches. */
const PAPERS: Readonly<Record<TilePaper, Size>> = {
  letter: { width: 8.5 * MM_PER_INCH, height: 11 * MM_PER_INCH },
  legal: { width: 8.5 * MM_PER_INCH, height: 14 * MM_PER_INCH },
  tabloid: { width: 11 * MM_PER_INCH, height: 17 * MM_PER_INCH },
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
};

const PAPER_WORDS: Readonly<Record<PaperName, string>> = {
  blank: "paper of the blank's own size",
  letter: 'Letter',
  legal: 'Legal',
  tabloid: 'Tabloid',
  a4: 'A4',
  a3: 'A3',
};

export function paperSize(name: TilePaper, way: 'portrait' | 'landscape'): Size {
  const { width, height } = PAPERS[name];
  return way === 'portrait' ? { width, height } : { width: height, height: width };
}

/** For pages of words: the chosen paper, or where that is the blank's own size, the one of the unit's countries. */
export function listPaper(name: PaperName, unit: UnitName): Size {
  return paperSize(name === 'blank' ? (unit === 'in' ? 'letter' : 'a4') : name, 'portrait');
}

export function paperWord(name: PaperName): string {
  return PAPER_WORDS[name];
}

/** The part of a page where what matters may lie. */
export function safeBox(paper: Size): Box {
  return {
    left: SAFE_MARGIN,
    bottom: SAFE_MARGIN,
    right: paper.width - SAFE_MARGIN,
    top: paper.height - SAFE_MARGIN,
  };
}

export function toPoints(mm: number): number {
  return (mm * POINTS_PER_INCH) / MM_PER_INCH;
}

export function fromPoints(points: number): number {
  return (points * MM_PER_INCH) / POINTS_PER_INCH;
}
