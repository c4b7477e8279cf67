/** `--cutter FILE#NAME`: the named cutter's measures in the plan, and what is said where it can't be had. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseCutters } from '../../src/core/job/cutter-list';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const IN = 25.4;
const folder = await makeTempFolder();
const job = jobText({
  pictures: [{ size: '8 x 10 in' }],
  frame: { size: '16 x 20 in' },
  cutting: { cutter: { name: 'The job’s own', scaleOffset: '1/4 in' } },
});
const list = {
  format: 'matwright-cutters',
  version: 1,
  cutters: [
    { name: 'Bench', reach: '5 in', scaleOffset: '1/32 in', overcuts: [{ thickness: '1/16 in', overcut: '3/64 in' }] },
    { name: 'Long #2', waste: 'left' },
  ],
};
const write = async (name: string, value: unknown) => {
  await writeFile(join(folder, name), typeof value === 'string' ? value : JSON.stringify(value));
  return name;
};
const run = (cutter: string, ...words: string[]) =>
  runHere(['describe', '--json', '-', '--cutter', cutter, ...words], { input: job, folder });

interface Answer {
  readonly plan: {
    readonly waste: string;
    readonly cutter: { readonly name: string; readonly scaleOffset?: number };
    readonly layers: { readonly overcut: { readonly length: number; readonly from: string } }[];
  };
  readonly problems: {
    readonly code: string;
    readonly at: string;
    readonly message: string;
    readonly remedy?: string;
  }[];
}
const answer = ({ out }: { out: string }) => JSON.parse(out) as Answer;

describe('the cutter of a list', () => {
  it('takes the place of the job’s own', async () => {
    await write('list.json', list);
    const { plan, problems } = answer(await run('list.json#Bench'));
    expect(plan.cutter).toMatchObject({ name: 'Bench', scaleOffset: IN / 32 });
    expect(plan.layers[0]!.overcut.from).toBe('cutter');
    expect(plan.layers[0]!.overcut.length).toBeCloseTo((3 / 64) * IN, 12);
    // 16 - 7 3/4 leaves 4 1/8 in at the sides, 20 - 9 3/4 leaves 5 1/8 in above and below.
    expect(problems.map(({ code }) => code)).toContain('beyond-reach');
    const other = answer(await run('list.json#Long #2'));
    expect(other.plan.waste).toBe('left');
    expect(other.plan.cutter.scaleOffset).toBeUndefined();
  });

  it('is found in a file whose own name or folder holds the sign', async () => {
    await mkdir(join(folder, 'shed #1'));
    await write('shed #1/cutters #3.json', list);
    expect(answer(await run('shed #1/cutters #3.json#Long #2')).plan.cutter.name).toBe('Long #2');
  });

  it('needs no name where it is the only one, by itself or in a list', async () => {
    await write('one.json', list.cutters[0]);
    await write('list-of-one.json', { ...list, cutters: [list.cutters[1]] });
    expect(answer(await run('one.json')).plan.cutter.name).toBe('Bench');
    expect(answer(await run('list-of-one.json')).plan.cutter.name).toBe('Long #2');
  });

  it('goes into what is exported', async () => {
    await write('job.json', job);
    const words = ['export', 'job.json', '--only', 'cut-list', '--cutter', 'list.json#Long #2', '--json', '--replace'];
    expect(await runHere(words, { folder })).toMatchObject({ code: 0 });
    const csv = await readFile(join(folder, 'job-cut-list.csv'), 'utf8');
    const own = ['export', 'job.json', '--only', 'cut-list', '--json', '--replace'];
    expect(await runHere(own, { folder })).toMatchObject({ code: 0 });
    // With the waste on the left the cuts run the other way round.
    expect(csv).not.toBe(await readFile(join(folder, 'job-cut-list.csv'), 'utf8'));
    // The job's file itself is not touched.
    expect(await readFile(join(folder, 'job.json'), 'utf8')).toBe(job);
  });

  it('can be had of the list that comes with the program', async () => {
    const read = parseCutters(await readFile('resources/cutters.json', 'utf8'));
    expect(read).toMatchObject({ ok: true, problems: [] });
    const told = await runHere(['describe', 'resources/samples/1-sea-chart.json', '--cutter', 'resources/cutters.json#Hand cutter']); // prettier-ignore
    expect(told).toMatchObject({ code: 0 });
    expect(told.out).toContain('(scale ');
  });

  it('mends a job whose own cutter is wrong', async () => {
    const broken = jobText({ pictures: [{ size: '8 x 10 in' }], cutting: { cutter: { name: 'x', reach: 'far' } } });
    expect(await runHere(['describe', '-'], { input: broken, folder })).toMatchObject({ code: 1 });
    expect(await runHere(['describe', '-', '--cutter', 'list.json#Long #2'], { input: broken, folder })).toMatchObject({
      code: 0,
    });
  });

  it('leaves what stands twice in the job told', async () => {
    const twice = job.replace('"version":1', '"version":1,"title":"One","title":"Two"');
    const { problems } = answer(
      await runHere(['describe', '--json', '-', '--cutter', 'list.json#Long #2'], { input: twice, folder }),
    );
    expect(problems.map(({ code, at }) => [code, at])).toContainEqual(['key-twice', 'title']);
  });
});

describe('where it cannot be had', () => {
  const refused = async (cutter: string) => {
    const ran = await run(cutter);
    expect(ran.code).toBe(2);
    expect(ran.err).not.toBe('');
    return answer(ran).problems;
  };

  it('the nearest name and those there are are told', async () => {
    const [problem] = await refused('list.json#Bensh');
    expect(problem).toMatchObject({ code: 'cutter-unknown', at: 'list.json', remedy: 'write list.json#Bench' });
    expect(problem!.message).toContain('“Bench” and “Long #2”');
    expect(problem!.message).toContain('Is “Bench” meant?');
    const [far] = await refused('list.json#Something else altogether');
    expect(far!.message).not.toContain('meant?');
  });

  it('several without a name, none at all, no file, no list, or a wrong measure are each told', async () => {
    expect(await refused('list.json')).toMatchObject([{ code: 'cutter-not-named', remedy: 'write list.json#Bench' }]);
    await write('none.json', { ...list, cutters: [] });
    expect(await refused('none.json')).toMatchObject([{ code: 'cutter-unknown' }]);
    expect(await refused('gone.json#Bench')).toMatchObject([{ code: 'not-found' }]);
    expect((await refused('gone.json#Bench'))[0]!.message).not.toContain('#');
    await write('torn.json', '{ "format": "matwright-cut');
    expect(await refused('torn.json#Bench')).toMatchObject([{ code: 'not-json', at: 'torn.json' }]);
    await write('bare.json', { name: 'Bench', reach: 20 });
    expect(await refused('bare.json')).toMatchObject([
      { code: 'cutter-length-without-unit', at: 'bare.json cutter.reach' },
    ]);
    expect((await refused(resolve(folder)))[0]).toMatchObject({ code: 'not-a-file' });
  });
});
