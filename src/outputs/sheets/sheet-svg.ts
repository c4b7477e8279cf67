/** One sheet of a plan as an SVG of its true size in millimetres: what is left, pieces with their windows, and cuts in their order. */
import { heightOf, widthOf, type Box, type Point } from '../../core/geometry/box';
import { uncapital } from '../../core/phrases';
import { cutLines } from '../../core/sheets/cut-lines';
import { cutFirstWords, keepFalloutWords } from '../../core/sheets/fallout-words';
import type { PlacedPiece, PlannedSheet } from '../../core/sheets/plan';
import { keepingOf } from '../../core/sheets/remnants';
import { KEEPING_WORDS, sheetTitle, stepRows } from '../../core/sheets/sheet-words';
import { windowsOnSheet, type WindowOnSheet } from '../../core/sheets/windows-on-sheet';
import { sizeText } from '../../core/units';
import { boxRound, Room } from '../paper/room';
import { element, numberText, textElement, type Attributes } from '../proof/xml';
import { hatched } from './hatching';
import type { PapersContext } from './papers-context';
import { placeCircles, type StepCircle } from './svg-circles';
import { baseLines, HALF_CAPITAL, partsForWords, placeLetter, placeWords, type PlacedLetter, type PlacedWords } from './svg-words'; // prettier-ignore

/** Pens, mm: the first cuts are the thickest lines, trimming is dashed, windows are faint. */
const LINE = { fill: 'none', 'stroke-width': 0.6 } as const;
const FAINT = { ...LINE, stroke: '#9a9a9a' } as const;
const HATCHING = { fill: 'none', 'stroke-width': 0.3, stroke: '#707070' } as const;
const CUTS = {
  trim: { 'stroke-width': 0.6, 'stroke-dasharray': '12 5' },
  first: { 'stroke-width': 2.4 },
  later: { 'stroke-width': 1.2 },
} as const;
const TYPE = { 'font-family': 'sans-serif', 'text-anchor': 'middle', stroke: 'none' } as const;
const CUT_COLOUR = '#c00000';
const GREYS = { board: '#ededed', strip: '#dcdcdc' } as const;
/** Between the strokes of waste, mm. */
const HATCH = 12;
/** Of the arrow: as a part of the shorter side of its piece. */
const ARROW = 0.16;

/** @param index place of the sheet in its board's plan, from 0. */
export function sheetSvg(context: PapersContext, board: number, index: number): string {
  const planned = context.boards[board]!;
  const sheet = planned.plan.sheets[index]!;
  const { width, height } = sheet.stock;
  const drawing = new SheetDrawing(sheet, context, planned.ask.kerf);
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${numberText(width)}mm`,
      height: `${numberText(height)}mm`,
      viewBox: `0 0 ${numberText(width)} ${numberText(height)}`,
    },
    [
      textElement('title', {}, `${planned.board}, ${uncapital(sheetTitle(sheet, index, context.showing))}`),
      textElement(
        'desc',
        {},
        [
          `${context.title}. Millimetres at full size, seen from the front.`,
          cutFirstWords(planned, [index], context.showing),
          keepFalloutWords(planned, [index]),
        ]
          .filter((words) => words !== '')
          .join(' '),
      ),
      drawing.board(),
      drawing.left(),
      drawing.pieces(),
      drawing.cuts(),
    ],
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`;
}

class SheetDrawing {
  /** Of the whole sheet, with the words that circles may not lie on. */
  readonly #room: Room;

  constructor(
    private readonly sheet: PlannedSheet,
    private readonly context: PapersContext,
    private readonly kerf: number,
  ) {
    const { width, height } = sheet.stock;
    this.#room = new Room({ left: 0, bottom: 0, right: width, top: height });
  }

  board(): string {
    const { width, height } = this.sheet.stock;
    return element('g', { id: 'sheet', ...LINE, stroke: '#000000' }, [
      textElement('title', {}, 'The sheet'),
      element('rect', { x: 0, y: 0, width, height }),
    ]);
  }

