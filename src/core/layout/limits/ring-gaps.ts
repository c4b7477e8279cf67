/** Whether what is made round two windows touches: told by how far the windows lie apart, and searched only where that does not tell. */
import { insets, type Box } from '../../geometry/box';
import { directionOn } from '../../geometry/edge';
import { nearest } from '../../geometry/nearness';
import type { Outline } from '../../geometry/outline';
import type { FaceLine } from '../../job/job';
import { separation } from '../neighbours';
import { SLACK } from './slack';

/** A line on the face between its two edges, or a window with nothing within. */
export interface Ring {
  /** Undefined of a window. */
  readonly line?: FaceLine;
  readonly outer: Outline;
  /** Round the outer edge. */
  readonly box: Box;
  readonly inner?: Outline;
  /** What it runs beside, and how far out it reaches from there. */
  readonly from: Outline;
  readonly reach: number;
  /** True where everything about it is an upright rectangle. */
  readonly plain: boolean;
}

/** Distances between windows, each found once however often their lines are moved. */
export class Gaps {
  private readonly known = new WeakMap<Outline, WeakMap<Outline, number>>();
  private readonly sharp = new WeakMap<Outline, boolean>();

  touch(one: Ring, other: Ring): boolean {
    if (separation(one.box, other.box) > SLACK) return false;
    if (one.plain && other.plain) return edgePairs(one, other).some(([a, b]) => boxesApart(a, b) <= SLACK);
    // One may lie in the middle of the other without touching it.
    if (isWithin(one.box, other.box) || isWithin(other.box, one.box))
      return edgePairs(one, other).some(([a, b]) => nearest(a, b).distance <= SLACK);
    // Each holds all that is no further from its window than it reaches; beyond that lie only the tips of its corners.
    if (this.between(one.from, other.from) <= one.reach + other.reach + SLACK) return true;
    if (!this.hasTips(one.from) && !this.hasTips(other.from)) return false;
    return nearest(one.outer, other.outer).distance <= SLACK;
  }

  private between(one: Outline, other: Outline): number {
    const beside = this.known.get(one) ?? new WeakMap<Outline, number>();
    this.known.set(one, beside);
    const gap = beside.get(other) ?? nearest(one, other).distance;
    beside.set(other, gap);
    return gap;
  }

  private hasTips(outline: Outline): boolean {
    const known =
      this.sharp.get(outline) ?? outline.some((edge, index) => turnsOut(outline.at(index - 1) ?? edge, edge));
    this.sharp.set(outline, known);
    return known;
  }
}

/** True of a corner that juts out of the window. */
function turnsOut(before: Outline[number], after: Outline[number]): boolean {
  const [a, b] = [directionOn(before, 1), directionOn(after, 0)];
  return a.x * b.y - a.y * b.x > 1e-6;
}

/** The edges of two rings that can meet. */
function edgePairs(one: Ring, other: Ring): (readonly [Outline, Outline])[] {
  return [
    [one.outer, other.outer],
    ...(other.inner ? [[one.outer, other.inner] as const] : []),
    ...(one.inner ? [[one.inner, other.outer] as const] : []),
  ];
}

function isWithin(inner: Box, outer: Box): boolean {
  return Object.values(insets(outer, inner)).every((inset) => inset >= 0);
}

/** Between the edges of two upright rectangles. */
function boxesApart(one: Outline, other: Outline): number {
  const [a, b] = [cornersOf(one), cornersOf(other)];
  const outside = separation(a, b);
  if (outside > 0) return outside;
  return Math.max(0, Math.min(...Object.values(insets(a, b))), Math.min(...Object.values(insets(b, a))));
}

/** Of a rectangle that begins at its lower left corner. */
function cornersOf([bottom, right, top]: Outline): Box {
  const from = bottom?.from ?? { x: 0, y: 0 };
  const to = (right ?? top)?.to ?? from;
  return { left: from.x, bottom: from.y, right: to.x, top: to.y };
}
