/** What a plan is to be good at: cost, sheets, the remnant, and weighings of them; and cutters that reach only so far. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SheetsAsk } from '../../../src/core/sheets/ask';
import type { SheetPlan } from '../../../src/core/sheets/plan';
import { keepingOf, type KeepRule } from '../../../src/core/sheets/remnants';
import { askOf, inches, piece, planned, sheet } from './sheet-asks';

const sizesOf = (plan: SheetPlan | undefined) => plan?.sheets.map(({ stock }) => stock.id).sort();
const areas = (plan: SheetPlan | undefined) =>
  plan?.sheets.flatMap(({ left }) => left.map((box) => (box.right - box.left) * (box.top - box.bottom))) ?? [];

describe('the aim', () => {
  // One of 16 x 20 in: 32 x 40 at 8.50 leaves half of it in one (16 x 40 or 32 x 20), which cost 4.25; 40 x 60 leaves
  // two thirds (40 x 40).
  const small = sheet(32, 40, { cost: 850 });
  const large = (cost: number) => sheet(40, 60, { cost });

  it('of the least cost takes the cheapest sheet, whatever it leaves', () => {
    expect(sizesOf(planned(askOf([piece(16, 20, 1)], [small, large(900)])))).toEqual(['32 x 40']);
  });

  it('of the largest remnant takes off what that cost', () => {
    const ask = (cost: number) => askOf([piece(16, 20, 1)], [small, large(cost)], { aim: 'remnant' });
    // 900 - 600 is less than 850 - 425; 1550 - 1033 is more.
    expect(sizesOf(planned(ask(900)))).toEqual(['40 x 60']);
    expect(sizesOf(planned(ask(1550)))).toEqual(['32 x 40']);
  });

  it('weighs a remnant by what the user says it is worth', () => {
    const ask = (remnantWorth: number) => askOf([piece(16, 20, 1)], [small, large(900)], { remnantWorth });
    // 900 - 0.2 x 600 = 780 is more than 850 - 0.2 x 425 = 765; 900 - 0.5 x 600 = 600 is less than 850 - 212.50 = 637.50.
    expect(sizesOf(planned(ask(0.2)))).toEqual(['32 x 40']);
    expect(sizesOf(planned(ask(0.5)))).toEqual(['40 x 60']);
  });

  it('weighs sheets by what opening one more is worth avoiding', () => {
    const ask = (more: Partial<SheetsAsk>) => askOf([piece(20, 40, 2)], [small, large(1750)], more);
    // Two small ones at 17.00, or one large one at 17.50: with 1.00 for each sheet 19.00 or 18.50.
    expect(sizesOf(planned(ask({})))).toEqual(['32 x 40', '32 x 40']);
    expect(sizesOf(planned(ask({ perSheet: 100 })))).toEqual(['40 x 60']);
    expect(sizesOf(planned(ask({ aim: 'sheets' })))).toEqual(['40 x 60']);
  });

  it('keeps what the rule keeps rather than a larger part that it throws away', () => {
    const remnant = sheet(20, 24, { kind: 'remnant', cost: 0, count: 1 });
    const ask = (keep?: KeepRule) => askOf([piece(16, 20, 1)], [remnant], keep ? { keep } : {});
    // 4 x 24 in is a strip to keep, 20 x 8 in is waste though it is larger.
    expect(Math.max(...areas(planned(ask()))) / 25.4 ** 2).toBeCloseTo(96, 6);
    const all: KeepRule = { least: 0, board: { width: 1, height: 1 }, strip: 1 };
    expect(Math.max(...areas(planned(ask(all)))) / 25.4 ** 2).toBeCloseTo(160, 6);
  });
});

/** The largest part that any way of cutting pieces one after another out of one sheet leaves; 0 where they don't all fit. */
function largestLeft(pieces: readonly (readonly [number, number])[], width: number, height: number): number {
  let most = 0;
  const go = (left: readonly (readonly [number, number])[], free: readonly (readonly [number, number])[]) => {
    if (left.length === 0) most = Math.max(most, ...free.map(([w, h]) => w * h));
    left.forEach(([wide, high], index) => {
      const rest = left.filter((_, other) => other !== index);
      for (const [w, h] of [
        [wide, high],
        [high, wide],
      ] as const) {
        free.forEach(([fw, fh], at) => {
          if (w > fw || h > fh) return;
          const others = free.filter((_, other) => other !== at);
          go(rest, [...others, [fw - w, fh], [w, fh - h]]);
          go(rest, [...others, [fw, fh - h], [fw - w, h]]);
        });
      }
    });
  };
  go(pieces, [[width, height]]); // prettier-ignore
  return most;
}

