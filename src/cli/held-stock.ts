/** A stock's file and the record of its last use beside it, changed together by one program at a time. */
import { readFile } from 'node:fs/promises';
import { errorName } from '../host/failure';
import { holdFile, type Hold } from '../host/hold-file';

export interface HeldStock {
  /** Undefined where none is kept. */
  record(): Promise<string | undefined>;
  /**
   * The record first; where the list can't be saved the record is as it was.
   *
   * @param record undefined: there is none any more.
   * @param seen the list's text as it was read: where another is found by now, the work is done anew on that.
   */
  save(record: string | undefined, seen: string, text: string): Promise<void>;
}

/** Beside the file. */
export function recordPath(path: string): string {
  return `${path}.last-use.json`;
}

/** See `holdFile`. @param onWait called once where another program makes it wait. */
export function holdStock<T>(path: string, work: (stock: HeldStock) => Promise<T>, onWait: () => void): Promise<T> {
  const place = recordPath(path);
  /** A record that was changed for a list that then could not be: the hold was lost in between. */
  let unmade: { readonly was: string | undefined; readonly is: string | undefined } | undefined;
  return holdFile(
    path,
    async (hold) => {
      // Who held the file in between may have made a record of its own, which stays.
      if (unmade && (await readIfThere(place)) === unmade.is) await setText(hold, place, unmade.was);
      unmade = undefined;
      return work({
        record: () => readIfThere(place),
        async save(record, seen, text) {
          const was = await readIfThere(place);
          unmade = { was, is: record };
          await setText(hold, place, record);
          try {
            const isAsSeen = async () => (await readIfThere(path)) === seen;
            await hold.save(path, Buffer.from(text, 'utf8'), { isAsSeen });
          } catch (error) {
            await setText(hold, place, was);
            throw error;
          }
        },
      });
    },
    { onWait },
  );
}

function setText(hold: Hold, path: string, text: string | undefined): Promise<void> {
  return text === undefined ? hold.remove(path) : hold.save(path, Buffer.from(text, 'utf8'));
}

async function readIfThere(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    if (errorName(error) === 'ENOENT') return undefined;
    throw error;
  }
}
