/** What stands in the parts of a drawn sheet: numbers, names and sizes of pieces, letters of windows, what is left. */
import { grow, heightOf, widthOf, type Box } from '../../core/geometry/box';
import type { PlacedPiece } from '../../core/sheets/plan';
import { keepingOf } from '../../core/sheets/remnants';
import { KEEPING_WORDS } from '../../core/sheets/sheet-words';
import { windowsOnSheet } from '../../core/sheets/windows-on-sheet';
import { sizeText } from '../../core/units';
import { drawArrow } from '../paper/arrow';
import { findRoom, placeLabel, placeOnWhite, smaller, spotsBeside, spotsIn, type Label, type LabelLine, type MiddlesOf } from '../paper/label'; // prettier-ignore
import { boxRound, overlaps, Room } from '../paper/room';
import { boxAtScale, type At } from '../paper/scale';
import type { Surface } from '../paper/surface';
import type { Setting } from '../paper/text-blocks';
import { fractions, type TextStyle } from '../paper/type';
import type { PapersContext } from './papers-context';

/** From a piece's edge, beyond the line along it, mm. */
const INSIDE = 0.5;
const NUMBER = { size: 12, weight: 'bold' } as const;
const SMALL: TextStyle = { size: 7 };
/** Between words and the outline of a window, mm. */
const AIR = 0.2;
/** Of the arrow: mm, and of the shorter side of its piece. */
const ARROW = { most: 5, part: 0.22, least: 1.2 } as const;

interface KeptPlaces {
  /** Undefined where there is none. */
  readonly number: Box | undefined;
  readonly letters: readonly Box[];
}

/** Places for a piece's number at its smallest and its windows' letters, so that nothing else takes the last ones; the number comes first. */
export function keepPlaces(surface: Surface, placed: PlacedPiece, taken: readonly Box[], at: At): KeptPlaces {
  const inner = grow(boxAtScale(at, placed.box), -INSIDE);
  const openings = windowsOnSheet(placed).map(({ name, box }) => ({ name, box: boxAtScale(at, box) }));
  const near = taken.filter((box) => overlaps(box, inner));
  const letters = openings.flatMap(
    ({ name, box }) => findRoom(surface, roomIn(inner, near), [letterLabel(name)], cornersIn(grow(box, -INSIDE))) ?? [],
  );
  const edges = openings.flatMap(({ box }) => edgesOf(box));
  const numberBeside = (obstacles: readonly Box[]) =>
    findRoom(surface, roomIn(inner, obstacles), numberAlone(placed).slice(-1), numberSpots(inner, obstacles));
  const both = numberBeside([...near, ...edges, ...letters]);
  return both ? { number: both, letters } : { number: numberBeside([...near, ...edges]), letters: [] };
}

/** The middle of a piece first, then wherever there is a corner for it. */
function numberSpots(inner: Box, taken: readonly Box[]): MiddlesOf {
  return (size, label) => [...spotsIn(inner)(size, label), ...spotsBeside(inner, taken)(size, label)];
}

/**
 * @param taken boxes that no word may lie on.
 * @param kept the place that is kept for its number.
 * @returns the box of its words; undefined where not even the number has room.
 */
export function namePiece(
  surface: Surface,
  placed: PlacedPiece,
  taken: readonly Box[],
  kept: Box | undefined,
  at: At,
  setting: Setting,
  context: PapersContext,
): Box | undefined {
  const inner = grow(boxAtScale(at, placed.box), -INSIDE);
  const openings = windowsOnSheet(placed).map(({ name, box }) => ({ name, box: boxAtScale(at, box) }));
  const near = taken.filter((box) => overlaps(box, inner));
  const letters = nameWindows(surface, openings, kept ? [...near, kept] : near, inner);
  const labels = pieceLabels(placed, inner, setting, context);
  const obstacles = [...near, ...letters, ...openings.flatMap(({ box }) => edgesOf(box))];
  const within = roomIn(inner, obstacles);
  const alone = () => placeLabel(surface, within, numberAlone(placed), numberSpots(inner, obstacles)) ?? placeKept(surface, placed, within, kept); // prettier-ignore
  // Words in one of several windows would seem to tell of that window.
  if (openings.length < 2) return placeLabel(surface, within, labels, spotsIn(inner)) ?? alone();
  const boxes = openings.map(({ box }) => grow(box, AIR));
  const clear = roomIn(inner, [...near, ...boxes]);
  const beside = placeLabel(surface, clear, labels, spotsBeside(inner, [...near, ...boxes]));
  return beside ?? alone();
}

function placeKept(surface: Surface, placed: PlacedPiece, room: Room, kept: Box | undefined): Box | undefined {
  if (!kept) return undefined;
  const middle = { x: (kept.left + kept.right) / 2, y: (kept.bottom + kept.top) / 2 };
  return placeLabel(surface, room, numberAlone(placed).slice(-1), () => [middle]);
}

