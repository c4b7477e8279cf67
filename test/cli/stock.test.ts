/** `stock`, and `sheets --use`: taking from the file, putting back into it, and undoing it, also under several at once. */
import { chmod, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { holdStock } from '../../src/cli/held-stock';
import { holdFile } from '../../src/host/hold-file';
import { recordPath } from '../../src/host/last-use-file';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runCli, runHere } from './run-cli';

const folder = await makeTempFolder();
let made = 0;

async function file(text: string, name = `stock-${(made += 1)}.csv`): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
}

const mat = (size: string, board = 'White') =>
  jobText({ title: 'Heron', pictures: [{ size: '4 x 5 in' }], frame: { size }, mat: { layers: [{ board }] }, package: { mountBoard: { without: true } } }); // prettier-ignore
const job = await file(mat('16 x 20 in'), 'heron.json');
const use = (stock: string, ...words: string[]) => runHere(['sheets', job, '--no-windows', '--rounds', '50', '--stock', stock, '--use', ...words]); // prettier-ignore
const takeBack = (stock: string, ...words: string[]) => runHere(['stock', stock, '--take-back', ...words]);

const STOCK = 'place,board,kind,width,height,count,note\nA1,White,sheet,32 in,40 in,2,\nB2,White,remnant,16 in,22 in,1,"small, but clean"\nC3,Grey,sheet,32 in,40 in,,\n'; // prettier-ignore

describe('the table', () => {
  it('tells every row, and prints the file anew in another unit', async () => {
    const stock = await file('board,kind,width,height,count,grain,kerf,trim,price,note\nWhite,sheet,32 in,40 in,,height,1/8 in,1/4 in,11,of the charts\nWhite,remnant,16 in,20 in,\n'); // prettier-ignore
    const { code, out } = await runHere(['stock', stock]);
    expect(code).toBe(0);
    expect(out).toContain('2 rows of stock.\n\nWhite\n');
    expect(out).toMatch(/sheet +32 x 40 in +any +11\.00 each; grain along the height; kerf 1\/8 in; trim 1\/4 in; of the\n? +charts/); // prettier-ignore
    expect(out).toMatch(/remnant +16 x 20 in +1\n/);
    const csv = await runHere(['stock', stock, '--csv', '--units', 'mm']);
    expect(csv.out).toBe('board,kind,width,height,count,price,grain,kerf,trim,note\r\nWhite,sheet,"812.8 mm","1016 mm",,11,height,"3.175 mm","6.35 mm",of the charts\r\nWhite,remnant,"406.4 mm","508 mm",1,,,,,\r\n'); // prettier-ignore
    const { rows } = JSON.parse((await runHere(['stock', stock, '--json'])).out) as { rows: unknown[] };
    expect(rows[1]).toEqual({ board: 'White', kind: 'remnant', width: 406.4, height: 508, count: 1 });
  });

  it.each([
    ['board,width,height\nWhite,32 in,40 in\nwhite,32 in,1016 mm\n', 'line 3, column board', 'sheet-listed-twice'],
    ['board,width,height,kerf\nWhite,32 in,40 in,3 mm\nWhite,40 in,60 in,2 mm\n', 'line 3, column kerf', 'kerfs-differ'], // prettier-ignore
    ['board,width,height,grain\nWhite,32 in,40 in,long\n', 'line 2, column grain', 'word-unknown'],
    ['board,width,height,trim\nWhite,32 in,40 in,9 in\n', 'line 2, column trim', 'length-out-of-range'],
    ['board,width,height\nWh\u0000ite,32 in,40 in\n', 'line 2, column board', 'sign-unprintable'],
    [`board,width,height\n${'W'.repeat(3000)},32 in,40 in\n`, 'line 2, column board', 'text-too-long'],
    ['board,width,height\nWhite,32 in,400.1 in\n', 'line 2, column height', 'length-out-of-range'],
    ['board,width,height,count\nWhite,32 in,40 in,-1\n', 'line 2, column count', 'count-unreadable'],
    [`board,width,height\n${Array.from({ length: 2001 }, (_, index) => `White,10 in,${index + 100} mm\n`).join('')}`, '', 'stock-too-long'], // prettier-ignore
  ])('tells what is wrong by line and column: %j', async (text, place, code) => {
    const stock = await file(text);
    const ran = await runHere(['stock', stock, '--json']);
    const { problems } = JSON.parse(ran.out) as { problems: { code: string; at: string }[] };
    expect([ran.code, problems[0]?.code]).toEqual([2, code]);
    expect(problems[0]?.at).toBe(`${stock} ${place}`.trim());
  });
});

/** Of which only 16 x 20 in can be left. */
const LONG = 'place,board,kind,width,height,count,note\nA1,White,sheet,16 in,40 in,2,\nC3,Grey,sheet,32 in,40 in,,\n';

