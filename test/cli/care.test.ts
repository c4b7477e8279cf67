/** `care`: cautions first, the grade or why there is none, sources by number, costs from a shelf, the same as data. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const folder = await makeTempFolder();
const fern = 'resources/samples/2-fern-cyanotype.json';
const shelf = ['--shelf', 'test/cli/shelves/boards-and-glazing.csv'];

describe('care', () => {
  it('says why there is no grade, and what the first would take', async () => {
    const { code, out, err } = await runHere(['care', fern]);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      /^Care of the build: Lady fern, cyanotype\n {2}No grade yet: without knowing the boards there is none/,
    );
    expect(out).toContain('it certifies nothing');
    expect(out).toContain('What the grade “protective” would take');
    expect(out).toContain('no shelf is given to price it by');
  });

  it('puts the caution before all else', async () => {
    const input = jobText({
      pictures: [{ title: 'Heron', size: '8 x 10 in', kind: 'pastel or charcoal', concerns: ['old'] }],
      frame: { size: '11 x 14 in' },
    });
    const { out, err } = await runHere(['care', '-'], { input });
    expect(out).toMatch(/^First of all\n {2}“Heron” is said to be old: ask a conservator/);
    expect(err).toContain('[ask-conservator]');
  });

  it('numbers its sources, each once, and names every number it uses', async () => {
    const { out } = await runHere(['care', fern]);
    const [text, list] = out.split('\nSources\n');
    const listed = [...list!.matchAll(/^ +\[(\d+)\] /gm)].map(([, number]) => Number(number));
    expect(listed).toEqual(listed.map((_, index) => index + 1));
    const used = [...text!.matchAll(/\[([\d, \n]+)\]/g)].flatMap(([, numbers]) => numbers!.split(',').map(Number));
    expect([...new Set(used)].sort((a, b) => a - b)).toEqual(listed);
    expect(out.split('\n').every((line) => line.length <= 100)).toBe(true);
  });

  it('prices steps by a shelf', async () => {
    const { out, err } = await runHere(['care', fern, ...shelf]);
    expect(err).toBe('');
    expect(out.replace(/\s+/g, ' ')).toContain(
      // One sheet of the top layer's board gives all three pieces.
      '8.80 less: “Soft white” in place of “Prussian blue”, bought together with mat layer 1',
    );
    expect(out).toMatch(/Cost: 8\.80 less for 3 of 4 steps, and 1 not counted\. It is by how much/);
  });

  it('gives the same as data, amounts exact', async () => {
    const { out } = await runHere(['care', '--json', fern, ...shelf]);
    const data = JSON.parse(out) as Record<string, unknown>;
    expect(data).toMatchObject({ ok: true, unknown: ['layer 1', 'layer 2', 'mount board'], problems: [] });
    expect(data).not.toHaveProperty('grade');
    expect(data['next']).toMatchObject({ grade: 'protective', cost: '-8.8', notCounted: 1 });
    expect(data['items']).toContainEqual(expect.objectContaining({ key: 'glazing', grade: 'protective', known: true }));
  });

  it('refuses a shelf that is not there, and one with a fault, with its place', async () => {
    expect(await runHere(['care', fern, '--shelf', 'nowhere.csv'])).toMatchObject({ code: 2, out: '' });
    const path = join(folder, 'wrong.csv');
    await writeFile(path, 'kind,name,ph\nboard,White,acid\n');
    const { code, err } = await runHere(['care', fern, '--shelf', path]);
    expect(code).toBe(2);
    expect(err).toMatch(/line 2, column ph\s+\[number-unreadable\]/);
  });
});

it('check tells the dangers that a job says', async () => {
  const input = jobText({
    pictures: [{ size: '8 x 10 in' }],
    frame: { size: '11 x 14 in' },
    package: { hinging: { method: 'self-adhesive tape' } },
  });
  const { code, out } = await runHere(['check', '-'], { input });
  expect(code).toBe(0);
  expect(out).toContain('[tape-on-picture]');
});
