/** What joins the pages: registration marks and scales measured from the common origin, and lettered joins. */
import type { Box, Point } from '../../core/geometry/box';
import { MM_PER_INCH, showLength, type Showing } from '../../core/units';
import { placeLabel, type Label, type MiddlesOf } from '../paper/label';
import { PENS } from '../paper/pens';
import { boxRound, type Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';
import { boxOnPage, onPage, type Place } from './part';
import type { Join, Tile } from './tiling';
import { cornersOf } from './view-geometry';

const CROSS = 4;
const RING = 2;

/**
 * A cross with a ring at each corner of the page's own part, with its distances from the origin in words.
 * @param placeName how a name is placed that finds no free room
 */
export function drawRegistration(
  surface: Surface,
  part: Place,
  room: Room,
  showing: Showing,
  placeName: typeof placeLabel = placeLabel,
): void {
  const corners = cornersOf(part.own);
  for (const corner of corners) {
    const at = onPage(part, corner);
    surface.lines(
      [
        [
          { x: at.x - CROSS, y: at.y },
          { x: at.x + CROSS, y: at.y },
        ],
        [
          { x: at.x, y: at.y - CROSS },
          { x: at.x, y: at.y + CROSS },
        ],
      ],
      PENS.mark,
    );
    surface.circle(at, RING, PENS.mark);
    room.take(boxRound(at, at, CROSS + 0.3));
  }
  for (const corner of corners) {
    const { labels, middles } = cornerName(corner, part, showing);
    placeName(surface, room, labels, middles);
  }
}

function cornerName(
  corner: Point,
  part: Place,
  showing: Showing,
): { readonly labels: readonly Label[]; readonly middles: MiddlesOf } {
  const at = onPage(part, corner);
  const value = (mm: number) => {
    const shown = showLength(mm, showing);
    return fractions(shown.rounded ? `≈ ${shown.text}` : shown.text);
  };
  const words = `x ${value(corner.x)}  y ${value(corner.y)}`;
  const inward = { x: corner.x === part.own.left ? 1 : -1, y: corner.y === part.own.bottom ? 1 : -1 };
  const lines = [corner.x === 0 && corner.y === 0 ? `origin  ${words}` : words].map((text) => ({
    words: text,
    size: 6,
  }));
  return {
    labels: [
      { lines, turn: 0 },
      { lines, turn: 90 },
    ],
    middles: (size) =>
      [4.6, 8, 12, 20].flatMap((away) => [
        { x: at.x + inward.x * (away + size.width / 2), y: at.y + inward.y * (2.4 + size.height / 2) },
        { x: at.x + inward.x * (2.4 + size.width / 2), y: at.y + inward.y * (away + size.height / 2) },
      ]),
  };
}

/** The lines pages are trimmed to, and on each join this page's half of a ring with the join's letter. */
export function drawJoins(surface: Surface, part: Place, room: Room, tile: Tile, joins: readonly Join[]): void {
  const { own, drawn, blank } = part;
  const sides: [boolean, Point, Point][] = [
    [own.left > 0, { x: own.left, y: drawn.bottom }, { x: own.left, y: drawn.top }],
    [own.right < blank.width, { x: own.right, y: drawn.bottom }, { x: own.right, y: drawn.top }],
    [own.bottom > 0, { x: drawn.left, y: own.bottom }, { x: drawn.right, y: own.bottom }],
    [own.top < blank.height, { x: drawn.left, y: own.top }, { x: drawn.right, y: own.top }],
  ];
  for (const [shown, from, to] of sides) {
    if (!shown) continue;
    surface.line(onPage(part, from), onPage(part, to), PENS.join);
    room.take(boxRound(onPage(part, from), onPage(part, to), 0.5));
  }
  for (const join of joins) {
    const index = join.tiles.indexOf(tile);
    if (index >= 0) drawHalfMark(surface, onPage(part, join.at), join, index === 0 ? -1 : 1, room);
  }
}

const HALF_RING = 4;

/** The half on this page's side: `-1` for the left or lower page, `1` for the right or upper one. */
function drawHalfMark(surface: Surface, at: Point, join: Join, side: -1 | 1, room: Room): void {
  const across = join.axis === 'across';
  const from = across ? (side === -1 ? 90 : 270) : side === -1 ? 180 : 0;
  surface.arc(at, HALF_RING, from, from + 180, PENS.edge);
  const middle = across ? { x: at.x + side * 1.9, y: at.y } : { x: at.x, y: at.y + side * 1.9 };
  const size = join.letter.length > 1 ? 7 : 9;
  surface.text(join.letter, { x: middle.x, y: middle.y - size * 0.1 }, { size, weight: 'bold', align: 'centre' });
  room.take(boxRound(at, at, HALF_RING + 0.3));
}

interface Scale {
  readonly small: number;
  readonly smallPerBig: number;
}

function scaleOf(showing: Showing): Scale {
  return showing.unit === 'in' ? { small: MM_PER_INCH / 4, smallPerBig: 4 } : { small: 5, smallPerBig: 4 };
}

/** Scales along the four edges of what is drawn, their numbers counted from the common origin. */
export function drawScales(surface: Surface, part: Place, showing: Showing): void {
  const edge = boxOnPage(part, part.drawn);
  const across = ticksWithin(part.drawn.left, part.drawn.right, scaleOf(showing));
  const up = ticksWithin(part.drawn.bottom, part.drawn.top, scaleOf(showing));
  surface.lines(
    [...across.flatMap((tick) => acrossTicks(tick, part, edge)), ...up.flatMap((tick) => upTicks(tick, part, edge))],
    PENS.mark,
  );
  const number = (mm: number) => showLength(mm, showing).text;
  for (const { at } of across.filter((tick) => tick.big)) {
    surface.text(number(at), { x: at + part.offset.x, y: edge.bottom - 4.6 }, { size: 6, align: 'centre' });
  }
  for (const { at } of up.filter((tick) => tick.big)) {
    surface.text(number(at), { x: edge.left - 3, y: at + part.offset.y }, { size: 6, align: 'centre', turn: 90 });
  }
}

interface ScaleTick {
  readonly at: number;
  readonly big: boolean;
}

function ticksWithin(from: number, to: number, scale: Scale): readonly ScaleTick[] {
  const first = Math.ceil(from / scale.small - 1e-9);
  const last = Math.floor(to / scale.small + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => ({
    at: (first + index) * scale.small,
    big: (first + index) % scale.smallPerBig === 0,
  }));
}

function acrossTicks(tick: ScaleTick, part: Place, edge: Box): (readonly [Point, Point])[] {
  const x = tick.at + part.offset.x;
  const long = tick.big ? 2 : 1.1;
  return [
    [
      { x, y: edge.bottom - 0.4 },
      { x, y: edge.bottom - 0.4 - long },
    ],
    [
      { x, y: edge.top + 0.4 },
      { x, y: edge.top + 0.4 + long * 0.8 },
    ],
  ];
}

function upTicks(tick: ScaleTick, part: Place, edge: Box): (readonly [Point, Point])[] {
  const y = tick.at + part.offset.y;
  const long = tick.big ? 2 : 1.1;
  return [
    [
      { x: edge.left - 0.4, y },
      { x: edge.left - 0.4 - long, y },
    ],
    [
      { x: edge.right + 0.4, y },
      { x: edge.right + 0.4 + long * 0.8, y },
    ],
  ];
}
