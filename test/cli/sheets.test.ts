/** `sheets` in the words of its help: the plan, its data, lists of stock, and what it refuses. */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const folder = await makeTempFolder();
const SHELF = ['--shelf', 'resources/shelf.csv'];
const STOCK = ['--stock', 'resources/stock.csv'];
const CHART = 'resources/samples/1-sea-chart.json';

type Account = Readonly<Record<'sheet' | 'pieces' | 'kept' | 'waste' | 'cuts', string>>;

interface Answer {
  readonly total: { readonly cost?: string; readonly unpriced?: readonly string[] };
  readonly boards: readonly {
    readonly board: string;
    readonly cost?: string;
    readonly weighed: string | number;
    readonly atLeast: string | number;
    readonly account: Account;
    readonly sheets: readonly {
      readonly account: Account;
      readonly stock: { readonly kind: string; readonly id: string };
      readonly pieces: readonly { readonly piece: { readonly id: string } }[];
    }[];
  }[];
  readonly problems: readonly { readonly code: string; readonly at: string; readonly message: string }[];
}

async function data(words: readonly string[], code = 0): Promise<Answer> {
  const ran = await runHere(['sheets', ...words, '--json']);
  expect(ran.code).toBe(code);
  return JSON.parse(ran.out) as Answer;
}

async function file(name: string, text: string): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
}

const mat = (board: string, size: string) =>
  jobText({ title: 'Heron', pictures: [{ size: '4 x 5 in' }], frame: { size }, mat: { layers: [{ board }] }, package: { mountBoard: { without: true } } }); // prettier-ignore

