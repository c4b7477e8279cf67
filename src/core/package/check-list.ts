/** What to have and to look at for a kind of frame, as a list to tick off. */
import type { Size } from '../geometry/box';
import type { FrameBuild, Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { showFor, type Show } from '../layout/show';
import type { CheckItem } from './check-item';
import { cornerItems } from './corners';
import { SCREW_OF } from './fixing-screws';
import type { Fit } from './fit';
import { between, grooveWords } from './fit-words';
import type { FloatFit } from './float';
import { floatWords } from './float-words';
import { bestGroove, grooveFits, type GrooveFit } from './groove-fit';
import { hasFixings, isBackLeftOut, partItems } from './parts';
import { depthItem, sizeItem } from './rabbet-items';
import { SLACK } from './range';
import type { Stack } from './stack';
import { screwWords } from './screw-words';
import type { ScrewLimits } from './screws';
import type { StandOut } from './stand-out';
import { clipWords, countWords } from './stand-out-words';

/** What a list is made of. */
export interface Checked {
  readonly job: Job;
  readonly layout: Layout;
  readonly stack: Stack;
  readonly fit: Fit;
  readonly standOut?: StandOut;
  readonly float?: FloatFit;
  readonly screws: ScrewLimits;
  /** The rabbet of the frame in hand, as it was measured. */
  readonly measured?: Size;
}

export function checkList(checked: Checked): CheckItem[] {
  const show = showFor(checked.job);
  return [
    ...partItems(checked.job, checked.layout, show, (checked.standOut?.standOut?.nominal ?? 0) > SLACK),
    ...(checked.standOut ? clipItems(checked, checked.standOut, show) : []),
    ...screwItems(checked, show),
    ...rabbetItems(checked, show),
    ...BY_BUILD[checked.job.frame.build](checked, show),
    ...cornerItems(checked.job, checked.layout, show),
  ];
}

const BY_BUILD: Readonly<Record<FrameBuild, (checked: Checked, show: Show) => CheckItem[]>> = {
  'open back': () => [],
  'with back': (checked, show) => [...backItems(checked, show), ...fillItems(checked, show)],
  deep: (checked, show) => [...fillItems(checked, show), ...deepItems(checked, show)],
  float: floatItems,
};

function rabbetItems({ job, layout, fit, measured }: Checked, show: Show): CheckItem[] {
  if (job.frame.build === 'float') return [];
  return [sizeItem(layout, measured, show), ...(fit.room?.kind === 'groove' ? [] : [depthItem(job, fit, show)])];
}

/** Where clips are what holds it. */
function clipItems({ job }: Checked, { standOut, clips, count }: StandOut, show: Show): CheckItem[] {
  if (!standOut || job.package.fixing.kind !== 'offset clips') return [];
  const wanted = Math.max(0, standOut.nominal);
  return [
    {
      state: !hasFixings(job) && clips && clips.over >= -SLACK ? 'needed' : 'look',
      what: 'offset clips',
      words: `${clipWords(standOut.nominal, clips, show)} ${countWords(count, show)}`,
      measures: { wanted, total: count.total, ...(clips ? { step: clips.clip.step } : {}) },
    },
  ];
}

/** Of whatever is screwed on; a float frame's have their line below. */
function screwItems({ job, screws }: Checked, show: Show): CheckItem[] {
  const what = SCREW_OF[job.package.fixing.kind];
  if (what === undefined || job.frame.build === 'float') return [];
  const { longest, shortest, chosen } = screws;
  const measures = { shortest, ...(longest === undefined ? {} : { longest }) };
  return [
    {
      state: chosen && !hasFixings(job) ? 'needed' : 'look',
      what: 'screws',
      words: screwWords(what, screws, show),
      measures,
    },
  ];
}

function backItems({ job, stack }: Checked, show: Show): CheckItem[] {
  const grooves = grooveFits(job, stack);
  if (isBackLeftOut(job)) {
    const words = `The frame’s own back is left out, for offset clips hold what lies in the rabbet${grooves.length > 0 ? '; its grooves are not used' : ''}.`;
    return [{ state: 'look', what: 'back', words }];
  }
  if (job.package.fixing.kind === 'turn buttons') {
    return [
      {
        state: 'look',
        what: 'turn buttons',
        words: 'They turn freely, press on the back and not on the picture, and are screwed into wood.',
      },
    ];
  }
  return [
    ...(job.package.fixing.kind === 'groove' ? grooves : []).map((groove): CheckItem => ({
      state: groove.verdict === 'fits' && groove.behind ? 'done' : 'look',
      what: groove.room.name,
      words: grooveWords(groove, show),
      measures: { depth: groove.room.depth, ...groove.free },
    })),
    { state: 'look', what: 'back', words: backWords(job, grooves) },
  ];
}

/** Of a back that slides into one of several grooves, if into any. */
function backWords({ package: { fixing, backing } }: Job, grooves: readonly GrooveFit[]): string {
  const best = bestGroove(grooves);
  if (fixing.kind !== 'groove' || !best) return `It lies behind the rest and is held by ${fixing.kind}.`;
  if (best.verdict === 'does not fit') return 'It goes into no groove as things are: see what to change.';
  const known = backing ? '' : ' The job says nothing of the back: measure it.';
  return `It slides through the whole of ${best.room.name} without force, and its end is held so that it can’t slide out.${known}`;
}

/** What is held at one place only leaves room that has to be filled, or all rattles; a deep frame has it for air. */
function fillItems({ job, fit }: Checked, show: Show): CheckItem[] {
  const { kind } = job.package.fixing;
  // Clips have their packing told with them.
  if (!fit.free || fit.room?.kind === 'groove' || kind === 'offset clips' || fit.free.best <= SLACK) return [];
  const { best, nominal, worst } = fit.free;
  const adjusts = kind === 'points' || kind === 'brads';
  const free = `${between(fit.free, show)} stays free`;
  return [
    {
      state: 'look',
      what: 'room left',
      words:
        job.frame.build === 'deep'
          ? `${free} behind the contents: strips hold them forward, see below.`
          : adjusts
            ? `${free} behind; points and brads can sit that much deeper.`
            : `${free} behind: fill it with sheets of backing, so that nothing moves.`,
      measures: { best, nominal, worst },
    },
  ];
}

/** What keeps all from sliding to and fro in a deep frame, and what of its walls is seen. Common practice, no source. */
function deepItems({ job, layout, fit }: Checked, show: Show): CheckItem[] {
  const { spacer } = job.package;
  const { allowance } = layout.frame;
  const left = show.stepDown(fit.free?.worst ?? 0);
  const behind =
    left > SLACK
      ? `Strips ${show.limit(left)} deep along all four sides behind the backing, fixed to the rabbet’s walls, hold the contents forward against the lip; or strips of up to as much between glazing and contents hold the glazing forward and give the picture air.`
      : fit.free
        ? 'No room is left for strips behind the contents: they are held as in any frame.'
        : 'Cut strips as deep as what stays free once its depth is known: behind the backing along all four sides they hold the contents forward against the lip.';
  const before = spacer
    ? `Strips ${show.limit(spacer.thickness.nominal)} deep along all four sides hold the glazing forward and the contents back from it. `
    : '';
  return [
    {
      state: 'look',
      what: 'strips',
      words: `${before}${behind}`,
      measures: { left, ...(spacer ? { before: spacer.thickness.nominal } : {}) },
    },
    {
      state: 'look',
      what: 'lining',
      words: `Where the rabbet’s walls or strips are seen before the contents, line them with board as sound as the mat, before anything goes in: bare wood gives off acid. Walls lined on both sides take twice the lining from the play of ${show.limit(allowance)}.`,
      measures: { allowance },
    },
  ];
}

function floatItems({ job, float }: Checked, show: Show): CheckItem[] {
  if (!float) return [{ state: 'needed', what: 'canvas', words: 'The job has no picture for the float frame.' }];
  const [first = '', ...rest] = floatWords(job, float, show);
  const fits = float.isCanvas && float.gapOff <= SLACK && float.gap.across > SLACK && float.gap.up > SLACK;
  return [
    {
      state: fits ? 'done' : 'look',
      what: 'canvas',
      words: first,
      measures: { ...float.gap, width: float.inside.width, height: float.inside.height },
    },
    ...rest.map((words): CheckItem => ({ state: 'look', what: 'canvas', words })),
  ];
}
