/** Plans of sheets: practitioners' cases, what every plan must be, and small ones held against every way of cutting. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SheetsAsk, Stock, WantedPiece } from '../../../src/core/sheets/ask';
import { askOf as ask, inches, piece, planned as plan, sheet } from './sheet-asks';

describe('practitioners’ cases (common practice, no source)', () => {
  it.each([
    ['four 16 x 20 from one 32 x 40', [piece(16, 20, 4)], [sheet(32, 40)], 1],
    ['four 16 x 20 take two of 37 x 39: three come from one', [piece(16, 20, 4)], [sheet(37, 39)], 2],
    ['three 16 x 20 from one 37 x 39', [piece(16, 20, 3)], [sheet(37, 39)], 1],
    ['sixteen 8 x 10 from one 32 x 40', [piece(8, 10, 16)], [sheet(32, 40)], 1],
    ['six 11 x 14 with six 5 x 7 from one 32 x 40', [piece(11, 14, 6), piece(5, 7, 6)], [sheet(32, 40)], 1],
  ])('%s', (_, pieces, stock, sheets) => {
    const found = plan(ask(pieces, stock));
    expect(found?.sheets).toHaveLength(sheets);
    expect((found?.atLeast ?? 0) / 1100).toBe(sheets);
  });

  it('a piece of 50 x 72 in comes from no sheet of 48 x 96 in', () => {
    expect(plan(ask([piece(50, 72, 1)], [sheet(48, 96)]))).toBeUndefined();
  });
});

describe('what is asked is kept to', () => {
  it('a saw takes its kerf between pieces, and none at the far edges', () => {
    const two = [piece(15.9375, 20, 2)];
    expect(plan(ask(two, [sheet(32, 20)], { kerf: inches(1 / 8) }))?.sheets).toHaveLength(1);
    expect(plan(ask([piece(16, 20, 2)], [sheet(32, 20)], { kerf: inches(1 / 8) }))?.sheets).toHaveLength(2);
  });

  it('what fills a sheet exactly does so in parts of an inch that no rule has', () => {
    for (const parts of [3, 6, 7, 9])
      for (const trim of [0, inches(1 / 8)]) {
        const [wide, high] = [32 - 2 * (trim / 25.4), 40 - 2 * (trim / 25.4)];
        expect(plan(ask([piece(wide / parts, high / 3, 3 * parts)], [sheet(32, 40)], { trim }))?.sheets).toHaveLength(
          1,
        );
      }
  });

  it('a trimmed sheet is smaller all round, a remnant is not', () => {
    const one = [piece(16, 20, 1)];
    expect(plan(ask(one, [sheet(16, 20)], { trim: inches(1 / 4) }))).toBeUndefined();
    // Of one stock alone, or of all but one.
    const large = sheet(32, 40, { trim: inches(1 / 4) });
    expect(plan(ask(one, [large, sheet(16, 20, { cost: 300 })]))?.sheets.map(({ stock }) => stock.id)).toEqual([
      '16 x 20',
    ]);
    expect(plan(ask(one, [sheet(16, 20, { trim: 0 })], { trim: inches(1 / 4) }))?.sheets).toHaveLength(1);
    expect(plan(ask(one, [sheet(16, 20, { kind: 'remnant', count: 1 })], { trim: inches(1 / 4) }))?.sheets).toHaveLength(1); // prettier-ignore
  });

  it('grain keeps pieces from turning', () => {
    expect(plan(ask([piece(20, 16, 4, false)], [sheet(32, 40)]))?.sheets.length).toBeGreaterThan(1);
  });

  it('remnants and what falls out of windows go first, being there anyway', () => {
    const fallout = sheet(13, 16, { id: 'fallout', kind: 'fallout', cost: 0, count: 1 });
    const found = plan(ask([piece(11, 14, 1), piece(32, 40, 1)], [sheet(32, 40), fallout]));
    expect(found?.sheets.map(({ stock }) => stock.id).sort()).toEqual(['32 x 40', 'fallout']);
    expect(found?.cost).toBe(1100);
  });

  it('two kinds of sheets are mixed where that costs less', () => {
    const stock = [sheet(32, 40, { cost: 850 }), sheet(40, 60, { cost: 1550 })];
    expect(plan(ask([piece(40, 60, 1), piece(32, 40, 1)], stock))?.cost).toBe(2400);
  });

  it('a plan is proven best where no mix of sheets that costs less has room for all', () => {
    // 2 x 1280 sq in of pieces; 1 x 2400 at 1550 is too small, and the next mix up is two at 850.
    const stock = [sheet(32, 40, { cost: 850 }), sheet(40, 60, { cost: 1550 })];
    const found = plan(ask([piece(32, 40, 2)], stock));
    expect([found?.cost, found?.atLeast]).toEqual([1700, 1700]);
  });

  it('cuts change direction no more often than is allowed', () => {
    const pieces = [piece(20, 12, 1), piece(8, 12, 1), piece(12, 20, 1), piece(20, 4, 1), piece(9, 8, 2)];
    for (const stages of [2, 3])
      expect(plan(ask(pieces, [sheet(32, 40)], { stages }))?.sheets.length).toBeGreaterThan(0);
  });
});

const sides = fc.integer({ min: 2, max: 20 });
const wanted = fc.array(fc.record({ width: sides, height: sides, count: fc.integer({ min: 1, max: 3 }), mayTurn: fc.boolean() }), { minLength: 1, maxLength: 8 }); // prettier-ignore
const sheetsOf = fc.array(fc.record({ width: fc.integer({ min: 20, max: 40 }), height: fc.integer({ min: 20, max: 40 }), cost: fc.integer({ min: 1, max: 30 }), trim: fc.constantFrom(0, 1) }), { minLength: 1, maxLength: 3 }); // prettier-ignore
const drawn = (pieces: readonly Omit<WantedPiece, 'id'>[], stock: readonly Omit<Stock, 'id' | 'kind'>[], more: Partial<SheetsAsk> = {}) =>
  ask(pieces.map((one, index) => ({ ...one, id: `piece ${index}` })), stock.map((one, index) => ({ ...one, id: `sheet ${index}`, kind: 'sheet' as const })), more); // prettier-ignore

describe('every plan', () => {
  it('can be cut as it says, with any kerf, trim and stages', () => {
    fc.assert(
      fc.property(wanted, sheetsOf, fc.constantFrom(0, 0.5, 3), fc.constantFrom(undefined, 2, 3), (pieces, stock, kerf, stages) => {
        plan(drawn(pieces, stock, { kerf, trim: 2, ...(stages === undefined ? {} : { stages }) }), 300);
      }),
      { numRuns: 60 },
    ); // prettier-ignore
  });

  it('is the same for the same seed, and costs the same with all turned', () => {
    fc.assert(
      fc.property(wanted, sheetsOf, (pieces, stock) => {
        const asked = drawn(pieces, stock);
        expect(plan(asked, 500)).toEqual(plan(asked, 500));
        const turned = <T extends { readonly width: number; readonly height: number }>(one: T): T => ({ ...one, width: one.height, height: one.width }); // prettier-ignore
        const other = plan(drawn(pieces.map(turned), stock.map(turned)), 500);
        expect(other?.cost).toBe(plan(asked, 500)?.cost);
      }),
      { numRuns: 20 },
    ); // prettier-ignore
  });

  it('costs no more with another kind of sheet to choose from, of few pieces, which are planned best', () => {
    const few = fc.array(fc.record({ width: sides, height: sides, count: fc.integer({ min: 1, max: 2 }), mayTurn: fc.boolean() }), { minLength: 1, maxLength: 3 }); // prettier-ignore
    fc.assert(
      fc.property(few, sheetsOf, sheetsOf, (pieces, stock, more) => {
        const [less, many] = [plan(drawn(pieces, stock), 3000), plan(drawn(pieces, [...stock, ...more]), 3000)];
        if (less && many) expect(many.cost).toBeLessThanOrEqual(less.cost);
      }),
      { numRuns: 20 },
    );
  });
});

/** The most sheets never needed: every order of pieces, every spot, both ways round, both first cuts. */
function fewestByTrying(
  pieces: readonly (readonly [number, number])[],
  width: number,
  height: number,
  mayTurn: boolean,
): number {
  let best = pieces.length;
  const seen = new Set<string>();
  const go = (left: readonly number[], free: readonly (readonly [number, number])[], used: number) => {
    if (used >= best) return;
    if (left.length === 0) {
      best = used;
      return;
    }
    const key = `${left.join()}|${free.map((one) => one.join('x')).sort().join()}|${used}`; // prettier-ignore
    if (seen.has(key)) return;
    seen.add(key);
    for (const index of left) {
      const rest = left.filter((one) => one !== index);
      const [wide, high] = pieces[index]!;
      const ways = mayTurn && wide !== high ? [[wide, high], [high, wide]] as const : [[wide, high]] as const; // prettier-ignore
      for (const [w, h] of ways) {
        free.forEach(([fw, fh], at) => {
          if (w > fw || h > fh) return;
          const others = free.filter((_, other) => other !== at);
          const parts = (list: readonly (readonly [number, number])[]) => list.filter(([a, b]) => a > 0 && b > 0);
          go(rest, [...others, ...parts([[fw - w, fh], [w, fh - h]])], used); // prettier-ignore
          go(rest, [...others, ...parts([[fw, fh - h], [fw - w, h]])], used); // prettier-ignore
        });
        if (w <= width && h <= height && used + 1 < best) go(left, [...free, [width, height]], used + 1);
      }
    }
  };
  go(pieces.map((_, index) => index), [], 0); // prettier-ignore
  return best;
}

