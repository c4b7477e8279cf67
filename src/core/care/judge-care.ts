/** Judges the care that a build takes of its pictures: item by item, as a whole, and what the next grade would take. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { sumOf, type Money } from '../money';
import type { Shelf } from '../shelf/shelf';
import { adviceFor, type Advice } from './advice';
import { judgeAir } from './air';
import { judgeBacking } from './backing';
import { judgeBoards } from './boards';
import { cautionsFor, type Caution } from './cautions';
import { costAfter } from './costs';
import { judgeDust } from './dust';
import { judgeGlazing, judgeStatic } from './glazing';
import { leastOf, nextAbove, reaches, type Grade } from './grade';
import { judgeHinging } from './hinging';
import { judgeHold } from './hold';
import type { Judgement, Step } from './judgement';
import { subjectOf, type Subject } from './subject';
import { judgeWood } from './wood';

export interface NextGrade {
  readonly grade: Grade;
  /** In the order in which they are done, each with the item it lifts. */
  readonly steps: readonly { readonly item: Judgement; readonly step: Step }[];
  /** Of the steps whose cost is counted. */
  readonly cost: Money;
  readonly notCounted: number;
}

export interface Care {
  /** Said before all else; empty where nothing asks for a conservator. */
  readonly cautions: readonly Caution[];
  /** The least of the items that count; undefined while a board before or behind the picture is unknown. */
  readonly grade?: Grade;
  readonly items: readonly Judgement[];
  /** Items that count and reach no more than the least. */
  readonly holding: readonly Judgement[];
  /** Boards that have to be known before there is a grade. */
  readonly unknown: readonly Judgement[];
  /** Undefined at the highest grade. Without a grade: the way to `protective`. */
  readonly next?: NextGrade;
  readonly advice: readonly Advice[];
}

/** @param shelf what steps are priced by; without it no cost is counted. */
export function judgeCare(job: Job, layout: Layout, shelf: Shelf = []): Care {
  const subject = subjectOf(job, layout, shelf);
  const boards = judgeBoards(subject);
  const items = [...boards, ...otherItems(subject)];
  const counting = items.filter(({ counts }) => counts);
  const least = leastOf(counting.map(({ grade }) => grade));
  const unknown = boards.filter(({ known }) => !known);
  const next = nextAbove(least);
  return {
    cautions: cautionsFor(subject),
    ...(unknown.length === 0 ? { grade: least } : {}),
    items,
    holding: next === undefined ? [] : counting.filter(({ grade }) => grade === least),
    unknown,
    ...(next === undefined ? {} : { next: nextGrade(next, counting, subject) }),
    advice: adviceFor(subject),
  };
}

function otherItems(subject: Subject): Judgement[] {
  return [
    judgeHinging(subject),
    judgeAir(subject),
    judgeHold(subject),
    judgeStatic(subject),
    judgeGlazing(subject),
    judgeBacking(subject),
    judgeDust(subject),
    judgeWood(subject),
  ].filter((item) => item !== undefined);
}

/** Only what falls short of it has to change. Each step costs what it adds to those before it. */
function nextGrade(grade: Grade, counting: readonly Judgement[], subject: Subject): NextGrade {
  let { job } = subject;
  const steps = counting
    .filter((item) => !reaches(item.grade, grade))
    .flatMap((item) => {
      if (!item.step) return [];
      const done = costAfter(subject, job, item.step);
      job = done.job;
      return [{ item, step: { ...item.step, cost: done.cost } }];
    });
  const counted = steps.flatMap(({ step }) => step.cost.amount ?? []);
  return { grade, steps, cost: sumOf(counted), notCounted: steps.length - counted.length };
}