describe('using a plan', () => {
  it('writes counts and new rows into the file, says so, and undoes it to the letter', async () => {
    const stock = await file(STOCK);
    const ran = await use(stock);
    expect(ran.code).toBe(0);
    expect(ran.err).toContain('the column “place” is not known and is passed over');
    expect(ran.out).toContain('Used\n  White: takes 1 remnant 16 x 22 in; puts back nothing.');
    expect(await readFile(stock, 'utf8')).toBe(STOCK.replace(/B2.*\n/, ''));
    const back = await takeBack(stock);
    expect(back.code).toBe(0);
    expect(back.out).toContain('Taken back: White: takes 1 remnant 16 x 22 in; puts back nothing.\n\n3 rows of stock.');
    expect(await readFile(stock, 'utf8')).toBe(STOCK);
    expect((await readdir(folder)).filter((name) => name.includes('last-use') || name.includes('held'))).toEqual([]);
    expect(await takeBack(stock)).toMatchObject({ code: 1, out: '' });
  });

  it('keeps a byte order mark, and decimals behind commas', async () => {
    const text = '\uFEFFboard;kind;width (cm);height (cm);count\r\nWhite;sheet;40,64;101,6;2\r\n';
    const stock = await file(text);
    expect((await use(stock)).code).toBe(0);
    expect(await readFile(stock, 'utf8')).toBe(`${text.replace(';2', ';1')}White;remnant;"40,64";"50,8";1\r\n`);
    expect((await takeBack(stock)).code).toBe(0);
    expect(await readFile(stock, 'utf8')).toBe(text);
  });

  it('puts back what is kept by the user’s rule, which is told and in the data', async () => {
    const stock = await file(LONG);
    const [usual, own] = [await use(stock, '--json'), await runHere(['sheets', job, '--no-windows', '--stock', await file(LONG), '--keep', '20 x 24 in', '--keep-strip', '41 in', '--discard', '1 in'])]; // prettier-ignore
    const answer = JSON.parse(usual.out) as { boards: { sheets: { left: object[] }[] }[]; used: object[] };
    expect(answer.boards[0]?.sheets[0]?.left).toContainEqual(expect.objectContaining({ keeping: 'board' }));
    expect(answer.used[0]).toMatchObject({ board: 'White', takes: [{ kind: 'sheet', width: 406.4, count: 1 }], puts: [{ kind: 'remnant', width: 406.4, height: 508, note: 'left from Heron', keeping: 'board' }], buys: [] }); // prettier-ignore
    const kept = (await readFile(stock, 'utf8')).split('\n').filter((line) => line.includes('remnant'));
    expect(kept).toEqual([',White,remnant,"16 in","20 in",1,left from Heron']); // prettier-ignore
    // 16 x 20 in is no board any more, and no strip of 41 in.
    expect(own.out).toContain('Left: waste 16 x 20 in');
  });

  it('names the trim that leaves too little of a sheet', async () => {
    const told = async (trim: string) => (await use(await file(`board,width,height,trim\nWhite,16 in,20 in,${trim}\n`))).err.replace(/\s+/g, ' '); // prettier-ignore
    expect(await told('3 7/16 in')).toContain('the largest is 16 x 20 in, of which trimming 3 7/16 in all round leaves 9 1/8 x 13 1/8 in, and 16 in is more than 9 1/8 in. List a larger one, trim less, or make it of two parts'); // prettier-ignore
    expect(await told('200 mm')).toContain('trimming 7 7/8 in all round leaves ≈ 1/4 x 4 1/4 in');
    const small = await use(await file('board,width,height,trim\nWhite,6 in,8 in,3 in\n'));
    expect(small.err.replace(/\s+/g, ' ')).toContain('of which trimming 3 in all round leaves nothing. List');
  });

  it('changes nothing where the plan has errors, or a rule or a name is wrong', async () => {
    const none = STOCK.replace(',2,', ',0,').replace(/B2.*\n/, '');
    const stock = await file(none);
    expect((await use(stock)).code).toBe(1);
    expect((await use(stock, '--discard', '12 in')).err).toContain('keep-rule-contradicts');
    expect((await use(stock, '--keep', '12')).code).toBe(2);
    expect((await use(stock, '--keep-strip', '0 in')).code).toBe(2);
    expect(await readFile(stock, 'utf8')).toBe(none);
    expect((await runHere(['sheets', job, '--use'])).code).toBe(2);
    expect((await runHere(['sheets', job, '--use', '--stock', '-'], { input: STOCK })).err).toContain('Standard input');
    expect((await runHere(['stock', '-', '--take-back'], { input: STOCK })).code).toBe(2);
    expect((await readdir(folder)).some((name) => name.includes('last-use'))).toBe(true);
    expect((await readdir(folder)).includes(`${stock.slice(folder.length + 1)}.last-use.json`)).toBe(false);
  });

  it('is not taken back where what it put back has been used, and what others did stays', async () => {
    const stock = await file(LONG);
    expect((await use(stock)).code).toBe(0);
    const used = await readFile(stock, 'utf8');
    // Another has cut up the 16 x 20, bought two sheets and noted it.
    await writeFile(stock, used.replace(/^.*"16 in","20 in".*\n/m, '').replace('40 in,1,', '40 in,3,bought two'));
    const changed = await readFile(stock, 'utf8');
    const back = await takeBack(stock);
    expect(back.code).toBe(1);
    expect(back.err).toContain('put-back-used');
    expect(back.err.replace(/\s+/g, ' ')).toContain('Of the remnant of “White”, 16 x 20 in, 1 is wanted, and the stock has 0'); // prettier-ignore
    expect(await readFile(stock, 'utf8')).toBe(changed);
    await writeFile(stock, `${changed},White,remnant,20 in,16 in,1,\n`);
    expect((await takeBack(stock)).code).toBe(0);
    expect(await readFile(stock, 'utf8')).toBe(LONG.replace(',2,', ',4,bought two'));
  });

  it('goes through a link, keeps the file’s rights, and says what keeps it from being written', async () => {
    const stock = await file(STOCK);
    await chmod(stock, 0o640);
    const link = join(folder, 'link.csv');
    await symlink(stock, link);
    expect((await use(link)).code).toBe(0);
    expect(await readFile(link, 'utf8')).toBe(STOCK.replace(/B2.*\n/, ''));
    expect((await takeBack(stock)).code).toBe(0);
    expect(await readFile(stock, 'utf8')).toBe(STOCK);
    await rm(stock);
    const gone = await takeBack(stock);
    expect(gone.code).toBe(2);
    expect(gone.err).toContain('is not there');
  });

  it.each([
    ['{}', 'it is no matwright-stock-use of version 1'],
    ['{\n  "format": "matwright-stock-use",\n  "version"', 'it is no JSON from line 3 on'],
    ['', 'it is no JSON from line 1 on'],
    [(text: string) => text.replace('"takes": 0', '"takes": "none"'), 'a step’s “takes” is no count'],
    [
      (text: string) => text.replace(/"row": ".*"/, '"row": "board"'),
      'a step’s “row” is no row of a stock (Line 1: no column is called “width”; the first line names the columns: board, kind, width, height, count, price, grain, kerf, trim, note)',
    ],
  ])('says what of a damaged record is damaged, and what to do: %s', async (damage, what) => {
    const stock = await file(STOCK);
    await use(stock);
    const record = `${stock}.last-use.json`;
    const text = await readFile(record, 'utf8');
    await writeFile(record, typeof damage === 'string' ? damage : damage(text));
    const back = await takeBack(stock);
    expect(back.code).toBe(2);
    const err = back.err.replace(/\s+/g, ' ');
    expect(err).toContain(`.last-use.json [use-record-unreadable] The record of the last use is damaged: ${what}.`);
    expect(err).toContain('change the counts in the list by hand, and delete the record');
    expect(await readFile(stock, 'utf8')).toBe(STOCK.replace(/B2.*\n/, ''));
  });
});

