/** What stands out behind a frame: seen from the side, held by clips, screwed into wood that is deep enough. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { showFor } from '../../../src/core/layout/show';
import { chooseClip, countClips } from '../../../src/core/package/clips';
import { packageProblems } from '../../../src/core/package/problems';
import { limitsOf, wrongLength } from '../../../src/core/package/screws';
import { seenFromBeside, sideView } from '../../../src/core/package/side-view';
import { standOutOf } from '../../../src/core/package/stand-out';
import { standOutWords } from '../../../src/core/package/stand-out-words';
import type { Shelf } from '../../../src/core/shelf/shelf';
import { startShelf } from '../../../src/core/shelf/start-shelf';
import type { Contents } from '../open';
import { inches, opened, stackIn, withoutMat, type Opened } from './opened';

const INCH = 25.4;
const clips = (...steps: number[]): Shelf => steps.map((step) => ({ kind: 'clip', name: `clip ${step}`, step }));
const screws = (...lengths: number[]): Shelf => lengths.map((length) => ({ kind: 'screw', name: `screw ${length}`, length })); // prettier-ignore
const shelf: Shelf = [...startShelf('inch'), ...screws(INCH / 4, INCH / 2, (INCH * 5) / 8, INCH * 0.75)];

const canvas = (frame: Contents['frame'], thickness = '3/4', held: Contents['package'] = {}): Contents => ({
  pictures: [{ title: 'Harbour', kind: 'painting on canvas', size: '16x20', thickness }],
  frame: { size: '16x20', ...frame },
  windows: { kind: 'window', picture: 1, size: '12x16' },
  package: held,
});
const found = (one: Opened, on = shelf, wallGap = 0) =>
  standOutOf(one.job, one.layout, stackIn(one), { shelf: on, wallGap })!;

describe('a canvas', () => {
  it('3/4 deep in a rabbet of 3/8 stands out 3/8, with its side inside the moulding’s edge', () => {
    const out = found(withoutMat(canvas({ rabbetDepth: '3/8', mouldingWidth: '1 1/4' })));
    expect(inches(out.standOut?.nominal)).toBe(0.375);
    // 1 1/4 of moulding less the lip of 1/4, and half of the allowance of 1/8.
    expect(inches(out.side?.inset)).toBe(1.0625);
    expect(out.side?.angleDegrees).toBeCloseTo((Math.atan(0.375 / 1.0625) * 180) / Math.PI, 9);
    expect(inches(out.clips?.clip.step)).toBe(0.375);
    expect(out.clips?.over).toBeCloseTo(0, 9);
  });

  it('varies as it may itself and as what lies before it may', () => {
    const job = canvas({ rabbetDepth: '1/2' });
    const pictures = [{ ...job.pictures![0]!, thinnest: '11/16', thickest: '13/16' }];
    const { standOut } = found(withoutMat({ ...job, pictures }));
    expect([standOut!.least, standOut!.nominal, standOut!.greatest].map(inches)).toEqual([0.1875, 0.25, 0.3125]);
  });

  it('within the rabbet is not seen and takes flat clips', () => {
    const out = found(withoutMat(canvas({ rabbetDepth: '1' })));
    expect(inches(out.standOut?.nominal)).toBe(-0.25);
    expect(out.side).toBeUndefined();
    expect(out.clips?.clip.step).toBe(0);
  });

  it('in a rabbet of unknown depth says what hides it', () => {
    const one = withoutMat(canvas({}));
    expect(found(one).standOut).toBeUndefined();
    expect(standOutWords(one.job, found(one), showFor(one.job))[0]).toContain(
      '3/4 in deep; a rabbet of so much hides it',
    );
  });

  it('whose depth is not said is taken as 3/4 in, and that is told', () => {
    const { job, layout } = withoutMat({ ...canvas({}), pictures: [{ kind: 'painting on canvas', size: '16x20' }] });
    expect(packageProblems(job, layout)).toMatchObject([
      { code: 'canvas-depth-taken', severity: 'note', at: 'pictures[0].thickness', value: '3/4 in' },
    ]);
  });

  it('in a float frame has no back to stand out of; a print held by points neither', () => {
    const float = withoutMat(canvas({ build: 'float' }));
    expect(standOutOf(float.job, float.layout, stackIn(float), { shelf, wallGap: 0 })).toBeUndefined();
    const print = opened({ pictures: [{ size: '8x10' }] });
    expect(standOutOf(print.job, print.layout, stackIn(print), { shelf, wallGap: 0 })).toBeUndefined();
  });
});

describe('what is seen from the side', () => {
  /** Looks along a line that meets the side, in small steps outward: does it get past the moulding? */
  function isSeen(standOut: number, inset: number, degrees: number): boolean {
    const slope = Math.tan((degrees * Math.PI) / 180);
    // Behind the frame's back is negative; the moulding fills all that is not, from 0 to the inset.
    for (let depth = -standOut; depth < 0; depth += standOut / 400) {
      let free = true;
      for (let x = inset; x >= 0 && free; x -= inset / 400) free = depth + (inset - x) * slope < 0;
      if (free) return true;
    }
    return false;
  }

  it.each([
    [15.875, 14.2875],
    [9.525, 40],
    [31.75, 5],
    [1, 60],
  ])('%d mm standing out, %d mm inside: begins at the angle', (standOut, inset) => {
    const { angleDegrees } = sideView(standOut, inset, 0);
    expect(isSeen(standOut, inset, angleDegrees - 0.5)).toBe(true);
    expect(isSeen(standOut, inset, angleDegrees + 0.5)).toBe(false);
  });

  it('5/8 in standing out as far inside shows at less than 45 degrees', () => {
    expect(sideView(15.875, 15.875, 0).angleDegrees).toBeCloseTo(45, 12);
  });

  it('bumpers keep it off the wall, where they are as thick', () => {
    expect(sideView(10, 20, 4)).toMatchObject({ wallGap: 10, lacking: 6 });
    expect(sideView(10, 20, 10)).toMatchObject({ wallGap: 10, lacking: 0 });
    expect(sideView(10, 20, 15)).toMatchObject({ wallGap: 15, lacking: 0 });
  });

  it('from beside the frame: the eye on the line of sight sees it from there on', () => {
    const side = sideView(10, 20, 10);
    // Twice as far beside as the eye is before the frame's back: 500 - 10.
    expect(seenFromBeside(side, 500)).toBeCloseTo(980, 9);
    expect(seenFromBeside(sideView(0, 20, 10), 500)).toBe(Infinity);
  });
});

