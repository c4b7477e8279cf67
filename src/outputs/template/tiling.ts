/** Tiling: how a blank is divided over pages of a paper, which tiles hold nothing, and how neighbours join. */
import type { Box, Point, Size } from '../../core/geometry/box';
import { MM_PER_INCH, stepLength, type Showing } from '../../core/units';
import { paperSize, type TilePaper } from '../paper/page';
import { tileArea } from './sheet-plan';
import { divide } from './joins';
import { roomRound, type Matter } from './matter';
import { joinedUp } from './printed-tiles';

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
  /** It is not printed: there is nothing in it to show, and it joins nothing. */
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
export function chooseTiling(all: readonly Matter[], blank: Size, paper: TilePaper, showing: Showing): Tiling {
  const upright = tilingOn(paperSize(paper, 'portrait'), all, blank, showing);
  const lying = tilingOn(paperSize(paper, 'landscape'), all, blank, showing);
  return pageCount(lying, all) < pageCount(upright, all) ? lying : upright;
}

function tilingOn(paper: Size, all: readonly Matter[], blank: Size, showing: Showing): Tiling {
  const area = tileArea(paper);
  const steps = showing.unit === 'in' ? [MM_PER_INCH / 4, stepLength(showing)] : [5, 1];
  const most = { across: area.right - area.left - 2 * OVERLAP, up: area.top - area.bottom - 2 * OVERLAP };
  return {
    paper,
    columns: divide(
      blank.width,
      most.across,
      steps,
      all.flatMap(({ avoid }) => avoid.across),
    ),
    rows: divide(
      blank.height,
      most.up,
      steps,
      all.flatMap(({ avoid }) => avoid.up),
    ),
  };
}

function pageCount(tiling: Tiling, all: readonly Matter[]): number {
  return all.reduce((sum, matter) => sum + tilesOf(tiling, matter).filter((tile) => !tile.empty).length, 0);
}

/** All tiles of one matter, row after row from the top left; what is printed hangs together. */
export function tilesOf({ columns, rows }: Tiling, matter: Matter): readonly Tile[] {
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
  const printed = joinedUp(parts.map(matter.holds), grid);
  return places.map((place, index) => ({ ...place, own: parts[index]!, empty: printed[index] !== true }));
}

/** The joins between printed tiles, lettered from the top left, with their marks clear of what is drawn where possible. */
export function joinsOf(tiles: readonly Tile[], matter: Matter): readonly Join[] {
  const at = new Map(tiles.filter((tile) => !tile.empty).map((tile) => [`${tile.column} ${tile.row}`, tile]));
  const joins: Join[] = [];
  for (const tile of at.values()) {
    const right = at.get(`${tile.column + 1} ${tile.row}`);
    const below = at.get(`${tile.column} ${tile.row + 1}`);
    if (right) joins.push(joinBetween(letters(joins.length), 'across', tile, right, matter));
    if (below) joins.push(joinBetween(letters(joins.length), 'up', below, tile, matter));
  }
  return joins;
}

function joinBetween(letter: string, axis: Join['axis'], first: Tile, second: Tile, matter: Matter): Join {
  const parts = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.45, 0.55, 0.35, 0.65];
  const spots = parts.map((part) =>
    axis === 'across'
      ? { x: first.own.right, y: first.own.bottom + part * (first.own.top - first.own.bottom) }
      : { x: first.own.left + part * (first.own.right - first.own.left), y: first.own.top },
  );
  const free = spots.find((spot) => !matter.meets(roomRound(spot)));
  return { letter, axis, tiles: [first, second], at: free ?? spots[0] ?? { x: 0, y: 0 } };
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
