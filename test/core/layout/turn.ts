/** A written job turned a quarter clockwise: what was at the left comes to the top. */
import { setAt } from '../../../src/core/job/edit';
import type { WrittenJob, WrittenNode, WrittenSize } from '../../../src/core/job/written';
import type { Box, Point, Size } from '../../../src/core/geometry/box';

type Sides<T> = { left?: T; top?: T; right?: T; bottom?: T };

/** Jobs that can be turned: borders alike on either side of each axis, full grids, no baselines, no margins. */
export function turnJob(job: WrittenJob): WrittenJob {
  const { borders, frame } = job;
  return {
    ...job,
    ...(job.pictures
      ? {
          pictures: job.pictures.map((picture) => ({
            ...picture,
            size: turnSize(picture.size),
            ...(picture.image === undefined ? {} : { image: turnSize(picture.image) }),
            ...(picture.overlap === undefined ? {} : { overlap: turnValue(picture.overlap) }),
          })),
        }
      : {}),
    ...(frame?.size === undefined ? {} : { frame: { ...frame, size: turnSize(frame.size) } }),
    ...(job.mat?.layers
      ? {
          mat: {
            ...job.mat,
            layers: job.mat.layers.map((layer) =>
              layer.reveal === undefined ? layer : { ...layer, reveal: turnValue(layer.reveal) },
            ),
          },
        }
      : {}),
    ...(job.windows === undefined ? {} : { windows: turnNode(job.windows) }),
    ...(job.free
      ? {
          free: job.free.map((window) => ({
            ...window,
            at: turnSides(window.at),
            ...(window.size === undefined ? {} : { size: turnSize(window.size) }),
          })),
        }
      : {}),
    ...(borders ? { borders: { ...borders, ...turnSides(borders) } } : {}),
  } as WrittenJob;
}

function turnSize(size: WrittenSize): WrittenSize {
  if (typeof size === 'object') return { width: size.height, height: size.width };
  const found = /^(.*?) x (.*?) mm$/.exec(size);
  if (!found) throw new Error(`a size to turn is in millimetres, not ${size}`);
  return `${found[2]} x ${found[1]} mm`;
}

function turnSides<T>({ left, top, right, bottom }: Sides<T>): Sides<T> {
  const turned = { left: bottom, top: left, right: top, bottom: right };
  return Object.fromEntries(Object.entries(turned).filter(([, value]) => value !== undefined)) as Sides<T>;
}

function turnValue<T>(value: T | Sides<T>): T | Sides<T> {
  return value !== null && typeof value === 'object' ? turnSides(value as Sides<T>) : value;
}

const TURNED = { left: 'top', right: 'bottom', top: 'right', bottom: 'left', centre: 'centre' } as const;
const turnAlign = (align: string | undefined) => (align === undefined ? undefined : TURNED[align as 'left']);

function turnNode(node: WrittenNode): WrittenNode {
  if (typeof node === 'string') return node;
  switch (node.kind) {
    case 'window':
      return node.size === undefined ? node : { ...node, size: turnSize(node.size) };
    case 'spread':
      return node.along === 'column'
        ? { ...node, along: 'row', shares: node.shares?.toReversed() }
        : { ...node, along: 'column' };
    case 'row':
      return { ...node, kind: 'column', items: node.items.map(turnNode), align: turnAlign(node.align) as 'right' };
    case 'column':
      return { ...node, kind: 'row', items: node.items.map(turnNode).reverse(), align: turnAlign(node.align) as 'top' };
    case 'grid': {
      const rows = node.items.length / node.columns;
      // Item at row r, column c comes to row c, column rows - 1 - r.
      const items = Array.from({ length: node.items.length }, (_, index) => {
        const [row, column] = [Math.floor(index / rows), index % rows];
        return turnNode(node.items[(rows - 1 - column) * node.columns + row] as WrittenNode);
      });
      const { columnGap, rowGap, alignColumns, alignRows } = node;
      return {
        ...node,
        items,
        columns: rows,
        columnGap: rowGap,
        rowGap: columnGap,
        alignColumns: turnAlign(alignRows) as 'left',
        alignRows: turnAlign(alignColumns) as 'top',
      };
    }
    case 'ring':
      return {
        ...node,
        items: node.items.map(turnNode),
        start: (node.start ?? 0) + 90,
        ...(node.on === undefined ? {} : { on: turnSize(node.on) }),
      };
  }
}

/** Makes a random job one that can be turned. */
export function turnable(job: WrittenJob): WrittenJob {
  const borders = { rule: 'centred', measured: job.borders?.measured } as const;
  return setAt(setAt(job, 'borders', borders), 'windows', job.windows && full(job.windows));
}

function full(node: WrittenNode): WrittenNode {
  if (typeof node === 'string' || !('items' in node)) return node;
  const items = node.items.map(full);
  if (node.kind === 'row') return { ...node, items, align: node.align === 'baseline' ? 'bottom' : node.align };
  if (node.kind === 'column' || node.kind === 'ring') return { ...node, items };
  const columns = Math.min(node.columns, items.length);
  return {
    ...node,
    columns,
    items: items.slice(0, items.length - (items.length % columns)),
    alignRows: node.alignRows === 'baseline' ? 'bottom' : node.alignRows,
  };
}

/** A point of the front view after a quarter turn clockwise of a blank that was this size. */
export function turnPoint({ x, y }: Point, blank: Size): Point {
  return { x: y, y: blank.width - x };
}

/** A point of the back view: the back turns the other way. */
export function turnBackPoint({ x, y }: Point, blank: Size): Point {
  return { x: blank.height - y, y: x };
}

export function turnBox({ left, bottom, right, top }: Box, blank: Size): Box {
  const [a, b] = [turnPoint({ x: left, y: bottom }, blank), turnPoint({ x: right, y: top }, blank)];
  return { left: a.x, bottom: b.y, right: b.x, top: a.y };
}
