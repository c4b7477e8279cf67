/** Numbers, lists and beginnings of sentences: what every room of words needs. */

/** How many, with the word for one or for several. */
export function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}

/** A list such as `a, b and c`. @param most so many are named, and how many more there are is said. */
export function listed(items: readonly string[], most = Infinity): string {
  if (items.length > most) return `${items.slice(0, most).join(', ')} and ${items.length - most} more`;
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** With a capital letter at the start. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** With a small letter at the start. */
export function uncapital(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
