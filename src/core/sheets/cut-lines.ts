/** Where the cuts of a step run on the sheet. */
import { grow, type Box, type Point } from '../geometry/box';
import type { CutStep } from './plan';

export type CutLine = readonly [from: Point, to: Point];

/**
 * Along the edge of what comes off, which is where the guide stands; a saw takes its kerf beyond it. Each runs from edge to
 * edge of the part in hand, mm.
 */
export function cutLines(step: CutStep, kerf: number): CutLine[] {
  const { kind, part, way, setting, times } = step;
  if (kind !== 'cut') return allRound(partInHand(step), setting);
  return Array.from({ length: times }, (_, time): CutLine => {
    const off = setting * (time + 1) + kerf * time;
    return way === 'upright' ? upright(part, part.left + off) : lying(part, part.bottom + off);
  });
}

/** The part in hand before the step: what fell out of a window has its bevels all round yet, beyond the part that is planned with. */
export function partInHand({ kind, part, setting }: CutStep): Box {
  return kind === 'square' ? grow(part, setting) : part;
}

function allRound(part: Box, setting: number): CutLine[] {
  const inner = grow(part, -setting);
  return [upright(part, inner.left), lying(part, inner.top), upright(part, inner.right), lying(part, inner.bottom)];
}

function upright({ bottom, top }: Box, x: number): CutLine {
  return [{ x, y: bottom }, { x, y: top }]; // prettier-ignore
}

function lying({ left, right }: Box, y: number): CutLine {
  return [{ x: left, y }, { x: right, y }]; // prettier-ignore
}
