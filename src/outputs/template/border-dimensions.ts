/** Dimension lines of the borders: from an edge of the blank to every cut that faces it. */
import { boxAt, type Box, type Point, type Side, type Size } from '../../core/geometry/box';
import { showTogether, type Shown, type Showing } from '../../core/units';
import { drawLabel, labelSize, smaller, type Label } from '../paper/label';
import { PENS } from '../paper/pens';
import { boxRound } from '../paper/room';
import { fractions } from '../paper/type';
import { borderStrips, type Span } from './border-strips';
import { boxOnPage, type Part } from './part';
import type { LabelSetting } from './cut-labels';
import { shared, type ViewLayer, type ViewWindow } from './view-geometry';

/** A border between the blank's edge and a cut, with what is written in it. */
export interface Border {
  readonly side: Side;
  readonly strip: Box;
  /** Where along the side the cut reaches the strip. */
  readonly touch: Span;
  /** The number, and under it the border of the opening where the cut does not run along that. */
  readonly words: readonly string[];
}

const FACTORS = [1, 0.8, 0.65, 0.5] as const;
const PLACES = [0.5, 0.38, 0.62, 0.25, 0.75, 0.14, 0.86] as const;

/** The borders of a layer: those of every cut with no other window between it and the blank's edge. */
export function planBorders(layer: ViewLayer, showing: Showing): readonly Border[] {
  return borderStrips(layer).map(({ side, strip, touch, window }) => ({
    side,
    strip,
    touch,
    words: shownBorder(layer, window, side, showing),
  }));
}

/** Draws those that a page shows, where they find room. */
export function drawBorders(setting: LabelSetting, borders: readonly Border[]): void {
  for (const border of borders) {
    const seen = shared(border.strip, setting.part.own);
    if (seen && touches(border, seen)) drawBorder(setting, border, seen);
  }
}

/**
 * Borders as shown add up, with the opening between them, to the blank. The first of a pair is the left one as it
 * hangs and the top one, in either view, so that paper and screen say the same.
 */
function shownBorder(layer: ViewLayer, window: ViewWindow, side: Side, showing: Showing): readonly string[] {
  const toCut = borderOf(window.cut, layer, side, showing);
  const toOpening = borderOf(window.opening, layer, side, showing);
  return toCut === toOpening ? [toCut] : [toCut, `opening ${toOpening}`];
}

function borderOf(cut: Box, layer: ViewLayer, side: Side, showing: Showing): string {
  const { width, height } = layer.blank;
  const across = [cut.left, cut.right - cut.left, width - cut.right];
  const up = [height - cut.top, cut.top - cut.bottom, cut.bottom];
  const upright = side === 'top' || side === 'bottom';
  const back = layer.view === 'back';
  const parts = upright ? up : back ? across.reverse() : across;
  const shown = showTogether(parts, upright ? height : width, showing);
  const first = side === 'top' || side === (back ? 'right' : 'left');
  return mark(shown[first ? 0 : 2]);
}

function mark(shown: Shown | undefined): string {
  if (!shown) return '';
  return fractions(shown.rounded ? `≈ ${shown.withUnit}` : shown.withUnit);
}

/** Writes the number where both it and its line find room. */
function drawBorder(setting: LabelSetting, border: Border, seen: Box): void {
  const { surface, part, room } = setting;
  const box = boxOnPage(part, seen);
  const lines = border.words.map((words, index) =>
    index === 0 ? { words, size: 14, weight: 'bold' as const, tabular: true } : { words, size: 7 },
  );
  const whole: Label = { turn: 0, lines };
  const labels = FACTORS.flatMap((factor) => {
    const label = smaller(whole, factor);
    return [label, { ...label, turn: 90 as const }];
  });
  for (const label of labels) {
    const size = labelSize(surface, label);
    for (const place of placesOf(border, seen)) {
      const line = dimensionAt(border.side, box, place);
      const beside = numberBox(border.side, box, line, size);
      if (!room.isFree(beside) || !room.isClear(inner(line))) continue;
      room.take(beside);
      drawLabel(surface, label, beside);
      drawDimension(setting, border, line);
      return;
    }
  }
}

