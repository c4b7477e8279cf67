/** Changes to the arrangement of windows: adding, removing, moving, grouping; each gives the job anew and where the item went. */
import {
  GAP_BETWEEN,
  GAP_WITH_BORDERS,
  type WrittenFreeWindow,
  type WrittenGroup,
  type WrittenJob,
  type WrittenLength,
  type WrittenNode,
  type WrittenSpread,
} from '../../core/job/written';
import { readLength, type Unit } from '../../core/units';
import { exactText } from '../../core/job/exact-text';
import {
  arrangementOf,
  isGroup,
  nodeAt,
  parentOf,
  pictureIndex,
  placesOf,
  ROOT,
  splice,
  withArrangement,
} from './tree';

/** The job after a change, and the path of the item it was about. */
export interface Arranged {
  readonly written: WrittenJob;
  readonly path: string;
}

export type GroupKind = WrittenGroup['kind'];

/** Adds an item after the one at `path`, or as the last of it when that is a group. */
export function addItem(written: WrittenJob, path: string, item: WrittenNode): Arranged {
  const whole = arrangementOf(written);
  if (whole === undefined) return { written: { ...written, windows: item }, path: ROOT };
  const at = nodeAt(written, path);
  if (isGroup(at)) {
    const grown = { ...at, items: [...at.items, item] };
    return replaceItem(written, path, grown, `${path}.items[${at.items.length}]`);
  }
  const parent = parentOf(path);
  const group = parent === undefined ? undefined : nodeAt(written, parent);
  if (parent === undefined || !isGroup(group)) {
    return { written: withArrangement(written, [{ kind: 'row', items: [whole, item] }]), path: `${ROOT}.items[1]` };
  }
  const place = (placesOf(path)?.at(-1) ?? 0) + 1;
  const items = [...group.items.slice(0, place), item, ...group.items.slice(place)];
  return replaceItem(written, parent, { ...group, items }, `${parent}.items[${place}]`);
}

/** A picture over several windows: in place of the one window it has in the arrangement, else as another item. */
export function addSpread(written: WrittenJob, path: string, spread: WrittenSpread): Arranged {
  const shown = windowOver(written, pictureIndex(written, spread.picture), ROOT);
  return shown === undefined ? addItem(written, path, spread) : replaceItem(written, shown, spread);
}

/** Path of the first window below an item that shows a picture. */
function windowOver(written: WrittenJob, picture: number, path: string): string | undefined {
  const node = nodeAt(written, path);
  if (isGroup(node)) {
    for (const index of node.items.keys()) {
      const found = windowOver(written, picture, `${path}.items[${index}]`);
      if (found !== undefined) return found;
    }
    return undefined;
  }
  const reference = typeof node === 'string' ? node : node?.kind === 'window' ? node.picture : undefined;
  return pictureIndex(written, reference) === picture ? path : undefined;
}

/** Takes an item out; a group it leaves empty goes with it. The last window of all stays. */
export function removeItemAt(written: WrittenJob, path: string): Arranged | undefined {
  const whole = arrangementOf(written);
  const places = placesOf(path);
  if (whole === undefined || places === undefined) return undefined;
  const rest = splice(whole, places, []);
  if (rest.length === 0 && (written.free ?? []).length === 0) return undefined;
  return { written: withArrangement(written, rest), path: parentOf(path) ?? ROOT };
}

/** Moves an item one place up (-1) or down (1) among its neighbours. */
export function moveItemAt(written: WrittenJob, path: string, by: -1 | 1): Arranged | undefined {
  const { parent, group, place } = surroundings(written, path);
  if (parent === undefined || group === undefined) return undefined;
  const other = group.items[place + by];
  const item = group.items[place];
  if (other === undefined || item === undefined) return undefined;
  const items = group.items.map((each, index) => (index === place ? other : index === place + by ? item : each));
  return replaceItem(written, parent, { ...group, items }, `${parent}.items[${place + by}]`);
}

/** Moves an item into the group before it, or else into the one after it. */
export function moveIntoGroup(written: WrittenJob, path: string): Arranged | undefined {
  const { parent, group, place } = surroundings(written, path);
  const item = group?.items[place];
  if (parent === undefined || group === undefined || item === undefined) return undefined;
  const before = group.items[place - 1];
  const after = group.items[place + 1];
  if (isGroup(before)) {
    const items = group.items.with(place - 1, { ...before, items: [...before.items, item] }).toSpliced(place, 1);
    return replaceItem(
      written,
      parent,
      { ...group, items },
      `${parent}.items[${place - 1}].items[${before.items.length}]`,
    );
  }
  if (!isGroup(after)) return undefined;
  const items = group.items.with(place + 1, { ...after, items: [item, ...after.items] }).toSpliced(place, 1);
  return replaceItem(written, parent, { ...group, items }, `${parent}.items[${place}].items[0]`);
}

