/** Edits of a written job by path, such as `pictures[0].size.width`; every edit makes a new value and shares the rest. */
import { assert, type Edit } from '../problem';
import type { WrittenJob } from './written';

type Key = string | number;
type Branch = Readonly<Record<Key, unknown>> | readonly unknown[];

/** The written value at a path; undefined where nothing is written. */
export function valueAt(written: WrittenJob, path: string): unknown {
  return keysOf(path).reduce<unknown>((value, key) => ownValue(value, key), written);
}

/** Writes a value at a path, making the groups on the way; undefined takes it away, and the groups it leaves empty. */
export function setAt(written: WrittenJob, path: string, value: unknown): WrittenJob {
  if (value === undefined && valueAt(written, path) === undefined) return written;
  return set(written, keysOf(path), value) as WrittenJob;
}

/** Does several edits, one after the other. */
export function setAll(written: WrittenJob, edits: readonly Edit[]): WrittenJob {
  return edits.reduce((job, { at, value }) => setAt(job, at, value), written);
}

/** Puts an item into the list at a path, before the item now at `index`. */
export function insertItem(written: WrittenJob, listPath: string, index: number, item: unknown): WrittenJob {
  const list = listAt(written, listPath);
  return setAt(written, listPath, [...list.slice(0, index), item, ...list.slice(index)]);
}

export function removeItem(written: WrittenJob, listPath: string, index: number): WrittenJob {
  const rest = listAt(written, listPath).filter((_, place) => place !== index);
  return setAt(written, listPath, rest);
}

/** Moves an item of a list to another place in it. */
export function moveItem(written: WrittenJob, listPath: string, from: number, to: number): WrittenJob {
  const list = [...listAt(written, listPath)];
  const [item] = list.splice(from, 1);
  list.splice(to, 0, item);
  return setAt(written, listPath, list);
}

/** `a[0].b` as `['a', 0, 'b']`. */
export function keysOf(path: string): Key[] {
  if (path === '') return [];
  return [...path.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, name]) =>
    index === undefined ? (name ?? '') : Number(index),
  );
}

function listAt(written: WrittenJob, path: string): readonly unknown[] {
  const list = valueAt(written, path) ?? [];
  assert(Array.isArray(list), `${path} is a list`);
  return list;
}

function set(value: unknown, keys: readonly Key[], next: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return next;
  if (typeof key === 'number') return setInList(Array.isArray(value) ? value : [], key, rest, next);
  const group = isBranch(value) && !Array.isArray(value) ? (value as Record<string, unknown>) : {};
  const inner = set(ownValue(group, key), rest, next);
  const others = Object.fromEntries(Object.entries(group).filter(([name]) => name !== key));
  if (inner === undefined || (next === undefined && isEmptyGroup(inner))) return others;
  // A value written before keeps its place among the keys.
  return Object.hasOwn(group, key)
    ? Object.fromEntries(Object.entries(group).map(([name, item]) => [name, name === key ? inner : item]))
    : { ...group, [key]: inner };
}

function setInList(list: readonly unknown[], index: number, rest: readonly Key[], next: unknown): unknown {
  assert(index <= list.length, 'a list is written without gaps');
  const inner = set(list[index], rest, next);
  if (inner === undefined) return list.filter((_, place) => place !== index);
  return [...list.slice(0, index), inner, ...list.slice(index + 1)];
}

/** What the file itself says, never what every object inherits. */
function ownValue(value: unknown, key: Key): unknown {
  return isBranch(value) && Object.hasOwn(value, key) ? (value as Record<Key, unknown>)[key] : undefined;
}

function isBranch(value: unknown): value is Branch {
  return value !== null && typeof value === 'object';
}

function isEmptyGroup(value: unknown): boolean {
  return isBranch(value) && !Array.isArray(value) && Object.keys(value).length === 0;
}