describe('the plan', () => {
  it('takes remnants before new sheets, and tells cuts and what is left', async () => {
    const ran = await runHere(['sheets', CHART, ...SHELF, ...STOCK]);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('Warm white: 0 new sheets, 0.00 in all; proven: no plan costs less.');
    expect(ran.out).toMatch(/1 +guide at 16 in +upright, once +the sheet, 20 in x 24 in +gives A; the rest is left/);
    expect(ran.out).toContain('Left: keep as strips 4 x 24 in; waste 16 x 4 in');
  });

  it('makes a job as often as it is named, or as its list says', async () => {
    const heron = await file('heron.json', mat('Moss', '8 x 10 in'));
    const owl = await file('owl.json', mat('Moss', '9 x 12 in'));
    // Rows of one job count together, as the list of a show has them; another column is no matter.
    const list = await file(
      'list.csv',
      'title,job,copies\nHeron,heron.json,2\nOwl,owl.json,\nHeron once more,heron.json,3\nNone,,\n',
    );
    const counts = async (words: readonly string[]) => {
      const ids = (await data(words)).boards.flatMap(({ sheets }) => sheets).flatMap(({ pieces }) => pieces.map(({ piece }) => piece.id)); // prettier-ignore
      return [...new Set(ids)].sort().map((id) => [id, ids.filter((one) => one === id).length]);
    };
    expect(await counts([list])).toEqual([['1 Heron: Mat layer 1', 5], ['2 Heron: Mat layer 1', 1]]); // prettier-ignore
    expect(await counts([heron, heron, owl])).toEqual([['1 Heron: Mat layer 1', 2], ['2 Heron: Mat layer 1', 1]]); // prettier-ignore
    expect(await counts([heron, list])).toEqual([['1 Heron: Mat layer 1', 6], ['2 Heron: Mat layer 1', 1]]); // prettier-ignore
  });

  it('tells what is wrong with a list of jobs by its line', async () => {
    const wrong = async (text: string) => (await data([await file('wrong.csv', text)], 2)).problems.map(({ at, message }) => `${at.replace(/^.*wrong\.csv /, '')}: ${message}`); // prettier-ignore
    expect(await wrong('title,job\nHeron,\n')).toEqual(['line 1: No row of the list names a job; its column “job” holds the names of their files.']); // prettier-ignore
    expect((await wrong('job,copies\nheron.json,2\nowl.json,none\n'))[0]).toMatch(/^line 3, column copies: .*whole number from 1 to 300/); // prettier-ignore
    expect((await wrong('title\nHeron\n'))[0]).toMatch(/column.*job/);
    expect((await wrong('job\nnowhere.json\n'))[0]).toContain('nowhere.json');
  });

  it('names a board that is to stay upright and that no job has, with the one that is meant', async () => {
    const { code, err } = await runHere(['sheets', CHART, ...SHELF, '--upright', 'Warm wite', 'MOUNT BOARD']);
    expect(code).toBe(0);
    expect(err).toContain('[upright-unknown]');
    expect(err.replace(/\s+/g, ' ')).toContain('Nothing is cut of “Warm wite”, which is to keep its pieces from being turned. Is “Warm white” meant?'); // prettier-ignore
    expect(err).not.toContain('“MOUNT BOARD”');
  });

  it('takes the shelf’s sheets of what the list does not have', async () => {
    const { boards } = await data([CHART, ...SHELF]);
    expect(boards.map(({ board, cost }) => [board, cost])).toEqual([
      // 30 x 40 in are 8 1/3 sq ft, at 2.40.
      ['Clear glass', '20.00'],
      ['Warm white', '11.00'],
      ['Mount board', '8.00'],
    ]);
  });

  it('cuts a small mat from the window of a large one, unless it may not', async () => {
    const large = await file('large.json', mat('White', '20 x 24 in'));
    const wide = JSON.parse(mat('White', '20 x 24 in')) as { pictures: object[] };
    wide.pictures = [{ size: '12 x 16 in' }];
    const window = await file('window.json', JSON.stringify(wide));
    const small = await file('small.json', mat('White', '8 x 10 in'));
    const stock = await file('stock.csv', 'board,width,height,price\nWhite,20 in,24 in,5.00\n');
    const used = await data([window, small, '--stock', stock]);
    expect(used.boards[0]?.sheets.map((sheet) => sheet.stock.kind).sort()).toEqual(['fallout', 'sheet']);
    expect((await data([window, small, '--stock', stock, '--no-windows'])).boards[0]?.sheets).toHaveLength(2);
    expect((await data([large, small, '--stock', stock])).boards[0]?.sheets).toHaveLength(2);
  });

  it('keeps a large window that no piece comes from, and says so', async () => {
    // Of 32 x 40 in round a picture of 22 x 28 in.
    const job = await file('portal.json', jobText({ title: 'Harbour', pictures: [{ size: '22 x 28 in' }], frame: { size: '32 x 40 in' }, mat: { layers: [{ board: 'White' }] }, package: { mountBoard: { without: true } } })); // prettier-ignore
    const stock = await file('portal.csv', 'board,kind,width,height,count\nWhite,sheet,32 in,40 in,2\n');
    const { boards, used } = (await data([job, '--stock', stock, '--use'])) as unknown as Record<string, object[]>;
    const size = { width: expect.closeTo(21.75 * 25.4, 6) as number, height: expect.closeTo(27.75 * 25.4, 6) as number }; // prettier-ignore
    expect(boards).toMatchObject([{ fallouts: [{ id: 'window A of Mat layer 1', ...size, count: 1, keeping: 'board' }] }]); // prettier-ignore
    expect(used).toMatchObject([{ puts: [{ ...size, count: 1, keeping: 'board', note: 'left from Harbour, window A' }] }]); // prettier-ignore
    expect(await readFile(stock, 'utf8')).toBe('board,kind,width,height,count\nWhite,sheet,32 in,40 in,1\nWhite,remnant,"21 3/4 in","27 3/4 in",1\n'); // prettier-ignore
    const told = (await runHere(['sheets', job, '--stock', stock])).out.replace(/\s+/g, ' ');
    expect(told).toContain('Falls out of windows and is kept: 21 3/4 x 27 3/4 in (window A of Mat layer 1).');
    expect(told).toContain('Blades: cut away from the body');
    expect(told).not.toContain('Glass:');
    expect((await runHere(['sheets', job, '--stock', stock, '--no-windows'])).out).not.toContain('Falls out');
  });

  it('warns of glass where glass is cut', async () => {
    expect((await runHere(['sheets', CHART, ...SHELF])).out).toContain('Wear gloves and eye protection');
  });

  it('counts by area where some sheet has no price, never amounts beside areas', async () => {
    const job = await file('mixed.json', mat('White', '20 x 24 in'));
    // By area the small one takes less, whatever its price is in.
    const stock = await file('mixed.csv', 'board,width,height,price\nWhite,40 in,60 in,\nWhite,20 in,24 in,9999.00\n');
    const { boards } = await data([job, '--stock', stock]);
    expect(boards[0]?.sheets[0]?.stock.id).toBe('sheet 2');
  });

  it('says what is paid and what was weighed apart, and the sum of all boards', async () => {
    const white = await file('white.json', mat('White', '16 x 20 in'));
    const moss = await file('moss.json', mat('Moss', '16 x 20 in'));
    const stock = await file('two.csv', 'board,width,height,price\nWhite,32 in,40 in,11.00\nMoss,32 in,40 in,7.505\n');
    const both = await data([white, moss, '--stock', stock, '--per-sheet', '3']);
    expect(both.boards.map(({ cost, weighed, atLeast }) => [cost, weighed, atLeast])).toEqual([['11.00', '14.00', '14.00'], ['7.505', '10.505', '10.505']]); // prettier-ignore
    expect(both.total).toEqual({ cost: '18.505' });
    const { out } = await runHere(['sheets', white, moss, '--stock', stock, '--per-sheet', '3']);
    expect(out).toMatch(/^White: 1 new sheet, 11\.00 in all;/);
    expect(out).toContain('\nAll boards together: 18.505.\n');
    const some = await file('some.csv', 'board,width,height,price\nWhite,32 in,40 in,11.00\nMoss,32 in,40 in,\n');
    const lacking = await data([white, moss, '--stock', some]);
    expect(lacking.total).toEqual({ unpriced: ['Moss'] });
    expect(lacking.boards.map(({ cost }) => cost)).toEqual(['11.00', undefined]);
    expect((await runHere(['sheets', white, moss, '--stock', some])).out).toContain('no sum, since there is no price of Moss.'); // prettier-ignore
    expect((await data([white, '--stock', some, '--aim', 'sheets', '--per-sheet', '3'])).boards[0]?.cost).toBe('11.00');
  });

  it('accounts for every square millimetre of each sheet, and writes lengths without what doubles lose', async () => {
    const job = await file('thirds.json', mat('White', '10 1/2 x 13 in'));
    const stock = await file('thirds.csv', 'board,width,height\nWhite,31 7/8 in,40 in\n');
    const ran = await runHere([
      'sheets',
      job,
      job,
      job,
      '--stock',
      stock,
      '--kerf',
      '1/8 in',
      '--trim',
      '3 mm',
      '--json',
    ]);
    const { boards } = JSON.parse(ran.out) as Answer;
    const [board] = boards;
    expect(board!.sheets.flatMap(({ pieces }) => pieces)).toHaveLength(3);
    const trillionths = (text: string) => {
      const [whole, behind = ''] = text.split('.');
      return BigInt(whole + behind.padEnd(12, '0'));
    };
    for (const { sheet, pieces, kept, waste, cuts } of [
      board!.account,
      ...board!.sheets.map(({ account }) => account),
    ]) {
      expect(trillionths(pieces) + trillionths(kept) + trillionths(waste) + trillionths(cuts)).toBe(trillionths(sheet));
      expect(trillionths(cuts)).toBeGreaterThan(0n);
    }
    // 809.625 x 1016 mm.
    expect(board!.sheets[0]!.account.sheet).toBe('822579');
    expect(ran.out.match(/\d\.\d{7,}/g)?.filter((number) => !ran.out.includes(`"${number}`))).toBeFalsy();
  });

  it('takes a job that is named several times for so many copies, which are cut together', async () => {
    const job = await file('twelve.json', mat('White', '16 x 20 in'));
    const stock = await file('twelve.csv', 'board,width,height\nWhite,32 in,40 in\n');
    const { out } = await runHere(['sheets', ...Array<string>(12).fill(job), '--stock', stock]);
    expect(out).toContain('9 cuts, 2 settings of the guide.');
    expect(out.replace(/\s+/g, ' ')).toContain('3 sheets like this. Make each cut on all of them before the guide is moved. The numbers of the pieces are, in the same order, of sheet 2: 5 to 8; of sheet 3: 9 to 12.'); // prettier-ignore
    expect(out).not.toContain('Sheet 2:');
  });

  it('is the same for the same seed', async () => {
    const words = [CHART, 'resources/samples/3-nine-linocuts.json', ...SHELF, '--rounds', '500'];
    expect(await data(words)).toEqual(await data(words));
  });
});

