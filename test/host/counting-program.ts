/** Counts a file up by one, many times over, as a program of its own that tells how far it is. */
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { holdFile } from '../../src/host/hold-file';

/** The hold is its own and the file is read; all is ready to be moved into place; it was. */
export type Word = 'read' | 'ready' | 'counted';

/** @param waitsAt where it waits for a word from outside, once. */
const [path = '', turns = '1', leftBehind = '300', waitsAt = ''] = process.argv.slice(2);
const tell = (word: Word) => new Promise((resolve) => process.send?.(word, resolve));
let waits = waitsAt;

async function arrive(word: Word): Promise<void> {
  const go = waits === word ? once(process, 'message') : undefined;
  if (go) waits = '';
  await tell(word);
  await go;
}

for (let turn = 0; turn < Number(turns); turn += 1) {
  await holdFile(
    path,
    async (hold) => {
      const count = Number(await readFile(path, 'utf8'));
      await arrive('read');
      const isAsSeen = async () => {
        await arrive('ready');
        return true;
      };
      await hold.save(path, Buffer.from(String(count + 1)), { isAsSeen });
    },
    { leftBehind: Number(leftBehind) },
  );
  await arrive('counted');
}
process.disconnect();
