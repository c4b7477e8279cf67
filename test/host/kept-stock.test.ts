/** The kept stock under several programs at once: every sheet that is taken counts, and nothing else is lost. */
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { printStock } from '../../src/core/sheets/print-stock';
import { readStock } from '../../src/core/sheets/read-stock';
import { printUseRecord } from '../../src/core/sheets/use-record';
import { NO_LINES } from '../../src/core/tables/removed-lines';
import { keptPath, readKept, saveKept } from '../../src/host/kept-lists';
import { makeTempFolder } from '../helpers/temp-folder';

const root = await makeTempFolder();
const START = 'board,kind,width,height,count,note\nWarm white,sheet,32 in,40 in,60,\nSoft white,sheet,32 in,40 in,7,of the linocuts\n'; // prettier-ignore

/** A program that takes a sheet so often, each time putting back a strip of its own, as a screen does it. */
async function taker(): Promise<string> {
  const path = join(root, 'take.ts');
  const from = (name: string) => JSON.stringify(new URL(`../../src/${name}`, import.meta.url).pathname);
  await writeFile(
    path,
    `import { readStock } from ${from('core/sheets/read-stock.ts')};
     import { printStock } from ${from('core/sheets/print-stock.ts')};
     import { stockWork } from ${from('core/sheets/stock-work.ts')};
     import { readKept, saveKept } from ${from('host/kept-lists.ts')};
     const [state, times, own] = process.argv.slice(2);
     const row = (kind, width) => ({ board: 'Warm white', kind, width: width * 25.4, height: 40 * 25.4 });
     const work = stockWork([{ row: row('sheet', 32), takes: 1, puts: 0 }, { row: row('remnant', 2 + Number(own)), takes: 0, puts: 1 }], { unit: 'in', inchStep: 16, metricStep: 0.5 });
     for (let taken = 0; taken < Number(times); ) {
       const { text, stamp } = (await readKept(state, 'stock')).value;
       const worked = work(readStock(text).value);
       const saved = await saveKept(state, { list: 'stock', text: printStock(worked.value.list), stamp });
       if (saved.ok) taken += 1;
       else if (saved.failure.code !== 'changed-on-disk') throw new Error(saved.failure.message);
     }`,
  );
  const bundle = join(root, 'take.mjs');
  const { build } = await import('rolldown');
  await build({
    input: path,
    platform: 'node',
    output: { file: bundle, format: 'esm' },
    resolve: { modules: [new URL('../../node_modules', import.meta.url).pathname] },
    logLevel: 'silent',
  });
  return bundle;
}

describe('the stock', () => {
  it('has a file of its own, and is refused where it is none', async () => {
    const state = join(root, 'one');
    expect(await saveKept(state, { list: 'stock', text: START })).toMatchObject({ ok: true });
    expect(keptPath(state, 'stock')).toBe(join(state, 'stock.csv'));
    const kept = await readKept(state, 'stock');
    expect(kept).toMatchObject({ ok: true, value: { path: join(state, 'stock.csv'), text: START } });
    const stamp = kept.ok ? (kept.value.stamp ?? '') : '';
    expect(await saveKept(state, { list: 'stock', text: 'board,width,height\nA,8,10', stamp })).toMatchObject({
      failure: { message: expect.stringContaining('The stock was not saved: Line 2, column “width”') as string },
    });
    expect(await readdir(state)).toEqual(['stock.csv']);
  });

  it('is told and kept with the byte order mark that it has', async () => {
    const state = join(root, 'marked');
    await saveKept(state, { list: 'stock', text: `\uFEFF${START}` });
    expect(await readKept(state, 'stock')).toMatchObject({ ok: true, value: { text: `\uFEFF${START}` } });
  });

  it('has the record of its last use beside it, saved with it, taken away, and set aside with it', async () => {
    const state = join(root, 'used');
    const record = printUseRecord({ words: ['takes 1'], before: '', back: [], removed: NO_LINES });
    const first = await saveKept(state, { list: 'stock', text: START, lastUse: record });
    expect(first).toMatchObject({ ok: true, value: { text: START, lastUse: record } });
    const stampOf = (reply: typeof first) => ({ stamp: (reply.ok && reply.value.stamp) || '' });
    const fewer = START.replace(',60,', ',59,');
    // Unless it is said the record stays, and what is no record is refused whole.
    const second = await saveKept(state, { list: 'stock', text: fewer, ...stampOf(first) });
    expect(second).toMatchObject({ ok: true, value: { text: fewer, lastUse: record } });
    const wrong = await saveKept(state, { list: 'stock', text: START, lastUse: '{}', ...stampOf(second) });
    expect(wrong).toMatchObject({ ok: false, failure: { message: expect.stringContaining('The stock was not saved') as string } }); // prettier-ignore
    expect(await readKept(state, 'stock')).toEqual(second);
    const late = await saveKept(state, { list: 'stock', text: START, lastUse: '', stamp: 'another' });
    expect(late).toMatchObject({ ok: false, failure: { code: 'changed-on-disk' } });
    expect(await readKept(state, 'stock')).toEqual(second);
    const anew = await saveKept(state, { list: 'stock', text: START, setAside: true });
    expect(anew.ok && anew.value.lastUse).toBeUndefined();
    expect((await readdir(state)).sort()).toEqual(['stock-set-aside-1.csv', 'stock-set-aside-1.csv.last-use.json', 'stock.csv']); // prettier-ignore
    await saveKept(state, { list: 'stock', text: fewer, lastUse: record, ...stampOf(anew) });
    const back = await saveKept(state, { list: 'stock', text: START, lastUse: '', ...stampOf(await readKept(state, 'stock')) }); // prettier-ignore
    expect(back.ok && back.value.lastUse).toBeUndefined();
    expect(await readdir(state)).not.toContain('stock.csv.last-use.json');
    expect(await saveKept(state, { list: 'cutters', text: '{}', lastUse: record })).toMatchObject({ ok: false });
  });

  it('counts what several programs take and put back at once', async () => {
    const state = join(root, 'many');
    await saveKept(state, { list: 'stock', text: START });
    const bundle = await taker();
    const programs = [1, 2, 3].map((own) => fork(bundle, [state, '8', String(own % 2)]));
    const codes = await Promise.all(programs.map(async (one) => (await once(one, 'exit')) as [number]));
    expect(codes.map(([code]) => code)).toEqual([0, 0, 0]);
    const read = readStock(await readFile(keptPath(state, 'stock'), 'utf8'));
    const counts = read.ok ? read.value.map(({ board, width, count }) => [board, Math.round(width / 25.4), count]) : [];
    expect(counts.sort()).toEqual([['Soft white', 32, 7], ['Warm white', 2, 8], ['Warm white', 3, 16], ['Warm white', 32, 36]]); // prettier-ignore
    expect(read.ok && printStock(read.value)).toContain('of the linocuts');
  });
});
