/** How deep a job lies in a frame of the shelf, by the same reckoning as its package: whether it goes in, and what holds it. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { showFor, type Show } from '../layout/show';
import { fitOf, type Fit } from '../package/fit';
import { floatOf, type FloatFit } from '../package/float';
import { gapOffSentence } from '../package/float-words';
import { grooveFits, inFrontOfBack, type GrooveFit } from '../package/groove-fit';
import { SLACK } from '../package/range';
import { mayNotFitWords, shallowWords, wantedDepthWords } from '../package/room-words';
import { stackOf, type Stack } from '../package/stack';
import { standOutOf, type StandOut } from '../package/stand-out';
import { clipWords, depthWords } from '../package/stand-out-words';
import type { Shelf } from '../shelf/shelf';
import type { Reason } from './reasons';

/** A job's package in a frame. */
export interface Held {
  readonly fit: Fit;
  /** Of a canvas or panel, and of what is held by offset clips. */
  readonly standOut?: StandOut;
  /** By how much the gap of a float frame is not the wanted one, mm. */
  readonly gapOff?: number;
  /** What to look at where it works, as sentences. */
  readonly remarks: readonly string[];
  /** None where it goes in as all is named, stands out and is held there, or is not known. */
  readonly reasons: readonly Reason[];
}

/** @param job in the frame, as `jobInFrame` has it. */
export function heldIn(job: Job, layout: Layout, shelf: Shelf): Held {
  const stack = stackOf(job, layout);
  const fit = fitOf(job, stack);
  const standOut = standOutOf(job, layout, stack, { shelf, wallGap: job.hanging.bumpers });
  const show = showFor(job);
  const float = floatOf(job, layout, shelf);
  const shallow = shallowWords(job, fit, show);
  return {
    fit,
    ...(standOut ? { standOut } : {}),
    ...(float?.isCanvas ? { gapOff: float.gapOff } : {}),
    remarks: [...fitRemarks(job, fit, standOut, show), ...grooveRemarks(job, stack, show), ...floatRemarks(job, float, show)], // prettier-ignore
    reasons: [
      ...(shallow === undefined ? [] : [{ kind: 'rabbet too shallow' as const, words: sentence(shallow) }]),
      ...gapReasons(float, show),
    ],
  };
}

/** Steps of how sure it is that a frame holds a job, the surest first: what puts one before another that is alike in all else. */
export const SURETY = ['goes in', 'goes in as all is named', 'stands out behind', 'has a depth that is not known'] as const; // prettier-ignore

/** Into `SURETY`; undefined where nothing is laid out. */
export function suretyOf(held: Pick<Held, 'fit'> | undefined): number | undefined {
  if (!held) return undefined;
  const { verdict, free } = held.fit;
  if (verdict === 'fits' || verdict === 'float frame') return 0;
  if (verdict === 'depth unknown') return 3;
  return free && free.nominal < -SLACK ? 2 : 1;
}

function fitRemarks(job: Job, fit: Fit, standOut: StandOut | undefined, show: Show): string[] {
  if (standOut) {
    const clips = standOut.standOut && standOut.standOut.nominal > SLACK ? [clipWords(standOut.standOut.nominal, standOut.clips, show)] : []; // prettier-ignore
    return [...(standOut.standOut ? [] : ['How deep its rabbet is, is not known.']), ...depthWords(standOut, show), ...clips]; // prettier-ignore
  }
  if (fit.verdict === 'depth unknown') {
    return [`How deep its rabbet is, is not known: it has to be ${wantedDepthWords(job, fit.needs, show)}.`];
  }
  const tight = mayNotFitWords(job, fit, show);
  return tight === undefined ? [] : [sentence(tight)];
}

/** Grooves are for the frame's own back: whether that slides in behind what lies before it. */
function grooveRemarks(job: Job, stack: Stack, show: Show): string[] {
  if (job.frame.build === 'float') return [];
  const fits = grooveFits(job, stack);
  const best = fits.find(({ verdict }) => verdict === 'fits');
  const { kind } = job.package.fixing;
  if (best) return [backWords(best, show)];
  // What has to go into a groove has its reason or its remark already.
  if (fits.length === 0 || kind === 'groove') return [];
  const places = fits.map(({ room }) => show.limit(room.depth)).join(' and ');
  const before = show.limit(inFrontOfBack(stack).nominal);
  return [
    `Its own back may not go in: ${fits.length > 1 ? 'the grooves for it lie' : 'the groove for it lies'} ${places} behind the lip, and ${before} is to lie before it; ${kind} hold all without.`,
  ];
}

function backWords({ room, free }: GrooveFit, show: Show): string {
  const fill = free.best > SLACK ? `; fill ${fillWords(free, show)} before it with card` : '';
  return `Its back goes into ${room.name}, ${show.limit(room.depth)} behind the lip${fill}.`;
}

function fillWords({ worst, best }: GrooveFit['free'], show: Show): string {
  return best - worst > SLACK ? `${show.fine(worst)} to ${show.fine(best)}` : show.limit(best);
}

function gapReasons(float: FloatFit | undefined, show: Show): Reason[] {
  if (!float?.isCanvas || !float.isTooWide) return [];
  const words = gapOffSentence(float, show);
  return words === undefined ? [] : [{ kind: 'gap too wide', words }];
}

/** A gap that is not the wanted one and does all the same; and what a shelf does not say of a float frame. */
function floatRemarks(job: Job, float: FloatFit | undefined, show: Show): string[] {
  if (!float?.isCanvas) return [];
  const gap = float.isTooWide ? undefined : gapOffSentence(float, show);
  const { setBack } = job.frame.float;
  const how = setBack > 0 ? `${show.limit(setBack)} behind its front` : setBack < 0 ? `${show.limit(-setBack)} proud of it` : 'flush'; // prettier-ignore
  const depth = `How deep it is inside, is not known: from its ledge to its front ${show.limit(float.neededDepth)} or more is wanted for the face to lie ${how}.`;
  return [...(gap === undefined ? [] : [gap]), ...(float.lies ? [] : [depth])];
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
