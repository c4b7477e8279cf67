/** Room on a page: what is taken, and where a label still finds a place without touching anything. */
import type { Box } from '../../core/geometry/box';

export class Room {
  private readonly taken: Box[] = [];

  /** Labels stay within this box. */
  constructor(private readonly within: Box) {}

  take(box: Box): void {
    this.taken.push(box);
  }

  isFree(box: Box): boolean {
    const { within } = this;
    const inside =
      box.left >= within.left && box.right <= within.right && box.bottom >= within.bottom && box.top <= within.top;
    return inside && this.isClear(box);
  }

  /** True when a box touches nothing, wherever it lies. */
  isClear(box: Box): boolean {
    return !this.taken.some((other) => overlaps(box, other));
  }

  /** Takes the first of the boxes that is free; undefined when none is. */
  takeFirst<T extends { readonly box: Box }>(candidates: Iterable<T>): T | undefined {
    for (const candidate of candidates) {
      if (!this.isFree(candidate.box)) continue;
      this.take(candidate.box);
      return candidate;
    }
    return undefined;
  }
}

function overlaps(a: Box, b: Box): boolean {
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
