/** What stands in the parts of a drawn sheet: numbers, names and sizes of pieces, letters of windows, what is left. */
import { grow, heightOf, widthOf, type Box } from '../../core/geometry/box';
import type { PlacedPiece } from '../../core/sheets/plan';
import { keepingOf } from '../../core/sheets/remnants';
import { KEEPING_WORDS } from '../../core/sheets/sheet-words';
import { windowsOnSheet } from '../../core/sheets/windows-on-sheet';
import { sizeText } from '../../core/units';
import { drawArrow } from '../paper/arrow';
import { placeLabel, placeOnWhite, smaller, spotsIn, type Label, type LabelLine } from '../paper/label';
import { boxRound, Room } from '../paper/room';
import { boxAtScale, type At } from '../paper/scale';
import type { Surface } from '../paper/surface';
import type { Setting } from '../paper/text-blocks';
import { fractions, type TextStyle } from '../paper/type';
import type { PapersContext } from './papers-context';

/** From a piece's edge, beyond the line along it, mm. */
const INSIDE = 0.5;
const NUMBER = { size: 12, weight: 'bold' } as const;
const SMALL: TextStyle = { size: 7 };
/** Of the arrow: mm, and of the shorter side of its piece. */
const ARROW = { most: 5, part: 0.22, least: 1.2 } as const;

/** @returns the boxes taken; none where not even the number has room. */
export function namePiece(
  surface: Surface,
  placed: PlacedPiece,
  at: At,
  setting: Setting,
  context: PapersContext,
): readonly Box[] {
  const outer = boxAtScale(at, placed.box);
  const inner = grow(outer, -INSIDE);
  const room = new Room(inner);
  const openings = windowsOnSheet(placed).map(({ name, box }) => ({ name, box: boxAtScale(at, box) }));
  for (const { box } of openings) for (const edge of edgesOf(box)) room.takeCrossable(edge);
  const arrow = pointToTop(surface, outer, placed.turned);
  if (arrow) room.take(arrow);
  const number = placeOnWhite(surface, room, pieceLabels(placed, inner, setting, context), spotsIn(inner));
  const letters = openings.flatMap(({ name, box }) => {
    const letter: Label = { lines: [{ words: name, size: 6 }], turn: 0 };
    return placeLabel(surface, room, [letter], spotsIn(grow(box, -INSIDE))) ?? [];
  });
  return number ? [number, ...letters, ...(arrow ? [arrow] : [])] : [];
}

/** In the middle of the edge that hangs at the top; undefined where the piece is too small for it. */
function pointToTop(surface: Surface, box: Box, turned: boolean): Box | undefined {
  const long = Math.min(ARROW.most, ARROW.part * Math.min(widthOf(box), heightOf(box)));
  if (long < ARROW.least) return undefined;
  const tip = turned
    ? { x: box.left + 2 * INSIDE, y: (box.bottom + box.top) / 2 }
    : { x: (box.left + box.right) / 2, y: box.top - 2 * INSIDE };
  return drawArrow(surface, tip, long, turned ? 'left' : 'up');
}

/** From all that there is to tell down to the number alone. */
function pieceLabels({ piece, number }: PlacedPiece, room: Box, setting: Setting, { showing }: PapersContext): Label[] {
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
  const alone: Label = { lines: [first], turn: 0 };
  return [
    ...byLength.flatMap((label) => [label, smaller(label, 0.8)]),
    ...[1, 0.75, 0.5, 0.1].map((factor) => smaller(alone, factor)),
  ];
}

/** In two lines at the most; a longer title is left to the table. */
function titleLines(title: string, wide: number, { typesetter }: Setting): LabelLine[] {
  if (title === '' || wide <= 0) return [];
  const lines = typesetter.lines(typesetter.set(title, SMALL), wide, SMALL);
  return lines.length <= 2 ? lines.map((words) => ({ words, ...SMALL })) : [];
}

/** @returns the box taken; undefined where there is no room, as in slivers. */
export function nameLeft(surface: Surface, box: Box, at: At, { showing, keep }: PapersContext): Box | undefined {
  const inner = grow(boxAtScale(at, box), -INSIDE);
  const words = KEEPING_WORDS[keepingOf(box, keep)];
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
  return placeWhitely(surface, new Room(inner), byLines, inner);
}

/** Over hatching there is no place that is free of lines. */
function placeWhitely(surface: Surface, room: Room, labels: readonly Label[], within: Box): Box | undefined {
  room.takeCrossable(within);
  return placeOnWhite(surface, room, labels, spotsIn(within));
}

function edgesOf({ left, right, bottom, top }: Box): Box[] {
  const [a, b, c, d] = [{ x: left, y: bottom }, { x: right, y: bottom }, { x: right, y: top }, { x: left, y: top }] as const; // prettier-ignore
  return [[a, b], [b, c], [c, d], [d, a]].map(([from, to]) => boxRound(from!, to!, 0.2)); // prettier-ignore
}
