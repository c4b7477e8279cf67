/** Paper for the wall read back by an independent reader: nails where they belong over tiles put together, drawings to scale. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ExportOptions, PaperName } from '../../src/bridge';
import { hang } from '../../src/core/hanging/hang';
import { makeHangingSheet, makeWallTemplate, type OutputContext } from '../../src/outputs';
import { contextOf } from './contexts';
import { crossedWords, hidden, overlappingWords } from './crossed-words';
import { FERN } from './jobs';
import { number, readTiles, type ReadTile } from './put-together';
import { readPdf, type ReadDocument, type ReadPage, type Stroke } from './read-pdf';

const TOLERANCE = 0.01;
const MM_PER_UNIT = { in: 25.4, mm: 1, cm: 10 };
interface Spot {
  readonly x: number;
  readonly y: number;
}

async function read(made: ReturnType<typeof makeWallTemplate>): Promise<ReadDocument> {
  const result = await made;
  if (!result.ok) throw new Error(result.problems[0]?.message);
  return readPdf(result.value);
}

const lengthOf = ({ from, to }: Pick<Stroke, 'from' | 'to'>) => Math.hypot(to.x - from.x, to.y - from.y);

/** Middles of crosses whose arms are so long from end to end, mm, drawn with a pen of this width. */
function crosses(strokes: readonly Stroke[], arms: number, width: number): Spot[] {
  const fit = strokes.filter((stroke) => !stroke.dashed && Math.abs(stroke.width - width) < 0.01 && Math.abs(lengthOf(stroke) - arms) < 0.005); // prettier-ignore
  const middle = ({ from, to }: Stroke) => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
  const lying = fit.filter(({ from, to }) => Math.abs(from.y - to.y) < 0.005).map(middle);
  const standing = fit.filter(({ from, to }) => Math.abs(from.x - to.x) < 0.005).map(middle);
  return lying.filter((at) => standing.some((other) => Math.hypot(at.x - other.x, at.y - other.y) < 0.005));
}

/** Where the printed words put the origin: from the edge that is counted from, and above the floor. */
function originOf({ pages }: ReadDocument, mmPerUnit: number, way: 1 | -1): { edge: number; floor: number } {
  const words = pages[0]!.words.map(({ text }) => text).join(' ').replace(/\s+/g, ' ');
  const found = /(?:at x (\S.*?) (?:in|mm|cm) and y (\S.*?) (?:in|mm|cm)|lower left corner), lies (\S.*?) (?:in|mm|cm) (from|beyond) the .*? and (\S.*?) (?:in|mm|cm) above/.exec(words);
  if (!found) throw new Error(`no origin in: ${words}`);
  expect(found[0]).not.toContain('≈');
  const mm = (text: string | undefined) => number(text ?? '0') * mmPerUnit;
  const edge = (found[4] === 'beyond' ? -1 : 1) * mm(found[3]);
  return { edge: edge - way * mm(found[1]), floor: mm(found[5]) - mm(found[2]) };
} // prettier-ignore

/** Everything that the tiles say, put together on the wall: x from the edge that is counted from, y from the floor. */
function onWall(document: ReadDocument, context: OutputContext) {
  const mmPerUnit = MM_PER_UNIT[context.options.units];
  const tiles = readTiles(document.pages, mmPerUnit);
  const way = context.job.wall.from === 'left' ? 1 : -1;
  const origin = originOf(document, mmPerUnit, way);
  const place = (tile: ReadTile) => (spot: Spot) => {
    const { x, y } = tile.move(spot);
    return { x: origin.edge + way * x, y: origin.floor + y };
  };
  const found = (arms: number, width: number) =>
    distinct(tiles.flatMap((tile) => crosses(tile.page.strokes, arms, width).map(place(tile))));
  return { tiles, heavy: found(10, 0.4), light: found(6, 0.15), place };
}

/** A cross near a join stands on both pages. */
function distinct(spots: readonly Spot[]): Spot[] {
  return spots.filter((spot, index) => spots.findIndex((other) => Math.hypot(spot.x - other.x, spot.y - other.y) < 1) === index); // prettier-ignore
}

