/** Any show: every mat held against the layout, sums against counts, and the same plan for the same question. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../src/core/geometry/box';
import { parseJobText, printJob } from '../../../src/core/job/text';
import { layOut } from '../../../src/core/layout/lay-out';
import { rangeMisses } from '../../../src/core/layout/range-misses';
import { packageProblems } from '../../../src/core/package/problems';
import { money } from '../../../src/core/money';
import type { ShelfFrame } from '../../../src/core/shelf/shelf';
import { costText } from '../../../src/core/show/costs';
import { matFor } from '../../../src/core/show/mat-for';
import type { Pattern } from '../../../src/core/show/pattern';
import type { ShowPicture } from '../../../src/core/show/picture';
import type { ShowOptions, ShowPlan } from '../../../src/core/show/plan';
import { isHung } from '../../../src/core/show/print-list';
import { usesText } from '../../../src/core/show/show-words';
import { list, pattern, plan, shelf } from './shows';

const SIZES = [[5, 7], [8, 8], [8, 10], [9, 12], [11, 14], [12, 16], [14, 18], [16, 20]] as const; // prettier-ignore

interface AnyShow {
  readonly rows: readonly { readonly width: number; readonly height: number; readonly count: number }[];
  readonly stock: readonly {
    readonly size: number;
    readonly price: number;
    readonly count: number;
    /** Of the rabbet, tenths of a millimetre; 0: nobody has measured it. */
    readonly depth: number;
  }[];
  readonly options: ShowOptions;
  readonly amount: number;
}

/** Sizes in eighths of an inch, which metric says exactly too. */
const anyShow: fc.Arbitrary<AnyShow> = fc.record({
  rows: fc.array(
    fc.record({
      width: fc.integer({ min: 16, max: 100 }),
      height: fc.integer({ min: 16, max: 100 }),
      count: fc.constantFrom(1, 1, 2),
    }),
    { minLength: 2, maxLength: 9 },
  ),
  stock: fc.array(
    fc.record({
      size: fc.nat(SIZES.length - 1),
      price: fc.integer({ min: 1, max: 40 }),
      count: fc.nat(4),
      depth: fc.constantFrom(0, 120, 150, 158, 165, 200),
    }),
    { minLength: 1, maxLength: 9 },
  ),
  options: fc.record({
    aim: fc.constantFrom('cost', 'sizes'),
    most: fc.integer({ min: 1, max: 6 }),
    onShelfOnly: fc.boolean(),
    allowCustom: fc.boolean(),
    by: fc.constantFrom('money', 'size'),
  }),
  amount: fc.constantFrom(0, 4, 8),
}) as fc.Arbitrary<AnyShow>;

type InchText = (eighths: number) => string;
const inInches: InchText = (eighths) => `${eighths / 8} in`;
const inMillimetres: InchText = (eighths) => `${(eighths * 254) / 80} mm`;

function picturesOf({ rows }: AnyShow, text: InchText = inInches): readonly ShowPicture[] {
  const cells = rows.map(({ width, height, count }, index) => `P${index},${text(width)},${text(height)},${count}`);
  return list(['title,width,height,count', ...cells, 'Last,6 in,8 in,1'].join('\n'));
}

function shelfOf({ stock }: AnyShow, text: InchText = inInches) {
  const cells = stock.map(({ size, price, count, depth }, index) => {
    const [width, height] = SIZES[size]!;
    const deep = depth === 0 ? '' : `${depth / 10} mm`;
    return `F${index},${text(width * 8)},${text(height * 8)},${price}.25,${count},${deep}`;
  });
  return shelf(['name,width,height,price,count,rabbet depth', ...cells].join('\n'));
}

const matOf = ({ amount }: AnyShow, text: InchText = inInches) =>
  pattern({
    mat: { layers: [{}, { reveal: '1/4 in' }] },
    borders: { rule: 'bottom-amount', amount: text(amount), range: { least: text(12), greatest: text(40) } },
  });

