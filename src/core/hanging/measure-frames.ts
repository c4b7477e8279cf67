/** Each frame for the wall with its size and where its hooks sit: as the job measured it, else as its own frame hangs. */
import type { WallFrame } from '../job/wall';
import { hangerPlaces } from './hanger-places';
import type { HangingAsk } from './hanging-ask';
import type { HangingPlan } from './hanging-plan';
import type { MeasuredFrame } from './wall-plan';
import { isWhole } from './weight';

export function measureFrames(ask: HangingAsk, plan: HangingPlan): MeasuredFrame[] {
  return ask.job.wall.frames.map((frame) => measure(frame, ask, plan));
}

function measure(frame: WallFrame, ask: HangingAsk, plan: HangingPlan): MeasuredFrame {
  const { size = plan.outside, drop, edge, centre } = frame;
  const isOwn = frame.size === undefined;
  const weight = frame.weight ?? (isOwn && isWhole(plan.weight) ? plan.weight.kg?.greatest : undefined);
  const places = placesOf(frame, ask, plan);
  const front = frontOf(frame, ask, plan);
  return {
    at: frame.at,
    title: frame.title === '' && isOwn ? ask.job.title : frame.title,
    isOwn,
    size,
    drop: drop ?? places.drop,
    dropFrom: drop === undefined ? 'as hanging has it' : 'measured',
    hooksApart: (frame.hooks ?? plan.hanger.hooks) === 1 ? 0 : (frame.hooksApart ?? places.hooksApart),
    ...(weight === undefined ? {} : { weight }),
    ...(front === undefined ? {} : { front }),
    ...(edge === undefined ? {} : { edge }),
    ...(centre === undefined ? {} : { centre }),
  };
}

/** By the same rules as the job's own frame, in the same moulding. */
function placesOf({ size, hooks }: WallFrame, { job, frame }: HangingAsk, plan: HangingPlan) {
  const { kind } = plan.hanger;
  const asOwn = size === undefined && (hooks === undefined || hooks === plan.hanger.hooks);
  if (asOwn) return plan.places;
  return hangerPlaces({
    hanging: job.hanging,
    kind,
    hooks: kind === 'rings on hooks' ? 2 : (hooks ?? plan.hanger.hooks),
    outside: size ?? plan.outside,
    mouldingWidth: frame.mouldingWidth,
    lip: frame.lip,
    units: job.units,
  });
}

/** How far its front stands off the wall. */
function frontOf({ size, depth }: WallFrame, { job }: HangingAsk, plan: HangingPlan): number | undefined {
  const own = size === undefined;
  if (own && depth === undefined && plan.lean) return plan.lean.front;
  const deep = depth ?? (own ? job.frame.mouldingDepth : undefined);
  const { bumpers, hook } = job.hanging;
  return deep === undefined ? undefined : deep + Math.max(bumpers, plan.hanger.kind === 'cleat' ? 0 : hook.standOff);
}