describe('what is refused', () => {
  it('a piece that comes from no sheet, with the size of the largest', async () => {
    const job = await file('huge.json', mat('White', '50 x 72 in'));
    const stock = await file('long.csv', 'board,width,height\nWhite,48 in,96 in\n');
    const { problems } = await data([job, '--stock', stock], 1);
    expect(problems.find(({ code }) => code === 'piece-larger-than-sheets')?.message).toContain(
      '50 x 72 in, comes from no sheet of “White”: the largest is 48 x 96 in, and 50 in is more than 48 in. List a larger one',
    );
  });

  it('too few sheets; of none at all the usual size is taken, and said', async () => {
    const job = await file('job.json', mat('White', '20 x 24 in'));
    const usual = await data([job]);
    expect(usual.problems).toContainEqual(expect.objectContaining({ code: 'sheet-size-taken', severity: 'note' }));
    expect(usual.boards[0]?.sheets).toHaveLength(1);
    const none = await file('none.csv', 'board,width,height,count\nWhite,32 in,40 in,0\n');
    expect((await data([job, '--stock', none], 1)).problems[0]?.code).toBe('too-few-sheets');
  });

  it.each([
    ['board,width,height\nWhite,32,40 in\n', 'line 2, column width', 'length-without-unit'],
    ['board,width,height\nWhite,,40 in\n', 'line 2, column width', 'value-missing'],
    ['board,kind,width,height\nWhite,heap,32 in,40 in\n', 'line 2, column kind', 'word-unknown'],
    ['board,width,height,price\nWhite,32 in,40 in,dear\n', 'line 2, column price', 'amount-unreadable'],
    ['width,height\n32 in,40 in\n', '', 'column-missing'],
  ])('a wrong list of stock, by line and column: %j', async (text, place, code) => {
    const stock = await file('wrong.csv', text);
    const { problems } = await data([CHART, '--stock', stock], 2);
    expect(problems.map((one) => one.code)).toContain(code);
    expect(problems.find((one) => one.code === code)?.at).toContain(place);
  });
});