/** False on a tile beside that on which the cut reaches the strip: the dimension is there. */
function touches({ side, touch }: Border, seen: Box): boolean {
  return isAcross(side)
    ? touch.from <= seen.top && touch.to >= seen.bottom
    : touch.from <= seen.right && touch.to >= seen.left;
}

/** Along the part of a side that is seen, from 0 to 1: where the cut reaches the strip first. */
function placesOf({ side, touch }: Border, seen: Box): readonly number[] {
  const [start, length] = isAcross(side) ? [seen.bottom, seen.top - seen.bottom] : [seen.left, seen.right - seen.left];
  const within = PLACES.map((place) => (touch.from + place * (touch.to - touch.from) - start) / length);
  return [...new Set([...within.filter((place) => place >= 0 && place <= 1), ...PLACES])];
}

function isAcross(side: Side): boolean {
  return side === 'left' || side === 'right';
}

type Line = readonly [Point, Point];

function dimensionAt(side: Side, box: Box, place: number): Line {
  const x = box.left + place * (box.right - box.left);
  const y = box.bottom + place * (box.top - box.bottom);
  return isAcross(side)
    ? [
        { x: box.left, y },
        { x: box.right, y },
      ]
    : [
        { x, y: box.bottom },
        { x, y: box.top },
      ];
}

/** The number stands on a lying line and to the right of an upright one. */
function numberBox(side: Side, box: Box, line: Line, size: Size): Box {
  return isAcross(side)
    ? boxAt({ x: (box.left + box.right - size.width) / 2, y: line[0].y + 0.4 }, size)
    : boxAt({ x: line[0].x + 0.4, y: (box.bottom + box.top - size.height) / 2 }, size);
}

/** A dimension line without its ends, which touch the lines it measures between. */
function inner([from, to]: Line): Box {
  const ends = 0.8;
  return from.y === to.y
    ? { left: from.x + ends, right: to.x - ends, bottom: from.y - 0.2, top: from.y + 0.2 }
    : { left: from.x - 0.2, right: from.x + 0.2, bottom: from.y + ends, top: to.y - ends };
}

/** A dimension beside the point that it is of is led to it by a line along the strip's edge; undefined where it stands there. */
function extensionOf({ side, strip, touch }: Border, part: Part, [from, to]: Line): Line | undefined {
  const box = boxOnPage(part, strip);
  const across = isAcross(side);
  const shift = across ? box.bottom - strip.bottom : box.left - strip.left;
  const at = across ? from.y : from.x;
  const nearest = Math.min(Math.max(at, touch.from + shift), touch.to + shift);
  if (Math.abs(nearest - at) < 0.01) return undefined;
  const edge = across ? (side === 'left' ? to.x : from.x) : side === 'bottom' ? to.y : from.y;
  const point = (along: number): Point => (across ? { x: edge, y: along } : { x: along, y: edge });
  return [point(nearest), point(at)];
}

/** The line, with a slanting stroke at each end that lies on this page. */
function drawDimension({ surface, part, room }: LabelSetting, border: Border, [from, to]: Line): void {
  surface.line(from, to, PENS.hair);
  const extension = extensionOf(border, part, [from, to]);
  if (extension) surface.line(...extension, PENS.hair);
  room.take(boxRound(from, to, 0.3));
  const strip = boxOnPage(part, border.strip);
  for (const end of [from, to]) room.take(boxRound(end, end, 1));
  const ends = isAcross(border.side)
    ? [from.x === strip.left, to.x === strip.right]
    : [from.y === strip.bottom, to.y === strip.top];
  const strokes = [from, to].filter((_, index) => ends[index]);
  surface.lines(
    strokes.map(
      ({ x, y }) =>
        [
          { x: x - 0.9, y: y - 0.9 },
          { x: x + 0.9, y: y + 0.9 },
        ] as const,
    ),
    PENS.mark,
  );
}
