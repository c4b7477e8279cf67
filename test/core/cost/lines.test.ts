/** Single lines of a cost sheet: how boards, mouldings, parts, fixings, openings and steps are counted, and in what words. */
import { describe, expect, it } from 'vitest';
import { money } from '../../../src/core/money';
import type { CostAsk } from '../../../src/core/cost/cost-sheet';
import type { Contents } from '../open';
import { costedOf, PLAIN, PLAIN_SHELF, pricesOf, sheetOf, shelfOf } from './costed';

const shelf = shelfOf(...PLAIN_SHELF);

function line(
  what: string,
  rows: readonly string[],
  contents: Contents = PLAIN,
  things = shelf,
  more: Partial<CostAsk> = {},
) {
  const sheet = sheetOf(contents, things, pricesOf('currency,EUR', ...rows), more);
  const found = sheet.lines.find((one) => one.what === what);
  return found && { quantity: found.quantity, basis: found.basis, amount: found.amount?.toFixed(2) };
}

describe('boards', () => {
  it('by united inches: 16 x 20 in has 36 (common practice, no source)', () => {
    expect(line('Mat layer 1', ['board charged,by united inches', 'board,0.35,united in'])).toEqual({
      quantity: '36 united in',
      basis: 'width + height of 1 of 16 x 20 in of “Soft white” at 0.35 per united in',
      amount: '12.60',
    });
  });

  it('by area: 16 x 20 in has 2 2/9 sq ft; the board’s own price goes before that of all', () => {
    const rows = ['board charged,by area', 'board,9.00,sq ft', 'board,4.50,sq ft,SOFT WHITE'];
    expect(line('Mat layer 1', rows)).toEqual({
      quantity: '≈ 2.2222 sq ft',
      basis: '1 of 16 x 20 in of “Soft white” at 4.50 per sq ft',
      amount: '10.00',
    });
    expect(line('Mount board', rows)?.amount).toBe('20.00');
  });

  it('by area without a row: by the shelf’s price where that is by area, else not counted', () => {
    const sold = shelfOf('board,Soft white,,,,,,,,,,,18,sq ft', 'board,Mount,32,40,,,,,,,,,8,sheet');
    expect(line('Mat layer 1', ['board charged,by area'], PLAIN, sold)?.amount).toBe('40.00');
    expect(line('Mount board', ['board charged,by area'], PLAIN, sold)).toMatchObject({
      basis: 'no price by area of “Mount”, neither in the price list nor on the shelf',
      amount: undefined,
    });
  });

  it('of one board are charged together', () => {
    const both = { ...PLAIN, mat: { layers: [{ board: 'Soft white' }, { board: 'soft white', reveal: '1/4 in' }] } };
    expect(line('Mat layer 1, Mat layer 2', ['board charged,by united inches', 'board,0.5,united in'], both)).toEqual({
      quantity: '72 united in',
      basis: 'width + height of 2 of 16 x 20 in of “Soft white” at 0.50 per united in',
      amount: '36.00',
    });
    expect(line('Mat layer 1, Mat layer 2', [], both)?.amount).toBe('11.00');
  });

  describe('of several jobs from sheets planned together', () => {
    // 16 x 20 and 8 x 10 in: 320 and 80 of 1280 sq in.
    const small = { ...PLAIN, frame: { ...PLAIN.frame, size: '8 x 10 in' }, pictures: [{ size: '4 x 5 in' }] };
    const areas = [320, 80].map((squareInches) => squareInches * 25.4 ** 2);
    const size = { width: 32 * 25.4, height: 40 * 25.4 };
    const used = [{ board: 'Soft White', sheets: [{ size, count: 1, price: money('11.00') }], areas }];
    const matOf = (rows: readonly string[]) =>
      costedOf([PLAIN, small], shelf, pricesOf('currency,EUR', ...rows), { boards: used }).map(({ sheet }) =>
        sheet.lines.find(({ what }) => what === 'Mat layer 1')!,
      );

    it('they share its waste by the area of their pieces', () => {
      const [first, second] = matOf([]);
      expect([first, second].map((one) => one!.amount!.toFixed(2))).toEqual(['8.80', '2.20']);
      expect(second!.basis).toBe('1 sheet of “Soft White”, 32 x 40 in, at 11.00: 20 % by area of all pieces cut from that, waste shared'); // prettier-ignore
    });

    it('or pay the area of their pieces alone', () => {
      // 11.00 x 320 / 1280, and x 80 / 1280 = 0.6875.
      expect(matOf(['waste,not shared']).map((one) => one.amount!.toFixed(2))).toEqual(['2.75', '0.69']);
    });

    it('a board that the plan does not have, or has no price of, is charged by itself', () => {
      const open = [{ ...used[0]!, sheets: [{ size, count: 1 }] }];
      const [costed] = costedOf([PLAIN, small], shelf, pricesOf('currency,EUR'), { boards: open });
      expect(costed!.sheet.lines.find(({ what }) => what === 'Mat layer 1')!.amount!.toFixed(2)).toBe('11.00');
    });
  });
});

