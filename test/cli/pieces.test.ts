/** `pieces` in the words of its help: the answer, its data, its table, several jobs, and what it refuses. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const folder = await makeTempFolder();
const FERN = 'resources/samples/2-fern-cyanotype.json';
const LINOCUTS = 'resources/samples/3-nine-linocuts.json';
const SHELF = ['--shelf', 'test/cli/shelves/workshop.csv'];

interface Answer {
  readonly ok: boolean;
  readonly kerf: number;
  readonly frames: readonly {
    readonly title: string;
    readonly moulding: { readonly stick: number; readonly united: number };
    readonly pieces: readonly { readonly name: string }[];
    readonly weight: { readonly counted: { readonly nominal: number }; readonly notCounted: readonly string[] };
    readonly costs?: { readonly counted: string };
  }[];
  readonly sticks: readonly { readonly plan: { readonly sticks: readonly unknown[]; readonly atLeast: number } }[];
  readonly problems: readonly { readonly code: string; readonly at: string }[];
}

async function data(words: readonly string[], code = 0): Promise<Answer> {
  const ran = await runHere(['pieces', ...words, '--json']);
  expect(ran.code).toBe(code);
  return JSON.parse(ran.out) as Answer;
}

async function file(name: string, text: string): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
}

const plain = jobText({
  title: 'Plain',
  pictures: [{ size: '8 x 10 in' }],
  frame: { size: '16 x 20 in', allowance: 0, lip: 0, mouldingWidth: '2 in' },
});

describe('the answer', () => {
  it('in words has the moulding, the pieces, the weight and the sticks, with the cautions', async () => {
    const { code, out, err } = await runHere(['pieces', '-', '--stick', '9 ft', '--kerf', '0'], { input: plain });
    expect([code, err]).toEqual([0, '']);
    // Common practice, no source: an opening of 16 x 20 in of 2 in moulding takes 88 in.
    expect(out).toMatch(/Whole stick +88 in +2 x \(16 \+ 20\) \+ 8 x \(2 − 0\)\n/);
    expect(out).toMatch(/Rule of thumb +88 in .*: the same\n/);
    expect(out).toMatch(/United inches +36 in/);
    expect(out).toMatch(/1 x +Glazing +glass +0\.098 in +16 x 20 in +16 x 20 in/);
    // 1.290 kg of glass of 2.5 mm.
    expect(out).toMatch(/Glazing +2\.8 lb/);
    expect(out).toMatch(/Backing +not counted/);
    expect(out).toMatch(/1 stick of 108 in +proven/);
    expect(out).toContain('gloves');
  });

  it('as data has everything in mm and kg', async () => {
    const { frames, sticks, ok } = await data([FERN, '--stick', '3000 mm']);
    expect(ok).toBe(true);
    expect(frames[0]!.pieces.map(({ name }) => name)).toContain('Mat layer 1');
    expect(frames[0]!.weight.counted.nominal).toBeGreaterThan(0.3);
    expect(frames[0]!.weight.notCounted).toContain('the frame');
    expect(sticks[0]!.plan.atLeast).toBe(1);
  });

  it('as a table has a row for every piece and the rails', async () => {
    const { code, out } = await runHere(['pieces', FERN, LINOCUTS, '--csv']);
    expect(code).toBe(0);
    const rows = out.trimEnd().split('\r\n');
    expect(rows[0]).toMatch(/^frame,title,piece,/);
    const { frames } = await data([FERN, LINOCUTS]);
    expect(rows).toHaveLength(1 + frames.reduce((sum, { pieces }) => sum + 2 + pieces.length, 0));
  });
});

describe('several jobs', () => {
  it('share the sticks of one moulding, and have their costs', async () => {
    const { frames, sticks, problems } = await data([FERN, LINOCUTS, ...SHELF, '--moulding', 'ash, plain']);
    expect(frames.map(({ costs }) => Number(costs?.counted) > 10)).toEqual([true, true]);
    expect(sticks).toHaveLength(1);
    expect(problems.some(({ code }) => code === 'moulding-differs')).toBe(true);
  });

  it('say of which file a problem is, and fail where one of them does', async () => {
    const wrong = await file('wrong.json', jobText({ pictures: [{ size: '8 x 10 in' }], frame: { size: '6 x 6 in' } }));
    const { ok, problems } = await data([FERN, wrong], 1);
    expect(ok).toBe(false);
    expect(problems.every(({ at }) => at.startsWith(wrong) || at.startsWith(FERN))).toBe(true);
    expect(await data([wrong, 'nowhere.json'], 2)).toMatchObject({ ok: false });
  });

  it('read standard input once', async () => {
    const { code, err } = await runHere(['pieces', '-', '-'], { input: plain });
    expect([code, err.includes('once')]).toEqual([2, true]);
  });
});

describe('what is refused', () => {
  it.each([
    [['--kerf', '1/8'], '[length-unreadable]'],
    [['--kerf', '5'], 'write "5 in" or "5 mm"'],
    [['--stick', '0 in'], 'it must be more than 0 in'],
    [['--stick', 'long'], '[length-unreadable]'],
    [['--moulding', 'Ash, plain'], '[moulding-unknown]'],
    [[...SHELF, '--moulding', 'Elm'], '[moulding-unknown]'],
    [['--shelf', 'nowhere.csv'], 'is not there'],
    [['--json', '--csv'], 'cannot be used with'],
  ])('%j', async (words, hint) => {
    const { code, out, err } = await runHere(['pieces', FERN, ...words]);
    expect([code, words.includes('--json') || out === '']).toEqual([2, true]);
    expect(err).toContain(hint);
  });

  it('a shelf with a wrong cell says its file, line and column', async () => {
    const shelf = await file('shelf.csv', 'kind,name,face\nmoulding,Ash,wide\n');
    const { code, err } = await runHere(['pieces', FERN, '--shelf', shelf]);
    expect(code).toBe(2);
    expect(err).toContain(`${shelf} line 2, column face`);
  });

  it('a stick that is too short is told, and the rest answered', async () => {
    const { code, out, err } = await runHere(['pieces', FERN, '--stick', '10 in']);
    expect(code).toBe(0);
    expect(err).toContain('[rail-longer-than-stick]');
    expect(out).toContain('Cuts list');
  });
});
