/** The reference in resources, held against the program: keys, defaults, worked sums, examples, codes. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { READY_MADE_SIZES } from '../../../src/core/frame/ready-made';
import { jobJsonSchema } from '../../../src/core/job/json-schema';
import { SHAPE_KINDS } from '../../../src/core/job/written-shape';
import type { RuledLine, SpreadItem } from '../../../src/core/job/job';
import { parseJobText } from '../../../src/core/job/text';
import { layOut } from '../../../src/core/layout/lay-out';
import type { Layout } from '../../../src/core/layout/layout';
import { readLength } from '../../../src/core/units';
import { codesIn, jsonIn, tablesIn } from '../../helpers/markdown';
import { codesInSource, unionInSource } from '../../helpers/problem-codes';

const reference = readFileSync('resources/README.md', 'utf8');
/** Every page of reference: of the job file, and of the other files a user keeps. */
const pages = readdirSync('resources')
  .filter((name) => name.endsWith('.md'))
  .map((name) => readFileSync(`resources/${name}`, 'utf8'));
const tables = tablesIn(reference);
const examples = jsonIn(reference);
const tableOf = (section: string, head: string) => {
  const table = tables.find((one) => one.section === section && one.heads[0] === head);
  if (!table) throw new Error(`the reference has no table of "${head}" under "${section}"`);
  return table.rows.map((cells) => ({ name: codesIn(cells[0]!)[0]!, cells }));
};

function open(job: object) {
  const opened = parseJobText(JSON.stringify({ format: 'matwright-job', version: 1, ...job }));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  return opened.value.job;
}

function lay(job: object): Layout {
  const layout = layOut(open(job));
  if (!layout.ok) throw new Error(JSON.stringify(layout.problems));
  return layout.value;
}

interface SchemaPart {
  readonly properties?: Readonly<Record<string, SchemaPart>>;
  readonly items?: SchemaPart;
  readonly enum?: readonly string[];
}
const schema = jobJsonSchema() as { readonly $defs: Readonly<Record<string, SchemaPart>> };
const part = (name: string, ...keys: string[]) =>
  keys.reduce<SchemaPart>((from, key) => from.properties![key]!, schema.$defs[name]!).properties!;

/** Where each table of keys stands in the schema. */
const KEYS: readonly (readonly [string, SchemaPart['properties']])[] = [
  ['Job', part('MatwrightJob')],
  ['Steps', part('MatwrightJob', 'steps')],
  ['Picture', part('Picture')],
  ['Margins', part('Picture', 'margins')],
  ['Frame', part('Frame')],
  ['Float', part('Frame', 'float')],
  ['Package', part('Package')],
  ['Glazing', part('Package', 'glazing')],
  ['Spacer', part('Package', 'spacer')],
  ['Hinging', part('Package', 'hinging')],
  ['Mount board', part('Package', 'mountBoard')],
  ['Backing', part('Package', 'backing')],
  ['Fixing', part('Package', 'fixing')],
  ['Quality', part('Quality')],
  ['Mat', part('MatwrightJob', 'mat')],
  ['Layer', part('Layer')],
  ['Bevel', part('Layer', 'bevel')],
  ['Window', part('Window')],
  ['Joined', part('Joined')],
  ['Groove', part('Groove')],
  ['Ruled line', part('RuledLine')],
  ['Spread', part('Spread')],
  ['Row', part('Row')],
  ['Column', part('Column')],
  ['Grid', part('Grid')],
  ['Ring', part('Ring')],
  ['Place', part('FreeWindow', 'at')],
  ['Borders', part('Borders')],
  ['Cutting', part('MatwrightJob', 'cutting')],
  ['Cutter', part('Cutter')],
  ['Hanging', part('Hanging')],
  ['Wire', part('Hanging', 'wire')],
  ['Hook', part('Hanging', 'hook')],
  ['Fitting', part('Hanging', 'fitting')],
  ['Wall', part('Wall')],
  ['Wall frame', schema.$defs['Wall']!.properties!['frames']!.items!.properties],
  ['Overcuts', schema.$defs['Cutter']!.properties!['overcuts']!.items!.properties],
];

