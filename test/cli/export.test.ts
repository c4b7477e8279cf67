/** `export`: the right files and none but those, all or none, and never over a file that is there. */
import { readdirSync } from 'node:fs';
import { chmod, copyFile, mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { WrittenJob } from '../../src/core/job/written';
import { asOrdinaryUser } from '../helpers/ordinary-user';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runCli, runHere, runLine } from './run-cli';

const root = await makeTempFolder();
await chmod(root, 0o755);
let count = 0;
async function newFolder(): Promise<string> {
  const folder = join(root, String((count += 1)));
  await mkdir(folder);
  return folder;
}

const good = jobText({ title: 'Lady fern', pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' } });
const wrong = jobText({ pictures: [{ size: '8 x 10 in' }], frame: { size: '6 x 6 in' } });
const names = (base: string) => ['cut-list.csv', 'proof.svg', 'template.pdf'].map((end) => `${base}-${end}`);

async function folderWith(name: string, text = good): Promise<{ folder: string; job: string }> {
  const folder = await newFolder();
  await writeFile(join(folder, name), text);
  return { folder, job: join(folder, name) };
}

const beside = async (folder: string, job: string) =>
  (await readdir(folder)).filter((name) => !job.endsWith(name)).sort();

describe('where the files go', () => {
  it('beside the job, named after it', async () => {
    const { folder, job } = await folderWith('fern.json');
    const { code, out, err } = await runHere(['export', job]);
    expect([code, err]).toEqual([0, '']);
    expect(await beside(folder, job)).toEqual(names('fern'));
    for (const name of names('fern')) expect(out).toContain(join(folder, name));
    expect((await readFile(join(folder, 'fern-template.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
    expect(await readFile(join(folder, 'fern-proof.svg'), 'utf8')).toContain('<svg');
  });

  it('into the current folder from standard input, named after the title', async () => {
    const folder = await newFolder();
    expect(await runHere(['export', '-'], { input: good, folder })).toMatchObject({ code: 0 });
    expect((await readdir(folder)).sort()).toEqual(names('Lady fern'));
  });

  it.each([
    ['🌿 fern', '🌿 fern'],
    ['a/b: "c"?', 'a-b- -c-'],
    ['../../up', 'up'],
    ['x'.repeat(200), 'x'.repeat(100)],
    ['🌿'.repeat(50), '🌿'.repeat(25)],
    ['...', 'mat'],
    ['', 'mat'],
  ])('under a name that every system takes, for the title %j', async (title, base) => {
    const folder = await newFolder();
    const input = jobText({ title, pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' } });
    const ran = await runHere(['export', '-', '--only', 'proof'], { input, folder });
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(await readdir(folder)).toEqual([`${base}-proof.svg`]);
  });

  it('into another folder, made for them where it is missing', async () => {
    const { folder, job } = await folderWith('fern.json');
    expect(await runHere(['export', job, '--out', 'new'], { folder })).toMatchObject({ code: 0 });
    expect((await readdir(join(folder, 'new'))).sort()).toEqual(names('fern'));
    expect(await runHere(['export', job, '--out', 'two/deep'], { folder })).toMatchObject({ code: 0 });
    expect((await readdir(join(folder, 'two', 'deep'))).sort()).toEqual(names('fern'));
    // What cannot be made leaves none of the folders that were made for it.
    await writeFile(join(folder, 'wide.json'), JSON.stringify(wider));
    const failed = await runHere(['export', 'wide.json', '--paper', 'blank', '--out', 'three/deep'], { folder });
    expect(failed.code).toBe(1);
    expect(await readdir(folder)).not.toContain('three');
    const file = await runHere(['export', job, '--out', job], { folder });
    expect(file).toMatchObject({ code: 2, out: '' });
    expect(file.err).toContain('is not a folder');
  });
});

/** Wider than a page of a PDF can be: 14,400 points, 200 in (ISO 32000-1, Annex C). */
const wider = {
  format: 'matwright-job',
  version: 1,
  pictures: [{ size: '10 x 10 in' }],
  frame: { size: '201 x 20 in' },
};

describe('what is made', () => {
  it('only what is asked for, in the order of the table', async () => {
    const { folder, job } = await folderWith('fern.json');
    const { code, out } = await runHere(['export', job, '--json', '--only', 'proof, template']);
    expect(code).toBe(0);
    const { ok, files } = JSON.parse(out) as { ok: boolean; files: { kind: string; path: string; bytes: number }[] };
    expect(ok).toBe(true);
    expect(files.map(({ kind }) => kind)).toEqual(['template', 'proof']);
    for (const { path, bytes } of files) expect((await readFile(path)).length).toBe(bytes);
    expect(await beside(folder, job)).toEqual(['fern-proof.svg', 'fern-template.pdf']);
  });

  it('on the paper, from the side and in the unit that are asked for', async () => {
    const { folder, job } = await folderWith('fern.json');
    const list = async (...words: string[]) => {
      expect(await runHere(['export', job, '--replace', ...words])).toMatchObject({ code: 0 });
      const pdf = (await readFile(join(folder, 'fern-template.pdf'))).toString('latin1');
      const boxes = new Set([...pdf.matchAll(/\/MediaBox \[([^\]]+)\]/g)].map(([, box]) => box));
      return { boxes: [...boxes], csv: await readFile(join(folder, 'fern-cut-list.csv'), 'utf8') };
    };
    // Points of 1/72 in: Letter is 8 1/2 x 11 in, the blank 11 x 14 in, A3 297 x 420 mm.
    const letter = await list();
    expect(letter.boxes).toEqual(['0 0 612 792']);
    expect(letter.csv).toMatch(/back/);
    expect(letter.csv).not.toMatch(/,front,/);
    expect((await list('--paper', 'blank', '--only', 'template,cut-list')).boxes).toContain('0 0 792 1008');
    const front = await list('--paper', 'a3', '--view', 'front', '--units', 'mm');
    expect(front.boxes[0]).toMatch(/^0 0 841\.8\d* 1190\.5/);
    expect(front.csv).toMatch(/front/);
    expect(front.csv).toMatch(/mm/);
  });

  it('on A4 for a metric job', async () => {
    const { folder, job } = await folderWith('a.json', jobText({ units: 'mm', pictures: [{ size: 'A4' }], frame: { size: '300 x 400 mm' } })); // prettier-ignore
    expect(await runHere(['export', job, '--only', 'template'])).toMatchObject({ code: 0 });
    const pdf = (await readFile(join(folder, 'a-template.pdf'))).toString('latin1');
    expect(pdf).toMatch(/\/MediaBox \[0 0 595\.27\d* 841\.88/);
  });
});

describe('nothing is written', () => {
  it('of a job with errors', async () => {
    const { folder, job } = await folderWith('wrong.json', wrong);
    const { code, out, err } = await runHere(['export', job, '--out', 'new'], { folder });
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('[windows-do-not-fit]');
    expect(await readdir(folder)).toEqual(['wrong.json']);
  });

  it('over a file that is there, but with --replace', async () => {
    const { folder, job } = await folderWith('fern.json');
    await writeFile(join(folder, 'fern-proof.svg'), 'mine');
    const refused = await runHere(['export', job]);
    expect(refused).toMatchObject({ code: 2, out: '' });
    expect(refused.err).toContain('--replace');
    expect(await beside(folder, job)).toEqual(['fern-proof.svg']);
    expect(await readFile(join(folder, 'fern-proof.svg'), 'utf8')).toBe('mine');
    expect(await runHere(['export', job, '--replace'])).toMatchObject({ code: 0 });
    expect(await beside(folder, job)).toEqual(names('fern'));
    expect(await readFile(join(folder, 'fern-proof.svg'), 'utf8')).not.toBe('mine');
  });

  it('into a folder that may only be read, whose own new folder is not left either', async () => {
    const { folder, job } = await folderWith('fern.json');
    await chmod(folder, 0o555);
    const beside = await asOrdinaryUser(() => runHere(['export', job]));
    const inNew = await asOrdinaryUser(() => runHere(['export', job, '--out', 'new'], { folder }));
    for (const { code, out, err } of [beside, inNew]) {
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain('may not be used by you');
    }
    expect(await readdir(folder)).toEqual(['fern.json']);
  });

  it('through a job that is a folder, half a job, or far too large', async () => {
    const { folder, job } = await folderWith('half.json', good.slice(0, 60));
    expect((await runHere(['export', job])).err).toContain('breaks off');
    const huge = join(folder, 'huge.json');
    await writeFile(huge, Buffer.alloc(11_000_000, ' '));
    const tooLarge = await runHere(['export', huge]);
    expect(tooLarge).toMatchObject({ code: 2, out: '' });
    expect(tooLarge.err).toContain('11.0 MB');
    const given = await runHere(['export', '-'], { input: Buffer.alloc(11_000_000, ' '), folder });
    expect(given).toMatchObject({ code: 2, out: '' });
    expect(await runHere(['export', folder])).toMatchObject({ code: 2, out: '' });
    expect((await readdir(folder)).sort()).toEqual(['half.json', 'huge.json']);
  });
});

describe('the built program', () => {
  /** 60 x 40 in, four layers, on Letter: hundreds of pages. */
  const long = jobText({ title: 'Wall', pictures: [{ size: '50 x 30 in' }], frame: { size: '60 x 40 in' }, mat: { layers: [{}, {}, {}, {}] } }); // prettier-ignore

  it('tells nothing of its progress into a log', async () => {
    const folder = await newFolder();
    const ran = await runCli(['export', '-', '--only', 'template'], { input: long, folder });
    expect(ran).toMatchObject({ code: 0, err: '' });
  });

  // `script` of util-linux gives it a terminal of its own.
  it.runIf(process.platform === 'linux')(
    'tells of its progress to a terminal once it takes longer than a moment, in one line that is gone at the end',
    async () => {
      const { folder } = await folderWith('long.json', long);
      const line = `script -qec "${process.execPath} ${resolve('src/launch/cli.mjs')} export long.json --only template" /dev/null`;
      const { code, out } = await runLine(line, { folder });
      const erase = '\r\u001b[K';
      const progress = out.split(erase).slice(1, -1);
      expect(code).toBe(0);
      expect(progress.length).toBeGreaterThan(0);
      for (const said of progress) {
        expect(said).toMatch(/^ *\d+ % {2}\S.*$/);
        expect(said.length).toBeLessThan(80);
      }
      expect(progress.some((said) => /page \d+ of \d+$/.test(said))).toBe(true);
      // What stays is the answer alone.
      expect(out.split(erase).at(-1)).toMatch(/^template .*\r?\n$/);
    },
  );

  it('leaves nothing, not even the folder it made, when Ctrl-C ends it', async () => {
    const folder = await newFolder();
    let made: string[] = [];
    const { code, out, err } = await runCli(['export', '-', '--out', 'new'], {
      input: long,
      folder,
      onStart: (signal) => {
        // It is well under way a little after it has made its folder.
        const look = setInterval(() => {
          made = readdirSync(folder);
          if (made.length === 0) return;
          clearInterval(look);
          setTimeout(() => signal('SIGINT'), 300);
        }, 20);
      },
    });
    expect(made).toEqual(['new']);
    expect([code, out]).toEqual([130, '']);
    expect(err).toContain('nothing was written');
    expect(await readdir(folder)).toEqual([]);
  });

  it('takes paths from where the user is, also when npm runs it in the project’s folder', async () => {
    const { folder, job } = await folderWith('fern.json');
    const env = { npm_lifecycle_event: 'matwright', INIT_CWD: folder };
    expect(await runCli(['export', 'fern.json', '--only', 'proof'], { env })).toMatchObject({ code: 0 });
    expect(await beside(folder, job)).toEqual(['fern-proof.svg']);
    const other = { npm_lifecycle_event: 'test', INIT_CWD: folder };
    expect(await runCli(['check', 'fern.json'], { env: other })).toMatchObject({ code: 2 });
  });

  it('exports every sample', async () => {
    const folder = await newFolder();
    const samples = (await readdir('resources/samples')).filter((name) => name.endsWith('.json'));
    const wanted: string[] = [];
    for (const name of samples) {
      const { hanging, wall, frame } = JSON.parse(
        await readFile(resolve('resources/samples', name), 'utf8'),
      ) as WrittenJob;
      const wallPaper = ['hanging-sheet.pdf', 'wall-template.pdf'].map((end) => `${name.replace('.json', '')}-${end}`);
      // In a float frame there is no mat, and so neither template nor cutting list.
      const cut = names(name.replace('.json', '')).filter((file) => frame?.build !== 'float' || file.endsWith('.svg'));
      wanted.push(name, ...cut, ...(hanging || wall ? wallPaper : []));
      await copyFile(resolve('resources/samples', name), join(folder, name));
      expect(await runHere(['export', join(folder, name)])).toMatchObject({ code: 0 });
    }
    expect((await readdir(folder)).sort()).toEqual(wanted.sort());
  });

  it('follows a link to a job and writes beside the link', async () => {
    const { job } = await folderWith('fern.json');
    const folder = await newFolder();
    await symlink(job, join(folder, 'linked.json'));
    expect(await runHere(['export', join(folder, 'linked.json'), '--only', 'proof'])).toMatchObject({ code: 0 });
    expect((await readdir(folder)).sort()).toEqual(['linked-proof.svg', 'linked.json']);
  });
});
