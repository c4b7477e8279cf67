/** The best plan of few pieces, exactly: every way to part them by cuts from edge to edge is tried. */
import type { Found } from './climb';
import { cutOf, type Tree, type Trees, type Way } from './cut-tree';
import type { Field, FieldPiece, FieldStock } from './field';
import { OpenSheet } from './open-sheet';
import { gathered } from './tighten';

/** Of more pieces there are too many ways. */
const MOST_PIECES = 8;
/** Of counted sheets: ways in which they can be used up. */
const MOST_USES = 64;

/** A size that some pieces can be cut from, and how: one piece, or two such sizes side by side. */
interface Block {
  readonly width: number;
  readonly height: number;
  readonly made:
    | { readonly piece: number; readonly turned: boolean }
    | { readonly way: Way; readonly parts: readonly [Block, Block] };
}

interface Kind extends FieldStock {
  readonly stock: number;
  /** As many as could be of use. */
  readonly most: number;
}

/** What is cut so far, and its last sheet. */
interface Reached {
  readonly cost: number;
  readonly from?: Reached;
  readonly stock?: number;
  readonly block?: Block;
}

/**
 * Undefined where there are too many pieces or counted sheets to try all, or no sheets hold them. Changes of direction and long
 * cuts are not counted: with such limits the cost is a bound, and the plan may not be one.
 */
export function exactPlan({ pieces, stock, trees }: Field): Found | undefined {
  if (pieces.length > MOST_PIECES) return undefined;
  const kinds = stock.flatMap((one, index): Kind[] =>
    one.count > 0 ? [{ ...one, stock: index, most: Math.min(one.count, pieces.length) }] : [],
  );
  const uses = kinds.reduce((product, kind) => product * (isCounted(kind, pieces) ? kind.most + 1 : 1), 1);
  if (uses > MOST_USES) return undefined;
  const best = cheapest(pieces, kinds, blocksOf(pieces, kinds), uses);
  return best && { cost: best.cost, sheets: sheetsOf(best, stock, trees) };
}

function isCounted({ most }: Kind, pieces: readonly FieldPiece[]): boolean {
  return most < pieces.length;
}

function cheapest(
  pieces: readonly FieldPiece[],
  kinds: readonly Kind[],
  blocks: readonly (readonly Block[])[],
  uses: number,
): Reached | undefined {
  const all = blocks.length - 1;
  // Of each set of pieces and of counted sheets that are used up.
  const reached = Array.from({ length: blocks.length }, () => new Array<Reached | undefined>(uses).fill(undefined));
  reached[0]![0] = { cost: 0 };
  for (let done = 0; done < all; done++) {
    const rest = all ^ done;
    // The lowest piece that is left is on the next sheet, so that no order of sheets is tried twice.
    const lowest = rest & -rest;
    for (let some = rest; some > 0; some = (some - 1) & rest) {
      if ((some & lowest) === 0) continue;
      let scale = 1;
      for (const kind of kinds) {
        const step = isCounted(kind, pieces) ? scale : 0;
        const block = blocks[some]!.find((one) => one.width <= kind.width && one.height <= kind.height);
        for (let used = 0; block && used < uses; used++) {
          const from = reached[done]![used];
          if (!from || (step > 0 && Math.floor(used / scale) % (kind.most + 1) === kind.most)) continue;
          const cost = from.cost + kind.cost;
          const known = reached[done | some]![used + step];
          if (!known || cost < known.cost)
            reached[done | some]![used + step] = { cost, from, stock: kind.stock, block };
        }
        if (step > 0) scale *= kind.most + 1;
      }
    }
  }
  const ends = reached[all]!.filter((one) => one !== undefined);
  return ends.length === 0 ? undefined : ends.reduce((a, b) => (b.cost < a.cost ? b : a));
}

function sheetsOf(end: Reached, stock: readonly FieldStock[], trees: Trees): OpenSheet[] {
  const sheets: OpenSheet[] = [];
  for (let at: Reached | undefined = end; at?.block && at.stock !== undefined; at = at.from) {
    const { width, height, depth } = stock[at.stock]!;
    sheets.push(new OpenSheet(at.stock, laid(at.block, width, height, trees), depth));
  }
  return sheets;
}

/** The pieces of a block in a part that is as large or larger; what is left lies beside and above them. */
function laid({ width, height, made }: Block, wide: number, high: number, trees: Trees): Tree {
  if ('way' in made) {
    const parts = made.parts.map((part) => (made.way === 0 ? laid(part, part.width, high, trees) : laid(part, wide, part.height, trees))); // prettier-ignore
    return gathered({ way: made.way, width: wide, height: high }, parts, trees);
  }
  const leaf: Tree = { kind: 'piece', width, height, ...made };
  const column = high > height ? cutOf(1, width, high, [leaf, trees.free(width, high - height)]) : leaf;
  return wide > width ? cutOf(0, wide, high, [column, trees.free(wide - width, high)]) : column;
}

/** By sets of pieces (one bit each): the sizes that such a set can be cut from, none of which a smaller one would do for. */
function blocksOf(pieces: readonly FieldPiece[], kinds: readonly Kind[]): readonly (readonly Block[])[] {
  const widest = Math.max(0, ...kinds.map(({ width }) => width));
  const highest = Math.max(0, ...kinds.map(({ height }) => height));
  const sets: Block[][] = [[]];
  for (let set = 1; set < 1 << pieces.length; set++) {
    const found: Block[] = [];
    const add = (width: number, height: number, made: () => Block['made']) => {
      if (width > widest || height > highest) return;
      if (found.some((one) => one.width <= width && one.height <= height)) return;
      for (let index = found.length - 1; index >= 0; index--) {
        if (found[index]!.width >= width && found[index]!.height >= height) found.splice(index, 1);
      }
      found.push({ width, height, made: made() });
    };
    if ((set & (set - 1)) === 0) {
      const piece = Math.log2(set);
      const { width, height, mayTurn } = pieces[piece]!;
      add(width, height, () => ({ piece, turned: false }));
      if (mayTurn) add(height, width, () => ({ piece, turned: true }));
    }
    for (let one = (set - 1) & set; one > (set ^ one); one = (one - 1) & set) {
      for (const a of sets[one]!) {
        for (const b of sets[set ^ one]!) {
          add(a.width + b.width, Math.max(a.height, b.height), () => ({ way: 0, parts: [a, b] }));
          add(Math.max(a.width, b.width), a.height + b.height, () => ({ way: 1, parts: [a, b] }));
        }
      }
    }
    sets.push(found);
  }
  return sets;
}
