/** Pieces that stay where the user has put them: the rest is planned round them, and what can't stay is refused. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pin, SheetsAsk } from '../../../src/core/sheets/ask';
import { checkPins } from '../../../src/core/sheets/check-pins';
import { planSheets } from '../../../src/core/sheets/plan-sheets';
import { askOf, inches, piece, planned, sheet } from './sheet-asks';

const SHOWING = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;
const pin = (more: Partial<Pin> = {}): Pin => ({
  sheet: 0,
  stock: 0,
  piece: 0,
  turned: false,
  left: 0,
  bottom: 0,
  ...more,
});
const asked = (pins: readonly Pin[], more: Partial<SheetsAsk> = {}) =>
  askOf([piece(16, 20, 4), piece(5, 7, 3)], [sheet(32, 40), sheet(40, 60, { cost: 2000 })], { pins, ...more });

describe('a pinned piece', () => {
  it.each([
    [0, 0],
    [8, 10],
    [16, 20],
    [3, 0],
  ])('lies at %s, %s in and nowhere else, and the rest is cut round it', (left, bottom) => {
    const ask = asked([pin({ left: inches(left), bottom: inches(bottom) })]);
    const found = planned(ask, 800);
    const pinned = found?.sheets.flatMap(({ pieces }) => pieces).filter((one) => one.pinned) ?? [];
    expect(pinned).toHaveLength(1);
    expect(pinned[0]?.box.left).toBeCloseTo(inches(left), 6);
    expect(pinned[0]?.box.bottom).toBeCloseTo(inches(bottom), 6);
  });

  it('costs nothing where it lies as the best plan has it', () => {
    const one = (pins: readonly Pin[]) => askOf([piece(16, 20, 4), piece(5, 7, 3)], [sheet(32, 40)], { pins });
    // Four of 16 x 20 fill a sheet of 32 x 40; the three small ones take another.
    expect(planned(one([pin({ left: inches(16), bottom: inches(20) })]), 800)?.cost).toBe(planned(one([]), 800)?.cost);
  });

  it('leaves what is there anyway as whole as the best plan does', () => {
    const halves = sheet(16, 40, { kind: 'remnant', cost: 0, count: 2 });
    for (const bottom of [0, 20]) {
      const ask = askOf([piece(16, 20, 2)], [sheet(32, 40), halves], {
        pins: [pin({ stock: 1, bottom: inches(bottom) })],
      });
      expect(planned(ask, 800)?.sheets).toHaveLength(1);
    }
  });

  it('in the middle of a sheet costs another sheet', () => {
    const one = askOf([piece(16, 20, 4)], [sheet(32, 40)], { pins: [pin({ left: inches(8), bottom: inches(10) })] });
    expect(planned(one, 800)?.sheets).toHaveLength(2);
  });

  it('lies turned where it was put so, and keeps its sheet of another size', () => {
    const ask = asked([pin({ turned: true, stock: 1, left: inches(1), bottom: inches(2) })]);
    const found = planned(ask, 400);
    const on = found?.sheets.find(({ pieces }) => pieces.some((one) => one.pinned));
    expect(on?.stock).toBe(ask.stock[1]);
    expect(on?.pieces.find((one) => one.pinned)?.turned).toBe(true);
  });

  it('and others, on several sheets, with a saw, trim and stages, are parted by cuts that the judge can follow', () => {
    const place = fc.record({ left: fc.integer({ min: 0, max: 30 }), bottom: fc.integer({ min: 0, max: 40 }), sheet: fc.integer({ min: 0, max: 1 }), turned: fc.boolean(), piece: fc.integer({ min: 0, max: 1 }) }); // prettier-ignore
    let held = 0;
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 5 }), fc.constantFrom(0, 3), fc.constantFrom(0, 5), (places, kerf, trim) => {
        const pins = places.map((one) => pin({ ...one, left: inches(one.left), bottom: inches(one.bottom) }));
        const ask = asked(pins, { kerf, trim });
        const found = planSheets(ask, { goOn: () => false });
        if (checkPins(ask, SHOWING).length > 0) return;
        held += 1;
        expect(found).toBeDefined();
        planned(ask, 200);
      }),
      { numRuns: 150 },
    ); // prettier-ignore
    expect(held).toBeGreaterThan(10);
  });

  it('keeps to the number of changes of direction', () => {
    const ask = asked([pin({ left: inches(8), bottom: inches(10) })], { stages: 4 });
    expect(planned(ask, 400)).toBeDefined();
  });

  it('stays when all is turned by a quarter', () => {
    const ask = askOf([piece(20, 16, 2)], [sheet(40, 32)], { pins: [pin({ left: inches(3), bottom: inches(5) })] });
    const box = planned(ask, 200)?.sheets.flatMap(({ pieces }) => pieces).find((one) => one.pinned)?.box; // prettier-ignore
    expect(box?.left).toBeCloseTo(inches(3), 6);
    expect(box?.bottom).toBeCloseTo(inches(5), 6);
  });
});

describe('what can’t stay is refused', () => {
  it.each([
    ['beyond the sheet', [pin({ left: inches(20) })], {}, /reaches 4 in over the right edge of its sheet/],
    [
      'in the trimmed edge',
      [pin()],
      { trim: 5 },
      /reaches ≈ 3\/16 in over the left edge and ≈ 3\/16 in over the lower edge of what trimming leaves of its sheet/,
    ],
    ['over another', [pin(), pin({ left: inches(10) })], {}, /over another/],
    ['within the saw', [pin(), pin({ left: inches(16) })], { kerf: 3 }, /nearer to it than the saw/],
    ['more than there are', [0, 1, 2, 3, 4].map((at) => pin({ sheet: at })), {}, /more places than there are/],
    ['of no piece', [pin({ piece: 9 })], {}, /no longer asked for/],
    ['sheets of two sizes', [pin(), pin({ stock: 1, left: inches(16) })], {}, /another size/],
  ] as const)('%s', (_, pins, more, words) => {
    expect(checkPins(asked(pins, more), SHOWING)[0]?.message).toMatch(words);
  });

  it('a turned piece of a board with grain', () => {
    const ask = askOf([piece(16, 20, 1, false)], [sheet(32, 40)], { pins: [pin({ turned: true })] });
    expect(checkPins(ask, SHOWING)[0]?.message).toMatch(/may not be turned/);
  });

  it('four round a hole, which no straight cut parts', () => {
    // Each overlaps the next along its side, as the blades of a windmill do.
    const ask = askOf([piece(10, 20, 4)], [sheet(32, 40)], {
      pins: [
        pin({ left: 0, bottom: 0 }),
        pin({ left: inches(10), bottom: 0, turned: true }),
        pin({ left: inches(20), bottom: inches(10) }),
        pin({ left: 0, bottom: inches(20), turned: true }),
      ],
    });
    expect(checkPins(ask, SHOWING)[0]?.message).toMatch(/can’t be parted/);
    expect(planSheets(ask, { goOn: () => false })).toBeUndefined();
  });
});
