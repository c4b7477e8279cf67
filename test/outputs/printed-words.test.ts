/** What stands on paper in words and numbers: borders that add up, settings in force, letters that are lost, bevels and overcuts. */
import { expect, it } from 'vitest';
import { makeTemplate } from '../../src/outputs';
import { drawDocument } from '../../src/outputs/paper/document';
import type { Surface } from '../../src/outputs/paper/surface';
import { contextOf, fonts } from './contexts';
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

/** `≈ 1 15⁄16` as inches. */
function inches(text: string): number {
  const [, whole, over, under] = /(\d+)?(?:\s*(\d+)[/⁄](\d+))?\s*$/.exec(text.replace('≈', '')) ?? [];
  return Number(whole ?? 0) + (over === undefined ? 0 : Number(over) / Number(under));
}

it('the borders of the overview add up to the blank with the opening between them', async () => {
  // 11 - 7 1/16 leaves 1 31/32 in at each side, which a step of 1/16 in cannot show.
  const job = { pictures: [{ title: 'Fern', size: '7 5/16 x 9 in' }], frame: { size: '11 x 14 in' } };
  const [overview] = await pagesOf(job, 'in');
  if (!overview) throw new Error('no page');
  const [, , size = '', left, , right] = rowOf(overview, /^A\s+Fern/);
  const width = size.split('×')[0]?.trim();
  expect(inches(left ?? '') + inches(width ?? '') + inches(right ?? '')).toBe(11);
});

