/** Labels: a few centred lines of type, upright or reading upward, that find themselves a free place. */
import { boxAt, heightOf, widthOf, type Box, type Point, type Size } from '../../core/geometry/box';
import { fromPoints } from './page';
import type { Room } from './room';
import type { Surface } from './surface';
import { CAP_HEIGHT, SMALLEST, type Weight } from './type';

export interface LabelLine {
  readonly words: string;
  /** Points. */
  readonly size: number;
  readonly weight?: Weight;
  /** Figures of one width, so that no decimal point is lost between them. */
  readonly tabular?: boolean;
}

export interface Label {
  readonly lines: readonly LabelLine[];
  readonly turn: 0 | 90;
}

const LEADING = 1.35;
const AIR = 0.6;

/** Height of the capitals and figures of a type size, mm. */
export function capHeight(size: number): number {
  return fromPoints(size * CAP_HEIGHT);
}

/** Width and height of a label as it lies on the page, with a little air round it. */
export function labelSize(surface: Surface, label: Label): Size {
  const long = Math.max(...label.lines.map((line) => surface.width(line.words, line))) + 2 * AIR;
  const high = label.lines.reduce((sum, line, index) => sum + lineRoom(line, index), 0) + 2 * AIR;
  return label.turn === 90 ? { width: high, height: long } : { width: long, height: high };
}

function lineRoom(line: LabelLine, index: number): number {
  return index === 0 ? capHeight(line.size) : fromPoints(line.size * LEADING);
}

export function drawLabel(surface: Surface, label: Label, box: Box): void {
  const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
  let down = AIR;
  for (const [index, line] of label.lines.entries()) {
    down += lineRoom(line, index);
    const at = label.turn === 90 ? { x: box.left + down, y: middle.y } : { x: middle.x, y: box.top - down };
    surface.text(line.words, at, { ...line, align: 'centre', turn: label.turn });
  }
}

/** The label with its type made smaller by a factor, never below what can be read. */
export function smaller(label: Label, factor: number): Label {
  return { ...label, lines: label.lines.map((line) => ({ ...line, size: Math.max(SMALLEST, line.size * factor) })) };
}

/**
 * Draws the first label that finds room at one of its middles; the labels come from the best to the least.
 * Returns the box taken; undefined when there is no room.
 */
export function placeLabel(
  surface: Surface,
  room: Room,
  labels: readonly Label[],
  middlesOf: MiddlesOf,
): Box | undefined {
  for (const { label, boxes } of placings(surface, labels, middlesOf)) {
    const found = room.takeFirst(boxes);
    if (!found) continue;
    drawLabel(surface, label, found.box);
    return found.box;
  }
  return undefined;
}

/** The box that such a label would take; nothing is drawn, and nothing taken. */
export function findRoom(
  surface: Surface,
  room: Room,
  labels: readonly Label[],
  middlesOf: MiddlesOf,
): Box | undefined {
  for (const { boxes } of placings(surface, labels, middlesOf)) {
    const found = boxes.find(({ box }) => room.isFree(box));
    if (found) return found.box;
  }
  return undefined;
}

/**
 * The same of a label that must not be missing: where there is no room beside the lines that may be crossed, it lies over
 * them on a white field, so that none runs through its words.
 */
export function placeOnWhite(
  surface: Surface,
  room: Room,
  labels: readonly Label[],
  middlesOf: MiddlesOf,
): Box | undefined {
  const beside = placeLabel(surface, room, labels, middlesOf);
  if (beside) return beside;
  for (const { label, boxes } of placings(surface, labels, middlesOf)) {
    const found = room.takeFirst(boxes, 'open');
    if (!found) continue;
    surface.fill(found.box, 'white');
    drawLabel(surface, label, found.box);
    return found.box;
  }
  return undefined;
}

/** Across and up a box, from the middle outward. */
const PARTS = [0.5, 0.35, 0.65, 0.2, 0.8];
const SPOTS = PARTS.flatMap((up) => PARTS.map((across) => ({ across, up }))).toSorted(
  (a, b) => offMiddle(a) - offMiddle(b),
);

function offMiddle({ across, up }: { readonly across: number; readonly up: number }): number {
  return Math.hypot(across - 0.5, up - 0.5);
}

/** Places within a box, its middle first. */
export function spotsIn(box: Box): MiddlesOf {
  return ({ width, height }) =>
    SPOTS.map(({ across, up }) => ({
      x: box.left + width / 2 + across * (widthOf(box) - width),
      y: box.bottom + height / 2 + up * (heightOf(box) - height),
    }));
}

/** The same, and wherever a label would lie against an edge of the box or of what is taken in it: the nearest to the middle first. */
export function spotsBeside(box: Box, taken: readonly Box[]): MiddlesOf {
  return ({ width, height }) => {
    const xs = placesAlong([box.left, box.right], taken.map(({ left, right }) => [left, right]), width); // prettier-ignore
    const ys = placesAlong([box.bottom, box.top], taken.map(({ bottom, top }) => [bottom, top]), height); // prettier-ignore
    const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
    const off = ({ x, y }: Point) => Math.hypot(x - middle.x, y - middle.y);
    return xs.flatMap((x) => ys.map((y) => ({ x, y }))).toSorted((a, b) => off(a) - off(b));
  };
}

/** Clear of what it lies against by more than the last bits of a double, mm. */
const HAIR = 1e-6;

/** Middles of a length within a span, each once. */
function placesAlong([from, to]: Span, taken: readonly Span[], length: number): number[] {
  const half = length / 2;
  const against = taken.flatMap(([start, end]) => [start - half - HAIR, end + half + HAIR]);
  const all = [(from + to) / 2, from + half + HAIR, to - half - HAIR, ...against];
  const kept = all.filter((place) => place - half >= from && place + half <= to);
  return [...new Map(kept.map((place) => [place.toFixed(3), place])).values()];
}

type Span = readonly [from: number, to: number];

export type MiddlesOf = (size: Size, label: Label) => readonly Point[];

function placings(surface: Surface, labels: readonly Label[], middlesOf: MiddlesOf) {
  return labels.map((label) => {
    const size = labelSize(surface, label);
    const boxes = middlesOf(size, label).map((middle) => ({
      box: boxAt({ x: middle.x - size.width / 2, y: middle.y - size.height / 2 }, size),
    }));
    return { label, boxes };
  });
}
