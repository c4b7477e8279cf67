/** One page of a wall template: nail holes and seats at full scale, frames where they fall in, the level line. */
import type { Box, Point } from '../../core/geometry/box';
import { SITS, sits } from '../../core/hanging/words/wall-words';
import { lengthText, type Showing } from '../../core/units';
import type { PagePlan } from '../paper/document';
import { labelSize, placeLabel, placeOnWhite, type Label } from '../paper/label';
import { PENS } from '../paper/pens';
import { boxRound, Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';
import { boxOnPage, onPage, type Place } from '../template/part';
import { drawJoins, drawRegistration, drawScales } from '../template/registration';
import { drawSheetFrame } from '../template/sheet-frame';
import { placeOf, tilePlace } from '../template/tile-page';
import type { Join, Tile, Tiling } from '../template/tiling';
import { clipLine, contains, cornersOf } from '../template/view-geometry';
import type { WallArea, WallMark } from './wall-area';
import { frameOutlines, markLines } from './wall-key';

export interface WallTile {
  readonly title: string;
  readonly area: WallArea;
  readonly tiling: Tiling;
  readonly tile: Tile;
  readonly joins: readonly Join[];
  readonly showing: Showing;
  readonly turned: boolean;
}

export function planWallTile(page: WallTile): PagePlan {
  return {
    size: page.tiling.paper,
    turned: page.turned,
    step: `Drawing the wall template, row ${page.tile.row + 1}, column ${page.tile.column + 1}`,
    draw: (surface, { number, count }) => drawTile(surface, page, `Page ${number} of ${count}`),
  };
}

function drawTile(surface: Surface, page: WallTile, number: string): void {
  const { area, tile, tiling, showing } = page;
  drawSheetFrame(
    surface,
    {
      word: 'WALL',
      title: page.title,
      under: 'Nails and hooks at full size, seen as they come to lie on the wall',
      page: number,
      place: `${tilePlace(tile, tiling)} · scale 100 %`,
    },
    { blank: area.size, openings: frameOutlines(area), marked: tile.own, columns: tiling.columns, rows: tiling.rows },
  );
  const place = placeOf(tile, tiling, area.size);
  const room = new Room(boxOnPage(place, tile.own));
  drawOutlines(surface, area, place, room);
  drawLevel(surface, area, place, room);
  for (const mark of area.marks) drawMark(surface, mark, place, room);
  drawJoins(surface, place, room, tile, page.joins);
  drawScales(surface, place, showing);
  drawRegistration(surface, place, room, showing, placeOnWhite);
  for (const mark of area.marks) labelMark(surface, mark, area, place, room, showing);
  labelLevel(surface, area, place, room, showing);
  labelFrames(surface, area, place, room);
  labelUp(surface, place, room);
}

function drawOutlines(surface: Surface, { outlines }: WallArea, place: Place, room: Room): void {
  const lines = outlines.flatMap(({ box }) => {
    const corners = cornersOf(box);
    return corners.flatMap((corner, index) => {
      const clipped = clipLine(corner, corners[(index + 1) % 4] ?? corner, place.drawn);
      return clipped ? [[onPage(place, clipped[0]), onPage(place, clipped[1])] as const] : [];
    });
  });
  surface.lines(lines, PENS.edge);
  for (const [from, to] of lines) room.takeCrossable(boxRound(from, to, 0.4));
}

/** From one edge of the drawn part to the other, to lay a spirit level along. */
function drawLevel(surface: Surface, { level }: WallArea, place: Place, room: Room): void {
  const line = levelIn(level, place.drawn);
  if (!line) return;
  const [from, to] = line.map((point) => onPage(place, point));
  if (!from || !to) return;
  surface.line(from, to, PENS.ruled);
  room.takeCrossable(boxRound(from, to, 0.4));
}

function levelIn(level: number, { left, right, bottom, top }: Box): readonly [Point, Point] | undefined {
  return level < bottom || level > top ? undefined : [{ x: left, y: level }, { x: right, y: level }]; // prettier-ignore
}

/** Heavy where a nail or pencil goes through, light for a seat beside its nail. */
function drawMark(surface: Surface, mark: WallMark, place: Place, room: Room): void {
  if (!contains(place.drawn, mark.at)) return;
  const at = onPage(place, mark.at);
  surface.lines(markLines(mark, at), mark.isMain ? PENS.cut : PENS.mark);
  if (mark.isMain) surface.circle(at, 2.2, PENS.mark);
  room.take(boxRound(at, at, 5.4));
}

function labelMark(surface: Surface, mark: WallMark, area: WallArea, place: Place, room: Room, showing: Showing): void {
  if (!contains(place.own, mark.at)) return;
  const at = onPage(place, mark.at);
  const what =
    mark.kind === 'nail' ? 'nail hole' : mark.isMain ? `${sits(area.kind)} here` : `seat of the ${SITS[area.kind]}`;
  const name = `${mark.frame.number}${mark.hook === '' ? '' : ` ${mark.hook}`}`;
  const height = `${fractions(lengthText(area.origin.y + mark.at.y, showing))} above the floor`;
  const lines: Label['lines'] = mark.isMain
    ? [{ words: `${name} · ${what}`, size: 9, weight: 'bold' }, { words: height, size: 8 }]
    : [{ words: `${name} · ${what}`, size: 7 }, { words: height, size: 7 }]; // prettier-ignore
  placeOnWhite(surface, room, [{ lines, turn: 0 }], ({ width, height: high }) =>
    [6, 9, 14].flatMap((away) => {
      const [beside, above] = [away + width / 2, away + high / 2];
      const straight = [{ x: beside, y: 0 }, { x: -beside, y: 0 }, { x: 0, y: above }, { x: 0, y: -above }]; // prettier-ignore
      const aslant = [1, -1].flatMap((up) => [{ x: beside, y: up * above }, { x: -beside, y: up * above }]); // prettier-ignore
      return [...straight, ...aslant].map(({ x, y }) => ({ x: at.x + x, y: at.y + y }));
    }),
  );
}

/** Along a line, from its middle to its ends. */
const ALONG = [0.5, 0.3, 0.7, 0.2, 0.8, 0.4, 0.6, 0.12, 0.88];

function labelLevel(surface: Surface, area: WallArea, place: Place, room: Room, showing: Showing): void {
  const line = levelIn(area.level, place.own);
  if (!line) return;
  const [from, to] = [onPage(place, line[0]), onPage(place, line[1])];
  const words = `level · ${fractions(lengthText(area.origin.y + area.level, showing))} above the floor`;
  placeLabel(surface, room, [{ lines: [{ words, size: 7 }], turn: 0 }], ({ height }) =>
    ALONG.toReversed().flatMap((part) =>
      [1, -1].map((side) => ({ x: from.x + part * (to.x - from.x), y: from.y + side * (height / 2 + 0.8) })),
    ),
  );
}

/** Which frame's upper or lower edge it is, where one falls in. */
function labelFrames(surface: Surface, { outlines }: WallArea, place: Place, room: Room): void {
  for (const { frame, box } of outlines) {
    const title = frame.title === '' ? [] : [`frame ${frame.number} · ${frame.title}`];
    for (const [name, y] of [
      ['upper', box.top],
      ['lower', box.bottom],
    ] as const) {
      const edge = clipLine({ x: box.left, y }, { x: box.right, y }, place.own);
      if (!edge) continue;
      const [from, to] = [onPage(place, edge[0]), onPage(place, edge[1])];
      const number = `frame ${frame.number}`;
      const labels = [...[...title, number].map((words) => `${name} edge of ${words}`), number]
        .map((words): Label => ({ lines: [{ words, size: 7 }], turn: 0 }))
        .filter((label) => labelSize(surface, label).width <= to.x - from.x);
      placeLabel(surface, room, labels, ({ width, height }) =>
        ALONG.flatMap((part) =>
          [-1, 1].map((side) => ({
            x: from.x + width / 2 + part * (to.x - from.x - width),
            y: from.y + side * (height / 2 + 0.8),
          })),
        ),
      );
    }
  }
}

const UP = [0.85, 0.6, 0.35, 0.12, 0.75, 0.5, 0.25, 0.95];

function labelUp(surface: Surface, place: Place, room: Room): void {
  const own = boxOnPage(place, place.own);
  const labels = [14, 10].map((size): Label => ({ lines: [{ words: '↑ UP', size, weight: 'bold' }], turn: 0 }));
  placeOnWhite(surface, room, labels, ({ width, height }) =>
    UP.flatMap((up) =>
      ALONG.map((part) => ({
        x: own.left + width / 2 + part * (own.right - own.left - width),
        y: own.bottom + height / 2 + up * (own.top - own.bottom - height),
      })),
    ),
  );
}
