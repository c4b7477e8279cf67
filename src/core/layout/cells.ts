/** Turns the job's tree of windows into cells of known size: windows as leaves, lines and grids around them. */
import {
  grow,
  heightOf,
  insets,
  quarterTurnedBox,
  shift,
  sizeOf,
  widthOf,
  type Box,
  type PerSide,
  type Size,
} from '../geometry/box';
import type { Outline } from '../geometry/outline';
import type { Arrangement, GapRule, Job, Picture, QuarterTurn, SpreadItem, WindowItem, WindowShape } from '../job/job';
import { assert } from '../problem';
import type { PlacedPicture } from './layout';
import { shapeIn, turnedOutline, type Misfit } from './leaf-shape';

/** `across` runs from left to right, `up` from the top down as rows are read. */
export type Axis = 'across' | 'up';
export type Align = 'start' | 'centre' | 'end' | 'baseline';

/** A picture behind a leaf, with boxes measured from the lower left corner of the leaf's window. */
export interface LeafPicture extends Pick<PlacedPicture, 'index' | 'part' | 'turned'> {
  readonly sheet: Box;
  readonly image: Box;
}

/** One window. */
export interface Leaf {
  readonly kind: 'leaf';
  readonly at: string;
  readonly use: WindowItem['use'];
  readonly title: string;
  /** Of the opening of the bottom layer. */
  readonly size: Size;
  readonly shape: WindowShape;
  /** From the window's lower left corner; undefined of a plain rectangle. */
  readonly outline?: Outline;
  /** A measure of the shape that the window has no room for. */
  readonly misfit?: Misfit;
  readonly picture?: LeafPicture;
  /** Groups it stands in, outermost first. */
  readonly groups: readonly Group[];
  /** How the size came about, for those who follow the sum. */
  readonly from: 'overlap' | 'written' | 'written at face' | 'spread';
}

/** A row (`across`) or a column (`up`). */
export interface Line {
  readonly kind: 'line';
  readonly axis: Axis;
  readonly cells: readonly Cell[];
  readonly gap: GapRule;
  readonly gapAt: string;
  readonly align: Align;
}

export interface Grid {
  readonly kind: 'grid';
  readonly cells: readonly Cell[];
  readonly columns: number;
  readonly gap: Readonly<Record<Axis, GapRule>>;
  readonly gapAt: Readonly<Record<Axis, string>>;
  readonly align: Readonly<Record<Axis, Align>>;
}

export type Group = Line | Grid;
export type Cell = Leaf | Group;

const ALIGN = {
  left: 'start',
  top: 'start',
  centre: 'centre',
  right: 'end',
  bottom: 'end',
  baseline: 'baseline',
} as const;

/** How much smaller than its face edge an opening of the bottom layer is, per side. */
export function bottomRun(job: Job): number {
  const layer = job.layers.at(-1);
  assert(layer, 'a mat has at least one layer');
  return layer.bevel.direction === 'standard'
    ? layer.thickness * Math.tan((layer.bevel.angleDegrees * Math.PI) / 180)
    : 0;
}

/** The cell of an arrangement and all below it. */
export function cellOf(item: Arrangement, job: Job, groups: readonly Group[] = []): Cell {
  switch (item.kind) {
    case 'window':
      return leafOf(item, job, groups);
    case 'spread':
      return spreadOf(item, job, groups);
    case 'row':
    case 'column': {
      const axis = item.kind === 'row' ? 'across' : 'up';
      const shape = { kind: 'line', axis, gap: item.gap, gapAt: `${item.at}.gap`, align: ALIGN[item.align] } as const;
      return withCells(shape, item.items, job, groups);
    }
    case 'grid': {
      const shape = {
        kind: 'grid',
        columns: item.columns,
        gap: { across: item.columnGap, up: item.rowGap },
        gapAt: { across: item.columnGapAt, up: item.rowGapAt },
        align: { across: ALIGN[item.alignColumns], up: ALIGN[item.alignRows] },
      } as const;
      return withCells(shape, item.items, job, groups);
    }
  }
}

/** All windows of a cell, in reading order. */
export function allLeaves(cell: Cell): Leaf[] {
  return cell.kind === 'leaf' ? [cell] : cell.cells.flatMap(allLeaves);
}

function withCells(
  shape: Omit<Line, 'cells'> | Omit<Grid, 'cells'>,
  items: readonly Arrangement[],
  job: Job,
  groups: readonly Group[],
): Group {
  const cells: Cell[] = [];
  const group = { ...shape, cells } as Group;
  const inside = [...groups, group];
  cells.push(...items.map((item) => cellOf(item, job, inside)));
  return group;
}

