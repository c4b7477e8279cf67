/** The call that puts costs on paper: reckoned from texts, written whole, and refused in words. */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { HostCalls, Progress, Reply } from '../../src/bridge';
import { createHost } from '../../src/host/create-host';
import { browserShell } from '../../src/web/browser-shell';
import { makeTempFolder } from '../helpers/temp-folder';
import { readPdf } from '../outputs/read-pdf';

const root = await makeTempFolder();
const host = createHost({ version: '1', resources: 'resources', state: join(root, 'state'), shell: browserShell });

type Request = HostCalls['exportCosts']['request'];
type Told = Reply<HostCalls['exportCosts']['reply']>;

/** 16 x 20 in of moulding 2 in wide; nothing but mat, moulding, points, rings and hooks. */
const JOB = JSON.stringify({
  format: 'matwright-job',
  version: 1,
  title: 'Plain',
  pictures: [{ size: '8 x 10 in' }],
  frame: { size: '16 x 20 in', allowance: 0, lip: 0, mouldingWidth: '2 in', name: 'Ash' },
  mat: { layers: [{ board: 'Soft white' }] },
  package: { mountBoard: { without: true }, backing: { material: 'none' }, dustCover: false, glazing: { material: 'none' }, hinging: { method: 'none' } }, // prettier-ignore
  hanging: { hanger: 'rings on hooks' },
});
const SHELF = 'kind,name,width,height,face,load,price,per\nmoulding,Ash,,,2 in,,1.80,ft\nboard,Soft white,32 in,40 in,,,11.00,sheet\nring,Ring,,,,20 lb,0.20,\nhook,Hook,,,,30 lb,0.35,\n'; // prettier-ignore
const PRICES = 'what,value,per,name\ncurrency,EUR\nmitre waste,8 x face\nfirst opening,4.00\npart,0.60,m,points\nmargin,50 %\nrounding,up to 0.50\ntax,8 %,,Sales tax\n'; // prettier-ignore

async function request(over: Partial<Request> = {}): Promise<Request> {
  const folder = join(root, String(Math.random()).slice(2));
  await mkdir(folder);
  const options = {
    how: 'by itself',
    only: ['proposal', 'proposal-without-prices', 'cost-sheet'],
    paper: 'a4',
    showing: { unit: 'in', inchStep: 16, metricStep: 0.5 },
  } as const;
  return { id: 'c1', jobs: [JOB], shelf: SHELF, prices: PRICES, options, folder, baseName: 'plain', replace: false, ...over }; // prettier-ignore
}

const base = await request();

/** As it comes from a page: plain data. */
const call = async (asked: unknown, context = {}) =>
  (await host.call('exportCosts', JSON.parse(JSON.stringify(asked)), context)) as Told;
const saidBy = (reply: Told) => (reply.ok ? 'done' : reply.failure.message);
const codeOf = (reply: Told) => (reply.ok ? 'done' : reply.failure.code);

async function wordsIn(folder: string, name: string): Promise<string> {
  const { pages } = readPdf(await readFile(join(folder, name)));
  return pages.flatMap(({ words }) => words.map(({ text }) => text)).join(' ');
}

