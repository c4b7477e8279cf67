/** The plan of sheets read back by an independent reader: pieces and cuts to the scale it says, and every word clear of lines. */
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/core/geometry/box';
import { alikeSheets } from '../../../src/core/sheets/alike-sheets';
import type { PlannedSheet } from '../../../src/core/sheets/plan';
import { sizeText, type Showing } from '../../../src/core/units';
import { windowsOnSheet } from '../../../src/core/sheets/windows-on-sheet';
import { overlaps } from '../../../src/outputs/paper/room';
import { planBoard } from '../../../src/core/sheets/planned-board';
import { makeSheetPapers } from '../../../src/outputs/sheets/sheet-papers';
import { fonts } from '../contexts';
import { boxOfWords, crossedWords, overlappingWords } from '../crossed-words';
import { readPdf, type ReadPage, type Stroke } from '../read-pdf';
import { ask, CASES, type Case } from './plans';

const TOLERANCE = 0.01;

async function pagesOf(one: Case): Promise<readonly ReadPage[]> {
  const { files } = await makeSheetPapers(one.plans, 'show', ask(one, ['sheet-plan']), { fonts });
  expect(files.map(({ name }) => name)).toEqual(['show-sheet-plan.pdf']);
  const document = readPdf(files[0]!.bytes);
  expect(document.repaired).toBe(false);
  return document.pages;
}

/** As a reader would read it: fractions with the plain slash. */
function textOf(page: ReadPage): string {
  return page.words.map(({ text }) => text).join(' ').replace(/\u2044/g, '/').replace(/\s+/g, ' '); // prettier-ignore
}

const scaleOf = (page: ReadPage) => 1 / Number(/Scale 1 : (\d+)/.exec(textOf(page))?.[1]);

/** Closed boxes, stroke by stroke. */
function boxesOf({ strokes }: ReadPage): Box[] {
  const thin = strokes.filter(({ width, dashed }) => Math.abs(width - 0.25) < 0.001 && !dashed);
  return thin.flatMap((first, index): Box[] => {
    const four = thin.slice(index, index + 4);
    const isClosed = four.length === 4 && four.every(({ order }) => order === first.order) && near(four[3]!.to, first.from) && four.every((one, at) => at === 0 || near(four[at - 1]!.to, one.from)); // prettier-ignore
    return isClosed ? [around(four)] : [];
  });
}

const near = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y) < 1e-6;