describe('of plans that cost as much', () => {
  it('one with the largest remnant is found, as every way of cutting few pieces shows', () => {
    const side = fc.integer({ min: 2, max: 7 });
    const keep: KeepRule = { least: 0, board: { width: 0, height: 0 }, strip: 0 };
    let held = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 4 }), (sizes) => {
        const most = largestLeft(sizes, 12, 11);
        const wanted = sizes.map(([w, h]) => piece(w / 25.4, h / 25.4, 1));
        const found = planned(askOf(wanted, [sheet(12 / 25.4, 11 / 25.4)], { keep }), 20_000);
        if (found?.sheets.length !== 1 || most === 0) return;
        held += 1;
        // Of three pieces the largest there is, of four within a tenth of it.
        expect(Math.max(0, ...areas(found))).toBeGreaterThan((sizes.length < 4 ? most : 0.9 * most) - 1e-6);
      }),
      { numRuns: 60 },
    );
    expect(held).toBeGreaterThan(20);
  });
});

describe('what is there anyway', () => {
  const remnant = (count: number) => sheet(16, 20, { kind: 'remnant', cost: 0, count });
  const largest = (plan: SheetPlan | undefined) => Math.max(0, ...areas(plan)) / 25.4 ** 2;

  it('is used where a larger part of a new sheet is left by that', () => {
    // Both out of the new sheet leave 16 x 40 in, one out of the remnant 32 x 24 in.
    for (const aim of ['cost', 'remnant'] as const) {
      const plan = planned(askOf([piece(16, 20, 2)], [sheet(32, 40), remnant(1)], { aim }));
      expect(sizesOf(plan)).toEqual(['16 x 20', '32 x 40']);
      expect(largest(plan)).toBeCloseTo(32 * 24, 6);
    }
  });

  it('is used up before a new sheet is, where as much is left', () => {
    const plan = planned(askOf([piece(16, 20, 4)], [sheet(32, 40), remnant(3)]));
    expect(sizesOf(plan)).toEqual(['16 x 20', '16 x 20', '16 x 20', '32 x 40']);
  });

  it('is the smallest that will do, however the list is ordered', () => {
    const stock = [sheet(32, 40), sheet(24, 36, { kind: 'remnant', cost: 0, count: 1 }), sheet(16, 40, { kind: 'remnant', cost: 0, count: 1 }), remnant(1)]; // prettier-ignore
    for (const list of [stock, stock.toReversed()])
      expect(sizesOf(planned(askOf([piece(16, 20, 1)], list)))).toEqual(['16 x 20']);
  });

  it('stays whole where nothing is left by using it', () => {
    // Four of 16 x 20 in are one sheet of 32 x 40 in.
    const plan = planned(askOf([piece(16, 20, 4)], [sheet(32, 40), remnant(1)]));
    expect(sizesOf(plan)).toEqual(['32 x 40']);
  });
});

describe('a cutter of a certain length', () => {
  it('cuts a sheet that is longer across first', () => {
    const ask = askOf([piece(36, 20, 2)], [sheet(40, 60)], { longestCut: inches(48) });
    const [first] = planned(ask)?.sheets[0]?.steps ?? [];
    expect(first?.way).toBe('lying');
  });

  it('cuts nothing out of a sheet whose both sides are longer', () => {
    expect(planned(askOf([piece(20, 20, 1)], [sheet(40, 60)], { longestCut: inches(36) }))).toBeUndefined();
    // Unless a side of the piece is the sheet's.
    expect(planned(askOf([piece(40, 60, 1)], [sheet(40, 60)], { longestCut: inches(36) }))?.sheets).toHaveLength(1);
  });

  it('makes no longer cut in any plan', () => {
    const sides = fc.integer({ min: 2, max: 20 });
    fc.assert(
      fc.property(fc.array(fc.tuple(sides, sides), { minLength: 1, maxLength: 8 }), fc.integer({ min: 21, max: 40 }), fc.constantFrom(0, 2), (sizes, most, kerf) => {
        planned(askOf(sizes.map(([w, h]) => piece(w, h, 1)), [sheet(24, 40), sheet(30, 30)], { longestCut: inches(most), kerf }), 300);
      }),
      { numRuns: 60 },
    ); // prettier-ignore
  });
});

describe('settings of the guide', () => {
  const settings = (plan: SheetPlan | undefined) => plan?.sheets.flatMap(({ steps }) => steps).filter(({ guideStays }) => !guideStays).length; // prettier-ignore

  it('serve every part in hand before the guide is moved', () => {
    // Sixteen of 8 x 10 in out of 32 x 40: at 10 in three cuts, then at 8 in three of each strip; or the other way round.
    const plan = planned(askOf([piece(8, 10, 16, false)], [sheet(32, 40)]));
    expect(settings(plan)).toBe(2);
    expect(plan?.sheets[0]?.steps.reduce((sum, { times }) => sum + times, 0)).toBe(15);
  });

  it('are no more than there are different sizes to set, where cuts cross but once', () => {
    const plan = planned(askOf([piece(10, 10, 4, false), piece(8, 10, 4, false)], [sheet(36, 20)]));
    expect(plan?.sheets).toHaveLength(1);
    expect(settings(plan)).toBe(2);
  });
});

it('what is kept is told by the same rule everywhere', () => {
  const plan = planned(askOf([piece(16, 20, 1)], [sheet(32, 40)]));
  const kept = plan?.sheets[0]?.left.filter((box) => keepingOf(box) === 'board') ?? [];
  expect(kept.length).toBeGreaterThan(0);
});
