/** The papers of costs read back by an independent reader: the drawing to its scale, every amount, nothing cut off or crossed. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { costSheets } from '../../src/core/cost/cost-sheet';
import { lineRow, sumRows } from '../../src/core/cost/cost-words';
import { readPrices } from '../../src/core/cost/read-prices';
import { readShelf } from '../../src/core/shelf/read-shelf';
import { makeCostSheets } from '../../src/outputs/cost/cost-sheets';
import type { CostsOnPaper } from '../../src/outputs/cost/costs-on-paper';
import { makeProposal } from '../../src/outputs/cost/proposal';
import { fractions } from '../../src/outputs/paper/type';
import { boxOfWords, crossedWords, overlappingWords } from './crossed-words';
import { contextOf, fonts } from './contexts';
import { CHART, FERN, LINOCUTS } from './jobs';
import { readPdf, type ReadDocument, type ReadPage, type Stroke } from './read-pdf';

const shelf = readShelf(readFileSync('resources/shelf.csv', 'utf8'));
const prices = readPrices(readFileSync('resources/prices.csv', 'utf8'));
if (!shelf.ok || !prices.ok) throw new Error('the examples can’t be read');

const LONG = 'The harbour mouth at the lowest spring tide of the year, with soundings and the names of all rocks, drawn for the library by children and teachers'; // prettier-ignore
const LONG_JOB = {
  title: LONG,
  units: 'mm',
  pictures: [{ title: LONG, size: '400 x 250 mm' }, { title: 'A heron in the reeds', size: '120 x 120 mm' }],
  windows: { kind: 'row', gap: '40 mm', items: ['1', '2'] },
  frame: { size: '700 x 400 mm' },
  mat: { layers: [{ board: 'Natural grey' }, { board: `A board with a long name, ${LONG}`, reveal: '6 mm' }] },
}; // prettier-ignore
const SOFT = { ...FERN, mat: { layers: [{ board: 'Soft white' }] } };
const OVAL = {
  title: 'Oval fern',
  windows: { kind: 'window', size: '8 x 10 in', shape: 'oval' },
  frame: { size: '16 x 20 in' },
};

function costs(jobs: readonly object[], units: 'in' | 'mm' = 'in'): CostsOnPaper {
  const laid = jobs.map((job) => contextOf(job, { units }));
  if (!shelf.ok || !prices.ok) throw new Error('no examples');
  const costed = costSheets({ jobs: laid, shelf: shelf.value, prices: prices.value, moulding: 'Ash stick' });
  if (!costed.ok) throw new Error(costed.problems[0]?.message);
  const variants = costed.value.map((one) => ({ ...one, name: one.job.title }));
  return { variants, showing: laid[0]!.showing, paper: 'blank', fonts };
}

async function read(made: ReturnType<typeof makeProposal>): Promise<ReadDocument> {
  const result = await made;
  if (!result.ok) throw new Error('not made');
  return readPdf(result.value);
}

const proposal = (context: CostsOnPaper, withPrices = true, isCompared = true) =>
  read(makeProposal(context, { withPrices, isCompared }));
const sheets = (context: CostsOnPaper, isCompared = false) => read(makeCostSheets(context, { isCompared }));

/** Fractions with the plain slash, as they are in words. */
function wordsOf({ pages }: { readonly pages: readonly ReadPage[] }): string {
  return pages.flatMap(({ words }) => words.map(({ text }) => text)).join(' ').replace(/\u2044/g, '/').replace(/\s+/g, ' '); // prettier-ignore
}

/** Words without spaces, since lines break wherever they are full. */
const packed = (text: string) => text.replace(/\u2044/g, '/').replace(/\s+/g, '');

const CASES = [
  ['one in inches', [FERN], 'in'],
  ['one in millimetres', [CHART], 'mm'],
  ['one with long names', [LONG_JOB], 'mm'],
  ['an oval and a grid', [OVAL, LINOCUTS], 'in'],
  ['four, one with long names', [LONG_JOB, FERN, CHART, OVAL], 'in'],
  ['six', [FERN, CHART, OVAL, LINOCUTS, FERN, LONG_JOB], 'mm'],
] as const;

