/** Why a frame does not suit a job, and what to look at where it does, in words with numbers. */
import { sizeOf, type Size } from '../geometry/box';
import type { Frame, Job } from '../job/job';
import { alike, bordersAt, SLACK, titled } from '../layout/limits/slack';
import type { Miss } from '../layout/range-misses';
import { showFor, type Show } from '../layout/show';
import { isError, type Problem } from '../problem';
import { contentsDepth } from './depth';
import { hiddenIn, naturalSize, type Wish } from './wish';

export interface Reason {
  readonly kind:
    | 'float frame'
    | 'rabbet too shallow'
    | 'picture too large'
    | 'windows do not fit'
    | 'border out of range'
    | 'layout';
  /** A sentence. */
  readonly words: string;
}

/** What can be said before the job is laid out in the frame: its build, its depth, and what is larger than it. */
export function outrightReasons(wish: Wish, frame: Frame, blank: Size): Reason[] {
  const show = showFor(wish.job);
  const large = picturesTooLarge(wish, blank, show);
  return [
    ...floatOnlyCanvas(wish.job, frame),
    ...rabbetTooShallow(wish.job, frame, show),
    ...(large.length > 0 ? large : windowsTooLarge(wish, frame, blank, show)),
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

/** Where it is the thicker boards that would not go in, that is no reason yet, but worth a look. */
export function depthRemarks(job: Job, { rabbetDepth, build }: Frame): string[] {
  const { least, greatest } = contentsDepth(job);
  const needed = greatest + job.package.fixing.room;
  if (rabbetDepth === undefined || build === 'float' || least > rabbetDepth + SLACK) return [];
  if (needed <= rabbetDepth + SLACK) return [];
  const show = showFor(job);
  return [
    `The rabbet is ${show.length(rabbetDepth)} deep; glazing, mats, picture and backing with room for their fixing may need ${show.missing(needed, rabbetDepth)}.`,
  ];
}

function floatOnlyCanvas({ pictures, layers }: Job, { build }: Frame): Reason[] {
  if (build !== 'float') return [];
  const canvas = pictures.length > 0 && pictures.every(({ kind }) => kind === 'painting on canvas');
  if (canvas && layers.length === 0) return [];
  const why = canvas ? 'shows a canvas without a mat, and this job has one' : 'takes a canvas only: it has no lip to hold glazing and mat, and nothing else may lie open on its ledge'; // prettier-ignore
  return [{ kind: 'float frame', words: `A float frame ${why}.` }];
}

function rabbetTooShallow(job: Job, { rabbetDepth, build }: Frame, show: Show): Reason[] {
  const { least } = contentsDepth(job);
  if (rabbetDepth === undefined || build === 'float' || least <= rabbetDepth + SLACK) return [];
  return [
    {
      kind: 'rabbet too shallow',
      words: `The rabbet is ${show.length(rabbetDepth)} deep, and glazing, mats, picture and backing are ${show.missing(least, rabbetDepth)}: they would stand out behind by ${show.length(least - rabbetDepth)}.`,
    },
  ];
}

function picturesTooLarge({ leaves, job }: Wish, blank: Size, show: Show): Reason[] {
  const large = leaves.find(({ picture }) => {
    const sheet = picture && sizeOf(picture.sheet);
    return sheet && (sheet.width > blank.width + SLACK || sheet.height > blank.height + SLACK);
  });
  if (!large?.picture) return [];
  const { picture } = large;
  const name = titled(job.pictures[picture.index]?.title ?? '') || `${picture.index + 1} `;
  const words = `The sheet of picture ${name}is ${show.size(sizeOf(picture.sheet))}, larger than ${show.size(blank)}.`;
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
const ADVISING = new Set(['picture-larger-than-frame', 'window-off-the-board', 'weighting-too-large', 'border-leaves-nothing']); // prettier-ignore

function withoutAdvice({ code, message }: Problem): string {
  const end = message.lastIndexOf('; ');
  return ADVISING.has(code) && end > 0 ? `${message.slice(0, end)}.` : message;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