/** Moves an item out of its group, to the place after it. */
export function moveOutOfGroup(written: WrittenJob, path: string): Arranged | undefined {
  const { parent, group, place } = surroundings(written, path);
  const item = group?.items[place];
  if (parent === undefined || group === undefined || item === undefined) return undefined;
  const around = surroundings(written, parent);
  if (around.parent === undefined || around.group === undefined) return undefined;
  const rest = group.items.toSpliced(place, 1);
  const left = rest.length === 0 ? [] : [{ ...group, items: rest }];
  const items = around.group.items.toSpliced(around.place, 1, ...left, item);
  return replaceItem(
    written,
    around.parent,
    { ...around.group, items },
    `${around.parent}.items[${around.place + left.length}]`,
  );
}

/** Puts a group round an item. */
export function wrapItem(written: WrittenJob, path: string, kind: GroupKind): Arranged | undefined {
  const item = nodeAt(written, path);
  return item === undefined ? undefined : replaceItem(written, path, asGroup(kind, [item]));
}

/** Takes a group away and leaves its items in its place. */
export function unwrapGroup(written: WrittenJob, path: string): Arranged | undefined {
  const whole = arrangementOf(written);
  const places = placesOf(path);
  const group = nodeAt(written, path);
  if (whole === undefined || places === undefined || !isGroup(group)) return undefined;
  return { written: withArrangement(written, splice(whole, places, group.items)), path };
}

/** Makes a group a row, a column, a grid or a ring, keeping its items and its gap; a ring has no use for one that is shared out. */
export function changeGroup(written: WrittenJob, path: string, kind: GroupKind): Arranged | undefined {
  const group = nodeAt(written, path);
  if (!isGroup(group) || group.kind === kind) return undefined;
  const gap = group.gap ?? (group.kind === 'grid' ? (group.columnGap ?? group.rowGap) : undefined);
  const isKept = gap !== undefined && !(kind === 'ring' && (gap === GAP_WITH_BORDERS || gap === GAP_BETWEEN));
  return replaceItem(
    written,
    path,
    { ...asGroup(kind, group.items), ...(isKept ? { gap } : {}) } as WrittenGroup,
    path,
  );
}

export function replaceItem(written: WrittenJob, path: string, next: WrittenNode, went = path): Arranged {
  const whole = arrangementOf(written) ?? next;
  return { written: withArrangement(written, splice(whole, placesOf(path) ?? [], [next])), path: went };
}

function asGroup(kind: GroupKind, items: WrittenNode[]): WrittenGroup {
  return kind === 'grid' ? { kind, items, columns: Math.ceil(Math.sqrt(items.length)) } : { kind, items };
}

function surroundings(written: WrittenJob, path: string): { parent?: string; group?: WrittenGroup; place: number } {
  const parent = parentOf(path);
  const group = parent === undefined ? undefined : nodeAt(written, parent);
  const place = placesOf(path)?.at(-1) ?? 0;
  return parent !== undefined && isGroup(group) ? { parent, group, place } : { place };
}

/** A freely placed window moved a little, from the edges it is held by. */
function beside(window: WrittenFreeWindow, units: Unit): WrittenFreeWindow {
  const step = units === 'in' ? 12.7 : 15;
  const { left, top, right, bottom } = window.at;
  const further = (from: WrittenLength | undefined) => {
    const read = from === undefined ? undefined : readLength(from, units);
    return exactText((read?.ok ? read.mm : 0) + step, units);
  };
  const across = right === undefined ? { left: further(left) } : { right: further(right) };
  const up = bottom === undefined ? { top: further(top) } : { bottom: further(bottom) };
  return { ...window, at: { ...across, ...up } };
}

/** A copy of an item, right after it. */
export function duplicateItem(written: WrittenJob, path: string): Arranged | undefined {
  const free = /^free\[(\d+)\]$/.exec(path);
  const window = written.free?.[Number(free?.[1])];
  if (window !== undefined) {
    // Held from the middle, or from an edge: a copy lies a little further in, where it can be taken hold of.
    const windows = [...(written.free ?? []), beside(window, written.units ?? 'in')];
    return { written: { ...written, free: windows }, path: `free[${windows.length - 1}]` };
  }
  const whole = arrangementOf(written);
  const places = placesOf(path);
  const item = nodeAt(written, path);
  if (whole === undefined || places === undefined || item === undefined) return undefined;
  const place = places.at(-1);
  const went = place === undefined ? `${ROOT}.items[1]` : `${parentOf(path)}.items[${place + 1}]`;
  return { written: withArrangement(written, splice(whole, places, [item, item])), path: went };
}
