/** Borders in a few words. */
import type { PerSide } from '../geometry/box';
import type { Show } from '../layout/show';
import { SAME } from '../layout/solve-borders';

/** `2 1/8 in all round`, or as many of the sides as differ. */
export function bordersText({ left, top, right, bottom }: PerSide, { length }: Show): string {
  const same = (one: number, other: number) => Math.abs(one - other) <= SAME;
  const across = same(left, right) ? `${length(left)} at the sides` : `${length(left)} left, ${length(right)} right`;
  const up = same(top, bottom) ? `${length(top)} at top and bottom` : `${length(top)} at the top, ${length(bottom)} at the bottom`; // prettier-ignore
  return same(left, right) && same(top, bottom) && same(left, top) ? `${length(left)} all round` : `${across}, ${up}`;
}