describe('moulding', () => {
  const wide = { ...PLAIN, frame: { ...PLAIN.frame, allowance: '1/8 in', lip: '1/4 in', mouldingWidth: '3/4 in' } };
  const stock = shelfOf(...PLAIN_SHELF.slice(1), 'moulding,Ash,,,,,3/4,1/4,,,,,1.80,ft');

  it.each([
    // 2 x (16 1/8 + 20 1/8) + 8 x 1/2 + 8 x 1/8 = 77 1/2 in: 6.4583 ft at 1.80.
    ['as cut', '77 1/2 in', '11.63', '2 x (16 1/8 + 20 1/8) + 8 x (3/4 − 1/4) + 8 x 1/8, as it is cut'],
    // 72 1/2 + 8 x 3/4 = 78 1/2 in: 6.541667 ft.
    ['8 x face', '78 1/2 in', '11.78', '2 x (16 1/8 + 20 1/8) + 8 x 3/4'],
    // 72 1/2 and a tenth: 79 3/4 in, 6.645833 ft.
    ['10 %', '79 3/4 in', '11.96', '2 x (16 1/8 + 20 1/8) and 10 % for the mitres'],
  ])('%s', (waste, length, amount, sum) => {
    expect(line('Moulding', [`mitre waste,${waste}`], wide, stock)).toEqual({
      quantity: length,
      basis: `${length} of “Ash” at 1.80 per ft: ${sum}`,
      amount,
    });
  });

  it('named for all takes the place of the job’s own frame', () => {
    const rows = shelfOf(...PLAIN_SHELF, 'moulding,Elm,,,,,2,,,,,,3,ft');
    // 88 in at 3.00 a foot.
    expect(line('Moulding', ['mitre waste,8 x face'], PLAIN, rows, { moulding: 'elm' })?.amount).toBe('22.00');
  });

  it('that is nowhere is not counted', () => {
    const none = { ...PLAIN, frame: { ...PLAIN.frame, name: 'Elm' } };
    const basis = '“Elm” is neither a frame nor a moulding of the shelf; add it to the shelf, or choose another';
    expect(line('Moulding', [], none)).toMatchObject({ basis, amount: undefined });
  });
});

describe('parts and fixings', () => {
  const closed = {
    ...PLAIN,
    frame: { ...PLAIN.frame, lip: '1/4 in' },
    package: { ...PLAIN.package, backing: {}, dustCover: true, spacer: { thickness: '1/8 in' } },
  };

  it.each([
    ['Dust cover', 'part,0.90,sq ft,dust cover', '2.00', 'area of 16 x 20 in at 0.90 per sq ft'],
    ['Backing of foam board', 'part,10,m2,backing', '2.06', 'area of 16 x 20 in at 10.00 per m2'], // 0.206451 m²
    ['Spacer', 'part,0.50,ft,spacer', '3.00', 'once round 16 x 20 in at 0.50 per ft'],
    ['Points', 'part,0.01,in,points', '0.72', 'once round 16 x 20 in at 0.01 per in'],
    ['Hinges', 'part,0.35,frame,hinges', '0.35', 'at 0.35 per frame'],
  ])('%s', (what, row, amount, basis) => {
    expect(line(what, [row], { ...closed, hanging: PLAIN.hanging! })).toMatchObject({ amount, basis });
    expect(line(what, [], { ...closed, hanging: PLAIN.hanging! })?.amount).toBeUndefined();
  });

  it('a backing that is a board of the shelf is charged as one', () => {
    const things = shelfOf(...PLAIN_SHELF, 'board,foam board,,,,,,,,,,,3.60,sq ft');
    expect(line('Backing', [], closed, things)?.amount).toBe('8.00');
  });

  it('wire by its length with the knots, of the wire that the hanging takes', () => {
    const hanging = {
      hanger: 'rings and wire',
      hooks: 2,
      hangerIn: '1 in',
      hooksApart: '12 in',
      knots: '3 in',
    } as const;
    const things = shelfOf(...PLAIN_SHELF, 'wire,Cord,,,,,,,,,,90 lb,0.60,ft');
    // Rings 18 in apart, hooks 12, and 4 in above them: 5 + 12 + 5 in, and two knots of 3: 28 in, 2 1/3 ft.
    const wired = { ...PLAIN, hanging: { ...hanging, hangerDown: '6 in', wireBelowTop: '2 in' } };
    expect(line('Wire', [], wired, things)).toEqual({
      quantity: '28 in',
      basis: '28 in of “Cord” with its knots at 0.60 per ft',
      amount: '1.40',
    });
    const level = { ...PLAIN, hanging: { ...hanging, hangerDown: '4 in', wireBelowTop: '4 in' } };
    expect(line('Hangers', [], level, things)?.basis).toMatch(/^it can’t hang as the job says: ./);
    const frame: Contents['frame'] = { ...PLAIN.frame, comesWith: ['hangers'] };
    expect(line('Wire', [], { ...wired, frame }, things)?.amount).toBe('1.40');
    expect(line('Wire', [], { ...wired, frame: { ...frame, comesWith: ['wire'] } }, things)).toBeUndefined();
    // With moulding of 3 in in place of 2 the frame is 2 in wider outside, and so are the rings apart: 4 in aside, 4 up.
    const wider = line('Wire', [], wired, shelfOf(...PLAIN_SHELF, 'moulding,Elm,,,,,3,,,,,,1,ft', 'wire,Cord,,,,,,,,,,90 lb,0.60,ft'), { moulding: 'Elm' }); // prettier-ignore
    expect(wider?.amount).toBe((((12 + 2 * Math.sqrt(32) + 6) / 12) * 0.6).toFixed(2));
  });

  it('clips by the piece, a screw for each', () => {
    const canvas: Contents = {
      title: 'Painted sea',
      pictures: [{ kind: 'painting on canvas', size: '16 x 20 in', thickness: '1 in' }],
      mat: { layers: [] },
      frame: { size: '16 x 20 in', rabbetDepth: '5/8 in', mouldingDepth: '1 in', mouldingWidth: '1 in' },
      package: { fixing: { kind: 'offset clips' }, glazing: { material: 'none' } },
      hanging: PLAIN.hanging!,
    };
    const things = shelfOf('clip,Clip,,,,,,,,3/8,,,0.12,', 'screw,Short,,,,,,,,,3/8,,0.03,');
    // One on each side of 16 x 20 in (common practice): four.
    expect(line('Offset clips', [], canvas, things)).toMatchObject({
      basis: '4 of “Clip” at 0.12 each',
      amount: '0.48',
    });
    expect(line('Screws of the clips', [], canvas, things)).toMatchObject({ basis: '4 of “Short” at 0.03 each', amount: '0.12' }); // prettier-ignore
  });

  it('what comes with the frame is not charged; hooks on the wall are', () => {
    const frame: Contents['frame'] = { ...PLAIN.frame, comesWith: ['fixings', 'hangers', 'glazing'] };
    const sheet = sheetOf({ ...PLAIN, frame }, shelf, pricesOf('currency,EUR'));
    expect(sheet.lines.map(({ what }) => what)).toEqual(['Mat layer 1', 'Mount board', 'Moulding', 'Hinges', 'Hooks on the wall']); // prettier-ignore
  });
});

