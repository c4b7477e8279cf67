/** Job files as text: JSON in, readable JSON out. */
import { bad, type Problem, type Result } from '../problem';
import { jsonFault } from './json-fault';
import { repeatedKeys } from './json-repeats';
import { quoted } from './quoted';
import { readJob, type OpenedJob } from './read';
import type { WrittenJob } from './written';

/** Larger than any real job, characters. */
const MOST_CHARACTERS = 20_000_000;

/** Reads the text of a job file; a fault in the JSON is told with its line. */
export function parseJobText(text: string): Result<OpenedJob> {
  if (text.length > MOST_CHARACTERS) {
    return failed(
      'file-too-large',
      `The file has ${text.length} characters; no job is larger than ${MOST_CHARACTERS}.`,
    );
  }
  const json = text.replace(/^\uFEFF/, '');
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    return failed('not-json', notJson(json));
  }
  const read = readJob(value);
  const twice = repeatedKeys(json).map(saidTwice);
  return { ...read, problems: [...read.problems, ...twice] };
}

function saidTwice(at: string): Problem {
  return {
    code: 'key-twice',
    severity: 'warning',
    at,
    message: `${at} stands twice in the file; only the last one counts, and saving drops the others.`,
    remedy: 'keep one of them',
  };
}

/** Readable JSON: two spaces, short groups on one line, every value as the user wrote it, a newline at the end. */
export function printJob(written: WrittenJob): string {
  return `${print(written, '')}\n`;
}

const LINE = 100;

function print(value: unknown, indent: string): string {
  const flat = flatText(value);
  if (
    value === null ||
    typeof value !== 'object' ||
    (indent !== '' && flat.length + indent.length <= LINE && isShallow(value))
  )
    return flat;
  const inner = `${indent}  `;
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  const parts = Array.isArray(value)
    ? value.map((item) => print(item, inner))
    : entriesOf(value).map(([key, item]) => `${JSON.stringify(key)}: ${print(item, inner)}`);
  return parts.length === 0
    ? `${open}${close}`
    : `${open}\n${parts.map((part) => inner + part).join(',\n')}\n${indent}${close}`;
}

function flatText(value: unknown): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null';
  if (Array.isArray(value)) return `[${value.map(flatText).join(', ')}]`;
  const entries = entriesOf(value).map(([key, item]) => `${JSON.stringify(key)}: ${flatText(item)}`);
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}

function isShallow(value: object): boolean {
  return Object.values(value).every(
    (item) =>
      item === null ||
      typeof item !== 'object' ||
      Object.values(item as object).every((inner) => typeof inner !== 'object'),
  );
}

function entriesOf(value: object): [string, unknown][] {
  return Object.entries(value).filter(([, item]) => item !== undefined);
}

function failed(code: string, message: string): Result<never> {
  return bad([{ code, severity: 'error', at: '', message }]);
}

/** The place of the fault, as an editor counts it. */
function notJson(text: string): string {
  if (text.trim() === '') return 'The file is empty; a job in JSON is wanted.';
  const position = jsonFault(text) ?? text.length;
  const before = text.slice(0, position).split('\n');
  const place = `line ${before.length}, character ${(before.at(-1)?.length ?? 0) + 1}`;
  return position >= text.trimEnd().length
    ? `The file breaks off at ${place}: it is not whole JSON.`
    : `The file is not JSON at ${place}: ${standing(text.slice(position))} should not be there.`;
}

/** What stands at the beginning of a text, as it stands there; a sign that can't be seen by its name. */
function standing(text: string): string {
  const [seen = ''] = /^[^\p{Cc}]{0,12}/u.exec(text) ?? [];
  if (seen !== '') return quoted(seen);
  const names: Readonly<Record<string, string>> = {
    '\n': 'the end of the line',
    '\r': 'the end of the line',
    '\t': 'a tab',
  };
  const [sign = ''] = text;
  return names[sign] ?? `the sign U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
