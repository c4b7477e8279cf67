/** Builds that are kept well, to be spoiled one thing at a time, and judged the way the program does. */
import { careProblems } from '../../../src/core/care/care-problems';
import { GRADES, type Grade } from '../../../src/core/care/grade';
import { judgeCare, type Care } from '../../../src/core/care/judge-care';
import type { Judgement } from '../../../src/core/care/judgement';
import type { Quality } from '../../../src/core/job/package';
import type { Shelf } from '../../../src/core/shelf/shelf';
import type { Problem } from '../../../src/core/problem';
import { planned, type Contents } from '../open';

export type Picture = NonNullable<Contents['pictures']>[number];
export type Package = NonNullable<Contents['package']>;

export const SOUND: Quality = { fibre: 'cotton', ph: 8, reserve: 3, photoTested: true };
export const NEUTRAL: Quality = { fibre: 'cotton', ph: 7, reserve: 0, photoTested: true };

/** A sheet of 8 x 10 in behind one 4-ply board in a frame of 14 x 18 in, with nothing left to better. */
export function kept(picture: Partial<Picture> = {}, parts: Package = {}, quality: Quality = SOUND): Contents {
  return {
    pictures: [{ title: 'Chart', kind: 'chart or map', size: '8 x 10 in', overlap: 'covers 1/4 in', ...picture }],
    frame: { size: '14 x 18 in', allowance: '1/8 in', lip: '1/4 in' },
    mat: { layers: [{ board: 'White', thickness: '1/16 in', quality }] },
    package: {
      glazing: { material: 'glass', uvFilter: true },
      hinging: { method: 'paper hinges' },
      mountBoard: { thickness: '1/16 in', quality },
      backing: { material: 'polypropylene board' },
      sealed: true,
      ...parts,
    },
  };
}

export function careOf(contents: Contents, shelf?: Shelf): Care {
  const { job, layout } = planned(contents);
  return judgeCare(job, layout, shelf);
}

export function itemOf(contents: Contents, key: string, shelf?: Shelf): Judgement {
  const { items } = careOf(contents, shelf);
  const found = items.find((item) => item.key === key);
  if (!found) throw new Error(`no item ${key} among ${items.map((item) => item.key).join(', ')}`);
  return found;
}

export function dangersOf(contents: Contents): Problem[] {
  const { job, layout } = planned(contents);
  return careProblems(job, layout);
}

/** No grade is the lowest of all. */
export function rank(grade: Grade | undefined): number {
  return grade === undefined ? -1 : GRADES.indexOf(grade);
}