/** @returns the boxes of the letters: every window keeps its own, whatever else is told. */
function nameWindows(
  surface: Surface,
  openings: readonly { readonly name: string; readonly box: Box }[],
  near: readonly Box[],
  inner: Box,
): Box[] {
  const room = roomIn(inner, near);
  return openings.flatMap(({ name, box }) => {
    return placeLabel(surface, room, [letterLabel(name)], cornersIn(grow(box, -INSIDE))) ?? [];
  });
}

function letterLabel(name: string): Label {
  return { lines: [{ words: name, size: 6 }], turn: 0 };
}

function roomIn(inner: Box, taken: readonly Box[]): Room {
  const room = new Room(inner);
  for (const box of taken) room.take(box);
  return room;
}

/** The lower left corner first. */
function cornersIn({ left, right, bottom, top }: Box): MiddlesOf {
  return ({ width, height }) =>
    [bottom + height / 2, top - height / 2].flatMap((y) =>
      [left + width / 2, right - width / 2].map((x) => ({ x, y })),
    );
}

/** In the middle of the edge that hangs at the top; undefined where the piece is too small for it. */
export function pointToTop(surface: Surface, { box: on, turned }: PlacedPiece, at: At): Box | undefined {
  const box = boxAtScale(at, on);
  const long = Math.min(ARROW.most, ARROW.part * Math.min(widthOf(box), heightOf(box)));
  if (long < ARROW.least) return undefined;
  const tip = turned
    ? { x: box.left + 2 * INSIDE, y: (box.bottom + box.top) / 2 }
    : { x: (box.left + box.right) / 2, y: box.top - 2 * INSIDE };
  return drawArrow(surface, tip, long, turned ? 'left' : 'up');
}

/** From all that there is to tell down to the number alone. */
function pieceLabels(placed: PlacedPiece, room: Box, setting: Setting, { showing }: PapersContext): Label[] {
  const { piece, number } = placed;
  const { from, id } = piece;
  const first: LabelLine = { words: String(number), ...NUMBER };
  const name: LabelLine = { words: from?.name ?? id, ...SMALL };
  const size: LabelLine = { words: fractions(sizeText(piece, showing)), ...SMALL };
  const ways = ([0, 90] as const).flatMap((turn): Label[] => {
    const wide = (turn === 0 ? widthOf(room) : heightOf(room)) - 3;
    const title = titleLines(from?.title ?? '', wide, setting);
    return [
      [first, name, ...title, size],
      [first, name, size],
      [first, size],
    ].map((lines) => ({ lines, turn }));
  });
  const byLength = ways.toSorted((a, b) => b.lines.length - a.lines.length);
  return [...byLength.flatMap((label) => [label, smaller(label, 0.8)]), ...numberAlone(placed)];
}

function numberAlone({ number }: PlacedPiece): Label[] {
  const alone: Label = { lines: [{ words: String(number), ...NUMBER }], turn: 0 };
  return [1, 0.75, 0.5, 0.1].map((factor) => smaller(alone, factor));
}

/** In two lines at the most; a longer title is left to the table. */
function titleLines(title: string, wide: number, { typesetter }: Setting): LabelLine[] {
  if (title === '' || wide <= 0) return [];
  const lines = typesetter.lines(typesetter.set(title, SMALL), wide, SMALL);
  return lines.length <= 2 ? lines.map((words) => ({ words, ...SMALL })) : [];
}

/** @returns the box of its words; undefined where there is no room, as in slivers. */
export function nameLeft(
  surface: Surface,
  box: Box,
  taken: readonly Box[],
  at: At,
  { showing, keep }: PapersContext,
): Box | undefined {
  const inner = grow(boxAtScale(at, box), -INSIDE);
  const kind = keepingOf(box, keep);
  const words = KEEPING_WORDS[kind];
  const size = fractions(sizeText({ width: widthOf(box), height: heightOf(box) }, showing));
  const labels = ([0, 90] as const).flatMap((turn): Label[] => [
    {
      lines: [
        { words, ...SMALL },
        { words: size, ...SMALL },
      ],
      turn,
    },
    { lines: [{ words: `${words} ${size}`, ...SMALL }], turn },
    { lines: [{ words: size, ...SMALL }], turn },
  ]);
  const byLines = [labels[0], labels[3], labels[1], labels[4], labels[2], labels[5]].flatMap((label) => label ?? []);
  const room = new Room(inner);
  for (const one of taken) if (overlaps(one, inner)) room.take(one);
  if (kind !== 'waste') return placeLabel(surface, room, byLines, spotsIn(inner));
  // Over hatching there is no place that is free of lines.
  room.takeCrossable(inner);
  return placeOnWhite(surface, room, byLines, spotsIn(inner));
}

function edgesOf({ left, right, bottom, top }: Box): Box[] {
  const [a, b, c, d] = [{ x: left, y: bottom }, { x: right, y: bottom }, { x: right, y: top }, { x: left, y: top }] as const; // prettier-ignore
  return [[a, b], [b, c], [c, d], [d, a]].map(([from, to]) => boxRound(from!, to!, AIR)); // prettier-ignore
}
