/** The words of the command line: help, examples that work, misuse, and the table of exit codes. */
import { readdirSync } from 'node:fs';
import { copyFile, mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { version } from '../../package.json';
import { VERBS } from '../../src/cli/verbs';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runCli, runHere, runLine } from './run-cli';

const folder = await makeTempFolder();
const sample = resolve('resources/samples/1-sea-chart.json');

beforeAll(async () => {
  // The first run bundles the program; the others then start at once.
  expect(await runCli(['--version'])).toMatchObject({ code: 0, out: `${version}\n`, err: '' });
}, 120_000);

async function newFolder(name: string): Promise<string> {
  const path = join(folder, name);
  await mkdir(path);
  return path;
}

/** The lines of help that show an example. */
async function examplesOf(verb: string): Promise<string[]> {
  const { out } = await runHere([verb, '--help']);
  return out.split('\n').flatMap((line) => (/^ {2}.*npm run -s matwright -- /.test(line) ? [line.trim()] : []));
}

describe('help', () => {
  it('lists every verb with what it does, and the exit codes', async () => {
    const { code, out, err } = await runHere(['--help']);
    expect([code, err]).toEqual([0, '']);
    for (const { name, summary } of VERBS) {
      expect(out).toMatch(new RegExp(`^  ${name} `, 'm'));
      expect(out.replace(/\s+/g, ' ')).toContain(summary);
    }
    for (const code of ['0 done', '1 errors', '2 wrong use']) expect(out).toContain(code);
    // Nothing asked for is wrong use: a script whose words got lost must not go on.
    expect(await runHere([])).toMatchObject({ code: 2, out: '', err: out });
  });

  it.each(VERBS.map(({ name }) => name))('of %s has its options and examples', async (name) => {
    const { code, out, err } = await runHere([name, '--help']);
    expect([code, err]).toEqual([0, '']);
    expect(await runHere(['help', name])).toMatchObject({ code, out, err });
    for (const { long } of VERBS.find((verb) => verb.name === name)!.options) expect(out).toContain(long);
    expect((await examplesOf(name)).length).toBeGreaterThan(0);
  });

  const names = VERBS.map(({ name }) => name);
  it.each(names)('shows examples of %s that work as they stand', async (name) => {
    const here = await newFolder(`examples-${name}`);
    await symlink(resolve('resources'), join(here, 'resources'));
    for (const example of await examplesOf(name)) {
      const { code, out, err } = await runLine(example, { folder: here });
      expect({ example, code, err }).toEqual({ example, code: 0, err: '' });
      expect(out.length).toBeGreaterThan(20);
    }
    const made = readdirSync(here, { recursive: true }).map(String).filter((path) => /-(template|cut-list|proof)\./.test(path)); // prettier-ignore
    expect(made.length > 0).toBe(name === 'export');
  });

  it('of the README works as it stands, and only once', async () => {
    const here = await newFolder('readme');
    await copyFile(sample, join(here, 'my-job.json'));
    const lines = (await readFile('README.md', 'utf8')).match(/npm run -s matwright -- .*my-job.*/g) ?? [];
    expect(lines.length).toBeGreaterThanOrEqual(3);
    for (const line of lines) expect(await runLine(line, { folder: here })).toMatchObject({ code: 0 });
    expect((await readdir(join(here, 'templates'))).length).toBe(3);
    const again = await runLine(
      lines.find((line) => line.includes('export'))!,
      { folder: here },
    );
    expect(again).toMatchObject({ code: 2, out: '' });
    expect(again.err).toContain('--replace');
  });
});