describe('the tables of keys', () => {
  it.each(KEYS)('%s: names every key and no other, with every word allowed', (section, properties) => {
    const rows = tableOf(section, 'key');
    expect(rows.map(({ name }) => name).sort()).toEqual(Object.keys(properties!).sort());
    for (const { name, cells } of rows) {
      const words = properties![name]!.enum ?? properties![name]!.items?.enum ?? [];
      // The rules of borders have tables of their own.
      if (name !== 'rule') expect(codesIn(cells.join(' '))).toEqual(expect.arrayContaining([...words]));
    }
  });

  it('has every definition of the schema, and of a free window the keys it has beyond a window', () => {
    expect(Object.keys(schema.$defs).filter((name) => schema.$defs[name]!.properties).sort()).toEqual(
      ['Borders', 'Column', 'Cutter', 'Frame', 'FreeWindow', 'Grid', 'Groove', 'Hanging', 'Joined', 'Layer', 'MatwrightJob', 'Package', 'Picture', 'Quality', 'Ring', 'Row', 'RuledLine', 'Spread', 'Wall', 'Window'],
    ); // prettier-ignore
    const beyond = Object.keys(part('FreeWindow')).filter((key) => !(key in part('Window')));
    expect(tableOf('Free window', 'key').map(({ name }) => name)).toEqual(beyond);
  });

  it('names every shape of a window', () => {
    expect(tableOf('Shape', 'kind').map(({ name }) => name)).toEqual([...SHAPE_KINDS, 'outline']);
  });

  it('names every rule of borders', () => {
    const rules = part('Borders')['rule']!.enum!;
    const told = codesIn(reference).flatMap((code) => /"rule": "([^"]+)"/.exec(code)?.[1] ?? []);
    expect([...new Set(told)].sort()).toEqual([...rules].sort());
  });

  it('lists the ready-made sizes', () => {
    const list = /^Names of ready-made sizes[^:]*:\s*([\s\S]*?)\n\n/m.exec(reference)?.[1] ?? '';
    expect(codesIn(list.replaceAll('\n', ' '))).toEqual(READY_MADE_SIZES.map(({ name }) => name));
  });
});

