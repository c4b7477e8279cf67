/** What is free in the sheets of a plan, and how much of it is worth keeping. */
import type { Found } from './climb';
import type { Tree } from './cut-tree';
import type { Field } from './field';
import { toMm } from './grid';
import { keepingOf } from './remnants';

/** In grid units, without the kerf that is added in trees. */
export interface FreePart {
  readonly width: number;
  readonly height: number;
  readonly area: number;
  /** The area where it is kept; of what is thrown away next to nothing. */
  readonly kept: number;
  /** Of the stock. */
  readonly stock: number;
}

/** What is thrown away counts between plans that keep as much. */
const WASTE = 1e-3;

export function freeParts({ sheets }: Found, field: Field): FreePart[] {
  return sheets.flatMap(({ stock, tree }) => freeIn(tree, stock, field, []));
}

function freeIn(tree: Tree, stock: number, field: Field, found: FreePart[]): FreePart[] {
  if (tree.kind === 'cut') for (const part of tree.parts) freeIn(part, stock, field, found);
  if (tree.kind === 'free') {
    const [width, height] = [tree.width - field.saw, tree.height - field.saw];
    if (width > 0 && height > 0) found.push(partOf(width, height, stock, field));
  }
  return found;
}

export function partOf(width: number, height: number, stock: number, { keep }: Field): FreePart {
  const area = width * height;
  const keeping = keepingOf({ left: 0, bottom: 0, right: toMm(width), top: toMm(height) }, keep);
  return { width, height, area, kept: keeping === 'waste' ? area * WASTE : area, stock };
}
