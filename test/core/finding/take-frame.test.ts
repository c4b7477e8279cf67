/** A job that takes a frame of the shelf is laid out as it was found to be. */
import { describe, expect, test } from 'vitest';
import { SIDES } from '../../../src/core/geometry/box';
import { editsToTake } from '../../../src/core/finding/take-frame';
import { setAll } from '../../../src/core/job/edit';
import { tryPlan, written, type Contents } from '../open';
import { found, framesOf, shelfOf } from './shelves';

const shelf = [
  ...framesOf('14x18', '18x24'),
  ...shelfOf(
    'name,width,height,lip,face,rabbet depth,depth,weight,build,comes with,grooves',
    'Whole,300 mm,40 cm,5 mm,15 mm,20 mm,25 mm,800 g,with back,glazing; backing,12 mm; 13 mm',
  ),
];
const fern: Contents = {
  units: 'in',
  pictures: [{ size: '8 x 10 in', overlap: '1/8 in' }],
  frame: { readyMade: '16x20 in', hung: 'landscape', rabbetDepth: '1 in', colour: '#4a3a2c', weight: '2 lb' },
};

describe.each<[string, Contents]>([
  ['centred', fern],
  ['weighted', { ...fern, borders: { rule: 'bottom-ratio', ratio: 1.15 } }],
  ['made to fit with equal borders', { ...fern, frame: {}, borders: { all: '3 in' } }],
  ['made to fit by hand', { ...fern, frame: {}, borders: { rule: 'by-hand', left: '2 in', right: '3 in', top: '2 in', bottom: '3 1/3 in' } }],
  ['as seen', { ...fern, borders: { rule: 'top-as-sides', measured: 'as seen' } }],
  [
    'with gaps that take what is left',
    {
      pictures: [{ size: '3 x 4 in' }, { size: '3 x 4 in' }],
      windows: { kind: 'row', gap: 'share between', items: ['1', '2'] },
      borders: { sides: '1 3/4 in' },
      frame: { size: '16 x 20 in' },
    },
  ],
])('%s', (_, job) => {
  const all = found(job, shelf);

  test('taken, the borders are those that were found', () => {
    const works = all.candidates.filter((one) => one.works);
    expect(works.length).toBeGreaterThan(2);
    for (const candidate of works) {
      const taken = tryPlan(setAll(written(job), editsToTake(all.job, candidate)));
      const layout = taken.planned!.layout;
      for (const side of SIDES) {
        expect(layout.borders.cut[side]).toBeCloseTo(candidate.borders!.cut[side], 5);
        expect(layout.borders.seen[side]).toBeCloseTo(candidate.borders!.seen[side], 5);
      }
      const { frame } = taken.planned!.job;
      const { lip, face, rabbetDepth, depth, weight, build, corners, comesWith, grooves } = candidate.frame;
      expect(frame).toMatchObject({ build, corners, comesWith, ...(lip === undefined ? {} : { lip }), ...(face === undefined ? {} : { mouldingWidth: face }) }); // prettier-ignore
      expect([frame.rabbetDepth, frame.mouldingDepth, frame.weight]).toEqual([rabbetDepth, depth, weight]);
      expect(frame.grooves).toEqual(grooves);
      expect(frame.colour).toBe(all.job.frame.colour);
    }
  });
}); // prettier-ignore
