/** Lays out a job: solves the borders, places every window and layer, and says what is wrong or worth a look. */
import { around, boxAt, eachSide, grow, insets, shift, type Box, type PerSide, type Size } from '../geometry/box';
import { shiftOutline } from '../geometry/outline';
import { nameOfSize } from '../frame/ready-made';
import type { FreeWindow, Job } from '../job/job';
import { lettersOf } from '../letters';
import { assert, bad, good, type Problem, type Result } from '../problem';
import { cellOf } from './cell-of';
import type { Cell, Leaf } from './cells';
import { derivationsOf } from './derive';
import { gapsOf } from './gaps';
import { frameSizes } from './frame-sizes';
import { laid, type Laid } from './laid';
import { layOutBare } from './lay-out-bare';
import type { LayerOpening, LayoutLayer, PlacedLayout, PlacedPicture, PlacedWindow } from './layout';
import { placeLines } from './face-lines';
import { emptyWindows } from './limits/board';
import { findProblems } from './limits/find-problems';
import { shapeFaults } from './limits/shape-faults';
import { place, type Starts } from './place';
import { showFor } from './show';
import { plainOpening, shapedOpenings } from './shaped-openings';
import { solveBlank, type SolvedAxis } from './solve-blank';
import { blankOnlyForFree, unusedBorders } from './border-problems';

/** The layout of a job, or the problems that keep it from being made. Nothing is rounded. */
export function layOut(job: Job): Laid {
  if (job.layers.length === 0) return layOutBare(job);
  const root = job.windows && cellOf(job.windows, job);
  const free = job.free.map((window) => ({ window, leaf: cellOf(window.window, job) as Leaf }));
  const freeLeaves = free.map(({ leaf }) => leaf);
  const impossible = [...emptyWindows(root, freeLeaves, showFor(job)), ...shapeFaults(root, freeLeaves, showFor(job))];
  if (impossible.length > 0) return bad(impossible);
  const arranged = root ? arrange(job, root) : undefined;
  if (arranged && !arranged.ok) return bad(arranged.problems);
  const blank = arranged?.value.blank ?? job.frame.blank;
  if (!blank) return bad([blankOnlyForFree()]);
  return finish(
    job,
    blank,
    arranged?.value.placed ?? [],
    free.map((one) => placeFree(one.window, one.leaf, blank)),
    arranged?.value.problems ?? [],
  );
}

interface Placed {
  readonly leaf: Leaf;
  /** The opening of the bottom layer. */
  readonly window: Box;
}

interface Arranged {
  readonly blank: Size;
  readonly placed: readonly Placed[];
  readonly problems: readonly Problem[];
}

function arrange(job: Job, root: Cell): Result<Arranged> {
  const solved = solveBlank(job, root);
  if (!solved.ok) return solved;
  const { blank, across, up } = solved.value;
  const starts = {
    across: spread(root, 'across', across, blank.width),
    up: spread(root, 'up', up, blank.height),
  };
  const placed = [...starts.across].map(([leaf, left]) => {
    const top = blank.height - (starts.up.get(leaf) ?? 0);
    return { leaf, window: boxAt({ x: left, y: top - leaf.size.height }, leaf.size) };
  });
  return good({ blank, placed, problems: unusedBorders(job) });
}

/** Places all windows along one axis, from the left or from the top of the blank. */
function spread(root: Cell, axis: 'across' | 'up', { hidden, start, end }: SolvedAxis, length: number): Starts {
  const starts: Starts = new Map();
  place(root, axis, start + hidden, length - start - end - 2 * hidden, start, starts);
  return starts;
}

function placeFree({ left, right, top, bottom }: FreeWindow, leaf: Leaf, blank: Size): Placed {
  const { width, height } = leaf.size;
  const x = left ?? (right === undefined ? (blank.width - width) / 2 : blank.width - right - width);
  const y = bottom ?? (top === undefined ? (blank.height - height) / 2 : blank.height - top - height);
  return { leaf, window: boxAt({ x, y }, leaf.size) };
}

