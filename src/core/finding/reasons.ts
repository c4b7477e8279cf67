/** Why a frame does not suit a job, and what to look at where it does, in words with numbers. */
import { sizeOf, type Size } from '../geometry/box';
import { goesBare } from '../job/bare-kinds';
import type { Frame, Job } from '../job/job';
import { alike, bordersAt, SLACK, titled } from '../layout/limits/slack';
import type { Miss } from '../layout/range-misses';
import { showFor, type Show } from '../layout/show';
import { isError, type Problem } from '../problem';
import { hiddenIn, naturalSize, type Wish } from './wish';
import { capital } from '../phrases';

export interface Reason {
  readonly kind:
    | 'float frame'
    | 'rabbet too shallow'
    | 'gap too wide'
    | 'picture too large'
    | 'windows do not fit'
    | 'border out of range'
    | 'layout';
  /** A sentence. */
  readonly words: string;
}

/** What can be said before the job is laid out in the frame: its build, and what is larger than it. */
export function outrightReasons(wish: Wish, frame: Frame, blank: Size): Reason[] {
  const show = showFor(wish.job);
  const isBare = wish.job.layers.length === 0;
  const large = picturesTooLarge(wish, frame, blank, show);
  return [
    ...floatOnlyCanvas(wish.job, frame),
    ...(large.length > 0 || isBare ? large : windowsTooLarge(wish, frame, blank, show)),
  ];
}

/** What keeps the job from being cut in the frame; of several of one kind the first, with their number. */
export function layoutReasons(problems: readonly Problem[]): Reason[] {
  return alike(problems.filter(isError), ({ code }) => code).map(([first, ...more]) => ({
    kind: 'layout',
    words: withoutAdvice(first) + (more.length > 0 ? ` (${more.length} more like it.)` : ''),
  }));
}

/** Sides with the same to say are told together. */
export function rangeReasons(misses: readonly Miss[], { borders, units, steps }: Job): Reason[] {
  const show = showFor({ units, steps });
  return alike(misses, ({ way, border, limit }) => `${way} ${show.missing(border, limit)}`).map((group) => {
    const [{ way, border, limit, by }] = group;
    const [are, end] = [group.length > 1 ? 'are' : 'is', way === 'narrow' ? 'more' : 'less'];
    const where = capital(bordersAt(group.map(({ side }) => side)));
    return {
      kind: 'border out of range',
      words: `${where} ${are} ${show.missing(border, limit)} ${borders.measured}, ${show.length(by)} too ${way}: ${show.limit(limit)} or ${end} is wanted.`,
    };
  });
}

/** Borders by hand that differ by more than the frame has to share. */
export function leanReason({ job, lean }: Wish, blank: Size): Reason {
  const show = showFor(job);
  const differ = [
    ...(lean.across === 0 ? [] : [`left and right by ${show.length(Math.abs(lean.across))}`]),
    ...(lean.up === 0 ? [] : [`top and bottom by ${show.length(Math.abs(lean.up))}`]),
  ].join(' and ');
  return {
    kind: 'windows do not fit',
    words: `${show.size(blank)} leaves too little for borders that are to differ, ${differ}.`,
  };
}

function floatOnlyCanvas({ pictures, layers }: Job, { build }: Frame): Reason[] {
  if (build !== 'float') return [];
  const canvas = pictures.length > 0 && pictures.every(({ kind }) => goesBare(kind));
  if (canvas && layers.length === 0) return [];
  const why = canvas
    ? 'shows a canvas or panel without a mat, and this job has one'
    : 'takes a canvas or panel only: it has no lip to hold glazing and mat, and nothing else may lie open on its ledge';
  return [{ kind: 'float frame', words: `A float frame ${why}.` }];
}

/** Without a mat it may fill the rabbet, with its play. */
function picturesTooLarge({ leaves, job }: Wish, { allowance }: Frame, blank: Size, show: Show): Reason[] {
  const isBare = job.layers.length === 0;
  const play = isBare ? allowance : 0;
  const large = leaves.find(({ picture }) => {
    const sheet = picture && sizeOf(picture.sheet);
    return sheet && (sheet.width > blank.width + play + SLACK || sheet.height > blank.height + play + SLACK);
  });
  if (!large?.picture) return [];
  const { picture } = large;
  const name = titled(job.pictures[picture.index]?.title ?? '') || `${picture.index + 1} `;
  const what = isBare ? `Picture ${name}` : `The sheet of picture ${name}`;
  const words = `${what}is ${show.size(sizeOf(picture.sheet))}, larger than ${isBare ? 'a frame of ' : ''}${show.size(blank)}.`;
  return [{ kind: 'picture too large', words }];
}

function windowsTooLarge(wish: Wish, frame: Frame, blank: Size, show: Show): Reason[] {
  const natural = naturalSize(wish);
  const hidden = 2 * hiddenIn(frame, wish.job.borders);
  if (!natural || (natural.width + hidden < blank.width && natural.height + hidden < blank.height)) return [];
  const what = wish.leaves.length > 1 ? 'Windows and gaps together are' : 'The window is';
  return [
    {
      kind: 'windows do not fit',
      words: `${what} ${show.size(natural)}, which leaves no border in ${show.size(blank)}.`,
    },
  ];
}

/** Problems whose last clause says what to do about a frame that is not to be kept. */
const ADVISING: Readonly<Record<string, string>> = {
  'picture-larger-than-frame': '; ',
  'window-off-the-board': '; ',
  'weighting-too-large': '; ',
  'border-leaves-nothing': '; ',
  'picture-falls-through': '. ',
};

function withoutAdvice({ code, message }: Problem): string {
  const clause = ADVISING[code];
  const end = clause === undefined ? -1 : message.lastIndexOf(clause);
  return end > 0 ? `${message.slice(0, end)}.` : message;
}
