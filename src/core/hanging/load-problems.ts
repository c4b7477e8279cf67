/** Loads against what may be carried: the wire's pull, and wire, hooks and fittings over their ratings. */
import type { Job } from '../job/job';
import type { Show } from '../layout/show';
import { massText } from '../mass';
import type { Problem } from '../problem';
import type { Carried, HangingPlan } from './hanging-plan';
import { GREATEST_TENSION } from './limits';
import { butWithout, isWhole, restingOn } from './weight';

type Units = Pick<Job, 'units' | 'hanging'>;

export function loadProblems(job: Units, plan: HangingPlan, show: Show): Problem[] {
  return [...tooTaut(job, plan, show), ...plan.carried.flatMap((one) => overloaded(one, job, plan))];
}

function tooTaut({ hanging }: Units, { wire, places }: HangingPlan, show: Show): Problem[] {
  if (!wire || wire.worstTension <= GREATEST_TENSION) return [];
  // tan of the angle whose sine is 1/4.
  const least = wire.level.run / Math.sqrt(15);
  const degrees = (wire.level.angle * 180) / Math.PI;
  return [
    {
      code: 'wire-too-taut',
      severity: 'warning',
      at: hanging.hangerDown === undefined ? 'hanging.wireBelowTop' : 'hanging.hangerDown',
      message: `The wire rises only ${degrees.toFixed(1)}° from the rings and pulls ${wire.worstTension.toFixed(2)} times the weight at worst, on itself and on each ring; more than ${GREATEST_TENSION} is too taut. Give it more slack: a rise of ${show.length(show.stepUp(least))} or more from the rings to the hooks, now ${show.length(wire.level.drop)}; or ${places.hooksApart === 0 ? 'take two hooks' : `set the hooks further apart than ${show.length(places.hooksApart)}`}.`,
      value: `${wire.worstTension.toFixed(2)} times the weight`,
      limit: `${GREATEST_TENSION} times the weight`,
      remedy: `a rise of ${show.length(show.stepUp(least))} or more`,
    },
  ];
}

const WHAT = { wire: 'The wire', hook: 'A hook', fitting: 'A fitting on the frame' } as const;

function overloaded(one: Carried, { units }: Units, plan: HangingPlan): Problem[] {
  if (one.load === undefined || one.kg === undefined || one.kg <= one.load) return [];
  const [told, may] = [massText(one.kg, units), massText(one.load, units)];
  const carries = told === may ? `a little over ${may}` : restingOn(plan.weight, one.kg, units);
  const enough = isWhole(plan.weight) ? `${carries} or more` : `more than ${told}, once it is weighed whole`;
  const named = one.name === undefined ? '' : ` (${one.name.slice(0, 40)})`;
  const more = one.part === 'hook' && plan.hanger.hooks === 1 ? ', or two hooks' : '';
  return [
    {
      code: 'over-rated-load',
      severity: 'warning',
      at: `hanging.${one.part}`,
      message: `${WHAT[one.part]}${named} has to carry ${carries} at worst, and may carry ${may} (${one.basis ?? 'as given'}${butWithout(plan.weight)}). Take one that is rated for more${more}.`,
      value: carries,
      limit: may,
      remedy: `one rated for ${enough}${more}`,
    },
  ];
}