  left(): string {
    const { showing, keep } = this.context;
    const parts = this.sheet.left.map((box, index) => {
      const kind = keepingOf(box, keep);
      const size = sizeText({ width: widthOf(box), height: heightOf(box) }, showing);
      const words = placeWords([box], [[KEEPING_WORDS[kind], size], [`${KEEPING_WORDS[kind]} ${size}`], [size]]);
      this.#take(words);
      const isWaste = kind === 'waste';
      return element('g', { id: `left-${index + 1}` }, [
        textElement('title', {}, `${KEEPING_WORDS[kind]}, ${size}`),
        element('rect', { ...this.#rect(box), fill: isWaste ? 'none' : GREYS[kind], class: kind }),
        ...(isWaste ? [this.#hatching(box)] : []),
        // On white, so that no stroke runs through them.
        ...(isWaste && words ? [element('rect', { ...this.#rect(words.box), fill: '#ffffff' })] : []),
        ...this.#lines(words),
      ]);
    });
    return element('g', { id: 'left' }, [textElement('title', {}, 'What is left'), ...parts]);
  }

  #hatching(box: Box): string {
    return element('path', { ...HATCHING, d: hatched(box, HATCH).map((stroke) => this.#path(stroke)).join(' '), class: 'hatching' }); // prettier-ignore
  }

  pieces(): string {
    const all = this.sheet.pieces.map((piece) => this.#piece(piece));
    return element('g', { id: 'pieces' }, [textElement('title', {}, 'Pieces'), ...all]);
  }

  #piece(placed: PlacedPiece): string {
    const { piece, box, number, turned } = placed;
    const size = sizeText(piece, this.context.showing);
    const windows = windowsOnSheet(placed).map((window) => ({
      ...window,
      letter: placeLetter(window.box, window.name),
    }));
    const room = besideArrow(box, turned);
    const parts = partsForWords(
      room,
      windows.map(({ box: opening, letter }) => ({ box: opening, letter: letter.box })),
    );
    const [first, name, title] = [String(number), piece.from?.name ?? piece.id, piece.from?.title ?? ''];
    const ways = [...(title === '' ? [] : [[first, name, title, size]]), [first, name, size], [first, size], [first]];
    const words = placeWords(parts, ways) ?? placeWords([room], [[first]]);
    this.#take(words);
    return element('g', { id: `piece-${number}` }, [
      textElement('title', {}, `${number}: ${piece.id}, ${size}${turned ? ', turned: its top lies at the left' : ''}`),
      element('rect', { ...this.#rect(box), ...LINE, stroke: '#000000', class: 'piece' }),
      ...this.#lines(words),
      ...windows.map((window) => this.#window(window)),
      this.#arrow(box, turned),
    ]);
  }

  #window({ name, box, isRectangle, letter }: WindowOnSheet & { readonly letter: PlacedLetter }): string {
    const { x, y } = this.#place({ x: (letter.box.left + letter.box.right) / 2, y: letter.box.bottom });
    this.#room.take(letter.box);
    return element('g', { class: 'window' }, [
      textElement('title', {}, `Window ${name}${isRectangle ? '' : ', the box round its shape'}`),
      element('rect', { ...this.#rect(box), ...FAINT }),
      textElement('text', { x, y, ...TYPE, 'font-size': letter.size, fill: '#707070' }, name),
    ]);
  }

  /** To the edge that hangs at the top. */
  #arrow({ left, right, bottom, top }: Box, turned: boolean): string {
    const long = Math.min(30, ARROW * Math.min(right - left, top - bottom));
    const tip = turned ? { x: left + long / 6, y: (bottom + top) / 2 } : { x: (left + right) / 2, y: top - long / 6 };
    const back = (along: number, aside: number): Point => turned ? { x: tip.x + along, y: tip.y + aside } : { x: tip.x + aside, y: tip.y - along }; // prettier-ignore
    this.#room.take(boxRound(tip, back(long, 0), long / 4));
    const wings = [back(long / 2.5, -long / 4), tip, back(long / 2.5, long / 4)];
    const d = `${this.#path([tip, back(long, 0)])} ${this.#path(wings)}`;
    return element('path', { d, ...LINE, stroke: '#000000', class: 'top' });
  }

  cuts(): string {
    const { steps, stock } = this.sheet;
    const rows = stepRows(this.sheet, this.context.showing);
    const lines = steps.map((step) => cutLines(step, this.kerf));
    const circles = placeCircles(lines, this.#room, stock);
    const drawn = steps.map((step, index) => {
      const [, ...words] = rows[index] ?? [];
      const pen = step.kind !== 'cut' ? CUTS.trim : step.stage === 1 ? CUTS.first : CUTS.later;
      return element('g', { id: `step-${index + 1}`, ...pen }, [
        textElement('title', {}, `${index + 1}: ${words.filter((word) => word !== '').join('; ')}`),
        ...(lines[index] ?? []).map((line) => element('path', { d: this.#path(line) })),
        ...(circles[index] ?? []).map((circle) => this.#circle(index + 1, circle)),
      ]);
    });
    return element('g', { id: 'cuts', fill: 'none', stroke: CUT_COLOUR }, [
      textElement('title', {}, 'Cuts in their order'),
      ...drawn,
    ]);
  }

  /** White within, so that the line does not run through the number. */
  #circle(number: number, { centre, radius, size }: StepCircle): string {
    const { x, y } = this.#place(centre);
    return element('g', { class: 'number' }, [
      element('circle', { cx: x, cy: y, r: radius, fill: '#ffffff', 'stroke-width': size / 16, 'stroke-dasharray': 'none' }),
      textElement('text', { x, y: y + HALF_CAPITAL * size, ...TYPE, 'font-size': size, fill: CUT_COLOUR }, String(number)),
    ]); // prettier-ignore
  }

  #take(words: PlacedWords | undefined): void {
    if (words) this.#room.take(words.box);
  }

  #lines(words: PlacedWords | undefined): string[] {
    if (!words) return [];
    const { x, y } = this.#place(words.middle);
    const turn: Attributes = words.isUpward ? { transform: `rotate(-90 ${numberText(x)} ${numberText(y)})` } : {};
    const lines = baseLines(words).map((down, index) =>
      textElement('text', { x, y: y + down }, words.lines[index] ?? ''),
    );
    return [element('g', { ...TYPE, ...turn, 'font-size': words.size, fill: '#000000' }, lines)];
  }

  #rect({ left, right, bottom, top }: Box) {
    return { x: left, y: this.sheet.stock.height - top, width: right - left, height: top - bottom };
  }

  #path(points: readonly Point[]): string {
    const places = points.map((point) => this.#place(point)).map(({ x, y }) => `${numberText(x)} ${numberText(y)}`);
    return `M ${places.join(' L ')}`;
  }

  /** y grows downward in an SVG. */
  #place({ x, y }: Point): Point {
    return { x, y: this.sheet.stock.height - y };
  }
}

/** What the arrow leaves of a piece. */
function besideArrow(box: Box, turned: boolean): Box {
  const off = 1.4 * ARROW * Math.min(widthOf(box), heightOf(box));
  return turned ? { ...box, left: box.left + off } : { ...box, top: box.top - off };
}
