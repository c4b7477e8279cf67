/** A dust cover is one thing in every list: made where a back is open and flat, and nowhere where something stands out. */
import { describe, expect, it } from 'vitest';
import { judgeCare } from '../../../src/core/care/judge-care';
import { setAll } from '../../../src/core/job/edit';
import { answerPackage } from '../../../src/core/package/answer';
import { jobPieces } from '../../../src/core/pieces/job-pieces';
import { planned, written, type Contents } from '../open';

function toldOf(contents: Contents) {
  const { job, layout } = planned(contents);
  const { checkList, problems } = answerPackage(job, layout, { shelf: [] });
  const { pieces, weight } = jobPieces(job, layout);
  return {
    asked: checkList.find(({ what }) => what === 'dust cover')!.words.startsWith('paper'),
    cut: pieces.some(({ kind }) => kind === 'dust cover'),
    weighed: weight.notCounted.includes('the dust cover'),
    kept: judgeCare(job, layout)
      .items.find(({ key }) => key === 'dust')!
      .now.startsWith('dust cover'),
    warning: problems.find(({ code }) => code === 'dust-cover-over-stand-out'),
  };
}

const YES = { asked: true, cut: true, weighed: true, kept: true };
const NO = { asked: false, cut: false, weighed: false, kept: false };

const canvas = (rabbetDepth: string, more: Contents['package'] = {}): Contents => ({
  pictures: [{ kind: 'painting on canvas', size: '16x20', thickness: '3/4 in' }],
  frame: { size: '16x20', rabbetDepth },
  mat: { layers: [] },
  package: more,
});
const print = (frame: Contents['frame']): Contents => ({
  pictures: [{ size: '8x10' }],
  frame: { size: '11x14', ...frame },
});

describe('without a word of it in the job', () => {
  it.each([
    ['an open back', print({}), YES],
    ['a deep frame', print({ build: 'deep', rabbetDepth: '1 3/8 in' }), YES],
    ['a back of its own', print({ build: 'with back' }), NO],
    ['a canvas that the rabbet hides', canvas('3/4 in'), YES],
    ['a canvas that stands out', canvas('11/16 in'), NO],
    ['a canvas behind which a backing stands out', canvas('3/4 in', { backing: { material: 'hardboard', thickness: '1/8 in' } }), NO], // prettier-ignore
    [
      'paper behind a mat that clips hold',
      { ...print({ rabbetDepth: '1/4 in' }), package: { fixing: { kind: 'offset clips' as const } } },
      NO,
    ],
  ])('%s', (_, contents, expected) => {
    expect(toldOf(contents)).toMatchObject({ ...expected, warning: undefined });
  });
});

it('is warned of where the job asks for one all the same, and the fix takes it away', () => {
  const asked = canvas('5/8 in', { dustCover: true });
  const { warning, cut } = toldOf(asked);
  expect(cut).toBe(true);
  expect(warning).toMatchObject({ value: '1/8 in', at: 'package.dustCover' });
  expect(toldOf(setAll(written(asked), warning!.fix!.edits))).toMatchObject({ ...NO, warning: undefined });
  expect(toldOf(canvas('3/4 in', { dustCover: true })).warning).toBeUndefined();
});
