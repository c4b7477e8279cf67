/** What to have and to look at for a kind of frame, as a list to tick off. */
import type { Size } from '../geometry/box';
import type { FrameBuild, Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { showFor, type Show } from '../layout/show';
import type { CheckItem } from './check-item';
import { cornerItems } from './corners';
import { grooveFits, type Fit } from './fit';
import { grooveWords } from './fit-words';
import type { FloatFit } from './float';
import { floatWords } from './float-words';
import { partItems } from './parts';
import { depthItem, sizeItem } from './rabbet-items';
import { SLACK } from './range';
import type { Stack } from './stack';
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
  /** The rabbet of the frame in hand, as it was measured. */
  readonly measured?: Size;
}

export function checkList(checked: Checked): CheckItem[] {
  const show = showFor(checked.job);
  return [
    ...partItems(checked.job, checked.layout, show),
    ...(checked.standOut ? clipItems(checked.standOut, show) : []),
    ...rabbetItems(checked, show),
    ...BY_BUILD[checked.job.frame.build](checked, show),
    ...cornerItems(checked.job, checked.layout, show),
  ];
}

const BY_BUILD: Readonly<Record<FrameBuild, (checked: Checked, show: Show) => CheckItem[]>> = {
  'open back': () => [],
  'with back': (checked, show) => [...backItems(checked, show), ...fillItems(checked, show)],
  deep: fillItems,
  float: floatItems,
};

function rabbetItems({ job, layout, fit, measured }: Checked, show: Show): CheckItem[] {
  if (job.frame.build === 'float') return [];
  return [sizeItem(layout, measured, show), ...(fit.room?.kind === 'groove' ? [] : [depthItem(job, fit, show)])];
}

function clipItems({ standOut, clips, count }: StandOut, show: Show): CheckItem[] {
  if (!standOut) return [];
  const wanted = Math.max(0, standOut.nominal);
  return [
    {
      state: clips && clips.over >= -SLACK ? 'needed' : 'look',
      what: 'offset clips',
      words: `${clipWords(wanted, clips, show)} ${countWords(count, show)}`,
      measures: { wanted, total: count.total, ...(clips ? { step: clips.clip.step } : {}) },
    },
  ];
}

function backItems({ job, stack }: Checked, show: Show): CheckItem[] {
  const grooves = grooveFits(job, stack);
  if (grooves.length === 0) {
    return [
      {
        state: 'look',
        what: 'turn buttons',
        words: 'They turn freely, press on the back and not on the picture, and are screwed into wood.',
      },
    ];
  }
  return [
    ...grooves.map((groove): CheckItem => ({
      state: groove.verdict === 'fits' ? 'done' : 'look',
      what: groove.room.name,
      words: grooveWords(groove, show),
      measures: { depth: groove.room.depth, ...groove.free },
    })),
    {
      state: 'look',
      what: 'back',
      words: 'It slides through the whole groove without force, and its end is held so that it can’t slide out.',
    },
  ];
}

/** What is held at one place only leaves room that has to be filled, or all rattles; a deep frame has it for air. */
function fillItems({ job, fit }: Checked, show: Show): CheckItem[] {
  if (!fit.free || fit.room?.kind === 'groove' || fit.free.best <= SLACK) return [];
  const { best, nominal, worst } = fit.free;
  const adjusts = job.package.fixing.kind === 'points' || job.package.fixing.kind === 'brads';
  return [
    {
      state: 'look',
      what: 'room left',
      words:
        job.frame.build === 'deep'
          ? `${show.limit(nominal)} stays free: a spacer of as much holds the glazing off the picture, or sheets of backing fill it from behind.`
          : adjusts
            ? `${show.limit(nominal)} stays free behind; points and brads can sit that much deeper.`
            : `${show.limit(Math.max(0, worst))} to ${show.limit(best)} stays free behind: fill it with sheets of backing, so that nothing moves.`,
      measures: { best, nominal, worst },
    },
  ];
}

function floatItems({ job, float }: Checked, show: Show): CheckItem[] {
  if (!float) return [{ state: 'needed', what: 'canvas', words: 'The job has no picture for the float frame.' }];
  const [first = '', ...rest] = floatWords(job, float, show);
  const fits = float.isCanvas && float.gap.across > SLACK && float.gap.up > SLACK;
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
