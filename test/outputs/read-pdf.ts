/** Reads a PDF back with an independent reader (mupdf): every stroke and text as it lands on paper, in mm, y up. */
import * as mupdf from 'mupdf';
import type { Box, Point } from '../../src/core/geometry/box';

/** ISO 32000-1, 8.3.2.3: the default unit is 1/72 in; 1 in = 25.4 mm. */
const MM_PER_POINT = 25.4 / 72;

export interface Stroke {
  readonly from: Point;
  readonly to: Point;
  /** mm. */
  readonly width: number;
  readonly dashed: boolean;
  /** When it was painted: what has a higher number lies over it. */
  readonly order: number;
}

/** An area painted white, by the box round it: what lies under it is not seen. */
export interface WhiteField {
  readonly box: Box;
  readonly order: number;
}

export interface Bezier extends Pick<Stroke, 'width' | 'dashed' | 'order'> {
  readonly points: readonly [Point, Point, Point, Point];
}

export interface Words {
  readonly text: string;
  /** Where the first glyph stands. */
  readonly at: Point;
  /** Where the last glyph stands. */
  readonly last: Point;
  /** Points. */
  readonly size: number;
  /** Determinant of the text matrix on a y-up page: negative would be mirrored. */
  readonly determinant: number;
  /** Reading direction in degrees: 0 to the right, 90 upward, 180 head down. */
  readonly turn: number;
  /** Name of the font, without the tag of its subset. */
  readonly font: string;
  /** True when a glyph is `.notdef`. */
  readonly missing: boolean;
  /** Their numbers in the font's subset, one for each sign. */
  readonly glyphs: readonly number[];
  readonly order: number;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  /** MediaBox in points, as written. */
  readonly mediaBox: readonly number[];
  readonly strokes: readonly Stroke[];
  /** Points on curves: of rings and half rings. */
  readonly curves: readonly Point[];
  /** The same curves whole: start, two control points, end. */
  readonly beziers: readonly Bezier[];
  readonly words: readonly Words[];
  readonly whites: readonly WhiteField[];
}

export interface ReadDocument {
  readonly pages: readonly ReadPage[];
  /** Names in the catalogue's viewer preferences. */
  readonly preferences: Readonly<Record<string, string>>;
  readonly info: Readonly<Record<string, string>>;
  readonly fonts: readonly { readonly name: string; readonly embedded: boolean }[];
  /** True when the reader had to mend the file. */
  readonly repaired: boolean;
}

export function readPdf(bytes: Uint8Array): ReadDocument {
  const document = mupdf.PDFDocument.openDocument(bytes, 'application/pdf').asPDF();
  if (!document) throw new Error('not a PDF');
  const pages = Array.from({ length: document.countPages() }, (_, index) => readPage(document, index));
  const root = document.getTrailer().get('Root');
  return {
    pages,
    preferences: plain(root.get('ViewerPreferences')),
    info: plain(document.getTrailer().get('Info')),
    fonts: fontsOf(document),
    repaired: document.wasRepaired(),
  };
}

function plain(object: mupdf.PDFObject): Record<string, string> {
  const found: Record<string, string> = {};
  object.resolve().forEach((value, key) => {
    const held = value.resolve();
    found[String(key)] = held.isName() ? held.asName() : held.isString() ? held.asString() : held.toString();
  });
  return found;
}

function fontsOf(document: mupdf.PDFDocument): { name: string; embedded: boolean }[] {
  const found = new Map<string, boolean>();
  for (let index = 0; index < document.countPages(); index++) {
    const fonts = document.findPage(index).get('Resources').get('Font');
    if (!fonts.isDictionary()) continue;
    fonts.forEach((font) => {
      const descendant = font.get('DescendantFonts').get(0);
      const descriptor = (descendant.isNull() ? font : descendant).get('FontDescriptor');
      const embedded = ['FontFile', 'FontFile2', 'FontFile3'].some((key) => !descriptor.get(key).isNull());
      found.set(font.get('BaseFont').asName(), embedded);
    });
  }
  return [...found].map(([name, embedded]) => ({ name, embedded }));
}

