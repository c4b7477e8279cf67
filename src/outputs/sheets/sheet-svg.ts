/** One sheet of a plan as an SVG of its true size in millimetres: what is left, pieces with their windows, and cuts in their order. */
import { heightOf, widthOf, type Box, type Point } from '../../core/geometry/box';
import { uncapital } from '../../core/phrases';
import { cutLines } from '../../core/sheets/cut-lines';
import { cutFirstWords, keepFalloutWords } from '../../core/sheets/fallout-words';
import type { CutStep, PlacedPiece, PlannedSheet } from '../../core/sheets/plan';
import { keepingOf } from '../../core/sheets/remnants';
import { KEEPING_WORDS, sheetTitle, stepRows } from '../../core/sheets/sheet-words';
import { windowsOnSheet } from '../../core/sheets/windows-on-sheet';
import { sizeText } from '../../core/units';
import { element, numberText, textElement, type Attributes } from '../proof/xml';
import type { PapersContext } from './papers-context';

const LINE = { fill: 'none', 'stroke-width': 0.5 } as const;
const TYPE = { 'font-family': 'sans-serif', 'text-anchor': 'middle', stroke: 'none' } as const;
const GREYS = { board: '#e8e8e8', strip: '#d8d8d8', waste: '#b4b4b4' } as const;
/** Of the type size: width of a letter on the average in any plain type, and how far the middle of capitals lies over the line. */
const LETTER = 0.62;
const HALF_CAPITAL = 0.36;
/** Of the arrow: as a part of the shorter side of its piece. */
const ARROW = 0.16;
/** Type sizes of a sheet's words, mm. */
const LARGEST = 24;
const SMALLEST = 2.5;

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
  constructor(
    private readonly sheet: PlannedSheet,
    private readonly context: PapersContext,
    private readonly kerf: number,
  ) {}

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
      return element('g', { id: `left-${index + 1}` }, [
        textElement('title', {}, `${KEEPING_WORDS[kind]}, ${size}`),
        element('rect', { ...this.#rect(box), fill: GREYS[kind], class: kind }),
        ...this.#words(box, [KEEPING_WORDS[kind], size]),
      ]);
    });
    return element('g', { id: 'left' }, [textElement('title', {}, 'What is left'), ...parts]);
  }

  pieces(): string {
    const all = this.sheet.pieces.map((piece) => this.#piece(piece));
    return element('g', { id: 'pieces' }, [textElement('title', {}, 'Pieces'), ...all]);
  }

  #piece(placed: PlacedPiece): string {
    const { piece, box, number, turned } = placed;
    const size = sizeText(piece, this.context.showing);
    const windows = windowsOnSheet(placed).map((window) =>
      element('g', { class: 'window' }, [
        textElement('title', {}, `Window ${window.name}${window.isRectangle ? '' : ', the box round its shape'}`),
        element('rect', { ...this.#rect(window.box), ...LINE, stroke: '#9a9a9a', 'stroke-dasharray': '4 2' }),
      ]),
    );
    return element('g', { id: `piece-${number}` }, [
      textElement('title', {}, `${number}: ${piece.id}, ${size}${turned ? ', turned: its top lies at the left' : ''}`),
      element('rect', { ...this.#rect(box), ...LINE, stroke: '#000000', class: 'piece' }),
      ...windows,
      ...this.#words(besideArrow(box, turned), [
        String(number),
        piece.from?.name ?? piece.id,
        piece.from?.title ?? '',
        size,
      ]),
      this.#arrow(box, turned),
    ]);
  }

  /** To the edge that hangs at the top. */
  #arrow({ left, right, bottom, top }: Box, turned: boolean): string {
    const long = Math.min(30, ARROW * Math.min(right - left, top - bottom));
    const tip = turned ? { x: left + long / 6, y: (bottom + top) / 2 } : { x: (left + right) / 2, y: top - long / 6 };
    const back = (along: number, aside: number): Point => turned ? { x: tip.x + along, y: tip.y + aside } : { x: tip.x + aside, y: tip.y - along }; // prettier-ignore
    const wings = [back(long / 2.5, -long / 4), tip, back(long / 2.5, long / 4)];
    const d = `${this.#path([tip, back(long, 0)])} ${this.#path(wings)}`;
    return element('path', { d, ...LINE, stroke: '#000000', class: 'top' });
  }

  cuts(): string {
    const rows = stepRows(this.sheet, this.context.showing);
    const steps = this.sheet.steps.map((step, index) => this.#step(step, index, rows[index] ?? []));
    return element('g', { id: 'cuts', ...LINE, stroke: '#c00000' }, [
      textElement('title', {}, 'Cuts in their order'),
      ...steps,
    ]);
  }

  #step(step: CutStep, index: number, [, ...words]: readonly string[]): string {
    const id = `step-${index + 1}`;
    const lines = cutLines(step, this.kerf);
    const size = Math.max(
      SMALLEST,
      Math.min(10, ...lines.map(([from, to]) => 0.4 * Math.hypot(to.x - from.x, to.y - from.y))),
    );
    return element('g', { id }, [
      textElement('title', {}, `${index + 1}: ${words.filter((word) => word !== '').join('; ')}`),
      ...lines.map((line) => element('path', { d: this.#path(line) })),
      ...lines.map(([from, to]) => this.#number(index + 1, along(from, to, 0.25), size)),
    ]);
  }

  /** On a white field, so that the line does not run through it. */
  #number(number: number, at: Point, size: number): string {
    const { x, y } = this.#place(at);
    const wide = String(number).length * LETTER * size + 0.4 * size;
    const field = { x: x - wide / 2, y: y - 0.6 * size, width: wide, height: 1.2 * size };
    const style = { ...TYPE, 'font-size': size, fill: '#c00000' };
    return element('g', { class: 'number' }, [
      element('rect', { ...field, fill: '#ffffff', stroke: 'none' }),
      textElement('text', { x, y: y + HALF_CAPITAL * size, ...style }, String(number)),
    ]);
  }

  /** Lines of one size in the middle of a box, reading upward where that gives them more room; as many as can be read. */
  #words(box: Box, lines: readonly string[]): string[] {
    const told = lines.filter((line) => line !== '');
    for (let count = told.length; count > 0; count--) {
      const some = told.slice(0, count);
      const [flat, upward] = [this.#sizeIn(box, some), this.#sizeIn({ left: box.bottom, right: box.top, bottom: box.left, top: box.right }, some)]; // prettier-ignore
      const size = Math.max(flat, upward);
      if (size >= SMALLEST || count === 1) return [this.#lines(box, some, size, upward > flat)];
    }
    return [];
  }

  #sizeIn(box: Box, lines: readonly string[]): number {
    const longest = Math.max(...lines.map((line) => [...line].length));
    return Math.min(LARGEST, (0.9 * widthOf(box)) / (longest * LETTER), (0.75 * heightOf(box)) / (1.3 * lines.length));
  }

  #lines({ left, right, bottom, top }: Box, lines: readonly string[], size: number, upward: boolean): string {
    const { x, y } = this.#place({ x: (left + right) / 2, y: (bottom + top) / 2 });
    const turn: Attributes = upward ? { transform: `rotate(-90 ${numberText(x)} ${numberText(y)})` } : {};
    const first = y - ((lines.length - 1) / 2) * 1.3 * size + HALF_CAPITAL * size;
    return element(
      'g',
      { ...TYPE, ...turn, 'font-size': size, fill: '#000000' },
      lines.map((line, index) => textElement('text', { x, y: first + index * 1.3 * size }, line)),
    );
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

function along(from: Point, to: Point, part: number): Point {
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
}