describe('clips', () => {
  it('are of the least step that is no less, else the greatest: so by trying all', () => {
    const step = fc.integer({ min: 0, max: 50 });
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 8 }), step, (steps, standOut) => {
        const { clip, over } = chooseClip(standOut, clips(...steps))!;
        const enough = steps.filter((one) => one >= standOut);
        expect(clip.step).toBe(enough.length > 0 ? Math.min(...enough) : Math.max(...steps));
        expect(over).toBe(clip.step - standOut);
      }),
    );
  });

  it('that are sold out do not count, and none is told', () => {
    expect(chooseClip(5, [{ kind: 'clip', name: 'gone', step: 5, count: 0 }])).toBeUndefined();
    const one = withoutMat(canvas({ rabbetDepth: '3/8' }));
    const words = (on: Shelf) => standOutWords(one.job, found(one, on), showFor(one.job)).join(' ');
    expect(words([])).toContain('There is no offset clip on the shelf; one of 3/8 in step is wanted.');
    expect(words(clips(INCH / 4))).toContain('build up the back of the frame by 1/8 in');
    expect(words(clips(INCH / 2))).toContain(
      'pack 1/8 in between each and the stretcher or back that it holds, not under its foot',
    );
  });

  it.each([
    ['8x10', 8, 10, 4],
    ['16x20 (common practice, no source)', 16, 20, 4],
    ['24x24', 24, 24, 4],
    ['24x36', 24, 36, 6],
    ['30x40', 30, 40, 8],
    ['40x60', 40, 60, 10],
  ])('%s: as many as no more than 24 in of a side for each', (_, width, height, total) => {
    const count = countClips({ width: width * INCH, height: height * INCH });
    expect(count.total).toBe(total);
    expect(Math.max(count.apart.across, count.apart.up)).toBeLessThanOrEqual(24 * INCH + 1e-6);
    expect(count.apart.across * count.each.top).toBeCloseTo(width * INCH, 9);
    expect(countClips({ width: height * INCH, height: width * INCH }).total).toBe(total);
  });
});

