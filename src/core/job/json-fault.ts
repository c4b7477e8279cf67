/** Where a text stops being JSON: engines word their faults each in its own way, and some leave the place out. */

const SPACE = /[ \t\n\r]*/y;
/** A text without its closing mark, as far as it is right (RFC 8259). */
// eslint-disable-next-line no-control-regex
const TEXT = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*/y;
const PLAIN = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

type Token = '{' | '}' | '[' | ']' | ':' | ',' | 'text' | 'plain';
type Awaited = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | ', or ]' | ', or }' | 'end';

/** Position of the first character that can't be there, the text's length where it breaks off; undefined when it is JSON. */
export function jsonFault(text: string): number | undefined {
  const open: ('{' | '[')[] = [];
  let awaited: Awaited = 'value';
  let at = 0;
  for (;;) {
    at = endOfSpace(text, at);
    if (at >= text.length) return awaited === 'end' ? undefined : text.length;
    const token = tokenAt(text, at);
    if (token.kind === undefined) return token.end;
    const next = follow(awaited, token.kind, open);
    if (next === undefined) return at;
    awaited = next;
    at = token.end;
  }
}

/** Where the white space that begins at a place ends. */
export function endOfSpace(text: string, at: number): number {
  return endOf(SPACE, text, at) ?? at;
}

/** The token at a place and where it ends; without a kind, where it goes wrong. */
export function tokenAt(text: string, at: number): { readonly kind?: Token; readonly end: number } {
  const mark = text.charAt(at);
  if ('{}[]:,'.includes(mark)) return { kind: mark as Token, end: at + 1 };
  const quoted = endOf(TEXT, text, at);
  if (quoted !== undefined) return text.charAt(quoted) === '"' ? { kind: 'text', end: quoted + 1 } : { end: quoted };
  const plain = endOf(PLAIN, text, at);
  return plain === undefined ? { end: at } : { kind: 'plain', end: plain };
}

/** What is awaited after a token; undefined when the token can't stand there. */
function follow(awaited: Awaited, token: Token, open: ('{' | '[')[]): Awaited | undefined {
  const value = awaited === 'value' || awaited === 'value or ]';
  if (value && (token === '{' || token === '[')) {
    open.push(token);
    return token === '{' ? 'key or }' : 'value or ]';
  }
  if (value && (token === 'text' || token === 'plain')) return afterValue(open);
  if (token === 'text' && awaited.startsWith('key')) return ':';
  if (token === ':' && awaited === ':') return 'value';
  if (token === ',' && awaited === ', or }') return 'key';
  if (token === ',' && awaited === ', or ]') return 'value';
  if ((token === '}' || token === ']') && awaited.endsWith(`or ${token}`)) {
    open.pop();
    return afterValue(open);
  }
  return undefined;
}

function afterValue(open: readonly ('{' | '[')[]): Awaited {
  const last = open.at(-1);
  return last === undefined ? 'end' : last === '{' ? ', or }' : ', or ]';
}

function endOf(pattern: RegExp, text: string, at: number): number | undefined {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}
