/** One sheet to scale: its pieces, what is left of it, and its cuts by the numbers of their steps. */
import { grow, type Box } from '../../core/geometry/box';
import { cutLines } from '../../core/sheets/cut-lines';
import type { PlannedSheet } from '../../core/sheets/plan';
import { keepingOf } from '../../core/sheets/remnants';
import { numbersText } from '../../core/sheets/sheet-words';
import { windowsOnSheet } from '../../core/sheets/windows-on-sheet';
import { lengthText } from '../../core/units';
import { lyingDimension, standingDimension } from '../paper/dimension';
import type { Block } from '../paper/flow';
import { PENS } from '../paper/pens';
import { Room } from '../paper/room';
import { atScale, boxAtScale, FINE_INCH, scaleFor, type At, type Scale } from '../paper/scale';
import type { Surface } from '../paper/surface';
import type { Setting } from '../paper/text-blocks';
import type { PapersContext } from './papers-context';
import { keepPlaces, nameLeft, namePiece, pointToTop } from './part-names';
import { hatched } from './hatching';
import { CutNumbers, type NumberedLine } from './cut-numbers';

/** Room for the dimensions, and for circles that stand half out of the sheet, mm. */
const AROUND = { left: 8, below: 8, above: 3, right: 3 } as const;
/** Under the drawing: what its signs mean, and what could not be told in it. */
const CAPTION = { size: 7 } as const;
const LINE = 3.4;
/** Of a drawing's block all but the sheet itself, mm. */
export const BESIDE_DRAWING = AROUND.above + AROUND.below + 2 * LINE;
const TINTS = { board: '#ededed', strip: '#dcdcdc' } as const;
/** Between the strokes of waste, mm. */
const HATCH = 2.5;

export interface SheetView {
  readonly sheet: PlannedSheet;
  /** What a cut takes away, mm. */
  readonly kerf: number;
}

/** The scale at which a sheet is no higher than a room, and no wider than the page. */
export function sheetScale({ stock }: PlannedSheet, width: number, most: number, { showing }: PapersContext): Scale {
  const room = { width: width - AROUND.left - AROUND.right, height: most };
  return scaleFor(stock, room, showing.unit, 'at most full', FINE_INCH);
}

export function drawingBlock(view: SheetView, scale: Scale, setting: Setting, context: PapersContext): Block {
  const { stock } = view.sheet;
  const [wide, high] = [stock.width * scale.factor, stock.height * scale.factor];
  return {
    height: high + BESIDE_DRAWING,
    draw: (surface, { x, y }) => {
      const free = setting.width - wide - AROUND.left - AROUND.right;
      const corner = { x: x + AROUND.left + Math.max(0, free) / 2, y: y - AROUND.above - high };
      const untold = new Drawing(surface, view, atScale(scale, corner), setting, context).draw();
      const signs = `Scale ${scale.words}, seen from the front. Circles hold the numbers of the steps, arrows point to the top of a piece.`; // prettier-ignore
      const words = [signs, untold].filter((part) => part !== '').join(' ');
      surface.paragraph(words, { x, y: corner.y - AROUND.below + 0.5 }, setting.width, CAPTION);
    },
  };
}

class Drawing {
  constructor(
    private readonly surface: Surface,
    private readonly view: SheetView,
    private readonly at: At,
    private readonly setting: Setting,
    private readonly context: PapersContext,
  ) {}

  /** @returns what there was no room for, in words. */
  draw(): string {
    const { stock, pieces, steps } = this.view.sheet;
    const whole = this.#boxed({ left: 0, bottom: 0, right: stock.width, top: stock.height });
    const cuts = steps.flatMap((step, index) =>
      cutLines(step, this.view.kerf).map(([from, to]): NumberedLine => ({ number: index + 1, kind: step.kind, stage: step.stage, from: this.at(from), to: this.at(to) })),
    ); // prettier-ignore
    this.#drawLeft();
    for (const piece of pieces) {
      this.surface.boxes(windowsOnSheet(piece).map(({ box }) => this.#boxed(box)), PENS.faint); // prettier-ignore
    }
    this.surface.boxes(pieces.map(({ box }) => this.#boxed(box)), PENS.edge); // prettier-ignore
    this.surface.boxes([whole], PENS.edge);
    for (const { from, to, kind, stage } of cuts) {
      this.surface.line(from, to, kind === 'cut' ? (stage === 1 ? PENS.strong : PENS.cut) : PENS.join);
    }
    this.#dimensions(whole);
    return this.#names(whole, cuts);
  }

  #names(whole: Box, cuts: readonly NumberedLine[]): string {
    const { pieces, left, steps } = this.view.sheet;
    const { surface, at } = this;
    const arrows = pieces.flatMap((piece) => pointToTop(surface, piece, at) ?? []);
    // A step's circle finds another place on its line; in a small piece there is but one for its number.
    const kept = pieces.map((piece) => keepPlaces(surface, piece, arrows, at));
    const circles = new CutNumbers(surface, cuts);
    const first = circles.first(
      roomRound(whole, [
        ...arrows,
        ...kept.flatMap(({ number, letters }) => (number ? [number, ...letters] : letters)),
      ]),
    );
    const taken = [...arrows, ...first];
    const named = pieces.map((piece, index) => namePiece(surface, piece, taken, kept[index]?.number, at, this.setting, this.context)); // prettier-ignore
    const told = left.map((box) => nameLeft(surface, box, taken, at, this.context));
    circles.others(roomRound(whole, [...taken, ...[...named, ...told].flatMap((box) => box ?? [])]));
    const nameless = pieces.filter((_, index) => !named[index]);
    const missing = steps.flatMap((_, index) => (circles.told.has(index + 1) ? [] : [index + 1]));
    return [
      nameless.length === 0 ? '' : `Too small for its number here: ${numbersText(nameless.map(({ number }) => number))}.`,
      missing.length === 0 ? '' : `Without a circle, since there is no room: step ${numbersText(missing)}.`,
    ].filter((words) => words !== '').join(' '); // prettier-ignore
  }

  #drawLeft(): void {
    for (const box of this.view.sheet.left) {
      const kind = keepingOf(box, this.context.keep);
      const boxed = this.#boxed(box);
      if (kind === 'waste') this.surface.lines(hatched(boxed, HATCH), PENS.hair);
      else this.surface.fill(boxed, TINTS[kind]);
    }
  }

  #dimensions(whole: Box): void {
    const { stock } = this.view.sheet;
    const told = (mm: number) => lengthText(mm, this.context.showing);
    lyingDimension(this.surface, whole.left, whole.right, whole.bottom - 5, told(stock.width));
    standingDimension(this.surface, whole.left - 4, whole.bottom, whole.top, told(stock.height));
  }

  #boxed(box: Box): Box {
    return boxAtScale(this.at, box);
  }
}

/** Circles may stand half out of the sheet, on the sides that have no dimension. */
function roomRound(whole: Box, taken: readonly Box[]): Room {
  const room = new Room(grow(whole, { left: 0, bottom: 0, right: AROUND.right, top: AROUND.above }));
  for (const box of taken) room.take(box);
  return room;
}
