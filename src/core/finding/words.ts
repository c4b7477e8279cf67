/** What was found, in sentences: the same on the screen, at the command line and on paper. */
import type { BorderRule, Job } from '../job/job';
import { BORDER_RULES } from '../job/written-borders';
import { alike, SLACK } from '../layout/limits/slack';
import { showFor, type Show } from '../layout/show';
import { SAME } from '../layout/solve-borders';
import { roundedText } from '../money';
import { boardArea } from './area-text';
import { bareSentences, bareText, bareWanted } from './bare-words';
import { bordersText } from './borders-text';
import type { Candidate } from './candidate';
import type { Cost, Used } from './cost';
import { bestOf, type Found } from './find-frames';
import { whyBefore } from './rank';
import { listed } from '../phrases';

/** `Ash 11x14`, with the way it hangs where that is not as its size is written. */
export function candidateTitle({ frame, turned, size }: Candidate): string {
  return turned ? `${frame.name}, turned to hang ${size.width > size.height ? 'landscape' : 'portrait'}` : frame.name;
}

/** What a rule is called: as it is written into a job, or as a screen labels it. */
export type RuleName = (rule: BorderRule) => string;
const asWritten: RuleName = (rule) => rule;

/** All there is to say of one of what was found, from its borders to what it comes with. */
export function candidateWords(found: Found, candidate: Candidate, ruleName: RuleName = asWritten): string[] {
  if (!candidate.works) return [...candidate.reasons.map(({ words }) => words), ...wouldDo(candidate, ruleName)];
  const { job } = found;
  return [
    ...(isBare(job) ? bareWords(candidate, job) : matWords(candidate, job)),
    ...candidate.remarks,
    ...rankWords(found, candidate),
    ...(isBare(job) ? [] : [...eitherWayWords(candidate, showFor(job)), weightingWords(candidate, job, ruleName)]),
    usedWords(candidate.used, job),
    costWords(candidate.cost),
    ...shelfWords(candidate),
  ];
}

/** What is asked of a frame. */
export function wantedWords(job: Job): string {
  if (isBare(job)) return bareWanted(job);
  const { rule, range, measured } = job.borders;
  const { limit } = showFor(job);
  const end = range.greatest === undefined ? ' or more' : ` to ${limit(range.greatest)}`;
  return `Wanted: borders of ${limit(range.least)}${end}, measured ${measured}; rule “${rule}”${rule === 'equal' ? ', centred in a frame of given size' : ''}.`;
}

/** How many there are that will do, and which comes first. */
export function foundWords({ candidates, job }: Found): string {
  const works = candidates.filter((one) => one.works).length;
  const of = `of ${candidates.length} sizes and turns`;
  if (works === 0) return isBare(job) ? `None ${of} holds it.` : `None ${of} keeps every border in range and is deep enough.`; // prettier-ignore
  const holds = works === 1 ? 'holds it' : 'hold it';
  return isBare(job) ? `${works} ${of} ${holds}.` : `${works} ${of} ${holds} with every border in range; the most even first.`; // prettier-ignore
}

/** Whether anything but frames has a price, so that one may ask how it is reckoned. */
export function isPriced({ candidates }: Found): boolean {
  return candidates.some(({ cost }) => cost.parts.some(({ what, amount }) => what !== 'frame' && amount !== undefined));
}

/** The borders of a candidate in a few words, as cut; without a mat what covers the picture. */
export function standsText({ layout, borders }: Candidate, job: Job): string {
  if (isBare(job)) return layout ? bareText(layout, job) : '';
  return borders ? bordersText(borders.cut, showFor(job)) : '';
}

function isBare({ layers }: Pick<Job, 'layers'>): boolean {
  return layers.length === 0;
}

function bareWords({ layout }: Candidate, job: Job): string[] {
  return layout ? bareSentences(layout, job) : [];
}

function matWords(candidate: Candidate, job: Job): string[] {
  return [...borderSentences(candidate.borders, job), ...evennessWords(candidate, showFor(job))];
}

/** Both ways of measuring where the frame hides some of them. */
export function borderSentences(borders: Candidate['borders'], job: Pick<Job, 'units' | 'steps'>): string[] {
  if (!borders) return [];
  const show = showFor(job);
  const [cut, seen] = [bordersText(borders.cut, show), bordersText(borders.seen, show)];
  return [cut === seen ? `Borders ${cut}.` : `Borders ${cut} as cut; ${seen} as seen.`];
}

export function usedWords({ board, glazing, layers, mountBoard }: Used, { units }: Pick<Job, 'units'>): string {
  const area = (squareMm: number) => boardArea(squareMm, units);
  if (board === 0) return glazing > 0 ? `To be cut: glazing ${area(glazing)}.` : 'There is nothing to cut.';
  const parts = [
    `${layers.length > 1 ? `${layers.length} layers` : 'mat'} ${area(board - mountBoard)}`,
    ...(mountBoard > 0 ? [`mount board ${area(mountBoard)}`] : []),
  ];
  const boards = parts.length > 1 ? `${area(board)} (${parts.join(', ')})` : area(board);
  return `To be cut: board ${boards}${glazing > 0 ? `, glazing ${area(glazing)}` : ', no glazing'}.`;
}

