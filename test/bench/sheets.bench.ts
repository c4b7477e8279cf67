/**
 * Sheets: framing-like sets of mixed sheet sizes with prices, and sets by the published generators of Berkey and Wang (1987)
 * and Martello and Vigo (1998), a second of processor time each; every plan judged. Where the published instances lie beside
 * the project, they are planned too, and held against the best that is known.
 */
import { existsSync, readFileSync } from 'node:fs';
import type { SheetsAsk } from '../../src/core/sheets/ask';
import { planSheets } from '../../src/core/sheets/plan-sheets';
import type { SheetPlan } from '../../src/core/sheets/plan';
import { wrongInPlan } from '../core/sheets/check-sheet-plan';

const LIMIT_MS = 1000;
/** Of the published instances every so manieth, unless all are asked for. */
const EVERY = process.env['SHEETS_ALL'] ? 1 : 25;
const PUBLISHED = '../shared/packing/data/classes-1-10.json';
/** Sums for all 500 with turning, without: the best open peer that cuts edge to edge, and published long runs. */
const PEERS = { R: { peer: 7196, published: 6986 }, O: { peer: 7409, published: 7233 } } as const;

interface Timed {
  readonly plan: SheetPlan;
  readonly firstMs: number;
}

function planIn(ask: SheetsAsk, limit: number): Timed {
  const before = process.cpuUsage();
  const busy = () => {
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  };
  let firstMs = Infinity;
  const plan = planSheets(ask, {
    goOn: () => busy() < limit,
    onBetter: () => (firstMs = Math.min(firstMs, busy())),
  });
  if (!plan) throw new Error('the bench has a set that no sheets hold');
  const wrong = wrongInPlan(ask, plan);
  if (wrong.length > 0) throw new Error(wrong[0]);
  return { plan, firstMs };
}

/** The same sets on every run and machine. */
function drawFrom(seed: number): (least: number, most: number) => number {
  let state = seed;
  return (least, most) => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return least + Math.floor((state / 2 ** 32) * (most - least + 1));
  };
}

/** Berkey and Wang, classes 1 to 6: sides from 1 to a most, in square sheets. */
const SQUARES = [[10, 10], [30, 10], [40, 35], [100, 35], [100, 100], [300, 100]] as const; // prettier-ignore

function generated(mayTurn: boolean): SheetsAsk[] {
  return SQUARES.flatMap(([side, most], index) =>
    [20, 60, 100].map((count): SheetsAsk => {
      const draw = drawFrom(1987 + 10 * index + count);
      const pieces = Array.from({ length: count }, (_, piece) => ({ id: `${piece}`, width: draw(1, most), height: draw(1, most), count: 1, mayTurn })); // prettier-ignore
      return { pieces, stock: [{ id: 'sheet', kind: 'sheet', width: side, height: side, cost: 1 }], kerf: 0, trim: 0, aim: 'sheets', seed: 1 }; // prettier-ignore
    }),
  );
}

/** Sizes as frames have them, in sixteenths of an inch, and sheets of 32 x 40 and 40 x 60 in at invented prices. */
function framing(count: number, kerf: number, mayTurn: boolean): SheetsAsk {
  const sizes = [[5, 7], [8, 8], [8, 10], [9, 12], [11, 14], [12, 16], [14, 18], [16, 20], [18, 24], [20, 24]] as const; // prettier-ignore
  const draw = drawFrom(count);
  const pieces: SheetsAsk['pieces'][number][] = [];
  for (let left = count; left > 0;) {
    const [width, height] = sizes[draw(0, sizes.length - 1)] ?? [8, 10];
    const many = Math.min(left, draw(1, 12));
    const odd = draw(0, 3) === 0 ? draw(1, 15) / 16 : 0;
    pieces.push({ id: `${pieces.length}`, width: (width + odd) * 25.4, height: height * 25.4, count: many, mayTurn });
    left -= many;
  }
  const sheet = (width: number, height: number, cost: number) => ({ id: `${width}`, kind: 'sheet' as const, width: width * 25.4, height: height * 25.4, cost }); // prettier-ignore
  return { pieces, stock: [sheet(32, 40, 850), sheet(40, 60, 1550)], kerf: kerf * 25.4, trim: 0, aim: 'cost', seed: 1 };
}

