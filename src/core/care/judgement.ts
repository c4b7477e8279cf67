/** What is judged of one item of a build: what is asked of it, what it is, the grade it reaches, and what would lift it. */
import type { Job } from '../job/job';
import type { Money } from '../money';
import type { Fix } from '../problem';
import { GRADES, type Grade } from './grade';
import type { Source } from './sources';

/** One thing that guidance asks of an item. */
export interface Demand {
  /** The lowest grade that asks it. */
  readonly from: Exclude<Grade, 'decorative'>;
  /** False too of what is not known. */
  readonly met: boolean;
  /** What is found, with its value, and where it falls short what is asked, with the limit. */
  readonly words: string;
  readonly sources: readonly Source[];
}

/** What a step costs in the user's own currency. */
export interface Cost {
  /** Undefined: not counted. Below zero where it saves. */
  readonly amount?: Money;
  readonly words: string;
}

/** A thing of the shelf that a step takes, so that it can be counted as the pieces of the job are. */
export interface Taken {
  /** What the shelf calls it. */
  readonly name: string;
  /** Name of the piece that is made of it, in the cuts list. */
  readonly piece: string;
  /** The job with it, as its fix writes it. */
  readonly into: (job: Job) => Job;
}

export interface Step {
  readonly words: string;
  /** The grade that the item reaches by it. */
  readonly reaches: Grade;
  /** What the job would say then, where it can say it. */
  readonly fix?: Fix;
  /** Undefined: nothing that is counted. */
  readonly taken?: Taken;
  /** Of an item by itself; among the steps to a grade what it adds to those before it. */
  readonly cost: Cost;
}

export interface Judgement {
  /** Stable name of the item, such as `hinging` or `layer 1`. */
  readonly key: string;
  readonly what: string;
  /** Path of the item in the written job. */
  readonly at: string;
  readonly now: string;
  readonly known: boolean;
  /** Whether the grade of the whole depends on it. */
  readonly counts: boolean;
  readonly grade: Grade;
  readonly demands: readonly Demand[];
  /** Undefined where nothing is left to lift, or nothing can. */
  readonly step?: Step;
}

/** What an item says of itself before it is graded. */
export interface Item extends Pick<Judgement, 'key' | 'what' | 'at' | 'now' | 'demands'> {
  readonly known?: boolean;
  readonly counts?: boolean;
  /** Asked only when the item falls short. */
  readonly step?: () => Step;
}

export function judged({ known = true, counts = true, step, ...item }: Item): Judgement {
  const grade = gradeBy(item.demands);
  const lift = grade === 'conservation' ? undefined : step?.();
  return { ...item, known, counts, grade, ...(lift ? { step: lift } : {}) };
}

/** The highest grade of which every demand is met, and every demand of the grades below. */
function gradeBy(demands: readonly Demand[]): Grade {
  const missed = demands.filter(({ met }) => !met).map(({ from }) => GRADES.indexOf(from));
  return GRADES[Math.min(GRADES.length, ...missed) - 1] ?? 'decorative';
}