/** What is not known is named, and never counts as nothing. @param isBrief without why it is not known. */
export function costWords({ parts, counted, notCounted }: Cost, isBrief = false): string {
  const missing = isBrief ? notCounted.join(', ') : whyNotCounted(parts, notCounted);
  if (!counted) return `Price: not known; ${missing}.`;
  const known = parts.flatMap(({ what, amount }) => (amount ? [`${what} ${roundedText(amount)}`] : [])).join(', ');
  if (notCounted.length === 0) return `Price ${roundedText(counted)}: ${known}.`;
  return `Price as far as it is known ${roundedText(counted)}: ${known}; not counted: ${missing}.`;
}

/** Parts that are not known for the same reason together. */
function whyNotCounted(parts: Cost['parts'], notCounted: readonly string[]): string {
  const missing = parts.filter(({ what }) => notCounted.includes(what));
  return alike(missing, ({ why = '' }) => why)
    .map((group) => `${group.map(({ what }) => what).join(', ')} (${group[0].why})`)
    .join(', ');
}

function evennessWords({ evenness }: Candidate, { length }: Show): string[] {
  if (!evenness) return [];
  if (evenness.by <= SAME) return ['The borders are even.'];
  const percent = Math.round(100 * evenness.ratio);
  return [
    `Widest and narrowest border differ by ${length(evenness.by)} before any weighting; the narrowest shows ${percent} % of the widest.`,
  ];
}

/** Why it stands where it does, and of the best what the sizes beside it would do. */
function rankWords({ candidates, job, nextSmaller, nextLarger }: Found, candidate: Candidate): string[] {
  const show = showFor(job);
  const next = candidates[candidates.indexOf(candidate) + 1];
  const why = next?.works
    ? [`It stands before ${candidateTitle(next)}: ${whyBefore(candidate, next, show, job.units)}.`]
    : [];
  if (candidate !== bestOf(candidates)) return why;
  return [
    ...why,
    ...(nextLarger ? [`One size larger, ${candidateTitle(nextLarger)}, ${wouldLeave(nextLarger, job)}.`] : []),
    ...(nextSmaller ? [`One size smaller, ${candidateTitle(nextSmaller)}, ${wouldLeave(nextSmaller, job)}.`] : []),
  ];
}

function wouldLeave({ borders, works, reasons }: Candidate, job: Job): string {
  const [first] = reasons;
  const reason = first ? lowered(first.words) : '';
  const show = showFor(job);
  if (isBare(job) && works) return 'would do too';
  if (!borders || isBare(job)) return `would not do: ${reason}`;
  return `would leave ${bordersText(borders.cut, show)}${works ? '' : `, and would not do: ${reason}`}`;
}

/** A reason within a sentence. */
function lowered(words: string): string {
  return (words.charAt(0).toLowerCase() + words.slice(1)).replace(/\.$/, '');
}

function eitherWayWords({ hangsEitherWay, borders }: Candidate, { length }: Show): string[] {
  if (!borders || hangsEitherWay === 'no') return [];
  return hangsEitherWay === 'yes'
    ? [
        `All four borders are ${length(borders.cut.left)}, so the mat may be turned and the frame hang either way; any bottom weighting takes that away.`,
      ]
    : [
        `Centred, all four borders would be ${length(borders.cut.left)}, and the frame could hang either way; the weighting takes that away.`,
      ];
}

function weightingWords({ weighting: { most, rules } }: Candidate, job: Job, ruleName: RuleName): string {
  const show = showFor(job);
  const kept = ` Rules that keep every border in range: ${rulesText(rules, ruleName)}.`;
  if (most === undefined) return `The bottom can not be weighted freely here.${kept}`;
  if (most <= SLACK) return `There is no room to weight the bottom.${kept}`;
  return `The bottom can be weighted by up to ${show.length(most)}.${kept}`;
}

/** Those that do, or those that do not where they are fewer. */
function rulesText(rules: readonly BorderRule[], ruleName: RuleName): string {
  const quoted = (names: readonly BorderRule[]) => names.map((rule) => `“${ruleName(rule)}”`).join(', ');
  const others = BORDER_RULES.filter((rule) => rule !== 'by-hand' && !rules.includes(rule));
  if (others.length === 0) return 'all';
  if (rules.length === 0) return 'none';
  return others.length < rules.length ? `all but ${quoted(others)}` : quoted(rules);
}

/** Of a frame that fails by the job's own rule alone. */
function wouldDo({ weighting: { rules }, reasons }: Candidate, ruleName: RuleName): string[] {
  if (rules.length === 0 || reasons.some(({ kind }) => kind !== 'border out of range' && kind !== 'layout')) return [];
  return [`It would do with the rule ${rules.map((rule) => `“${ruleName(rule)}”`).join(' or ')}.`];
}

function shelfWords({ frame, isThere }: Candidate): string[] {
  const { count, comesWith } = frame;
  return [
    ...(isThere ? (count === undefined ? [] : [`${count} on the shelf.`]) : ['None is left on the shelf.']),
    comesWith.length > 0 ? `It comes with ${listed(comesWith)}.` : 'It comes empty.',
  ];
}
