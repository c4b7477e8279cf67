/**
 * Practitioners' cases of layers, bevels and several windows, worked by hand.
 *
 * Of the same collection these wait for later work:
 * - ranking ready-made sizes, two of them side by side, how many cards fit a sheet: choosing a frame;
 * - oval over oval, parallel and as two ellipses: ovals;
 * - stack, stand-out, the rabbet and what it takes: package, canvas and float;
 * - pieces from whole sheets and remnants: sheets;
 * - weight of glass: pieces; hooks, wire and a row on a wall are held in test/core/hanging;
 * - the optical centre by the diagonal construction: a further rule for borders.
 */
import { describe, expect, it } from 'vitest';
import { planned, type Contents } from '../core/open';
import { SOURCE, type Case, type Expected } from './case';
import { checkCases } from './check-cases';

function inches(has: string, job: Contents, expected: Expected): Case {
  return { has, source: SOURCE, unit: 'in', job, expected };
}

const pictures = (count: number, size: string, overlap = '1/8'): Contents['pictures'] =>
  Array.from({ length: count }, () => ({ size, overlap }));
const ids = (count: number) => Array.from({ length: count }, (_, index) => String(index + 1));
const framed: Contents = { windows: { kind: 'window', size: '7 3/4 x 9 3/4' }, frame: { size: '14x18' } };

describe('layers and bevels', () => {
  checkCases([
    inches('double mat with a 1/4 lip of 1/16 board', { ...framed, mat: { layers: [{ thickness: '1/16' }, { thickness: '1/16', reveal: '1/4' }] } }, {
      shownStrip: 3 / 16, bevelRun: 1 / 16, topOpening: [8.25, 10.25], window: [7.75, 9.75],
    }),
    inches('8-ply board 1/8 thick at 45 degrees', { ...framed, mat: { layers: [{ thickness: '1/8' }] } }, { bevelRun: 1 / 8, window: [7.75, 9.75] }),
    inches('the same with 7 3/4 x 9 3/4 meant at the face', {
      pictures: [{ size: '8x10', overlap: '1/8' }], frame: { size: '14x18' },
      windows: { kind: 'window', picture: 1, size: '7 3/4 x 9 3/4' }, mat: { measuredAt: 'face', layers: [{ thickness: '1/8' }] },
    }, { window: [7.5, 9.5], overlap: 0.25 }),
  ]); // prettier-ignore

  it('a bevel of 1/8 at 45 degrees slopes for 0.177 in (geometry: t times the root of 2)', () => {
    const [layer] = planned({ ...framed, mat: { layers: [{ thickness: '1/8' }] } }).layout.layers;
    expect(Math.hypot(layer?.bevel.run ?? 0, layer?.thickness ?? 0) / 25.4).toBeCloseTo(0.177, 3);
  });

  it('4-ply measures 0.050 to 0.060 in (Saitzyk, Art Hardware, 1987), and the default board is almost that 1/16', () => {
    for (const thickness of ['0.050 in', '0.060 in']) {
      const [layer] = planned({ ...framed, mat: { layers: [{ thickness }] } }).layout.layers;
      expect(layer?.bevel.run).toBeCloseTo(Number(thickness.slice(0, 5)) * 25.4, 9);
    }
    const [usual] = planned(framed).layout.layers;
    expect(usual?.thickness).toBeCloseTo(25.4 / 16, 9);
  });

  it('a hand cut from the back runs about t past the corner of the opening (common practice, no source)', () => {
    for (const thickness of [1.27, 1.5875, 3.175]) {
      const { plan } = planned({ ...framed, mat: { layers: [{ thickness: `${thickness} mm` }] } });
      const cuts = plan.layers[0]?.windows[0]?.cuts.back ?? [];
      expect(cuts).toHaveLength(4);
      for (const { overcutStart } of cuts) expect(overcutStart).toBeCloseTo(thickness, 9);
    }
  });

  it('45 degrees, 1.4 mm: edges 1.4 mm apart per side, the back opening 2.8 mm smaller than the face (geometry)', () => {
    const { layout } = planned({ ...framed, mat: { layers: [{ thickness: '1.4 mm' }] } });
    const { face, back } = layout.windows[0]?.layers[0] ?? {};
    expect((face?.right ?? 0) - (face?.left ?? 0) - ((back?.right ?? 0) - (back?.left ?? 0))).toBeCloseTo(2.8, 9);
    expect((back?.left ?? 0) - (face?.left ?? 0)).toBeCloseTo(1.4, 9);
  });
});

describe('several windows', () => {
  const three = pictures(3, '5x7');
  const plaques = Array.from({ length: 4 }, () => ({ kind: 'window', size: '5 x 4' }) as const);
  const nine: Contents = {
    frame: { size: '20x20' },
    windows: { kind: 'grid', columns: 3, gap: '1', items: Array.from({ length: 9 }, () => ({ kind: 'window', size: '3 3/4 x 3 3/4' }) as const) },
  }; // prettier-ignore

  checkCases([
    inches('three 5x7 in 24x12, four equal spaces', { pictures: three, frame: { size: '24x12' }, windows: { kind: 'row', gap: 'share with borders', items: ids(3) } }, {
      window: [4.75, 6.75], gap: 2.4375, borders: [2.4375, 2.625, 2.4375, 2.625],
    }),
    inches('three 5x7 in 24x12, gaps 1 1/2', { pictures: three, frame: { size: '24x12' }, windows: { kind: 'row', gap: '1 1/2', items: ids(3) } }, {
      gap: 1.5, borders: [3.375, 2.625, 3.375, 2.625],
    }),
    inches('four plaques 5 wide on 33, 2 at each end', { frame: { size: '33x12' }, windows: { kind: 'row', gap: 'share between', items: plaques }, borders: { sides: '2' } }, {
      gap: 3, borders: [2, 4, 2, 4],
    }),
    inches('nine windows 3 3/4 square in 20x20, gap 1', nine, { gap: 1, borders: [3.375, 3.375, 3.375, 3.375], bridge: 1, never: ['bridge-narrow'] }),
    inches('the same as a double mat, reveal 1/4', { ...nine, mat: { layers: [{}, { reveal: '1/4' }] } }, {
      bridge: 0.5, says: ['bridge-narrow'], words: [/Only 1\/2 in of board/, /3\/4 in/],
    }),
  ]); // prettier-ignore
});
