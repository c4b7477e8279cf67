/** One program at a time: none that is stopped, killed or slow makes another's change, or its own, be lost. */
import { fork, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { build } from 'rolldown';
import { afterAll, describe, expect, it } from 'vitest';
import { holdFile } from '../../src/host/hold-file';
import { makeTempFolder } from '../helpers/temp-folder';
import type { Word } from './counting-program';

const root = await makeTempFolder();
const program = join(root, 'counting-program.mjs');
await build({ input: resolve('test/host/counting-program.ts'), platform: 'node', output: { file: program, format: 'esm' }, logLevel: 'silent' }); // prettier-ignore

let made = 0;
async function counter(): Promise<string> {
  const folder = join(root, `counter-${(made += 1)}`);
  await mkdir(folder);
  await writeFile(join(folder, 'count'), '0');
  return join(folder, 'count');
}

const children: ChildProcess[] = [];
afterAll(() => children.forEach((child) => child.kill('SIGKILL')));

interface Counting {
  readonly child: ChildProcess;
  /** Counts that it was told are saved. */
  counted: number;
  readonly ended: Promise<void>;
  heard(word: Word): Promise<void>;
}

function count(path: string, turns: number, { leftBehind = 300, waitsAt = '' } = {}): Counting {
  const child = fork(program, [path, String(turns), String(leftBehind), waitsAt]);
  children.push(child);
  const waiting = new Map<Word, () => void>();
  const counting: Counting = {
    child,
    counted: 0,
    // What it told last comes before the channel closes.
    ended: Promise.all([once(child, 'exit'), once(child, 'disconnect')]).then(() => undefined),
    heard: (word) => new Promise((resolve) => waiting.set(word, resolve)),
  };
  child.on('message', (word: Word) => {
    if (word === 'counted') counting.counted += 1;
    waiting.get(word)?.();
  });
  return counting;
}

const numberIn = async (path: string) => Number(await readFile(path, 'utf8'));
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const add = (path: string, leftBehind?: number) =>
  holdFile(path, async (hold) => hold.save(path, Buffer.from(String((await numberIn(path)) + 1))), leftBehind === undefined ? {} : { leftBehind }); // prettier-ignore

describe('a program that holds the file', () => {
  it.each(['read', 'ready'] as const)(
    'and is stopped where it is %s begins anew on what others have saved meanwhile',
    async (waitsAt) => {
      const path = await counter();
      const stopped = count(path, 1, { waitsAt });
      await stopped.heard(waitsAt);
      stopped.child.kill('SIGSTOP');
      stopped.child.send('go on');
      await add(path, 200);
      await add(path, 200);
      expect(await numberIn(path)).toBe(2);
      stopped.child.kill('SIGCONT');
      await stopped.ended;
      expect([stopped.counted, await numberIn(path)]).toEqual([1, 3]);
      expect(await readdir(join(path, '..'))).toEqual(['count']);
    },
  );

  it('begins anew where a program that knows of no holds has changed the file since it was read', async () => {
    const path = await counter();
    const found: string[] = [];
    await holdFile(path, async (hold) => {
      found.push(await readFile(path, 'utf8'));
      const isAsSeen = async () => (await readFile(path, 'utf8')) === found.at(-1);
      if (found.length === 1) await writeFile(path, '7');
      await hold.save(path, Buffer.from(`${found.at(-1)}1`), { isAsSeen });
    });
    expect([found, await readFile(path, 'utf8')]).toEqual([['0', '7'], '71']);
  });

  it('and is killed is not waited for, and leaves nothing behind', async () => {
    const path = await counter();
    const killed = count(path, 1, { waitsAt: 'ready' });
    await killed.heard('ready');
    killed.child.kill('SIGKILL');
    await killed.ended;
    let waited = false;
    await holdFile(path, (hold) => hold.save(path, Buffer.from('1')), { onWait: () => (waited = true) });
    expect([waited, await readdir(join(path, '..'))]).toEqual([false, ['count']]);
  });

  it('is waited for, which is said once when it is felt, and in the end reported', async () => {
    const path = await counter();
    let told = 0;
    await holdFile(path, async () => {
      await expect(holdFile(path, () => Promise.resolve(), { leftBehind: 300, onWait: () => (told += 1) })).resolves.toBeUndefined(); // prettier-ignore
    });
    expect(told).toBe(0);
    await mkdir(`${path}.held`);
    await writeFile(join(`${path}.held`, 'something of the user’s own'), '');
    await expect(holdFile(path, () => Promise.resolve(), { patience: 700, onWait: () => (told += 1) })).rejects.toMatchObject({ code: 'EBUSY' }); // prettier-ignore
    expect([told, await readdir(`${path}.held`)]).toEqual([1, ['something of the user’s own']]);
  });
});

describe('of many that find a hold left behind', () => {
  it.each([1, 2, 3])('each counts, for one alone follows on another (%i)', async () => {
    const path = await counter();
    const killed = count(path, 1, { waitsAt: 'ready' });
    await killed.heard('ready');
    killed.child.kill('SIGKILL');
    await killed.ended;
    const others = [count(path, 8), count(path, 8)];
    await Promise.all(Array.from({ length: 24 }, () => add(path)));
    await Promise.all(others.map(({ ended }) => ended));
    expect(await numberIn(path)).toBe(40);
  });

  it('by an earlier version each counts too', async () => {
    const path = await counter();
    await writeFile(`${path}.held`, 'somebody');
    const longAgo = new Date(Date.now() - 60_000);
    await utimes(`${path}.held`, longAgo, longAgo);
    await Promise.all(Array.from({ length: 24 }, () => add(path)));
    expect(await numberIn(path)).toBe(24);
  });
});

it('stopped, gone on and killed at any moment, programs lose no count', async () => {
  const path = await counter();
  const all = Array.from({ length: 4 }, () => count(path, 10_000, { leftBehind: 60 }));
  // Pauses of odd lengths, some longer than a hold is minded, so that every part of the work is met.
  for (let turn = 0; turn < 50; turn += 1) {
    const one = all.at(-1 - (turn % 3)) as Counting;
    one.child.kill('SIGSTOP');
    await pause(3 + ((turn * 37) % 110));
    one.child.kill(turn % 6 === 5 ? 'SIGKILL' : 'SIGCONT');
    if (turn % 6 === 5) all.push(count(path, 10_000, { leftBehind: 60 }));
  }
  for (const { child } of all) child.kill('SIGKILL');
  await Promise.all(all.map(({ ended }) => ended));
  const counted = all.reduce((sum, one) => sum + one.counted, 0);
  // One that was killed may have saved a count that it could not tell any more.
  expect(counted).toBeGreaterThan(50);
  expect(await numberIn(path)).toBeGreaterThanOrEqual(counted);
  expect(await numberIn(path)).toBeLessThanOrEqual(counted + all.length);
  await add(path);
  expect((await readdir(join(path, '..'))).filter((name) => name.endsWith('.held'))).toEqual([]);
});

it('drafts that ended programs left are cleared, and nothing else', async () => {
  const path = await counter();
  const folder = join(path, '..');
  const id = '3f9a3a3e-6a70-4a3e-9a54-1d2f0c9b8a77';
  const old = [`.count.${id}`, `.count.last-use.json.${id}`, `.count.held-0123abcd-77-${id}`];
  const stay = ['.count.note', `.other.${id}`, `count.${id}`, `.count.copy.${id}`];
  const longAgo = new Date(Date.now() - 3_600_000);
  for (const name of [...old, ...stay]) {
    await writeFile(join(folder, name), '');
    await utimes(join(folder, name), longAgo, longAgo);
  }
  await writeFile(join(folder, `.count.${id.replace('3f9a', '4f9a')}`), 'just being written');
  await add(path);
  expect((await readdir(folder)).sort()).toEqual([...stay, `.count.${id.replace('3f9a', '4f9a')}`, 'count'].sort());
  await rm(folder, { recursive: true });
});
