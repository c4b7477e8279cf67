/** Judges a plan of sticks by itself: every rail once, none past its stick, kerfs and rests that add up. */
import type { NamedRail, SticksPlan } from '../../../src/core/pieces/sticks';

/** Far below what a saw can cut, mm. */
const SLACK = 1e-3;

/** What is wrong, a sentence each. */
export function faultsOf(plan: SticksPlan, rails: readonly NamedRail[]): string[] {
  const keyOf = ({ frame, sides, length }: NamedRail) => `${frame} ${sides} ${length}`;
  const cut = plan.sticks.flatMap((stick) => stick.rails.map(keyOf)).sort();
  const wanted = rails.map(keyOf).sort();
  const faults: string[] = [];
  const shortest = Math.min(...rails.map(({ length }) => length)) + 2 * plan.kerf;
  if (cut.join('\n') !== wanted.join('\n')) faults.push('the rails cut are not the rails wanted');
  plan.sticks.forEach(({ rails: from, kerfs, rest, isKept }, index) => {
    const long = from.reduce((sum, { length }) => sum + length, 0);
    // A cut at either end of every rail.
    const saw = 2 * from.length * plan.kerf;
    if (from.length === 0) faults.push(`stick ${index} is not used`);
    if (long + saw > plan.stick + SLACK) faults.push(`stick ${index} is cut to ${long + saw} of ${plan.stick}`);
    if (Math.abs(kerfs - saw) > SLACK) faults.push(`stick ${index} says kerfs of ${kerfs}, not ${saw}`);
    if (Math.abs(long + saw + rest - plan.stick) > SLACK) faults.push(`stick ${index} does not add up`);
    if (Math.abs(rest - shortest) > SLACK && isKept !== rest > shortest) {
      faults.push(`stick ${index} with a rest of ${rest} says that it is ${isKept ? '' : 'not '}worth keeping`);
    }
  });
  const all = plan.rails + plan.kerfs + plan.ends + plan.kept;
  if (Math.abs(all - plan.stick * plan.sticks.length) > SLACK) faults.push('the whole does not add up');
  const rests = plan.sticks.map(({ rest, isKept }) => (isKept ? rest : 0));
  if (Math.abs(rests.reduce((sum, rest) => sum + rest, 0) - plan.kept) > SLACK) faults.push('not all that is kept is counted'); // prettier-ignore
  if (plan.cuts !== 2 * rails.length) faults.push('two cuts for each rail are not counted');
  if (plan.atLeast > plan.sticks.length) faults.push('the bound is above the plan');
  return faults;
}

/** The fewest sticks, by trying every stick for every length; for a handful of lengths. */
export function fewestByTrying(lengths: readonly number[], stick: number): number {
  const place = (index: number, rooms: readonly number[]): number => {
    const length = lengths[index];
    if (length === undefined) return rooms.length;
    const ways = rooms.flatMap((room, at) => (room >= length ? [place(index + 1, rooms.with(at, room - length))] : []));
    return Math.min(...ways, place(index + 1, [...rooms, stick - length]));
  };
  return place(0, []);
}