describe('mat work and labour', () => {
  const seven: Contents = {
    ...PLAIN,
    pictures: [],
    windows: {
      kind: 'row',
      gap: '1/2 in',
      items: Array.from({ length: 7 }, () => ({ kind: 'window', size: '1 x 2 in' })),
    },
    mat: { layers: [{ board: 'Soft white' }, { board: 'Mount', reveal: '1/16 in' }] },
  };

  it('the first opening has its own price', () => {
    const rows = ['first opening,4.00', 'further opening,1.50'];
    expect(line('Openings', rows, seven)).toEqual({ quantity: '7 windows', basis: 'first at 4.00, 6 more at 1.50', amount: '13.00' }); // prettier-ignore
    expect(line('Openings', [...rows, 'openings,by layer'], seven)).toEqual({
      quantity: '7 windows in 2 layers',
      basis: 'first at 4.00, 6 more at 1.50, in each layer',
      amount: '26.00',
    });
    expect(line('Openings', ['first opening,4.00'], seven)?.amount).toBe('28.00');
    expect(line('Openings', [], seven)).toBeUndefined();
  });

  it('cuts are counted in every layer', () => {
    const rows = ['hour,30.00', 'cut straight,0.5 min,cut'];
    // 7 x 4 x 2 cuts, 28 min.
    expect(line('Cutting, straight', rows, seven)).toEqual({
      quantity: '28 min',
      basis: '56 straight cuts of 0.5 min, at 30.00 an hour',
      amount: '14.00',
    });
    expect(line('Cutting, straight', ['hour,30.00', 'cut straight,2,opening'], seven)?.quantity).toBe('28 min');
  });

  it('an arch has three straight cuts and a curve, and is an odd shape', () => {
    const arch: Contents = { ...PLAIN, pictures: [], windows: { kind: 'window', size: '8 x 12 in', shape: 'arch' } };
    const rows = ['hour,60', 'cut straight,1,cut', 'cut curve,7', 'odd shape,3'];
    expect(line('Cutting, straight', rows, arch)?.amount).toBe('3.00');
    expect(line('Cutting, curves', rows, arch)).toEqual({ quantity: '7 min', basis: '1 opening of 7 min, at 60.00 an hour', amount: '7.00' }); // prettier-ignore
    expect(line('Odd shapes', rows, arch)?.amount).toBe('3.00');
    expect(line('Cutting, straight', ['hour,60', 'cut straight,1,opening'], arch)).toBeUndefined();
  });

  it('without a mat there is none to lay out', () => {
    const bare = {
      ...PLAIN,
      frame: { ...PLAIN.frame, lip: '1/4 in' },
      mat: { layers: [] },
      pictures: [{ size: '16 x 20 in' }],
    };
    const { lines } = sheetOf(bare, shelf, pricesOf('currency,EUR', 'layout,5', 'first opening,4', 'hour,60', 'cut straight,1,cut')); // prettier-ignore
    expect(lines.filter(({ group }) => group === 'mat work' || group === 'labour')).toEqual([]);
  });
});
