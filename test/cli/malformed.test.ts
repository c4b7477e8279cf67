/** Hundreds of malformed jobs: each gives problems or is refused as unreadable, none a stack trace, none a file. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Problem } from '../../src/core/problem';
import { jsonIn } from '../helpers/markdown';
import { makeTempFolder } from '../helpers/temp-folder';
import { malformedJob, MUTATIONS, SPOILINGS } from './mutate';
import { runCli, runHere, type Ran } from './run-cli';

const samples = readdirSync('resources/samples')
  .filter((name) => name.endsWith('.json'))
  .map((name) => JSON.parse(readFileSync(`resources/samples/${name}`, 'utf8')) as unknown);
const jobs = [...samples, ...jsonIn(readFileSync('resources/README.md', 'utf8'))];

const folder = await makeTempFolder();
const filesIn = () => readdirSync(folder, { recursive: true });

/** The same jobs in every run; another number, or more of them, to search further. */
const seed = Number(process.env['MALFORMED_SEED'] ?? 25_400);
const runs = Number(process.env['MALFORMED_RUNS'] ?? 320);

/** What holds of every answer, whatever was asked. */
function expectDecent({ code, out, err }: Ran): void {
  expect([0, 1, 2]).toContain(code);
  const told = out + err;
  expect(told).not.toMatch(/\n\s+at .*:\d+/);
  expect(told).not.toMatch(/internal fault|A fault stopped this|is not a function|Cannot read prop/);
}

it('starts from jobs that can be cut', async () => {
  expect(jobs.length).toBeGreaterThanOrEqual(5);
  for (const job of jobs) {
    const { code } = await runHere(['check', '-'], { input: JSON.stringify(job) });
    expect(code).toBe(0);
  }
});

it('refuses every malformed job, tells why, and writes nothing', async () => {
  const refused = new Map<string, number>();
  let count = 0;
  await fc.assert(
    fc.asyncProperty(malformedJob(jobs), async ({ ways, text }) => {
      const checked = await runHere(['check', '--json', '-'], { input: text });
      expectDecent(checked);
      const { ok, problems } = JSON.parse(checked.out) as { ok: boolean; problems: Problem[] };
      expect(ok).toBe(checked.code === 0);
      // Some changes leave a job that can be cut, such as a note that is missing.
      if (ok) return expectDecent(await runHere(['describe', '-'], { input: text }));
      count += 1;
      for (const way of ways) refused.set(way, (refused.get(way) ?? 0) + 1);
      expect(problems.some(({ severity }) => severity === 'error')).toBe(true);
      for (const { message, code } of problems) {
        expect(message.length).toBeGreaterThan(10);
        expect(message.length).toBeLessThan(1500);
        // Words of ours are never what JavaScript says where it has no words; what was typed is only told again.
        const slips = ['NaN', 'undefined', '[object'].filter((slip) => !text.includes(slip));
        expect(slips.filter((slip) => message.includes(slip))).toEqual([]);
        expect(code).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
      }
      for (const words of [
        ['export', '-'],
        ['export', '-', '--json', '--out', 'new'],
        ['describe', '-'],
      ]) {
        const ran = await runHere(words, { input: text, folder });
        expectDecent(ran);
        expect(ran.code).toBe(checked.code);
        expect(ran.err).not.toBe('');
      }
      expect(filesIn()).toEqual([]);
    }),
    { seed, numRuns: runs },
  );
  expect(count).toBeGreaterThanOrEqual(100);
  expect([...refused.keys()].sort()).toEqual([...Object.keys(MUTATIONS), ...Object.keys(SPOILINGS)].sort());
  expect(Object.keys({}.constructor.prototype as object)).not.toContain('polluted');
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
}, 120_000);

it('does so in the built program too', async () => {
  const some = fc.sample(malformedJob(jobs), { seed, numRuns: 8 });
  for (const { text } of some) {
    const here = await runHere(['check', '-'], { input: text });
    if (here.code === 0) continue;
    const ran = await runCli(['export', '-', '--out', 'new'], { input: text, folder });
    expectDecent(ran);
    expect(ran.code).toBe(here.code);
    expect(ran.out).toBe('');
    expect(filesIn()).toEqual([]);
  }
}, 60_000);