describe('screws', () => {
  it('are the longest at hand that leaves 1/8 in of wood, and has 1/4 in of hold: so by trying all', () => {
    const length = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(
        fc.array(length, { maxLength: 8 }),
        fc.integer({ min: 0, max: 20 }),
        length,
        (stock, passes, wood) => {
          const { chosen, longest } = limitsOf({ into: 'wood', through: passes, wood }, screws(...stock));
          const right = stock.filter((one) => one <= passes + wood - 3.175 && one >= passes + 6.35);
          expect(chosen?.length).toBe(right.length > 0 ? Math.max(...right) : undefined);
          if (chosen) expect(wrongLength(chosen.length, { longest: longest!, shortest: 0 })).toBeUndefined();
        },
      ),
    );
  });

  it('go into the wood beside the rabbet, whatever the moulding is deep in front of it', () => {
    const out = found(withoutMat(canvas({ rabbetDepth: '3/4', mouldingDepth: '1 1/2' })));
    expect(out.intoFrame).toMatchObject({ chosen: { name: `screw ${(INCH * 5) / 8}` } });
    expect(inches(out.intoFrame.longest)).toBe(0.625);
    expect(found(withoutMat(canvas({}))).intoFrame.longest).toBeUndefined();
  });

  it('into the stretcher no deeper than its bar, at its thinnest', () => {
    const job = canvas({ rabbetDepth: '1/2' });
    const bar = { ...job, pictures: [{ ...job.pictures![0]!, thinnest: '11/16' }] };
    expect(inches(found(withoutMat(bar)).intoBar?.longest)).toBe(0.5625);
  });

  it('say so where none on the shelf is of the right length', () => {
    const one = withoutMat(canvas({ rabbetDepth: '3/8' }));
    const words = (on: Shelf) => standOutWords(one.job, found(one, on), showFor(one.job)).join(' ');
    expect(words(screws(INCH / 2, (INCH * 3) / 8, INCH / 2))).toContain(
      '1/4 in long, never longer; none on the shelf is: it has 3/8 in, 1/2 in.',
    );
    expect(words([])).toContain('1/4 in long, never longer.');
  });

  it.each(['turn buttons', 'offset clips', 'screws', 'groove', 'points'] as const)(
    'of %s never go deeper than the wood beside the rabbet',
    (kind) => {
      const of = (frame: Contents['frame'], screw: string) => {
        const { job, layout } = opened({ pictures: [{ size: '8x10' }], frame: { size: '11x14', ...frame }, package: { fixing: { kind, screw } } }); // prettier-ignore
        return packageProblems(job, layout).filter(({ code }) => code.startsWith('screw'));
      };
      const deep = { rabbetDepth: '3/4', mouldingDepth: '1' };
      expect(of(deep, '3')).toMatchObject([{ code: 'screw-too-long', severity: 'warning', value: '3 in', limit: '5/8 in' }]); // prettier-ignore
      expect(of(deep, '5/8')).toEqual([]);
      expect(of(deep, '1/8')).toMatchObject([{ code: 'screw-too-short', limit: '1/4 in' }]);
      expect(of({}, '1/2')).toMatchObject([{ code: 'screw-depth-unknown', severity: 'note', remedy: 'measure the moulding' }]); // prettier-ignore
    },
  );

  it('none where there is no wood for one', () => {
    const one = withoutMat(canvas({ rabbetDepth: '1/4' }));
    expect(found(one).intoFrame.chosen).toBeUndefined();
    expect(standOutWords(one.job, found(one), showFor(one.job)).join(' ')).toContain(
      'too short to hold: put none there',
    );
  });

  it.each([
    ['3/4', 'screw-too-long', '3/8 in'],
    ['1/8', 'screw-too-short', '1/4 in'],
    ['5/16', undefined, ''],
  ])('of %s in a rabbet of 1/2 is told: %s', (screw, code, limit) => {
    const { job, layout } = withoutMat(canvas({ rabbetDepth: '1/2' }, '1/2', { fixing: { screw } }));
    const told = packageProblems(job, layout).filter((one) => one.code.startsWith('screw'));
    expect(told).toMatchObject(code === undefined ? [] : [{ code, limit, severity: 'warning', at: 'package.fixing.screw' }]); // prettier-ignore
  });
});
