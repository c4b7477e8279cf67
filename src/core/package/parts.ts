/** What a finished frame is made of, part by part: what it comes with, what the job has planned, what is still needed. */
import type { FramePart, Job } from '../job/job';
import type { FixingKind } from '../job/package';
import { FRAME_PARTS } from '../job/written-frame';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import type { CheckItem } from './check-item';

/** What a job wants of a part; undefined: nothing. */
type Wanted = (job: Job, blank: string, show: Show) => string | undefined;

const WANTED: Readonly<Record<FramePart, Wanted>> = {
  glazing: ({ package: { glazing } }, blank, show) =>
    glazing && `${glazing.material} ${show.limit(glazing.thickness.nominal)} thick, ${blank}`,
  mat: ({ layers }, blank) =>
    layers.length === 0
      ? undefined
      : `${layers.length === 1 ? 'one layer' : `${layers.length} layers`}, ${blank}, cut from this job`,
  'mount board': ({ package: { mountBoard } }, blank, show) =>
    mountBoard && `${mountBoard.board}, ${show.limit(mountBoard.thickness.nominal)} thick, ${blank}`,
  backing: ({ package: { backing } }, blank, show) =>
    backing && `${backing.material} ${show.limit(backing.thickness.nominal)} thick, ${blank}`,
  fixings: ({ frame: { build }, package: { fixing } }) =>
    build === 'float' ? 'screws, from behind through the ledge' : FIXING_WORDS[fixing.kind],
  hangers: () => 'by size and weight: two rings with their screws, or one toothed hanger for a small and light frame',
  wire: () => 'where it hangs from rings: rated for more than the frame weighs',
  'dust cover': ({ package: { dustCover } }) =>
    dustCover ? 'paper over the whole back, a little smaller than the frame' : undefined,
};

const FIXING_WORDS: Readonly<Record<Job['package']['fixing']['kind'], string>> = {
  points: 'points, driven into the rabbet’s walls',
  brads: 'brads, driven into the rabbet’s walls',
  'bent tabs': 'tabs to bend down',
  'turn buttons': 'turn buttons, screwed on the back',
  groove: 'the back itself, slid into its groove',
  'offset clips': 'offset clips and their screws',
  screws: 'screws, from behind into the wood beside the rabbet',
};

/** What a frame with its own back has to hold that back. */
const OF_THE_BACK: readonly FixingKind[] = ['turn buttons', 'bent tabs', 'groove'];

/** True where clips hold what lies in a frame with its own back: the back then has no place, and what holds it no use. */
export function isBackLeftOut({ frame, package: { fixing } }: Job): boolean {
  return frame.build === 'with back' && fixing.kind === 'offset clips';
}

/** True of a part that such a frame has without coming with it. */
function isOwn({ frame, package: { fixing } }: Job, part: FramePart): boolean {
  if (frame.build !== 'with back') return false;
  return part === 'backing' || (part === 'fixings' && OF_THE_BACK.includes(fixing.kind));
}

const BEFORE_THE_FACE: readonly FramePart[] = ['glazing', 'mat', 'mount board'];

/** True where they are part of the frame, or come with it. */
export function hasFixings(job: Job): boolean {
  return isOwn(job, 'fixings') || (job.frame.comesWith.includes('fixings') && !isBackLeftOut(job));
}

/** What is not wanted and is in the frame all the same has to come out before anything goes in. */
function unwanted(job: Job, part: FramePart, standsOut: boolean): CheckItem {
  if (isOwn(job, part) && !isBackLeftOut(job)) {
    return { state: 'done', what: part, words: 'none is wanted beside the frame’s own back' };
  }
  if (job.frame.comesWith.includes(part)) {
    return { state: 'look', what: part, words: 'none is wanted: take out the one that comes with the frame' };
  }
  const why = part === 'dust cover' && standsOut ? ': no paper lies flat over what stands out' : '';
  return { state: 'done', what: part, words: `none is wanted${why}` };
}

/** @param standsOut true where something lies behind the frame’s back, over which no paper lies flat. */
export function partItems(job: Job, layout: Layout, show: Show, standsOut: boolean): CheckItem[] {
  const blank = show.size(layout.frame.blank);
  const { comesWith, build } = job.frame;
  return FRAME_PARTS.map((part): CheckItem => {
    const wanted = WANTED[part](job, blank, show);
    if (wanted === undefined) return unwanted(job, part, standsOut);
    if (build === 'float' && BEFORE_THE_FACE.includes(part)) {
      return {
        state: 'look',
        what: part,
        words: `the job has ${wanted}: leave it out, nothing goes before the canvas`,
      };
    }
    if (part === 'fixings' && isBackLeftOut(job)) {
      return { state: 'needed', what: part, words: `${wanted}; what the frame has holds its back` };
    }
    if (part === 'dust cover' && standsOut) {
      return {
        state: 'look',
        what: part,
        words: 'the job has one, but no paper lies flat over what stands out: leave it out',
      };
    }
    const own = isOwn(job, part);
    if (!own && !comesWith.includes(part)) return { state: 'needed', what: part, words: wanted };
    if (part === 'mat') {
      return { state: 'needed', what: part, words: `${wanted}; the one that comes with the frame has another window` };
    }
    return {
      state: 'done',
      what: part,
      words: own ? `of the frame’s own: ${wanted}` : `comes with the frame; wanted is ${wanted}`,
    };
  });
}
