/**
 * Sheets: framing-like sets of mixed sheet sizes with prices against the best that other solvers found, and sets by the
 * published generators of Berkey and Wang (1987) and Martello and Vigo (1998) against the best open packer on npm that cuts
 * edge to edge (guillotine-packer), all in one run; every plan judged. Where the published instances lie beside the project,
 * they are planned too, and held against the best that is known. SHEETS_ALL=1 plans all 500 of them, SHEETS_MS is the time.
 */
import { planIn, peerCost, stopwatch } from './sheets/plan-in';
import { countedSets, cuttingSets, framingSets, generatedSets, MODE_WORDS, MODES, publishedSets } from './sheets/sets';

const LIMIT_MS = Number(process.env['SHEETS_MS'] ?? 1000);
/** Of the published instances every so manieth, unless all are asked for. */
const EVERY = process.env['SHEETS_ALL'] ? 1 : 25;

const percent = (one: number, other: number) => `${((100 * one) / other - 100).toFixed(1)} %`;
const row = (name: string, cells: readonly (string | number)[]) =>
  console.log(name.padEnd(38) + cells.map((cell) => String(cell).padStart(12)).join(''));

row(`framing-like, ${LIMIT_MS} ms each`, ['cost', 'listed', 'above it', 'peer', 'our part', 'bound', 'first ms', 'MB']);
let [cost, listed, peers, most] = [0, 0, 0, 0];
for (const set of framingSets()) {
  const peer = peerCost(set.ask);
  const { plan, firstMs, memory } = planIn(set.ask, LIMIT_MS);
  row(set.name, [plan.cost, set.listed, percent(plan.cost, set.listed), peer, (plan.cost / peer).toFixed(3), plan.atLeast, firstMs.toFixed(0), memory.toFixed(0)]); // prettier-ignore
  [cost, listed, peers, most] = [cost + plan.cost, listed + set.listed, peers + peer, Math.max(most, memory)];
}
row('all', [cost, listed, percent(cost, listed), peers, (cost / peers).toFixed(3), '', '', most.toFixed(0)]);
console.log(`memory of the whole process, bench and peer with it: ${(most / 200).toFixed(2)} of 200 MB`);

row(`\nby published generators, ${LIMIT_MS} ms`, ['sheets', 'peer', 'our part', 'bound', 'proven', 'peer ms']);
for (const mode of MODES) {
  const sets = generatedSets(mode);
  const spent = stopwatch();
  const peer = sets.reduce((sum, ask) => sum + peerCost(ask), 0);
  const peerMs = spent() / sets.length;
  const plans = sets.map((ask) => planIn(ask, LIMIT_MS).plan);
  const sheets = plans.reduce((sum, plan) => sum + plan.cost, 0);
  const proven = plans.filter((plan) => plan.cost <= plan.atLeast).length;
  row(MODE_WORDS[mode], [sheets, peer, (sheets / peer).toFixed(3), plans.reduce((sum, plan) => sum + plan.atLeast, 0), `${proven} of ${sets.length}`, peerMs.toFixed(0)]); // prettier-ignore
}

for (const mode of MODES) {
  const sets = publishedSets(mode).filter((_, index) => index % EVERY === 0);
  if (sets.length === 0) {
    console.log('\nthe published instances are not beside the project: the sets above are all there is');
    break;
  }
  if (mode === 'R') row(`\npublished instances, ${LIMIT_MS} ms`, ['sheets', 'best known', 'above it', 'peer', 'our part', 'of 500']); // prettier-ignore
  const sums = sets.reduce(
    ([sheets, best, peer], set) => {
      const { plan } = planIn(set.ask, LIMIT_MS);
      if (plan.atLeast > set.best) throw new Error('a bound lies above what is known to do');
      return [sheets + plan.cost, best + set.best, peer + peerCost(set.ask)] as const;
    },
    [0, 0, 0] as readonly [number, number, number],
  );
  row(MODE_WORDS[mode], [sums[0], sums[1], percent(sums[0], sums[1]), sums[2], (sums[0] / sums[2]).toFixed(4), sets.length]); // prettier-ignore
}

const cutting = cuttingSets();
if (cutting.length > 0) {
  const found = cutting.map(({ ask, best }) => ({ cost: planIn(ask, LIMIT_MS).plan.cost, best }));
  const sum = (of: (one: (typeof found)[number]) => number) => found.reduce((total, one) => total + of(one), 0);
  const equal = found.filter((one) => one.cost <= one.best).length;
  row('\npublished small sets, many alike', ['sheets', 'of 3 stages', 'reached']);
  row('upright', [sum(({ cost }) => cost), sum(({ best }) => best), `${equal} of ${found.length}`]);
}

/** Mean part of the sheets used that is pieces, in percent: Gardeyn and Wauters 2022, table 3, long runs. */
const USED = { M1: 98.4, M2: 97.2, M3: 98.0 } as const;
const counted = countedSets();
if (counted.length > 0) {
  row('\ncounted sheets of several sizes', ['used', 'published']);
  for (const [name, published] of Object.entries(USED)) {
    const sets = counted.filter((set) => set.name.startsWith(name));
    const parts = sets.map(({ ask }) => {
      const pieces = ask.pieces.reduce((sum, { width, height, count }) => sum + width * height * count, 0);
      return (100 * pieces) / planIn(ask, LIMIT_MS).plan.cost;
    });
    row(name, [`${(parts.reduce((sum, part) => sum + part, 0) / parts.length).toFixed(1)} %`, `${published} %`]);
  }
}
