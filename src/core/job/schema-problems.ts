/** Turns what the schema found wrong with a job file into problems in plain words. */
import type * as z from 'zod';
import type { Problem } from '../problem';
import { nearestWord } from '../nearest-word';
import { knownKeys } from './known-keys';
import { quoted } from './quoted';

type Issue = z.core.$ZodIssue;

/** One problem for each thing the schema found, at most `most`. */
export function schemaProblems(issues: readonly Issue[], value: unknown, most = 50): Problem[] {
  return issues
    .flatMap((issue) => flatten(issue, []))
    .slice(0, most)
    .flatMap(({ issue, path }) =>
      issue.code === 'unrecognized_keys' ? unknownKeys(issue.keys, path, value) : [toProblem(issue, path, value)],
    );
}

/** `['pictures', 0, 'size']` as `pictures[0].size`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? String(key) : `${text}.${String(key)}`),
    '',
  );
}

interface Placed {
  readonly issue: Issue;
  readonly path: readonly PropertyKey[];
}

/** Of a union keep the branch that came nearest: the one that got furthest into the value before it failed. */
function flatten(issue: Issue, base: readonly PropertyKey[]): Placed[] {
  const path = [...base, ...issue.path];
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return [{ issue, path }];
  const branches = issue.errors.map((branch) => branch.flatMap((inner) => flatten(inner, path)));
  const nearer = branches.filter((branch) =>
    branch.some((placed) => !(placed.issue.code === 'invalid_type' && placed.path.length === path.length)),
  );
  // Of several, one that found its fault further in.
  const deeper = nearer.filter((branch) => branch.some((placed) => placed.path.length > path.length));
  const [only, ...others] = deeper.length > 0 ? deeper : nearer;
  return only && others.length === 0 ? only : [{ issue, path }];
}

function toProblem(issue: Issue, path: readonly PropertyKey[], root: unknown): Problem {
  const at = pathText(path);
  const found = describe(valueAtPath(root, path));
  const where = at === '' ? 'The file' : at;
  switch (issue.code) {
    case 'invalid_type':
      return found === 'nothing'
        ? problem('value-missing', at, `${where} is missing; ${expected(issue.expected)} is wanted.`)
        : problem('value-of-wrong-kind', at, `${where} is ${found}; ${expected(issue.expected)} is wanted.`);
    case 'invalid_value':
      return unknownValue(at, `${where} is ${found}`, issue.values, valueAtPath(root, path));
    case 'too_small':
      return problem('value-too-small', at, `${where} is ${found}; ${least(issue)}.`);
    case 'too_big':
      return problem(
        'value-too-large',
        at,
        `${where} is ${found}; the most is ${issue.maximum}${issue.origin === 'string' ? ' characters' : ''}.`,
      );
    case 'invalid_union':
      if (found === 'nothing')
        return problem('value-missing', at, `${where} is missing; ${unionWords(issue)} is wanted.`);
      if (kindsOf(issue))
        return unknownValue(at, `${where} is ${found}`, kindsOf(issue) ?? [], valueAtPath(root, path));
      return problem('value-of-wrong-kind', at, `${where} is ${found}; ${unionWords(issue)} is wanted.`);
    case 'invalid_format':
      return problem('value-unreadable', at, `${where} is ${found}; ${issue.message}.`);
    default:
      return problem('value-unreadable', at, `${where} is ${found}: ${issue.message}.`);
  }
}

function least({ minimum, inclusive, origin }: Extract<Issue, { code: 'too_small' }>): string {
  if (inclusive === false) return `it must be more than ${minimum}`;
  return `the least is ${minimum}${origin === 'string' ? ' characters' : ''}`;
}

/** One problem for each key that means nothing, with the key that was most likely meant. */
function unknownKeys(keys: readonly string[], path: readonly PropertyKey[], root: unknown): Problem[] {
  const known = knownKeys(path, root);
  const inside = valueAtPath(root, path);
  return keys.map((key) => {
    const at = pathText([...path, key.slice(0, 60)]);
    const meant = nearestWord(
      key,
      known.filter((one) => !Object.hasOwn(Object(inside) as object, one)),
    );
    const remedy =
      meant === undefined ? `${known.length > 0 ? `one of ${known.join(', ')}` : 'take it away'}` : `"${meant}"`;
    const ask =
      meant === undefined
        ? known.length > 0
          ? `these do: ${known.join(', ')}`
          : 'take it away'
        : `perhaps "${meant}" is meant`;
    return {
      ...problem(
        'key-unknown',
        at,
        `"${key.slice(0, 60)}" means nothing ${path.length === 0 ? 'in a job' : `in ${pathText(path)}`}; ${ask}.`,
      ),
      remedy,
    };
  });
}

function problem(code: string, at: string, message: string): Problem {
  return { code, severity: 'error', at, message };
}

/** One of a few values is wanted: with the one that was most likely meant. */
function unknownValue(at: string, found: string, values: readonly unknown[], value: unknown): Problem {
  const words = values.filter((one) => typeof one === 'string');
  const meant = typeof value === 'string' ? nearestWord(value.slice(0, 60), words) : undefined;
  const perhaps = meant === undefined ? '' : `; perhaps "${meant}" is meant`;
  return {
    ...problem('value-unknown', at, `${found}${perhaps}; it must be ${list(values)}.`),
    remedy: meant === undefined ? list(values) : `"${meant}"`,
  };
}

/** The kinds of a group that are told apart by their "kind"; undefined of other unions. */
function kindsOf(issue: Extract<Issue, { code: 'invalid_union' }>): readonly unknown[] | undefined {
  return 'options' in issue && Array.isArray(issue.options) ? issue.options : undefined;
}

function unionWords(issue: Extract<Issue, { code: 'invalid_union' }>): string {
  const kinds = kindsOf(issue);
  if (kinds) return `one of the kinds ${list(kinds)}`;
  const wanted = issue.errors.flatMap((branch) =>
    branch.flatMap((inner) => {
      if (inner.code === 'invalid_type') return [expected(inner.expected)];
      return inner.code === 'invalid_value' ? inner.values.map((value) => JSON.stringify(value)) : [];
    }),
  );
  const unique = [...new Set(wanted)];
  return unique.length > 0 ? either(unique) : 'something else';
}

function expected(kind: string): string {
  const words: Record<string, string> = {
    string: 'a text',
    number: 'a number',
    int: 'a whole number',
    object: 'a group in { }',
    array: 'a list in [ ]',
    boolean: 'true or false',
  };
  return words[kind] ?? kind;
}

function list(values: readonly unknown[]): string {
  return either(values.map((value) => JSON.stringify(value)));
}

/** `a, b or c`. */
function either(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') return 'a group in { }';
  if (typeof value === 'string') return value.length > 40 ? `a text of ${value.length} characters` : quoted(value);
  return String(value);
}

function valueAtPath(root: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      value !== null && typeof value === 'object' ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    root,
  );
}
