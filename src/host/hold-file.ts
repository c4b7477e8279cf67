/** Lets one program at a time change a file: whoever holds it may, the others wait; see `hold-mark.ts` for why that holds. */
import { randomUUID } from 'node:crypto';
import { realpath, rename, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { errorName } from './failure';
import { clearDrafts, endMark, makeMark, standingMark, type Mark, type Standing } from './hold-mark';
import { putInPlace } from './save-whole';

export interface Hold {
  /** The file itself, where it was named through a link. */
  readonly path: string;
  /**
   * Puts bytes in the place of a file in the same folder, whole or not at all.
   *
   * @throws what begins the work anew where the hold was taken over meanwhile, or the file is not as it was seen.
   */
  save(path: string, bytes: Uint8Array, options?: SaveOptions): Promise<void>;
  /** Takes a file in the same folder away, if it is there. @throws as `save` does. */
  remove(path: string): Promise<void>;
}

export interface SaveOptions {
  /** Of a new file. */
  readonly mode?: number;
  /** Asked last: false where a program that knows nothing of holds has changed what the work has read. */
  readonly isAsSeen?: () => Promise<boolean>;
}

export interface Waiting {
  /** How long a hold stands whose program may be alive, ms: what is done under it takes a few. */
  readonly leftBehind: number;
  /** How long it is waited for at the most, ms: longer than any program holds a file, or than a hold left behind stands. */
  readonly patience: number;
  /** Called once, where the wait is long enough to be felt. */
  readonly onWait: () => void;
}

const BETWEEN_LOOKS = 25;
const FELT = 500;
const USUAL: Waiting = { leftBehind: 10_000, patience: 20_000, onWait: () => undefined };
/** A draft lies for moments; one of this age, in ms, is nobody's any more. */
const OLD_DRAFT = 600_000;

/**
 * Does work on a file that no other program does at the same time. It is done anew, on what is found then, where the hold was
 * lost before anything was saved: so it reads all that it needs itself, and does nothing else that can't be done twice.
 *
 * @throws the file system's error where the file can't be held at all, `EBUSY` where another's hold stays.
 */
export async function holdFile<T>(
  path: string,
  work: (hold: Hold) => Promise<T>,
  how: Partial<Waiting> = {},
): Promise<T> {
  const place = await realPlace(path);
  const waiting = { ...USUAL, ...how };
  const begun = Date.now();
  for (;;) {
    const mark = await waitForMark(place, waiting, begun);
    try {
      await clearDrafts(place, OLD_DRAFT);
      return await work(holdBy(mark, place));
    } catch (error) {
      if (!(error instanceof HoldLost)) throw error;
      if (isTooLong(begun, waiting)) throw heldTooLong(place);
    } finally {
      await endMark(mark);
    }
  }
}

async function waitForMark(path: string, waiting: Waiting, begun: number): Promise<Mark> {
  let seen: { readonly name: string; readonly since: number } | undefined;
  let isTold = false;
  for (;;) {
    const standing = await standingMark(path);
    const mark = standing ? undefined : await makeMark(path);
    if (mark) return mark;
    const now = Date.now();
    if (isTooLong(begun, waiting)) throw heldTooLong(path);
    if (standing && seen?.name !== standing.name) seen = { name: standing.name, since: now };
    if (standing && isLeft(standing, seen?.since ?? now, waiting)) await standing.end();
    if (!isTold && now - begun >= FELT) {
      isTold = true;
      waiting.onWait();
    }
    await setTimeout(standing && !standing.isDead ? BETWEEN_LOOKS : 0);
  }
}

/** By the drive's clock, or by ours where that one goes ahead. */
function isLeft({ changed, isDead }: Standing, since: number, { leftBehind }: Waiting): boolean {
  const now = Date.now();
  return isDead || now - (changed ?? now) > leftBehind || now - since > leftBehind;
}

function isTooLong(begun: number, { patience }: Waiting): boolean {
  return Date.now() - begun > patience;
}

function holdBy({ own }: Mark, path: string): Hold {
  const draft = () => join(own, randomUUID());
  return {
    path,
    save: (target, bytes, { mode, isAsSeen } = {}) =>
      lostWithout(own, () =>
        putInPlace(target, bytes, {
          draft: draft(),
          ...(mode === undefined ? {} : { mode }),
          last: async () => {
            if (isAsSeen && !(await isAsSeen())) throw new HoldLost();
          },
        }),
      ),
    remove: (target) =>
      lostWithout(own, async () => {
        try {
          await rename(target, draft());
        } catch (error) {
          if (errorName(error) !== 'ENOENT') throw error;
          // Not the target but the hold may be what is not there.
          await stat(own);
        }
      }),
  };
}

/** What the work was done on is no longer what lies there. */
class HoldLost extends Error {}

async function lostWithout(own: string, step: () => Promise<void>): Promise<void> {
  try {
    await step();
  } catch (error) {
    const isGone = errorName(error) === 'ENOENT' && (await stat(dirname(dirname(own))).then(() => true, () => false)); // prettier-ignore
    throw isGone ? new HoldLost() : error;
  }
}

/** A file that is not there yet lies in its folder. */
async function realPlace(path: string): Promise<string> {
  try {
    return await realpath(path);
  } catch {
    return join(await realpath(dirname(path)).catch(() => dirname(path)), basename(path));
  }
}

function heldTooLong(path: string): NodeJS.ErrnoException {
  return Object.assign(new Error(`${path} is held by another program`), { code: 'EBUSY' });
}
