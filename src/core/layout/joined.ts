/** A window with openings joined to it: one outline round all of them, or what keeps them from being one. */
import { heightOf, widthOf, type Box, type Size } from '../geometry/box';
import { distance } from '../geometry/edge';
import { boxesMeet, meetingsWithin } from '../geometry/meetings';
import { isInside, nearest } from '../geometry/nearness';
import { boundsOf, shiftOutline, type Outline } from '../geometry/outline';
import { unionOf } from '../geometry/union';
import type { JoinedPart } from '../job/job';
import type { ShapeFault } from './cells';
import { drawnIn, turnedOutline } from './leaf-shape';

export interface Joining {
  /** Undefined where they are not one opening. */
  readonly outline?: Outline;
  /** Boxes of the joined openings in the order of the job. */
  readonly parts: readonly Box[];
  readonly faults: readonly ShapeFault[];
}

/** `main` in a box of the window's size with its lower left corner at the origin; all that is given back likewise. */
export function joinTo(main: Outline, size: Size, at: string, joined: readonly JoinedPart[]): Joining {
  const drawn = joined.map((part) => drawnPart(part, size));
  const parts = drawn.map(({ outline }) => boundsOf(outline));
  const misfits = drawn.flatMap(({ fault }) => fault ?? []);
  if (misfits.length > 0) return { parts, faults: misfits };
  const { outlines, apart } = connected(
    main,
    drawn.map(({ outline }) => outline),
  );
  if (apart.length > 0) return { parts, faults: apart.map((index) => faultOf(index, joined, drawn, outlines)) };
  const region = unionOf(outlines)[0];
  const island = region?.holes[0];
  if (!region || island) {
    const box = island ? boundsOf(island) : { left: 0, right: 0, bottom: 0, top: 0 };
    return { parts, faults: [{ kind: 'island', at, size: { width: widthOf(box), height: heightOf(box) } }] };
  }
  return { outline: region.outer, parts, faults: [] };
}

interface Drawn {
  readonly outline: Outline;
  readonly fault?: ShapeFault;
}

function drawnPart(part: JoinedPart, { width, height }: Size): Drawn {
  const { at, title, shape, turned, mirrored } = part;
  const upright = turned % 180 === 0 ? part.size : { width: part.size.height, height: part.size.width };
  const { outline, misfit } = drawnIn(shape, upright);
  const turnedOne = turnedOutline(outline, upright, turned, mirrored);
  const box = boundsOf(turnedOne);
  const x = part.left ?? (part.right === undefined ? (width - widthOf(box)) / 2 : width - part.right - widthOf(box));
  const y = part.bottom ?? (part.top === undefined ? (height - heightOf(box)) / 2 : height - part.top - heightOf(box));
  const moved = shiftOutline(turnedOne, { x: x - box.left, y: y - box.bottom });
  const fault = misfit && { kind: 'misfit' as const, at, title, shape, size: upright, measure: misfit };
  return { outline: moved, ...(fault ? { fault } : {}) };
}

/** Takes in, one after another, what makes one region with what is in already. */
function connected(main: Outline, others: readonly Outline[]): { outlines: Outline[]; apart: number[] } {
  const outlines = [main];
  let waiting = others.map((outline, index) => ({ outline, index }));
  for (;;) {
    const next = waiting.find(
      ({ outline }) => outlines.some((one) => holdsTo(one, outline)) && unionOf([...outlines, outline]).length === 1,
    );
    if (!next) return { outlines, apart: waiting.map(({ index }) => index) };
    outlines.push(next.outline);
    waiting = waiting.filter((one) => one !== next);
  }
}

/** True of two that overlap or lie along one another; where they only touch in a point, the opening would be pinched there. */
function holdsTo(one: Outline, other: Outline): boolean {
  const others = other.map((edge) => ({ edge, box: boundsOf([edge]) }));
  const met = one.flatMap((a) => {
    const box = boundsOf([a]);
    const near = others.filter((b) => boxesMeet(box, b.box));
    return near.flatMap(({ edge }) => meetingsWithin(a, edge).map(({ point }) => point));
  });
  const [first] = met;
  if (first && met.some((point) => distance(point, first) > APART)) return true;
  // One may lie in the other, free of its edge or touching it from within.
  const within = (outer: Outline, inner: Outline) =>
    inner.some(({ from }) => (!first || distance(from, first) > APART) && isInside(outer, from));
  return within(one, other) || within(other, one);
}

/** Meetings that lie nearer are one, mm. */
const APART = 0.001;

function faultOf(
  index: number,
  joined: readonly JoinedPart[],
  drawn: readonly Drawn[],
  outlines: readonly Outline[],
): ShapeFault {
  const outline = drawn[index]?.outline ?? [];
  const distance = Math.min(...outlines.map((one) => nearest(one, outline).distance));
  return { kind: 'apart', at: joined[index]?.at ?? '', number: index + 2, title: joined[index]?.title ?? '', distance };
}