describe('the defaults', () => {
  const job = {
    pictures: [{ size: '12 x 12 in' }, { size: '12 x 12 in' }],
    mat: { layers: [{}, {}] },
    windows: { kind: 'row', items: ['1', { kind: 'spread', picture: 2, count: 2 }] },
  };
  type Understood = ReturnType<typeof open>;
  const lined = { ...job, mat: { ...job.mat, lines: [{ kind: 'groove' }, { kind: 'ruled' }] } };
  const row = (from: Understood) => (from.windows?.kind === 'row' ? from.windows : undefined);
  const linesOf = (from: Understood) =>
    from.windows?.kind === 'row' ? (from.windows.items[1] as SpreadItem).lines : [];
  const READ: readonly (readonly [section: string, key: string, read: (job: Understood) => unknown])[] = [
    ['Picture', 'overlap', ({ pictures }) => pictures[0]?.overlap.left],
    ['Picture', 'thickness', ({ pictures }) => pictures[0]?.thickness],
    ['Frame', 'allowance', ({ frame }) => frame.allowance],
    ['Frame', 'lip', ({ frame }) => frame.lip],
    ['Frame', 'mouldingWidth', ({ frame }) => frame.mouldingWidth],
    ['Float', 'gap', ({ frame }) => frame.float.gap],
    ['Glazing', 'thickness', (from) => from.package.glazing?.thickness.nominal],
    ['Mount board', 'thickness', (from) => from.package.mountBoard?.thickness.nominal],
    ['Backing', 'thickness', (from) => from.package.backing?.thickness.nominal],
    ['Fixing', 'room', (from) => from.package.fixing.room],
    ['Layer', 'thickness', ({ layers }) => layers[0]?.thickness],
    ['Layer', 'reveal', ({ layers }) => layers[1]?.reveal.top],
    ['Row', 'gap', (from) => row(from)?.gap],
    ['Spread', 'gap', (from) => (row(from)?.items[1] as { gap?: number }).gap],
    ['Borders', 'amount', ({ borders }) => borders.amount],
    ['Borders', 'step', ({ borders }) => borders.step],
    ['Cutting', 'behindTrim', ({ cutting }) => cutting.behindTrim],
    ['Hanging', 'knots', ({ hanging }) => hanging.knots],
    ['Hanging', 'outOfLevel', ({ hanging }) => hanging.outOfLevel],
    ['Hook', 'standOff', ({ hanging }) => hanging.hook.standOff],
    ['Wall', 'centre', ({ wall }) => wall.centre],
    ['Groove', 'distance', (from) => linesOf(from)[0]?.distance],
    ['Groove', 'width', (from) => linesOf(from)[0]?.width],
    ['Ruled line', 'distance', (from) => linesOf(from)[1]?.distance],
    ['Ruled line', 'width', (from) => linesOf(from)[1]?.width],
  ];

  it.each(READ)('%s: %s is the length that is told, in inch jobs and in metric ones', (section, key, read) => {
    const told = tableOf(section, 'key').find(({ name }) => name === key)!.cells.at(-1)!;
    const [inches, metric = inches] = told.replaceAll('covers ', '').split('; ');
    for (const [units, length] of [['in', inches], ['mm', metric], ['cm', metric]] as const) {
      const reading = readLength(length!, units);
      expect(reading).toMatchObject({ ok: true, bare: false });
      expect(read(open({ ...lined, units }))).toBe(reading.ok && reading.mm);
    }
  }); // prettier-ignore

  it('borders made to fit are 3 in, or 75 mm', () => {
    expect(
      tableOf('Borders', 'key')
        .find(({ name }) => name === 'all')!
        .cells.at(-1),
    ).toContain('3 in; 75 mm');
    expect(lay(job).borders.cut.left).toBe(76.2);
    expect(lay({ ...job, units: 'mm' }).borders.cut.left).toBe(75);
  });

  it.each([
    ['Frame', 'colour', open(job).frame.colour],
    ['Ruled line', 'colour', (linesOf(open(lined))[1] as RuledLine).colour],
    ['Layer', 'core', open(job).layers[0]!.core],
    ['Bevel', 'angle', String(open(job).layers[0]!.bevel.angleDegrees)],
    ['Cutting', 'waste', open(job).cutting.waste],
    ['Job', 'units', open(job).units],
    ['Frame', 'build', open(job).frame.build],
    ['Frame', 'corners', open(job).frame.corners],
    ['Glazing', 'material', open(job).package.glazing?.material],
    ['Backing', 'material', open(job).package.backing?.material],
    ['Fixing', 'kind', open(job).package.fixing.kind],
    ['Mount board', 'board', open(job).package.mountBoard?.board],
  ])('%s: %s is the word that is told', (section, key, value) => {
    expect(
      tableOf(section, 'key')
        .find(({ name }) => name === key)!
        .cells.at(-1),
    ).toContain(value);
  });
});

describe('the notation of lengths', () => {
  it('says of one length in how many ways it is written', () => {
    const line = reference.split('\n').find((one) => one.startsWith('`6 1/2 in`'))!;
    const ways = codesIn(line);
    expect(ways.length).toBeGreaterThan(6);
    // 6.5 in of 25.4 mm.
    for (const way of ways) expect(readLength(way, 'mm')).toMatchObject({ ok: true, mm: 165.1 });
  });

  it('reads what the table says, and refuses what it says is refused', () => {
    for (const { cells } of tableOf('Lengths', 'written')) {
      for (const way of codesIn(cells[0]!).filter((code) => /\d/.test(code))) {
        expect(readLength(way, 'in')).toMatchObject({ ok: true });
      }
    }
    for (const refused of ['1,000', '1.5/8']) {
      expect(reference).toContain(`\`${refused}\``);
      expect(readLength(refused, 'in').ok).toBe(false);
    }
  });
});

