/** A stock's file and the record of its last use beside it, changed together by one program at a time. */
import { holdFile } from '../host/hold-file';
import { readIfThere, recordPath, saveBoth, setRecord } from '../host/last-use-file';

export interface HeldStock {
  /** Undefined where none is kept. */
  record(): Promise<string | undefined>;
  /**
   * Both or none, see `saveBoth`.
   *
   * @param record undefined: there is none any more.
   * @param seen the list's text as it was read: where another is found by now, the work is done anew on that.
   */
  save(record: string | undefined, seen: string, text: string): Promise<void>;
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
      if (unmade && (await readIfThere(place)) === unmade.is) await setRecord(hold, unmade.was);
      unmade = undefined;
      return work({
        record: () => readIfThere(place),
        async save(record, seen, text) {
          unmade = { was: await readIfThere(place), is: record };
          await saveBoth(hold, { record, text }, { isAsSeen: async () => (await readIfThere(path)) === seen });
        },
      });
    },
    { onWait },
  );
}
