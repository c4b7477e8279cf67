/** What the search for frame sizes is asked, in whole numbers: frames with their costs, and which pictures fit which. */

/** A frame of the shelf. */
export interface Stock {
  /** Which size it is of; frames of one size count as one choice. */
  readonly size: number;
  /** Of one picture in it, whichever picture it is: a whole number. */
  readonly cost: number;
  /** How many there are; `Infinity`: as many as are wanted. */
  readonly count: number;
}

/** Pictures that fit the very same frames. */
export interface Kind {
  /** How many pictures. */
  readonly count: number;
  /** Indices of the frames that take them, the cheapest first. */
  readonly fits: readonly number[];
}

export interface Choosing {
  readonly frames: readonly Stock[];
  /** How many sizes there are. */
  readonly sizes: number;
  readonly kinds: readonly Kind[];
}

/** What is wanted first is to hold as many pictures as can be, then to do it at the least cost. */
export interface Worth {
  /** Pictures that have a frame. */
  readonly held: number;
  readonly cost: number;
}

/** Sizes, ascending, and what they come to. */
export interface Chosen extends Worth {
  readonly sizes: readonly number[];
}

export function isBetter(one: Worth, other: Worth): boolean {
  return one.held > other.held || (one.held === other.held && one.cost < other.cost);
}

export function pictureCount({ kinds }: Choosing): number {
  return kinds.reduce((sum, { count }) => sum + count, 0);
}

/** True where some frame runs out before every picture that fits it has one. */
export function isLimited({ frames, kinds }: Choosing): boolean {
  const wanted = frames.map(() => 0);
  for (const { count, fits } of kinds) {
    for (const frame of fits) wanted[frame] = (wanted[frame] ?? 0) + count;
  }
  return frames.some(({ count }, frame) => count < (wanted[frame] ?? 0));
}

/** More than all pictures together can cost. */
export function beyondAllCosts({ frames, kinds }: Choosing): number {
  return kinds.reduce((sum, { count, fits }) => {
    const dearest = fits.reduce((most, frame) => Math.max(most, frames[frame]?.cost ?? 0), 0);
    return sum + count * dearest;
  }, 1);
}