/** The worst distance from a wanted spot to the nearest found one, and from a found one to the nearest wanted. */
function worst(wanted: readonly Spot[], found: readonly Spot[]): number {
  const nearest = (spot: Spot, among: readonly Spot[]) => Math.min(...among.map((other) => Math.hypot(spot.x - other.x, spot.y - other.y))); // prettier-ignore
  return Math.max(...wanted.map((spot) => nearest(spot, found)), ...found.map((spot) => nearest(spot, wanted)));
}

/** Three frames with unequal drops, in millimetres, counted from the right. */
const GROUP = {
  ...FERN,
  units: 'mm',
  hanging: { hanger: 'rings and wire', hook: { seat: '17 mm' }, weight: '2 kg' },
  wall: {
    width: '4000 mm',
    from: 'right',
    offset: '600 mm',
    arrangement: 'group',
    frames: [
      { title: 'Chart', size: '500 x 400 mm', edge: 0, centre: '1600 mm', drop: '55 mm', hooksApart: '210 mm' },
      { title: 'Fern', size: '300 x 400 mm', edge: '560 mm', centre: '1500 mm', drop: '38.5 mm', hooks: 1 },
      { title: 'Owl', size: '200 x 250 mm', edge: '120 mm', centre: '1180 mm', drop: '12 mm', hooks: 1 },
    ],
  },
};

/** By hand: middle + half the height - drop, from the right edge of the wall. */
const GROUP_SEATS: readonly Spot[] = [
  { x: 600 + 250 - 105, y: 1600 + 200 - 55 },
  { x: 600 + 250 + 105, y: 1600 + 200 - 55 },
  { x: 600 + 560 + 150, y: 1500 + 200 - 38.5 },
  { x: 600 + 120 + 100, y: 1180 + 125 - 12 },
];
const raised = (spots: readonly Spot[], by: number) => spots.map(({ x, y }) => ({ x, y: y + by }));

const ROW = {
  ...FERN,
  hanging: { hanger: 'rings and wire', hook: { seat: '3/4 in' }, weight: '3 lb' },
  wall: { width: '9 ft', gap: '2 in', frames: [{ size: '12 x 16 in', drop: '2 in', hooks: 1, count: 3 }] },
};

const RINGS = { hanger: 'rings and wire', hook: { seat: '3/4 in' }, weight: '3 lb' };
/** Frames as people hang them, with edges, marks and the level line close to one another. */
const ARRANGED: readonly (readonly [string, object, Partial<ExportOptions>])[] = [
  ['one frame', { ...FERN, hanging: RINGS }, { paper: 'letter', units: 'in' }],
  ['rings on hooks', { ...FERN, hanging: { hanger: 'rings on hooks' } }, { paper: 'letter', units: 'in' }],
  ['a sawtooth', { ...FERN, frame: { size: '8 x 10 in' }, pictures: [{ size: '4 x 6 in' }] }, { paper: 'a4', units: 'in' }],
  ['a cleat', { ...FERN, frame: { size: '24 x 36 in' }, hanging: { hanger: 'cleat', weight: '52 lb' } }, { paper: 'letter', units: 'in' }],
  ['a row', ROW, { paper: 'letter', units: 'in' }],
  [
    'a row of unequal frames',
    {
      ...FERN,
      hanging: RINGS,
      wall: {
        width: '9 ft',
        gap: '2 in',
        furniture: '30 in',
        frames: [{ title: 'Sea chart', size: '12 x 16 in', drop: '2 in', hooks: 1 }, { title: 'Owl', size: '20 x 16 in' }, { title: 'Lady fern', size: '8 x 24 in', drop: '1 in' }],
      },
    },
    { paper: 'letter', units: 'in' },
  ],
  [
    'a grid',
    { ...FERN, hanging: { hanger: 'sawtooth' }, wall: { arrangement: 'grid', columns: 3, gap: '2 in', frames: [{ size: '8 x 10 in', drop: '1/2 in', hooks: 1, count: 9 }] } },
    { paper: 'letter', units: 'in' },
  ],
  [
    'stairs',
    { ...FERN, hanging: RINGS, wall: { arrangement: 'stairs', run: '16 in', rise: '8 in', frames: [{ size: '12 x 16 in', drop: '2 in', hooks: 1, count: 4 }] } },
    { paper: 'letter', units: 'in' },
  ],
  [
    'narrow stairs',
    { ...FERN, hanging: RINGS, wall: { arrangement: 'stairs', run: '6 in', rise: '-1 in', frames: [{ size: '5 x 4 in', drop: '1/4 in', hooks: 1, count: 5 }] } },
    { paper: 'letter', units: 'in' },
  ],
  ['a group from the right', GROUP, { paper: 'a4', units: 'mm' }],
  ['a group on large paper', GROUP, { paper: 'a3', units: 'mm' }],
  ['a group head down on every second page', GROUP, { paper: 'a4', units: 'mm', turnEverySecondPage: true }],
]; // prettier-ignore

