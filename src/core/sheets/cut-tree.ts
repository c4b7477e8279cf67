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

/** Never changed: what is done to a part makes new cuts above it, and shares all the rest. */
export interface Cut {
  readonly kind: 'cut';
  readonly width: number;
  readonly height: number;
  readonly way: Way;
  readonly parts: readonly Tree[];
  /** How many pieces and cuts lie in it, itself not counted. */
  readonly inside: number;
  /** Of all that is free in it. */
  readonly worth: number;
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

/** @param inOrder true where the parts keep their places. */
export function cutOf(way: Way, width: number, height: number, parts: readonly Tree[], inOrder?: true): Cut {
  let [inside, worth] = [0, 0];
  for (const part of parts) {
    if (part.kind === 'free') worth += part.worth;
    else if (part.kind === 'piece') inside += 1;
    else {
      inside += 1 + part.inside;
      worth += part.worth;
    }
  }
  const cut: Cut = { kind: 'cut', width, height, way, parts, inside, worth };
  return inOrder ? { ...cut, inOrder } : cut;
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
  return tree.kind === 'piece' ? 0 : tree.worth;
}

/** How many pieces and cuts there are, but for the whole where it is a cut. */
export function countParts(tree: Tree): number {
  return tree.kind === 'cut' ? tree.inside : Number(tree.kind === 'piece');
}

/** One of them, by its place; what it is asked for has to be less than there are. */
export function partAt(tree: Tree, place: number): Leaf | Cut | undefined {
  if (tree.kind !== 'cut') return tree.kind === 'piece' ? tree : undefined;
  let before = 0;
  for (const part of tree.parts) {
    if (part.kind === 'free') continue;
    if (before === place) return part;
    before += 1;
    if (part.kind === 'piece') continue;
    if (place < before + part.inside) return partAt(part, place - before);
    before += part.inside;
  }
  return undefined;
}

export function piecesIn(tree: Tree, found: number[] = []): number[] {
  if (tree.kind === 'piece') found.push(tree.piece);
  else if (tree.kind === 'cut') for (const part of tree.parts) piecesIn(part, found);
  return found;
}

/** The tree with a part of it free again; undefined where it is none of its parts. */
export function withoutPart(tree: Tree, part: Leaf | Cut, trees: Trees): Tree | undefined {
  if (tree === part) return trees.free(tree.width, tree.height);
  if (tree.kind !== 'cut') return undefined;
  for (let index = 0; index < tree.parts.length; index++) {
    const without = withoutPart(tree.parts[index]!, part, trees);
    if (without) return joined(tree, index, without, trees);
  }
  return undefined;
}

/** The tree with one piece of it free again. */
export function withoutPiece(tree: Tree, piece: number, trees: Trees): Tree {
  const leaf = leafOf(tree, piece);
  return (leaf && withoutPart(tree, leaf, trees)) ?? tree;
}

function leafOf(tree: Tree, piece: number): Leaf | undefined {
  if (tree.kind === 'piece') return tree.piece === piece ? tree : undefined;
  if (tree.kind === 'free') return undefined;
  for (const part of tree.parts) {
    const found = leafOf(part, piece);
    if (found) return found;
  }
  return undefined;
}

/** The tree with something else in place of a free part of it; cuts of one way in one another are one. */
export function withPart(tree: Tree, free: Free, made: Leaf | Cut): Tree | undefined {
  if (tree === free) return made;
  if (tree.kind !== 'cut') return undefined;
  for (let index = 0; index < tree.parts.length; index++) {
    const inner = withPart(tree.parts[index]!, free, made);
    if (!inner) continue;
    const parts = [...tree.parts];
    if (inner.kind === 'cut' && inner.way === tree.way) parts.splice(index, 1, ...inner.parts);
    else parts[index] = inner;
    return cutOf(tree.way, tree.width, tree.height, parts);
  }
  return undefined;
}

/** The cut with another part in one place, and all that is free in it as one; wholly free, it is not made. */
function joined(cut: Cut, index: number, part: Tree, trees: Trees): Tree {
  const { width, height, way } = cut;
  if (part.kind !== 'free') {
    const parts = [...cut.parts];
    parts[index] = part;
    return cutOf(way, width, height, parts);
  }
  let length = way === 0 ? part.width : part.height;
  const parts: Tree[] = [];
  for (let other = 0; other < cut.parts.length; other++) {
    const one = cut.parts[other]!;
    if (other === index) continue;
    if (one.kind === 'free') length += way === 0 ? one.width : one.height;
    else parts.push(one);
  }
  if (parts.length === 0) return trees.free(width, height);
  parts.push(way === 0 ? trees.free(length, height) : trees.free(width, length));
  return cutOf(way, width, height, parts);
}
