/** Turns what the schema found wrong with a job file into problems in plain words. */
import type * as z from 'zod';
import type { Problem } from '../problem';
import { knownKeys, nearestKey } from './known-keys';

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
      return problem('value-unknown', at, `${where} is ${found}; it must be ${list(issue.values)}.`);
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
    const meant = nearestKey(
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

function unionWords(issue: Extract<Issue, { code: 'invalid_union' }>): string {
  if ('options' in issue && Array.isArray(issue.options))
    return `one of the kinds ${issue.options.map((kind) => `"${String(kind)}"`).join(', ')}`;
  const kinds = issue.errors.flatMap((branch) =>
    branch.flatMap((inner) => (inner.code === 'invalid_type' ? [expected(inner.expected)] : [])),
  );
  const unique = [...new Set(kinds)];
  return unique.length > 0 ? unique.join(' or ') : 'something else';
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
  return values.map((value) => JSON.stringify(value)).join(' or ');
}

function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') return 'a group in { }';
  if (typeof value === 'string')
    return value.length > 40 ? `a text of ${value.length} characters` : JSON.stringify(value);
  return String(value);
}

function valueAtPath(root: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      value !== null && typeof value === 'object' ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    root,
  );
}
