/** Lengths as they stand on paper: borders that add up to the blank, and a guide setting at the head of every list page. */
import { expect, it } from 'vitest';
import { makeTemplate } from '../../src/outputs';
import { contextOf } from './contexts';
import { readPdf, type ReadPage } from './read-pdf';

async function pagesOf(job: object, units: 'in' | 'mm'): Promise<readonly ReadPage[]> {
  const made = await makeTemplate(contextOf(job, { units, paper: 'a4' }));
  if (!made.ok) throw new Error(made.problems[0]?.message);
  return readPdf(made.value).pages;
}

/** Words of a row, from the left: those whose baseline is that of the word found. */
function rowOf(page: ReadPage, text: RegExp): string[] {
  const found = page.words.find((word) => text.test(word.text));
  if (!found) throw new Error(`${text} is not on the page`);
  return page.words
    .filter(({ at }) => Math.abs(at.y - found.at.y) < 0.5)
    .toSorted((a, b) => a.at.x - b.at.x)
    .map((word) => word.text);
}

/** `≈ 1 15⁄16 in` as inches. */
function inches(text: string): number {
  const [, whole, over, under] = /(\d+)?(?:\s*(\d+)[/⁄](\d+))?\s*in/.exec(text.replace('≈', '')) ?? [];
  return Number(whole ?? 0) + (over === undefined ? 0 : Number(over) / Number(under));
}

it('the borders of the overview add up to the blank with the opening between them', async () => {
  // 11 - 7 1/16 leaves 1 31/32 in at each side, which a step of 1/16 in cannot show.
  const job = { pictures: [{ title: 'Fern', size: '7 5/16 x 9 in' }], frame: { size: '11 x 14 in' } };
  const [overview] = await pagesOf(job, 'in');
  if (!overview) throw new Error('no page');
  const row = rowOf(overview, /^A\s+Fern/).join(' ');
  const [width, , left, , right] = row.match(/(?:≈\s*)?\d+(?:\s+\d+[/⁄]\d+)?\s*in/g) ?? [];
  expect(inches(left ?? '') + inches(width ?? '') + inches(right ?? '')).toBe(11);
});

it('every page of the list begins with the setting in force', async () => {
  const items = Array.from({ length: 25 }, () => ({ kind: 'window', size: '100.3 x 90 mm' }));
  const windows = { kind: 'grid', columns: 5, gap: '40 mm', items };
  const context = { units: 'mm', windows, frame: { size: '900 x 900 mm' } };
  const lists = (await pagesOf(context, 'mm')).filter((page) =>
    page.words.some(({ text }) => /^Cutting list/.test(text)),
  );
  expect(lists.length).toBeGreaterThan(1);
  const { plan } = contextOf(context);
  for (const page of lists) {
    const numbers = page.words.flatMap(({ text }) => (/^\d{1,3}$/.test(text) ? [Number(text)] : []));
    const first = Math.min(...numbers.filter((number) => number > 0));
    const step = plan.layers[0]?.order.back[first - 1];
    const row = rowOf(page, new RegExp(`^${first}$`));
    expect(parseFloat(row[1] ?? '')).toBeCloseTo(step?.guideSetting ?? NaN, 2);
  }
});
