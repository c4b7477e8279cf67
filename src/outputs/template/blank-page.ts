/** One layer on a page of exactly the blank's size: what a tile has round it finds its place in openings and borders here. */
import { around, boxAt, grow, heightOf, widthOf, type Box, type Size } from '../../core/geometry/box';
import type { Showing } from '../../core/units';
import type { PagePlan } from '../paper/document';
import { safeBox } from '../paper/page';
import { PENS } from '../paper/pens';
import { boxRound, Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { drawBorders, planBorders } from './border-dimensions';
import { BAR_HEIGHT, BAR_LENGTHS, barRoom, drawCheckBar } from './check-bar';
import { drawCuts } from './cut-drawing';
import type { Part } from './part';
import { labelEdges, labelGuides, labelOpenings } from './cut-labels';
import { drawLines, labelLines } from './line-drawing';
import { drawMat } from './mat-drawing';
import { layerWords } from './tile-page';
import type { ViewLayer } from './view-geometry';

export interface BlankPage {
  readonly title: string;
  readonly layer: ViewLayer;
  readonly layerCount: number;
  readonly showing: Showing;
}

export function planBlankPage(page: BlankPage): PagePlan {
  return {
    size: page.layer.blank,
    step: `Drawing layer ${page.layer.plan.number}`,
    draw: (surface, { number, count }) => drawBlank(surface, page, `Page ${number} of ${count}`),
  };
}

function drawBlank(surface: Surface, page: BlankPage, number: string): void {
  const { layer, showing } = page;
  const sheet = { left: 0, bottom: 0, right: layer.blank.width, top: layer.blank.height };
  const part: Part = { layer, blank: layer.blank, own: sheet, drawn: sheet, offset: { x: 0, y: 0 } };
  const room = new Room(safeBox(layer.blank));
  drawCuts(surface, part, room, showing.unit);
  drawLines(surface, part, room);
  drawEdge(surface, sheet, layer);
  const spaces = freeSpaces(layer);
  const setting = { surface, part, room, showing };
  if (!placePiece(identity(surface, page, number), spaces, room)) drawSide(surface, layer, room);
  drawBorders(setting, planBorders(layer, showing));
  labelOpenings(setting);
  labelLines(setting);
  for (const piece of [...bars(surface), key(surface, page)]) placePiece(piece, spaces, room);
  labelGuides(setting);
  labelEdges(setting);
}

/** Hatching along the edges of the back, like the border of a tile's page. */
function drawEdge(surface: Surface, sheet: Box, layer: ViewLayer): void {
  if (layer.view !== 'back') return;
  const inner = grow(sheet, -1.6);
  surface.boxes([inner], PENS.edge);
  const strokes = [];
  for (let x = 3; x < sheet.right - 4; x += 4) {
    strokes.push(
      [
        { x, y: 0 },
        { x: x + 1.6, y: 1.6 },
      ] as const,
      [
        { x, y: inner.top },
        { x: x + 1.6, y: sheet.top },
      ] as const,
    );
  }
  for (let y = 3; y < sheet.top - 4; y += 4) {
    strokes.push(
      [
        { x: 0, y },
        { x: 1.6, y: y + 1.6 },
      ] as const,
      [
        { x: inner.right, y },
        { x: sheet.right, y: y + 1.6 },
      ] as const,
    );
  }
  surface.lines(strokes, PENS.hair);
}

/** Room in the openings, which fall out, and in the borders; the largest first. */
function freeSpaces(layer: ViewLayer): Box[] {
  const safe = safeBox(layer.blank);
  const cuts = layer.windows.map((window) => window.cut);
  const openings = cuts.map((cut) => grow(cut, -7));
  const all = around(cuts) ?? safe;
  const borders = [
    { ...safe, right: all.left - 4 },
    { ...safe, left: all.right + 4 },
    { ...safe, top: all.bottom - 4, left: all.left, right: all.right },
    { ...safe, bottom: all.top + 4, left: all.left, right: all.right },
  ];
  const clipped = openings.map((box) => ({
    left: Math.max(box.left, safe.left),
    right: Math.min(box.right, safe.right),
    bottom: Math.max(box.bottom, safe.bottom),
    top: Math.min(box.top, safe.top),
  }));
  return [...clipped, ...borders].sort((a, b) => area(b) - area(a));
}

function area(box: Box): number {
  return Math.max(0, widthOf(box)) * Math.max(0, heightOf(box));
}

/** Something that can be drawn in several sizes, the best first. */
interface Piece {
  readonly sizes: readonly { readonly size: Size; readonly draw: (corner: Box) => void }[];
}

/** A blank too small for anything else still says which side it is. */
function drawSide(surface: Surface, { blank, view }: ViewLayer, room: Room): void {
  const middle = { x: blank.width / 2, y: blank.height / 2 };
  surface.text(view.toUpperCase(), middle, { size: 8, weight: 'bold', align: 'centre' });
  room.take(boxRound(middle, middle, 6));
}

function bars(surface: Surface): readonly Piece[] {
  return (['across', 'up'] as const).map((way) => ({
    sizes: BAR_LENGTHS.map((length) => {
      const long = barRoom(length);
      const size = way === 'across' ? { width: long, height: BAR_HEIGHT } : { width: BAR_HEIGHT, height: long };
      return { size, draw: (box: Box) => drawCheckBar(surface, { x: box.left, y: box.bottom }, way, length) };
    }),
  }));
}

/** Side, page, title, layer and scale. */
function identity(surface: Surface, page: BlankPage, number: string): Piece {
  const widths: readonly (readonly [width: number, factor: number])[] = [
    [110, 1],
    [80, 0.8],
    [56, 0.6],
    [36, 0.6],
    [24, 0.6],
  ];
  return {
    sizes: widths.map(([width, factor]) => ({
      size: { width, height: 26 * factor },
      draw: (box: Box) => drawIdentity(surface, page, number, box, factor),
    })),
  };
}

function drawIdentity(surface: Surface, page: BlankPage, number: string, box: Box, factor: number): void {
  const word = page.layer.view.toUpperCase();
  const big = { size: 26 * factor, weight: 'bold' } as const;
  const title = { size: 12 * factor, weight: 'bold' } as const;
  const small = { size: 9 * factor };
  const width = widthOf(box);
  const down = (lines: number) => ({ x: box.left, y: box.top - (7 + lines * 4.6) * factor });
  const beside = surface.width(word, big) + 3;
  surface.text(word, down(0), big);
  surface.text(surface.fit(number, width - beside, small), { x: box.left + beside, y: down(0).y }, small);
  surface.text(surface.fit(page.title, width, title), down(1.25), title);
  surface.text(surface.fit(layerWords(page.layer, page.layerCount), width, small), down(2.3), small);
  surface.text('scale 100 %', down(3.3), small);
}

function key(surface: Surface, { layer }: BlankPage): Piece {
  const draw = (box: Box) => {
    drawMat(surface, { ...box, top: box.top - 4 }, { blank: layer.blank, openings: layer.windows });
    surface.text(
      `↑ top · ${layer.view.toUpperCase()}`,
      { x: (box.left + box.right) / 2, y: box.top - 2.6 },
      { size: 7, align: 'centre' },
    );
  };
  return { sizes: [24, 18, 14].map((side) => ({ size: { width: side, height: side }, draw })) };
}

/**
 * Draws a piece in the best size that finds room, in a corner of a free space, and divides what is left of that
 * space. False when there is no room for it.
 */
function placePiece(piece: Piece, spaces: Box[], room: Room): boolean {
  for (const { size, draw } of piece.sizes) {
    for (const [index, space] of spaces.entries()) {
      if (size.width > widthOf(space) || size.height > heightOf(space)) continue;
      const found = room.takeFirst(inCorners(size, space).map((box) => ({ box })));
      if (!found) continue;
      spaces.splice(index, 1, ...restOf(space, found.box));
      spaces.sort((a, b) => area(b) - area(a));
      draw(found.box);
      return true;
    }
  }
  return false;
}

function inCorners(size: Size, space: Box): readonly Box[] {
  return [space.top - size.height, space.bottom].flatMap((y) =>
    [space.left, space.right - size.width].map((x) => boxAt({ x, y }, size)),
  );
}

/** What is left of a space beside and above or below a piece in one of its corners. */
function restOf(space: Box, piece: Box): readonly Box[] {
  const apart = 4;
  const beside =
    piece.left === space.left ? { ...space, left: piece.right + apart } : { ...space, right: piece.left - apart };
  const along = { ...space, left: piece.left, right: piece.right };
  const rest =
    piece.top === space.top ? { ...along, top: piece.bottom - apart } : { ...along, bottom: piece.top + apart };
  return [beside, rest];
}
