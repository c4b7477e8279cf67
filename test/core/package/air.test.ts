/** Air before the picture and the mat on it: how much there is, and how much is asked by whom. */
import { describe, expect, it } from 'vitest';
import { setAll } from '../../../src/core/job/edit';
import { airOf, LEAST_AIR } from '../../../src/core/package/air';
import { matOnPictures } from '../../../src/core/package/pressure';
import { packageProblems } from '../../../src/core/package/problems';
import type { Problem } from '../../../src/core/problem';
import { written, type Contents } from '../open';
import { inches, measured, opened, withoutMat, type Opened } from './opened';

const small = [{ size: '8x10' }];
const about = ({ job, layout }: Opened): readonly Problem[] => packageProblems(job, layout);
const codes = (found: Opened) => about(found).map(({ code }) => code);
const airs = ({ job, layout }: Opened) => airOf(job, layout);

/** The job with the fix of its one problem made. */
function mended(contents: Contents, code: string): Opened {
  const problem = about(opened(contents)).find((one) => one.code === code);
  return opened(setAll(written(contents), problem!.fix!.edits) as Contents);
}

describe('how much air there is', () => {
  it('is mats and spacer over a picture that the mat rests on', () => {
    const layers = [measured('1/16'), { thickness: '1/16', thinnest: '0.05 in', thickest: '0.07 in' }];
    const [air] = airs(opened({ pictures: small, mat: { layers }, package: { spacer: { thickness: '1/8' } } }));
    expect(air).toMatchObject({ index: 0, layers: 2 });
    expect([air!.air.least, air!.air.nominal, air!.air.greatest].map(inches)).toEqual([0.2375, 0.25, 0.2575]);
  });

  it('is less by picture and hinges where it floats in the window', () => {
    const [air] = airs(
      opened({
        pictures: [{ size: '8x10', overlap: 'shows 1/4', ...measured('0.5 mm') }],
        mat: { layers: [measured('3 mm')] },
        package: { hinging: measured('0.2 mm') },
      }),
    );
    expect(air!.air.nominal).toBeCloseTo(2.3, 12);
  });

  it('is as the mat gives it where only a margin of the sheet is shown: the mat still holds the sheet', () => {
    const picture = { size: '8x10', image: '6x8', overlap: 'shows 1/4', ...measured('0.5 mm') };
    const [air] = airs(opened({ pictures: [picture], mat: { layers: [measured('3 mm')] } }));
    expect(air!.air.nominal).toBe(3);
  });

  it('is the spacer alone without a mat, and nothing without that', () => {
    expect(airs(withoutMat({ pictures: small }))[0]?.air.greatest).toBe(0);
    const spaced = withoutMat({ pictures: small, package: { spacer: { thickness: '1/4' } } });
    expect(inches(airs(spaced)[0]?.air.nominal)).toBe(0.25);
    expect(codes(spaced)).toEqual([]);
  });

  it('is not asked without glazing, as of a canvas', () => {
    expect(airs(opened({ pictures: small, package: { glazing: { material: 'none' } } }))).toEqual([]);
    expect(airs(withoutMat({ pictures: [{ size: '8x10', kind: 'painting on canvas' }] }))).toEqual([]);
  });
});

