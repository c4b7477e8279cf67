/** The whole search: for plans that cost less, and for a large remnant in those that cost as little, in turn. */
import type { SheetsAsk } from './ask';
import { BETWEEN } from './contest';
import { fieldOf, type Field } from './field';
import { growRemnant } from './grow-remnant';
import { Objective, type Judged } from './objective';
import { searchSheets, type Progress } from './plan-search';
import { randomFrom } from './random';

/** Rounds without a cheaper plan before a large remnant is looked for as well, and how seldom then. */
const QUIET = 20 * BETWEEN;
const EVERY = 6;

export function searchAll(ask: SheetsAsk): Generator<Progress, Progress> {
  return searchField(fieldOf(ask), worthIn(ask), ask.seed);
}

/**
 * Ends when the least cost is proven and no larger remnant is found.
 *
 * @param worth of what the largest remnant cost, from 0 to 1.
 */
export function* searchField(field: Field, worth: number, seed: number): Generator<Progress, Progress> {
  const objective = new Objective(field, worth);
  const cheaper = searchSheets(field, seed);
  let step = cheaper.next();
  let best: Judged | undefined = step.value.best && objective.judge(step.value.best);
  let [seen, quietSince, grownRounds, turn] = [step.value.best, 0, 0, 0];
  let growth: Generator<Judged, Judged> | undefined;
  let isGrown = false;
  const progress = (): Progress => ({
    field,
    best: best?.found,
    bound: step.value.bound,
    rounds: step.value.rounds + grownRounds,
  });
  yield progress();
  while (best && !(step.done && isGrown)) {
    if (!step.done) step = cheaper.next();
    if (step.value.best && step.value.best !== seen) {
      seen = step.value.best;
      quietSince = step.value.rounds;
      const judged: Judged = objective.judge(seen);
      if (objective.isBetter(judged, best)) {
        best = judged;
        growth = undefined;
        isGrown = false;
      }
    }
    turn += 1;
    if (!isGrown && (step.done || (turn % EVERY === 0 && step.value.rounds - quietSince >= QUIET))) {
      growth ??= growRemnant(field, randomFrom(seed), objective, best);
      const grown: IteratorResult<Judged, Judged> = growth.next();
      isGrown = grown.done ?? false;
      best = grown.value;
      grownRounds += BETWEEN;
    }
    yield progress();
  }
  return progress();
}

/** With the largest remnant as the aim all that it cost counts. */
export function worthIn({ aim, remnantWorth }: SheetsAsk): number {
  return remnantWorth ?? (aim === 'remnant' ? 1 : 0);
}
