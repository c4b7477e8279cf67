/** `calibrate`: the sums of a trial square, and the sheet that tells how to cut it. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { runHere } from './run-cli';

const IN = 25.4;
const folder = await makeTempFolder();
const TRIAL = ['--scale', '2 in', '--borders', '1 31/32, 1 31/32, 2, 1 31/32', '--corners', '-1/64,0,-1/64,0', '--used-overcut', '1/16']; // prettier-ignore

describe('what was measured', () => {
  it('gives offset and overcut, worked by hand', async () => {
    const { code, out, err } = await runHere(['calibrate', ...TRIAL, '--json', '--board', '1/16']);
    expect([code, err]).toEqual([0, '']);
    const answer = JSON.parse(out) as { scaleOffset: number; overcut: number; cutter: object };
    // 2 less the mean of 1 31/32 three times and 2; 1/16 and half a 64th.
    expect(answer.scaleOffset / IN).toBeCloseTo(3 / 128, 12);
    expect(answer.overcut / IN).toBeCloseTo(1 / 16 + 1 / 128, 12);
    expect(answer.cutter).toEqual({
      scaleOffset: '0.0234 in',
      overcuts: [{ thickness: '1/16 in', overcut: '0.0703 in' }],
    });
    const told = await runHere(['calibrate', ...TRIAL]);
    expect(told.out).toMatch(/^Scale offset 0\.023 in: the scale must read 0\.023 in more/);
    expect(told.out).not.toContain('scaleOffset');
  });

  it('may have decimal commas, parted by semicolons, and one corner for all', async () => {
    const words = ['calibrate', '--scale', '50 mm', '--borders', '49,5; 49,6; 49,5; 49,4', '--corners', '0', '--json'];
    const answer = JSON.parse((await runHere(words)).out) as { scaleOffset: number; overcut: number };
    expect(answer.scaleOffset).toBeCloseTo(0.5, 9);
    expect(answer.overcut).toBe(0);
  });

  it('is doubted where it disagrees, and still answered', async () => {
    const words = ['calibrate', '--scale', '50 mm', '--borders', '48,50,50,50', '--corners', '0', '--json'];
    const { code, out, err } = await runHere(words);
    expect(code).toBe(0);
    expect(err).toContain('[calibration-disagrees]');
    expect((JSON.parse(out) as { problems: object[] }).problems).toMatchObject([{ at: 'borders' }]);
  });

  it.each([
    [[], 'value-missing', 'Give what was measured'],
    [['--scale', '2 in'], 'value-missing', '--borders and --corners are missing'],
    [['--scale', '2 in', '--borders', '1,1,1,1'], 'value-missing', '--corners is missing'],
    [['--scale', '2 in', '--corners', '0'], 'value-missing', '--borders is missing'],
    [['--scale', 'far', '--borders', '1,1,1,1', '--corners', '0'], 'length-unreadable', 'scale'],
    [['--scale', '0', '--borders', '1,1,1,1', '--corners', '0'], 'calibration-impossible', 'scale'],
    [['--scale', '1', '--borders', '1,1,0,1', '--corners', '0'], 'calibration-impossible', 'border'],
    [['--scale', '1', '--borders', '1,1,1,1', '--corners', '0', '--board', 'thick'], 'length-unreadable', 'board'],
  ])('that cannot be is refused: %j', async (words, problemCode, hint) => {
    const { code, out, err } = await runHere(['calibrate', ...words]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(`[${problemCode}]`);
    expect(err.toLowerCase()).toContain(hint.toLowerCase());
  });

  it.each([
    [['--borders', '1,1,1'], 'four lengths are wanted'],
    // Could be two corners or four tenths.
    [['--corners', '0,4'], 'one length, or four, are wanted'],
  ])('of the wrong number is misuse: %j', async (words, hint) => {
    const { code, out, err } = await runHere(['calibrate', '--scale', '1', ...words]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(hint);
  });
});

describe('the sheet', () => {
  it('is written once, and over itself only when asked', async () => {
    const words = ['calibrate', '--sheet', 'sheet.pdf', '--units', 'mm'];
    expect(await runHere(words, { folder })).toMatchObject({ code: 0, err: '' });
    expect((await readFile(join(folder, 'sheet.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
    await writeFile(join(folder, 'sheet.pdf'), 'mine');
    const again = await runHere(words, { folder });
    expect(again).toMatchObject({ code: 2, out: '' });
    expect(again.err).toContain('--replace');
    expect(await readFile(join(folder, 'sheet.pdf'), 'utf8')).toBe('mine');
    expect(await runHere([...words, '--replace'], { folder })).toMatchObject({ code: 0 });
    expect(await runHere(['calibrate', '--sheet', 'no/where.pdf'], { folder })).toMatchObject({ code: 2 });
  });
});
