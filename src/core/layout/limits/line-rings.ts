/** Lines on the face as closed rings: those of a layout, what one of them runs into, and how far from its window it has room. */
import { around, boxAt, insets, type Box } from '../../geometry/box';
import { nearest } from '../../geometry/nearness';
import { boundsOf, boxOutline, type Outline } from '../../geometry/outline';
import type { FaceLine } from '../../job/job';
import { placeLine } from '../face-lines';
import type { PlacedLayout, PlacedLine, PlacedWindow } from '../layout';
import { nearPairs, separation } from '../neighbours';
import type { Show } from '../show';
import { SLACK, worstSide } from './slack';

/** Every window with its lines. */
export interface Ringed {
  readonly window: PlacedWindow;
  readonly lines: readonly PlacedLine[];
}

/** A line that runs into a line round another window, or into that window itself. */
export interface Meeting {
  readonly one: PlacedWindow;
  readonly line: FaceLine;
  readonly other: PlacedWindow;
  /** Undefined where it is the other window. */
  readonly into?: FaceLine;
}

export function meetingsOf(all: readonly Ringed[]): Meeting[] {
  const boxes = all.map(({ window, lines }) => reachOf(window, lines));
  return nearPairs(boxes, SLACK).flatMap(([first, second]): Meeting[] => {
    const [a, b] = [all[first], all[second]];
    if (!a || !b) return [];
    const plain = a.window.shape === 'rectangle' && b.window.shape === 'rectangle';
    const touch = (one: Outline, other: Outline) => (plain ? boxesApart(one, other) : apart(one, other)) <= SLACK;
    return [
      ...a.lines.flatMap((line) =>
        b.lines.flatMap((into): Meeting[] =>
          [
            [line.outer, into.outer],
            [line.outer, into.inner],
            [line.inner, into.outer],
          ].some(([one, other]) => one && other && touch(one, other))
            ? [between({ one: a.window, line: line.line, other: b.window, into: into.line })]
            : [],
        ),
      ),
      ...intoWindow(a, b.window, touch),
      ...intoWindow(b, a.window, touch),
    ];
  });
}

/** Of two lines that meet, the one further from its window is the one that runs into the other. */
function between(meeting: Required<Meeting>): Meeting {
  const { one, line, other, into } = meeting;
  return into.distance > line.distance ? { one: other, line: into, other: one, into: line } : meeting;
}

type Touch = (one: Outline, other: Outline) => boolean;

function intoWindow({ window, lines }: Ringed, other: PlacedWindow, touch: Touch): Meeting[] {
  const cut = other.layers[0];
  if (!cut) return [];
  const edges = cut.outlines ? [cut.outlines.face, cut.outlines.back] : [boxOutline(cut.face), boxOutline(cut.back)];
  return lines
    .filter(({ inner, outer }) => edges.some((edge) => touch(outer, edge) || touch(inner, edge)))
    .map(({ line }) => ({ one: window, line, other }));
}

/** The box round all that is made round a window in the top layer. */
function reachOf({ layers, window }: PlacedWindow, lines: readonly PlacedLine[]): Box {
  const cut = layers[0];
  const boxes = [...(cut ? [cut.face, cut.back] : []), ...lines.map(({ outer }) => boundsOf(outer))];
  return around(boxes) ?? window;
}

function apart(one: Outline, other: Outline): number {
  return nearest(one, other).distance;
}

/** Between the edges of two upright rectangles. */
function boxesApart(one: Outline, other: Outline): number {
  const [a, b] = [boundsOf(one), boundsOf(other)];
  const outside = separation(a, b);
  if (outside > 0) return outside;
  const [within, without] = [a, b].map((outer, index) =>
    Math.min(...Object.values(insets(outer, index === 0 ? b : a))),
  );
  return Math.max(0, within ?? 0, without ?? 0);
}

/** From the line's outer edge to the nearest edge of the blank; negative past it. */
export function insetOf({ outer }: PlacedLine, { frame }: PlacedLayout) {
  const sides = insets(boxAt({ x: 0, y: 0 }, frame.blank), boundsOf(outer));
  const side = worstSide(sides);
  return { side, inset: sides[side] };
}

/**
 * The greatest distance on the shown step, less than the line's own, at which it keeps to the board, inside the frame's lip
 * where it can, and clear of what lies beside it; undefined where there is none.
 */
export function distanceWithRoom(
  at: string,
  layout: PlacedLayout,
  show: Show,
  least: number,
  margin: number,
): number | undefined {
  const line = layout.windows.flatMap(({ lines }) => lines).find((placed) => placed.line.at === at)?.line;
  const step = show.stepUp(1e-6);
  if (!line) return undefined;
  const fits = (steps: number) => hasRoom({ ...line, distance: steps * step }, layout, margin);
  let low = Math.floor(least / step + 1e-9) + 1;
  let high = Math.ceil(line.distance / step - 1e-9) - 1;
  if (high < low || !fits(low)) return undefined;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  return low * step;
}

function hasRoom(line: FaceLine, layout: PlacedLayout, margin: number): boolean {
  const moved: Ringed[] = [];
  for (const window of layout.windows) {
    const lines: PlacedLine[] = [];
    for (const placed of window.lines) {
      if (placed.line.at !== line.at || !window.layers[0]) {
        lines.push(placed);
        continue;
      }
      const made = placeLine(line, window.layers[0]);
      if (!made || insetOf(made, layout).inset <= margin + SLACK) return false;
      lines.push(made);
    }
    moved.push({ window, lines });
  }
  return meetingsOf(moved).every((meeting) => meeting.line.at !== line.at && meeting.into?.at !== line.at);
}
