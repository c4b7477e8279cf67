/** Words that a show's answers share. */

/** A name in quotes, no longer than a line can bear. */
export function titled(name: string): string {
  return `“${name.length > 40 ? `${name.slice(0, 40)}…` : name}”`;
}
