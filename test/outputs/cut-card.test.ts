/** Cut cards read back from their PDF by a reader that is not ours: settings, starts and stops are the plan's. */
import { describe, expect, it } from 'vitest';
import { cutCard } from '../../src/core/cutting/cut-card';
import type { Showing } from '../../src/core/units';
import { makeCutCard } from '../../src/outputs/cut-card/cut-card';
import { contextOf } from './contexts';
import { readPdf, type ReadPage } from './read-pdf';

const DOUBLE = {
  title: 'Lady fern',
  pictures: [{ title: 'Lady fern', size: '8 x 10 in' }],
  frame: { size: '16 x 20 in' },
  mat: { layers: [{ board: 'Warm white' }, { board: 'Moss', reveal: '1/4 in' }] },
  borders: { rule: 'bottom-amount', amount: '1/2 in' },
  cutting: { cutter: { name: 'Bench cutter', reach: '5 in', scaleOffset: '1/32 in' } },
};
const SHAPES = {
  title: 'Fern and roads',
  units: 'mm',
  frame: { size: '600 x 400 mm' },
  windows: {
    kind: 'row',
    gap: '50 mm',
    items: [
      { kind: 'window', size: '180 x 240 mm', shape: 'oval' },
      { kind: 'window', size: '180 x 240 mm', shape: { kind: 'arch', rise: '40 mm' } },
      { kind: 'window', size: '60 x 60 mm', shape: 'polygon' },
    ],
  },
};
const GRID = {
  windows: {
    kind: 'grid',
    columns: 4,
    gap: '1 in',
    items: ['oval', 'arch', 'pointed', 'polygon', 'cut-corners', 'stepped', 'scooped', 'rounded'].map((shape) => ({
      kind: 'window',
      size: '5 x 7 in',
      shape,
    })),
  },
  frame: { size: '32 x 24 in' },
  mat: { lines: [{ kind: 'groove', distance: '1/4 in' }] },
};
const WALL = {
  title: 'Wall of linocuts',
  units: 'mm',
  windows: {
    kind: 'grid',
    columns: 8,
    gap: '30 mm',
    items: Array.from({ length: 40 }, () => ({ kind: 'window', size: '60.3 x 45 mm' })),
  },
  frame: { size: '800 x 600 mm' },
};

async function pagesOf(job: object, options: Parameters<typeof contextOf>[1]): Promise<readonly ReadPage[]> {
  const made = await makeCutCard(contextOf(job, options));
  if (!made.ok) throw new Error(made.problems[0]?.message);
  return readPdf(made.value).pages;
}

const textOf = (page: ReadPage) => page.words.map(({ text }) => text).join(' ');

/** `5 1⁄16 in`, `130.18` as millimetres. */
function mmOf(text: string, unit: Showing['unit']): number {
  const [, whole, decimals, over, under] = /^(?:(\d+)(\.\d+)?)?(?:\s*(\d+)⁄(\d+))?/.exec(text.trim()) ?? [];
  const value = Number(`${whole ?? 0}${decimals ?? ''}`) + (over === undefined ? 0 : Number(over) / Number(under));
  return value * { in: 25.4, mm: 1, cm: 10 }[unit];
}

/** Rows of a page, upper first, each from the left. */
function rowsOf(page: ReadPage): string[][] {
  const rows = new Map<number, { x: number; text: string }[]>();
  for (const { at, text, turn } of page.words) {
    if (turn !== 0) continue;
    const y = [...rows.keys()].find((other) => Math.abs(other - at.y) < 0.6) ?? at.y;
    rows.set(y, [...(rows.get(y) ?? []), { x: at.x, text }]);
  }
  return [...rows]
    .toSorted(([a], [b]) => b - a)
    .map(([, words]) => words.toSorted((a, b) => a.x - b.x).map(({ text }) => text));
}

