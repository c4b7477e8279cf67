/** `show`: the plan in words and as data, its files all or none, and what is wrong with the list, the pattern or the shelf. */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/core/tables/read-table';
import { readLength } from '../../src/core/units';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const root = await makeTempFolder();
const LIST = 'resources/samples/library-show.csv';
const MAT = 'resources/samples/library-show-mat.json';
const demo = ['show', LIST, '--pattern', MAT];

const mat = jobText({ borders: { range: { least: '1 1/2 in', greatest: '3 in' } } });
const shelf = 'name,width,height,price,count\nSmall,8 in,10 in,10,1\nLarge,11 in,14 in,16.50,\n';

async function folderWith(name: string, files: Readonly<Record<string, string>>): Promise<string> {
  const folder = join(root, name);
  await mkdir(folder);
  for (const [file, text] of Object.entries(files)) await writeFile(join(folder, file), text);
  return folder;
}

interface Told {
  readonly ok: boolean;
  readonly chosen: { readonly held: number; readonly cost: string | number };
  readonly tradeOff: readonly { readonly held: number; readonly saves?: string }[];
  readonly pictures: readonly {
    readonly title: string;
    readonly state: string;
    readonly frame?: string;
    readonly borders?: { readonly cut: Readonly<Record<string, number>> };
    readonly job?: { readonly title: string };
  }[];
  readonly files?: readonly string[];
  readonly problems: readonly { readonly code: string; readonly at: string }[];
}
const told = (out: string) => JSON.parse(out) as Told;

describe('the library show', () => {
  it('is told in words: the trade-off, the choice, each picture, the frames', async () => {
    const { code, out, err } = await runHere(demo);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^24 pictures, 9 sizes of frames to choose from; borders from 1 1\/2 in to 5 in, as cut\.$/m);
    expect(out).toMatch(/^3 sizes +24 +749 in +13 of 11x14 in, 9 of 16x20 in, 2 of 22x28 in$/m);
    expect(out).toMatch(/^The fewest sizes that hold all 24: 3\.$/m);
    expect(out).toMatch(
      /^Lady fern +14x18 in +upright +8 1\/4 x 10 3\/4 in +2 7\/8 in +3 1\/2 in +2 7\/8 in +3 3\/4 in$/m,
    );
    expect(out).toContain('no money');
  });

  it('is told as data: lengths in mm, every picture with its job', async () => {
    const { code, out } = await runHere([...demo, '--aim', 'sizes', '--json']);
    expect(code).toBe(0);
    const answer = told(out);
    expect(answer).toMatchObject({
      ok: true,
      lengths: 'mm',
      fewest: { held: 24, least: 3 },
      chosen: { held: 24, cost: 19024.6 },
    });
    expect(answer.pictures).toHaveLength(24);
    const fern = answer.pictures.find(({ title }) => title === 'Maidenhair fern')!;
    expect(fern).toMatchObject({ state: 'framed', frame: '11x14 in', job: { title: 'Maidenhair fern' } });
    // 11 - 7 3/4 in shared; 14 - 9 3/4 in with a quarter of an inch more below.
    expect(fern.borders!.cut['left']).toBeCloseTo(1.625 * 25.4, 9);
    expect(fern.borders!.cut['top']).toBeCloseTo(2 * 25.4, 9);
    expect(fern.borders!.cut['bottom']).toBeCloseTo(2.25 * 25.4, 9);
  });

  it('writes a job for each picture that checks and exports, and both lists, all or none', async () => {
    const folder = await folderWith('out', {});
    const out = join(folder, 'deep', 'er');
    const ran = await runHere([...demo, '--out', out]);
    expect([ran.code, ran.err]).toEqual([0, '']);
    const names = await readdir(out);
    expect(names.filter((name) => name.endsWith('.json'))).toHaveLength(24);
    expect(names).toEqual(
      expect.arrayContaining(['01 Lady fern.json', "04 Hart's-tongue.json", 'show-list.csv', 'frames-to-buy.csv']),
    );
    for (const name of names.filter((one) => one.endsWith('.json'))) {
      expect(await runHere(['check', join(out, name)])).toMatchObject({ code: 0 });
    }
    const list = readTable(await readFile(join(out, 'show-list.csv'), 'utf8'), [
      { key: 'title', names: ['title'] },
      { key: 'frame', names: ['frame'] },
      { key: 'job', names: ['job'] },
      { key: 'left', names: ['border left'] },
      { key: 'sum', names: ['width + height'] },
    ]);
    expect(list.ok && list.value.rows).toHaveLength(24);
    expect(list.ok && list.value.rows[1]?.cells).toEqual({
      title: 'Maidenhair fern',
      frame: '11x14 in',
      job: '02 Maidenhair fern.json',
      left: '1 5/8 in',
      sum: '25 in',
    });
    const frames = (await readFile(join(out, 'frames-to-buy.csv'), 'utf8')).split('\r\n');
    expect(frames.slice(0, 2)).toEqual([
      'frame,width,height,needed,on the shelf,to order,price each,price',
      '8x10 in,"8 in","10 in",6,,6,,',
    ]);

    await writeFile(join(out, '01 Lady fern.json'), 'mine');
    const again = await runHere([...demo, '--out', out, '--most', '1']);
    expect([again.code, again.out]).toEqual([2, '']);
    expect(again.err).toContain('--replace');
    expect(await readFile(join(out, '01 Lady fern.json'), 'utf8')).toBe('mine');
    expect((await runHere([...demo, '--out', out, '--replace'])).code).toBe(0);
    expect(await readFile(join(out, '01 Lady fern.json'), 'utf8')).toContain('"Lady fern"');
  });
});

