/** Texts made ready for a document's fonts and measured, each only once however many pages it stands on. */
import { fromPoints } from './page';
import { broken, printable, TABULAR, type TextStyle, type Weight } from './type';

/** The part of a fontkit font that tells whether a character can be drawn; pdfkit's types leave it out. */
interface OpenFont {
  readonly _font: { readonly font: { hasGlyphForCodePoint(codePoint: number): boolean } };
}

type Look = Pick<TextStyle, 'weight' | 'tabular'>;

/** Widths are proportional to the type size; they are measured at this one, in points. */
const MEASURED_AT = 1000;

/** The font draws a comma under the sign of degrees before it; this keeps it clear. */
const HAIR_SPACE = '\u200a';

export class Typesetter {
  private readonly ready: Record<Weight, Map<string, string>> = { regular: new Map(), bold: new Map() };
  private readonly widths: Record<string, Map<string, number>> = {};

  constructor(private readonly document: PDFKit.PDFDocument) {}

  /** Characters that the font cannot draw, met so far; a mark stands in their place. */
  readonly lost = new Set<string>();

  /** The text as it can be drawn with a weight. */
  set(words: string, { weight = 'regular' }: Look): string {
    const known = this.ready[weight].get(words);
    if (known !== undefined) return known;
    const { font } = (this.document.font(weight) as unknown as OpenFont)._font;
    const text = printable(
      words,
      (codePoint) => font.hasGlyphForCodePoint(codePoint),
      (sign) => this.lost.add(sign),
    );
    const spaced = text.replace(/°(?=[,.;])/g, `°${HAIR_SPACE}`);
    this.ready[weight].set(words, spaced);
    return spaced;
  }

  /** Width of a text that was made ready, mm. */
  width(text: string, style: TextStyle): number {
    const { weight = 'regular', tabular = false } = style;
    const known = (this.widths[`${weight} ${tabular}`] ??= new Map<string, number>());
    let width = known.get(text);
    if (width === undefined) {
      width =
        fromPoints(this.document.font(weight, MEASURED_AT).widthOfString(text, tabular ? TABULAR : {})) / MEASURED_AT;
      known.set(text, width);
    }
    return width * style.size;
  }

  /** A text in lines no wider than `most`, broken at spaces, and within a word that is wider by itself. */
  lines(text: string, most: number, style: TextStyle): readonly string[] {
    const lines: string[] = [];
    for (const word of text.split(' ')) {
      const line = lines.at(-1);
      const longer = line === undefined ? word : `${line} ${word}`;
      if (line !== undefined && this.wordsWidth(longer, style) <= most) lines[lines.length - 1] = longer;
      else lines.push(...broken(word, most, (part) => this.width(part, style)));
    }
    return lines;
  }

  /** Word by word with its space, as the document itself lays text out, so that a line on trial costs nothing new. */
  private wordsWidth(line: string, style: TextStyle): number {
    const words = line.split(' ');
    return words.reduce((sum, word) => sum + this.width(`${word} `, style), -this.width(' ', style));
  }
}
