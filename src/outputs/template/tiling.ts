/** Tiling: how a blank is divided over pages of a paper, which tiles hold nothing, and how neighbours join. */
import type { CutLine } from '../../core/cutting/plan';
import type { Box, Point, Size } from '../../core/geometry/box';
import { boundsOf } from '../../core/geometry/outline';
import { MM_PER_INCH, stepLength, type Showing } from '../../core/units';
import { paperSize, type TilePaper } from '../paper/page';
import { tileArea } from './sheet-plan';
import { divide } from './joins';
import { printedParts } from './printed-tiles';
import { cutMeets } from './curve-drawing';
import { clipLine, type ViewLayer } from './view-geometry';

/** Neighbouring pages both draw the strip this far to either side of their join, mm: 10 mm together. */
export const OVERLAP = 5;

/** How one size of paper covers the blank. Positions are mm from the common origin, the blank's lower left corner. */
export interface Tiling {
  readonly paper: Size;
  /** Where columns begin and end, from the left. */
  readonly columns: readonly number[];
  /** Where rows begin and end, from the bottom. */
  readonly rows: readonly number[];
}

export interface Tile {
  /** From 0, counted from the left and from the top, as pages are read. */
  readonly column: number;
  readonly row: number;
  /** The part of the blank that this page is trimmed to. */
  readonly own: Box;
  /** It is not printed: no cut and no border lies in it, and it joins nothing. */
  readonly empty: boolean;
}

/** The common edge of two printed tiles. */
export interface Join {
  readonly letter: string;
  /** `across`: neighbours side by side, the join runs upward. `up`: one above the other. */
  readonly axis: 'across' | 'up';
  /** The tiles left and right, or below and above. */
  readonly tiles: readonly [Tile, Tile];
  /** Where its mark lies. */
  readonly at: Point;
}

/** The way round that takes fewer printed pages; upright where both take as many. */
export function chooseTiling(layers: readonly ViewLayer[], blank: Size, paper: TilePaper, showing: Showing): Tiling {
  const upright = tilingOn(paperSize(paper, 'portrait'), layers, blank, showing);
  const lying = tilingOn(paperSize(paper, 'landscape'), layers, blank, showing);
  return pageCount(lying, layers) < pageCount(upright, layers) ? lying : upright;
}

function tilingOn(paper: Size, layers: readonly ViewLayer[], blank: Size, showing: Showing): Tiling {
  const area = tileArea(paper);
  const steps = showing.unit === 'in' ? [MM_PER_INCH / 4, stepLength(showing)] : [5, 1];
  const cuts = layers.flatMap(({ view, windows, lines }) => [
    ...windows.map((window) => window.cut),
    ...(view === 'front' ? lines.map(({ middle }) => boundsOf(middle)) : []),
  ]);
  const most = { across: area.right - area.left - 2 * OVERLAP, up: area.top - area.bottom - 2 * OVERLAP };
  return {
    paper,
    columns: divide(
      blank.width,
      most.across,
      steps,
      cuts.flatMap((cut) => [cut.left, cut.right]),
    ),
    rows: divide(
      blank.height,
      most.up,
      steps,
      cuts.flatMap((cut) => [cut.bottom, cut.top]),
    ),
  };
}

function pageCount(tiling: Tiling, layers: readonly ViewLayer[]): number {
  return layers.reduce((sum, layer) => sum + tilesOf(tiling, layer).filter((tile) => !tile.empty).length, 0);
}

/** All tiles of a layer, row after row from the top left. */
export function tilesOf({ columns, rows }: Tiling, layer: ViewLayer): readonly Tile[] {
  const grid = { columns: columns.length - 1, rows: rows.length - 1 };
  const places = Array.from({ length: grid.columns * grid.rows }, (_, index) => ({
    column: index % grid.columns,
    row: Math.floor(index / grid.columns),
  }));
  const parts = places.map(({ column, row }) => ({
    left: columns[column] ?? 0,
    right: columns[column + 1] ?? 0,
    bottom: rows[grid.rows - 1 - row] ?? 0,
    top: rows[grid.rows - row] ?? 0,
  }));
  const printed = printedParts(parts, grid, layer);
  return places.map((place, index) => ({ ...place, own: parts[index]!, empty: printed[index] !== true }));
}

/** The joins between printed tiles, lettered from the top left, with their marks clear of the cuts where possible. */
export function joinsOf(tiles: readonly Tile[], layer: ViewLayer): readonly Join[] {
  const at = new Map(tiles.filter((tile) => !tile.empty).map((tile) => [`${tile.column} ${tile.row}`, tile]));
  const joins: Join[] = [];
  for (const tile of at.values()) {
    const right = at.get(`${tile.column + 1} ${tile.row}`);
    const below = at.get(`${tile.column} ${tile.row + 1}`);
    if (right) joins.push(joinBetween(letters(joins.length), 'across', tile, right, layer));
    if (below) joins.push(joinBetween(letters(joins.length), 'up', below, tile, layer));
  }
  return joins;
}

function joinBetween(letter: string, axis: Join['axis'], first: Tile, second: Tile, layer: ViewLayer): Join {
  const parts = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.45, 0.55, 0.35, 0.65];
  const spots = parts.map((part) =>
    axis === 'across'
      ? { x: first.own.right, y: first.own.bottom + part * (first.own.top - first.own.bottom) }
      : { x: first.own.left + part * (first.own.right - first.own.left), y: first.own.top },
  );
  const free = spots.find((spot) => !layer.windows.some((window) => window.lines.some((line) => near(spot, line))));
  return { letter, axis, tiles: [first, second], at: free ?? spots[0] ?? { x: 0, y: 0 } };
}

function near(spot: Point, { start, end, curve }: CutLine): boolean {
  const around = { left: spot.x - 6, right: spot.x + 6, bottom: spot.y - 6, top: spot.y + 6 };
  return curve ? cutMeets(curve, around) : clipLine(start, end, around) !== undefined;
}

/** Small letters, so that a join is never taken for a window; without those that look like figures. */
const LETTERS = 'abcdefghjkmnpqrstuvwxyz';

function letters(index: number): string {
  const last = LETTERS[index % LETTERS.length] ?? '';
  return index < LETTERS.length ? last : letters(Math.floor(index / LETTERS.length) - 1) + last;
}

/** What a page draws: its own part with the overlap around it. */
export function drawnBox(own: Box): Box {
  return { left: own.left - OVERLAP, bottom: own.bottom - OVERLAP, right: own.right + OVERLAP, top: own.top + OVERLAP };
}
