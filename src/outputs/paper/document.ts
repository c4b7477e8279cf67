/** A PDF made page by page: fixed dates so that the same job gives the same bytes, and a request not to scale it. */
import PDFDocument from 'pdfkit';
import type { Size } from '../../core/geometry/box';
import type { Fonts, MakerHooks } from '../context';
import { Surface } from './surface';
import { Typesetter } from './typesetter';

/** One page, ready to be drawn once the number of pages is known. */
export interface PagePlan {
  readonly size: Size;
  /** Draws everything head down. */
  readonly turned?: boolean;
  readonly step: string;
  readonly draw: (surface: Surface, place: PagePlace) => void;
}

export interface PagePlace {
  /** From 1. */
  readonly number: number;
  readonly count: number;
}

/** Any fixed moment: the clock has no part in the bytes. */
const FIXED_DATE = new Date(Date.UTC(2000, 0, 1));
const PAGES_BETWEEN_PAUSES = 8;

/** A PDF, and the characters it could not show. */
export interface DrawnDocument {
  readonly bytes: Uint8Array;
  readonly lost: ReadonlySet<string>;
}

/**
 * Draws the pages. Lets other work in every few pages, so that progress is seen and a
 * cancel is heard; rejects with the signal's reason when cancelled.
 */
export async function drawDocument(
  pages: readonly PagePlan[],
  title: string,
  fonts: Fonts,
  hooks: MakerHooks,
): Promise<DrawnDocument> {
  const document = openDocument(title, fonts);
  const bytes = collect(document);
  const typesetter = new Typesetter(document);
  for (const [index, page] of pages.entries()) {
    hooks.signal?.throwIfAborted();
    page.draw(Surface.open(document, typesetter, page.size, page.turned ?? false), {
      number: index + 1,
      count: pages.length,
    });
    hooks.onProgress?.(
      (index + 1) / (pages.length + 1),
      pages.length > 1 ? `${page.step}, page ${index + 1} of ${pages.length}` : page.step,
    );
    if (index % PAGES_BETWEEN_PAUSES === PAGES_BETWEEN_PAUSES - 1) await pause();
  }
  hooks.signal?.throwIfAborted();
  document.end();
  return { bytes: await bytes, lost: typesetter.lost };
}

/** Measures text before any page is drawn, for matter that flows from page to page. */
export function openTypesetter(fonts: Fonts): Typesetter {
  return new Typesetter(openDocument('', fonts));
}

function openDocument(title: string, fonts: Fonts): PDFKit.PDFDocument {
  const document = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    // Without this pdfkit loads a standard font that could not be embedded.
    font: null as unknown as string,
    lang: 'en',
    info: {
      Title: title.slice(0, 400),
      Producer: 'Matwright',
      Creator: 'Matwright',
      CreationDate: FIXED_DATE,
      ModDate: FIXED_DATE,
    },
  });
  // "Print at 100 %": viewers that heed it do not offer to fit the page (ISO 32000-1, Table 150).
  const root = (document as unknown as { _root: { data: Record<string, unknown> } })._root;
  root.data['ViewerPreferences'] = document.ref({ PrintScaling: 'None', PickTrayByPDFSize: true });
  document.registerFont('regular', fonts.regular as unknown as ArrayBuffer);
  document.registerFont('bold', fonts.bold as unknown as ArrayBuffer);
  for (const weight of ['regular', 'bold'] as const) writeAsWritten(document.font(weight) as unknown as OpenFont);
  return document;
}

/** The part of a font that sets its text, by fontkit; pdfkit's types leave it out. */
interface OpenFont {
  readonly _font: {
    readonly font: { layout: (text: string, features?: Readonly<Record<string, boolean>>) => unknown };
  };
}

/**
 * Switches off what the font does by itself to letters beside others, such as 12×16 for 12x16: names are printed as they are
 * written. Here, since pdfkit keeps what it has set word by word only where a text names no features of its own.
 */
function writeAsWritten({ _font: { font } }: OpenFont): void {
  const layout = font.layout.bind(font);
  font.layout = (text, features) => layout(text, features ?? { calt: false });
}

function collect(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    document.on('error', reject);
    document.on('end', () => resolve(joined(chunks)));
  });
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
