/** Windows placed freely: taking one out of the arrangement with the place it has, adding one, moving one by its coordinates. */
import { heightOf, widthOf, type Point } from '../../core/geometry/box';
import type { WrittenFreeWindow, WrittenJob, WrittenNode, WrittenWindow } from '../../core/job/written';
import type { Layout, PlacedWindow } from '../../core/layout/layout';
import type { Edit } from '../../core/problem';
import type { Unit } from '../../core/units';
import type { Arranged } from './arrange';
import { exactText, placeText } from '../../core/job/exact-text';
import { arrangementOf, isGroup, pathOf } from './tree';

/**
 * Takes the whole arrangement apart and holds every window where it now is, in a frame of the size it now has.
 * Undefined where that cannot be said: a spread shows parts of a picture, and a part is no picture of its own.
 */
export function freeAll(written: WrittenJob, layout: Layout | undefined): Arranged | undefined {
  const whole = arrangementOf(written);
  if (whole === undefined || layout === undefined) return undefined;
  const units = written.units ?? 'in';
  const freed = windowsOf(whole, []).map(({ path, window }) => {
    const placed = layout.windows.find((each) => each.at === path);
    const at = placed && { left: exactText(placed.borders.left, units), top: exactText(placed.borders.top, units) };
    return window && at && { ...window, at };
  });
  if (freed.some((window) => window === undefined)) return undefined;
  const free = [...(written.free ?? []), ...freed.filter((window) => window !== undefined)];
  const { windows: _arranged, ...rest } = written;
  return { written: { ...rest, ...heldFrame(written, layout, units), free }, path: `free[${free.length - 1}]` };
}

/** A frame made to fit the borders of an arrangement keeps its size when that is gone. */
function heldFrame(written: WrittenJob, layout: Layout, units: Unit): Pick<WrittenJob, 'frame'> {
  const { frame = {} } = written;
  if (frame.size !== undefined || frame.readyMade !== undefined) return {};
  const { width, height } = layout.frame.blank;
  return { frame: { ...frame, size: `${exactText(width, units)} x ${exactText(height, units)}` } };
}

interface Found {
  readonly path: string;
  /** A window's fields without its kind; undefined for a spread. */
  readonly window: Omit<WrittenWindow, 'kind'> | undefined;
}

function windowsOf(node: WrittenNode, places: readonly number[]): Found[] {
  const path = pathOf(places);
  if (typeof node === 'string') return [{ path, window: { picture: node } }];
  if (isGroup(node)) return node.items.flatMap((item, index) => windowsOf(item, [...places, index]));
  if (node.kind === 'spread') return [{ path, window: undefined }];
  const { kind: _kind, ...window } = node;
  return [{ path, window }];
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
  return [across, up].map(({ key, mm }) => ({ at: `${path}.at.${key}`, value: placeText(mm, units) }));
}
