/** Runs work as a user whom file permissions bind, even where the tests themselves run as root. */

/** The user that Unix systems keep for those with no rights of their own. */
const nobody = 65534;

export async function asOrdinaryUser<T>(work: () => Promise<T>): Promise<T> {
  if (process.getuid?.() !== 0) return await work();
  process.seteuid?.(nobody);
  try {
    return await work();
  } finally {
    process.seteuid?.(0);
  }
}
