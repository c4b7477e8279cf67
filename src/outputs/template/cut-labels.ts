/** The words and numbers of the drawing: opening sizes, borders, guide settings and the blank's edges, where there is room. */
import type { CutLine, CutStep, View } from '../../core/cutting/plan';
import { heightOf, widthOf, type Box, type Point, type Side, type Size } from '../../core/geometry/box';
import { directionOn, pointOn } from '../../core/geometry/edge';
import { lengthText, showSetting, type Showing } from '../../core/units';
import { placeLabel, smaller, type Label } from '../paper/label';
import type { Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';
import { figureWords } from './figures';
import { boxOnPage, type Part } from './part';
import { contains, shared, type ViewWindow } from './view-geometry';

export interface LabelSetting {
  readonly surface: Surface;
  readonly part: Part;
  readonly room: Room;
  readonly showing: Showing;
}

const FACTORS = [1, 0.8, 0.62, 0.48, 0.38] as const;
const PARTS_OF_LINE = [0.5, 0.35, 0.65, 0.22, 0.78] as const;

export function labelOpenings(setting: LabelSetting): void {
  for (const window of setting.part.layer.windows) labelOpening(setting, window);
}

export function labelGuides(setting: LabelSetting): void {
  const { part } = setting;
  const steps = stepNames(part);
  for (const window of part.layer.windows) {
    for (const line of window.lines) labelGuide(setting, line, steps.get(line));
  }
}

/** Each line's number in the cutting order. */
function stepNames(part: Part): ReadonlyMap<CutLine, number> {
  const { plan, view } = part.layer;
  return new Map(plan.order[view].flatMap((step) => entryOf(step, part)));
}

function entryOf(step: CutStep, part: Part): [CutLine, number][] {
  const line = part.layer.windows[step.window]?.lines[step.cut];
  return line ? [[line, step.number]] : [];
}

/** Name, size and side of an opening, in the middle of what the page shows of it. */
function labelOpening({ surface, part, room, showing }: LabelSetting, window: ViewWindow): void {
  const seen = shared(window.cut, part.own);
  if (!seen) return;
  const box = boxOnPage(part, seen);
  const size = boxText(window.opening, showing);
  const name = window.title === '' ? window.name : `${window.name}  ${window.title}`;
  const fitting = surface.fit(name, Math.max(widthOf(box) - 14, 12), { size: 10, weight: 'bold' });
  const whole: Label = {
    turn: 0,
    lines: [
      { words: fitting, size: 10, weight: 'bold' },
      { words: fractions(size), size: 20, weight: 'bold', tabular: true },
      { words: `opening of layer ${part.layer.plan.number} · ${part.layer.view.toUpperCase()}`, size: 8 },
      ...drawnWords(window, part.layer.view, showing).map((words) => ({ words, size: 8, tabular: true })),
    ],
  };
  const least: Label = { turn: 0, lines: [{ words: window.name, size: 10, weight: 'bold' }] };
  const labels = [
    ...FACTORS.map((factor) => smaller(whole, factor)),
    ...turned(FACTORS.map((factor) => smaller(whole, factor))),
    least,
  ];
  placeLabel(surface, room, labels, () => middlesIn(box));
}

/** What the drawn line is, where it isn't the opening that stands in big numbers, and how its curves are struck. */
function drawnWords(window: ViewWindow, view: View, showing: Showing): readonly string[] {
  const figures = figureWords(window, showing);
  const size = boxText(window.cut, showing);
  if (size === boxText(window.opening, showing)) return figures;
  const edge = view === 'front' ? 'face edge' : 'back edge';
  return [
    `line drawn: ${edge} ${fractions(size)}`,
    ...figures.map((words, index) => (index === 0 ? `its ${words}` : words)),
  ];
}

function boxText(box: Box, showing: Showing): string {
  return `${lengthText(widthOf(box), showing)} × ${lengthText(heightOf(box), showing)}`;
}

function turned(labels: readonly Label[]): readonly Label[] {
  return labels.map((label) => ({ ...label, turn: 90 }));
}

/** The middle of a box first, then places round it. */
function middlesIn(box: Box): readonly Point[] {
  const parts = [0.5, 0.62, 0.38, 0.75, 0.25];
  return parts.flatMap((up) =>
    parts.map((across) => ({ x: box.left + across * widthOf(box), y: box.bottom + up * heightOf(box) })),
  );
}

/** Along the waste's side of a cut: which cut it is, which way it goes, and the guide setting. */
function labelGuide({ surface, part, room, showing }: LabelSetting, cut: CutLine, step: number | undefined): void {
  if (!isGuided(cut)) return labelFree({ surface, part, room, showing }, cut, step);
  const line = cut;
  const upright = line.side === 'left' || line.side === 'right';
  const onwards = upright ? line.end.y > line.start.y : line.end.x > line.start.x;
  const setting = fractions(showSetting(line.guideSetting, showing).withUnit);
  const words = `${onwards ? '' : '← '}${step === undefined ? '' : `cut ${step} · `}guide ${setting}${onwards ? ' →' : ''}`;
  const label: Label = { turn: upright ? 90 : 0, lines: [{ words, size: 9, tabular: true }] };
  const bare: Label = { turn: label.turn, lines: [{ words: setting, size: 8, tabular: true }] };
  const along = ownStretch(line, part);
  if (!along) return;
  placeLabel(surface, room, [label, smaller(label, 0.75), smaller(label, 0.6), bare, smaller(bare, 0.7)], (size) =>
    PARTS_OF_LINE.map((at) => besideLine(part, line, along[0] + at * (along[1] - along[0]), size)),
  );
}

/** The number of a cut that no guide leads, inside the window beside the middle of it. */
function labelFree({ surface, part, room }: LabelSetting, line: CutLine, step: number | undefined): void {
  if (step === undefined) return;
  const edges = line.curve ?? [{ kind: 'line', from: line.start, to: line.end }];
  const label: Label = { turn: 0, lines: [{ words: `cut ${step}`, size: 8, tabular: true }] };
  const spots = PARTS_OF_LINE.flatMap((along) => {
    const edge = edges[Math.min(edges.length - 1, Math.floor(along * edges.length))];
    return edge
      ? [{ at: pointOn(edge, (along * edges.length) % 1), way: directionOn(edge, (along * edges.length) % 1) }]
      : [];
  }).filter(({ at }) => contains(part.own, at));
  placeLabel(surface, room, [label, smaller(label, 0.75)], ({ width, height }) =>
    spots.flatMap(({ at, way }) =>
      // Either side of the travel: one of them is the waste's, where there is more often room.
      [1, -1].map((side) => ({
        x: at.x + part.offset.x + side * way.y * (1.4 + width / 2),
        y: at.y + part.offset.y - side * way.x * (1.4 + height / 2),
      })),
    ),
  );
}

/** A straight cut along a side of the window. */
type GuidedLine = CutLine & Required<Pick<CutLine, 'side' | 'guideSetting'>>;

function isGuided(line: CutLine): line is GuidedLine {
  return line.side !== undefined && line.guideSetting !== undefined;
}

/** The stretch of a line in the page's own part, in the blank's coordinates along it. */
function ownStretch(line: CutLine, part: Part): readonly [number, number] | undefined {
  const { own } = part;
  const upright = line.side === 'left' || line.side === 'right';
  const across = upright ? line.start.x : line.start.y;
  if (across < (upright ? own.left : own.bottom) || across > (upright ? own.right : own.top)) return undefined;
  const [a, b] = upright ? [line.start.y, line.end.y] : [line.start.x, line.end.x];
  const from = Math.max(Math.min(a, b), upright ? own.bottom : own.left);
  const to = Math.min(Math.max(a, b), upright ? own.top : own.right);
  return to > from ? [from, to] : undefined;
}

const INWARD: Readonly<Record<Side, Point>> = {
  left: { x: 1, y: 0 },
  right: { x: -1, y: 0 },
  bottom: { x: 0, y: 1 },
  top: { x: 0, y: -1 },
};

/** The middle of a label of this size just inside the opening, beside a place along the line. */
function besideLine(part: Part, line: GuidedLine, along: number, size: Size): Point {
  const inward = INWARD[line.side];
  const upright = inward.y === 0;
  const away = 0.9 + (upright ? size.width : size.height) / 2;
  const x = upright ? line.start.x + inward.x * away : along;
  const y = upright ? along : line.start.y + inward.y * away;
  return { x: x + part.offset.x, y: y + part.offset.y };
}

/** Names of the blank's edges, just inside them; on the back, left and right are told as they hang too. */
export function labelEdges({ surface, part, room }: LabelSetting): void {
  const { own, layer } = part;
  const { width, height } = layer.blank;
  const hangs = (side: string) => (layer.view === 'back' ? ` (${side} as it hangs)` : '');
  const edges: readonly [boolean, Side, string][] = [
    [own.left === 0, 'left', `left edge${hangs('right')}`],
    [own.right === width, 'right', `right edge${hangs('left')}`],
    [own.bottom === 0, 'bottom', 'bottom edge'],
    [own.top === height, 'top', 'top edge'],
  ];
  for (const [shown, side, name] of edges) {
    if (shown) labelEdge(surface, part, room, side, `${layer.view.toUpperCase()} · ${name}`);
  }
}

function labelEdge(surface: Surface, part: Part, room: Room, side: Side, words: string): void {
  const inward = INWARD[side];
  const upright = inward.y === 0;
  const label: Label = { turn: upright ? 90 : 0, lines: [{ words, size: 7 }] };
  const box = boxOnPage(part, part.own);
  placeLabel(surface, room, [label, smaller(label, 0.75)], (size) =>
    PARTS_OF_LINE.flatMap((at) =>
      [0.9, 12.5].map((away) => {
        const across = upright ? box[side] + inward.x * (away + size.width / 2) : box.left + at * widthOf(box);
        const up = upright ? box.bottom + at * heightOf(box) : box[side] + inward.y * (away + size.height / 2);
        return { x: across, y: up };
      }),
    ),
  );
}
