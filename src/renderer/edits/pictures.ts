/** Changes to the list of pictures that keep every window over the picture it shows. */
import type { WrittenFreeWindow, WrittenJob, WrittenNode, WrittenPicture } from '../../core/job/written';
import { addItem, removeItemAt } from './arrange';
import { arrangementOf, isGroup, pathOf, pictureIndex } from './tree';

type Reference = string | number | undefined;

/** Adds a picture with a window over it, last in the arrangement. */
export function addPicture(written: WrittenJob, picture: WrittenPicture): WrittenJob {
  const pictures = [...(written.pictures ?? []), picture];
  const grown = { ...written, pictures };
  if (written.windows === undefined) return grown;
  return addItem(grown, 'windows', picture.id ?? String(pictures.length)).written;
}

/** A copy of a picture, right after it, with a window of its own. */
export function duplicatePicture(written: WrittenJob, index: number): WrittenJob {
  const picture = written.pictures?.[index];
  if (picture === undefined) return written;
  const { id: _id, ...copy } = picture;
  const added = addPicture(written, copy);
  return movePicture(added, (added.pictures ?? []).length - 1, index + 1);
}

/** Removes a picture and the windows over it. */
export function removePicture(written: WrittenJob, index: number): WrittenJob {
  const alone = takeWindows(written, index);
  const order = (alone.pictures ?? []).map((_, place) => place).filter((place) => place !== index);
  return reorder(alone, order);
}

/** Moves a picture to another place in the list. */
export function movePicture(written: WrittenJob, from: number, to: number): WrittenJob {
  const order = (written.pictures ?? []).map((_, place) => place);
  const [moved] = order.splice(from, 1);
  if (moved === undefined) return written;
  order.splice(to, 0, moved);
  return reorder(written, order);
}

/** The pictures in a new order of their old places; references by place follow their picture. */
function reorder(written: WrittenJob, order: readonly number[]): WrittenJob {
  const old = written.pictures ?? [];
  const pictures = order.flatMap((place) => old[place] ?? []);
  const follow = (reference: Reference): Reference => {
    const index = pictureIndex(written, reference);
    const place = order.indexOf(index);
    if (place < 0 || old[index]?.id !== undefined) return reference;
    return typeof reference === 'number' ? place + 1 : String(place + 1);
  };
  const windows = written.windows === undefined ? {} : { windows: mapReferences(written.windows, follow) };
  const free = written.free === undefined ? {} : { free: written.free.map((window) => withReference(window, follow)) };
  return { ...written, pictures, ...windows, ...free };
}

function mapReferences(node: WrittenNode, follow: (reference: Reference) => Reference): WrittenNode {
  if (typeof node === 'string') return String(follow(node));
  if (isGroup(node)) return { ...node, items: node.items.map((item) => mapReferences(item, follow)) };
  return withReference(node, follow);
}

function withReference<T extends { picture?: Reference }>(window: T, follow: (reference: Reference) => Reference): T {
  return window.picture === undefined ? window : { ...window, picture: follow(window.picture) };
}

function takeWindows(written: WrittenJob, index: number): WrittenJob {
  const free = written.free?.filter((window: WrittenFreeWindow) => pictureIndex(written, window.picture) !== index);
  const job = free === undefined ? written : { ...written, free };
  if (job.windows === undefined) return job;
  const path = findWindow(job, arrangementOf(job), index, []);
  if (path === undefined) return job;
  const removed = removeItemAt(job, path);
  if (removed !== undefined) return takeWindows(removed.written, index);
  const { windows: _gone, ...rest } = job;
  return rest;
}

function findWindow(
  written: WrittenJob,
  node: WrittenNode | undefined,
  index: number,
  places: readonly number[],
): string | undefined {
  if (node === undefined) return undefined;
  if (isGroup(node)) {
    for (const [place, item] of node.items.entries()) {
      const found = findWindow(written, item, index, [...places, place]);
      if (found !== undefined) return found;
    }
    return undefined;
  }
  const reference = typeof node === 'string' ? node : node.picture;
  return pictureIndex(written, reference) === index ? pathOf(places) : undefined;
}
