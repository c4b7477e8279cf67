/** Changes to the frame, so that it holds a package that is too deep for it, or holds it where it stands out. */
import { showFor } from '../layout/show';
import type { Change, Trouble } from './change';
import { withPackage } from './change-package';
import { chooseClip } from './clips';
import { SLACK } from './range';
import { stackOf } from './stack';

/** A frame whose rabbet, or a groove of which, lies deep enough. */
export function biggerRoom(trouble: Trouble): Change[] {
  const { job, fit } = trouble;
  const show = showFor(trouble.job);
  const depth = show.stepUp(fit.needs.greatest);
  const { frame } = job;
  const groove = fit.room.kind === 'groove';
  return [
    {
      kind: 'deeper',
      words: groove
        ? `take a frame with a groove ${show.limit(depth)} or more behind the lip`
        : `take a frame whose rabbet is ${show.limit(depth)} deep or more`,
      measure: depth,
      edits: groove
        ? [{ at: `frame.grooves[${frame.grooves.length}]`, value: show.exact(depth) }]
        : [{ at: 'frame.rabbetDepth', value: show.exact(depth) }],
      job: {
        ...job,
        frame: groove ? { ...frame, grooves: [...frame.grooves, depth] } : { ...frame, rabbetDepth: depth },
      },
    },
  ];
}

/** Strips of wood on the back of the frame, along its rabbet. */
export function builtUp(trouble: Trouble): Change[] {
  const { job, fit } = trouble;
  if (fit.room.kind === 'groove') return [];
  const show = showFor(trouble.job);
  const strips = show.stepUp(-fit.free.worst);
  const depth = fit.room.depth + strips;
  return [
    {
      kind: 'built up',
      words: `build up the back of the frame by ${show.limit(strips)} with strips of wood`,
      caution: 'seen from the side the frame is then so much deeper; set the strips in from its edge and paint them',
      measure: strips,
      edits: [{ at: 'frame.rabbetDepth', value: show.exact(depth) }],
      job: { ...job, frame: { ...job.frame, rabbetDepth: depth } },
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