describe('the worked sums', () => {
  const window = { pictures: [], windows: { kind: 'window', size: '7 x 4 in' } };
  const inGiven = tableOf('Borders', 'borders');
  const fitted = tables.find(({ heads }) => heads.includes('frame'))!.rows;

  // Common practice: a window of 7 x 4 in in a mat of 10 x 8 in.
  it.each(inGiven.map(({ name, cells }) => [name, cells[1], cells[2]] as const))('%s', (borders, top, bottom) => {
    const { cut } = lay({ ...window, frame: { size: '10 x 8 in' }, borders: JSON.parse(borders) }).borders;
    expect(cut.left / 25.4).toBeCloseTo(1.5, 9);
    expect(cut.top / 25.4).toBeCloseTo(Number(top), 4);
    expect(cut.bottom / 25.4).toBeCloseTo(Number(bottom), 4);
    expect(cut.top + cut.bottom).toBeCloseTo(4 * 25.4, 9);
  });

  it.each(fitted.map((cells) => [codesIn(cells[0]!)[0]!, cells[1], cells[2], cells[3]!] as const))(
    'made to fit: %s',
    (borders, top, bottom, frame) => {
      const layout = lay({ ...window, borders: JSON.parse(borders) });
      const [width, height] = frame.split(' x ').map(Number);
      expect(layout.borders.cut.top / 25.4).toBeCloseTo(Number(top), 9);
      expect(layout.borders.cut.bottom / 25.4).toBeCloseTo(Number(bottom), 9);
      expect(layout.frame.blank.width / 25.4).toBeCloseTo(width!, 9);
      expect(layout.frame.blank.height / 25.4).toBeCloseTo(height!, 9);
    },
  );

  it('of gaps', () => {
    const row = (gap: string, sides?: string) =>
      lay({
        pictures: [1, 2, 3].map(() => ({ size: '5 x 7 in' })),
        frame: { size: '24 x 12 in' },
        windows: { kind: 'row', gap, items: ['1', '2', '3'] },
        borders: sides === undefined ? {} : { sides },
      });
    expect(row('share with borders').borders.cut.left).toBeCloseTo(2.4375 * 25.4, 9);
    expect(row('share with borders').gaps[0]!.gap).toBeCloseTo(2.4375 * 25.4, 9);
    expect(row('1 1/2 in').borders.cut.right).toBeCloseTo(3.375 * 25.4, 9);
    expect(row('share between', '3 in').gaps[1]!.gap).toBeCloseTo(1.875 * 25.4, 9);
  });

  it('of spreads', () => {
    const spread = (bars: string) =>
      lay({
        pictures: [{ size: '24 x 10 in', overlap: '1/4 in' }],
        windows: { kind: 'spread', picture: 1, count: 3, bars, gap: '1 1/2 in' },
      }).windows.map(({ window: { left, right } }) => (right - left) / 25.4);
    for (const width of spread('hide')) expect(width).toBeCloseTo(6 + 5 / 6, 9);
    for (const width of spread('split')) expect(width).toBeCloseTo(7 + 5 / 6, 9);
  });

  it('of the ten-line job', () => {
    const { borders, windows } = lay(examples[0] as object);
    expect([windows[0]!.borders.left, borders.cut.top, borders.cut.bottom].map((mm) => mm / 25.4)).toEqual([
      expect.closeTo(1.625, 9),
      expect.closeTo(1.875, 9),
      expect.closeTo(2.375, 9),
    ]);
  });
});

