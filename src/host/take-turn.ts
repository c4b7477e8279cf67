/** Lets one piece of work at a time touch a file, so that check and write belong together. */

const last = new Map<string, Promise<unknown>>();

/** Runs `work` after all earlier work for the same key has ended, however it ended. */
export async function takeTurn<T>(key: string, work: () => Promise<T>): Promise<T> {
  const before = last.get(key) ?? Promise.resolve();
  const mine = before.then(work, work);
  last.set(key, mine);
  try {
    return await mine;
  } finally {
    if (last.get(key) === mine) last.delete(key);
  }
}
