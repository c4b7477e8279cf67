/** One label: what stands on it, in type as large as its longest names allow. */
import type { Box } from '../../core/geometry/box';
import { jobWords } from '../../core/sheets/job-words';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import type { PlacedPiece } from '../../core/sheets/plan';
import { labelFace } from '../../core/sheets/sheet-words';
import { sizeText, type Showing } from '../../core/units';
import { drawArrow } from '../paper/arrow';
import { capHeight } from '../paper/label';
import { paragraphHeight, type Surface } from '../paper/surface';
import type { Setting } from '../paper/text-blocks';
import { fractions, SMALLEST, type TextStyle } from '../paper/type';

export interface PieceLabel {
  readonly number: string;
  /** Below one another. */
  readonly lines: readonly { readonly words: string; readonly style: TextStyle }[];
}

const NUMBER = { size: 22, weight: 'bold' } as const;
const TOP = { size: 8, align: 'right' } as const;
/** Of the number with the arrow beside it, mm. */
const HEAD = capHeight(NUMBER.size) + 2;
const ARROW = 6;
/** Type is made smaller by these until all has room. */
const FACTORS = [1, 0.92, 0.84, 0.76, 0.68, 0.6];

/**
 * @param sheet number of the sheet in its board's plan.
 * @param jobs how many are planned together.
 */
export function pieceLabel(
  { board }: PlannedBoard,
  sheet: number,
  { piece, number }: PlacedPiece,
  jobs: number,
  showing: Showing,
): PieceLabel {
  const { from, id } = piece;
  const windows = (from?.windows ?? []).map(({ name }) => name);
  const layer = from?.layer === undefined || from.layers === undefined ? [] : [`layer ${from.layer} of ${from.layers}`];
  const cut = windows.length === 0 ? [] : [`${windows.length === 1 ? 'window' : 'windows'} ${windows.join(', ')}`];
  const about = [...layer, ...cut].join(' · ');
  const lines = [
    { words: from?.name ?? id, style: { size: 10, weight: 'bold' } as const },
    { words: from ? jobWords(from, jobs) : '', style: { size: 9 } },
    { words: `${fractions(sizeText(piece, showing))} · ${board}`, style: { size: 9 } },
    { words: about, style: { size: 8 } },
    { words: `sheet ${sheet} · ${labelFace(from?.kind)}`, style: { size: 8 } },
  ];
  return { number: String(number), lines: lines.filter(({ words }) => words !== '') };
}

/** Height that a label takes at the smallest type, mm. */
export function leastHeight(label: PieceLabel, setting: Setting): number {
  return heightAt(label, setting, FACTORS.at(-1) ?? 1);
}

export function drawPieceLabel(surface: Surface, label: PieceLabel, box: Box, setting: Setting): void {
  const room = box.top - box.bottom;
  const factor = FACTORS.find((each) => heightAt(label, setting, each) <= room) ?? FACTORS.at(-1) ?? 1;
  const base = box.top - capHeight(NUMBER.size);
  surface.text(label.number, { x: box.left, y: base }, NUMBER);
  drawArrow(surface, { x: box.right - 2, y: box.top }, ARROW, 'up');
  surface.text('top', { x: box.right - 4.5, y: box.top - ARROW / 2 - capHeight(TOP.size) / 2 }, TOP);
  let y = box.top - HEAD;
  for (const { words, style } of label.lines) {
    y -= surface.paragraph(words, { x: box.left, y }, setting.width, scaled(style, factor));
  }
}

function heightAt({ lines }: PieceLabel, { typesetter, width }: Setting, factor: number): number {
  return lines.reduce(
    (sum, { words, style }) => sum + paragraphHeight(typesetter, words, width, scaled(style, factor)),
    HEAD,
  );
}

function scaled(style: TextStyle, factor: number): TextStyle {
  return { ...style, size: Math.max(SMALLEST, style.size * factor) };
}