describe('the examples', () => {
  it.each(examples.map((job, index) => [index + 1, job] as const))(
    'number %i can be cut, with nothing to say against it',
    (_, job) => {
      const opened = parseJobText(JSON.stringify(job));
      expect(opened.problems).toEqual([]);
      const layout = opened.ok ? layOut(opened.value.job) : undefined;
      expect(layout).toMatchObject({ ok: true, problems: [] });
    },
  );

  it('use every key between them and the sums of borders', () => {
    const used = new Set<string>();
    // An owner is the kind of a group, or else the key that it stands under.
    const collect = (value: unknown, under: string): void => {
      if (Array.isArray(value)) return value.forEach((item) => collect(item, under));
      if (value === null || typeof value !== 'object') return;
      const named = (under === 'pictures' && 'size' in value) || under === 'fixing';
      const owner = 'kind' in value && !named ? String(value.kind) : under;
      for (const [key, inner] of Object.entries(value)) {
        used.add(`${owner} ${key}`);
        collect(inner, key);
      }
    };
    for (const job of examples) collect(job, 'job');
    for (const code of codesIn(reference)) {
      if (code.startsWith('{ "rule"')) collect(JSON.parse(code), 'borders');
      if (code.startsWith('{ "at"')) collect(JSON.parse(code), 'free');
      if (code.startsWith('{ "build"')) collect(JSON.parse(code), 'frame');
      if (code.startsWith('{ "arrangement"')) collect(JSON.parse(code), 'wall');
    }
    const owners: Readonly<Record<string, string>> = {
      Picture: 'pictures',
      Layer: 'layers',
      Place: 'at',
      'Ruled line': 'ruled',
      'Mount board': 'mountBoard',
      'Wall frame': 'frames',
    };
    const keys = KEYS.flatMap(([section, properties]) =>
      Object.keys(properties!).map((key) => `${owners[section] ?? section.toLowerCase()} ${key}`),
    );
    expect(keys.filter((key) => !used.has(key))).toEqual([]);
  });

  it('are counted: a job of ten lines, a complete one, one of shapes, one of rings, one with its package and one on a wall', () => {
    expect(examples).toHaveLength(6);
    expect(JSON.stringify(examples[0], null, 1).split('\n').length).toBeLessThan(20);
    const block = /^```json\n([\s\S]*?)^```$/m.exec(reference)![1]!;
    expect(block.trim().split('\n').length).toBeLessThanOrEqual(10);
  });
});

describe('the tables of codes', () => {
  const list = (folder: string): string[] =>
    readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
      entry.isDirectory() ? list(`${folder}/${entry.name}`) : [`${folder}/${entry.name}`],
    );

  it('have every code of a problem, and no other', () => {
    const sources = [...list('src/core'), ...list('src/outputs')].filter((path) => path.endsWith('.ts'));
    const codes = codesInSource(sources.map((path) => readFileSync(path, 'utf8')));
    expect(codes.length).toBeGreaterThan(50);
    const told = pages.flatMap(tablesIn).flatMap(({ heads, rows }) => (heads.includes('severity') ? rows : []));
    expect(told.map(([code]) => codesIn(code!)[0]).sort()).toEqual([...new Set(codes)].sort());
  });

  it('have every code of the machine, and no other', () => {
    const told = tables.findLast(({ heads }) => heads[0] === 'code')!.rows;
    const codes = unionInSource(readFileSync('src/bridge.ts', 'utf8'), 'HostFailure', 'code');
    expect(codes.length).toBeGreaterThan(5);
    expect(told.map(([code]) => codesIn(code!)[0]).sort()).toEqual([...codes].sort());
  });

  it('are found in source wherever a code can stand', () => {
    const source = `
      function fail(path: string, code: string) {}
      class Cells { wrong(code: string) { } }
      fail('x', 'one-code'); cells.wrong('nine-code'); say({ code: worse ? 'two-code' : 'three-code', at: 'four' }); other('five', 'six');
      const seven = { code, limit: 'eight' };`;
    expect(codesInSource([source]).sort()).toEqual(['nine-code', 'one-code', 'three-code', 'two-code']);
  });
});
