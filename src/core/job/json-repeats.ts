/** Keys that a JSON text gives twice in one group: parsers keep the last and drop the others without a word (RFC 8259, 4). */
import { endOfSpace, tokenAt } from './json-fault';
import { pathText } from './schema-problems';

interface Open {
  /** Undefined in a list. */
  readonly keys?: Set<string>;
  /** The key or the index under way. */
  at: string | number;
  awaitsKey: boolean;
}

/** Paths of the keys given more than once, each once. The text must be JSON. */
export function repeatedKeys(text: string): string[] {
  const open: Open[] = [];
  const found = new Set<string>();
  let at = endOfSpace(text, 0);
  while (at < text.length) {
    const { kind, end } = tokenAt(text, at);
    const inner = open.at(-1);
    if (kind === '{') open.push({ keys: new Set(), at: '', awaitsKey: true });
    else if (kind === '[') open.push({ at: 0, awaitsKey: false });
    else if (kind === '}' || kind === ']') open.pop();
    else if (kind === ',' && inner) {
      if (inner.keys) inner.awaitsKey = true;
      else inner.at = Number(inner.at) + 1;
    } else if (kind === 'text' && inner?.keys && inner.awaitsKey) {
      const key = JSON.parse(text.slice(at, end)) as string;
      inner.at = key;
      inner.awaitsKey = false;
      if (inner.keys.has(key)) found.add(pathText(open.map((group) => group.at)));
      inner.keys.add(key);
    }
    at = endOfSpace(text, end);
  }
  return [...found];
}
