/** The order in which sheets are cut: sheets that are alike one after another, and no window's fallout before its mat. */
import type { SheetsAsk } from './ask';
import type { PlannedSheet } from './plan';

/** With the pieces numbered through, as they come off. */
export function inCuttingOrder(
  { pieces: wanted }: SheetsAsk,
  sheets: readonly PlannedSheet[],
): readonly PlannedSheet[] {
  const likeness = new Map(sheets.map((sheet) => [sheet, likenessOf(sheet)]));
  const order = [...new Set(likeness.values())];
  const waiting = sheets.toSorted(
    (a, b) => rank(a) - rank(b) || order.indexOf(likeness.get(a)!) - order.indexOf(likeness.get(b)!),
  );
  /** How many of each piece are cut, and how many of each stock are taken. */
  const cut = new Map<unknown, number>();
  const done: PlannedSheet[] = [];
  let number = 0;
  while (waiting.length > 0) {
    const isThere = ({ stock }: PlannedSheet) =>
      stock.window === undefined || (cut.get(wanted[stock.window.piece]) ?? 0) > (cut.get(stock) ?? 0);
    // A window is smaller than its mat, so that no two sheets can wait for one another.
    const at = waiting.findIndex(isThere);
    const [next] = waiting.splice(Math.max(0, at), 1);
    if (!next) break;
    const before = number;
    const pieces = next.pieces.map((one) => ({ ...one, number: before + one.number }));
    const named = (name: string) => (/^\d+$/.test(name) ? String(before + Number(name)) : name);
    const steps = next.steps.map((step) => ({
      ...step,
      gives: step.gives.map(named),
      ...(step.leaves === undefined ? {} : { leaves: named(step.leaves) }),
    }));
    number += pieces.length;
    for (const one of [next.stock, ...pieces.map(({ piece }) => piece)]) cut.set(one, (cut.get(one) ?? 0) + 1);
    done.push({ ...next, pieces, steps });
  }
  return done;
}

/** New sheets, then remnants, then what falls out of windows, which is soonest there when the rest is cut. */
function rank({ stock: { kind } }: PlannedSheet): number {
  return kind === 'sheet' ? 0 : kind === 'remnant' ? 1 : 2;
}

/** The same of sheets that are cut in one way. */
function likenessOf({ stock, steps }: PlannedSheet): string {
  return [stock.id, ...steps.map(({ of, way, setting, times }) => `${of} ${way} ${setting} ${times}`)].join('|');
}
