/** The tile map: a layer divided into its pages, each with its page number, empty ones crossed out. */
import type { Box, Point } from '../../core/geometry/box';
import { capHeight } from '../paper/label';
import { PENS } from '../paper/pens';
import type { Surface } from '../paper/surface';
import { drawMat, type MatDrawing } from './mat-drawing';
import type { Tile, Tiling } from './tiling';
import type { ViewLayer } from './view-geometry';

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
    const middle = { x: (low.x + high.x) / 2, y: (low.y + high.y) / 2 - size * 0.125 };
    if (size >= SMALLEST) drawNumber(surface, number, middle, size);
  }
}

/** On a patch of white, so that no line runs through it. */
function drawNumber(surface: Surface, number: string, at: Point, size: number): void {
  const style = { size, weight: 'bold', align: 'centre' } as const;
  const half = surface.width(number, style) / 2;
  surface.fill(
    { left: at.x - half, right: at.x + half, bottom: at.y - 0.2, top: at.y + capHeight(size) + 0.2 },
    'white',
  );
  surface.text(number, at, style);
}

function pagesWords(printed: readonly number[], tiles: number): string {
  const first = Math.min(...printed);
  const last = Math.max(...printed);
  const empty = tiles - printed.length;
  const pages = first === last ? `page ${first}` : `pages ${first} to ${last}`;
  return empty === 0 ? pages : `${pages}; ${empty} crossed: not printed`;
}
