/** One page to draw on, in millimetres from its lower left corner, y up; nothing is rounded on the way to points. */
import type { Box, Point, Size } from '../../core/geometry/box';
import type { Cubic } from '../../core/geometry/cubics';
import { fromPoints, toPoints } from './page';
import type { Pen } from './pens';
import { fitted, TABULAR, type TextStyle } from './type';
import type { Typesetter } from './typesetter';

/** pdfkit's types leave out its arcs. */
interface ArcDrawing {
  arc(x: number, y: number, radius: number, from: number, to: number, anticlockwise: boolean): PDFKit.PDFDocument;
}

/** From line to line of a paragraph, in type sizes; and how far down its room the baseline lies. */
const LEADING = 1.33;
const ASCENT = 0.74;

/** Height that a paragraph will take, mm. */
export function paragraphHeight(typesetter: Typesetter, words: string, width: number, style: TextStyle): number {
  return typesetter.lines(typesetter.set(words, style), width, style).length * fromPoints(style.size * LEADING);
}

export class Surface {
  private pen: Pen | undefined;

  constructor(
    private readonly document: PDFKit.PDFDocument,
    private readonly typesetter: Typesetter,
    readonly size: Size,
  ) {}

  /** Starts a page; turned: all that is drawn on it stands head down. */
  static open(document: PDFKit.PDFDocument, typesetter: Typesetter, size: Size, turned: boolean): Surface {
    const page: [number, number] = [toPoints(size.width), toPoints(size.height)];
    document.addPage({ size: page, margin: 0 });
    if (turned) document.transform(-1, 0, 0, -1, page[0], page[1]);
    return new Surface(document, typesetter, size);
  }

  line(from: Point, to: Point, pen: Pen): void {
    this.lines([[from, to]], pen);
  }

  /** Strokes many lines with one pen. */
  lines(lines: readonly (readonly [Point, Point])[], pen: Pen): void {
    if (lines.length === 0) return;
    this.take(pen);
    for (const [from, to] of lines) {
      this.document.moveTo(this.x(from), this.y(from)).lineTo(this.x(to), this.y(to));
    }
    this.document.stroke();
  }

  /** Strokes cubic curves, in one line where each begins as the last one ends; nothing of them outside a box. */
  curves(cubics: readonly Cubic[], pen: Pen, within: Box): void {
    if (cubics.length === 0) return;
    // What is saved is taken up again: the pen and its dash with it.
    const before = this.pen;
    this.document.save();
    this.outline(within);
    this.document.clip();
    this.take(pen);
    let last: Point | undefined;
    for (const [from, one, two, to] of cubics) {
      if (from.x !== last?.x || from.y !== last.y) this.document.moveTo(this.x(from), this.y(from));
      this.document.bezierCurveTo(this.x(one), this.y(one), this.x(two), this.y(two), this.x(to), this.y(to));
      last = to;
    }
    this.document.stroke().restore();
    this.pen = before;
  }

  boxes(boxes: readonly Box[], pen: Pen): void {
    if (boxes.length === 0) return;
    this.take(pen);
    for (const box of boxes) this.outline(box);
    this.document.stroke();
  }

  fill(box: Box, grey: string): void {
    this.outline(box);
    this.document.fill(grey).fillColor('black');
  }

  /** An area with straight edges, corner by corner. */
  fillArea(corners: readonly Point[], grey: string): void {
    this.document.polygon(...corners.map((point): [number, number] => [this.x(point), this.y(point)]));
    this.document.fill(grey).fillColor('black');
  }

  circle(centre: Point, radius: number, pen: Pen): void {
    this.take(pen);
    this.document.circle(this.x(centre), this.y(centre), toPoints(radius)).stroke();
  }

  /** An arc anticlockwise, in degrees from the x axis. */
  arc(centre: Point, radius: number, fromDegrees: number, toDegrees: number, pen: Pen): void {
    this.take(pen);
    const radians = (degrees: number) => (-degrees * Math.PI) / 180;
    (this.document as unknown as ArcDrawing)
      .arc(this.x(centre), this.y(centre), toPoints(radius), radians(fromDegrees), radians(toDegrees), true)
      .stroke();
  }

  /** Says that a text is on this page whose lines were made ready elsewhere, so that what of it can't be drawn is told. */
  hold(words: string, style: TextStyle): void {
    this.typesetter.set(words, style);
  }

  /** Draws a text whose baseline starts, has its middle, or ends at a point. */
  text(words: string, at: Point, style: TextStyle): void {
    this.draw(this.typesetter.set(words, style), at, style);
  }

  /** Width of a text as it would be drawn, mm. */
  width(words: string, style: TextStyle): number {
    return this.typesetter.width(this.typesetter.set(words, style), style);
  }

  /** The text, cut with … where it is wider than `most`. */
  fit(words: string, most: number, style: TextStyle): string {
    return fitted(this.typesetter.set(words, style), most, (text) => this.typesetter.width(text, style));
  }

  /** Draws a paragraph downward from its upper left corner and returns its height, mm. */
  paragraph(words: string, corner: Point, width: number, style: TextStyle): number {
    const lines = this.typesetter.lines(this.typesetter.set(words, style), width, style);
    const down = fromPoints(style.size * LEADING);
    lines.forEach((line, index) => this.draw(line, { x: corner.x, y: corner.y - (index + ASCENT) * down }, style));
    return lines.length * down;
  }

  private draw(text: string, at: Point, style: TextStyle): void {
    if (text === '') return;
    const part = style.align === 'right' ? 1 : style.align === 'centre' ? 0.5 : 0;
    const back = part === 0 ? 0 : part * this.typesetter.width(text, style);
    const start = style.turn === 90 ? { x: at.x, y: at.y - back } : { x: at.x - back, y: at.y };
    this.document.font(style.weight ?? 'regular', style.size).text(text, this.x(start), this.y(start), {
      lineBreak: false,
      baseline: 'alphabetic',
      ...(style.turn === 90 ? { rotation: 90 } : {}),
      ...(style.tabular ? TABULAR : {}),
    });
  }

  private outline(box: Box): void {
    const { document } = this;
    document.moveTo(toPoints(box.left), toPoints(this.size.height - box.bottom));
    document.lineTo(toPoints(box.right), toPoints(this.size.height - box.bottom));
    document.lineTo(toPoints(box.right), toPoints(this.size.height - box.top));
    document.lineTo(toPoints(box.left), toPoints(this.size.height - box.top));
    document.closePath();
  }

  private x(point: Point): number {
    return toPoints(point.x);
  }

  private y(point: Point): number {
    return toPoints(this.size.height - point.y);
  }

  /** Sets pen and dash only when they change, which keeps big templates small. */
  private take(pen: Pen): void {
    if (pen === this.pen) return;
    this.document.lineWidth(toPoints(pen.width));
    if (pen.colour !== this.pen?.colour) this.document.strokeColor(pen.colour ?? 'black');
    if (pen.dash) this.document.dash(toPoints(pen.dash[0]), { space: toPoints(pen.dash[1]) });
    else if (this.pen?.dash) this.document.undash();
    this.pen = pen;
  }
}
