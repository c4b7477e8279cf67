/** The least cost of few pieces, exactly: every way to part them by cuts from edge to edge is tried. */
import type { FieldPiece, FieldStock } from './field';

/** Of more pieces there are too many ways. */
const MOST_PIECES = 8;
/** Of counted sheets: ways in which they can be used up. */
const MOST_USES = 64;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Undefined where there are too many pieces or counted sheets to try all; Infinity where no sheets hold them. */
export function exactCost(pieces: readonly FieldPiece[], stock: readonly FieldStock[]): number | undefined {
  if (pieces.length > MOST_PIECES) return undefined;
  const kinds = stock
    .filter(({ count }) => count > 0)
    .map((one) => ({ ...one, most: Math.min(one.count, pieces.length) }));
  const counted = kinds.filter(({ most }) => most < pieces.length);
  const uses = counted.reduce((product, { most }) => product * (most + 1), 1);
  if (uses > MOST_USES) return undefined;
  const sizes = leastSizes(pieces, kinds);
  const all = sizes.length - 1;
  // Of each set of pieces and of counted sheets that are used up: what the rest has cost so far.
  const costs = Array.from({ length: sizes.length }, () => new Float64Array(uses).fill(Infinity));
  costs[0]![0] = 0;
  for (let done = 0; done < all; done++) {
    const row = costs[done]!;
    const rest = all ^ done;
    // The lowest piece that is left is on the next sheet, so that no order of sheets is tried twice.
    const lowest = rest & -rest;
    for (let some = rest; some > 0; some = (some - 1) & rest) {
      if ((some & lowest) === 0) continue;
      let scale = 1;
      for (const { width, height, cost, most } of kinds) {
        const isCounted = most < pieces.length;
        if (sizes[some]!.some((size) => size.width <= width && size.height <= height)) {
          for (let used = 0; used < uses; used++) {
            if (row[used] === Infinity || (isCounted && Math.floor(used / scale) % (most + 1) === most)) continue;
            const to = used + (isCounted ? scale : 0);
            const next = costs[done | some]!;
            next[to] = Math.min(next[to]!, row[used]! + cost);
          }
        }
        if (isCounted) scale *= most + 1;
      }
    }
  }
  return Math.min(...costs[all]!);
}

/** By sets of pieces (one bit each): the sizes that such a set can be cut from, none of which a smaller one would do for. */
function leastSizes(pieces: readonly FieldPiece[], kinds: readonly Size[]): readonly (readonly Size[])[] {
  const widest = Math.max(0, ...kinds.map(({ width }) => width));
  const highest = Math.max(0, ...kinds.map(({ height }) => height));
  const sets: Size[][] = [[]];
  for (let set = 1; set < 1 << pieces.length; set++) {
    const found: Size[] = [];
    const add = (width: number, height: number) => {
      if (width > widest || height > highest) return;
      if (found.some((one) => one.width <= width && one.height <= height)) return;
      for (let index = found.length - 1; index >= 0; index--) {
        if (found[index]!.width >= width && found[index]!.height >= height) found.splice(index, 1);
      }
      found.push({ width, height });
    };
    if ((set & (set - 1)) === 0) {
      const { width, height, mayTurn } = pieces[Math.log2(set)]!;
      add(width, height);
      if (mayTurn) add(height, width);
    }
    for (let one = (set - 1) & set; one > (set ^ one); one = (one - 1) & set) {
      for (const a of sets[one]!) {
        for (const b of sets[set ^ one]!) {
          add(a.width + b.width, Math.max(a.height, b.height));
          add(Math.max(a.width, b.width), a.height + b.height);
        }
      }
    }
    sets.push(found);
  }
  return sets;
}
