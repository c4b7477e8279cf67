/** Sheets that are cut in one way, so that they are drawn once. */
import type { PlannedSheet } from './plan';

export interface AlikeSheets {
  /** The first of them. */
  readonly sheet: PlannedSheet;
  /** Places in the plan, from 0, one after another. */
  readonly places: readonly number[];
}

/** In the order of the plan, where sheets that are alike follow one another. */
export function alikeSheets(sheets: readonly PlannedSheet[]): AlikeSheets[] {
  const found: { sheet: PlannedSheet; places: number[]; key: string }[] = [];
  sheets.forEach((sheet, place) => {
    const key = keyOf(sheet);
    const last = found.at(-1);
    if (last?.key === key) last.places.push(place);
    else found.push({ sheet, places: [place], key });
  });
  return found.map(({ sheet, places }) => ({ sheet, places }));
}

/** Numbers run on from sheet to sheet, so that they are counted from the sheet's first. */
function keyOf({ stock, pieces, left, steps }: PlannedSheet): string {
  const before = Math.min(...pieces.map(({ number }) => number)) - 1;
  const counted = (name: string) => (/^\d+$/.test(name) ? String(Number(name) - before) : name);
  return JSON.stringify([
    [stock.id, stock.kind, stock.width, stock.height],
    pieces.map(({ piece, box, turned, number }) => [piece.id, box, turned, number - before]),
    left,
    steps.map((step) => ({ ...step, gives: step.gives.map(counted), leaves: counted(step.leaves ?? '') })),
  ]);
}
