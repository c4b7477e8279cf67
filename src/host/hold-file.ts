/** Lets one program at a time change a file: whoever made the mark beside it may, the others wait. */
import { randomUUID } from 'node:crypto';
import { readFile, rm, stat, writeFile } from 'node:fs/promises';
import { setTimeout } from 'node:timers/promises';
import { errorName } from './failure';

/** A mark older than this was left by a program that has ended, ms: what is done under it takes a few. */
const LEFT_BEHIND = 10_000;
const BETWEEN_LOOKS = 25;
/** Longer than any program holds a file, or than a mark left behind is minded, ms. */
const MOST_PATIENCE = 20_000;

/** @throws the file system's error where no mark can be made at all, `EBUSY` where another's stays. */
export async function holdFile<T>(path: string, work: () => Promise<T>): Promise<T> {
  const mark = `${path}.held`;
  const mine = randomUUID();
  const begun = Date.now();
  while (!(await makeMark(mark, mine))) {
    if (Date.now() - begun > MOST_PATIENCE) throw heldTooLong(mark);
    await clearLeftBehind(mark);
    await setTimeout(BETWEEN_LOOKS);
  }
  try {
    return await work();
  } finally {
    if ((await readFile(mark, 'utf8').catch(() => '')) === mine) await rm(mark, { force: true });
  }
}

/** False where another's is there. */
async function makeMark(mark: string, mine: string): Promise<boolean> {
  try {
    await writeFile(mark, mine, { flag: 'wx', mode: 0o600 });
    return true;
  } catch (error) {
    if (errorName(error) === 'EEXIST') return false;
    throw error;
  }
}

async function clearLeftBehind(mark: string): Promise<void> {
  const made = await stat(mark).catch(() => undefined);
  if (made && Date.now() - made.mtimeMs > LEFT_BEHIND) await rm(mark, { force: true });
}

function heldTooLong(mark: string): NodeJS.ErrnoException {
  return Object.assign(new Error(`${mark} is held by another program`), { code: 'EBUSY' });
}
