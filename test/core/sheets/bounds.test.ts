/** What no plan can do without: bounds that prove what is plain to see, and none that lies above a plan. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastCost } from '../../../src/core/sheets/bounds';
import { exactPlan } from '../../../src/core/sheets/few-pieces';
import { fieldOf } from '../../../src/core/sheets/field';
import { askOf, piece, planned, sheet } from './sheet-asks';

const bound = (...[pieces, stock, more]: Parameters<typeof askOf>) => leastCost(fieldOf(askOf(pieces, stock, more)));
const small = sheet(32, 40, { cost: 850 });
const large = sheet(40, 60, { cost: 1550 });

describe('a bound', () => {
  it('knows the cheapest sheet that the most demanding piece goes into', () => {
    // 36 x 44 in lies on 40 x 60 alone; eleven more pieces of 2 x 2 find room beside it.
    expect(bound([piece(36, 44, 1), piece(2, 2, 11)], [small, large])).toBe(1550);
  });

  it('counts sheets that nothing goes into as none', () => {
    const fallout = sheet(8, 11, { kind: 'fallout', cost: 0, count: 1 });
    // A hundred of 16 x 20, four on a sheet.
    expect(bound([piece(16, 20, 100)], [sheet(32, 40), fallout])).toBe(25 * 1100);
  });

  it('makes what fits no remnant pay, whatever the remnants cost', () => {
    const remnant = sheet(16, 40, { kind: 'remnant', cost: 0, count: 6 });
    // Of 24 x 30 in one lies on a sheet of 32 x 40 (24 + 24 > 40 and 30 + 30 > 40), and none on 16 x 40.
    expect(bound([piece(24, 30, 9)], [sheet(32, 40), remnant])).toBe(9 * 1100);
  });

  it('of large pieces on sheets of two sizes tells how many sheets there must be', () => {
    // More than half of each side, either way round: one piece a sheet, the small one being the cheaper.
    expect(bound([piece(30.5, 31, 10)], [small, large])).toBe(10 * 850);
  });

  it('of few pieces is exact: three of 16 x 20 come from one of 37 x 39, four from two', () => {
    expect(bound([piece(16, 20, 3)], [sheet(37, 39)])).toBe(1100);
    expect(bound([piece(16, 20, 4)], [sheet(37, 39)])).toBe(2200);
  });

  it('of few pieces counts remnants as often as there are', () => {
    const remnant = sheet(16, 20, { kind: 'remnant', cost: 0, count: 2 });
    expect(bound([piece(16, 20, 2)], [sheet(32, 40), remnant])).toBe(0);
    expect(bound([piece(16, 20, 3)], [sheet(32, 40), remnant])).toBe(1100);
  });

  it('is not exact of many pieces', () => {
    const nine = fieldOf(askOf([piece(16, 20, 9)], [sheet(37, 39)]));
    expect(exactPlan(nine)).toBeUndefined();
  });
});

describe('plans of few pieces', () => {
  it('reach the exact cost, with sheets of several prices, some counted, and a saw', () => {
    const side = fc.integer({ min: 3, max: 20 });
    const sheets = fc.record({ w: fc.integer({ min: 20, max: 40 }), h: fc.integer({ min: 20, max: 40 }), cost: fc.integer({ min: 0, max: 9 }), count: fc.constantFrom(undefined, 1, 2) }); // prettier-ignore
    let held = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(side, side, fc.boolean()), { minLength: 1, maxLength: 6 }), fc.array(sheets, { minLength: 1, maxLength: 3 }), fc.constantFrom(0, 3), (sizes, stock, kerf) => {
        const ask = askOf(
          sizes.map(([w, h, mayTurn]) => piece(w, h, 1, mayTurn)),
          stock.map(({ w, h, cost, count }) => sheet(w, h, { cost: cost * 100, ...(count === undefined ? {} : { count }) })),
          { kerf },
        );
        const field = fieldOf(ask);
        const exact = exactPlan(field)?.cost;
        const found = planned(ask, 3000);
        if (exact === undefined || !found) return;
        held += 1;
        expect(found.cost).toBe(exact);
      }),
      { numRuns: 60 },
    ); // prettier-ignore
    expect(held).toBeGreaterThan(30);
  });
});