describe('misuse gives 2 and a hint, and nothing on standard output', () => {
  it.each([
    [['chek', sample], 'Did you mean check?'],
    [['check'], "missing required argument 'JOB'"],
    [['check', sample, 'another'], 'too many arguments'],
    [['check', '--jsn', sample], 'Did you mean --json?'],
    [['export', sample, '--paper', 'a5'], 'Allowed choices are blank, letter, legal, tabloid, a4, a3'],
    [['export', sample, '--view', 'side'], 'Allowed choices are back, front'],
    [['export', sample, '--units', 'yd'], 'Allowed choices are in, mm, cm'],
    [['export', sample, '--only', 'template,plan'], '"plan" is none of template, cut-card, cut-list, proof'],
    [['export', sample, '--out'], 'argument missing'],
    [['export', sample, '--out', ''], 'a folder’s name is wanted'],
    [['check', 'nowhere.json'], 'is not there'],
    [['check', 'resources'], 'is a folder'],
    [['describe', sample, 'x'], 'too many arguments'],
  ])('%j', async (words, hint) => {
    const { code, out, err } = await runHere(words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(hint);
    expect(err).not.toMatch(/\n\s+at /);
  });
});

describe('the exit code of every verb', () => {
  const good = jobText({ pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' } });
  const warned = jobText({ pictures: [{ size: '8 x 10 in' }], frame: { size: '9 x 11 in' } });
  const wrong = jobText({ pictures: [{ size: '8 x 10 in' }], frame: { size: '6 x 6 in' } });
  const cases: readonly (readonly [string, string, number])[] = [
    ['a job that can be cut', good, 0],
    ['a job with a warning', warned, 0],
    ['a job with an error', wrong, 1],
    ['a job with a wrong key', jobText({ picture: [] }), 1],
    ['half a job', good.slice(0, good.length / 2), 2],
    ['nothing', '', 2],
    ['another kind of file', '{"title":"Fern"}', 2],
    ['a newer version', '{"format":"matwright-job","version":2}', 2],
    ['bytes that are no text', 'latin1', 2],
  ];
  const verbs = VERBS.filter(({ takesJob }) => takesJob).map(({ name }) => name);
  /** Files without which a verb has no answer. */
  const needed: Readonly<Record<string, readonly string[]>> = {
    cost: ['--shelf', resolve('resources/shelf.csv'), '--prices', resolve('resources/prices.csv')],
  };

  it.each(cases.flatMap(([what, text, code]) => verbs.map((verb) => [verb, what, text, code] as const)))(
    '%s: %s',
    async (verb, what, text, code) => {
      const here = await newFolder(`${verb} ${what}`);
      const input = text === 'latin1' ? Buffer.from([0x7b, 0xe9, 0x7d]) : text;
      // The frame that a job has of its own is not asked when another is looked for.
      if (verb === 'frames' && (what === 'a job with a warning' || what === 'a job with an error')) {
        const ran = await runHere([verb, '-'], { input, folder: here });
        return expect(ran).toMatchObject({ code: 0, err: '', out: expect.stringContaining('1. ') as unknown });
      }
      const more = needed[verb] ?? [];
      const ran = await runHere([verb, '-', ...more], { input, folder: here });
      expect(ran.code).toBe(code);
      const told = ran.out + ran.err;
      if (what === 'a job with a warning') expect(told).toContain('[border-narrow]');
      // Problems are the answer of check; of the others they are not.
      expect(ran.out === '').toBe(code === 2 || (code === 1 && verb !== 'check'));
      if (code > 0) expect(await readdir(here)).toEqual([]);
      const json = await runHere([verb, '-', ...more, '--json', ...(verb === 'export' ? ['--replace'] : [])], { input, folder: here }); // prettier-ignore
      expect(json.code).toBe(code);
      expect(JSON.parse(json.out)).toMatchObject({ ok: code === 0, problems: expect.any(Array) as unknown });
    },
  );

  it('is the same for the built program', async () => {
    const path = join(await newFolder('built'), 'wrong.json');
    await writeFile(path, wrong);
    const codes = [];
    for (const words of [
      ['check', sample],
      ['check', path],
      ['describe', path],
      ['check', 'nowhere'],
      ['--nonsense'],
    ]) {
      codes.push((await runCli(words)).code);
    }
    expect(codes).toEqual([0, 1, 1, 2, 2]);
  });
});