/** Of a nail or a seat: a cross of 10 or 6 mm. */
function isOfMark(stroke: Stroke): boolean {
  return [[10, 0.4], [10, 0.15], [6, 0.15]].some(([long = 0, width = 0]) => !stroke.dashed && Math.abs(lengthOf(stroke) - long) < 0.005 && Math.abs(stroke.width - width) < 0.01); // prettier-ignore
}

describe('the wall template, put together', () => {
  const papers: readonly PaperName[] = ['letter', 'legal', 'tabloid', 'a4', 'a3', 'blank'];
  it.each(papers)('of a group on %s: nail holes and seats within 0.01 mm of the plan', async (paper) => {
    const context = contextOf(GROUP, { paper, units: 'mm' });
    const { heavy, light } = onWall(await read(makeWallTemplate(context)), context);
    expect(worst(raised(GROUP_SEATS, 17), heavy)).toBeLessThan(TOLERANCE);
    expect(worst(GROUP_SEATS, light)).toBeLessThan(TOLERANCE);
  });

  it('whose lower left page holds nothing is held by a corner that is printed', async () => {
    const job = { ...GROUP, wall: { ...GROUP.wall, frames: GROUP.wall.frames.map((frame, index) => ({ ...frame, centre: `${1900 - 500 * index} mm` })) } };
    const context = contextOf(job, { paper: 'a4', units: 'mm' });
    const document = await read(makeWallTemplate(context));
    expect(document.pages[0]!.words.map(({ text }) => text).join(' ')).toMatch(/cross at the lower left of page \d/);
    const { heavy } = onWall(document, context);
    const wanted = [[745, 1900 + 200 - 55], [955, 1900 + 200 - 55], [1310, 1400 + 200 - 38.5], [820, 900 + 125 - 12]].map(([x, y]) => ({ x: x!, y: y! + 17 }));
    expect(worst(wanted, heavy)).toBeLessThan(TOLERANCE);
  }); // prettier-ignore

  it('of three frames 12 in wide, 2 apart on 9 ft: nails at 40, 54 and 68 in, 63 3/4 in above the floor', async () => {
    const context = contextOf(ROW, { paper: 'letter', units: 'in' });
    const { heavy } = onWall(await read(makeWallTemplate(context)), context);
    const wanted = [40, 54, 68].map((x) => ({ x: x * 25.4, y: (57 + 8 - 2 + 0.75) * 25.4 }));
    expect(worst(wanted, heavy)).toBeLessThan(TOLERANCE);
  });

  it('printed head down on every second page fits as well', async () => {
    const context = contextOf(GROUP, { paper: 'a4', units: 'mm', turnEverySecondPage: true });
    const document = await read(makeWallTemplate(context));
    expect(document.pages.some(({ words }) => words.some(({ text, turn }) => text === 'WALL' && turn === 180))).toBe(true);
    const { heavy } = onWall(document, context);
    expect(worst(raised(GROUP_SEATS, 17), heavy)).toBeLessThan(TOLERANCE);
  }); // prettier-ignore

  it('marks the seats heavily where the hook’s nail hole is unknown, and says so', async () => {
    const context = contextOf({ ...GROUP, hanging: { hanger: 'rings and wire' } }, { paper: 'a4', units: 'mm' });
    const document = await read(makeWallTemplate(context));
    const { heavy, light } = onWall(document, context);
    expect(worst(GROUP_SEATS, heavy)).toBeLessThan(TOLERANCE);
    expect(light).toEqual([]);
    const words = document.pages.flatMap((page) => page.words.map(({ text }) => text)).join(' ');
    expect(words).toMatch(/not the hook's hole/);
    expect(words).not.toMatch(/nail hole(?!,)/);
  });

  it('draws frames where they fall in, and a level line through the lowest seat', async () => {
    const context = contextOf(GROUP, { paper: 'a3', units: 'mm' });
    const { tiles, place } = onWall(await read(makeWallTemplate(context)), context);
    const lines = tiles.flatMap((tile) => tile.page.strokes.map((stroke) => ({ ...stroke, from: place(tile)(stroke.from), to: place(tile)(stroke.to) }))); // prettier-ignore
    const level = lines.filter(({ width, dashed }) => dashed && Math.abs(width - 0.3) < 0.01);
    expect(level.length).toBeGreaterThan(0);
    for (const { from, to } of level) for (const { y } of [from, to]) expect(y).toBeCloseTo(1180 + 125 - 12, 2);
    const tops = [1600 + 200, 1500 + 200, 1180 + 125];
    const edges = lines.filter(({ from, to, width, dashed }) => !dashed && Math.abs(width - 0.25) < 0.01 && Math.abs(from.y - to.y) < 0.005 && Math.abs(to.x - from.x) > 20); // prettier-ignore
    for (const top of tops) expect(edges.some(({ from }) => Math.abs(from.y - top) < TOLERANCE)).toBe(true);
  });

  it('has bars of 100 mm and 4 in on every page, and says which frame each mark is of and which way is up', async () => {
    const context = contextOf(GROUP, { paper: 'a4', units: 'mm' });
    const document = await read(makeWallTemplate(context));
    for (const page of document.pages) {
      for (const long of [100, 101.6]) {
        expect(page.strokes.filter((stroke) => Math.abs(lengthOf(stroke) - long) < TOLERANCE).length).toBeGreaterThanOrEqual(2);
      }
      expect(page.words.some(({ missing }) => missing)).toBe(false);
    }
    const words = document.pages.flatMap((page) => page.words.map(({ text }) => text));
    for (const said of ['1 left · nail hole', '1 right · nail hole', '2 · nail hole', '3 · nail hole']) expect(words).toContain(said);
    expect(words.filter((text) => text === '↑ UP').length).toBeGreaterThan(0);
  }); // prettier-ignore

  it.each(ARRANGED)('runs no line through any words, nor white over a mark: %s', async (_, job, options) => {
    const context = contextOf(job, options);
    const { pages } = await read(makeWallTemplate(context));
    const found = pages.flatMap((page, index) => crossedWords(page).map((said) => `page ${index + 1}: ${said}`));
    expect(found).toEqual([]);
    for (const page of pages.slice(1)) {
      const marks = page.strokes.filter(isOfMark);
      expect(hidden(marks, page)).toEqual([]);
    }
    const { tiles } = onWall({ pages } as ReadDocument, context);
    expect(tiles.length).toBeGreaterThan(0);
    for (const { page } of tiles) expect(page.words.map(({ text }) => text)).toContain('↑ UP');
  });

  it('names every mark, on the page that it lies on', async () => {
    for (const [, job, options] of ARRANGED) {
      const context = contextOf(job, options);
      const found = hang({ job: context.job, frame: context.layout.frame });
      if (!found.ok) throw new Error('can’t hang');
      const { pages } = await read(makeWallTemplate(context));
      const words = pages.flatMap((page) => page.words.map(({ text }) => text));
      const { seat, frames } = found.value.wall;
      const hooks = frames.flatMap(({ number: n, hooks: { length } }) => (length === 1 ? [`${n}`] : [`${n} left`, `${n} right`])); // prettier-ignore
      const named = (what: RegExp) => words.filter((text) => what.test(text)).map((text) => text.split(' · ')[0]).toSorted(); // prettier-ignore
      expect(named(seat === undefined ? /sits? here$/ : /nail hole$/)).toEqual(hooks.toSorted());
      if (seat !== undefined) expect(named(/ · seat of the /)).toEqual(hooks.toSorted());
    }
  });

  it('nothing that matters lies within 12 mm of the paper’s edge', async () => {
    const context = contextOf(GROUP, { paper: 'a4', units: 'mm' });
    const { pages } = await read(makeWallTemplate(context));
    for (const { width, height, strokes, words } of pages) {
      const spots = [...strokes.flatMap(({ from, to }) => [from, to]), ...words.flatMap(({ at, last }) => [at, last])];
      for (const { x, y } of spots) {
        expect(Math.min(x, y, width - x, height - y)).toBeGreaterThanOrEqual(12 - 1e-6);
      }
    }
  });

  it('any frames in any arrangement, on any paper, in any unit', async () => {
    const wall = fc.record({
      arrangement: fc.constantFrom('row', 'grid', 'stairs'),
      from: fc.constantFrom('left', 'right'),
      frames: fc.array(
        fc.record({ width: fc.integer({ min: 80, max: 400 }), height: fc.integer({ min: 80, max: 400 }), drop: fc.integer({ min: 0, max: 700 }), hooks: fc.constantFrom(1, 2) }),
        { minLength: 1, maxLength: 4 },
      ),
      paper: fc.constantFrom(...papers),
      units: fc.constantFrom('in' as const, 'mm' as const, 'cm' as const),
    }); // prettier-ignore
    await fc.assert(
      fc.asyncProperty(wall, async ({ arrangement, from, frames, paper, units }) => {
        const stairs = arrangement === 'stairs' ? { run: '333 mm', rise: '77 mm' } : {};
        const job = {
          ...GROUP,
          wall: {
            width: '3000 mm',
            from,
            arrangement,
            ...stairs,
            frames: frames.map(({ width, height, drop, hooks }) => ({ size: `${width} x ${height} mm`, drop: `${drop / 10} mm`, hooks, ...(hooks === 2 ? { hooksApart: '70 mm' } : {}) })),
          },
        }; // prettier-ignore
        const context = contextOf(job, { paper, units });
        const found = hang({ job: context.job, frame: context.layout.frame });
        if (!found.ok) throw new Error('can’t hang');
        const nails = found.value.wall.frames.flatMap(({ hooks }) => hooks.map((hook) => ({ x: hook.across, y: hook.nail!.y })));
        const { heavy } = onWall(await read(makeWallTemplate(context)), context);
        expect(worst(nails, heavy)).toBeLessThan(TOLERANCE);
      }),
      { numRuns: 15 },
    );
  }); // prettier-ignore

  it('of a frame that can’t hang as it is written is refused with the reason', async () => {
    const context = contextOf({ ...GROUP, hanging: { hanger: 'rings and wire', hooksApart: '900 mm' } }, {});
    for (const made of [await makeWallTemplate(context), await makeHangingSheet(context)]) {
      expect(made.ok).toBe(false);
      expect(made.problems.map(({ code }) => code)).toContain('hooks-too-far-apart');
    }
  });
});

describe('the hanging sheet', () => {
  const words = ({ pages }: ReadDocument) => pages.flatMap((page) => page.words.map(({ text }) => text)).join(' ');
  const ratio = (page: ReadPage, what: string) => {
    const said = page.words.map(({ text }) => new RegExp(`^${what}, 1 : (\\d+)(,|$)`).exec(text)?.[1]).find(Boolean);
    return said === undefined ? undefined : Number(said);
  };

  it('draws the wire on the back of the frame to the scale it says', async () => {
    const context = contextOf(ROW, { paper: 'letter', units: 'in' });
    const found = hang({ job: context.job, frame: context.layout.frame });
    if (!found.ok) throw new Error('can’t hang');
    const { pages } = await read(makeHangingSheet(context));
    const scale = ratio(pages[0]!, 'back')!;
    const { level } = found.value.hanging.wire!;
    const heavy = pages[0]!.strokes.filter(({ width }) => Math.abs(width - 0.4) < 0.01).map((stroke) => lengthOf(stroke) * scale);
    // Two slopes, and the level part between the hooks.
    for (const long of [Math.hypot(level.run, level.drop), level.apart]) {
      expect(heavy.filter((one) => Math.abs(one - long) < 0.05).length).toBe(long === level.apart ? 1 : 2);
    }
    const { outside } = found.value.hanging;
    const edges = pages[0]!.strokes.map((stroke) => lengthOf(stroke) * scale);
    for (const side of [outside.width, outside.height]) {
      expect(edges.filter((one) => Math.abs(one - side) < 0.05).length).toBeGreaterThanOrEqual(2);
    }
  }); // prettier-ignore

  // The usual series of rules: metric 1 : 1, 2, 5, 10 and so on, by inches those named by the inch to the foot. Common practice, no source.
  it.each(ARRANGED)('is to scales that rules have, and no line runs through its words: %s', async (_, job, options) => {
    const { pages } = await read(makeHangingSheet(contextOf(job, options)));
    const series = options.units === 'in' ? [1, 2, 4, 8, 12, 16, 24, 48, 96] : [1, 2, 5, 10, 20, 25, 50, 100];
    for (const what of ['back', 'the wall']) {
      const scales = pages.map((page) => ratio(page, what)).filter((scale) => scale !== undefined);
      expect(scales).toHaveLength(1);
      expect(series).toContain(scales[0]);
    }
    expect(pages.flatMap(crossedWords)).toEqual([]);
    expect(pages.flatMap(overlappingWords)).toEqual([]);
  });

  it.each(ARRANGED)('begins no page for a line or two: %s', async (_, job, options) => {
    for (const make of [makeHangingSheet, makeWallTemplate]) {
      const { pages } = await read(make(contextOf(job, options)));
      const last = pages.filter((page) => page.words.some(({ text }) => /hanging sheet|^overview/.test(text))).at(-1)!;
      const lowest = Math.min(...last.words.filter(({ at }) => at.x > 25 && at.y > 40).map(({ at }) => at.y));
      expect((last.height - lowest) / last.height).toBeGreaterThan(0.4);
    }
  });

  it('has each hook by the number of its frame, from the edge and from the floor, and says what the dotted line is', async () => {
    const [, job, options] = ARRANGED.find(([name]) => name === 'a row of unequal frames')!;
    const told = words(await read(makeHangingSheet(contextOf(job, options))));
    for (const said of ['1: 38 in', '2: 51 in', '2: 61 in', '3: 70 in', '3: 74 in']) expect(told).toContain(said);
    for (const said of ['hook seats 1, 2: 63 in', 'hook seats 3: 68 in', 'middle line: 57 in', 'furniture: 30 in']) expect(told).toContain(said); // prettier-ignore
  });

  it('draws the wall to the scale it says', async () => {
    const document = await read(makeHangingSheet(contextOf(GROUP, { paper: 'a4', units: 'mm' })));
    const page = document.pages.find((each) => ratio(each, 'the wall') !== undefined)!;
    const scale = ratio(page, 'the wall')!;
    const lengths = page.strokes.map((stroke) => lengthOf(stroke) * scale);
    for (const side of [500, 400, 300, 200, 250, 4000]) {
      expect(lengths.some((one) => Math.abs(one - side) < 0.1)).toBe(true);
    }
  });

  it('tells wire, loads, places and cautions in the unit of the export, and loses no letter', async () => {
    const document = await read(makeHangingSheet(contextOf(ROW, { paper: 'a4', units: 'mm' })));
    const told = words(document);
    for (const said of ['Wire', 'Each ring, inward', 'Hook seats', 'Take care', 'cables and pipes', '1600 mm']) {
      expect(told).toContain(said);
    }
    expect(told).not.toMatch(/\d in\b(?! \()/);
    expect(document.pages.flatMap((page) => page.words).some(({ missing }) => missing)).toBe(false);
  });

  it.each(['sawtooth', 'rings on hooks', 'cleat'])('is made of a %s too', async (hanger) => {
    const document = await read(makeHangingSheet(contextOf({ ...FERN, hanging: { hanger } }, { paper: 'letter' })));
    expect(document.repaired).toBe(false);
    expect(words(document)).toContain('On the back of the frame');
  });

  it('is the same bytes each time', async () => {
    const [one, other] = [await makeHangingSheet(contextOf(ROW, {})), await makeHangingSheet(contextOf(ROW, {}))];
    expect(one.ok && other.ok && Buffer.from(one.value).equals(Buffer.from(other.value))).toBe(true);
  });
});
