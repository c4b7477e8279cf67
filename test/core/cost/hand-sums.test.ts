/** Whole cost sheets worked out by hand to the smallest coin: currencies of two, none and three decimals. */
import { describe, expect, it } from 'vitest';
import type { Contents } from '../open';
import { linesOf, PLAIN, PLAIN_PRICES, PLAIN_SHELF, pricesOf, sheetOf, shelfOf, sumsOf } from './costed';

describe('euros: boards by the sheet, moulding by the foot, a margin of half, up to 0.05', () => {
  const shelf = shelfOf(...PLAIN_SHELF);

  it('with the waste of its sheets', () => {
    const sheet = sheetOf(PLAIN, shelf, pricesOf(...PLAIN_PRICES));
    expect(linesOf(sheet)).toEqual([
      'Glazing: 20.00', // 16 x 20 in = 320 / 144 sq ft, at 9.00
      'Mat layer 1: 11.00',
      'Mount board: 8.00',
      // An opening of 16 x 20 in of 2 in moulding takes 88 in (trade pages: 2 (W + H) + 8 x width): 7 1/3 ft at 1.80.
      'Moulding: 13.20',
      'Hinges: 0.25',
      'Points: 1.10', // 72 in = 1.8288 m, at 0.60 is 1.09728
      'Hooks on the wall: 0.70',
      'Rings: 0.40',
      'Openings: 4.00',
      'Layout: 5.00',
      'Cutting, straight: 1.20', // 2 of 60 min at 36.00
      'Fitting: 7.20', // 12 min
      'Fixing the hangers: 3.00', // 5 min
    ]);
    // 20 + 11 + 8 + 13.20 = 52.20; 0.25 + 1.10 + 0.70 + 0.40 = 2.45; 4 + 5 = 9; 1.20 + 7.20 + 3 = 11.40: 75.05 in all.
    expect(Object.values(sheet.groups).map(String)).toEqual(['52.2', '2.45', '9', '11.4']);
    expect(sumsOf(sheet)).toEqual({
      overhead: '9.38', // 12.5 % of 75.05 = 9.38125
      cost: '84.43',
      earning: '84.43', // half of the price is as much again as the cost
      price: '168.86',
      rounding: '0.04',
      net: '168.90',
      taxes: ['13.51'], // 8 % of 168.90 = 13.512
      total: '182.41',
    });
    expect(sheet.notCounted).toEqual([]);
  });

  it('without it: the area of the piece alone', () => {
    const sheet = sheetOf(PLAIN, shelf, pricesOf(...PLAIN_PRICES, 'waste,not shared'));
    // 320 of 1280 sq in: a quarter of 11.00 and of 8.00.
    expect(linesOf(sheet).slice(1, 3)).toEqual(['Mat layer 1: 2.75', 'Mount board: 2.00']);
    // 75.05 − 8.25 − 6.00 = 60.80, and 12.5 % of that; 136.80 lies on the step.
    expect(sumsOf(sheet)).toEqual({
      overhead: '7.60',
      cost: '68.40',
      earning: '68.40',
      price: '136.80',
      rounding: '0.00',
      net: '136.80',
      taxes: ['10.94'], // 10.944
      total: '147.74',
    });
  });
});