it('every page of the list begins with the setting in force', async () => {
  const items = Array.from({ length: 25 }, () => ({ kind: 'window', size: '100.3 x 90 mm' }));
  const windows = { kind: 'grid', columns: 5, gap: '40 mm', items };
  const context = { units: 'mm', windows, frame: { size: '900 x 900 mm' } };
  const lists = (await pagesOf(context, 'mm')).filter((page) =>
    page.words.some(({ text }) => /^Cutting list, layer/.test(text)),
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

it('names that the printed type cannot show are told, each at its path', async () => {
  const job = {
    title: 'Fern 🌿',
    pictures: [
      { title: 'Owl 日本', size: '8 x 10 in' },
      { title: 'Κύμα, Ł ½', size: '8 x 10 in' },
    ],
    mat: { layers: [{ board: 'White 🌿🌿' }] },
    free: [{ use: 'title', title: '🦉', size: '4 x 1 in', at: { bottom: '1 in' } }],
    frame: { size: '24 x 16 in' },
  };
  const made = await makeTemplate(contextOf(job, { units: 'in', paper: 'a4' }));
  expect(made.problems.map(({ code, at, value }) => [code, at, value])).toEqual([
    ['letters-not-printed', 'title', '🌿'],
    ['letters-not-printed', 'pictures[0].title', '日 本'],
    ['letters-not-printed', 'mat.layers[0].board', '🌿'],
    ['letters-not-printed', 'free[0].title', '🦉'],
  ]);
  const plain = { pictures: [{ title: 'Κύμα, Ł ½', size: '8 x 10 in' }], frame: { size: '11 x 14 in' } };
  expect((await makeTemplate(contextOf(plain, { units: 'in', paper: 'a4' }))).problems).toEqual([]);
});

it('a cut straight down has neither bevel nor overcut in the words of any page', async () => {
  const wordsOf = async (layer: object) => {
    const job = { pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' }, mat: { layers: [layer] } };
    return (await pagesOf(job, 'in')).flatMap((page) => page.words.map(({ text }) => text)).join(' ');
  };
  const upright = await wordsOf({ bevel: { angle: 0 } });
  expect(upright).toContain('cut straight down, no bevel');
  expect(upright).not.toMatch(/bevel of|overcut that|depth and overcut/);
  expect(await wordsOf({})).toMatch(/standard bevel of 45°.*overcut that lets the bevels meet/s);
});

it('the overview has a word of care for blades, pictures, glass and walls', async () => {
  const [overview] = await pagesOf({ pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' } }, 'in');
  const words = overview?.words.map(({ text }) => text).join(' ') ?? '';
  for (const care of [/Blades:/, /conservator/, /Glass: its edges cut/, /On the wall:.*local codes/s])
    expect(words).toMatch(care);
});

it('nothing in the head of the overview lies over anything else, with one layer or four, on any paper', async () => {
  for (const paper of ['letter', 'legal', 'tabloid', 'a4', 'a3'] as const) {
    for (const layers of [1, 4]) {
      const job = {
        pictures: [{ size: '200 x 250 mm' }],
        frame: { size: '500 x 400 mm' },
        mat: { layers: Array.from({ length: layers }, (_, index) => (index === 0 ? {} : { reveal: '5 mm' })) },
      };
      const made = await makeTemplate(contextOf(job, { units: 'mm', paper }));
      if (!made.ok) throw new Error(made.problems[0]?.message);
      const words = readPdf(made.value).pages[0]?.words ?? [];
      const maps = words.filter(({ text }) => /^Layer \d · BACK/.test(text));
      const facts = words.filter(({ text }) => /side that is printed|that is printed|Joins have/.test(text));
      expect(maps.length).toBe(layers);
      const lowest = Math.min(...facts.map(({ at }) => at.y));
      // Capitals of 9 points are 2.3 mm high.
      for (const map of maps) expect(map.at.y + 2.3).toBeLessThan(lowest - 0.5);
    }
  }
});

it('a layer cut behind the one above has its boards told before its cuts, and scale readings beside the settings', async () => {
  const cutting = { layers: 'behind', cutter: { name: 'Bench', scaleOffset: '1/16 in' } };
  const job = {
    pictures: [{ title: 'Fern', size: '8 x 10 in' }],
    frame: { size: '16 x 20 in' },
    mat: { layers: [{}, { reveal: '1/4 in' }] },
    cutting,
  };
  for (const units of ['in', 'mm'] as const) {
    const pages = await pagesOf(job, units);
    const text = (page: ReadPage) => page.words.map((word) => word.text).join(' ');
    const lists = pages.filter((page) => text(page).includes('cutting list'));
    // One page a layer: what is done with the boards stands before and after the cuts.
    expect(lists).toHaveLength(2);
    const page = lists[1]!;
    expect(text(page)).toMatch(
      /The boards of layer 2, before the cuts.*Cutting list, layer 2.*The boards of layer 2, after the last cut/s,
    );
    for (const list of lists) expect(text(list)).not.toContain('…');
    // 8 x 10 less 1/8 on each side in 16 x 20: borders 4 1/8 and 5 1/8 in, and a sixteenth more on the scale.
    const settings = units === 'in' ? ['5 1⁄8 (5 3⁄16)', '4 1⁄8 (4 3⁄16)'] : ['130.18 (131.76)', '104.78 (106.36)'];
    for (const setting of settings) expect(text(page)).toContain(setting);
  }
  const apart = await pagesOf({ ...job, cutting: {} }, 'in');
  expect(apart.some((page) => page.words.some(({ text }) => text.includes('The boards of')))).toBe(false);
});

it('no instruction of the cutting list is cut short, of any shape, from either side, in any unit', async () => {
  const shapes = ['oval', 'arch', 'pointed', 'polygon', 'cut-corners', 'stepped', 'scooped', 'rounded'];
  const job = {
    windows: {
      kind: 'grid',
      columns: 4,
      gap: '1 in',
      items: shapes.map((shape) => ({ kind: 'window', size: '5 x 7 in', shape })),
    },
    frame: { size: '32 x 24 in' },
    mat: { lines: [{ kind: 'groove', distance: '1/4 in' }] },
    cutting: { overcut: '1/16 in' },
  };
  for (const view of ['back', 'front'] as const) {
    for (const units of ['in', 'mm', 'cm'] as const) {
      const made = await makeTemplate(contextOf(job, { units, view, paper: units === 'in' ? 'letter' : 'a4' }));
      if (!made.ok) throw new Error(made.problems[0]?.message);
      const lists = readPdf(made.value).pages.filter((page) =>
        page.words.some(({ text }) => /^cutting list/.test(text)),
      );
      expect(lists.length).toBeGreaterThan(0);
      const words = lists.map((page) => page.words.map(({ text }) => text).join(' ')).join(' ');
      expect(words).not.toContain('…');
      // Both overcuts of a cut that has two can be read; lean and side stand whole.
      expect(words).toMatch(view === 'back' ? /left, border/ : /right, window/);
      if (view === 'back') expect(words).toMatch(/start [^ ]+ (in|mm|cm) end [^ ]+ (in|mm|cm)/);
    }
  }
});

it('a window drawn by another edge than its opening says which, with its size, so that label and borders add up', async () => {
  const job = {
    windows: { kind: 'window', size: '8 1/2 x 10 1/2 in', shape: { kind: 'rounded', radius: '1 in' } },
    frame: { size: '14 x 16 in' },
  };
  const labelOf = async (view: 'back' | 'front') => {
    const made = await makeTemplate(contextOf(job, { units: 'in', view }));
    if (!made.ok) throw new Error(made.problems[0]?.message);
    return readPdf(made.value)
      .pages.flatMap((page) => page.words.map(({ text }) => text))
      .join(' ');
  };
  const front = await labelOf('front');
  // A bevel of 45 degrees in 1/16 in board is 1/16 in wide: the face edge lies so far outside on every side.
  expect(front).toMatch(/8 1⁄2 in × 10 1⁄2 in/);
  expect(front).toMatch(/line drawn: face edge 8 5⁄8 in × 10 5⁄8 in its radius 1 1⁄16 in round each cross/);
  const back = await labelOf('back');
  expect(back).not.toContain('line drawn');
  expect(back).toMatch(/radius 1 in round each cross/);
});

it('letters are printed as they are written, whatever stands beside them', async () => {
  const glyphs = async (...texts: readonly string[]) => {
    const draw = (surface: Surface) => texts.forEach((text, index) => surface.text(text, { x: 10, y: 20 * (index + 1) }, { size: 10 })); // prettier-ignore
    const { bytes } = await drawDocument([{ size: { width: 200, height: 200 }, step: '', draw }], '', fonts, {});
    const words = readPdf(bytes).pages.flatMap((page) => page.words);
    return texts.map((wanted) => words.find(({ text }) => text === wanted)?.glyphs ?? []);
  };
  for (const [beside, alone] of [
    ['Ash 12x16', 'Ash 12 x 16'],
    ['A-B', 'A - B'],
    ['a->b 10:30', 'a - > b 10 : 30'],
  ] as const) {
    // prettier-ignore
    const [one = [], other = []] = await glyphs(beside, alone);
    const space = other[alone.indexOf(' ')];
    expect(one).toHaveLength(beside.length);
    expect(one.filter((glyph) => glyph !== space)).toEqual(other.filter((glyph) => glyph !== space));
  }
  // True fractions stay.
  const [half = [], plain = []] = await glyphs('1\u20442', '1/2');
  expect(half[0]).not.toBe(plain[0]);
});
