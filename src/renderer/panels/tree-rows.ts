/** The tree of windows as the lines of a list. */
import type { WrittenGroup, WrittenJob, WrittenNode } from '../../core/job/written';
import { arrangementOf, isGroup, pathOf, pictureIndex } from '../edits/tree';

export interface TreeRow {
  readonly path: string;
  readonly depth: number;
  readonly kind: 'window' | 'spread' | WrittenGroup['kind'];
  readonly label: string;
}

export const GROUP_WORDS: Readonly<Record<WrittenGroup['kind'], string>> = {
  row: 'Row',
  column: 'Column',
  grid: 'Grid',
  ring: 'Ring',
};
export const USE_WORDS = { title: 'Title', caption: 'Caption', signature: 'Signature', empty: 'Empty window' } as const;

export function treeRows(written: WrittenJob): TreeRow[] {
  const whole = arrangementOf(written);
  return whole === undefined ? [] : rowsOf(written, whole, []);
}

function rowsOf(written: WrittenJob, node: WrittenNode, places: readonly number[]): TreeRow[] {
  const kind = typeof node === 'string' ? 'window' : node.kind;
  const row = { path: pathOf(places), depth: places.length, kind, label: labelOf(written, node) };
  return isGroup(node)
    ? [row, ...node.items.flatMap((item, index) => rowsOf(written, item, [...places, index]))]
    : [row];
}

/** What a line of the list calls an item. */
export function labelOf(written: WrittenJob, node: WrittenNode): string {
  if (typeof node === 'string') return pictureTitle(written, node);
  if (isGroup(node)) return `${GROUP_WORDS[node.kind]} of ${node.items.length}`;
  if (node.kind === 'spread') return `${node.title ?? pictureTitle(written, node.picture)} over ${node.count}`;
  if (node.title) return node.title;
  return node.picture === undefined ? USE_WORDS[node.use ?? 'empty'] : pictureTitle(written, node.picture);
}

/** A picture's title, or its place in the list. */
export function pictureTitle(written: WrittenJob, reference: string | number | undefined): string {
  const index = pictureIndex(written, reference);
  if (index < 0) return reference === undefined ? 'No picture' : `Picture "${reference}" (missing)`;
  return written.pictures?.[index]?.title || `Picture ${index + 1}`;
}

/** The id by which a window names the picture at a place of the list. */
export function pictureReference(written: WrittenJob, index: number): string {
  return written.pictures?.[index]?.id ?? String(index + 1);
}
