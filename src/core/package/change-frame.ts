/** Changes to the frame, so that it holds a package that is too deep for it, or holds it where it stands out. */
import type { Job } from '../job/job';
import { showFor } from '../layout/show';
import type { Change, Trouble } from './change';
import { withPackage } from './change-package';
import { chooseClip } from './clips';
import { SLACK } from './range';
import { stackOf } from './stack';

/** A frame whose rabbet is deep enough, or has a groove that lies so. */
export function biggerRoom(trouble: Trouble): Change[] {
  const { job, fit } = trouble;
  if (fit.room.kind === 'groove') return [deeperGroove(trouble)];
  const show = showFor(job);
  const depth = show.stepUp(fit.needs.greatest);
  return [
    {
      kind: 'deeper',
      words: `take a frame whose rabbet is ${show.limit(depth)} deep or more`,
      measure: depth,
      ...deeperRabbet(job, depth),
    },
  ];
}

/** With wood behind the back, where it is known how thick that is. */
function deeperGroove({ job, fit }: Trouble): Change {
  const show = showFor(job);
  const { grooves, rabbetDepth } = job.frame;
  const depth = show.stepUp(fit.needs.greatest);
  const back = job.package.backing?.thickness.greatest ?? 0;
  // Past the back's end, however near the step comes to it.
  const rabbet = show.stepUp(depth + back + 2 * SLACK);
  const isShallow = rabbetDepth !== undefined && rabbetDepth < rabbet - SLACK;
  const frame = isShallow ? deeperRabbet(job, rabbet) : { edits: [], job };
  const most = rabbetDepth === undefined || isShallow ? Infinity : show.stepDown(rabbetDepth - back - 4 * SLACK);
  const place = most > depth + SLACK ? (most === Infinity ? ' or more' : ` to ${show.limit(most)}`) : '';
  return {
    kind: 'deeper',
    words: `take a frame with a groove ${show.limit(depth)}${place} behind the lip${isShallow ? `, in a rabbet ${show.limit(rabbet)} deep or more` : ''}`,
    measure: depth,
    edits: [...frame.edits, { at: `frame.grooves[${grooves.length}]`, value: show.exact(depth) }],
    job: { ...frame.job, frame: { ...frame.job.frame, grooves: [...grooves, depth].toSorted((a, b) => a - b) } },
  };
}

/** Of another frame, whose moulding is not measured where that of this one would be too shallow for it. */
function deeperRabbet(job: Job, depth: number): Pick<Change, 'edits' | 'job'> {
  const { mouldingDepth, ...frame } = job.frame;
  const isShallow = mouldingDepth !== undefined && mouldingDepth < depth;
  return {
    edits: [
      { at: 'frame.rabbetDepth', value: showFor(job).exact(depth) },
      ...(isShallow ? [{ at: 'frame.mouldingDepth', value: undefined }] : []),
    ],
    job: { ...job, frame: { ...(isShallow ? frame : job.frame), rabbetDepth: depth } },
  };
}

/** Strips of wood on the back of the frame, along its rabbet. */
export function builtUp(trouble: Trouble): Change[] {
  const { job, fit } = trouble;
  if (fit.room.kind === 'groove') return [];
  const show = showFor(trouble.job);
  const strips = show.stepUp(-fit.free.worst);
  const depth = fit.room.depth + strips;
  const { mouldingDepth } = job.frame;
  return [
    {
      kind: 'built up',
      words: `build up the back of the frame by ${show.limit(strips)} with strips of wood`,
      caution: 'seen from the side the frame is then so much deeper; set the strips in from its edge and paint them',
      measure: strips,
      edits: [
        { at: 'frame.rabbetDepth', value: show.exact(depth) },
        ...(mouldingDepth === undefined
          ? []
          : [{ at: 'frame.mouldingDepth', value: show.exact(mouldingDepth + strips) }]),
      ],
      job: {
        ...job,
        frame: {
          ...job.frame,
          rabbetDepth: depth,
          ...(mouldingDepth === undefined ? {} : { mouldingDepth: mouldingDepth + strips }),
        },
      },
    },
  ];
}

/** Clips on the back of the frame, which need no room in the rabbet. */
export function clipChange(trouble: Trouble): Change[] {
  const { job, layout, fit, shelf } = trouble;
  if (fit.room.kind === 'groove') return [];
  const { contents } = stackOf(job, layout);
  const standOut = contents.nominal - fit.room.depth;
  const choice = chooseClip(Math.max(0, standOut), shelf);
  if (!choice || choice.over < -SLACK) return [];
  const show = showFor(trouble.job);
  const lies =
    standOut > SLACK ? `, so that it stands out ${show.length(standOut)} behind` : ' screwed flat on the back';
  return [
    {
      kind: 'clips',
      words: `hold it with offset clips of ${show.limit(choice.clip.step)} step${lies}`,
      ...(standOut > SLACK ? { caution: 'its edges then show behind the frame; seal them against dust' } : {}),
      measure: choice.clip.step,
      edits: [
        { at: 'package.fixing.kind', value: 'offset clips' },
        { at: 'package.fixing.room', value: undefined },
      ],
      job: withPackage(job, { fixing: { ...job.package.fixing, kind: 'offset clips', room: 0 } }),
    },
  ];
}