describe('papers of costs', () => {
  it('tell the total that a pencil has, and without prices no amount at all', async () => {
    const asked = await request();
    const steps: Progress[] = [];
    const reply = await call(asked, { onProgress: (step: Progress) => steps.push(step) });
    expect(saidBy(reply)).toBe('done');
    // Board 11.00, 88 in at 1.80 a foot 13.20, 72 in at 0.60 a metre 1.10, hooks 0.70, rings 0.40, opening 4.00: 30.40.
    // As much again is 60.80, up to 61.00, and 8 % of that is 4.88.
    expect(await wordsIn(asked.folder, 'plain-proposal.pdf')).toContain('EUR 65.88');
    expect(await wordsIn(asked.folder, 'plain-cost-sheet.pdf')).toContain('EUR 65.88');
    const without = await wordsIn(asked.folder, 'plain-proposal-without-prices.pdf');
    expect(without).toContain('Plain');
    expect(without).not.toMatch(/EUR|\d\.\d\d/);
    expect(steps.map(({ done }) => done)).toEqual(steps.map(({ done }) => done).toSorted((a, b) => a - b));
    expect(steps.at(-1)?.done).toBe(1);
    expect(codeOf(await call(asked))).toBe('exists');
    expect(codeOf(await call({ ...asked, replace: true }))).toBe('done');
  });

  it('take what a plan of sheets used', async () => {
    // A quarter of the sheet, 2.75, takes 8.25 off: 22.15, 44.30, up to 44.50, tax 3.56.
    const quarter = { board: 'Soft white', sheets: [{ size: { width: 812.8, height: 1016 }, count: 1, price: '11' }], areas: [1, 3] }; // prettier-ignore
    const asked = await request({ boards: [quarter] });
    expect(saidBy(await call(asked))).toBe('done');
    expect(await wordsIn(asked.folder, 'plain-cost-sheet.pdf')).toContain('EUR 48.06');
  });

  it('compare jobs, and ready-made with made to size', async () => {
    const compared = await request({ jobs: [JOB, JOB], options: { ...base.options, how: 'compared' } });
    expect(saidBy(await call(compared))).toBe('done');
    expect(await wordsIn(compared.folder, 'plain-cost-sheet.pdf')).toMatch(/Side by side.*Plain \(1\).*Plain \(2\)/);
    const made = await request({
      shelf: `${SHELF}frame,Oak,16 in,20 in,,,18.00,\n`,
      options: { ...base.options, how: 'against custom', moulding: 'Ash' },
    });
    expect(saidBy(await call(made))).toBe('done');
    expect(await wordsIn(made.folder, 'plain-proposal.pdf')).toMatch(/Ready-made “Oak”.*Made to size of “Ash”/);
  });

  it('are stopped on the way and leave nothing', async () => {
    const asked = await request();
    expect(codeOf(await call(asked, { gone: AbortSignal.abort() }))).toBe('cancelled');
    expect(await readdir(asked.folder)).toEqual([]);
  });
});

describe('what can’t be reckoned', () => {
  it.each<[string, Partial<Request>, code: string, said: RegExp]>([
    ['a price list with a wrong row', { prices: 'what,value\ncurrency,EUR\nhour,soon\n' }, 'failed', /price list.*Line 3, column “value”/],
    ['a shelf with a wrong row', { shelf: 'kind,name,width,height\nframe,Oak,11 in,14\n' }, 'failed', /shelf.*Line 2, column “height”/],
    ['a job that is none', { jobs: ['{}'] }, 'job-has-errors', /A job has errors/],
    ['a job that does not fit', { jobs: [JOB.replace('16 x 20 in', '6 x 6 in')] }, 'job-has-errors', /A job has errors/],
    ['one job to compare', { options: { ...base.options, how: 'compared' } }, 'job-has-errors', /two jobs or more/],
    ['a moulding that is not there', { options: { ...base.options, moulding: 'Oak' } }, 'job-has-errors', /Oak/],
    ['no paper', { options: { ...base.options, only: [] } }, 'failed', /only/],
    ['a paper twice', { options: { ...base.options, only: ['proposal', 'proposal'] } }, 'failed', /only/],
    ['a price that is no number', { boards: [{ board: 'A', sheets: [{ size: { width: 1, height: 1 }, count: 1, price: '1e9' }], areas: [1] }] }, 'failed', /price/],
    ['a name that leads out', { baseName: '../out' }, 'failed', /may not hold/],
  ])('%s', async (_, over, code, said) => {
    const asked = await request(over);
    const reply = await call(asked);
    expect([codeOf(reply), saidBy(reply)]).toEqual([code, expect.stringMatching(said)]);
    expect(await readdir(asked.folder)).toEqual([]);
  }); // prettier-ignore

  it('never writes over a file unasked', async () => {
    const asked = await request();
    await writeFile(join(asked.folder, 'plain-cost-sheet.pdf'), 'mine');
    expect(codeOf(await call(asked))).toBe('exists');
    expect(await readdir(asked.folder)).toEqual(['plain-cost-sheet.pdf']);
  });
});

describe('the price list', () => {
  it('is kept row by row, though it lacks some, and a wrong one is refused', async () => {
    const save = (text: string) => host.call('saveKept', { list: 'prices', text });
    expect(await save('what,value\nhour,soon\n')).toMatchObject({ failure: { message: expect.stringContaining('The price list was not saved: Line 2, column “value”') as string } }); // prettier-ignore
    expect(await save('what,value\nhour,24.00\n')).toMatchObject({ ok: true });
    expect(await readFile(join(root, 'state', 'prices.csv'), 'utf8')).toBe('what,value\nhour,24.00\n');
  });

  it('that is invented is handed over as it ships', async () => {
    const text = await readFile('resources/prices.csv', 'utf8');
    expect(await host.call('demoPrices', {})).toEqual({ ok: true, value: { text } });
  });
});