function readPage(document: mupdf.PDFDocument, index: number): ReadPage {
  const mediaBox = Array.from({ length: 4 }, (_, at) => document.findPage(index).get('MediaBox').get(at).asNumber());
  const page = document.loadPage(index);
  const [, , widthPoints, heightPoints] = page.getBounds();
  const place = (x: number, y: number): Point => ({ x: x * MM_PER_POINT, y: (heightPoints - y) * MM_PER_POINT });
  const strokes: Stroke[] = [];
  const curves: Point[] = [];
  const beziers: Bezier[] = [];
  const words: Words[] = [];
  const whites: WhiteField[] = [];
  let order = 0;
  const device = new mupdf.Device({
    strokePath(path, stroke, ctm) {
      walkPath(path, ctm, place, { stroke, order: order++ }, strokes, curves, beziers);
    },
    fillPath(path, _, ctm, colourSpace, colour) {
      const painted = order++;
      const light = colourSpace.getNumberOfComponents() === 4 ? colour.every((part) => part === 0) : colour.every((part) => part === 1); // prettier-ignore
      if (!light) return;
      const [left, top, right, bottom] = path.getBounds(null as unknown as mupdf.StrokeState, ctm);
      const [low, high] = [place(left, bottom), place(right, top)];
      whites.push({ box: { left: low.x, bottom: low.y, right: high.x, top: high.y }, order: painted });
    },
    fillText(text, ctm) {
      words.push(...readWords(text, ctm, place).map((read) => ({ ...read, order: order++ })));
    },
  });
  page.run(device, mupdf.Matrix.identity);
  device.close();
  return {
    width: widthPoints * MM_PER_POINT,
    height: heightPoints * MM_PER_POINT,
    mediaBox,
    strokes,
    curves,
    beziers,
    words,
    whites,
  };
}

function walkPath(
  path: mupdf.Path,
  ctm: mupdf.Matrix,
  place: (x: number, y: number) => Point,
  { stroke, order }: { readonly stroke: mupdf.StrokeState; readonly order: number },
  strokes: Stroke[],
  curves: Point[],
  beziers: Bezier[],
): void {
  const at = (x: number, y: number) => place(ctm[0] * x + ctm[2] * y + ctm[4], ctm[1] * x + ctm[3] * y + ctm[5]);
  const scale = Math.sqrt(Math.abs(ctm[0] * ctm[3] - ctm[1] * ctm[2]));
  const width = stroke.getLineWidth() * scale * MM_PER_POINT;
  const dashed = (stroke.getDashes() ?? []).length > 0;
  let start: Point = { x: 0, y: 0 };
  let pen = start;
  const line = (to: Point) => {
    strokes.push({ from: pen, to, width, dashed, order });
    pen = to;
  };
  path.walk({
    moveTo: (x, y) => {
      start = pen = at(x, y);
    },
    lineTo: (x, y) => line(at(x, y)),
    curveTo: (a, b, c, d, x, y) => {
      beziers.push({ points: [pen, at(a, b), at(c, d), at(x, y)], width, dashed, order });
      pen = at(x, y);
      curves.push(pen);
    },
    closePath: () => line(start),
  });
}

function readWords(
  text: mupdf.Text,
  ctm: mupdf.Matrix,
  place: (x: number, y: number) => Point,
): Omit<Words, 'order'>[] {
  const glyphs: { sign: string; at: Point; matrix: mupdf.Matrix; glyph: number; font: string }[] = [];
  text.walk({
    showGlyph(font, trm, glyph, unicode) {
      const matrix = mupdf.Matrix.concat(trm, ctm);
      glyphs.push({
        sign: unicode > 0 ? String.fromCodePoint(unicode) : '',
        at: place(matrix[4], matrix[5]),
        matrix,
        glyph,
        font: font.getName(),
      });
    },
  });
  const [first] = glyphs;
  const last = glyphs.at(-1);
  if (!first || !last) return [];
  // Device space has y down: turned to y up, the second row changes its sign.
  const [a, b, c, d] = first.matrix;
  return [
    {
      text: glyphs.map(({ sign }) => sign).join(''),
      at: first.at,
      last: last.at,
      size: Math.hypot(a, b),
      determinant: a * -d - -b * c,
      turn: Math.round((Math.atan2(-b, a) * 180) / Math.PI + 360) % 360,
      font: first.font.replace(/^[A-Z]{6}\+/, ''),
      missing: glyphs.some(({ glyph }) => glyph === 0),
      glyphs: glyphs.map(({ glyph }) => glyph),
    },
  ];
}
