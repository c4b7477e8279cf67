/** Labels side by side: each as near to its place as the others let it. */

/**
 * Places for labels that must lie `apart` from one another between two ends, in the order of what they are of.
 * Undefined where there is no room for all.
 */
export function spread(
  wanted: readonly number[],
  apart: number,
  [least, greatest]: readonly [number, number],
): readonly number[] | undefined {
  const count = wanted.length;
  if ((count - 1) * apart > greatest - least) return undefined;
  const places: number[] = [];
  wanted.forEach((at, index) => places.push(Math.max(at, least, (places[index - 1] ?? -Infinity) + apart)));
  for (let index = count - 1, most = greatest; index >= 0; index--, most -= apart) {
    most = Math.min(most, places[index] ?? most);
    places[index] = most;
  }
  return places;
}
