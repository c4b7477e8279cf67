/** The stack: its order, where each item lies, what it may be at least and at most, and pictures that float in a window. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stackOf, type Stack } from '../../../src/core/package/stack';
import { contents } from '../arbitrary-jobs';
import { tryPlan, written, type Contents } from '../open';
import { inches, measured, opened, stackIn, withoutMat } from './opened';

const all: Contents = {
  pictures: [{ size: '8x10 in', title: 'Bracken', ...measured('1/32 in') }],
  frame: { size: '11x14 in' },
  mat: { layers: [{ ...measured('1/16 in'), board: 'White' }, measured('1/16 in')] },
  package: {
    glazing: { material: 'glass', ...measured('1/8 in') },
    spacer: { thickness: '1/4 in' },
    hinging: { ...measured('1/64 in') },
    mountBoard: measured('1/16 in'),
    backing: measured('3/16 in'),
    fixing: { room: '1/8 in' },
  },
};

describe('the stack', () => {
  it('is told from the front with where each item lies', () => {
    const { items, contents, whole } = stackIn(opened(all));
    expect(items.map(({ name, from, thickness }) => [name, inches(from.nominal), inches(thickness.nominal)])).toEqual([
      ['Glass', 0, 1 / 8],
      ['Spacer', 1 / 8, 1 / 4],
      ['Layer 1: White', 3 / 8, 1 / 16],
      ['Layer 2: Second board', 7 / 16, 1 / 16],
      ['Picture: Bracken', 1 / 2, 1 / 32],
      ['Hinges', 17 / 32, 1 / 64],
      ['Mount board', 35 / 64, 1 / 16],
      ['Backing: foam board', 39 / 64, 3 / 16],
      ['Room for points', 51 / 64, 1 / 8],
    ]);
    expect(inches(contents.nominal)).toBeCloseTo(51 / 64, 12);
    expect(inches(whole.nominal)).toBeCloseTo(59 / 64, 12);
    expect(whole.least).toBe(whole.greatest);
  });

  it('names the path of each thickness, and whose tolerance it is', () => {
    const { items } = stackIn(opened({ pictures: [{ size: '8x10' }], frame: { size: '11x14' } }));
    expect(items.map(({ at, varies, source }) => [at, varies, source !== undefined])).toEqual([
      ['package.glazing.thickness', 'as usual', true],
      ['mat.layers[0].thickness', 'as usual', true],
      ['pictures[0].thickness', 'unknown', false],
      ['package.hinging.thickness', 'unknown', false],
      ['package.mountBoard.thickness', 'as usual', true],
      ['package.backing.thickness', 'as usual', true],
      ['package.fixing.room', 'unknown', false],
    ]);
  });

  it('adds up what each may be at least and at most: glass 2.5 (EN 572-2, from memory) on board 1/16 (S. Saitzyk, 1987)', () => {
    const { whole } = stackIn(
      opened({
        windows: { kind: 'window', size: '8x10' },
        package: { mountBoard: { without: true }, backing: { material: 'none' }, fixing: { room: 0 } },
      }),
    );
    expect(whole.least).toBeCloseTo(2.3 + 1.5875 - 0.1016, 12);
    expect(whole.nominal).toBeCloseTo(2.5 + 1.5875, 12);
    expect(whole.greatest).toBeCloseTo(2.7 + 1.5875 + 0.1016, 12);
  });

  it('of several pictures counts the thickest, whichever that is', () => {
    const found = opened({
      pictures: [
        { size: '5x7', thickness: '1 mm', thinnest: '0.2 mm', thickest: '1.2 mm' },
        { size: '5x7', thickness: '0.8 mm', thinnest: '0.7 mm', thickest: '2 mm' },
      ],
    });
    const picture = stackIn(found).items.find(({ kind }) => kind === 'picture');
    expect(picture).toMatchObject({
      name: 'Thickest picture',
      at: 'pictures[0].thickness',
      thickness: { least: 0.7, nominal: 1, greatest: 2 },
    });
  });

  it('leaves out a picture that is in no window, and without a mat has the picture behind the glazing', () => {
    const pictures = [
      { id: 'a', size: '8x10', thickness: '1 mm' },
      { id: 'b', size: '8x10', thickness: '9 mm' },
    ];
    const one = stackIn(opened({ pictures, windows: 'a' })).items.find(({ kind }) => kind === 'picture');
    expect(one?.thickness.nominal).toBe(1);
    const bare = stackIn(withoutMat({ pictures: pictures.slice(0, 1), windows: 'a' }));
    expect(bare.items.map(({ kind }) => kind)).toEqual([
      'glazing', 'picture', 'hinges', 'mount board', 'backing', 'room for fixing',
    ]); // prettier-ignore
    expect(bare.items[1]?.from.nominal).toBe(2.5);
  });

  it('of a canvas has nothing but the canvas', () => {
    const found = withoutMat({ pictures: [{ kind: 'painting on canvas', size: '8x10' }] });
    expect(stackIn(found).items.map(({ kind }) => kind)).toEqual(['picture']);
    expect(inches(stackIn(found).whole.nominal)).toBeCloseTo(0.75, 12);
  });
});

describe('a picture that floats in its window', () => {
  const floating = (thickness: string): Stack =>
    stackIn(
      opened({
        pictures: [{ size: '8x10', ...measured(thickness), overlap: 'shows 1/2 in' }],
        mat: { layers: [measured('2 mm')] },
        package: {
          glazing: measured('2 mm'),
          hinging: measured('0.5 mm'),
          mountBoard: measured('1 mm'),
          backing: { material: 'none' },
          fixing: { room: 0 },
        },
      }),
    );

  it('adds nothing, and lies on the mount board', () => {
    const { items, whole } = floating('1 mm');
    expect(whole.nominal).toBeCloseTo(5, 12);
    const [picture, hinges] = [items[2]!, items[3]!];
    expect([picture.kind, picture.from.nominal]).toEqual(['picture', 2.5]);
    expect([hinges.kind, hinges.from.nominal]).toEqual(['hinges', 3.5]);
    expect(items[4]?.from.nominal).toBe(4);
  });

  it('adds what it is thicker than the mat', () => {
    const { items, whole } = floating('4 mm');
    expect(items[2]?.adds.nominal).toBe(2.5);
    expect(items[2]?.from.nominal).toBeCloseTo(2, 12);
    expect(whole.nominal).toBeCloseTo(7.5, 12);
  });
});

describe('of any job', () => {
  it('items follow one another, least to greatest, and units of length change nothing', () => {
    fc.assert(
      fc.property(contents('given'), (job) => {
        const { planned: found } = tryPlan(written(job));
        fc.pre(found !== undefined);
        const { items, contents: inside, whole } = stackOf(found.job, found.layout);
        let end = 0;
        for (const { from, adds, thickness, kind } of items) {
          expect(thickness.least).toBeLessThanOrEqual(thickness.nominal);
          expect(thickness.nominal).toBeLessThanOrEqual(thickness.greatest);
          if (kind !== 'picture' && kind !== 'hinges') expect(from.nominal).toBeCloseTo(end, 9);
          end += adds.nominal;
        }
        expect(whole.nominal).toBeCloseTo(end, 9);
        expect(inside.nominal).toBeLessThanOrEqual(whole.nominal);
        expect(whole.least).toBeLessThanOrEqual(whole.nominal);
        expect(whole.nominal).toBeLessThanOrEqual(whole.greatest);
      }),
      { numRuns: 60, maxSkipsPerRun: 3 },
    );
  });

  it('comes out the same in a job of inches, millimetres and centimetres', () => {
    const [one, ...others] = (['in', 'mm', 'cm'] as const).map((units) => stackIn(opened({ ...all, units })));
    for (const other of others) expect(other).toEqual(one);
  });
});
