/** The tile map: a layer divided into its pages, each with its page number, empty ones crossed out. */
import { grow, type Box, type Point } from '../../core/geometry/box';
import { placeOnWhite, spotsIn, type Label } from '../paper/label';
import { PENS } from '../paper/pens';
import { boxRound, Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { drawMat, type MatDrawing } from './mat-drawing';
import type { Tile, Tiling } from './tiling';
import { cornersOf, type ViewLayer } from './view-geometry';

export interface LayerTiles {
  readonly layer: ViewLayer;
  readonly tiles: readonly Tile[];
  /** Page of each printed tile. */
  readonly pages: ReadonlyMap<Tile, number>;
}

/** Below this the numbers in the map cannot be read, points. */
const SMALLEST = 3.5;

export function drawTileMap(surface: Surface, room: Box, { layer, tiles, pages }: LayerTiles, tiling: Tiling): void {
  const heading = `Layer ${layer.plan.number} · ${layer.view.toUpperCase()}`;
  drawMap(surface, room, { heading, blank: layer.blank, openings: layer.windows, tiles, pages }, tiling);
}

export interface PageMap extends Pick<LayerTiles, 'tiles' | 'pages'>, Pick<MatDrawing, 'blank' | 'openings'> {
  readonly heading: string;
}

export function drawMap(
  surface: Surface,
  room: Box,
  { heading, tiles, pages, ...whole }: PageMap,
  tiling: Tiling,
): void {
  const map = { ...room, top: room.top - 8.5 };
  const printed = [...pages.values()];
  surface.text(heading, { x: room.left, y: room.top - 3 }, { size: 9, weight: 'bold' });
  surface.text(pagesWords(printed, tiles.length), { x: room.left, y: room.top - 6.6 }, { size: 7 });
  const at = drawMat(surface, map, {
    ...whole,
    columns: tiling.columns,
    rows: tiling.rows,
    faint: true,
  });
  for (const tile of tiles) {
    const low = at({ x: tile.own.left, y: tile.own.bottom });
    const high = at({ x: tile.own.right, y: tile.own.top });
    if (tile.empty) {
      surface.lines(
        [
          [low, high],
          [
            { x: low.x, y: high.y },
            { x: high.x, y: low.y },
          ],
        ],
        PENS.hair,
      );
      continue;
    }
    const number = String(pages.get(tile) ?? '');
    const size = Math.min(12, (high.y - low.y) * 1.8, ((high.x - low.x) * 3) / number.length);
    if (size < SMALLEST) continue;
    const cell = { left: low.x, right: high.x, bottom: low.y, top: high.y };
    const openings = whole.openings.map(({ opening }) => boxBetween(at, opening));
    drawNumber(surface, number, cell, openings, size);
  }
}

function boxBetween(at: (point: Point) => Point, { left, right, bottom, top }: Box): Box {
  const [low, high] = [at({ x: left, y: bottom }), at({ x: right, y: top })];
  return { left: low.x, right: high.x, bottom: low.y, top: high.y };
}

/** Beside the openings' edges that fall into its cell where it can, and else on a patch of white, so that none runs through it. */
function drawNumber(surface: Surface, number: string, cell: Box, openings: readonly Box[], size: number): void {
  // In the middle it has room however small the cell is.
  const room = new Room(grow(cell, 1));
  for (const corners of openings.map(cornersOf)) {
    corners.forEach((corner, index) => room.takeCrossable(boxRound(corner, corners[(index + 1) % 4] ?? corner, 0.1)));
  }
  const label: Label = { lines: [{ words: number, size, weight: 'bold' }], turn: 0 };
  placeOnWhite(surface, room, [label], spotsIn(cell));
}

function pagesWords(printed: readonly number[], tiles: number): string {
  const first = Math.min(...printed);
  const last = Math.max(...printed);
  const empty = tiles - printed.length;
  const pages = first === last ? `page ${first}` : `pages ${first} to ${last}`;
  return empty === 0 ? pages : `${pages}; ${empty} crossed: not printed`;
}
