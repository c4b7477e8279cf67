/** The user's lists on disk: two programs at once lose nothing, what is damaged stays, a save is whole. */
import { fork } from 'node:child_process';
import { mkdir, readdir, readFile, stat, symlink, utimes, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { KeptFile, Reply } from '../../src/bridge';
import { printCutters } from '../../src/core/job/cutter-list';
import { printShelf } from '../../src/core/shelf/print-shelf';
import { startShelf } from '../../src/core/shelf/start-shelf';
import { holdFile } from '../../src/host/hold-file';
import { readKept, saveKept } from '../../src/host/kept-lists';
import { makeTempFolder } from '../helpers/temp-folder';

const root = await makeTempFolder();
let count = 0;
const newPath = () => join(root, `state-${(count += 1)}`, 'cutters.json');
const readCutters = (path: string) => readKept(dirname(path), 'cutters');
const saveCutters = (path: string, request: { text: string; stamp?: string; setAside?: boolean }) =>
  saveKept(dirname(path), { list: 'cutters', ...request });
const list = (...names: string[]) => printCutters(names.map((name) => ({ name })));

function valueOf(reply: Reply<KeptFile>): KeptFile {
  if (!reply.ok) throw new Error(reply.failure.message);
  return reply.value;
}
const codeOf = (reply: Reply<unknown>) => (reply.ok ? 'done' : reply.failure.code);

describe('the list', () => {
  it('is empty before anything was kept, and then what was kept, for its owner alone', async () => {
    const path = newPath();
    expect(valueOf(await readCutters(path))).toEqual({ path });
    const saved = valueOf(await saveCutters(path, { text: list('Bench') }));
    expect(saved).toMatchObject({ path, text: list('Bench') });
    expect(valueOf(await readCutters(path))).toEqual(saved);
    expect((await stat(path)).mode & 0o077).toBe(0);
    expect(await readdir(join(path, '..'))).toEqual(['cutters.json']);
  });

  it('is not written over where another has changed it, made it, or taken it away', async () => {
    const path = newPath();
    const first = valueOf(await saveCutters(path, { text: list('Bench') }));
    expect(codeOf(await saveCutters(path, { text: list('Other') }))).toBe('changed-on-disk');
    const stamp = first.stamp ?? '';
    await saveCutters(path, { text: list('Bench', 'Long'), stamp });
    expect(codeOf(await saveCutters(path, { text: list('Bench', 'Short'), stamp }))).toBe('changed-on-disk');
    expect(await readFile(path, 'utf8')).toBe(list('Bench', 'Long'));
    expect(codeOf(await saveCutters(newPath(), { text: list('Bench'), stamp }))).toBe('changed-on-disk');
  });

  it('is refused where it is no list', async () => {
    const path = newPath();
    expect(await saveCutters(path, { text: '{"format":"matwright-cutters"' })).toMatchObject({ ok: false });
    expect(await saveCutters(path, { text: list('Bench', 'Bench') })).toMatchObject({
      failure: { message: expect.stringContaining('Two cutters are called Bench') as string },
    });
    expect(valueOf(await readCutters(path)).text).toBeUndefined();
  });

  it('that is damaged is given as it is, and set aside only when asked', async () => {
    const path = newPath();
    await mkdir(join(path, '..'));
    await writeFile(path, '{ "format": "matwright-cut');
    const found = valueOf(await readCutters(path));
    expect(found.text).toBe('{ "format": "matwright-cut');
    expect(codeOf(await saveCutters(path, { text: list('Bench') }))).toBe('changed-on-disk');
    expect(codeOf(await saveCutters(path, { text: list('Bench'), setAside: true }))).toBe('done');
    await writeFile(path, Buffer.from([0xff, 0xfe, 0x00]));
    expect(codeOf(await readCutters(path))).toBe('not-readable');
    expect(codeOf(await saveCutters(path, { text: list('Long'), setAside: true }))).toBe('done');
    const folder = join(path, '..');
    expect((await readdir(folder)).sort()).toEqual(['cutters-set-aside-1.json', 'cutters-set-aside-2.json', 'cutters.json']); // prettier-ignore
    expect(await readFile(join(folder, 'cutters-set-aside-1.json'), 'utf8')).toBe('{ "format": "matwright-cut');
    expect(await readFile(join(folder, 'cutters-set-aside-2.json'))).toEqual(Buffer.from([0xff, 0xfe, 0x00]));
  });

  it('is set aside where it lies, when it is kept through a link', async () => {
    const [path, folder] = [newPath(), join(root, 'elsewhere')];
    await Promise.all([mkdir(dirname(path)), mkdir(folder)]);
    await writeFile(join(folder, 'list.json'), 'damaged');
    await symlink(join(folder, 'list.json'), path);
    expect(codeOf(await saveCutters(path, { text: list('Bench'), setAside: true }))).toBe('done');
    expect((await readdir(folder)).sort()).toEqual(['list-set-aside-1.json', 'list.json']);
    expect(valueOf(await readCutters(path)).text).toBe(list('Bench'));
  });

  it('of what is on the shelf has a file of its own, and is refused where it is none', async () => {
    const state = dirname(newPath());
    const text = printShelf(startShelf('inch'), 'in');
    expect(codeOf(await saveKept(state, { list: 'shelf', text }))).toBe('done');
    expect(valueOf(await readKept(state, 'shelf'))).toMatchObject({ path: join(state, 'shelf.csv'), text });
    expect(valueOf(await readKept(state, 'cutters')).text).toBeUndefined();
    const { stamp = '' } = valueOf(await readKept(state, 'shelf'));
    expect(await saveKept(state, { list: 'shelf', text: 'name,width,height\nA,8,10', stamp })).toMatchObject({
      failure: { message: expect.stringContaining('The shelf was not saved: Line 2') as string },
    });
    expect(codeOf(await saveKept(state, { list: 'shelf', text: '', setAside: true }))).toBe('failed');
    expect(codeOf(await saveKept(state, { list: 'shelf', text, setAside: true }))).toBe('done');
    expect((await readdir(state)).sort()).toEqual(['shelf-set-aside-1.csv', 'shelf.csv']);
  });

  it('says where it can’t be kept', async () => {
    const path = newPath();
    await saveCutters(path, { text: list('Bench') });
    expect(await saveCutters(join(path, 'within', 'cutters.json'), { text: list('Bench') })).toMatchObject({
      ok: false,
      failure: { code: 'not-a-folder' },
    });
  });
});

describe('several at once', () => {
  /** What a screen does: reads, adds its own, saves, and begins again where another was faster. */
  async function add(path: string, name: string): Promise<void> {
    for (;;) {
      const { text, stamp } = valueOf(await readCutters(path));
      const names = text === undefined ? [] : (JSON.parse(text) as { cutters: { name: string }[] }).cutters;
      const saved = await saveCutters(path, {
        text: list(...names.map((one) => one.name), name),
        ...(stamp === undefined ? {} : { stamp }),
      });
      if (saved.ok) return;
      if (saved.failure.code !== 'changed-on-disk') throw new Error(saved.failure.message);
    }
  }
  const namesIn = async (path: string) =>
    (JSON.parse(await readFile(path, 'utf8')) as { cutters: { name: string }[] }).cutters.map(({ name }) => name);

  it('in one program lose nothing', async () => {
    const path = newPath();
    const names = Array.from({ length: 12 }, (_, index) => `Cutter ${index}`);
    await Promise.all(names.map((name) => add(path, name)));
    expect((await namesIn(path)).sort()).toEqual(names.sort());
  });

  it('in several programs touch a file one after another', async () => {
    const path = join(root, 'counted');
    await writeFile(path, '0');
    const program = join(root, 'count.mjs');
    const source = new URL('../../src/host/hold-file.ts', import.meta.url).pathname;
    const bundle = join(root, 'hold-file.mjs');
    const { build } = await import('rolldown');
    await build({ input: source, platform: 'node', output: { file: bundle, format: 'esm' }, logLevel: 'silent' });
    await writeFile(
      program,
      `import { readFile, writeFile } from 'node:fs/promises';
       import { holdFile } from ${JSON.stringify(bundle)};
       for (let turn = 0; turn < 15; turn += 1)
         await holdFile(${JSON.stringify(path)}, async () => {
           await writeFile(${JSON.stringify(path)}, String(Number(await readFile(${JSON.stringify(path)}, 'utf8')) + 1));
         });`,
    );
    const programs = Array.from({ length: 3 }, () => fork(program));
    await Promise.all(programs.map((one) => new Promise((resolve) => one.on('exit', resolve))));
    expect(await readFile(path, 'utf8')).toBe('45');
  });

  it('do not wait for a program that has ended in the middle', async () => {
    const path = join(root, 'left');
    await writeFile(`${path}.held`, 'somebody');
    const longAgo = new Date(Date.now() - 60_000);
    await utimes(`${path}.held`, longAgo, longAgo);
    expect(await holdFile(path, () => Promise.resolve('done'))).toBe('done');
    expect((await readdir(root)).includes('left.held')).toBe(false);
  });
});