describe('yen, which have no decimals: by area, a markup, to the nearest hundred, two taxes', () => {
  const job: Contents = {
    title: 'Four linocuts',
    units: 'mm',
    windows: {
      kind: 'row',
      gap: '10 mm',
      items: [1, 2, 3].map(() => ({ kind: 'window', size: '90 x 90 mm' }) as const).concat([{ kind: 'window', size: '90 x 90 mm', shape: 'oval' } as never]), // prettier-ignore
    },
    frame: {
      size: '500 x 400 mm',
      allowance: 0,
      name: 'Box',
      comesWith: ['fixings', 'hangers', 'glazing', 'dust cover'],
    },
    mat: { layers: [{ board: 'Natural grey' }] },
    package: { mountBoard: { without: true }, backing: { material: 'none' }, hinging: { method: 'none' } },
    hanging: { hanger: 'rings on hooks' },
  };

  it('adds up', () => {
    const sheet = sheetOf(
      job,
      shelfOf('frame,Box,500 mm,400 mm,,,,,,,,,3300,', 'hook,Hook,,,,,,,,,,30 lb,35.4,'),
      pricesOf(
        'currency,JPY',
        'board charged,by area',
        'board,2400,m2,natural GREY',
        'first opening,500',
        'further opening,150',
        'odd shape,300',
        'hour,3600',
        'cut straight,1.5,cut',
        'cut curve,5 min',
        'fit,7 min',
        'overhead,3 %',
        'markup,40 %',
        'rounding,nearest 100',
        'tax,7.8 %,,State tax',
        'tax,2.25 %,,Town tax',
      ),
    );
    expect(linesOf(sheet)).toEqual([
      'Mat layer 1: 480', // 0.2 m² at 2400
      'Frame: 3300',
      'Hooks on the wall: 71', // 2 at 35.4
      'Openings: 950', // 500 + 3 x 150
      'Odd shapes: 300',
      'Cutting, straight: 1080', // 12 cuts of 1.5 min: 18 min at 3600 an hour
      'Cutting, curves: 300',
      'Fitting: 420',
    ]);
    // 480 + 3300 + 71 + 950 + 300 + 1080 + 300 + 420 = 6901
    expect(sumsOf(sheet)).toEqual({
      overhead: '207', // 207.03
      cost: '7108',
      earning: '2843', // 2843.2
      price: '9951',
      rounding: '49',
      net: '10000',
      taxes: ['780', '225'],
      total: '11005',
    });
  });
});

describe('dinars of Bahrain, which have three decimals: by united inches, in each layer, tax within the price', () => {
  const job: Contents = {
    title: 'Chart of the roads',
    windows: { kind: 'window', size: '8 x 10 in' },
    frame: {
      size: '11 x 14 in',
      allowance: 0,
      name: 'Oak',
      comesWith: ['fixings', 'hangers', 'glazing', 'dust cover'],
    },
    mat: { layers: [{ board: 'Soft white' }, { board: 'Deep blue', reveal: '1/4 in' }] },
    package: { mountBoard: { without: true }, backing: { material: 'none' } },
    hanging: { hanger: 'rings on hooks' },
  };

  it('adds up', () => {
    const sheet = sheetOf(
      job,
      shelfOf('frame,Oak,14,11,,,,,,,,,4.500,', 'hook,Hook,,,,,,,,,,30 lb,0.1115,'),
      pricesOf(
        'currency,BHD',
        'board charged,by united inches',
        'board,0.065,united in',
        'board,0.080,united in,Deep blue',
        'openings,by layer',
        'first opening,1.250',
        'hour,6.000',
        'cut straight,1.25 min,opening',
        'part,0.035,frame,hinges',
        'margin,35 %',
        'rounding,nearest 0.025',
        'tax,10 %,,Sales tax',
        'tax included,yes',
      ),
    );
    expect(linesOf(sheet)).toEqual([
      'Mat layer 1: 1.625', // 11 + 14 = 25 united inches at 0.065
      'Mat layer 2: 2.000', // at 0.080
      'Frame: 4.500',
      'Hinges: 0.035',
      'Hooks on the wall: 0.223', // 2 at 0.1115
      'Openings: 2.500', // once in each of two layers
      'Cutting, straight: 0.250', // 2 openings of 1.25 min: 2.5 of 60 min at 6.000
    ]);
    expect(sumsOf(sheet)).toEqual({
      overhead: undefined,
      cost: '11.133',
      earning: '5.995', // 11.133 x 35 / 65 = 5.99469
      price: '17.128',
      // With 10 % 18.8408, 753.6 steps of 0.025: 754 of them are 18.850, of which 10/110 is tax, 1.71364.
      rounding: '0.008',
      net: '17.136',
      taxes: ['1.714'],
      total: '18.850',
    });
  });
});
