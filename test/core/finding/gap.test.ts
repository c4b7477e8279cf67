/** The gap round a canvas in a float frame: as wanted first, told with its numbers where it is another, and no more than twice it. */
import { describe, expect, test } from 'vitest';
import { whyBefore } from '../../../src/core/finding/rank';
import { editsToTake } from '../../../src/core/finding/take-frame';
import { setAll } from '../../../src/core/job/edit';
import { showFor } from '../../../src/core/layout/show';
import { packageProblems } from '../../../src/core/package/problems';
import { tryPlan, written, type Contents } from '../open';
import { found, one, shelfOf } from './shelves';

const canvas: Contents = {
  pictures: [{ title: 'Shore', kind: 'painting on canvas', size: '15 x 19 in', thickness: '3/4 in' }],
  mat: { layers: [] },
};
const shelf = shelfOf(
  'name,width,height,build,price',
  'A far,16 in,20 in,float,1',
  'B twice,15.5 in,19.5 in,float,1',
  'C nearer,15.25 in,19 in,float,1',
  'D exact,15 in,19 in,float,9',
  'E just past,15.52 in,19 in,float,1',
);
const all = found(canvas, shelf);

/** What the package says of the job once it has taken the frame. */
function problemsIn(name: string) {
  const { planned } = tryPlan(setAll(written(canvas), editsToTake(all.job, one(all, name))));
  return packageProblems(planned!.job, planned!.layout).filter(({ code }) => code === 'float-gap-too-wide');
}

describe('a gap', () => {
  test('as wanted comes first at any price, then the nearest; none of more than twice it works', () => {
    const works = all.candidates.filter((each) => each.works);
    expect(works.map(({ frame }) => frame.name)).toEqual(['D exact', 'C nearer', 'B twice']);
    expect(whyBefore(works[0]!, works[1]!, showFor(all.job), 'in')).toBe(
      'its gap is nearer to the wanted one by 1/8 in',
    );
    expect(one(all, 'E just past').works).toBe(false);
  });

  test('that is another is told with its numbers', () => {
    expect(one(all, 'D exact').remarks.join(' ')).not.toContain('wanted, which');
    expect(one(all, 'C nearer').remarks[0]).toBe(
      'The gap round it is 3/8 in at the left and the right, 1/4 in above and below; 1/4 in is wanted, which is 1/8 in less.',
    );
    expect(one(all, 'A far').reasons).toEqual([
      {
        kind: 'gap too wide',
        words: 'The gap round it is 3/4 in on every side; 1/4 in is wanted, which is 1/2 in less, and more than twice as much, 1/2 in, does not do.',
      },
    ]); // prettier-ignore
  });

  test('is told by the package of the job that has taken the frame', () => {
    expect(problemsIn('D exact')).toEqual([]);
    expect(problemsIn('B twice')).toEqual([]);
    expect(problemsIn('A far')).toMatchObject([{ severity: 'warning', value: '3/4 in', limit: '1/2 in' }]);
  });

  test('that the job wants wider itself works', () => {
    const wide = found({ ...canvas, frame: { size: '15 x 19 in', build: 'float', float: { gap: '1/2 in' } } }, shelf);
    expect(one(wide, 'A far')).toMatchObject({ works: true });
  });
});