/** What the pages say of each guided cut: its setting and reading from the banner above, its edge, start and stop. */
function readRuns(pages: readonly ReadPage[], unit: Showing['unit']) {
  const found: { number: number; setting: number; reading?: number; edge: string; start: number; stop: number }[] = [];
  let banner = { setting: NaN, edge: '' } as { setting: number; reading?: number; edge: string };
  let guided = false;
  for (const row of pages.flatMap(rowsOf)) {
    const [first = ''] = row;
    if (/^With the guide/.test(first)) guided = true;
    if (/^(?:By marks|After the last|Take care)/.test(first)) guided = false;
    const set = /guide (?:to|at) ([^(;]*)[^;]*(?:; the scale reads ([^(]*))?/.exec(first);
    if (set) {
      const reading = set[2] === undefined ? {} : { reading: mmOf(set[2], unit) };
      banner = { setting: mmOf(set[1] ?? '', unit), ...reading, edge: '' };
    }
    const edge = /[Tt]he ([A-Z]+) edge of/.exec(first)?.[1];
    if (edge) banner = { ...banner, edge: edge.toLowerCase() };
    if (!guided || !/^\d+$/.test(first)) continue;
    found.push({ number: Number(first), ...banner, start: mmOf(row[2] ?? '', unit), stop: mmOf(row[3] ?? '', unit) });
  }
  return found;
}

describe.each([
  ['in', 'apart', DOUBLE],
  ['mm', 'behind', { ...DOUBLE, cutting: { ...DOUBLE.cutting, layers: 'behind' } }],
  ['mm', 'apart', WALL],
  ['cm', 'apart', WALL],
  ['mm', 'apart', SHAPES],
] as const)('a card in %s, layers %s', (units, _, job) => {
  it.each(['back', 'front'] as const)('has the settings, starts and stops of the plan, from the %s', async (view) => {
    const options = { units, view, paper: 'a4' as const };
    const { plan } = contextOf(job, options);
    const pages = await pagesOf(job, options);
    const read = readRuns(pages, units);
    const planned = plan.layers.flatMap((layer) =>
      cutCard(plan, layer, plan.way === 'behind' && layer.number > 1 ? 'back' : view).runs.flatMap((run) =>
        run.cuts.map((cut) => ({ run, cut })),
      ),
    );
    expect(read.length).toBe(planned.length);
    planned.forEach(({ run, cut }, index) => {
      const row = read[index]!;
      // Decimals told: a thousandth of an inch, a hundredth of a millimetre, and of a centimetre a thousandth.
      const told = units === 'in' ? 0.0005 * 25.4 + 1e-9 : 0.005 + 1e-9;
      const near = (value: number, wanted: number) =>
        expect(Math.abs(value - wanted)).toBeLessThanOrEqual(Math.max(told, 25.4 / 1000));
      expect(row.number).toBe(cut.number);
      expect(row.edge).toBe(run.edge);
      near(row.setting, cut.line.guideSetting!);
      if (plan.cutter) near(row.reading!, cut.line.guideSetting! + plan.cutter.scaleOffset!);
      near(row.start, cut.measures.start);
      near(row.stop, cut.measures.stop);
    });
  });
});

it('gives marks for cuts that no guide leads, or that lie beyond its reach, and says how far it would have to reach', async () => {
  const far = (await pagesOf(DOUBLE, { units: 'in' })).map(textOf).join(' ');
  // 7 3/4 x 9 3/4 in 16 x 20: borders 4 1/8, and 10 1/4 high: top 4 7/8, bottom 5 3/8 (the layer above 1/4 less).
  expect(far).toContain('The guide of Bench cutter is too short for one cut');
  expect(far).toMatch(/A bottom 11 7⁄8 5 3⁄8 4 1⁄8 5 3⁄8/);
  const shapes = (await pagesOf(SHAPES, { units: 'mm', paper: 'a4' })).map(textOf).join(' ');
  expect(shapes).toMatch(/long axis 240 mm up, short axis 180 mm across/);
  expect(shapes).toMatch(/C slant 1/);
});

it('tells what is done with the boards, what falls out and what goes back, in both ways of cutting', async () => {
  const apart = (await pagesOf(DOUBLE, { units: 'in' })).map(textOf);
  const behind = await pagesOf({ ...DOUBLE, cutting: { layers: 'behind' } }, { units: 'in' });
  const cardOf = (layer: number) => behind.map(textOf).filter((text) => text.includes(`Layer ${layer} of 2`));
  const [top, lower] = [cardOf(1).join(' '), cardOf(2).join(' ')];
  expect(apart.join(' ')).not.toMatch(/keep it|Put the fallout/);
  expect(top).toMatch(/A falls out; keep it/);
  expect(lower).toMatch(/Trim the board of layer 2.*Put the fallout of layer 1 back into window A/s);
  expect(lower).toMatch(/edge of layer 1, “Warm white” at the guide/);
  expect(lower).toMatch(/A falls out with that above.*Turn the mat face up only now/s);
});

it('has a word of care on every card, keeps within its borders and cuts nothing short, on any paper', async () => {
  for (const job of [DOUBLE, WALL, SHAPES]) {
    for (const paper of ['letter', 'legal', 'tabloid', 'a4', 'a3', 'blank'] as const) {
      const pages = await pagesOf(job, { units: 'mm', paper });
      expect(pages.some((page) => textOf(page).includes('Cut away from the body'))).toBe(true);
      for (const page of pages) {
        expect(textOf(page)).not.toContain('…');
        const inside = page.words.filter(({ at, last }) => at.x < 14 || last.x > page.width - 14 || at.y < 14.5);
        expect(inside.map(({ text }) => text)).toEqual([]);
      }
    }
  }
});

it('turns a layer that is fixed behind another to its back, whichever side is chosen', async () => {
  const pages = await pagesOf({ ...DOUBLE, cutting: { layers: 'behind' } }, { units: 'in', view: 'front' });
  expect(pages.map((page) => page.words.find(({ text }) => /^(BACK|FRONT)$/.test(text))?.text)).toEqual(['FRONT', 'BACK', 'BACK'].slice(0, pages.length)); // prettier-ignore
  expect((await pagesOf(DOUBLE, { units: 'in', view: 'front' })).map((page) => textOf(page).slice(0, 5))).not.toContain('BACK '); // prettier-ignore
});

it('has what is made on the face on a card of its own before the windows, from the front, with pen, depth and lean', async () => {
  const lines = [
    { kind: 'groove', distance: '3/4 in' },
    { kind: 'ruled', distance: '3/8 in' },
  ];
  const job = { ...DOUBLE, mat: { ...DOUBLE.mat, lines } };
  const pages = await pagesOf(job, { units: 'mm', paper: 'a4' });
  const front = pages.filter((page) => page.words.some(({ text }) => text === 'FRONT'));
  expect(pages.slice(0, front.length)).toEqual(front);
  const [layer] = contextOf(job, { units: 'mm' }).plan.layers;
  const read = readRuns(front, 'mm');
  expect(read.map(({ number }) => number)).toEqual(layer!.lineOrder.filter((step) => step.guideSetting !== undefined).map(({ number }) => number)); // prettier-ignore
  for (const row of read) {
    const { guideSetting = NaN } = layer!.lineOrder[row.number - 1]!;
    expect(Math.abs(row.setting - guideSetting)).toBeLessThanOrEqual(0.0255);
    expect(Math.abs(row.reading! - guideSetting - 25.4 / 32)).toBeLessThanOrEqual(0.0255);
  }
  const text = front.map(textOf).join(' ');
  expect(text).toMatch(/Ruled lines and grooves are made on the face.*A groove is cut in two passes/s);
  expect(text).toMatch(/pen of 0\.5 mm.*blade at 45° and 0\.79 mm deep.*leans left/s);
  for (const page of pages) expect(textOf(page)).not.toContain('…');
});

it('begins every page that goes on with the setting in force', async () => {
  const pages = await pagesOf(WALL, { units: 'mm', paper: 'letter' });
  expect(pages.length).toBeGreaterThan(3);
  for (const page of pages.slice(1)) {
    const rows = rowsOf(page).map(([first = '']) => first);
    const cut = rows.findIndex((first) => /^\d+$/.test(first));
    const banner = rows.findIndex((first) => /guide (?:to|at) /.test(first));
    if (cut >= 0) expect(banner).toBeLessThan(cut);
    if (cut >= 0) expect(banner).toBeGreaterThanOrEqual(0);
  }
});

it('has cuts on every page of a card and of a cutting list, and tells care before the first of them', async () => {
  const behind = { ...DOUBLE, cutting: { ...DOUBLE.cutting, layers: 'behind' } };
  for (const job of [DOUBLE, behind, { ...behind, cutting: { layers: 'behind' } }, WALL, SHAPES, GRID]) {
    for (const paper of ['letter', 'a4'] as const) {
      const pages = await pagesOf(job, { units: 'in', paper });
      for (const page of pages) expect(textOf(page)).toMatch(/With the guide|By marks|From across|guide (?:to|at) \d/);
      expect(pages.map(textOf).join(' ')).toMatch(/Take care.*With the guide/s);
      expect(pages.map(textOf).join(' ')).not.toContain('…');
    }
  }
});

it('says of the overcut at its head what the cuts of the view have', async () => {
  const head = async (job: object, view: 'back' | 'front') =>
    (await pagesOf(job, { units: 'in', view })).map(textOf).join(' ').split('With the guide')[0] ?? '';
  const apart = { ...DOUBLE, cutting: {} };
  expect(await head(apart, 'back')).toMatch(/Overcut 1⁄16 in at square corners, reckoned/);
  // A standard bevel is at its narrowest on the face, so that nothing is left uncut there.
  expect(await head(apart, 'front')).toMatch(/Overcut none from the front/);
  expect(await head({ ...DOUBLE, cutting: { overcut: '1/32 in' } }, 'front')).toMatch(
    /Overcut 1⁄32 in at square corners/,
  );
});

it('has marks of a rule for what lies on one, else decimals with the nearest mark beside them', async () => {
  const inches = (await pagesOf(DOUBLE, { units: 'in' })).map(textOf).join(' ');
  // 3 7/8 in and 1/32 more on the scale.
  expect(inches).toMatch(/guide (?:to|at) 3 7⁄8 in; the scale reads 3 29⁄32 in/);
  expect(inches).not.toMatch(/\d\.\d/);
  const odd = { ...DOUBLE, borders: { rule: 'bottom-amount', amount: '0.337 in' }, cutting: {} };
  // 20 - 10 = 10 in of borders less 0.337: 4.8315 above, less 1/4 of the reveal and ...: no mark is on it.
  expect((await pagesOf(odd, { units: 'in' })).map(textOf).join(' ')).toMatch(/\d\.\d{3} in \(≈ \d+ \d+⁄64\)/);
  expect((await pagesOf(odd, { units: 'mm' })).map(textOf).join(' ')).not.toContain('(≈');
});

it('tells how many numbers of cuts its drawing has no room for', async () => {
  const shape = { kind: 'stepped', count: 6, step: '1/8 in' };
  const stepped = { frame: { size: '30 x 30 in' }, free: [{ use: 'empty', size: '3 x 3 in', shape, at: {} }] };
  const told = (await pagesOf(stepped, { units: 'in' })).map(textOf).join(' ');
  const cuts = contextOf(stepped).plan.layers[0]!.order.back.length;
  const [, left = NaN] = /(\d+) of \d+ numbers have no room here/.exec(told) ?? [];
  expect(told).toContain(` of ${cuts} numbers have no room here`);
  expect(Number(left)).toBeLessThan(cuts);
  expect((await pagesOf(DOUBLE, { units: 'in' })).map(textOf).join(' ')).not.toContain('no room here');
});
