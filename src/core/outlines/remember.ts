/** Results of a pure function kept by a text that tells its arguments, the last few that were asked for. */

/** Asks `make` only for a text that isn't among the last `most` ones. */
export function remembering<T>(most: number): (key: string, make: () => T) => T {
  const kept = new Map<string, T>();
  return (key, make) => {
    const value = kept.has(key) ? (kept.get(key) as T) : make();
    // Taken out and put in again it is the youngest.
    kept.delete(key);
    kept.set(key, value);
    const [oldest] = kept.keys();
    if (kept.size > most && oldest !== undefined) kept.delete(oldest);
    return value;
  };
}