/** What people see of a plan, by title, whatever the order. */
function seen(answer: ShowPlan) {
  const name = (frame: ShelfFrame | undefined) => frame?.name ?? 'made to size';
  return {
    tradeOff: answer.tradeOff.map((row) => [row.held, costText(row.cost, answer.showing), usesText(row.uses)]),
    chosen: [answer.chosen.held, costText(answer.chosen.cost, answer.showing), usesText(answer.chosen.uses)],
    fewest: answer.fewest,
    frames: answer.toBuy.map(({ frame, needed, toOrder }) => [frame.name, needed, toOrder]),
    places: answer.places
      .map((place) => [
        place.picture.title,
        place.copy,
        isHung(place)
          ? `${name(place.frame)} ${SIDES.map((side) => place.borders.cut[side].toFixed(6)).join(' ')}`
          : place.why,
      ])
      .sort(([a, b], [c, d]) => (`${a}` === `${c}` ? Number(b) - Number(d) : `${a}` < `${c}` ? -1 : 1)),
  };
}

/** Without any short cut. */
function takes(mat: Pattern, picture: ShowPicture, frame: ShelfFrame): boolean {
  const { width, height } = frame.size;
  return [
    { width, height },
    { width: height, height: width },
  ].some((blank) => {
    const made = matFor(mat, picture, { blank, frame });
    if (!made.ok) return false;
    const { job, layout } = made.value;
    return rangeMisses(layout.borders.cut, job.borders.range).length === 0 && !packageProblems(job, layout, []).some(({ code }) => code === 'package-too-deep'); // prettier-ignore
  });
}

