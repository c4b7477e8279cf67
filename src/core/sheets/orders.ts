/** Orders in which pieces are put into sheets. */
import type { Field } from './field';

/** Ranks of the pieces in orders that fill sheets well: by area, by the longer side, by width, by height; the largest first. */
export function ordersOf({ pieces }: Field): readonly Int32Array[] {
  const longer = (index: number) => Math.max(pieces[index]!.width, pieces[index]!.height);
  const keys: readonly ((index: number) => number)[] = [
    (index) => pieces[index]!.area,
    longer,
    (index) => pieces[index]!.width,
    (index) => pieces[index]!.height,
  ];
  return keys.map((key) => {
    const sorted = pieces
      .map((_, index) => index)
      .sort((a, b) => key(b) - key(a) || pieces[b]!.area - pieces[a]!.area || a - b);
    const ranks = new Int32Array(pieces.length);
    sorted.forEach((index, rank) => (ranks[index] = rank));
    return ranks;
  });
}