describe('how much is asked', () => {
  it('FACTS, Standard Guide for Maximum Preservation Framing, cl. 10.01 (as quoted): 0.045 in at the least', () => {
    expect(inches(LEAST_AIR)).toBe(0.045);
    const board = (thinnest: string): Contents => ({ pictures: small, mat: { layers: [{ thickness: '0.050 in', thinnest }] } }); // prettier-ignore
    expect(codes(opened(board('0.045 in')))).toEqual([]);
    expect(about(opened(board('0.044 in')))).toMatchObject([
      { code: 'air-too-little', severity: 'warning', value: '0.044 in', limit: '0.045 in', at: 'package.spacer' },
    ]);
  });

  it('never nothing (Library of Congress, Guide to Preservation Matting and Framing)', () => {
    expect(about(withoutMat({ pictures: small }))).toMatchObject([
      { code: 'picture-touches-glazing', severity: 'warning', remedy: 'a spacer of 1/16 in' },
    ]);
    const thick = { size: '8x10', overlap: 'shows 1/4', thickness: '1/8 in' };
    expect(codes(opened({ pictures: [thick] }))).toContain('picture-touches-glazing');
  });

  it.each(['photograph', 'pastel or charcoal'] as const)(
    'a double mat for a %s (Florida Department of State, State Archives)',
    (kind) => {
      const of = (layers: number, held: Contents['package'] = {}): Contents => ({
        pictures: [{ size: '8x10', kind, image: '6x8', overlap: 'shows 1/4' }],
        mat: { layers: Array.from({ length: layers }, () => ({})) },
        package: held,
      });
      expect(about(opened(of(1)))).toMatchObject([{ code: 'air-for-medium', severity: 'warning' }]);
      expect(codes(opened(of(2)))).toEqual([]);
      expect(codes(opened(of(1, { spacer: { thickness: '1/16' } })))).toEqual([]);
      expect(codes(mended(of(1), 'air-for-medium'))).toEqual([]);
    },
  );

  it('is told once for all pictures that lack it, with the fix that gives it to all', () => {
    const contents: Contents = { pictures: Array.from({ length: 7 }, (_, at) => ({ size: '5x7', kind: 'photograph' as const, title: `Tide ${at}` })) }; // prettier-ignore
    const [problem, ...more] = about(opened(contents));
    expect(more).toEqual([]);
    expect(problem?.message).toContain(
      'picture "Tide 0", picture "Tide 1", picture "Tide 2", picture "Tide 3" and 3 more',
    );
    expect(codes(mended(contents, 'air-for-medium'))).toEqual([]);
  });

  it('in units that change nothing', () => {
    const of = (units: 'in' | 'mm') =>
      airs(opened({ units, pictures: [{ size: '12 x 16 in', thickness: '0.3 mm' }], mat: { layers: [{ thickness: '1/16 in' }] } })); // prettier-ignore
    expect(of('mm')).toEqual(of('in'));
  });
});

describe('the mat on the picture', () => {
  const on = (picture: NonNullable<Contents['pictures']>[number]) => {
    const { job, layout } = opened({ pictures: [picture], package: { hinging: measured('0.2 mm') } });
    return matOnPictures(job, layout);
  };

  it('presses on what is raised or rubs off, where it rests on the image', () => {
    for (const kind of ['pastel or charcoal', 'textile', 'painting on canvas'] as const) {
      expect(on({ size: '8x10', kind, thickness: '1 mm' })).toMatchObject([{ index: 0, kind: 'presses' }]);
      expect(on({ size: '8x10', image: '6x8', overlap: 'shows 1/4', kind, thickness: '1 mm' })).toEqual([]);
    }
    expect(on({ size: '8x10', kind: 'print', thickness: '0.3 mm' })).toEqual([]);
  });

  it('presses on the highest places of a relief: strips as high as those and the hinges', () => {
    const relief = { size: '8x10', thickness: '1 mm', thinnest: '0.5 mm', thickest: '1.4 mm' };
    expect(on(relief)).toEqual([{ index: 0, kind: 'presses', strips: expect.closeTo(1.6, 12) as number }]);
  });

  it('lies hollow round what is thicker than a board (common practice, no source)', () => {
    expect(on({ size: '8x10', thickness: '1/16 in' })).toEqual([]);
    expect(on({ size: '8x10', thickness: '2 mm' })).toEqual([
      { index: 0, kind: 'hollow', strips: expect.closeTo(2.2, 12) as number },
    ]);
    expect(on({ size: '8x10', thickness: '2 mm', overlap: 'shows 1/4' })).toEqual([]);
  });

  it('is told as a warning or a note', () => {
    expect(about(opened({ pictures: [{ size: '8x10', kind: 'textile', thickness: '1 mm' }] }))).toMatchObject([
      { code: 'mat-presses-picture', severity: 'warning', at: 'pictures[0]' },
    ]);
    expect(about(opened({ pictures: [{ size: '8x10', thickness: '2 mm' }] }))).toMatchObject([
      { code: 'mat-lies-hollow', severity: 'note', remedy: 'strips of board 0.087 in high beside the picture' },
    ]);
  });
});