describe('the library show from its own shelf', () => {
  it('writes no job whose package does not go in', async () => {
    const folder = await folderWith('shelved', {});
    const out = join(folder, 'jobs');
    const ran = await runHere([...demo, '--shelf', 'resources/shelf.csv', '--out', out]);
    expect([ran.code, ran.err]).toEqual([0, '']);
    const jobs = (await readdir(out)).filter((name) => name.endsWith('.json'));
    expect(jobs).toHaveLength(24);
    for (const name of jobs) {
      const { out: told } = await runHere(['check', join(out, name), '--json']);
      const { problems } = JSON.parse(told) as { problems: { code: string }[] };
      expect(problems.map(({ code }) => code).filter((code) => code.startsWith('package-'))).toEqual([]);
    }
  });
});

describe('a shelf with prices and counts', () => {
  const list = 'title,width,height\nFern,8 in,10 in\nKite,5 in,7 in\nSnail,5 in,7 in\n';
  const words = ['show', 'list.csv', '--pattern', 'mat.json', '--shelf', 'shelf.csv'];

  it('costs money; more can be ordered, or not', async () => {
    const folder = await folderWith('priced', { 'list.csv': list, 'mat.json': mat, 'shelf.csv': shelf });
    const ordered = await runHere([...words, '--json'], { folder });
    expect(told(ordered.out)).toMatchObject({ costs: 'money', chosen: { held: 3, cost: '36.5' } });
    expect((await runHere(words, { folder })).out).toMatch(/^ +2 +Small +1 on the shelf, 1 to order +20\.00$/m);
    const there = await runHere([...words, '--only-on-shelf', '--json'], { folder });
    expect(
      told(there.out)
        .pictures.map(({ state }) => state)
        .sort(),
    ).toEqual(['framed', 'framed', 'left']);
    const made = await runHere([...words, '--only-on-shelf', '--allow-custom'], { folder });
    expect(made.out).toMatch(/made to size, 7 3\/4 x 9 3\/4 in/);
    const sized = await runHere([...words, '--cost-by', 'size', '--json'], { folder });
    expect(told(sized.out).chosen.cost).toBe(1549.4);
  });

  it('lists say lengths exactly, in inches where a rule has them, and money to the cent', async () => {
    const metric =
      'kind,name,width,height,price,per\nframe,Oak,300 mm,400 mm,13,\nframe,Ash,8 in,10 in,9.5,\nboard,Top board,32 in,40 in,11,sheet\n';
    const folder = await folderWith('exact', { 'list.csv': list, 'mat.json': mat, 'shelf.csv': metric });
    const ran = await runHere([...words, '--border-greatest', '4 in', '--out', 'jobs', '--json'], { folder });
    expect(ran.code).toBe(0);
    const text = await readFile(join(folder, 'jobs', 'show-list.csv'), 'utf8');
    const [heads = '', fern = '', kite = ''] = text.split('\r\n');
    expect(heads).toContain('frame width,frame height,window width,window height,border left');
    expect(fern).toContain('Oak,upright,"300 mm","400 mm","7 3/4 in","9 3/4 in","51.575 mm","76.175 mm"');
    // Nine of 300 x 400 mm lie on the sheet, and sixteen of 8 x 10 in.
    expect(fern).toMatch(/,14\.83,/);
    expect(kite).toContain('Ash,upright,"8 in","10 in","4 3/4 in","6 3/4 in","1 5/8 in","1 5/8 in"');
    expect(kite).toMatch(/,10\.19,/);
    const told = JSON.parse(ran.out) as { pictures: { blank?: { width: number }; borders?: { cut: { left: number } } }[] };
    const read = readTable(text, [
      { key: 'width', names: ['frame width'] },
      { key: 'left', names: ['border left'] },
    ]);
    if (!read.ok) throw new Error('the list is a table');
    read.value.rows.forEach(({ cells }, index) => {
      const length = (key: 'width' | 'left') => {
        const reading = readLength(cells[key] ?? '', 'in');
        return reading.ok ? reading.mm : NaN;
      };
      expect(length('width')).toBe(told.pictures[index]!.blank!.width);
      expect(length('left')).toBeCloseTo(told.pictures[index]!.borders!.cut.left, 6);
    });
    expect(await readFile(join(folder, 'jobs', 'frames-to-buy.csv'), 'utf8')).toContain('Ash,"8 in","10 in",2,,2,9.50,19.00');
  }); // prettier-ignore

  it('titles of any sort make names that any system takes, each its own', async () => {
    const titles = ['con', 'CON', '../up', 'a/b:c*?', '', '"=1+1"', 'Fern 🌿', 'x'.repeat(200)];
    const rows = titles.map((title) => `${title === '' ? '.' : title},8 in,10 in`).join('\n');
    const folder = await folderWith('titles', {
      'list.csv': `title,width,height\n${rows}\n`,
      'mat.json': mat,
      'shelf.csv': shelf,
    });
    const ran = await runHere([...words, '--out', 'jobs', '--json'], { folder });
    expect(ran.code).toBe(0);
    const names = (await readdir(join(folder, 'jobs'))).filter((name) => name.endsWith('.json'));
    expect(names).toHaveLength(titles.length);
    for (const name of names) {
      expect(name).toMatch(/^\d [^/\\:*?"<>|]+\.json$/);
      expect(Buffer.byteLength(name)).toBeLessThan(120);
    }
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
    // No spreadsheet takes a title for a sum.
    expect(await readFile(join(folder, 'jobs', 'show-list.csv'), 'utf8')).toContain("'=1+1");
  });

  it('the list comes from standard input too', async () => {
    const folder = await folderWith('piped', { 'mat.json': mat });
    const { code, out } = await runHere(['show', '-', '--pattern', 'mat.json'], { folder, input: list });
    expect([code, out.split('\n')[0]]).toEqual([0, expect.stringContaining('3 pictures')]);
  });
});

describe('what is wrong', () => {
  const good = { 'list.csv': 'title,width,height\nA,8 in,10 in\nB,5 in,7 in\n', 'mat.json': mat, 'shelf.csv': shelf };
  const words = ['show', 'list.csv', '--pattern', 'mat.json', '--shelf', 'shelf.csv'];

  it.each([
    [
      'a wrong cell',
      { 'list.csv': 'title,width,height\nA,8,10 in\nB,5 in,7 in\n' },
      2,
      'length-without-unit',
      'list.csv line 2, column width',
    ],
    ['one picture', { 'list.csv': 'title,width,height\nA,8 in,10 in\n' }, 2, 'show-too-short', 'list.csv'],
    [
      'a wrong shelf',
      { 'shelf.csv': 'name,width,height\nA,8 in,\n' },
      2,
      'cell-empty',
      'shelf.csv line 2, column height',
    ],
    [
      'a wrong pattern',
      { 'mat.json': jobText({ borders: { rule: 'even' } }) },
      1,
      'value-unknown',
      'mat.json borders.rule',
    ],
    [
      'a pattern of two',
      { 'mat.json': jobText({ pictures: [{ size: 'A4' }, { size: 'A4' }] }) },
      1,
      'pattern-pictures',
      'mat.json pictures',
    ],
    [
      'a frame that is not there',
      { 'list.csv': 'title,width,height,frame\nA,8 in,10 in,Lage\nB,5 in,7 in,\n' },
      2,
      'show-frame-unknown',
      'list.csv line 2, column frame',
    ],
    ['bytes that are no text', { 'list.csv': '\u0000\u0001' }, 2, 'column-missing', 'list.csv line 1'],
    ['a pattern that is no job', { 'mat.json': 'not json' }, 2, 'not-json', 'mat.json'],
  ])('%s', async (name, files, code, problem, at) => {
    const folder = await folderWith(`wrong ${name}`, { ...good, ...files });
    const ran = await runHere([...words, '--out', 'jobs', '--json'], { folder });
    expect(ran.code).toBe(code);
    expect(told(ran.out).problems).toContainEqual(expect.objectContaining({ code: problem, at }) as never);
    expect(await readdir(folder)).not.toContain('jobs');
  });

  it.each([
    [['show', 'list.csv'], 'required option'],
    [['show', 'none.csv', '--pattern', 'mat.json'], 'is not there'],
    [['show', 'list.csv', '--pattern', 'none.json'], 'is not there'],
    [[...words, '--most', '0'], 'from 1 to 50'],
    [[...words, '--aim', 'price'], 'Allowed choices are cost, sizes'],
    [[...words, '--border-least', '2'], 'say the unit'],
    [[...words, '--border-greatest', '-1 in'], 'less than nothing'],
  ])('%j is misuse', async (asked, hint) => {
    const folder = await folderWith(`misuse ${asked.slice(-2).join(' ')}`, good);
    const { code, out, err } = await runHere(asked, { folder });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(hint);
  });
});