function leafOf(item: WindowItem, job: Job, groups: readonly Group[]): Leaf {
  const { at, use, title, shape, turned, mirrored } = item;
  const picture = item.picture === undefined ? undefined : job.pictures[item.picture];
  const atFace = job.measuredAt === 'face' && bottomRun(job) > 0;
  const written = item.size && (turned % 180 === 0 ? item.size : swapped(item.size));
  const run = atFace && written ? bottomRun(job) : 0;
  const from = written ? (run > 0 ? 'written at face' : 'written') : 'overlap';
  const boxes = picture && (written ? centredWindow(picture, written) : overlappedWindow(picture));
  const given = boxes ? sizeOf(boxes.window) : written;
  assert(given, 'a window without a picture has a size');
  const { size, outline, misfit } = shapeIn(shape, given, run);
  const upright: Leaf = {
    kind: 'leaf',
    at,
    use,
    title,
    groups,
    from,
    shape,
    size,
    ...(outline ? { outline: turnedOutline(outline, size, turned, mirrored) } : {}),
    ...(misfit ? { misfit } : {}),
    ...(boxes ? { picture: behind(boxes, size, item.picture ?? 0) } : {}),
  };
  return turned === 0 ? upright : turnedLeaf(upright, turned);
}

/** Sheet and image as they lie behind a window in the middle of the one that was asked for. */
function behind({ window, sheet, image }: PictureBoxes, size: Size, index: number): LeafPicture {
  const corner = {
    x: (size.width - widthOf(window)) / 2 - window.left,
    y: (size.height - heightOf(window)) / 2 - window.bottom,
  };
  return { index, sheet: shift(sheet, corner), image: shift(image, corner) };
}

/** Size and picture turned; the outline is turned already. */
function turnedLeaf(leaf: Leaf, turned: QuarterTurn): Leaf {
  let { size, picture } = leaf;
  for (let turn = 0; turn < turned; turn += 90) {
    const { height } = size;
    if (picture) {
      const [sheet, image] = [quarterTurnedBox(picture.sheet, height), quarterTurnedBox(picture.image, height)];
      picture = { ...picture, sheet, image };
    }
    size = swapped(size);
  }
  return { ...leaf, size, ...(picture ? { picture: { ...picture, turned } } : {}) };
}

function swapped({ width, height }: Size): Size {
  return { width: height, height: width };
}

interface PictureBoxes {
  readonly window: Box;
  readonly sheet: Box;
  readonly image: Box;
}

/** Sheet and image of a picture, the sheet's lower left corner at the origin. */
function boxesOf(picture: Picture): { sheet: Box; image: Box; covered: Box } {
  const sheet = { left: 0, bottom: 0, right: picture.sheet.width, top: picture.sheet.height };
  const image = {
    left: picture.margins.left,
    bottom: picture.margins.bottom,
    right: picture.margins.left + picture.image.width,
    top: picture.margins.bottom + picture.image.height,
  };
  return { sheet, image, covered: picture.overlapFrom === 'image' ? image : sheet };
}

function overlappedWindow(picture: Picture): PictureBoxes {
  const boxes = boxesOf(picture);
  return { ...boxes, window: grow(boxes.covered, negative(picture.overlap)) };
}

function centredWindow(picture: Picture, size: Size): PictureBoxes {
  const boxes = boxesOf(picture);
  const across = (widthOf(boxes.covered) - size.width) / 2;
  const up = (heightOf(boxes.covered) - size.height) / 2;
  return { ...boxes, window: grow(boxes.covered, { left: -across, right: -across, top: -up, bottom: -up }) };
}

/** A row or column of windows that together show one picture. */
function spreadOf(item: SpreadItem, job: Job, groups: readonly Group[]): Line {
  const picture = job.pictures[item.picture];
  assert(picture, 'a spread shows a picture');
  const { window, sheet, image } = overlappedWindow(picture);
  const along = item.along === 'row' ? 'across' : 'up';
  const whole = along === 'across' ? widthOf(window) : heightOf(window);
  const hidden = item.bars === 'hide' ? item.gap : 0;
  const shown = whole - hidden * (item.shares.length - 1);
  const cells: Leaf[] = [];
  const line: Line = { kind: 'line', axis: along, cells, gap: item.gap, gapAt: `${item.at}.gap`, align: 'centre' };
  let start = 0;
  for (const [index, share] of item.shares.entries()) {
    const length = share * shown;
    // The part of the whole window that this window shows, seen from the whole window's lower left corner.
    const part =
      along === 'across'
        ? { left: window.left + start, right: window.left + start + length, bottom: window.bottom, top: window.top }
        : { left: window.left, right: window.right, top: window.top - start, bottom: window.top - start - length };
    const lay = (box: Box) => shift(box, { x: -part.left, y: -part.bottom });
    const own = grow(part, insets(sheet, window));
    cells.push({
      kind: 'leaf',
      at: item.at,
      use: 'picture',
      title: `${item.title} (${index + 1} of ${item.shares.length})`,
      size: sizeOf(part),
      shape: { kind: 'rectangle' },
      picture: {
        index: item.picture,
        // Split: each part is a sheet of its own, with as much beyond its window as the whole has beyond the outer ones.
        sheet: lay(item.bars === 'split' ? own : sheet),
        image: lay(image),
        part: { index, count: item.shares.length, way: item.bars === 'hide' ? 'hidden' : 'split' },
      },
      groups: [...groups, line],
      from: 'spread',
    });
    start += length + hidden;
  }
  return line;
}

function negative(sides: PerSide): PerSide {
  return { left: -sides.left, top: -sides.top, right: -sides.right, bottom: -sides.bottom };
}