function around(strokes: readonly Stroke[]): Box {
  const [xs, ys] = [strokes.map(({ from }) => from.x), strokes.map(({ from }) => from.y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** Every group of sheets that are alike, with the page that its drawing is on. */
function drawn({ plans }: Case, pages: readonly ReadPage[]) {
  const withDrawing = pages.filter((page) => Number.isFinite(scaleOf(page)));
  const groups = plans.boards.flatMap((board) => alikeSheets(board.plan.sheets).map((alike) => ({ board, alike })));
  expect(withDrawing).toHaveLength(groups.length);
  return groups.map((group, index) => ({ ...group, page: withDrawing[index]! }));
}

/** The drawn sheet's lower left corner, by the box of its size. */
function cornerOf(page: ReadPage, { stock }: PlannedSheet) {
  const scale = scaleOf(page);
  const boxes = boxesOf(page).filter((box) => Math.abs(box.right - box.left - stock.width * scale) < TOLERANCE && Math.abs(box.top - box.bottom - stock.height * scale) < TOLERANCE); // prettier-ignore
  // A piece that is the sheet lies in its very place.
  expect(new Set(boxes.map(({ left, bottom }) => `${left.toFixed(2)} ${bottom.toFixed(2)}`)).size).toBe(1);
  return { x: boxes[0]!.left, y: boxes[0]!.bottom, scale };
}

const told = (size: { width: number; height: number }, showing: Showing) => sizeText(size, showing);

describe.each(CASES)('%s', (_, one) => {
  it('draws pieces and cuts to the scale it says, from the corner of the sheet', async () => {
    const pages = await pagesOf(one);
    for (const { board, alike, page } of drawn(one, pages)) {
      const { x, y, scale } = cornerOf(page, alike.sheet);
      const boxes = boxesOf(page);
      for (const { box } of alike.sheet.pieces) {
        const wanted = { left: x + box.left * scale, right: x + box.right * scale, bottom: y + box.bottom * scale, top: y + box.top * scale }; // prettier-ignore
        const off = boxes.map((found) => Math.max(...(['left', 'right', 'bottom', 'top'] as const).map((side) => Math.abs(found[side] - wanted[side])))); // prettier-ignore
        expect(Math.min(...off)).toBeLessThan(TOLERANCE);
      }
      const heavy = page.strokes.filter(({ width }) => width > 0.39);
      for (const { kind, part, way, setting, times } of alike.sheet.steps) {
        if (kind !== 'cut') continue;
        const at = (way === 'upright' ? part.left : part.bottom) + times * setting + (times - 1) * board.ask.kerf;
        const [from, to] = way === 'upright' ? [{ x: at, y: part.bottom }, { x: at, y: part.top }] : [{ x: part.left, y: at }, { x: part.right, y: at }]; // prettier-ignore
        const off = heavy.map((stroke) => Math.max(Math.abs(stroke.from.x - x - from!.x * scale), Math.abs(stroke.from.y - y - from!.y * scale), Math.abs(stroke.to.x - x - to!.x * scale), Math.abs(stroke.to.y - y - to!.y * scale))); // prettier-ignore
        expect(Math.min(...off)).toBeLessThan(TOLERANCE);
      }
    }
  });

  it('runs no line through its words, lays none over another, and leaves none beyond the border', async () => {
    const pages = await pagesOf(one);
    for (const [index, page] of pages.entries()) {
      const wrong = [...crossedWords(page), ...overlappingWords(page)].map((said) => `page ${index + 1}: ${said}`);
      expect(wrong).toEqual([]);
      for (const word of page.words) {
        const { left, right, bottom, top } = boxOfWords(word);
        // The last glyph is taken for a figure's width; a letter may be half as wide again.
        expect(Math.min(left, bottom, page.width - right, page.height - top)).toBeGreaterThan(11.5);
        expect(word.missing).toBe(false);
      }
    }
  });

  it('tells every number, size and step, what is left, and no name cut short', async () => {
    const pages = await pagesOf(one);
    const all = pages.map(textOf).join(' ');
    const packed = all.replace(/ /g, '');
    for (const { board, alike, page } of drawn(one, pages)) {
      const words = page.words.map(({ text }) => text);
      expect(packed).toContain(`${board.board},sheet${alike.places[0]! + 1}:`.replace(/ /g, ''));
      for (const { piece, number } of alike.sheet.pieces) {
        expect(words.concat(words.flatMap((text) => text.split(' ')))).toContain(String(number));
        expect(all).toContain(told(piece, one.showing));
        expect(packed).toContain((piece.from?.title ?? piece.id).replace(/ /g, ''));
      }
      const circled = page.words
        .filter(({ font, size }) => /Semi|Bold/.test(font) && size <= 7.01)
        .map(({ text }) => text);
      alike.sheet.steps.forEach((_, index) => expect(circled).toContain(String(index + 1)));
    }
    expect(all).not.toContain('…');
    const blades = all.includes('Blades: a new blade');
    expect([blades, all.includes('Wear gloves and eye protection')]).toEqual([true, one.plans.boards.some(({ board }) => /glass/i.test(board))]); // prettier-ignore
  });
});

describe('a plan on paper', () => {
  const named = (name: string) => CASES.find(([each]) => each === name)![1];

  it('numbers a cut on its line', async () => {
    const one = named('36 small pieces');
    for (const { alike, page } of drawn(one, await pagesOf(one))) {
      const { x, y, scale } = cornerOf(page, alike.sheet);
      const inside = page.words.filter(({ at, size, font }) => size <= 7.01 && /Semi|Bold/.test(font) && at.x > x - 3 && at.y > y - 3 && at.x < x + alike.sheet.stock.width * scale + 3 && at.y < y + alike.sheet.stock.height * scale + 3); // prettier-ignore
      for (const [index, { kind, part, way, setting, times }] of alike.sheet.steps.entries()) {
        if (kind !== 'cut') continue;
        const lines = Array.from({ length: times }, (_, time) => (way === 'upright' ? part.left : part.bottom) + (time + 1) * setting); // prettier-ignore
        const middles = inside.filter(({ text }) => text === String(index + 1)).map((word) => {
          const box = boxOfWords(word);
          return way === 'upright' ? ((box.left + box.right) / 2 - x) / scale : ((box.bottom + box.top) / 2 - y) / scale;
        }); // prettier-ignore
        // A number's width is known to a part of a figure.
        const off = Math.min(...middles.flatMap((middle) => lines.map((line) => Math.abs(middle - line) * scale)));
        expect(off).toBeLessThan(0.6);
      }
    }
  });

  it('draws sheets that are cut alike once, and says which numbers the others give', async () => {
    const one = named('sheets that are cut alike');
    const pages = await pagesOf(one);
    const [board] = one.plans.boards;
    expect(board!.plan.sheets).toHaveLength(3);
    expect(alikeSheets(board!.plan.sheets).map(({ places }) => places)).toEqual([[0, 1], [2]]);
    expect(pages.map(textOf).join(' ')).toContain('2 sheets like this. Make each cut on all of them before the guide is moved. The numbers of the pieces are, in the same order, of sheet 2: 5 to 8.'); // prettier-ignore
  });

  it('says what to fetch, what it costs, and what is not planned', async () => {
    const text = textOf((await pagesOf(named('sheets that are cut alike')))[0]!);
    expect(text).toContain('3 new sheets, 32 x 40 in 25.50');
    // The first two are cut together, so that their settings count once.
    expect(text).toContain('8 cuts, 4 settings of the guide. Sheets 3840.00 sq in: pieces 3200.00 sq in, kept 640.00 sq in, waste 0.00 sq in.'); // prettier-ignore
    expect(text).not.toContain('All boards together');
    const other = named('three jobs, trimmed and sawn');
    const first = textOf((await pagesOf(other))[0]!);
    expect(first).toContain('Trim 1/4 in all round; a cut takes ≈ 1/8 in');
    expect(first).toContain('Jobs: 1 Sea chart; 2 Nine linocuts; 3 Fern.');
    expect(first).toMatch(/Not planned, since no sheets of it are listed: .*Backing/);
  });

  it('says what all boards cost together, or which has no price', async () => {
    const [board] = named('sheets that are cut alike').plans.boards;
    const first = async (isPriced: boolean) => {
      const boards = [board!, { ...board!, board: 'Moss', isPriced }];
      return textOf((await pagesOf({ ...named('sheets that are cut alike'), plans: { title: 'Charts', boards, unplanned: [] } }))[0]!); // prettier-ignore
    };
    expect(await first(true)).toContain('All boards together: 51.00.');
    expect(await first(false)).toContain('All boards together: no sum, since there is no price of Moss.');
  });

  it('lists every job however many, and leaves no caution and no row alone on a page', async () => {
    const one = named('36 small pieces');
    const [board] = one.plans.boards;
    const titled = board!.ask.pieces.map((piece, job) => ({ ...piece, from: { ...piece.from!, job, title: `Linocut of the ${'long '.repeat(12)}wall, ${job + 1}` } })); // prettier-ignore
    const plans = { ...one.plans, boards: [{ ...board!, ask: { ...board!.ask, pieces: titled } }] };
    const pages = await pagesOf({ ...one, plans });
    const text = pages.map(textOf).join(' ');
    for (const { from } of titled)
      expect(text.replace(/ /g, '')).toContain(`${from.job + 1} ${from.title}`.replace(/ /g, ''));
    expect(text).not.toContain('…');
    for (const page of pages.map(textOf)) expect(page.includes('Take care')).toBe(page.includes('How to cut'));
  });

  it('is to scales that rules have, and shows windows where they are cut', async () => {
    const one = named('one job in inches');
    for (const { alike, page } of drawn(one, await pagesOf(one))) {
      expect([1, 2, 4, 5, 6, 8, 10, 12, 16]).toContain(Math.round(1 / scaleOf(page)));
      const { x, y, scale } = cornerOf(page, alike.sheet);
      for (const { piece, box, turned } of alike.sheet.pieces) {
        for (const window of piece.from?.windows ?? []) {
          // A quarter turn anticlockwise brings what lies below the top edge to the right of the left one.
          const lower = turned ? { x: piece.height - window.box.top, y: window.box.left } : { x: window.box.left, y: window.box.bottom }; // prettier-ignore
          const corner = { x: x + (box.left + lower.x) * scale, y: y + (box.bottom + lower.y) * scale };
          expect(page.strokes.some(({ from }) => Math.hypot(from.x - corner.x, from.y - corner.y) < TOLERANCE)).toBe(
            true,
          );
          expect(page.words.map(({ text }) => text)).toContain(window.name);
        }
      }
    }
  });

  it.each(CASES)('keeps every window of its pieces whole, and its letter within it: %s', async (_, one) => {
    for (const { alike, page } of drawn(one, await pagesOf(one))) {
      const { x, y, scale } = cornerOf(page, alike.sheet);
      for (const placed of alike.sheet.pieces) {
        for (const { name, box } of windowsOnSheet(placed)) {
          const at: Box = { left: x + box.left * scale, right: x + box.right * scale, bottom: y + box.bottom * scale, top: y + box.top * scale }; // prettier-ignore
          const holds = (other: Box) => other.left > at.left && other.right < at.right && other.bottom > at.bottom && other.top < at.top; // prettier-ignore
          const over = page.whites.filter((white) => overlaps(white.box, at) && !holds(white.box));
          expect(over).toEqual([]);
          expect(page.words.some((word) => word.text === name && holds(boxOfWords(word)))).toBe(true);
        }
      }
    }
  });

  it('draws a crowded sheet as large as the page has room for, with every number and every step', async () => {
    // Many with windows, by a saw, out of one sheet: at 1:8 as good as none of their numbers had room.
    const crowded = (
      stock: { readonly width: number; readonly height: number },
      width: number,
      height: number,
    ): Case => {
      const box = { left: width / 4, right: (3 * width) / 4, bottom: height / 4, top: (3 * height) / 4 };
      const from = { job: 0, title: 'Shell', kind: 'mat', name: 'Mat layer 1', windows: [{ name: 'A', title: 'A', box, isRectangle: true }] } as const; // prettier-ignore
      const pieces = [{ id: 'Shell', width, height, count: 110, mayTurn: true, from }];
      const ask = { pieces, stock: [{ id: 'sheet 1', kind: 'sheet', cost: 1, ...stock }], kerf: 3.175, trim: 6.35, aim: 'cost', seed: 1 } as const; // prettier-ignore
      const board = planBoard({ board: 'White', isPriced: false, ask }, { goOn: (rounds) => rounds < 2000 });
      return { plans: { title: 'Shells', boards: [board!], unplanned: [] }, showing: { unit: 'in', inchStep: 16, metricStep: 0.5 } }; // prettier-ignore
    };
    // Upright there is room for 1:5, and for a sheet of 60 x 40 in for 1:10 only.
    for (const [one, scaled, lies] of [
      [crowded({ width: 812.8, height: 1016 }, 50.8, 76.2), 5, false],
      [crowded({ width: 1524, height: 1016 }, 76.2, 101.6), 8, true],
    ] as const) {
      for (const { alike, page } of drawn(one, await pagesOf(one))) {
        expect([Math.round(1 / scaleOf(page)), page.width > page.height]).toEqual([scaled, lies]);
        expect(textOf(page)).not.toMatch(/Too small|Without a circle/);
        const { x, y, scale } = cornerOf(page, alike.sheet);
        const bold = page.words.filter(({ font }) => /Semi|Bold/.test(font));
        for (const { box, number } of alike.sheet.pieces) {
          const at = { left: x + box.left * scale, right: x + box.right * scale, bottom: y + box.bottom * scale, top: y + box.top * scale }; // prettier-ignore
          const own = bold.filter(({ text }) => text === String(number)).map(boxOfWords);
          expect(own.some(({ left, right, bottom, top }) => left > at.left && right < at.right && bottom > at.bottom && top < at.top)).toBe(true); // prettier-ignore
        }
        expect([...crossedWords(page), ...overlappingWords(page)]).toEqual([]);
      }
    }
  }, 60_000);

  it('tells of a mat with several windows beside them', async () => {
    const one = named('nine windows in one mat');
    const mats = drawn(one, await pagesOf(one)).filter(({ alike }) => alike.sheet.pieces.some(({ piece }) => (piece.from?.windows.length ?? 0) > 1)); // prettier-ignore
    expect(mats).toHaveLength(1);
    const { alike, page } = mats[0]!;
    const { x, y, scale } = cornerOf(page, alike.sheet);
    const within = page.words.filter(({ at, turn }) => turn === 0 && windowsOnSheet(alike.sheet.pieces[0]!).some(({ box }) => at.x > x + box.left * scale && at.x < x + box.right * scale && at.y > y + box.bottom * scale && at.y < y + box.top * scale)); // prettier-ignore
    expect(within.map(({ text }) => text).sort()).toEqual([...'ABCDEFGHI']);
  });

  it('stays within the border however high the sheet is', async () => {
    const [board] = named('sheets that are cut alike').plans.boards;
    const [sheet] = board!.plan.sheets;
    for (const high of [1060, 1250]) {
      const stock = { ...sheet!.stock, width: 700, height: high };
      const box = { left: 0, bottom: 0, right: 406.4, top: 508 };
      const pieces = [{ ...sheet!.pieces[0]!, box, turned: false }];
      const plan = { ...board!.plan, sheets: [{ stock, pieces, left: [], steps: [] }] };
      const plans = { title: 'High', boards: [{ ...board!, plan }], unplanned: [] };
      for (const unit of ['in', 'mm'] as const)
        for (const paper of ['letter', 'a4', 'a3'] as const) {
          const options = { paper, showing: { unit, inchStep: 16, metricStep: 0.5 }, only: ['sheet-plan'] } as const;
          const { files } = await makeSheetPapers(plans, 'a', options, { fonts });
          const pages = readPdf(files[0]!.bytes).pages;
          for (const { width, height, strokes, words } of pages)
            for (const { x, y } of [...strokes.flatMap(({ from, to }) => [from, to]), ...words.map(({ at }) => at)])
              expect(Math.min(x, y, width - x, height - y)).toBeGreaterThan(12);
        }
    }
  }, 60_000);

  it('is the same bytes each time, and is given up when asked', async () => {
    const one = named('one job in inches');
    const make = (signal?: AbortSignal) => makeSheetPapers(one.plans, 'a', ask(one, ['sheet-plan', 'labels']), { fonts, ...(signal ? { signal } : {}) }); // prettier-ignore
    const [first, second] = [await make(), await make()];
    expect(first.files.map(({ bytes }) => Buffer.from(bytes).toString('base64'))).toEqual(second.files.map(({ bytes }) => Buffer.from(bytes).toString('base64'))); // prettier-ignore
    await expect(make(AbortSignal.abort())).rejects.toThrow();
  });
});
