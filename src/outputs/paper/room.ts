/** Room on a page: what is taken, and where a label still finds a place without touching anything. */
import type { Box } from '../../core/geometry/box';

/** Boxes are kept in squares of this side, mm, so that a crowded page costs no more than its neighbourhood. */
const SQUARE = 16;

export class Room {
  private readonly taken = new Map<string, Box[]>();
  private readonly crossable = new Map<string, Box[]>();

  /** Labels stay within this box. */
  constructor(private readonly within: Box) {}

  take(box: Box): void {
    put(this.taken, box);
  }

  /** For what no label may lie on, though a dimension line may cross it. */
  takeCrossable(box: Box): void {
    put(this.crossable, box);
  }

  isFree(box: Box): boolean {
    return this.isOpen(box) && !meets(this.crossable, box);
  }

  /** True where nothing is in the way but what may be crossed. */
  isOpen(box: Box): boolean {
    const { within } = this;
    const inside =
      box.left >= within.left && box.right <= within.right && box.bottom >= within.bottom && box.top <= within.top;
    return inside && this.isClear(box);
  }

  /** True when a box touches nothing but what may be crossed, wherever it lies. */
  isClear(box: Box): boolean {
    return !meets(this.taken, box);
  }

  /** Takes the first of the boxes that is free, or else open; undefined when none is. */
  takeFirst<T extends { readonly box: Box }>(candidates: Iterable<T>, where: 'free' | 'open' = 'free'): T | undefined {
    for (const candidate of candidates) {
      if (!(where === 'free' ? this.isFree(candidate.box) : this.isOpen(candidate.box))) continue;
      this.take(candidate.box);
      return candidate;
    }
    return undefined;
  }
}

function put(into: Map<string, Box[]>, box: Box): void {
  for (const square of squaresOf(box)) {
    const there = into.get(square);
    if (there) there.push(box);
    else into.set(square, [box]);
  }
}

function meets(taken: ReadonlyMap<string, readonly Box[]>, box: Box): boolean {
  return squaresOf(box).some((square) => taken.get(square)?.some((other) => overlaps(box, other)));
}

function squaresOf(box: Box): readonly string[] {
  const squares: string[] = [];
  for (let x = Math.floor(box.left / SQUARE); x <= Math.floor(box.right / SQUARE); x++) {
    for (let y = Math.floor(box.bottom / SQUARE); y <= Math.floor(box.top / SQUARE); y++) squares.push(`${x} ${y}`);
  }
  return squares;
}

export function overlaps(a: Box, b: Box): boolean {
  return a.left < b.right && a.right > b.left && a.bottom < b.top && a.top > b.bottom;
}

/** The box round a straight line, with some air on each side. */
export function boxRound(from: { x: number; y: number }, to: { x: number; y: number }, air: number): Box {
  return {
    left: Math.min(from.x, to.x) - air,
    right: Math.max(from.x, to.x) + air,
    bottom: Math.min(from.y, to.y) - air,
    top: Math.max(from.y, to.y) + air,
  };
}
