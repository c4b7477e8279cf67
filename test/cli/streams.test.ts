/** The command line's streams: readers that go away, drives that are full, and nothing but the answer on standard output. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { passingLine } from '../../src/cli/passing-line';
import { tellProgress } from '../../src/cli/print/progress';
import type { World } from '../../src/cli/world';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runCli, runLine } from './run-cli';

const folder = await makeTempFolder();
const sample = join(process.cwd(), 'resources/samples/3-nine-linocuts.json');

describe('a reader that goes away', () => {
  it.each(['describe --json', 'describe', 'schema'])('is no fault for %s', async (words) => {
    const job = words === 'schema' ? '' : sample;
    const { out, err } = await runLine(`npm run -s matwright -- ${words} ${job} | head -n 1`, { folder });
    expect(err).toBe('');
    expect(out.split('\n')).toHaveLength(2);
  });

  it('is none either where standard error is closed', async () => {
    expect(await runLine(`npm run -s matwright -- check nowhere.json 2>&-`, { folder })).toMatchObject({
      code: 2,
      out: '',
      err: '',
    });
  });
});

it('says so when the answer can’t be written', async () => {
  const { code, err } = await runLine(`npm run -s matwright -- describe ${sample} > /dev/full`, { folder });
  expect(code).toBe(2);
  expect(err).toMatch(/^A fault stopped this: the answer could not be written: ENOSPC[^\n]*\n$/);
});

it('reads standard input in pieces, to its end', async () => {
  const line = `(head -c 100 ${sample}; sleep 0.3; tail -c +101 ${sample}) | npm run -s matwright -- check -`;
  expect(await runLine(line, { folder })).toMatchObject({ code: 0, err: '' });
});

it('writes a large answer whole into a pipe', async () => {
  const items = Array.from({ length: 400 }, (_, index) => String(index + 1));
  const many = jobText({
    pictures: items.map(() => ({ size: '60 x 80 mm' })),
    units: 'mm',
    windows: { kind: 'grid', columns: 20, gap: '30 mm', items },
    borders: { rule: 'equal', all: '80 mm' },
  });
  const { code, out } = await runCli(['describe', '--json', '-'], { input: many });
  expect(code).toBe(0);
  expect(out.length).toBeGreaterThan(1_000_000);
  expect(JSON.parse(out)).toMatchObject({ ok: true });
});

const world = (isWatched: boolean, told: string[]) => {
  const passing = passingLine(
    (text) => told.push(text),
    () => 40,
  );
  return { isWatched, passing } as unknown as World;
};

/** What a terminal shows of it: each part written over by the next. */
const ERASE = '\r\u001b[K';

it('tells nothing of progress where nobody watches, such as into a log', () => {
  let time = 0;
  const told: string[] = [];
  const tell = tellProgress(world(false, told), () => time);
  for (time = 0; time <= 2000; time += 100) tell({ done: time / 4000, step: `step ${time}` });
  expect(told).toEqual([]);
});

it('tells of progress after a moment, at most ten times a second, in one line that is gone at the end', () => {
  let time = 0;
  const told: string[] = [];
  const tell = tellProgress(world(true, told), () => time);
  for (time = 0; time <= 2000; time += 100) tell({ done: time / 4000, step: `step ${time}` });
  tell({ done: 1, step: 'Done' });
  tell({ done: 1, step: 'Done' });
  const times = Array.from({ length: 18 }, (_, index) => 300 + 100 * index);
  expect(told).toEqual([...times.map((at) => `${ERASE}${String(Math.floor(at / 40)).padStart(3)} %  step ${at}`), ERASE]); // prettier-ignore
});

it('cuts the line where it would wrap, which no terminal could take back', () => {
  let time = 0;
  const told: string[] = [];
  const tell = tellProgress(world(true, told), () => time);
  time = 300;
  tell({ done: 0.5, step: 'x'.repeat(100) });
  expect(told).toEqual([`${ERASE} 50 %  ${'x'.repeat(32)}`]);
});

it('gives a table that reads back as it was, through a file of the shell’s', async () => {
  const line = 'npm run -s matwright -- shelf --start metric > start.csv && npm run -s matwright -- shelf start.csv';
  expect(await runLine(line, { folder })).toMatchObject({ code: 0, err: '' });
  const pieces = await runLine(`npm run -s matwright -- pieces ${sample} --csv | od -c`, { folder });
  expect(pieces.out).toContain('\\r  \\n');
  expect(pieces.out).not.toContain('357 277 275');
});

it('lets no title steer the terminal', async () => {
  const { out } = await runCli(['describe', '-'], {
    input: jobText({
      title: 'over\rwritten \u001b[2J',
      pictures: [{ size: '8 x 10 in' }],
      frame: { size: '11 x 14 in' },
    }),
  });
  expect(out).not.toMatch(/\r|\u001b/); // eslint-disable-line no-control-regex
});
