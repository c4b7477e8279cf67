/** Lines on the face as closed rings: those of a layout, what one of them runs into, and how far from its window it has room. */
import { around, boxAt, insets, widthOf, type Box } from '../../geometry/box';
import { boundsOf, boxOutline } from '../../geometry/outline';
import type { FaceLine } from '../../job/job';
import { placeLine } from '../face-lines';
import type { PlacedLayout, PlacedLine, PlacedWindow } from '../layout';
import { nearPairs } from '../neighbours';
import type { Show } from '../show';
import type { Gaps, Ring } from './ring-gaps';
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

/** One after another, for those who need no more than the first; of one line alone where its path is said. */
export function* meetingsOf(all: readonly Ringed[], gaps: Gaps, at?: string): Generator<Meeting> {
  const windows = all.map(({ window }) => windowRing(window));
  const rings = all.map(({ window, lines }) => lines.map((line) => lineRing(line, window)));
  const boxes = all.map(({ window }, index) => reachOf(window, [windows[index], ...(rings[index] ?? [])]));
  const isAsked = (line: FaceLine) => at === undefined || line.at === at;
  for (const [first, second] of nearPairs(boxes, SLACK)) {
    const [one, other] = [all[first]?.window, all[second]?.window];
    if (!one || !other) continue;
    const [ofOne, ofOther] = [rings[first] ?? [], rings[second] ?? []];
    for (const ring of ofOne) {
      for (const into of ofOther) {
        if (!ring.line || !into.line || !(isAsked(ring.line) || isAsked(into.line))) continue;
        const meeting = furtherFirst({ one, line: ring.line, other, into: into.line });
        if (isAsked(meeting.line) && gaps.touch(ring, into)) yield meeting;
      }
    }
    for (const [from, lines, to, window] of [
      [one, ofOne, other, windows[second]],
      [other, ofOther, one, windows[first]],
    ] as const) {
      for (const ring of lines)
        if (window && ring.line && isAsked(ring.line) && gaps.touch(ring, window))
          yield { one: from, line: ring.line, other: to };
    }
  }
}

/** Of two lines that meet, the one further from its window is the one that runs into the other. */
function furtherFirst(meeting: Required<Meeting>): Meeting {
  const { one, line, other, into } = meeting;
  return into.distance > line.distance ? { one: other, line: into, other: one, into: line } : meeting;
}

/** A window as it is cut in the top layer, where it is widest. */
function windowRing({ layers, shape }: PlacedWindow): Ring | undefined {
  const [cut] = layers;
  if (!cut) return undefined;
  const wide = widthOf(cut.face) > widthOf(cut.back) ? 'face' : 'back';
  const outer = cut.outlines?.[wide] ?? boxOutline(cut[wide]);
  return { outer, box: cut[wide], from: outer, reach: 0, plain: shape === 'rectangle' };
}

function lineRing({ line, inner, outer }: PlacedLine, { layers, shape }: PlacedWindow): Ring {
  const from = layers[0]?.outlines?.face ?? boxOutline(layers[0]?.face ?? boundsOf(outer));
  const reach = line.distance + line.width / 2;
  return { line, outer, box: boundsOf(outer), inner, from, reach, plain: shape === 'rectangle' };
}

/** The box round all that is made round a window in the top layer. */
function reachOf({ window }: PlacedWindow, rings: readonly (Ring | undefined)[]): Box {
  return around(rings.flatMap((ring) => (ring ? [ring.box] : []))) ?? window;
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
  gaps: Gaps,
): number | undefined {
  const line = layout.windows.flatMap(({ lines }) => lines).find((placed) => placed.line.at === at)?.line;
  const step = show.stepUp(0.001);
  if (!line) return undefined;
  const fits = (steps: number) => hasRoom({ ...line, distance: steps * step }, layout, margin, gaps);
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

function hasRoom(line: FaceLine, layout: PlacedLayout, margin: number, gaps: Gaps): boolean {
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
  return meetingsOf(moved, gaps, line.at).next().done === true;
}
