/** What a machine's tool does: strokes in the order of cutting, with the ways between them; the one place of order and direction. */
import type { Box, Point, Size } from '../geometry/box';
import { distance } from '../geometry/edge';
import { boundsOf, lengthOf, shiftOutline } from '../geometry/outline';
import { assert } from '../problem';
import { bladePath } from './outline-cuts';
import type { CutPlan, LayerPlan, LinePlan, View, WindowPlan } from './plan';
import { penText } from '../layout/line-words';
import { byTool, settingOf } from './line-cuts';
import { lineStrokes } from './line-strokes';
import { strokesOf, type Stroke } from './strokes';

/** How paths are ordered. */
export const PATH_RULE =
  'Each layer by itself. On the face ruled lines come first, then grooves, then windows. A window that lies inside another comes before it; otherwise the stroke that begins nearest to where the tool stands is next, and a window is finished before the next is begun. Each layer starts and ends at the origin corner.';

export const CORNERS = ['lower-left', 'lower-right', 'upper-left', 'upper-right'] as const;
/** Corner of the board, in the view, that coordinates run from: always x to the right and y up, so that they are negative from an upper or a right corner. */
export type Corner = (typeof CORNERS)[number];

/** What a path makes: part of an opening, one pass of a groove, or a line with a pen. */
export type PathKind = 'window' | 'groove' | 'ruled line';

export interface ToolPath extends Stroke {
  /** 1, 2, 3, ... within the layer. */
  readonly number: number;
  readonly kind: PathKind;
  /** In words: `knife leaning 45 degrees`, `pen of 0.5 mm, #5b5348`. */
  readonly tool: string;
  /** Of a groove: how deep the blade goes, mm; undefined where it goes through, or a pen draws. */
  readonly depth?: number;
  /** The window's short name, its title, and its index into the plan's windows. */
  readonly window: string;
  readonly title: string;
  readonly windowIndex: number;
  /** Where the tool goes down and where it comes up, mm from the origin corner. */
  readonly from: Point;
  readonly to: Point;
  /** Cut with the tool down, overcuts included, mm. */
  readonly length: number;
  /** Way of the lifted tool from where it stood to `from`, mm. */
  readonly travel: number;
}

export interface LayerPaths {
  readonly layer: LayerPlan;
  /** Size of the board, mm, and its lower left corner as seen from the origin corner. */
  readonly blank: Size;
  readonly lowerLeft: Point;
  readonly paths: readonly ToolPath[];
  /** Cut with the tool down, mm. */
  readonly cutLength: number;
  /** Way of the lifted tool from the origin corner over all paths and back to it, mm. */
  readonly travel: number;
}

export interface ToolPaths {
  readonly view: View;
  readonly corner: Corner;
  /** Seen in the direction of travel. */
  readonly waste: CutPlan['waste'];
  readonly layers: readonly LayerPaths[];
  /** Of all layers, mm. */
  readonly cutLength: number;
  readonly travel: number;
}

export interface ToolPathChoices {
  readonly view: View;
  readonly corner: Corner;
  /** How far the blade runs past a square corner, mm; undefined: as each layer's cuts do. */
  readonly overcut?: number | undefined;
}

/** All layers' paths in one view, mm from a corner of the board. */
export function planToolPaths({ layers, waste }: CutPlan, choices: ToolPathChoices): ToolPaths {
  const planned = layers.map((layer) => planLayer(layer, choices));
  const { view, corner } = choices;
  return {
    view,
    corner,
    waste,
    layers: planned,
    cutLength: sum(planned.map(({ cutLength }) => cutLength)),
    travel: sum(planned.map(({ travel }) => travel)),
  };
}

function planLayer(layer: LayerPlan, { view, corner, overcut }: ToolPathChoices): LayerPaths {
  const lowerLeft = lowerLeftFrom(corner, layer.blank);
  const waiting = layer.windows.map((window) => waitingOf(window, view, overcut ?? layer.overcut.length, lowerLeft));
  const lines = view === 'front' ? linesInOrder(layer, lowerLeft) : [];
  const paths = inOrder(waiting, lines, knife(layer.bevel.angleDegrees));
  const last = paths.at(-1)?.to ?? ORIGIN;
  return {
    layer,
    blank: layer.blank,
    lowerLeft,
    paths,
    cutLength: sum(paths.map(({ length }) => length)),
    travel: sum(paths.map(({ travel }) => travel)) + distance(last, ORIGIN),
  };
}

const ORIGIN: Point = { x: 0, y: 0 };

function lowerLeftFrom(corner: Corner, { width, height }: Size): Point {
  return { x: corner.endsWith('right') ? 0 - width : 0, y: corner.startsWith('upper') ? 0 - height : 0 };
}

/** A window that is not cut yet, or not wholly. */
interface Waiting {
  readonly window: WindowPlan;
  readonly box: Box;
  readonly strokes: Stroke[];
}

