/** One page of a wall template: nail holes and seats at full scale, frames where they fall in, the level line. */
import type { Box, Point } from '../../core/geometry/box';
import { SITS, sits } from '../../core/hanging/words/wall-words';
import { lengthText, type Showing } from '../../core/units';
import type { PagePlan } from '../paper/document';
import { placeLabel, type Label } from '../paper/label';
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
  drawOutlines(surface, area, place);
  drawLevel(surface, area, place, room);
  for (const mark of area.marks) drawMark(surface, mark, place, room);
  drawJoins(surface, place, room, tile, page.joins);
  drawScales(surface, place, showing);
  drawRegistration(surface, place, room, showing);
  for (const mark of area.marks) labelMark(surface, mark, area, place, room, showing);
  labelLevel(surface, area, place, room, showing);
  labelFrames(surface, area, place, room);
}

function drawOutlines(surface: Surface, { outlines }: WallArea, place: Place): void {
  const lines = outlines.flatMap(({ box }) => {
    const corners = cornersOf(box);
    return corners.flatMap((corner, index) => {
      const clipped = clipLine(corner, corners[(index + 1) % 4] ?? corner, place.drawn);
      return clipped ? [[onPage(place, clipped[0]), onPage(place, clipped[1])] as const] : [];
    });
  });
  surface.lines(lines, PENS.edge);
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
  placeLabel(surface, room, [{ lines, turn: 0 }], ({ width, height: high }) =>
    [6, 9, 14].flatMap((away) => [
      { x: at.x + away + width / 2, y: at.y },
      { x: at.x - away - width / 2, y: at.y },
      { x: at.x, y: at.y + away + high / 2 },
      { x: at.x, y: at.y - away - high / 2 },
    ]),
  );
}

function labelLevel(surface: Surface, area: WallArea, place: Place, room: Room, showing: Showing): void {
  const line = levelIn(area.level, place.own);
  if (!line) return;
  const [from, to] = [onPage(place, line[0]), onPage(place, line[1])];
  const words = `level · ${fractions(lengthText(area.origin.y + area.level, showing))} above the floor`;
  placeLabel(surface, room, [{ lines: [{ words, size: 7 }], turn: 0 }], ({ height }) =>
    [0.2, 0.8, 0.5, 0.35, 0.65].flatMap((part) =>
      [1, -1].map((side) => ({ x: from.x + part * (to.x - from.x), y: from.y + side * (height / 2 + 0.8) })),
    ),
  );
}

/** Which frame's upper edge it is, where one falls in, and which way is up. */
function labelFrames(surface: Surface, { outlines }: WallArea, place: Place, room: Room): void {
  for (const { frame, box } of outlines) {
    const edge = clipLine({ x: box.left, y: box.top }, { x: box.right, y: box.top }, place.own);
    if (!edge) continue;
    const [from, to] = [onPage(place, edge[0]), onPage(place, edge[1])];
    const title = frame.title === '' ? '' : ` · ${frame.title}`;
    const words = [
      `upper edge of frame ${frame.number}${title}`,
      `upper edge of frame ${frame.number}`,
      `frame ${frame.number}`,
    ];
    const labels = words.map((said): Label => ({
      lines: [{ words: surface.fit(said, to.x - from.x, { size: 7 }), size: 7 }],
      turn: 0,
    }));
    placeLabel(surface, room, labels, ({ height }) =>
      [0.5, 0.3, 0.7, 0.2, 0.8].flatMap((part) =>
        [-1, 1].map((side) => ({ x: from.x + part * (to.x - from.x), y: from.y + side * (height / 2 + 0.8) })),
      ),
    );
  }
  const own = boxOnPage(place, place.own);
  placeLabel(surface, room, [{ lines: [{ words: '↑ UP', size: 14, weight: 'bold' }], turn: 0 }], ({ width, height }) =>
    [0.5, 0.25, 0.75].flatMap((part) =>
      [0.85, 0.6, 0.35, 0.12].map((up) => ({
        x: own.left + width / 2 + part * (own.right - own.left - width),
        y: own.bottom + height / 2 + up * (own.top - own.bottom - height),
      })),
    ),
  );
}
