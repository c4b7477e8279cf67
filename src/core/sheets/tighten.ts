/** Gives what a part of a sheet has too much of to what is free beside it, so that small gaps become one larger remnant. */
import { cutOf, type Cut, type Tree, type Trees, type Way } from './cut-tree';

/** The tree with every cut's parts as small as their pieces allow, from the sheet down. */
export function tightened(tree: Tree, trees: Trees): Tree {
  // Where parts keep their places, so do the cuts between them.
  if (tree.kind !== 'cut' || tree.inOrder) return tree;
  const parts = tree.parts.flatMap((part) =>
    part.kind === 'free' ? [] : [tightened(shrunk(part, tree.way, neededBy(part, tree.way), trees), trees)],
  );
  return gathered(tree, parts, trees);
}

/** A cut of these parts and of what they leave free; cuts of one way in one another are one. */
export function gathered(
  { way, width, height }: Pick<Cut, 'way' | 'width' | 'height'>,
  parts: readonly Tree[],
  trees: Trees,
): Tree {
  const flat = parts.flatMap((part) =>
    part.kind === 'cut' && part.way === way && !part.inOrder ? part.parts : [part],
  );
  const held = flat.filter(({ kind }) => kind !== 'free');
  const rest = (way === 0 ? width : height) - held.reduce((sum, part) => sum + sizeOf(part, way), 0);
  const [only] = held;
  if (only && held.length === 1 && rest === 0) return only;
  const free = rest > 0 ? [way === 0 ? trees.free(rest, height) : trees.free(width, rest)] : [];
  return cutOf(way, width, height, [...held, ...free]);
}

function sizeOf({ width, height }: Tree, way: Way): number {
  return way === 0 ? width : height;
}

/** The least size along a way that its pieces have room in. */
function neededBy(tree: Tree, way: Way): number {
  if (tree.kind === 'piece') return sizeOf(tree, way);
  if (tree.kind === 'free') return 0;
  if (tree.inOrder) return sizeOf(tree, way);
  const needs = tree.parts.map((part) => neededBy(part, way));
  return tree.way === way ? needs.reduce((sum, need) => sum + need, 0) : Math.max(...needs);
}

/** The part with a smaller size along a way, which its pieces have room in. */
function shrunk(tree: Tree, way: Way, size: number, trees: Trees): Tree {
  if (sizeOf(tree, way) === size) return tree;
  const across = sizeOf(tree, way === 0 ? 1 : 0);
  if (tree.kind !== 'cut') return way === 0 ? trees.free(size, across) : trees.free(across, size);
  const sized: Cut = { ...tree, ...(way === 0 ? { width: size } : { height: size }) };
  const parts = tree.parts.flatMap((part) => {
    if (tree.way !== way) return [part.kind === 'piece' ? part : shrunk(part, way, size, trees)];
    return part.kind === 'free' ? [] : [shrunk(part, way, neededBy(part, way), trees)];
  });
  return tree.way === way ? gathered(sized, parts, trees) : cutOf(tree.way, sized.width, sized.height, parts);
}
