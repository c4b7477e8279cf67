/** Frames that were found for a job, as text for people and as data for machines. */
import { RECKONED } from '../../core/finding/piece-price';
import { candidateTitle, candidateWords, isPriced, standsText, wantedWords } from '../../core/finding/words';
import { customTitle, customWords, equalityWords } from '../../core/finding/custom-words';
import type { Candidate } from '../../core/finding/candidate';
import type { Custom } from '../../core/finding/custom';
import type { Found } from '../../core/finding/find-frames';
import { columns, paragraph, wrap } from '../print/text';

interface Telling {
  /** What the shelf is called. */
  readonly shelf: string;
  /** How many frames that work are told at length. */
  readonly top: number;
  readonly width: number;
}

export function foundText(found: Found, { shelf, top, width }: Telling): string {
  const { candidates, job } = found;
  const works = candidates.filter((one) => one.works);
  const lines = [
    ...wrap(`“${job.title.slice(0, 60)}” in the frames of ${shelf}.`, width),
    ...wrap(wantedWords(job), width),
    ...(isPriced(found) ? wrap(RECKONED, width) : []),
    ...(works.length === 0 ? ['', 'No frame works.'] : []),
    ...works.slice(0, top).flatMap((one, index) => ['', ...entry(found, one, index + 1, width)]),
    ...shortList(found, works.slice(top), top, width),
    ...failing(candidates, width),
    ...customSection(found, width),
  ];
  return `${lines.join('\n')}\n`;
}

function entry(found: Found, candidate: Candidate, rank: number, width: number): string[] {
  const words = candidateWords(found, candidate);
  return [`${rank}. ${candidateTitle(candidate)}`, ...words.flatMap((line) => paragraph(line, 3, width))];
}

/** The rest of those that work, a line each. */
function shortList({ job }: Found, rest: readonly Candidate[], before: number, width: number): string[] {
  if (rest.length === 0) return [];
  const rows = rest.map((one, index) => [
    `${before + index + 1}.`,
    candidateTitle(one),
    one.isThere ? '' : 'none left',
    standsText(one, job),
  ]);
  const what = job.layers.length === 0 ? '' : ', with borders as cut';
  const heading = rest.length === 1 ? `One more works${what}:` : `${rest.length} more work${what}:`;
  return ['', heading, ...columns(rows, { indent: 3, width })];
}

/** A frame that works neither way up, once, with the reasons of the way that comes nearer. */
function failing(candidates: readonly Candidate[], width: number): string[] {
  const working = new Set(candidates.filter(({ works }) => works).map(({ frame }) => frame));
  const told = new Set(working);
  const lines = candidates.flatMap((one) => {
    if (told.has(one.frame)) return [];
    told.add(one.frame);
    return [[one.frame.name, one.reasons.map(({ words }) => words).join(' ')]];
  });
  return lines.length === 0 ? [] : ['', 'These do not work:', ...columns(lines, { indent: 3, width })];
}

function customSection(found: Found, width: number): string[] {
  const { customs, job } = found;
  const entries = customs.flatMap((one) => [
    '',
    ...paragraph(customTitle(one, job), 3, width),
    ...customWords(found, one).flatMap((line) => paragraph(line, 5, width)),
  ]);
  return ['', 'Made to size', ...paragraph(equalityWords(found), 3, width), ...entries];
}

/** Without what a job's own description tells; a sum that is not known is left out. */
export function foundData(found: Found, top: number | undefined) {
  const { candidates, customs } = found;
  return {
    candidates: candidates.slice(0, top).map((one) => ({ ...candidateData(one), words: candidateWords(found, one) })),
    customs: customs.map((one) => ({ ...customData(one), words: customWords(found, one) })),
  };
}

function candidateData({ layout: _layout, errors: _errors, ...told }: Candidate) {
  return told;
}

function customData({ layout: _layout, made: _made, ...told }: Custom) {
  return told;
}