describe.each(CASES)('%s', (_, jobs, units) => {
  it.each(['proposal', 'proposal without prices', 'cost sheets', 'cost sheets side by side'])('%s: fonts embedded, all on the page, nothing crossed, over one another or cut short', async (which) => {
    const context = costs(jobs, units);
    const document = which.startsWith('proposal') ? await proposal(context, which === 'proposal') : await sheets(context, which.endsWith('side')); // prettier-ignore
    expect(document.repaired).toBe(false);
    expect(document.fonts.length).toBeGreaterThan(0);
    expect(document.fonts.filter(({ embedded }) => !embedded)).toEqual([]);
    for (const page of document.pages) {
      expect(crossedWords(page)).toEqual([]);
      expect(overlappingWords(page)).toEqual([]);
      for (const word of page.words) {
        const box = boxOfWords(word);
        expect([word.text, box.left >= 12 && box.right <= page.width - 12 && box.bottom >= 12]).toEqual([word.text, true]);
        expect([word.text, word.missing || word.text.includes('…')]).toEqual([word.text, false]);
      }
    }
  }); // prettier-ignore
});

describe('the proposal', () => {
  it('says what the customer gets, and nothing of the shop’s reckoning', async () => {
    const document = await proposal(costs([FERN]));
    const text = wordsOf(document);
    for (const words of ['Lady fern, cyanotype', '8 x 10 in', 'rectangle, 7 3/4 x 9 3/4 in', 'Ash stick, 3/4 in wide, made to size', 'glass, 2.5 mm', 'Sales tax, 8 %']) expect(text).toContain(words); // prettier-ignore
    expect(text).not.toMatch(/[Mm]arkup|[Mm]argin|[Oo]verhead|Cost|hour|min\b/);
    expect(text).toMatch(/conservator/);
    for (const words of ['Offer holds until', 'Date', 'Signature']) expect(text).toContain(words);
  });

  it('has the shop and the customer at its head where they are given, and neither else', async () => {
    const context = costs([FERN]);
    const shop = { name: 'Village library', address: 'Mill Lane 4, Fernham' };
    const { pages } = await proposal({ ...context, head: { shop, customer: 'The school by the harbour' } });
    const [first] = pages;
    const words = first!.words.map(({ text }) => text).join(' ');
    for (const told of ['Village library', 'Mill Lane 4, Fernham', 'For The school by the harbour']) expect(words).toContain(told); // prettier-ignore
    // Over what the customer gets.
    const up = (text: string) => boxOfWords(first!.words.find((word) => word.text.startsWith(text))!).bottom;
    expect(up('Village')).toBeGreaterThan(up('What you get'));
    expect(wordsOf(await proposal(context))).not.toMatch(/library|For /);
    const made = await makeProposal({ ...context, head: { shop: {}, customer: 'Fern 🌿' } }, { withPrices: true, isCompared: false }); // prettier-ignore
    expect(made.problems.map(({ code, at }) => `${code} ${at}`)).toEqual(['letters-not-printed customer']);
  });

  it('has the price, each tax and the sum as the cost sheet has them', async () => {
    const context = costs([FERN]);
    const [{ sheet }] = context.variants as [CostsOnPaper['variants'][number]];
    const text = wordsOf(await proposal(context));
    for (const amount of [sheet.net, sheet.taxes[0]!.amount, sheet.total])
      expect(text).toContain(`EUR ${amount.toFixed(2)}`);
    const bare = wordsOf(await proposal(context, false));
    expect(bare).not.toMatch(/EUR|tax|Price|\d\.\d\d\b/);
    expect(bare).toContain('Outside');
  });

  it('of many jobs tells every title over its frame, none cut short, and keeps the sums of each together', async () => {
    const jobs = Array.from({ length: 5 }, (_, index) => ({
      ...FERN,
      title: `${'Fern '.repeat(12 + 5 * index)}${index + 1}`,
    }));
    const document = await proposal(costs(jobs));
    const text = wordsOf(document);
    for (const { title } of jobs) expect(packed(text)).toContain(packed(title));
    expect(text).not.toContain('…');
    for (const page of document.pages) {
      const said = page.words.map((word) => word.text);
      expect(said.includes('Price')).toBe(said.includes('In all'));
    }
  });

  it('draws to the largest scale of a rule that leaves all on as few pages, each frame with its number', async () => {
    const jobs = ['12 x 16 in', '14 x 18 in', '16 x 20 in', '16 x 20 in'].map((size) => ({ ...FERN, frame: { size } }));
    const scaleOf = ({ pages }: ReadDocument) => Number(/from the front, 1 : (\d+)/.exec(wordsOf({ pages }))![1]);
    for (const [count, ratio] of [[1, 8], [2, 8], [3, 8], [4, 12]] as const) {
      const document = await proposal(costs(jobs.slice(-count)));
      expect([count, document.pages.length, scaleOf(document)]).toEqual([count, 1, ratio]);
      // The next scale of the rule would be more than the page has left: 21 1/8 in high, in as many rows as it needs.
      const { words } = document.pages[0]!;
      const foot = boxOfWords(words.find(({ text }) => text.startsWith('Offer holds'))!).bottom;
      const next = ratio === 12 ? 8 : 4;
      const wide = 13.125 + 15.125 + 2 * 17.125;
      const rows = Math.ceil(((count === 4 ? wide : 17.125 * count) * 25.4) / next / 185);
      expect(21.125 * 25.4 * (Math.max(rows, 1) / next - 1 / ratio)).toBeGreaterThan(foot - 12);
      // Each outside is there at that scale: 17 1/8 x 21 1/8 in of the last.
      const across = (17.125 * 25.4) / ratio;
      expect(lengths(document.pages[0]!.strokes, across, 'lying')).toBe(2 * Math.min(count, 2));
    }
    // Metric rules have other scales.
    expect(scaleOf(await proposal(costs([CHART], 'mm')))).toBe(5);
  }); // prettier-ignore

  it('says what is in no price, of which variant', async () => {
    const text = wordsOf(
      await proposal(costs([SOFT, { ...FERN, title: 'With gold', mat: { layers: [{ board: 'Gold' }] } }])),
    );
    expect(text).toMatch(/With gold: not in this price: .*mat layer 1/);
    // Of the two, all amounts of one alone lack a part.
    expect(text).toMatch(
      /Price EUR [\d.]+ at least EUR [\d.]+ Sales tax, 8 % EUR [\d.]+ at least EUR [\d.]+ In all EUR [\d.]+ at least EUR/,
    );
  });

  it('of jobs that are all bought has their sum, and of variants none', async () => {
    const context = costs([SOFT, LINOCUTS]);
    const sum = context.variants.reduce(
      (all, { sheet }) => all.plus(sheet.total),
      context.variants[0]!.sheet.total.times(0),
    );
    const together = wordsOf(await proposal(context, true, false));
    expect(together).toContain('What you get: 2 frames');
    expect(together).toContain(`2 jobs together: at least EUR ${sum.toFixed(2)}`);
    expect(wordsOf(await proposal(context, false, false))).not.toContain('together');
    const choice = wordsOf(await proposal(costs([SOFT, FERN])));
    expect(choice).toContain('2 variants to choose from');
    expect(choice).not.toContain('together');
    // Held beside one another, but of different pictures: nobody chooses between them.
    const compared = wordsOf(await proposal(context));
    expect(compared).toContain('What you get: 2 frames, side by side');
    expect(compared).not.toMatch(/together|choose/);
  });

  it('shows each variant to the scale that it says, from the front', async () => {
    // 16 x 20 in frames of a moulding 3/4 in wide with a lip of 1/4 and play of 1/8: 17 1/8 x 21 1/8 in outside.
    const job = { ...FERN, frame: { size: '16 x 20 in' } };
    for (const [count, jobs] of [
      [1, [job]],
      [3, [job, OVAL, job]],
    ] as const) {
      const { pages } = await proposal(costs(jobs));
      const scale = /from the front, 1 : (\d+)/.exec(wordsOf({ pages }));
      const [across, up] = [17.125, 21.125].map((inches) => (inches * 25.4) / Number(scale![1]));
      const strokes = pages[0]!.strokes;
      expect([count, lengths(strokes, across!, 'lying'), lengths(strokes, up!, 'standing')]).toEqual([count, 2 * count, 2 * count]); // prettier-ignore
      // The window of 7 3/4 x 9 3/4 in, where there is one.
      expect(lengths(strokes, (7.75 * 25.4) / Number(scale![1]), 'lying')).toBe(2 * (count === 1 ? 1 : 2));
    }
  });
});

