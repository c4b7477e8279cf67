/** Lists that the user keeps, each a file in the state folder, which several programs may change and none may damage. */
import { mkdir, rename, stat } from 'node:fs/promises';
import { dirname, extname, join } from 'node:path';
import type { HostCalls, KeptFile, KeptListName, Reply } from '../bridge';
import { readPriceRows } from '../core/cost/read-price-rows';
import { parseCutters } from '../core/job/cutter-list';
import { isError, type Result } from '../core/problem';
import { readStock } from '../core/sheets/read-stock';
import { parseUseRecord } from '../core/sheets/use-record';
import { readShelf } from '../core/shelf/read-shelf';
import { done, failed, failureFrom } from './failure';
import { holdFile, type Hold } from './hold-file';
import { readJob } from './job-files';
import { recordPath, saveBoth } from './last-use-file';
import { takeTurn } from './take-turn';

interface KeptList {
  readonly file: string;
  /** As messages call it. */
  readonly words: string;
  /** What is wrong with a text that should be one. */
  readonly read: (text: string) => Result<unknown>;
  /** Of a list that is used up by and by: the same of the record of its last use. */
  readonly readUse?: (text: string) => Result<unknown>;
}

const LISTS: Readonly<Record<KeptListName, KeptList>> = {
  cutters: { file: 'cutters.json', words: 'The list of cutters', read: parseCutters },
  shelf: { file: 'shelf.csv', words: 'The shelf', read: (text) => readShelf(text) },
  stock: { file: 'stock.csv', words: 'The stock', read: (text) => readStock(text), readUse: parseUseRecord },
  // Row by row: while a list is put together it may lack rows that others need.
  prices: { file: 'prices.csv', words: 'The price list', read: readPriceRows },
};

/** For its owner alone. */
const OWN = 0o600;

/** Path of a list in the folder where the program keeps what it remembers. */
export function keptPath(state: string, list: KeptListName): string {
  return join(state, LISTS[list].file);
}

/** What lies there, whole or damaged; without text while nothing was ever kept. */
export async function readKept(state: string, list: KeptListName): Promise<Reply<KeptFile>> {
  const path = keptPath(state, list);
  const read = await readJob(path, true);
  if (!read.ok) return read.failure.code === 'not-found' ? done({ path }) : read;
  const record = LISTS[list].readUse ? await readJob(recordPath(path)) : undefined;
  // The list can be read and changed without it.
  return record?.ok ? done({ ...read.value, lastUse: record.value.text }) : read;
}

/** Saves the whole list; see `HostCalls.saveKept` for what it refuses. */
export function saveKept(state: string, request: HostCalls['saveKept']['request']): Promise<Reply<KeptFile>> {
  const { words, read, readUse } = LISTS[request.list];
  const path = keptPath(state, request.list);
  return takeTurn(path, async () => {
    const wrong = read(request.text).problems.find(isError);
    if (wrong) return failed('failed', `${words} was not saved: ${wrong.message}`);
    const { lastUse = '' } = request;
    const wrongUse = lastUse === '' ? undefined : readUse ? readUse(lastUse).problems.find(isError)?.message : 'No uses of it are kept.'; // prettier-ignore
    if (wrongUse !== undefined) return failed('failed', `${words} was not saved: ${wrongUse}`);
    try {
      await mkdir(dirname(path), { recursive: true, mode: 0o700 });
      return await holdFile(path, (hold) => saveHeld(state, hold, request));
    } catch (error) {
      return failureFrom(error, path);
    }
  });
}

async function saveHeld(
  state: string,
  hold: Hold,
  { list, text, stamp, setAside, lastUse }: HostCalls['saveKept']['request'],
): Promise<Reply<KeptFile>> {
  const path = keptPath(state, list);
  const stampNow = async () => {
    const now = await readKept(state, list);
    return now.ok ? now.value.stamp : now;
  };
  if (setAside) await moveAside(hold.path);
  else {
    const now = await stampNow();
    if (typeof now === 'object') return now;
    if (now !== stamp) {
      return failed('changed-on-disk', `${LISTS[list].words} in “${path}” was changed by another program or window.`);
    }
  }
  // Set aside, there is none any more.
  const isAsSeen = async () => (await stampNow()) === (setAside ? undefined : stamp);
  const how = { mode: OWN, isAsSeen };
  if (lastUse === undefined) await hold.save(hold.path, Buffer.from(text, 'utf8'), how);
  else await saveBoth(hold, { record: lastUse === '' ? undefined : lastUse, text }, how);
  return readKept(state, list);
}

/** Beside it, under a name that is free; the record of its last use with it. */
async function moveAside(path: string): Promise<void> {
  if (!(await isThere(path))) return;
  let number = 1;
  const ending = extname(path);
  const asideName = () => `${path.slice(0, path.length - ending.length)}-set-aside-${number}${ending}`;
  while (await isThere(asideName())) number += 1;
  const aside = asideName();
  if (await isThere(recordPath(path))) await rename(recordPath(path), recordPath(aside));
  await rename(path, aside);
}

async function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
