/** Practitioners' cases of packages, canvases and float frames, worked by hand. Common practice, no source, but where one is named. */
import { describe, expect, it } from 'vitest';
import { contentsFor } from '../../src/core/package/rabbet-items';
import { countClips } from '../../src/core/package/clips';
import { floatOf } from '../../src/core/package/float';
import { packageProblems } from '../../src/core/package/problems';
import { standOutOf } from '../../src/core/package/stand-out';
import type { Contents } from '../core/open';
import { fitIn, inches, measured, opened, stackIn, withoutMat, type Opened } from '../core/package/opened';

/** A mat over nothing, whose boards and the rest are as thick as they measure. */
function stacked(layers: number, held: Contents['package'], rabbetDepth?: string): Opened {
  return opened({
    windows: { kind: 'window', size: '8 x 10' },
    frame: { size: '12 x 14', ...(rabbetDepth === undefined ? {} : { rabbetDepth }) },
    mat: { layers: Array.from({ length: layers }, () => measured('1/16')) },
    package: held,
  });
}

const acrylic = { material: 'acrylic', ...measured('1/8') } as const;
const foam = measured('3/16');
const noMount = { without: true };

describe('the stack', () => {
  it.each([
    ['acrylic 1/8, one mat 1/16, foam board 3/16: a rabbet of 3/8', 1, noMount, '0', 3 / 8],
    ['the same with a double mat: 7/16', 2, noMount, '0', 7 / 16],
    ['acrylic 1/8, mat 1/16, mount board 1/16, foam board 3/16: 7/16', 1, measured('1/16'), '0', 7 / 16],
    ['and with 1/8 for fixing 9/16', 1, measured('1/16'), '1/8', 9 / 16],
  ])('%s', (_, layers, mountBoard, room, depth) => {
    const held = { glazing: acrylic, mountBoard, backing: foam, fixing: { room } };
    expect(inches(fitIn(stacked(layers, held)).needs.nominal)).toBeCloseTo(depth, 12);
    const exact = fitIn(stacked(layers, held, `${depth * 16}/16`));
    expect(exact).toMatchObject({ verdict: 'fits', free: { nominal: expect.closeTo(0, 9) as number } });
    expect(fitIn(stacked(layers, held, `${depth * 16 - 1}/16`)).verdict).toBe('does not fit');
  });
});

describe('canvases', () => {
  const ask = { shelf: [], wallGap: 0 };
  const standOut = (found: Opened) => standOutOf(found.job, found.layout, stackIn(found), ask)?.standOut;
  const canvas = (thickness: string) => [{ kind: 'painting on canvas', size: '16x20', thickness } as const];
  const window = { kind: 'window', picture: 1, size: '12x16' } as const;

  it('3/4 deep with mats and glass of 1/4 in a rabbet of 3/8: the stack is 1, it stands out 5/8', () => {
    const found = opened({
      pictures: canvas('3/4'),
      frame: { size: '16x20', rabbetDepth: '3/8' },
      windows: window,
      mat: { layers: [measured('1/16'), measured('1/16')] },
      package: { glazing: measured('1/8') },
    });
    expect(inches(stackIn(found).contents.nominal)).toBeCloseTo(1, 12);
    expect(inches(standOut(found)?.nominal)).toBeCloseTo(5 / 8, 12);
    expect(packageProblems(found.job, found.layout)).toContainEqual(
      expect.objectContaining({ code: 'stands-out-behind', severity: 'note', value: '5/8 in' }),
    );
  });

  it('1 1/2 deep with a backing of 1/4 in a rabbet of 1/2: it stands out 1 1/4', () => {
    const found = withoutMat({
      pictures: canvas('1 1/2'),
      frame: { size: '16x20', rabbetDepth: '1/2' },
      windows: window,
      package: { backing: { material: 'foam board', ...measured('1/4') } },
    });
    expect(inches(standOut(found)?.nominal)).toBeCloseTo(1.25, 12);
  });

  it('16 x 20: four clips', () => {
    expect(countClips({ width: 16 * 25.4, height: 20 * 25.4 })).toMatchObject({
      total: 4,
      each: { left: 1, top: 1, right: 1, bottom: 1 },
    });
  });

  it('in a float frame: inside = canvas + 2 gaps', () => {
    const { job, layout } = withoutMat({
      pictures: canvas('1 1/2'),
      frame: { size: '16x20', build: 'float', float: { gap: '1/4', insideDepth: '1 3/4', setBack: '1/8' } },
      windows: window,
    });
    const found = floatOf(job, layout, [])!;
    expect([found.inside.width, found.inside.height].map(inches)).toEqual([16.5, 20.5]);
    expect(inches(found.lies?.packing)).toBeCloseTo(1 / 8, 12);
  });
});

describe('sizes of frames', () => {
  it('a nominal 16x20 has a rabbet of 16 1/8 x 20 1/8; one that measures 16x20 there takes 15 7/8 x 19 7/8', () => {
    const { layout } = stacked(1, {});
    expect(inches(layout.frame.rabbet.width - layout.frame.blank.width)).toBeCloseTo(1 / 8, 12);
    const takes = contentsFor({ width: 16 * 25.4, height: 20 * 25.4 }, layout.frame.allowance);
    expect([takes.width, takes.height].map(inches)).toEqual([15.875, 19.875]);
  });
});

describe('air', () => {
  const codes = (size: string, layers: number, held: Contents['package'] = {}) => {
    const { job, layout } = opened({
      pictures: [{ size }],
      mat: { layers: Array.from({ length: layers }, () => ({ thickness: '1/16' })) },
      package: held,
    });
    return packageProblems(job, layout).map(({ code }) => code);
  };

  it('a loose sheet larger than 11x14 behind one 4-ply mat is told; with two, 8-ply or a spacer it is not', () => {
    expect(codes('11x14', 1)).toEqual([]);
    expect(codes('12x16', 1)).toEqual(['air-for-size']);
    expect(codes('16x12', 1)).toEqual(['air-for-size']);
    expect(codes('12x16', 2)).toEqual([]);
    expect(codes('12x16', 1, { spacer: { thickness: '1/16' } })).toEqual([]);
    expect(codes('12x16', 1, { hinging: { method: 'glued down' } })).toEqual([]);
  });

  it('8-ply does, which measures 0.100 to 0.120 in (S. Saitzyk, Art Hardware, 1987: its plies)', () => {
    const { job, layout } = opened({
      pictures: [{ size: '12x16' }],
      mat: { layers: [{ thickness: '0.110 in', thinnest: '0.100 in', thickest: '0.120 in' }] },
    });
    expect(packageProblems(job, layout)).toEqual([]);
  });
});
