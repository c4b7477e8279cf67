/** What laying out a job comes to: the layout with its problems and its sums. */
import { bad, good, isError, type Problem, type Result } from '../problem';
import type { Derivation, Layout, PlacedLayout } from './layout';

/** A layout, or what keeps it from being cut; then with where everything would lie, as far as that can be said. */
export type Laid = Result<Layout> & { readonly sketch?: Layout };

/** @param derive works out the sums, which are asked for seldom. */
export function laid(placed: PlacedLayout, problems: readonly Problem[], derive: () => Derivation[]): Laid {
  let sums: readonly Derivation[] | undefined;
  const layout: Layout = {
    ...placed,
    problems,
    // Worked out when someone asks: a drag lays out sixty times a second, and nobody reads sums meanwhile.
    get derivations() {
      return (sums ??= derive());
    },
  };
  return problems.some(isError) ? { ...bad<Layout>(problems), sketch: layout } : good(layout, problems);
}
