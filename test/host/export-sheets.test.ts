/** The call that puts a plan of sheets on paper: written whole, and refused in words where what comes is no plan. */
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { HostCalls, Progress, Reply } from '../../src/bridge';
import { createHost } from '../../src/host/create-host';
import { browserShell } from '../../src/web/browser-shell';
import { makeTempFolder } from '../helpers/temp-folder';
import { CASES } from '../outputs/sheets/plans';

const root = await makeTempFolder();
const host = createHost({ version: '1', resources: 'resources', state: join(root, 'state'), shell: browserShell });

type Request = HostCalls['exportSheets']['request'];
type Told = Reply<HostCalls['exportSheets']['reply']>;

const [, usual] = CASES.find(([name]) => name === 'three jobs, trimmed and sawn')!;

async function request(over: Partial<Request> = {}): Promise<Request> {
  const folder = join(root, String(Math.random()).slice(2));
  await mkdir(folder);
  const options = { paper: 'letter', showing: usual.showing, only: ['sheet-plan', 'labels', 'sheet-cuts', 'sheet-drawings'] } as const; // prettier-ignore
  return { id: 's1', plans: usual.plans, folder, baseName: 'show', options, replace: false, ...over };
}

/** As it comes from a page: plain data, in which nothing is the same object any more. */
const call = async (asked: unknown, context = {}) =>
  (await host.call('exportSheets', JSON.parse(JSON.stringify(asked)), context)) as Told;
const saidBy = (reply: Told) => (reply.ok ? 'done' : reply.failure.message);
const codeOf = (reply: Told) => (reply.ok ? 'done' : reply.failure.code);

describe('papers of a plan', () => {
  it.each(CASES)('are taken as the planner makes it: %s', async (_, { plans, showing }) => {
    const asked = await request({ plans, options: { paper: 'a4', showing, only: ['sheet-cuts'] } });
    expect(saidBy(await call(asked))).toBe('done');
    expect((await readdir(asked.folder)).sort()).toEqual(['show-sheet-cuts.csv', 'show-sheet-pieces.csv']);
  });

  it('takes all that may be asked of the planner', async () => {
    const [board] = usual.plans.boards;
    const pin = { sheet: 0, stock: 0, piece: 0, turned: false, left: 0, bottom: 0 };
    const ask = { ...board!.ask, stages: 3, longestCut: 1500, perSheet: 100, remnantWorth: 0.5, pins: [pin] };
    const keep = { least: 50, board: { width: 200, height: 300 }, strip: 600 };
    const plans = { ...usual.plans, boards: [{ ...board!, ask }], keep };
    expect(saidBy(await call(await request({ plans })))).toBe('done');
  });

  it('writes every file, telling how far it is, and no file that is there', async () => {
    const asked = await request();
    const steps: Progress[] = [];
    const reply = await call(asked, { onProgress: (step: Progress) => steps.push(step) });
    if (!reply.ok) throw new Error(reply.failure.message);
    const { files } = reply.value;
    const drawings = usual.plans.boards.reduce((sum, { plan }) => sum + plan.sheets.length, 0);
    expect(files).toHaveLength(4 + drawings);
    expect(files.every(({ path }) => existsSync(path))).toBe(true);
    for (const { path, bytes } of files) expect((await readFile(path)).length).toBe(bytes);
    expect(steps.map(({ done }) => done)).toEqual(steps.map(({ done }) => done).toSorted((a, b) => a - b));
    expect(steps.at(-1)?.done).toBe(1);
    expect(codeOf(await call(asked))).toBe('exists');
    expect(codeOf(await call({ ...asked, replace: true }))).toBe('done');
    const beside = await request();
    await writeFile(join(beside.folder, 'show-labels.pdf'), 'mine');
    expect(codeOf(await call(beside))).toBe('exists');
    expect(await readdir(beside.folder)).toEqual(['show-labels.pdf']);
  });

  it('is stopped in the middle and leaves nothing', async () => {
    const asked = await request();
    let stopped: Promise<unknown> | undefined;
    const reply = await call(asked, { onProgress: () => (stopped ??= host.call('cancel', { id: asked.id })) });
    expect(codeOf(reply)).toBe('cancelled');
    expect(await stopped).toMatchObject({ value: { cancelled: true } });
    expect(await readdir(asked.folder)).toEqual([]);
    expect(codeOf(await call(asked, { gone: AbortSignal.abort() }))).toBe('cancelled');
  });

  it('tells by name of drawings that an older, larger plan left there, and leaves them', async () => {
    const asked = await request({ options: { ...(await request()).options, only: ['sheet-drawings'] } });
    const [board, ...others] = asked.plans.boards;
    const more = [1, 2, 3, 4].flatMap(() => board!.plan.sheets);
    const numbered = more.map((sheet, index) => ({ ...sheet, pieces: [{ ...sheet.pieces[0]!, number: index + 1 }] }));
    const larger = { ...asked.plans, boards: [{ ...board!, plan: { ...board!.plan, sheets: numbered } }, ...others] };
    expect(saidBy(await call({ ...asked, plans: larger }))).toBe('done');
    // Of other makers, or of another name.
    for (const name of ['show-board-1-sheet-0.svg', 'shown-board-9-sheet-9.svg', 'show-board-9-sheet-9.svg.bak'])
      await writeFile(join(asked.folder, name), 'mine');
    const before = await readdir(asked.folder);
    const reply = await call({ ...asked, replace: true });
    if (!reply.ok) throw new Error(reply.failure.message);
    const kept = board!.plan.sheets.length;
    const older = Array.from({ length: numbered.length - kept }, (_, index) => `show-board-1-sheet-${kept + index + 1}.svg`); // prettier-ignore
    const told = older.length > 3 ? `${older.slice(0, 3).join(', ')} and ${older.length - 3} more` : `${older.slice(0, -1).join(', ')} and ${older.at(-1)}`; // prettier-ignore
    expect(reply.value.problems).toMatchObject([{ code: 'older-drawings', severity: 'warning' }]);
    expect(reply.value.problems[0]!.message).toContain(`${older.length} drawings of another plan, which are not of this one: ${told}.`); // prettier-ignore
    expect(await readdir(asked.folder)).toEqual(before);
    // Labels alone say nothing of drawings, which may be of this very plan.
    const labels = await call({ ...asked, options: { ...asked.options, only: ['labels'] } });
    expect(labels.ok && labels.value.problems).toEqual([]);
  });

  it('warns of names that the type does not have', async () => {
    const plans = { ...usual.plans, title: '藤の花' };
    const reply = await call(await request({ plans, options: { ...(await request()).options, only: ['labels'] } }));
    if (!reply.ok) throw new Error(reply.failure.message);
    expect(reply.value.problems.map(({ code }) => code)).toEqual(['letters-not-printed']);
  });
});