console.log('framing-like, mixed sheets        cost   bound   above it   first plan ms');
for (const count of [50, 100, 200, 300]) {
  for (const kerf of [0, 1 / 8]) {
    for (const mayTurn of [true, false]) {
      const { plan, firstMs } = planIn(framing(count, kerf, mayTurn), LIMIT_MS);
      const above = `${((100 * plan.cost) / plan.atLeast - 100).toFixed(1)} %`;
      const name = `${count} pieces, kerf ${kerf === 0 ? '0' : '1/8 in'}, ${mayTurn ? 'turned' : 'upright'}`;
      console.log(`${name.padEnd(31)} ${String(plan.cost).padStart(6)} ${String(plan.atLeast).padStart(7)} ${above.padStart(10)} ${firstMs.toFixed(0).padStart(15)}`); // prettier-ignore
    }
  }
}

console.log(`\nby published generators, ${LIMIT_MS} ms each   sheets   bound   proven best`);
for (const mayTurn of [true, false]) {
  const plans = generated(mayTurn).map((ask) => planIn(ask, LIMIT_MS).plan);
  const sum = (of: (plan: SheetPlan) => number) => plans.reduce((total, plan) => total + of(plan), 0);
  const proven = plans.filter(({ cost, atLeast }) => cost <= atLeast).length;
  console.log(`${(mayTurn ? 'turned' : 'upright').padEnd(38)} ${String(sum(({ cost }) => cost)).padStart(6)} ${String(sum(({ atLeast }) => atLeast)).padStart(7)} ${`${proven} of ${plans.length}`.padStart(13)}`); // prettier-ignore
}

interface Instance {
  readonly bin: readonly [number, number];
  readonly items: readonly (readonly [number, number, number])[];
  readonly best_known_bins: Readonly<Record<string, number>>;
}

if (existsSync(PUBLISHED)) {
  const { instances } = JSON.parse(readFileSync(PUBLISHED, 'utf8')) as { readonly instances: readonly Instance[] };
  const some = instances.filter((_, index) => index % EVERY === 0);
  console.log(`\n${some.length} of ${instances.length} published instances, ${LIMIT_MS} ms each   sheets   best known   ratio   (peer, published: ratios for all 500)`); // prettier-ignore
  for (const mode of ['R', 'O'] as const) {
    const sums = some.reduce(
      ([sheets, best], { bin: [width, height], items, best_known_bins }) => {
        const pieces = items.map(([w, h, count], index) => ({ id: `${index}`, width: w, height: h, count, mayTurn: mode === 'R' })); // prettier-ignore
        const { plan } = planIn({ pieces, stock: [{ id: 'sheet', kind: 'sheet', width, height, cost: 1 }], kerf: 0, trim: 0, aim: 'sheets', seed: 1 }, LIMIT_MS); // prettier-ignore
        return [sheets + plan.cost, best + (best_known_bins[`2BP|${mode}|G`] ?? NaN)] as const;
      },
      [0, 0] as readonly [number, number],
    );
    const ratio = (one: number, other: number) => (one / other).toFixed(4);
    console.log(`${(mode === 'R' ? 'turned' : 'upright').padEnd(44)} ${String(sums[0]).padStart(6)} ${String(sums[1]).padStart(12)} ${ratio(sums[0], sums[1]).padStart(7)}   (${ratio(PEERS[mode].peer, mode === 'R' ? 6977 : 7233)}, ${ratio(PEERS[mode].published, mode === 'R' ? 6977 : 7233)})`); // prettier-ignore
  }
}