function waitingOf(window: WindowPlan, view: View, ringOvercut: number, shift: Point): Waiting {
  const cuts = window.cuts[view];
  const strokes = strokesOf(cuts, ringOvercut);
  return {
    window,
    box: boundsOf(cuts.flatMap((cut) => cut.curve ?? bladePath({ ...cut, bladeStart: cut.start, bladeEnd: cut.end }))),
    strokes: strokes.map((stroke) => ({ ...stroke, edges: shiftOutline(stroke.edges, shift) })),
  };
}

/** Tool by tool, nearest next. */
function linesInOrder(layer: LayerPlan, shift: Point): ToolPath[] {
  const paths: ToolPath[] = [];
  for (const group of byTool(layer.lines, settingOf)) {
    const waiting = group.flatMap((line) =>
      lineStrokes(line).map((stroke) => ({ ...stroke, line, edges: shiftOutline(stroke.edges, shift) })),
    );
    while (waiting.length > 0) {
      const stroke = nearestStroke(waiting, paths.at(-1)?.to ?? ORIGIN);
      if (!stroke) break;
      waiting.splice(waiting.indexOf(stroke), 1);
      const { line, ...path } = stroke;
      const window = layer.windows[line.windowIndex];
      assert(window, 'a line goes round a window');
      paths.push({ ...pathOf(path, window, paths, toolOf(line)), ...makes(line) });
    }
  }
  return paths;
}

function makes(line: LinePlan): Pick<ToolPath, 'kind' | 'depth'> {
  return line.kind === 'groove' ? { kind: 'groove', depth: line.depth } : { kind: 'ruled line' };
}

function toolOf(line: LinePlan): string {
  return line.kind === 'groove' ? knife(line.angleDegrees) : `pen of ${penText(line.width)}, ${line.colour}`;
}

function knife(angleDegrees: number): string {
  return angleDegrees === 0 ? 'upright knife' : `knife leaning ${Number(angleDegrees.toFixed(4))} degrees`;
}

/** After what is made already: nearest next, inner windows first, each window whole. */
function inOrder(windows: readonly Waiting[], before: readonly ToolPath[], tool: string): ToolPath[] {
  const paths = [...before];
  const inside = new Map(
    windows.map((one) => [one, windows.filter((other) => other !== one && liesIn(other.box, one.box))]),
  );
  let left = windows;
  while (left.length > 0) {
    const free = left.filter((one) => !inside.get(one)?.some((other) => left.includes(other)));
    const one = nearest(free, paths.at(-1)?.to ?? ORIGIN);
    if (!one) break;
    left = left.filter((other) => other !== one);
    const waiting = [...one.strokes];
    while (waiting.length > 0) {
      const stroke = nearestStroke(waiting, paths.at(-1)?.to ?? ORIGIN);
      if (!stroke) break;
      waiting.splice(waiting.indexOf(stroke), 1);
      paths.push(pathOf(stroke, one.window, paths, tool));
    }
  }
  return paths;
}

function pathOf(
  stroke: Stroke,
  { name, title, index }: WindowPlan,
  before: readonly ToolPath[],
  tool: string,
): ToolPath {
  const at = before.at(-1)?.to ?? ORIGIN;
  const [from, to] = [stroke.edges[0]?.from ?? at, stroke.edges.at(-1)?.to ?? at];
  const length = lengthOf(stroke.edges);
  const number = before.length + 1;
  const travel = distance(at, from);
  return { ...stroke, number, kind: 'window', tool, window: name, title, windowIndex: index, from, to, length, travel };
}

function nearest(windows: readonly Waiting[], at: Point): Waiting | undefined {
  return least(windows, ({ strokes }) => Math.min(...strokes.map((stroke) => awayOf(stroke, at))));
}

function nearestStroke<T extends Stroke>(strokes: readonly T[], at: Point): T | undefined {
  return least(strokes, (stroke) => awayOf(stroke, at));
}

function awayOf({ edges }: Stroke, at: Point): number {
  return edges[0] ? distance(edges[0].from, at) : Infinity;
}

/** The first of those with the least measure. */
function least<T>(all: readonly T[], measure: (one: T) => number): T | undefined {
  let found: { readonly one: T; readonly measured: number } | undefined;
  for (const one of all) {
    const measured = measure(one);
    if (!found || measured < found.measured) found = { one, measured };
  }
  return found?.one;
}

/** True of a box within another that is larger. */
function liesIn(inner: Box, outer: Box): boolean {
  const within =
    inner.left >= outer.left && inner.right <= outer.right && inner.bottom >= outer.bottom && inner.top <= outer.top;
  return (
    within && inner.right - inner.left + inner.top - inner.bottom < outer.right - outer.left + outer.top - outer.bottom
  );
}

function sum(lengths: readonly number[]): number {
  return lengths.reduce((total, length) => total + length, 0);
}
