/** Judges how far the mat covers the sheet, so that it does not slip through its window. */
import { SIDES } from '../geometry/box';
import { NOTHING_TO_PAY } from './costs';
import { judged, type Demand, type Judgement, type Step } from './judgement';
import { SOURCES } from './sources';
import { leastBy, type Held, type Subject } from './subject';

/** Common practice, no source, mm: 1/16 in (1.5 mm) barely keeps a sheet from slipping, 1/8 in (3 mm) holds it. */
const HOLDS = { barely: 1.5, well: 3 } as const;

/** Undefined where no mat holds a sheet: none lies on it, or all of them float. */
export function judgeHold(subject: Subject): Judgement | undefined {
  const under = subject.job.layers.length > 0 ? subject.held.filter(({ floats }) => !floats) : [];
  const worst = leastBy(under, holdOf);
  if (!worst) return undefined;
  const hold = holdOf(worst);
  return judged({
    key: 'hold',
    what: 'How far the mat covers the sheet',
    at: `pictures[${worst.placed.index}].overlap`,
    now: `${subject.show.fine(hold)} of ${worst.name}`,
    demands: [slips(hold, subject), holdsWell(hold, subject)],
    step: holdStep,
  });
}

/** Where an edge is seen the hinges hold it, so that only covered sides are asked. */
function holdOf({ placed }: Held): number {
  return Math.min(...SIDES.map((side) => placed.hold[side]).filter((hold) => hold >= 0));
}

function slips(hold: number, { show }: Subject): Demand {
  const met = hold >= HOLDS.barely - 1e-6;
  const words = met
    ? 'It does not slip through its window'
    : `Covered by only ${show.fine(hold)} it may slip through its window; 1/16 in (1.5 mm) is the least`;
  return { from: 'protective', met, words, sources: [SOURCES.practice] };
}

function holdsWell(hold: number, { show }: Subject): Demand {
  const met = hold >= HOLDS.well - 1e-6;
  const words = met
    ? `Covered by ${show.fine(hold)} it is held well`
    : `Covered by ${show.fine(hold)} it is held a little; 1/8 in (3 mm) is asked`;
  return { from: 'conservation', met, words, sources: [SOURCES.practice] };
}

function holdStep(): Step {
  return {
    words: 'Let the mat cover the sheet by 1/8 in (3 mm) on every side',
    reaches: 'conservation',
    cost: NOTHING_TO_PAY,
  };
}
