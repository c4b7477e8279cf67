/** A small generator of pseudorandom numbers (xorshift, Marsaglia 2003): the same seed gives the same row. */

export type Random = () => number;

/** Numbers from 0 up to, and never, 1. */
export function randomFrom(seed: number): Random {
  let state = seed ^ 0x9e3779b9 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 4294967296;
  };
}