describe('for any show', () => {
  it('every mat opens from its text, lays out, and has the borders and the frame that were said', () => {
    let hung = 0;
    fc.assert(
      fc.property(anyShow, (any) => {
        const answer = plan(picturesOf(any), matOf(any), shelfOf(any), any.options);
        for (const place of answer.places.filter(isHung)) {
          hung += 1;
          const opened = parseJobText(printJob(place.written));
          if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
          const laid = layOut(opened.value.job);
          if (!laid.ok) throw new Error(JSON.stringify(laid.problems));
          const { cut } = laid.value.borders;
          for (const side of SIDES) {
            expect(Math.abs(cut[side] - place.borders.cut[side])).toBeLessThan(1e-9);
            expect(cut[side]).toBeGreaterThanOrEqual(answer.range.least - 1e-6);
            expect(cut[side]).toBeLessThanOrEqual(answer.range.greatest! + 1e-6);
          }
          expect(packageProblems(opened.value.job, laid.value, []).map(({ code }) => code)).not.toContain('package-too-deep'); // prettier-ignore
          const { width, height } = laid.value.frame.blank;
          const size = place.frame?.size ?? place.blank;
          expect(Math.min(width, height)).toBeCloseTo(Math.min(size.width, size.height), 9);
          expect(width).toBeCloseTo(place.blank.width, 9);
          expect(height).toBeCloseTo(place.blank.height, 9);
        }
      }),
      { numRuns: 60 },
    );
    expect(hung).toBeGreaterThan(30);
  });

  it('as many are held, at as little cost, as by trying every set of sizes with the packages worked out one by one', () => {
    fc.assert(
      fc.property(anyShow, (any) => {
        const most = any.options.most!;
        const from = shelfOf(any);
        const asked = picturesOf(any);
        const mat = matOf(any);
        const answer = plan(asked, mat, from, { most, by: 'money' });
        // What each picture costs in each frame that really takes it: laid out, in range, deep enough as named.
        const costs = asked.map((picture) => from.map((frame) => (frame.kind === 'frame' && takes(mat, picture, frame) ? frame.price!.amount.toNumber() : Infinity))); // prettier-ignore
        const sizes = [...new Set(any.stock.map(({ size }) => size))];
        let best = { held: 0, cost: 0 };
        for (let set = 0; set < 2 ** sizes.length; set += 1) {
          const chosen = sizes.filter((_, bit) => (set >> bit) % 2 === 1);
          if (chosen.length > most) continue;
          const least = costs.map((row) => Math.min(Infinity, ...row.filter((_, index) => chosen.includes(any.stock[index]!.size)))); // prettier-ignore
          const held = asked.reduce((sum, { count }, index) => sum + (least[index]! < Infinity ? count : 0), 0);
          const cost = asked.reduce((sum, { count }, index) => sum + (least[index]! < Infinity ? count * least[index]! : 0), 0); // prettier-ignore
          if (held > best.held || (held === best.held && cost < best.cost)) best = { held, cost };
        }
        expect(answer.chosen.held).toBe(best.held);
        const { cost } = answer.chosen;
        expect(cost.by === 'money' ? cost.amount.toNumber() : NaN).toBeCloseTo(best.cost, 6);
      }),
      { numRuns: 25 },
    );
  });

  it('sums, counts and sizes agree with one another', () => {
    fc.assert(
      fc.property(anyShow, (any) => {
        const answer = plan(picturesOf(any), matOf(any), shelfOf(any), any.options);
        const framed = answer.places.filter(({ state }) => state === 'framed').filter(isHung);
        expect(framed.length).toBe(answer.chosen.held);
        expect(answer.chosen.uses.reduce((sum, { pictures }) => sum + pictures, 0)).toBe(answer.chosen.held);
        expect(answer.toBuy.reduce((sum, { needed }) => sum + needed, 0)).toBe(answer.chosen.held);
        const total = framed.reduce(
          (sum, { cost }) => sum.plus(cost?.by === 'money' ? cost.amount : (cost?.length ?? NaN)),
          money(0),
        );
        const { cost } = answer.chosen;
        expect(total.toNumber()).toBeCloseTo(cost.by === 'money' ? cost.amount.toNumber() : cost.length, 6);
        if (any.options.aim === 'cost') expect(answer.chosen.uses.length).toBeLessThanOrEqual(any.options.most!);
        else expect(answer.chosen.held).toBe(answer.fewest.held);
        if (any.options.onShelfOnly)
          for (const { needed, there } of answer.toBuy) expect(needed).toBeLessThanOrEqual(there!);
      }),
      { numRuns: 60 },
    );
  });

  it('one size more never holds fewer, and never costs more for as many', () => {
    fc.assert(
      fc.property(anyShow, (any) => {
        const { tradeOff, fewest } = plan(picturesOf(any), matOf(any), shelfOf(any), any.options);
        tradeOff.slice(1).forEach((row, index) => {
          const before = tradeOff[index]!;
          expect(row.held).toBeGreaterThanOrEqual(before.held);
          const amount = ({ cost }: typeof row) => (cost.by === 'money' ? cost.amount.toNumber() : cost.length);
          if (row.held === before.held) expect(amount(row)).toBeLessThanOrEqual(amount(before));
          expect(row.proven).toBe(true);
        });
        for (const row of tradeOff) expect(row.held === fewest.held).toBe(row.most >= fewest.least);
      }),
      { numRuns: 60 },
    );
  });

  it('the order of the list and of the shelf changes nothing', () => {
    fc.assert(
      fc.property(anyShow, fc.infiniteStream(fc.double({ noNaN: true })), (any, chance) => {
        const draw = [...chance.take(40)];
        const shuffled = <T>(values: readonly T[], from: number) =>
          values
            .map((value, index) => ({ value, by: draw[from + index]! }))
            .sort((a, b) => a.by - b.by)
            .map(({ value }) => value);
        const one = plan(picturesOf(any), matOf(any), shelfOf(any), any.options);
        const other = plan(shuffled(picturesOf(any), 0), matOf(any), shuffled(shelfOf(any), 20), any.options);
        expect(seen(other)).toEqual(seen(one));
      }),
      { numRuns: 60 },
    );
  });

  it('neither does the unit in which anything is written', () => {
    fc.assert(
      fc.property(anyShow, (any) => {
        const one = plan(picturesOf(any), matOf(any), shelfOf(any), any.options);
        const other = plan(
          picturesOf(any, inMillimetres),
          matOf(any, inMillimetres),
          shelfOf(any, inMillimetres),
          any.options,
        );
        expect(seen(other)).toEqual(seen(one));
      }),
      { numRuns: 40 },
    );
  });

  it('nor a picture and its frames all said the other way round, but for which way they hang', () => {
    fc.assert(
      fc.property(anyShow, (any) => {
        const turned = {
          ...any,
          amount: 0,
          rows: any.rows.map((row) => ({ ...row, width: row.height, height: row.width })),
        };
        const one = plan(picturesOf({ ...any, amount: 0 }), matOf({ ...any, amount: 0 }), shelfOf(any), any.options);
        const other = plan(picturesOf(turned), matOf(turned), shelfOf(any), any.options);
        expect(seen(other)).toMatchObject({ tradeOff: seen(one).tradeOff, fewest: one.fewest });
      }),
      { numRuns: 40 },
    );
  });
});
