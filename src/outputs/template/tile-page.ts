/** One tile of a layer on its page. */
import type { Size } from '../../core/geometry/box';
import type { Showing } from '../../core/units';
import type { PagePlan } from '../paper/document';
import { Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { drawBorders, type Border } from './border-dimensions';
import { drawCuts } from './cut-drawing';
import { labelEdges, labelGuides, labelOpenings } from './cut-labels';
import { drawLines, labelLines } from './line-drawing';
import { boxOnPage, type Part, type Place } from './part';
import { drawJoins, drawRegistration, drawScales } from './registration';
import { drawSheetFrame } from './sheet-frame';
import { tileArea } from './sheet-plan';
import { drawnBox, OVERLAP, type Join, type Tile, type Tiling } from './tiling';
import type { ViewLayer } from './view-geometry';

export interface TilePage {
  readonly title: string;
  readonly layer: ViewLayer;
  readonly layerCount: number;
  readonly tiling: Tiling;
  readonly tile: Tile;
  readonly joins: readonly Join[];
  readonly borders: readonly Border[];
  readonly showing: Showing;
  readonly turned: boolean;
}

export function planTilePage(page: TilePage): PagePlan {
  const { tile, tiling, layer } = page;
  return {
    size: tiling.paper,
    turned: page.turned,
    step: `Drawing layer ${layer.plan.number}, row ${tile.row + 1}, column ${tile.column + 1}`,
    draw: (surface, { number, count }) => drawTile(surface, page, `Page ${number} of ${count}`),
  };
}

function drawTile(surface: Surface, page: TilePage, number: string): void {
  const { tile, tiling, layer, showing } = page;
  drawSheetFrame(
    surface,
    {
      view: layer.view,
      title: page.title,
      under: layerWords(layer, page.layerCount),
      page: number,
      place: `${tilePlace(tile, tiling)} · scale 100 %`,
    },
    {
      blank: layer.blank,
      openings: layer.windows,
      marked: tile.own,
      columns: tiling.columns,
      rows: tiling.rows,
    },
  );
  const part = partOf(page);
  const room = new Room(boxOnPage(part, tile.own));
  drawCuts(surface, part, room, showing.unit);
  drawLines(surface, part, room);
  drawJoins(surface, part, room, tile, page.joins);
  drawScales(surface, part, showing);
  drawRegistration(surface, part, room, showing);
  const setting = { surface, part, room, showing };
  drawBorders(setting, page.borders);
  labelOpenings(setting);
  labelLines(setting);
  labelGuides(setting);
  labelEdges(setting);
}

function partOf({ layer, tile, tiling }: TilePage): Part {
  return { layer, ...placeOf(tile, tiling, layer.blank) };
}

/** Where a tile of a whole is drawn on its page. */
export function placeOf(tile: Tile, tiling: Tiling, blank: Size): Place {
  const area = tileArea(tiling.paper);
  return {
    blank,
    own: tile.own,
    drawn: drawnBox(tile.own),
    offset: { x: area.left + OVERLAP - tile.own.left, y: area.bottom + OVERLAP - tile.own.bottom },
  };
}

/** Which layer, of which board, and how it is looked at. */
export function layerWords(layer: ViewLayer, count: number): string {
  const board = layer.plan.board === '' ? '' : ` · ${layer.plan.board}`;
  const seen = layer.view === 'back' ? 'seen from the back' : 'seen from the front';
  // A long name may be cut short, so that it comes last.
  return `Layer ${layer.plan.number} of ${count} · ${seen}${board}`;
}

export function tilePlace(tile: Tile, { columns, rows }: Tiling): string {
  if (columns.length === 2 && rows.length === 2) return 'one tile';
  return `column ${tile.column + 1} of ${columns.length - 1}, row ${tile.row + 1} of ${rows.length - 1}`;
}
