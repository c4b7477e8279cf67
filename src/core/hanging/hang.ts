/** The one door to hanging: how a frame hangs and where it hangs on the wall, with all that is wrong or worth a look. */
import { bad, bySeverity, good, isError, type Problem, type Result } from '../problem';
import type { HangingAsk } from './hanging-ask';
import type { HangingPlan } from './hanging-plan';
import { planHanging } from './plan-hanging';
import { planWall } from './plan-wall';
import type { WallPlan } from './wall-plan';

export interface Hung {
  readonly hanging: HangingPlan;
  readonly wall: WallPlan;
}

export function hang(ask: HangingAsk): Result<Hung> {
  const hanging = planHanging(ask);
  if (!hanging.ok) return hanging;
  const wall = planWall(ask, hanging.value);
  const problems = bySeverity([...hanging.problems, ...wall.problems]);
  return wall.ok ? good({ hanging: hanging.value, wall: wall.value }, problems) : bad(problems);
}

/** All that is wrong or worth a look; since the mat can be cut all the same, none of it is an error. */
export function hangingProblems(ask: HangingAsk): Problem[] {
  return hang(ask).problems.map((problem) => (isError(problem) ? { ...problem, severity: 'warning' } : problem));
}
