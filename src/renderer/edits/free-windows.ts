/** Windows placed freely: taking one out of the arrangement with the place it has, adding one, moving one by its coordinates. */
import { heightOf, widthOf, type Point } from '../../core/geometry/box';
import type { WrittenFreeWindow, WrittenJob, WrittenNode, WrittenWindow } from '../../core/job/written';
import type { Layout, PlacedWindow } from '../../core/layout/layout';
import type { Edit } from '../../core/problem';
import type { Unit } from '../../core/units';
import type { Arranged } from './arrange';
import { exactText } from './exact-text';
import { arrangementOf, isGroup, nodeAt, placesOf, splice, withArrangement } from './tree';

/** Takes a window out of the arrangement and holds it where it now is. */
export function freeItem(written: WrittenJob, layout: Layout | undefined, path: string): Arranged | undefined {
  const node = nodeAt(written, path);
  const whole = arrangementOf(written);
  const places = placesOf(path);
  const placed = layout?.windows.find((window) => window.at === path);
  if (node === undefined || whole === undefined || places === undefined || placed === undefined) return undefined;
  const window = asWindow(node);
  if (window === undefined) return undefined;
  const units = written.units ?? 'in';
  const at = { left: exactText(placed.borders.left, units), top: exactText(placed.borders.top, units) };
  const free: WrittenFreeWindow[] = [...(written.free ?? []), { ...window, at }];
  return {
    written: { ...withArrangement(written, splice(whole, places, [])), free },
    path: `free[${free.length - 1}]`,
  };
}

/** A window's fields without its kind; undefined for a group or a spread. */
function asWindow(node: WrittenNode): Omit<WrittenWindow, 'kind'> | undefined {
  if (typeof node === 'string') return { picture: node };
  if (isGroup(node) || node.kind === 'spread') return undefined;
  const { kind: _kind, ...fields } = node;
  return fields;
}

/** Adds a freely placed window in the middle of the blank. */
export function addFree(written: WrittenJob, window: Omit<WrittenWindow, 'kind'>): Arranged {
  const free: WrittenFreeWindow[] = [...(written.free ?? []), { ...window, at: {} }];
  return { written: { ...written, free }, path: `free[${free.length - 1}]` };
}

/** Removes a freely placed window; undefined when it is the only window there is. */
export function removeFree(written: WrittenJob, index: number): WrittenJob | undefined {
  const free = (written.free ?? []).filter((_, place) => place !== index);
  const { free: _old, ...rest } = written;
  if (free.length > 0) return { ...rest, free };
  return arrangementOf(rest) === undefined ? undefined : rest;
}

/** The edits that put a freely placed window's lower left corner at a point, kept from the edges it is held from. */
export function moveFreeEdits(
  written: WrittenFreeWindow,
  path: string,
  placed: PlacedWindow,
  layout: Layout,
  corner: Point,
  units: Unit,
): Edit[] {
  const { width, height } = layout.frame.blank;
  const right = width - corner.x - widthOf(placed.window);
  const top = height - corner.y - heightOf(placed.window);
  const across = written.at.right !== undefined ? { key: 'right', mm: right } : { key: 'left', mm: corner.x };
  const up = written.at.bottom !== undefined ? { key: 'bottom', mm: corner.y } : { key: 'top', mm: top };
  return [across, up].map(({ key, mm }) => ({ at: `${path}.at.${key}`, value: exactText(mm, units) }));
}
