/** One sheet to scale: its pieces, what is left of it, and its cuts by the numbers of their steps. */
import { grow, heightOf, widthOf, type Box, type Point } from '../../core/geometry/box';
import { listed } from '../../core/phrases';
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
import { atScale, boxAtScale, scaleFor, type At, type Scale } from '../paper/scale';
import type { Surface } from '../paper/surface';
import type { Setting } from '../paper/text-blocks';
import type { PapersContext } from './papers-context';
import { nameLeft, namePiece } from './part-names';
import { numberCuts, type NumberedLine } from './cut-numbers';

/** Room for the dimensions, and for circles that stand half out of the sheet, mm. */
const AROUND = { left: 8, below: 8, above: 3, right: 3 } as const;
/** Under the drawing: what its signs mean, and what could not be told in it. */
const CAPTION = { size: 7 } as const;
const LINE = 3.4;
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
  return scaleFor(stock, room, showing.unit);
}

export function drawingBlock(view: SheetView, scale: Scale, setting: Setting, context: PapersContext): Block {
  const { stock } = view.sheet;
  const [wide, high] = [stock.width * scale.factor, stock.height * scale.factor];
  return {
    height: AROUND.above + high + AROUND.below + 2 * LINE,
    draw: (surface, { x, y }) => {
      const free = setting.width - wide - AROUND.left - AROUND.right;
      const corner = { x: x + AROUND.left + Math.max(0, free) / 2, y: y - AROUND.above - high };
      const untold = new Drawing(surface, view, atScale(scale, corner), setting, context).draw();
      const signs = `${scale.words}, seen from the front. Circles hold the numbers of the steps, arrows point to the top of a piece.`; // prettier-ignore
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
    // Circles may stand half out of the sheet, on the side that has no dimension.
    const room = new Room(grow(whole, { left: 0, bottom: 0, right: AROUND.right, top: AROUND.above }));
    const nameless = pieces.filter((piece) => {
      const taken = namePiece(this.surface, piece, this.at, this.setting, this.context);
      for (const box of taken) room.take(box);
      return taken.length === 0;
    });
    for (const box of left) {
      const taken = nameLeft(this.surface, box, this.at, this.context);
      if (taken) room.take(taken);
    }
    const numbered = numberCuts(this.surface, room, cuts);
    const missing = steps.flatMap((_, index) => (numbered.has(index + 1) ? [] : [index + 1]));
    return [
      nameless.length === 0 ? '' : `Too small for its number here: ${numbersText(nameless.map(({ number }) => number))}.`,
      missing.length === 0 ? '' : `Without a circle, since there is no room: step ${listed(missing.map(String))}.`,
    ].filter((words) => words !== '').join(' '); // prettier-ignore
  }

  #drawLeft(): void {
    for (const box of this.view.sheet.left) {
      const kind = keepingOf(box, this.context.keep);
      const boxed = this.#boxed(box);
      if (kind === 'waste') this.surface.lines(hatched(boxed), PENS.hair);
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

/** Strokes that rise to the right, within a box. */
function hatched(box: Box): (readonly [Point, Point])[] {
  const [wide, high] = [widthOf(box), heightOf(box)];
  const count = Math.floor((wide + high) / HATCH);
  return Array.from({ length: count }, (_, index) => (index + 0.5) * ((wide + high) / Math.max(1, count))).map(
    (off) => {
      const [low, far] = [Math.max(0, off - high), Math.min(wide, off)];
      return [
        { x: box.left + low, y: box.top - (off - low) },
        { x: box.left + far, y: box.top - (off - far) },
      ];
    },
  );
}
