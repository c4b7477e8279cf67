/** What every page carries: border, header, check bars both ways, and the small drawing of the mat. */
import type { View } from '../../core/cutting/plan';
import type { Box, Size } from '../../core/geometry/box';
import { PENS } from '../paper/pens';
import type { Surface } from '../paper/surface';
import { BAR_HEIGHT, BAR_LENGTHS, barRoom, drawCheckBar } from './check-bar';
import { drawMat, type MatDrawing } from './mat-drawing';
import { BAND, planSheet, type SheetPlan } from './sheet-plan';

export interface SheetHeader {
  /** Undefined on pages that belong to neither side. */
  readonly view?: View;
  /** In place of the side: the word that pages are told apart by. */
  readonly word?: string;
  readonly title: string;
  readonly under: string;
  /** Right-hand side: the page, and what more there is to say of it. */
  readonly page: string;
  readonly place: string;
}

const [BAR] = BAR_LENGTHS;
const KEY_WIDTH = 36;

/** Draws a page's furniture and returns how the page is divided. */
export function drawSheetFrame(surface: Surface, header: SheetHeader, key?: MatDrawing): SheetPlan {
  const sheet = planSheet(surface.size);
  drawBorder(surface, sheet.border, header.view);
  drawHeader(surface, sheet.header, header);
  drawBars(surface, sheet, key !== undefined);
  if (key) drawKey(surface, sheet.footer, key, header.view);
  return sheet;
}

/** Border and header alone, for pages on which nothing is to scale; returns the room that is left. */
export function drawPlainFrame(surface: Surface, header: SheetHeader): Box {
  const { border, header: head } = planSheet(surface.size);
  drawBorder(surface, border, header.view);
  drawHeader(surface, head, header);
  return plainBody(surface.size);
}

/** What border and header alone leave of a page. */
export function plainBody(paper: Size): Box {
  const { header, footer } = planSheet(paper);
  return { ...footer, left: footer.left + 1, right: footer.right - 1, top: header.bottom };
}

/** The front has a single border; the back's is double and hatched, so that the two are never taken for one another. */
export function drawBorder(surface: Surface, outer: Box, view: View | undefined): void {
  surface.boxes([outer], PENS.edge);
  if (view !== 'back') return;
  const inner = {
    left: outer.left + BAND,
    bottom: outer.bottom + BAND,
    right: outer.right - BAND,
    top: outer.top - BAND,
  };
  surface.boxes([inner], PENS.edge);
  surface.lines([...hatch(outer, inner, 'across'), ...hatch(outer, inner, 'up')], PENS.hair);
}

/** Slanted strokes between two borders, about as far apart as they are long. */
function hatch(outer: Box, inner: Box, way: 'across' | 'up'): [{ x: number; y: number }, { x: number; y: number }][] {
  const [from, to] = way === 'across' ? [inner.left, inner.right] : [inner.bottom, inner.top];
  const count = Math.floor((to - from) / (2 * BAND));
  const step = (to - from) / count;
  return Array.from({ length: count }, (_, index) => from + (index + 0.25) * step).flatMap((at) =>
    way === 'across'
      ? [
          [
            { x: at, y: outer.bottom },
            { x: at + BAND, y: inner.bottom },
          ],
          [
            { x: at, y: inner.top },
            { x: at + BAND, y: outer.top },
          ],
        ]
      : [
          [
            { x: outer.left, y: at },
            { x: inner.left, y: at + BAND },
          ],
          [
            { x: inner.right, y: at },
            { x: outer.right, y: at + BAND },
          ],
        ],
  );
}

function drawHeader(surface: Surface, box: Box, header: SheetHeader): void {
  const base = box.top - 7.5;
  const big = { size: 26, weight: 'bold' } as const;
  const title = { size: 12, weight: 'bold' } as const;
  const small = { size: 8.5 } as const;
  const word = header.word ?? header.view?.toUpperCase();
  if (word) surface.text(word, { x: box.left, y: base }, big);
  const left = box.left + (word ? surface.width(word, big) + 4 : 0);
  const right = box.right - Math.max(surface.width(header.page, title), surface.width(header.place, small)) - 4;
  surface.text(surface.fit(header.title, right - left, title), { x: left, y: base + 2 }, title);
  surface.text(surface.fit(header.under, right - left, small), { x: left, y: base - 2.6 }, small);
  surface.text(header.page, { x: box.right, y: base + 2 }, { ...title, align: 'right' });
  surface.text(header.place, { x: box.right, y: base - 2.6 }, { ...small, align: 'right' });
}

function drawBars(surface: Surface, sheet: SheetPlan, besideKey: boolean): void {
  const { footer, barStrip } = sheet;
  const lying = { x: footer.left, y: footer.bottom + 5 };
  drawCheckBar(surface, lying, 'across', BAR);
  drawCheckBar(surface, { x: barStrip.left, y: barStrip.bottom }, 'up', BAR);
  const left = lying.x + barRoom(BAR) + 4;
  const right = footer.right - (besideKey ? KEY_WIDTH + 3 : 0);
  const note = `Both bars must measure ${BAR.mm} mm and ${BAR.inches} in. If not, print at 100 × true ÷ measured\u00a0%.`;
  surface.paragraph(note, { x: left, y: lying.y + BAR_HEIGHT }, right - left, { size: 7 });
}

function drawKey(surface: Surface, footer: Box, key: MatDrawing, view: View | undefined): void {
  const room = { left: footer.right - KEY_WIDTH, right: footer.right - 13, bottom: footer.bottom, top: footer.top - 2 };
  const at = drawMat(surface, room, key)({ x: key.blank.width, y: 0 }).x + 2.5;
  surface.text('↑ top', { x: at, y: room.top - 2.5 }, { size: 7 });
  if (view) surface.text(view.toUpperCase(), { x: at, y: room.bottom + 1 }, { size: 7, weight: 'bold' });
}