describe('small plans', () => {
  it('take as few sheets as trying every way does', () => {
    const side = fc.integer({ min: 2, max: 9 });
    fc.assert(
      fc.property(fc.array(fc.tuple(side, side), { minLength: 2, maxLength: 5 }), fc.boolean(), (pieces, mayTurn) => {
        const asked = drawn(pieces.map(([width, height]) => ({ width, height, count: 1, mayTurn })), [{ width: 10, height: 9, cost: 1 }]); // prettier-ignore
        const fits = pieces.every(([w, h]) => (w <= 10 && h <= 9) || (mayTurn && h <= 10 && w <= 9));
        const found = plan(asked, 2000);
        if (!fits) expect(found).toBeUndefined();
        else expect(found?.cost).toBe(fewestByTrying(pieces, 10, 9, mayTurn));
      }),
      { numRuns: 40 },
    );
  });

  it('are made of the exact partings where a search goes round them', () => {
    const sizes = [[5, 5], [6, 5], [8, 2], [4, 6], [8, 6]] as const; // prettier-ignore
    const asked = drawn(sizes.map(([width, height]) => ({ width, height, count: 1, mayTurn: true })), [{ width: 10, height: 9, cost: 1 }]); // prettier-ignore
    expect(plan(asked, 2000)?.cost).toBe(fewestByTrying(sizes, 10, 9, true));
  });
});
