/** Brings a show's pictures and frames to the whole numbers that the search asks for, in an order that is always the same. */
import type { Candidates } from './candidates';
import type { ShowPicture } from './picture';
import type { Choosing } from './search/choosing';
import type { TriedPicture } from './try-pictures';

/** One picture to hang: of a row that counts several, one of them. */
export interface Piece {
  readonly tried: TriedPicture;
  /** From 1. */
  readonly copy: number;
}

export interface ShowChoosing extends Choosing {
  /** The pieces of each kind, in an order that does not ask where they stood in the list. */
  readonly pieces: readonly (readonly Piece[])[];
}

/** @param onShelfOnly true where no more frames are to be had than there are. */
export function choosingFor(
  tried: readonly TriedPicture[],
  { frames, sizes }: Candidates,
  onShelfOnly: boolean,
): ShowChoosing {
  const kinds = new Map<string, { readonly fits: readonly number[]; readonly pictures: TriedPicture[] }>();
  const parts = (index: number) => frames[index]?.parts ?? 0;
  for (const one of tried) {
    if (one.fits.size === 0) continue;
    const fits = [...one.fits.keys()].sort((a, b) => parts(a) - parts(b) || a - b);
    const key = fits.map((index) => String(index).padStart(5, '0')).join(' ');
    const kind = kinds.get(key);
    if (kind) kind.pictures.push(one);
    else kinds.set(key, { fits, pictures: [one] });
  }
  const sorted = [...kinds].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, kind]) => kind);
  const pieces = sorted.map(({ pictures }) => pictures.toSorted(byWhatItIs).flatMap(copiesOf));
  return {
    frames: frames.map((candidate, index) => ({
      size: candidate.size,
      cost: parts(index),
      count: onShelfOnly ? (candidate.frame.count ?? Infinity) : Infinity,
    })),
    sizes: sizes.length,
    kinds: sorted.map(({ fits }, index) => ({ fits, count: pieces[index]?.length ?? 0 })),
    pieces,
  };
}

export function copiesOf(tried: TriedPicture): Piece[] {
  return Array.from({ length: tried.picture.count }, (_, index) => ({ tried, copy: index + 1 }));
}

/** Pictures of which everything is the same may change places without anyone seeing it. */
function byWhatItIs(one: TriedPicture, other: TriedPicture): number {
  const [a, b] = [keyOf(one.picture), keyOf(other.picture)];
  return a === b ? one.picture.line - other.picture.line : a < b ? -1 : 1;
}

function keyOf({ title, sheet, image, overlap, wall, note }: ShowPicture): string {
  return JSON.stringify([title, sheet.width, sheet.height, image?.width, image?.height, overlap, wall, note]);
}
