/** A frame that is called by what it is on the shelf: its price counts, and a moulding brings its measures, weight and sticks. */
import { describe, expect, it } from 'vitest';
import { hangingAsk } from '../../../src/core/hanging/ask-of';
import { setAll } from '../../../src/core/job/edit';
import { editsToMake } from '../../../src/core/pieces/make-of';
import { piecesOf } from '../../../src/core/pieces/pieces';
import { colourOf } from '../../../src/core/shelf/colour-of';
import { readShelf } from '../../../src/core/shelf/read-shelf';
import { ofKind } from '../../../src/core/shelf/shelf';
import { tryPlan, written, type Contents } from '../open';

const read = readShelf(
  [
    'kind,name,width,height,lip,face,rabbet depth,depth,stick,colour,weight,price,per',
    'frame,Walnut 16x20,16 in,20 in,,,,,,walnut,,46.00,each',
    'moulding,Ash stick,,,1/4 in,1 in,1/2 in,3/4 in,9 ft,natural ash,0.4 kg,3.00,ft',
  ].join('\n'),
);
if (!read.ok) throw new Error(read.problems[0]?.message);
const shelf = read.value;
const FERN: Contents = {
  pictures: [{ size: '8 x 10 in' }],
  frame: { size: '16 x 20 in', weight: '9 lb', comesWith: ['glazing'] },
};
const planned = (contents: object) => {
  const plan = tryPlan(contents as never).planned;
  if (!plan) throw new Error('the job has errors');
  return plan;
};
const costs = (contents: object) => {
  const made = piecesOf({ jobs: [planned(contents)], shelf });
  return made.ok ? made.value.frames[0]?.costs : undefined;
};
const named = (name: string, size = '16 x 20 in') => written({ ...FERN, frame: { size, name } });

describe('a frame of the shelf', () => {
  it('counts at its price, however its name is written and whichever way up it hangs', () => {
    for (const job of [named('walnut 16X20'), named('Walnut 16x20', '20 x 16 in')]) {
      const line = costs(job)?.lines.find(({ what }) => what === 'Frame');
      expect(line?.amount?.toFixed(2)).toBe('46.00');
    }
  });

  it('does not count at another size, or where no such thing is on the shelf', () => {
    expect(costs(named('Walnut 16x20', '18 x 24 in'))?.notCounted).toContain('Frame');
    expect(costs(named('Oak 16x20'))?.notCounted).toContain('Moulding');
  });
});

describe('a moulding of the shelf', () => {
  const [ash] = ofKind(shelf, 'moulding');
  const { job } = planned(written(FERN));
  const made = setAll(written(FERN), editsToMake(job, ash!));

  it('brings its measures and its look, and takes what was said of another frame', () => {
    const { frame } = planned(made).job;
    expect(frame).toMatchObject({ name: 'Ash stick', mouldingWidth: 25.4, lip: 6.35, rabbetDepth: 12.7, mouldingDepth: 19.05, comesWith: [], colour: '#d3bf9c' }); // prettier-ignore
    expect(frame.weight).toBeUndefined();
  });

  it('is priced, cut from its sticks and weighed wherever the job is', () => {
    const { layout, ...plan } = planned(made);
    const pieces = piecesOf({ jobs: [{ job: plan.job, layout }], shelf });
    if (!pieces.ok) throw new Error('not made');
    const { frames, sticks } = pieces.value;
    // 2 x (16 1/8 + 20 1/8) + 8 x (1 - 1/4) + 8 x 1/8 = 79 1/2 in at 3.00 a foot.
    expect(frames[0]?.costs?.lines.find(({ what }) => what === 'Moulding')?.amount?.toFixed(4)).toBe('19.8750');
    expect(sticks[0]?.plan.sticks).toHaveLength(1);
    const frame = frames[0]?.weight.items.find(({ name }) => name === 'Frame');
    expect(hangingAsk(plan.job, layout, shelf).weighed).toMatchObject({ counted: frames[0]?.weight.counted });
    // 0.4 kg a metre of 78 1/2 in, the rails without the saw cuts, a little less for the mitres.
    expect(frame?.kg?.nominal).toBeGreaterThan(0.4 * 78.5 * 0.0254 * 0.9);
    expect(frame?.kg?.nominal).toBeLessThan(0.4 * 78.5 * 0.0254 * 1.01);
  });
});

it.each([
  ['natural ash', '#d3bf9c'],
  ['Black', '#1f1d1b'],
  ['#AABBCC', '#aabbcc'],
  ['gray', '#8d8b88'],
  ['like the sea at noon', undefined],
])('the colour “%s” is shown', (words, shown) => expect(colourOf(words)).toBe(shown));
