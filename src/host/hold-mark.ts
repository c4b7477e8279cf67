/**
 * The mark by which a program holds a file: a folder `FILE.held` beside it, with one folder in it that is named for the hold.
 *
 * Why no two programs change a file on one reading of it, whichever is stopped, killed or slow at whatever moment:
 *
 * 1. A hold comes into being by moving a folder that already holds its name to `FILE.held`. The system moves no folder over
 *    one that holds anything, so that there is at most one hold, and none without a name.
 * 2. No name is ever used twice, and a hold is ended, by its owner as by one who takes it over, only by taking away the folder of
 *    its very name. Who looked at a hold that is long gone therefore never ends the one that followed it.
 * 3. What is to lie in the file's place is written into the folder of the hold, and moved from there. That is one step of the
 *    system's: it is done while the hold stands, or fails for want of what was to be moved. Nothing has to be looked at before.
 * 4. The next hold can be made only when that folder is gone from `FILE.held`, hence when nothing can be moved out of it any more.
 *    So whatever the last holder did lies in its place before the next one reads, and the last one learns that it came too late.
 *
 * Whether a holder is still alive is thus a guess that costs time where it is wrong, never a count.
 */
import { createHash, randomUUID } from 'node:crypto';
import { chmod, mkdir, readdir, rename, rm, rmdir, stat, unlink } from 'node:fs/promises';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { errorName } from './failure';

export interface Mark {
  /** The folder in `FILE.held` that is there while the hold is; what is to be moved into place lies in it. */
  readonly own: string;
}

/** A hold that another program has. */
export interface Standing {
  readonly name: string;
  /** When it was last changed, in ms as the drive's clock has it; undefined: it can't be told. */
  readonly changed?: number;
  /** Its program was on this machine and is gone. */
  readonly isDead: boolean;
  /** Ends this hold and no other; where the system won't have it now, it stays. */
  end(): Promise<void>;
}

const NAME = /^([0-9a-f]{8})-(\d+)-[0-9a-f-]{36}$/;
/** Told apart, since one number means two programs on two machines that share a drive. */
const MACHINE = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);

/**
 * Undefined where another's stands.
 *
 * @throws the file system's error where no mark can be made at all.
 */
export async function makeMark(path: string): Promise<Mark | undefined> {
  const name = `${MACHINE}-${process.pid}-${randomUUID()}`;
  const [folder, draft] = [`${path}.held`, join(dirname(path), `${draftStart(path)}held-${name}`)];
  // Whoever may change the file's folder may end a hold in it.
  const { mode } = await stat(dirname(path));
  try {
    for (const part of [draft, join(draft, name)]) {
      await mkdir(part);
      await chmod(part, mode & 0o2777).catch(() => undefined);
    }
    return (await isMoved(draft, folder)) ? { own: join(folder, name) } : undefined;
  } finally {
    await rm(draft, { recursive: true, force: true });
  }
}

async function isMoved(draft: string, folder: string): Promise<boolean> {
  try {
    await rename(draft, folder);
    return true;
  } catch (error) {
    if (STANDS.has(errorName(error))) return false;
    throw error;
  }
}

/** What systems say where a folder would be moved over another's, the last three on Windows. */
const STANDS = new Set(['ENOTEMPTY', 'EEXIST', 'ENOTDIR', 'EPERM', 'EACCES', 'EBUSY']);

export async function endMark({ own }: Mark): Promise<void> {
  await rm(own, { recursive: true, force: true }).catch(() => undefined);
  // With another's hold in it by now it is not empty, and stays.
  await rmdir(dirname(own)).catch(() => undefined);
}

/** Undefined where none stands any more. */
export async function standingMark(path: string): Promise<Standing | undefined> {
  const folder = `${path}.held`;
  try {
    const names = await readdir(folder);
    const name = names.find((one) => NAME.test(one));
    if (name === undefined) {
      // Left empty by one that was ended in between. Something else than ours in it is left alone.
      if (names.length === 0) return void (await rmdir(folder).catch(() => undefined));
      return { name: '', isDead: false, end: () => Promise.resolve() };
    }
    const own = join(folder, name);
    const { mtimeMs: changed } = await stat(own);
    return { name, changed, isDead: isDead(name), end: () => endMark({ own }) };
  } catch (error) {
    if (errorName(error) === 'ENOENT') return undefined;
    if (errorName(error) === 'ENOTDIR') return fileMark(folder);
    return { name: '', isDead: false, end: () => Promise.resolve() };
  }
}

/** Earlier versions made a file of it; taking that away never takes away a folder. */
async function fileMark(path: string): Promise<Standing | undefined> {
  const found = await stat(path).catch(() => undefined);
  const end = () => unlink(path).catch(() => undefined);
  return found && { name: '', changed: found.mtimeMs, isDead: false, end };
}

/** Takes away what ended programs left beside the file, older than `age` in ms; all of it has names that only we give. */
export async function clearDrafts(path: string, age: number): Promise<void> {
  const [folder, start] = [dirname(path), draftStart(path)];
  const names = await readdir(folder).catch(() => []);
  for (const name of names) {
    if (!name.startsWith(start) || !DRAFT.test(name.slice(start.length))) continue;
    const found = await stat(join(folder, name)).catch(() => undefined);
    if (found && Date.now() - found.mtimeMs > age)
      await rm(join(folder, name), { recursive: true, force: true }).catch(() => undefined);
  }
}

/** Of a mark, and of whole saves (`save-whole.ts`) of the file and of the record that a stock has beside it. */
const DRAFT =
  /^(held-[0-9a-f]{8}-\d+-|last-use\.json\.)?[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}$/;

function draftStart(path: string): string {
  return `.${basename(path).slice(0, 100)}.`;
}

function isDead(name: string): boolean {
  const [, machine, program] = NAME.exec(name) ?? [];
  if (machine !== MACHINE) return false;
  try {
    process.kill(Number(program), 0);
    return false;
  } catch (error) {
    return errorName(error) === 'ESRCH';
  }
}