describe('several at once', () => {
  const SHEETS = 'board,kind,width,height,count\nWhite,sheet,16 in,20 in,5\n';

  it('in one program take each its own, and the last is told that none is left', async () => {
    const stock = await file(SHEETS);
    const codes = await Promise.all(Array.from({ length: 7 }, () => use(stock).then(({ code }) => code)));
    expect(codes.sort()).toEqual([0, 0, 0, 0, 0, 1, 1]);
    expect(await readFile(stock, 'utf8')).toBe(SHEETS.replace(',5', ',0'));
  });

  it('in several programs lose nothing', async () => {
    const stock = await file(SHEETS.replace(',5', ',9'));
    const words = ['sheets', job, '--rounds', '50', '--stock', stock, '--use'];
    const ran = await Promise.all(Array.from({ length: 4 }, () => runCli(words)));
    expect(ran.map(({ code }) => code)).toEqual([0, 0, 0, 0]);
    const rows = (await readFile(stock, 'utf8')).split('\n');
    expect(rows[1]).toBe('White,sheet,16 in,20 in,5');
  });

  it('wait for each other, and say so where it is felt', async () => {
    const stock = await file(SHEETS);
    const held = holdFile(stock, () => new Promise((resolve) => setTimeout(resolve, 1200)));
    const ran = await use(stock);
    await held;
    expect(ran.code).toBe(0);
    expect(ran.err.match(/“.*” is being used by another program; waiting until that is done\.\n/g)).toHaveLength(1);
  });

  it('put the record as it was where the hold is lost between record and list', async () => {
    const stock = await file(SHEETS);
    await writeFile(recordPath(stock), 'of the use before');
    const found: (string | undefined)[] = [];
    await holdStock(
      stock,
      async ({ record, save }) => {
        found.push(await record());
        if (found.length > 1) return;
        // Long enough that the hold can be taken away while it is written.
        const saved = save('of a use that is not made', SHEETS, SHEETS.padEnd(60_000_000));
        while ((await readFile(recordPath(stock), 'utf8')) === found[0]) await new Promise(setImmediate);
        await rm(`${stock}.held`, { recursive: true });
        await saved;
      },
      () => undefined,
    );
    expect(found).toEqual(['of the use before', 'of the use before']);
    expect(await readFile(stock, 'utf8')).toBe(SHEETS);
  });
});
