/** How many windows of one size a blank holds, which way they stand best, and what a little less gap or border would give. */
import { eachSide, shift, type Box, type PerSide, type Size } from '../geometry/box';
import { inOneBlock, inTwoBlocks, roomTaken, turnedSize, widestGap, blockSize, type Blocks } from './fit-blocks';
import { staggered, staggeredMiddles, staggeredRoom, type Staggered } from './fit-staggered';
import type { HowManyAsk } from './how-many-ask';

export type FitWay = Blocks | Staggered;

/** One more way to fill the blank, and what it would take, mm. */
export interface More {
  readonly count: number;
  readonly way: FitWay;
}

export interface HowMany {
  readonly ask: HowManyAsk;
  /** The first of those that hold most: upright, turned, mixed, staggered. */
  readonly best: FitWay;
  /** All upright, then all turned (not of a square or a circle). */
  readonly plain: readonly Blocks[];
  /** The borders that result: what is left over is shared equally between opposite sides. */
  readonly borders: PerSide;
  /** The widest smaller gap that holds more. */
  readonly smallerGap?: More & { readonly gap: number };
  /** The least by which all least borders have to shrink to hold more. */
  readonly smallerBorder?: More & { readonly by: number };
}

/** The answer in mm, nothing rounded. */
export function howMany(ask: HowManyAsk): HowMany {
  const best = bestWay(ask);
  const smallerGap = moreByGap(ask, best.count);
  const smallerBorder = moreByBorder(ask, best.count);
  return {
    ask,
    best,
    plain: plainWays(ask),
    borders: bordersOf(ask, best),
    ...(smallerGap ? { smallerGap } : {}),
    ...(smallerBorder ? { smallerBorder } : {}),
  };
}

/** Every window's place on the blank, from its lower left corner, as the sheet is read; true of those turned. */
export function placesOf({ ask, best, borders }: HowMany): readonly { readonly box: Box; readonly turned: boolean }[] {
  const { blank, size, gap } = ask;
  const room = takenBy(best, ask);
  const corner = { x: borders.left, y: blank.height - borders.top };
  const place = (left: number, top: number, turned: boolean) => {
    const { width, height } = turned ? turnedSize(size) : size;
    return { box: shift({ left, right: left + width, top: -top, bottom: -top - height }, corner), turned };
  };
  if (best.way === 'staggered') {
    const { width, height } = best.turned ? turnedSize(size) : size;
    return staggeredMiddles(best, size, gap).map(({ x, y }) => place(x - width / 2, y - height / 2, best.turned));
  }
  let start = 0;
  return best.blocks.flatMap((block) => {
    const own = blockSize(block, size, gap);
    const one = block.turned ? turnedSize(size) : size;
    const across = best.along === 'across';
    const left = across ? start : (room.width - own.width) / 2;
    const top = across ? (room.height - own.height) / 2 : start;
    start += (across ? own.width : own.height) + gap;
    return Array.from({ length: block.columns * block.rows }, (_, index) => {
      const [column, row] = [index % block.columns, Math.floor(index / block.columns)];
      return place(left + column * (one.width + gap), top + row * (one.height + gap), block.turned);
    });
  });
}

function roomOf({ blank, border }: HowManyAsk): Size {
  return { width: blank.width - border.left - border.right, height: blank.height - border.top - border.bottom };
}

function plainWays(ask: HowManyAsk): Blocks[] {
  const { size, gap } = ask;
  const room = roomOf(ask);
  const upright = inOneBlock(room, size, gap, false);
  return size.width === size.height ? [upright] : [upright, inOneBlock(room, size, gap, true)];
}

function bestWay(ask: HowManyAsk): FitWay {
  const { size, gap, shape } = ask;
  const room = roomOf(ask);
  const ways: FitWay[] = plainWays(ask);
  if (size.width !== size.height) ways.push(inTwoBlocks(room, size, gap));
  if (shape === 'oval') ways.push(staggered(room, size, gap));
  return ways.reduce((most, way) => (way.count > most.count ? way : most));
}

function takenBy(way: FitWay, { size, gap }: HowManyAsk): Size {
  if (way.count === 0) return { width: 0, height: 0 };
  return way.way === 'staggered' ? staggeredRoom(way, size, gap) : roomTaken(way, size, gap);
}

function bordersOf(ask: HowManyAsk, way: FitWay): PerSide {
  const [room, taken] = [roomOf(ask), takenBy(way, ask)];
  const spare = { across: room.width - taken.width, up: room.height - taken.height };
  return eachSide((side) => ask.border[side] + (side === 'left' || side === 'right' ? spare.across : spare.up) / 2);
}

/** Halvings that leave less than any ruler shows. */
const HALVINGS = 60;

/** A little smaller is no less than half; where nothing fits, anything helps. */
const leastPart = (count: number) => (count === 0 ? 1e-6 : 0.5);

/** The greatest part, below 1, of a length for which it holds; undefined where it does not even for the least. */
function turningPoint(least: number, holds: (part: number) => boolean): number | undefined {
  if (!holds(least)) return undefined;
  let [low, high] = [least, 1];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function moreByGap(ask: HowManyAsk, count: number): HowMany['smallerGap'] {
  const at = (part: number) => bestWay({ ...ask, gap: ask.gap * part });
  const part = turningPoint(leastPart(count), (each) => at(each).count > count);
  if (part === undefined) return undefined;
  const way = at(part);
  // Rows and columns say the gap exactly; staggered ones are found to the last bits.
  const gap = way.way === 'staggered' ? ask.gap * part : Math.min(ask.gap, widestGap(way, roomOf(ask), ask.size));
  return { ...moreIn({ ...ask, gap }), gap };
}

function moreByBorder(ask: HowManyAsk, count: number): HowMany['smallerBorder'] {
  const most = Math.min(...Object.values(ask.border));
  const less = (by: number): HowManyAsk => ({ ...ask, border: eachSide((side) => ask.border[side] - by) });
  const at = (part: number) => bestWay(less(most * (1 - part)));
  const part = most > 0 ? turningPoint(leastPart(count), (each) => at(each).count > count) : undefined;
  if (part === undefined) return undefined;
  const way = at(part);
  const [room, taken] = [roomOf(ask), takenBy(way, ask)];
  const by = Math.max(0, taken.width - room.width, taken.height - room.height) / 2;
  return { ...moreIn(less(by)), by };
}

/** At the very length more may fit than a hair before it. */
function moreIn(ask: HowManyAsk): More {
  const way = bestWay(ask);
  return { count: way.count, way };
}
