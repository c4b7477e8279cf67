/** `frames` and `shelf` in the words of their help: the answer, its data, and what they refuse. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readShelf } from '../../src/core/shelf/read-shelf';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const folder = await makeTempFolder();
const input = jobText({ title: 'Fern', pictures: [{ size: '8 x 12 in', overlap: '1/8 in' }] });
const FILE =
  'name,width,height,count,price\nOak 11x14,11 in,14 in,2,9\nOak 12x16,12 in,16 in,3,11\nOak 5x7,5 in,7 in,1,4\n';
await mkdir(folder, { recursive: true });
await writeFile(join(folder, 'shelf.csv'), FILE);

function frames(...words: readonly string[]) {
  return runHere(['frames', '-', ...words], { input, folder });
}

describe('frames', () => {
  it('tells of the best at length, of the others in short, and of why the rest will not do', async () => {
    const { code, out, err } = await frames('--shelf', 'shelf.csv', '--top', '1');
    expect([code, err]).toEqual([0, '']);
    const text = out.replace(/\s+/g, ' ');
    expect(text).toContain('“Fern” in the frames of shelf.csv.');
    expect(text).toContain(
      'Wanted: borders of 1 1/2 in or more, measured as cut; rule “equal”, centred in a frame of given size.',
    );
    expect(out).toMatch(/^1\. Oak 12x16$/m);
    expect(text).toContain('Borders 2 1/8 in all round as cut; 1 15/16 in all round as seen. The borders are even.');
    expect(text).toContain(
      'One size smaller, Oak 11x14, would leave 1 5/8 in at the sides, 1 1/8 in at top and bottom, and would not do',
    );
    expect(text).toContain(
      'Price as far as it is known 11.00: frame 11.00; not counted: layer 1 (no board called “Top board” on the shelf)',
    );
    expect(text).toContain(
      'These do not work: Oak 11x14 The top and bottom borders are 1 1/8 in as cut, 3/8 in too narrow',
    );
    expect(text).toContain('Oak 5x7 The sheet of picture 1 is 8 x 12 in, larger than 5 x 7 in.');
    expect(text).toContain('Even borders cost nothing more: Oak 12x16 has them.');
    expect(text).toContain('13 3/4 x 17 3/4 in, as the job has it');
  });

  it('takes the generic list of the job’s units, and says so', async () => {
    const { out } = await frames();
    expect(out.replace(/\s+/g, ' ')).toContain(
      'in the frames of the generic list of inch sizes (name your own with --shelf)',
    );
    expect(out).toMatch(/^1\. 14x18 in$/m);
    const metric = await runHere(['frames', '-', '--json'], {
      input: jobText({ units: 'mm', pictures: [{ size: 'A4' }] }),
    });
    const data = JSON.parse(metric.out) as { shelf: object; candidates: { frame: { name: string } }[] };
    expect(data.shelf).toEqual({
      name: 'the generic list of metric sizes (name your own with --shelf)',
      isGeneric: true,
    });
    expect(data.candidates.map(({ frame }) => frame.name)).toContain('A3');
  });

  it('gives its data in mm, with the same words', async () => {
    const { code, out } = await frames('--shelf', 'shelf.csv', '--json');
    expect(code).toBe(0);
    const data = JSON.parse(out) as { candidates: { words: string[]; borders: { cut: { left: number } } }[] };
    expect(data).toMatchObject({ ok: true, lengths: 'mm', areas: 'mm2', shelf: { name: 'shelf.csv' }, problems: [] });
    expect(data.candidates).toHaveLength(6);
    expect(data.candidates[0]).toMatchObject({ works: true, frame: { name: 'Oak 12x16' }, cost: { counted: '11' } });
    expect(data.candidates[0]!.borders.cut.left).toBeCloseTo(2.125 * 25.4, 9);
    expect(data.candidates[0]!.words).toContain('The borders are even.');
    const first = JSON.parse((await frames('--shelf', 'shelf.csv', '--json', '--top', '1')).out) as typeof data;
    expect(first.candidates).toHaveLength(1);
  });

  it('finds a frame for a job that does not fit its own', async () => {
    const small = jobText({ pictures: [{ size: '8 x 10 in' }], frame: { size: '6 x 6 in' } });
    const { code, out } = await runHere(['frames', '-'], { input: small });
    expect([code, /^1\. 11x14 in$/m.test(out)]).toEqual([0, true]);
  });

  it('tells of a shelf without frames, and of columns that it does not know', async () => {
    await writeFile(join(folder, 'boards.csv'), 'kind,name,shape\nboard,White,\n');
    const { code, out, err } = await frames('--shelf', 'boards.csv');
    expect([code, out.includes('No frame works.')]).toEqual([0, true]);
    expect(err).toContain('[no-frames-on-shelf]');
    expect(err).toMatch(/boards\.csv line 1, column shape\s+\[column-unknown\]/);
  });

  it.each([
    [['--top', '0'], 'a whole number from 1 to 10000 is wanted'],
    [['--top', 'some'], 'a whole number from 1 to 10000 is wanted'],
    [['--shelf', 'nowhere.csv'], '[not-found]'],
    [['--shelf', 'wrong.csv'], 'wrong.csv line 2, column width  [length-without-unit]'],
  ])('%j is refused', async (words, hint) => {
    await writeFile(join(folder, 'wrong.csv'), 'name,width,height\nAsh,11,14 in\n');
    const { code, out, err } = await frames(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err.replace(/\s+/g, ' ')).toContain(hint.replace(/\s+/g, ' '));
  });
});

describe('shelf', () => {
  const shelf = (...words: readonly string[]) => runHere(['shelf', ...words], { folder });

  it('prints a table for people', async () => {
    const { code, out, err } = await shelf('shelf.csv');
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n')).toEqual([
      '3 things on the shelf.',
      '',
      'Frames',
      '             size        price  count',
      '  Oak 11x14  11 x 14 in   9.00      2',
      '  Oak 12x16  12 x 16 in  11.00      3',
      '  Oak 5x7    5 x 7 in     4.00      1',
      '',
    ]);
    expect((await shelf('shelf.csv', '--units', 'mm')).out).toContain('279.4 x 355.6 mm');
  });

  it('prints the file itself, in another unit, and the generic list to begin with', async () => {
    const { out } = await shelf('shelf.csv', '--csv', '--units', 'mm');
    expect(out).toContain('frame,Oak 11x14,"279.4 mm","355.6 mm"');
    expect(readShelf(out)).toMatchObject({ ok: true, value: { length: 3 }, problems: [] });
    for (const [system, row] of [['inch', 'frame,8x10 in,"8 in","10 in"'], ['metric', 'frame,A3,"297 mm","420 mm"']] as const) {
      const start = await shelf('--start', system);
      expect(start.out).toContain(row);
      expect(readShelf(start.out).problems).toEqual([]);
    }
    expect((await shelf('--start', 'inch', '--units', 'cm')).out).toContain('"20.32 cm","25.4 cm"');
    expect((await shelf()).out).toContain('11x14 in  11 x 14 in');
  }); // prettier-ignore

  it('gives its data in mm and kg, prices as texts', async () => {
    const data: unknown = JSON.parse((await shelf('shelf.csv', '--json')).out);
    expect(data).toMatchObject({
      ok: true,
      lengths: 'mm',
      masses: 'kg',
      items: [
        { kind: 'frame', name: 'Oak 11x14', size: { width: 279.4 }, price: { amount: '9', per: 'each' } },
        {},
        {},
      ],
      problems: [],
    });
  });

  it('takes the unit that most of the file is in', async () => {
    await writeFile(join(folder, 'metric.csv'), 'name,width (cm),height (cm),lip\nBeech,30,40,6 mm\n');
    expect((await shelf('metric.csv')).out).toContain('30 x 40 cm');
  });

  it.each([
    [['shelf.csv', '--start', 'inch'], 'Either a file is named or --start is given'],
    [['--start', 'yards'], 'Allowed choices are inch, metric'],
    [['--units', 'yd'], 'Allowed choices are in, mm, cm'],
    [['shelf.csv', 'another'], 'too many arguments'],
    [['nowhere.csv'], '[not-found]'],
    [['wrong-shelf.csv'], '[length-without-unit]'],
  ])('%j is refused', async (words, hint) => {
    await writeFile(join(folder, 'wrong-shelf.csv'), 'name,width,height\nAsh,11,14 in\n');
    const { code, out, err } = await shelf(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(hint);
  });
});

describe('the demo shelf', () => {
  it('reads without problems, and is what the reference says of it', async () => {
    const [file, page] = await Promise.all(['shelf.csv', 'shelf.md'].map((name) => readFile(`resources/${name}`, 'utf8')));
    const read = readShelf(file!);
    expect(read.problems).toEqual([]);
    const items = read.ok ? read.value : [];
    const count = (kind: string) => items.filter((item) => item.kind === kind).length;
    const words = page!.replace(/\s+/g, ' ');
    expect(words).toContain(`${count('frame')} frames of all four builds, ${count('moulding')} mouldings, ${count('board')} boards, ${count('glazing')} kinds of glazing, and something of every other kind`);
    const frames = items.flatMap((item) => (item.kind === 'frame' ? [item] : []));
    expect(new Set(frames.map(({ build }) => build)).size).toBe(4);
    expect(new Set(items.map(({ kind }) => kind)).size).toBe(11);
    expect(words).toContain('Every price and every count in it is invented. One of the frames, `Ash 18x24`, is used up.');
    expect(items[0]!.note).toMatch(/Invented, as every price and count here/);
    expect(frames.filter(({ count: left }) => left === 0).map(({ name }) => name)).toEqual(['Ash 18x24']);
    for (const item of items) {
      expect(item.price, item.name).toBeDefined();
      expect(item.kind === 'wire' || item.count !== undefined, item.name).toBe(true);
    }
  });

  it('names the boards of the demo jobs, so that they have a price', async () => {
    for (const job of ['1-sea-chart', '2-fern-cyanotype', '3-nine-linocuts']) {
      const { out } = await runHere(['frames', `resources/samples/${job}.json`, '--shelf', 'resources/shelf.csv', '--json']);
      const data = JSON.parse(out) as { candidates: { works: boolean; cost: { notCounted: string[] } }[] };
      expect(data.candidates[0]).toMatchObject({ works: true, cost: { notCounted: [] } });
    }
  });
}); // prettier-ignore