function lengths(strokes: readonly Stroke[], long: number, way: 'lying' | 'standing'): number {
  return strokes.filter(({ from, to }) => {
    const [across, up] = [Math.abs(from.x - to.x), Math.abs(from.y - to.y)];
    return way === 'lying'
      ? up < 0.001 && Math.abs(across - long) < 0.01
      : across < 0.001 && Math.abs(up - long) < 0.01;
  }).length;
}

describe('the cost sheets', () => {
  it('have every line and every sum in full', async () => {
    const context = costs([FERN, LINOCUTS]);
    const text = packed(wordsOf(await sheets(context)));
    for (const { sheet } of context.variants) {
      for (const line of sheet.lines)
        for (const cell of lineRow(line, sheet)) expect(text).toContain(packed(fractions(cell)));
      for (const row of sumRows(sheet)) for (const cell of row) expect(text).toContain(packed(fractions(cell)));
    }
    const total = context.variants.reduce(
      (sum, { sheet }) => sum.plus(sheet.total),
      context.variants[0]!.sheet.total.times(0),
    );
    expect(text).toContain(packed(`2 jobs together: at least EUR ${total.toFixed(2)}`));
  });

  it('of variants have no sum, but their differences', async () => {
    const text = wordsOf(await sheets(costs([FERN, LINOCUTS]), true));
    expect(text).not.toContain('together');
    expect(text).toMatch(/Side by side.*\(\+\d+\.\d\d\)/);
  });

  it('tell names that the type can’t show', async () => {
    const made = await makeCostSheets(costs([{ ...FERN, title: 'Fern 🌿' }]), { isCompared: false });
    expect(made.problems.map(({ code }) => code)).toEqual(['letters-not-printed']);
  });

  it('tell each name that is not printed whole once, and what is printed so beside', async () => {
    const gold = { ...FERN, title: 'Plain', mat: { layers: [{ board: 'Go🌿ld' }] } };
    const mount = { ...FERN, title: 'Fern 🎨', package: { mountBoard: { board: 'Mount 🦉' } } };
    const context = costs([gold, mount, gold]);
    for (const made of [
      await makeCostSheets(context, { isCompared: false }),
      await makeProposal(context, { withPrices: true, isCompared: false }),
    ]) {
      // prettier-ignore
      const told = made.problems.map(({ code, at, value }) => [code, at, value]);
      expect(told.slice(0, 2)).toEqual([
        ['letters-not-printed', 'mat.layers[0].board', '🌿'],
        ['letters-not-printed', 'title', '🎨'],
      ]);
    }
    const { problems } = await makeCostSheets(context, { isCompared: false });
    expect(problems.map(({ at, value }) => [at, value]).slice(2)).toEqual([['', '🦉']]);
    expect(problems[2]?.message).toMatch(/^What is printed has characters .*: 🦉\. A small square stands for each/);
  });

  it('has variants side by side with the decimals of each under one another', async () => {
    const { pages } = await sheets(costs([CHART, FERN, OVAL]), true);
    const [page] = pages as [ReadPage];
    const boxes = page.words.map((word) => ({ text: word.text, ...boxOfWords(word) }));
    const more = boxes.filter(({ text }) => /^\([+−]\d+\.\d\d\)$/.test(text));
    expect(more.length).toBeGreaterThan(6);
    const edges = (list: readonly { readonly right: number }[]) => new Set(list.map(({ right }) => right.toFixed(1)));
    expect(edges(more).size).toBe(2);
    const beside = boxes.filter(({ text, bottom }) => /^\d+\.\d\d$/.test(text) && more.some((one) => Math.abs(one.bottom - bottom) < 0.5)); // prettier-ignore
    expect(edges(beside).size).toBe(3);
  });

  it('says of a total without a part of it that it is the least', async () => {
    const context = costs([{ ...FERN, mat: { layers: [{ board: 'Gold' }] } }]);
    expect(wordsOf(await sheets(context))).toMatch(/Total at least EUR \d+\.\d\d/);
  });
});