describe('on paper', () => {
  const JOBS = [CHART, 'resources/samples/2-fern-cyanotype.json'];
  const papers = (words: readonly string[]) => runHere(['sheets', ...words, '--rounds', '50']);

  it('writes all papers into a folder that it makes, and tells them', async () => {
    const out = join(folder, 'bench', 'today');
    const ran = await papers([CHART, ...SHELF, '--out', out]);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('guide at 16 in');
    expect(ran.out).toMatch(/labels +\d+\.\d kB +.*1-sea-chart-labels\.pdf/);
    expect((await readdir(out)).sort()).toEqual([
      ...[1, 2, 3].map((board) => `1-sea-chart-board-${board}-sheet-1.svg`),
      ...['labels.pdf', 'sheet-cuts.csv', 'sheet-pieces.csv', 'sheet-plan.pdf'].map((name) => `1-sea-chart-${name}`),
    ]);
    const again = await papers([CHART, ...SHELF, '--out', out]);
    expect([again.code, again.out]).toEqual([2, '']);
    expect(again.err.replace(/\s+/g, ' ')).toContain('Write over it with --replace');
    expect((await papers([CHART, ...SHELF, '--out', out, '--replace'])).code).toBe(0);
  });

  it('writes what is chosen of several jobs, in the unit that is asked', async () => {
    const out = join(folder, 'several');
    const ran = await papers([...JOBS, ...SHELF, '--out', out, '--only', 'sheet-cuts', '--units', 'mm', '--json']);
    const { files } = JSON.parse(ran.out) as {
      readonly files: readonly { readonly kind: string; readonly path: string; readonly bytes: number }[];
    };
    expect(files.map(({ kind, path }) => [kind, path])).toEqual([
      ['sheet-cuts', join(out, 'sheets-sheet-pieces.csv')],
      ['sheet-cuts', join(out, 'sheets-sheet-cuts.csv')],
    ]);
    const text = await readFile(files[0]!.path, 'utf8');
    expect(text.length).toBe(files[0]!.bytes);
    expect(text).toContain('Glazing,Sea chart of the harbour,1,,mm,');
  });

  it.each([
    [['--only', 'labels'], 'Say with --out in which folder'],
    [['--paper', 'a4'], 'Say with --out in which folder'],
    [['--out', 'x', '--only', 'labels,poster'], '"poster" is none of sheet-plan, labels, sheet-cuts, sheet-drawings'],
    [['--out', 'x', '--paper', 'blank'], "'blank' is invalid"],
    [['--out', ''], 'a folder’s name is wanted'],
  ])('%j is refused', async (words, said) => {
    const ran = await papers([CHART, ...SHELF, ...words]);
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err.replace(/\s+/g, ' ')).toContain(said);
  });

  it('has nothing to write where no piece is planned', async () => {
    const bare = await file(
      'bare.json',
      jobText({
        title: 'Sea',
        pictures: [{ size: '8 x 10 in', kind: 'painting on panel' }],
        frame: { size: '8 x 10 in' },
        mat: { layers: [] },
        package: { mountBoard: { without: true } },
      }),
    );
    const out = join(folder, 'nothing');
    const ran = await papers([bare, '--out', out]);
    expect([ran.code, ran.out]).toEqual([1, '']);
    expect(ran.err).toContain('no plan to put on paper');
    expect(await readdir(folder)).not.toContain('nothing');
  });
});