/** The request with one value changed, by its path. */
function changed(asked: Request, path: string, value: unknown): unknown {
  const copy = JSON.parse(JSON.stringify(asked)) as Record<string, unknown>;
  const keys = path.split('.');
  const last = keys.pop()!;
  const holder = keys.reduce((held, key) => held[key] as Record<string, unknown>, copy);
  holder[last] = value;
  return copy;
}

const SHEET = 'plans.boards.0.plan.sheets.0';

describe('what is no plan', () => {
  it.each<[path: string, value: unknown, said: RegExp]>([
    ['plans.boards', [], /plans\.boards/],
    [`${SHEET}.pieces.0.box.right`, 1e6, /right/],
    [`${SHEET}.pieces.0.box.left`, null, /left/],
    [`${SHEET}.pieces.0.box`, { left: 10, bottom: 10, right: 5, top: 20 }, /right > left/],
    [`${SHEET}.pieces.0.box`, { left: 0, bottom: 0, right: 9000, top: 10 }, /sheets\[0\]\.pieces\[0\] reaches out of the sheet, which is/],
    [`${SHEET}.pieces.0.box`, { left: 0, bottom: 0, right: 7, top: 10 }, /larger or smaller than the piece/],
    [`${SHEET}.pieces.0.turned`, 'yes', /turned/],
    [`${SHEET}.pieces.0.number`, 1.5, /number/],
    [`${SHEET}.left.0`, { left: 0, bottom: 0, right: 9000, top: 10 }, /left\[0\] reaches out/],
    [`${SHEET}.steps.1.setting`, 9000, /steps\[1\] sets the guide beyond the part in hand/],
    [`${SHEET}.steps.1.part.top`, 9000, /steps\[1\] cuts a part that reaches out/],
    [`${SHEET}.steps.1.times`, 1e9, /times/],
    [`${SHEET}.stock.width`, -5, /width/],
    [`${SHEET}.more`, 1, /sheets/],
    ['options.only', [], /only/],
    ['options.only', ['template'], /only/],
    ['options.paper', 'blank', /paper/],
    ['options.showing.inchStep', 7, /inchStep/],
    ['baseName', '../out', /may not hold/],
    ['folder', '', /folder/],
    ['id', '../x', /id/],
  ])('%s = %j is refused, and nothing is written', async (path, value, said) => {
    const asked = await request();
    const reply = await call(changed(asked, path, value));
    expect(codeOf(reply)).toBe('failed');
    expect(saidBy(reply)).toMatch(said);
    expect(await readdir(asked.folder)).toEqual([]);
  }); // prettier-ignore

  it('has a number twice', async () => {
    const asked = await request();
    const [glass] = asked.plans.boards;
    expect(glass!.plan.sheets.flatMap(({ pieces }) => pieces).length).toBeGreaterThan(1);
    const later =
      glass!.plan.sheets[0]!.pieces.length > 1 ? `${SHEET}.pieces.1` : 'plans.boards.0.plan.sheets.1.pieces.0';
    expect(saidBy(await call(changed(asked, `${later}.number`, 1)))).toMatch(/has the number 1, which another piece has already/); // prettier-ignore
  });

  it('is not finite', async () => {
    const asked = await request();
    const [board] = asked.plans.boards;
    for (const kerf of [NaN, Infinity]) {
      const plans = { ...asked.plans, boards: [{ ...board!, ask: { ...board!.ask, kerf } }] };
      const reply = (await host.call('exportSheets', { ...asked, plans })) as Told;
      expect(saidBy(reply)).toMatch(/kerf/);
    }
  });

  it('has more pieces than are drawn together', async () => {
    const asked = await request();
    const [board] = asked.plans.boards;
    const [sheet] = board!.plan.sheets;
    const pieces = Array.from({ length: 2600 }, (_, index) => ({ ...sheet!.pieces[0]!, number: index + 1 }));
    const one = { ...board!, plan: { ...board!.plan, sheets: [{ ...sheet!, pieces }] } };
    expect(saidBy(await call({ ...asked, plans: { ...asked.plans, boards: [one, one] } }))).toContain('5200 pieces; at most 5000'); // prettier-ignore
  });
});
