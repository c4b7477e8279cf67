/**
 * A sheet as a tree of edge-to-edge cuts. A cut parts a rectangle across or up into neighbours that fill it; whatever is
 * neither a piece nor cut further is free. Neighbours have no order until the plan is drawn, so that all that is free
 * between them is always one: there is at most one free part in a cut.
 */

/** 0: side by side, parted by upright cuts. 1: one above another. */
export type Way = 0 | 1;

/** Nothing of it is cut yet. */
export interface Free {
  readonly kind: 'free';
  readonly width: number;
  readonly height: number;
  /** What it is worth to have it in one part: see `worthOf`. */
  readonly worth: number;
}

export interface Leaf {
  readonly kind: 'piece';
  readonly width: number;
  readonly height: number;
  /** Into the pieces, each by itself. */
  readonly piece: number;
  readonly turned: boolean;
}

/** Its parts are changed in place while a sheet belongs to one try alone. */
export interface Cut {
  readonly kind: 'cut';
  readonly width: number;
  readonly height: number;
  readonly way: Way;
  parts: Tree[];
  /** Its parts keep their places: it parts pieces that the user has put there. */
  readonly inOrder?: true;
}

export type Tree = Free | Leaf | Cut;

/**
 * Area to the power 5/4, in parts of the largest sheet: one large remnant is worth more than two of half its size
 * (after Gardeyn and Wauters, 2022, whose power of 1.2 it is near to and quicker than).
 */
export function worthOf(area: number): number {
  return area * Math.sqrt(Math.sqrt(area));
}

/** Makes trees for sheets of which the largest has this area, and pieces of which none has a shorter side than `least`. */
export class Trees {
  constructor(
    private readonly largest: number,
    private readonly least: number,
  ) {}

  /** Nothing is worth what no piece can be cut from. */
  worth(width: number, height: number): number {
    if (width < this.least || height < this.least) return 0;
    return worthOf((width * height) / this.largest);
  }

  free(width: number, height: number): Free {
    return { kind: 'free', width, height, worth: this.worth(width, height) };
  }
}

export function worthFree(tree: Tree): number {
  if (tree.kind === 'free') return tree.worth;
  if (tree.kind === 'piece') return 0;
  let sum = 0;
  for (const part of tree.parts) sum += worthFree(part);
  return sum;
}

/** A copy whose cuts may be changed; what is free, and pieces, never change and are shared. */
export function copied(tree: Tree): Tree {
  return tree.kind === 'cut' ? { ...tree, parts: tree.parts.map(copied) } : tree;
}

/** Pieces and cuts, but for the whole. */
export function partsOf(tree: Tree, found: (Leaf | Cut)[] = []): (Leaf | Cut)[] {
  if (tree.kind === 'piece') found.push(tree);
  if (tree.kind !== 'cut') return found;
  for (const part of tree.parts) {
    if (part.kind === 'cut') found.push(part);
    partsOf(part, found);
  }
  return found;
}

export function piecesIn(tree: Tree, found: number[] = []): number[] {
  if (tree.kind === 'piece') found.push(tree.piece);
  else if (tree.kind === 'cut') for (const part of tree.parts) piecesIn(part, found);
  return found;
}

/** The tree with a part of it free again; undefined where it is none of its parts. Changes the tree. */
export function withoutPart(tree: Tree, part: Leaf | Cut, trees: Trees): Tree | undefined {
  if (tree === part) return trees.free(tree.width, tree.height);
  if (tree.kind !== 'cut') return undefined;
  for (const [index, inner] of tree.parts.entries()) {
    const without = withoutPart(inner, part, trees);
    if (!without) continue;
    tree.parts[index] = without;
    return joined(tree, trees);
  }
  return undefined;
}

/** The tree with one piece of it free again. */
export function withoutPiece(tree: Tree, piece: number, trees: Trees): Tree {
  const copy = copied(tree);
  const leaf = partsOf(copy).find((part) => part.kind === 'piece' && part.piece === piece);
  return (leaf && withoutPart(copy, leaf, trees)) ?? copy;
}

/** All that is free in a cut as one part; wholly free, the cut itself is not made. */
function joined(cut: Cut, trees: Trees): Tree {
  const first = cut.parts.findIndex(({ kind }) => kind === 'free');
  if (first < 0) return cut;
  let length = 0;
  const others: Tree[] = [];
  for (const part of cut.parts) {
    if (part.kind === 'free') length += cut.way === 0 ? part.width : part.height;
    else others.push(part);
  }
  if (others.length === 0) return trees.free(cut.width, cut.height);
  if (others.length < cut.parts.length - 1) {
    others.push(cut.way === 0 ? trees.free(length, cut.height) : trees.free(cut.width, length));
    cut.parts = others;
  }
  return cut;
}
