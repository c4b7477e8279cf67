/** The tree of windows of a written job: finding, changing and moving its items. Items are named by their path in the job. */
import { valueAt } from '../../core/job/edit';
import type { WrittenGroup, WrittenJob, WrittenNode } from '../../core/job/written';

export const ROOT = 'windows';

/** The arrangement as the job says it, or as it stands for when it says nothing: every picture that is not placed freely, in a row. */
export function arrangementOf(written: WrittenJob): WrittenNode | undefined {
  if (written.windows !== undefined) return written.windows;
  const pictures = written.pictures ?? [];
  const ids = pictures.map((picture, index) => picture.id ?? String(index + 1));
  const placed = new Set((written.free ?? []).map((window) => window.picture).map((ref) => pictureIndex(written, ref)));
  const items = ids.filter((_, index) => !placed.has(index));
  const [only] = items;
  return items.length > 1 ? { kind: 'row', items } : only;
}

/** Which picture a window's reference means; -1 for one that is not there. */
export function pictureIndex(written: WrittenJob, reference: string | number | undefined): number {
  const pictures = written.pictures ?? [];
  if (reference === undefined) return -1;
  if (typeof reference === 'number') return reference <= pictures.length ? reference - 1 : -1;
  return pictures.findIndex((picture, index) => (picture.id ?? String(index + 1)) === reference);
}

export function isGroup(node: WrittenNode | undefined): node is WrittenGroup {
  return typeof node === 'object' && node.kind !== 'window' && node.kind !== 'spread';
}

/** `windows.items[2].items[0]` as `[2, 0]`; undefined for a path outside the tree. */
export function placesOf(path: string): number[] | undefined {
  if (!/^windows(\.items\[\d+\])*$/.test(path)) return undefined;
  return [...path.matchAll(/\[(\d+)\]/g)].map((found) => Number(found[1]));
}

export function pathOf(places: readonly number[]): string {
  return ROOT + places.map((place) => `.items[${place}]`).join('');
}

export function parentOf(path: string): string | undefined {
  const places = placesOf(path);
  return places && places.length > 0 ? pathOf(places.slice(0, -1)) : undefined;
}

/** The item at a path of the arrangement, the implied one included. */
export function nodeAt(written: WrittenJob, path: string): WrittenNode | undefined {
  const whole = arrangementOf(written);
  return valueAt({ ...written, windows: whole }, path) as WrittenNode | undefined;
}

/** Replaces the item at a path by none, one or several; a group left empty goes too. */
export function splice(node: WrittenNode, places: readonly number[], next: readonly WrittenNode[]): WrittenNode[] {
  const [place, ...rest] = places;
  if (place === undefined) return [...next];
  if (!isGroup(node)) return [node];
  const items = node.items.flatMap((item, index) => (index === place ? splice(item, rest, next) : [item]));
  return items.length === 0 ? [] : [{ ...node, items }];
}

/** The job with its arrangement put in place of the old one; several or no items left at the top are made a row, or nothing. */
export function withArrangement(written: WrittenJob, nodes: readonly WrittenNode[]): WrittenJob {
  const [only] = nodes;
  const { windows: _old, ...rest } = written;
  if (only === undefined) return rest;
  return { ...rest, windows: nodes.length === 1 ? only : { kind: 'row', items: [...nodes] } };
}