function finish(
  job: Job,
  blank: Size,
  arranged: readonly Placed[],
  free: readonly Placed[],
  before: readonly Problem[],
): Laid {
  const layers = layersOf(job);
  const all = [...arranged, ...free];
  const leaves = all.map(({ leaf }) => leaf);
  const windows = all.map((one, index) => placeWindow(one, index, layers, blank));
  const content = around((arranged.length > 0 ? arranged : free).map(({ window }) => window));
  assert(content, 'a layout has at least one window');
  const frame = frameSizes(job, blank);
  const sizeName = nameOfSize(blank);
  const cut = insets(boxAt({ x: 0, y: 0 }, blank), content);
  const reveals = eachSide((side) => layers.reduce((sum, layer) => sum + layer.reveal[side], 0));
  const asSeen = (borders: PerSide) => eachSide((side) => borders[side] - frame.hidden);
  const top = eachSide((side) => cut[side] - reveals[side]);
  const placed: PlacedLayout = {
    ...(sizeName === undefined ? {} : { sizeName }),
    frame,
    layers,
    windows,
    content,
    borders: { cut, seen: asSeen(cut) },
    topBorders: { cut: top, seen: asSeen(top) },
    gaps: gapsOf(windows, leaves),
  };
  const problems = [...before, ...findProblems(job, placed, leaves)];
  return laid(placed, problems, () => derivationsOf(job, placed, leaves));
}

function placeWindow(
  { leaf, window }: Placed,
  index: number,
  layers: readonly LayoutLayer[],
  blank: Size,
): PlacedWindow {
  const openings = openingsOf(window, leaf, layers);
  const main = leaf.main && shift(leaf.main, { x: window.left, y: window.bottom });
  const picture = leaf.picture && placePicture(leaf.picture, window, main ?? window);
  return {
    name: lettersOf(index),
    title: leaf.title,
    at: leaf.at,
    use: leaf.use,
    shape: leaf.parts ? 'joined' : leaf.shape.kind,
    window,
    ...(main ? { main } : {}),
    ...(leaf.parts ? { parts: placedParts(leaf.parts, window) } : {}),
    windowAtFace: openings.at(-1)?.face ?? window,
    ...(picture ? { picture } : {}),
    layers: openings,
    lines: placeLines(leaf.lines, openings[0]),
    borders: insets(boxAt({ x: 0, y: 0 }, blank), window),
  };
}

function placedParts(parts: NonNullable<Leaf['parts']>, window: Box): PlacedWindow['parts'] {
  const corner = { x: window.left, y: window.bottom };
  return parts.map(({ title, box }) => ({ title, box: shift(box, corner) }));
}

/** `over` is the part of the window that the picture lies behind. */
function placePicture(picture: NonNullable<Leaf['picture']>, window: Box, over: Box): PlacedPicture {
  const lay = (box: Box) => ({
    left: box.left + window.left,
    right: box.right + window.left,
    bottom: box.bottom + window.bottom,
    top: box.top + window.bottom,
  });
  const sheet = lay(picture.sheet);
  const image = lay(picture.image);
  return {
    index: picture.index,
    sheet,
    image,
    overlap: insets(image, over),
    hold: insets(sheet, over),
    ...(picture.part ? { part: picture.part } : {}),
    ...(picture.turned ? { turned: picture.turned } : {}),
  };
}

/** The openings of all layers round a window, from the top layer down; each reveal is added going up. */
function openingsOf(window: Box, leaf: Leaf, layers: readonly LayoutLayer[]): readonly LayerOpening[] {
  if (leaf.outline) {
    const way = leaf.shape.kind === 'oval' && !leaf.parts ? leaf.shape.reveal : 'parallel';
    return shapedOpenings(window, shiftOutline(leaf.outline, { x: window.left, y: window.bottom }), way, layers);
  }
  const openings: LayerOpening[] = [];
  let opening = window;
  for (const layer of layers.toReversed()) {
    openings.unshift(plainOpening(opening, layer));
    opening = grow(opening, layer.reveal);
  }
  return openings;
}

function layersOf(job: Job): LayoutLayer[] {
  return job.layers.map((layer, index) => {
    const run = layer.thickness * Math.tan((layer.bevel.angleDegrees * Math.PI) / 180);
    const strip = (side: keyof PerSide) =>
      index === 0 ? 0 : layer.reveal[side] - (layer.bevel.direction === 'standard' ? run : 0);
    return {
      number: index + 1,
      board: layer.board,
      colour: layer.colour,
      core: layer.core,
      thickness: layer.thickness,
      bevel: { ...layer.bevel, run },
      reveal: layer.reveal,
      shownStrip: eachSide(strip),
    };
  });
}
