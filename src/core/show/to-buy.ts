/** The frames that a show needs: how many of each, what is there, what is to be ordered. */
import { money } from '../money';
import type { ShelfFrame } from '../shelf/shelf';
import type { Place, ToBuy } from './plan';

/** From the smallest; frames made to size are not of the shelf and not among them. */
export function framesToBuy(places: readonly Place[]): ToBuy[] {
  const needed = new Map<ShelfFrame, number>();
  for (const place of places) {
    if (place.state === 'framed' && place.frame) needed.set(place.frame, (needed.get(place.frame) ?? 0) + 1);
  }
  return [...needed]
    .sort(([a], [b]) => a.size.width * a.size.height - b.size.width * b.size.height || (a.name < b.name ? -1 : 1))
    .map(([frame, count]) => ({
      frame,
      needed: count,
      ...(frame.count === undefined ? {} : { there: frame.count }),
      toOrder: Math.max(0, count - (frame.count ?? 0)),
      ...(frame.price ? { price: { by: 'money' as const, amount: frame.price.amount.times(money(count)) } } : {}),
    }));
}
