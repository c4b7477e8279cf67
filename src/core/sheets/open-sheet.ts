/** A sheet in the search: its tree, which of the stock it is of, and what is free in it. */
import { cutOf, withPart, worthFree, type Cut, type Free, type Leaf, type Tree, type Trees } from './cut-tree';

/** A free part with the cut that it is a part of, and how many changes of direction lie before it. */
export interface Spot {
  readonly free: Free;
  readonly parent: Cut | undefined;
  readonly depth: number;
}

/** How a piece goes into a spot: which way round, and which of its two cuts is made first. */
export interface Placing {
  readonly piece: number;
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
  /** True: the cut along the piece's upright side runs through the whole spot. */
  readonly uprightFirst: boolean;
}

export class OpenSheet {
  #spots: readonly Spot[] | undefined;
  #worth: number | undefined;
  /** The longest side of any spot, and the longest of their shorter sides. */
  #longest = 0;
  #broadest = 0;

  constructor(
    /** Into the stock. */
    readonly stock: number,
    public tree: Tree,
    /** Changes of direction that it took to have it in hand. */
    private readonly depth = 0,
  ) {}

  get isEmpty(): boolean {
    return this.tree.kind === 'free';
  }

  /** Free parts, in the order of the tree. */
  get spots(): readonly Spot[] {
    this.#spots ??= spotsIn(this.tree, undefined, this.depth, []);
    return this.#spots;
  }

  /** False where the piece is larger than any spot: asked of every sheet for every piece. */
  mayTake(longer: number, shorter: number): boolean {
    if (this.#longest === 0) this.#measure();
    return longer <= this.#longest && shorter <= this.#broadest;
  }

  #measure(): void {
    this.#longest = 0;
    this.#broadest = 0;
    for (const { free } of this.spots) {
      const [shorter, longer] = free.width < free.height ? [free.width, free.height] : [free.height, free.width];
      if (longer > this.#longest) this.#longest = longer;
      if (shorter > this.#broadest) this.#broadest = shorter;
    }
  }

  get worth(): number {
    this.#worth ??= worthFree(this.tree);
    return this.#worth;
  }

  /** One that may be changed without changing this. */
  copy(): OpenSheet {
    return new OpenSheet(this.stock, this.tree, this.depth);
  }

  /** Puts another tree in its place. */
  set(tree: Tree): void {
    this.tree = tree;
    this.#forget();
  }

  /** Cuts a piece out of a spot of this sheet. */
  place({ free }: Spot, placing: Placing, trees: Trees): void {
    this.set(withPart(this.tree, free, cutOut(free, placing, trees)) ?? this.tree);
  }

  #forget(): void {
    this.#spots = undefined;
    this.#worth = undefined;
    this.#longest = 0;
  }
}

function spotsIn(tree: Tree, parent: Cut | undefined, depth: number, found: Spot[]): Spot[] {
  if (tree.kind === 'free') found.push({ free: tree, parent, depth });
  else if (tree.kind === 'cut') for (const part of tree.parts) spotsIn(part, tree, depth + 1, found);
  return found;
}

/** The piece with what is left of the spot beside and above it. */
function cutOut(free: Free, placing: Placing, trees: Trees): Leaf | Cut {
  const { piece, width, height, turned, uprightFirst } = placing;
  const leaf: Leaf = { kind: 'piece', width, height, piece, turned };
  const [beside, above] = [free.width - width, free.height - height];
  if (beside === 0 && above === 0) return leaf;
  if (above === 0) return cutOf(0, free.width, free.height, [leaf, trees.free(beside, height)]);
  if (beside === 0) return cutOf(1, free.width, free.height, [leaf, trees.free(width, above)]);
  return uprightFirst
    ? cutOf(0, free.width, free.height, [
        cutOf(1, width, free.height, [leaf, trees.free(width, above)]),
        trees.free(beside, free.height),
      ])
    : cutOf(1, free.width, free.height, [
        cutOf(0, free.width, height, [leaf, trees.free(beside, height)]),
        trees.free(free.width, above),
      ]);
}
