/** Laying out as many windows of one size as fit a blank, in place of the arrangement there was. */
import { SIDES, type Box, type PerSide } from '../../core/geometry/box';
import type { FitBlock } from '../../core/layout/fit-blocks';
import { placesOf, type HowMany } from '../../core/layout/how-many';
import type { Layout } from '../../core/layout/layout';
import type { WrittenGroup, WrittenJob, WrittenLength, WrittenNode, WrittenWindow } from '../../core/job/written';
import type { Unit } from '../../core/units';
import { turnedSize } from '../../core/job/size-text';
import { exactText } from '../../core/job/exact-text';

/** Sizes that differ by less are one, mm. */
const SAME = 0.001;

/** The answer's lengths as the user typed them, so that the job says them in the same words. */
export interface TypedHowMany {
  readonly size: string;
  readonly on: string;
  readonly gap: WrittenLength;
}

/** Pictures, by their number in the list, that the windows show as they are: those whose windows have this very size. */
export function picturesThatFit({ ask }: HowMany, layout: Layout | undefined): number[] {
  const fits = (box: Box) =>
    Math.abs(box.right - box.left - ask.size.width) < SAME && Math.abs(box.top - box.bottom - ask.size.height) < SAME;
  const shown = layout?.windows.filter(({ picture, window }) => picture && !picture.part && fits(window)) ?? [];
  return [...new Set(shown.flatMap(({ picture }) => (picture ? [picture.index + 1] : [])))];
}

/**
 * The job with these windows: a row, column or grid, two grids side by side, or, staggered, every window by its place.
 * Pictures whose windows have the size are shown in the first of them; the blank becomes the one that was asked for.
 */
export function layOutMany(
  written: WrittenJob,
  answer: HowMany,
  typed: TypedHowMany,
  layout: Layout | undefined,
  units: Unit,
): WrittenJob {
  const { windows: _windows, free: _free, borders: _borders, ...rest } = written;
  const framed = { ...rest, ...frameOf(written, answer, typed, layout) };
  const pictures = picturesThatFit(answer, layout);
  const window = (index: number, turned: boolean): WrittenWindow => {
    const picture = pictures[index];
    return {
      kind: 'window',
      // A size is written as the window stands; what a picture's window is, follows from the picture.
      ...(picture === undefined
        ? { use: 'empty', size: turned ? turnedSize(typed.size) : typed.size }
        : { picture, ...(turned ? { turned: 90 } : {}) }),
      ...(answer.ask.shape === 'oval' ? { shape: 'oval' } : {}),
    };
  };
  const { best } = answer;
  if (best.way === 'staggered') {
    // The first is the arrangement: a job that says none would have its other pictures in a row.
    const [corner, ...others] = placesOf(answer);
    const from = (box: Box) => ({
      left: exactText(box.left, units),
      top: exactText(answer.ask.blank.height - box.top, units),
    });
    const free = others.map(({ box, turned }, index) => {
      const { kind: _kind, ...one } = window(index + 1, turned);
      return { ...one, at: from(box) };
    });
    return {
      ...framed,
      ...(corner ? { windows: window(0, corner.turned), borders: { rule: 'by-hand', ...from(corner.box) } } : {}),
      free,
    };
  }
  let first = 0;
  const blocks = best.blocks.map((block) => {
    const node = blockOf(block, (index) => window(first + index, block.turned), typed.gap);
    first += block.columns * block.rows;
    return node;
  });
  const [only] = blocks;
  const kind = best.along === 'across' ? 'row' : 'column';
  const windows = blocks.length === 1 && only !== undefined ? only : { kind, items: blocks, gap: typed.gap };
  return { ...framed, windows: windows as WrittenNode, borders: bordersOf(answer, units) };
}

function blockOf(block: FitBlock, window: (index: number) => WrittenWindow, gap: WrittenLength): WrittenNode {
  const { columns, rows } = block;
  const items = Array.from({ length: columns * rows }, (_, index) => window(index));
  const [only] = items;
  if (items.length === 1 && only) return only;
  const group: WrittenGroup =
    rows === 1
      ? { kind: 'row', items, gap }
      : columns === 1
        ? { kind: 'column', items, gap }
        : { kind: 'grid', columns, items, gap };
  return group;
}

/** Equal least borders leave the windows in the middle; others are held at the left and the top. */
function bordersOf({ borders }: HowMany, units: Unit): NonNullable<WrittenJob['borders']> {
  if (isCentred(borders)) return { rule: 'centred' };
  return {
    rule: 'by-hand',
    ...Object.fromEntries((['left', 'top'] as const).map((side) => [side, exactText(borders[side], units)])),
  };
}

function isCentred(borders: PerSide): boolean {
  const [left, top, right, bottom] = SIDES.map((side) => borders[side]) as [number, number, number, number];
  return Math.abs(left - right) < SAME && Math.abs(top - bottom) < SAME;
}

/** A frame that has the size already stays as it is written. */
function frameOf(
  { frame = {} }: WrittenJob,
  { ask }: HowMany,
  typed: TypedHowMany,
  layout: Layout | undefined,
): Pick<WrittenJob, 'frame'> {
  const blank = layout?.frame.blank;
  const same =
    blank && Math.abs(blank.width - ask.blank.width) < SAME && Math.abs(blank.height - ask.blank.height) < SAME;
  const said = frame.size !== undefined || frame.readyMade !== undefined;
  if (said && same) return { frame };
  const { readyMade: _readyMade, size: _size, ...rest } = frame;
  return { frame: { ...rest, size: typed.on } };
}
