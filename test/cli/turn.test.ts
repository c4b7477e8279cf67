/** `turn` in the words of its help: the job it answers, where it is written, and what it refuses. */
import { readdir, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { WrittenJob } from '../../src/core/job/written';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere, type Ran } from './run-cli';

const chart = resolve('resources/samples/1-sea-chart.json');
const fern = resolve('resources/samples/2-fern-cyanotype.json');
const linocuts = resolve('resources/samples/3-nine-linocuts.json');

const jobOf = ({ out }: Ran) => JSON.parse(out) as WrittenJob;

describe('turn', () => {
  it('answers a job file, turned left when nothing is said', async () => {
    const ran = await runHere(['turn', chart]);
    expect([ran.code, ran.err]).toEqual([0, '']);
    expect(jobOf(ran)).toMatchObject({
      frame: { readyMade: '20x16 in' },
      windows: { kind: 'window', picture: 'chart', turned: 90 },
    });
    expect(await runHere(['turn', chart, '--left'])).toMatchObject({ code: 0, out: ran.out });
    const back = await runHere(['turn', '-', '--right'], { input: ran.out });
    expect(jobOf(back)).toEqual({ ...JSON.parse(await readFile(chart, 'utf8')), windows: 'chart' });
  });

  it('tells where a weighted rule had to give way', async () => {
    const ran = await runHere(['turn', fern, '--mirror', 'top-bottom']);
    expect(ran.code).toBe(0);
    expect(ran.err).toContain('[borders-held]');
    // A window of 8 1/4 x 10 7/8 in leaves 7 3/4 in across and 9 1/8 in up, of which the bottom had 3/4 in more than the top.
    expect(jobOf(ran).borders).toEqual({ rule: 'by-hand', left: '3 7/8', bottom: '4 3/16' });
  });

  it('moves one item alone', async () => {
    const ran = await runHere(['turn', linocuts, '--mirror', 'left-right', '--item', 'windows']);
    expect([ran.code, ran.err]).toEqual([0, '']);
    const { windows, borders } = jobOf(ran);
    expect((windows as { items: string[] }).items.slice(0, 3)).toEqual(['lighthouse', 'hedgehog', 'heron']);
    expect(borders).toEqual({ rule: 'height-share', share: '45:55' });
  });

  it('writes a file, and over one only when that is said', async () => {
    const folder = await makeTempFolder();
    const words = ['turn', chart, '--out', 'turned.json'];
    expect(await runHere(words, { folder })).toMatchObject({ code: 0, out: 'The turned job is in turned.json.\n' });
    expect(JSON.parse(await readFile(join(folder, 'turned.json'), 'utf8'))).toMatchObject({ frame: { readyMade: '20x16 in' } });
    const again = await runHere(words, { folder });
    expect(again).toMatchObject({ code: 2, out: '' });
    expect(again.err).toContain('Write over it with --replace');
    expect(await runHere([...words, '--replace'], { folder })).toMatchObject({ code: 0 });
    expect(await readdir(folder)).toEqual(['turned.json']);
  }); // prettier-ignore

  it('gives the job that no longer fits, with what is wrong with it', async () => {
    const input = jobText({ pictures: [{ size: '8 x 10 in' }], frame: { size: '9 x 14 in' } });
    const ran = await runHere(['turn', '-', '--item', 'windows', '--json'], { input });
    expect(ran.code).toBe(1);
    expect(JSON.parse(ran.out)).toMatchObject({ ok: false, job: { windows: { turned: 90 } } });
    expect(ran.err).toContain('error');
  });

  it.each([
    [['--right', '--left'], 2, "'--right' cannot be used with option '--left'"],
    [['--mirror', 'over'], 2, 'Allowed choices are left-right, top-bottom'],
    [['--item', 'windows.items[70]'], 2, '[item-unknown]'],
  ] as const)('%j is refused', async (more, code, hint) => {
    const ran = await runHere(['turn', linocuts, ...more]);
    expect([ran.code, ran.out]).toEqual([code, '']);
    expect(ran.err).toContain(hint);
  });

  it('refuses what can not be turned, with what would do', async () => {
    const windows = {
      kind: 'grid',
      columns: 2,
      items: ['1', '1', '1'].map(() => ({ kind: 'window', size: '4 x 6 in' })),
    };
    const ran = await runHere(['turn', '-'], { input: jobText({ windows }) });
    expect([ran.code, ran.out]).toEqual([1, '']);
    expect(ran.err).toContain('[turn-of-unfilled-grid]');
    expect(ran.err).toContain('Fill the row');
  });
});
