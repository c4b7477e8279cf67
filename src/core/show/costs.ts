/** What the search for frame sizes adds up: money where the shelf says prices, else how large the frames are; never both. */
import type { Job } from '../job/job';
import { inParts, ofParts, roundedText, type Money } from '../money';
import { bad, good, type Result } from '../problem';
import type { Shelf, ShelfFrame } from '../shelf/shelf';
import { showLength, type Showing } from '../units';
import { pricesOf } from './prices';

/** An amount of money, or the frames' widths and heights added up, mm, which is no money. */
export type Cost = { readonly by: 'money'; readonly amount: Money } | { readonly by: 'size'; readonly length: number };

export interface Costs {
  readonly by: Cost['by'];
  /** Beside the frames, in money: what is counted, and what the shelf says no price of. */
  readonly counted: readonly string[];
  readonly notCounted: readonly string[];
  /** Of one picture in a frame, in whole parts; or why it can't be counted. */
  partsOf(frame: ShelfFrame): number | { readonly why: string };
  costOf(parts: number): Cost;
}

/** Parts of a millimetre: finer than any frame is measured. */
const MM_PARTS = 1e5;
/** Decimals of money that are added up: as many as sums of whole numbers have room for. */
const MOST_PLACES = 6;
const LEAST_PLACES = 2;

/**
 * By money where any frame has a price, unless sizes are asked for. What is not a whole part, such as a third of a sheet's
 * price, is rounded half up to a millionth for each picture (to less where amounts are so large that sums would not be exact).
 *
 * @param pictures how many there are to add up.
 */
export function costsOf(shelf: Shelf, job: Job, pictures: number, wanted?: Cost['by']): Result<Costs> {
  const frames = shelf.filter((item): item is ShelfFrame => item.kind === 'frame');
  const by = wanted ?? (frames.some(({ price }) => price) ? 'money' : 'size');
  return by === 'size' ? good(bySize()) : byMoney(shelf, frames, job, pictures);
}

function bySize(): Costs {
  return {
    by: 'size',
    counted: [],
    notCounted: [],
    partsOf: ({ size }) => Math.round((size.width + size.height) * MM_PARTS),
    costOf: (parts) => ({ by: 'size', length: parts / MM_PARTS }),
  };
}

function byMoney(shelf: Shelf, frames: readonly ShelfFrame[], job: Job, pictures: number): Result<Costs> {
  const prices = pricesOf(shelf, job);
  const dearest = frames.reduce((most, frame) => {
    const price = prices.of(frame);
    return price.ok ? Math.max(most, price.amount.toNumber()) : most;
  }, 0);
  const places = placesFor(dearest, pictures);
  if (places < LEAST_PLACES) {
    return bad([
      {
        code: 'price-too-large',
        severity: 'error',
        at: 'price',
        message: `A frame with its mat costs ${dearest.toFixed(0)}, too much for ${pictures} of them to be added up exactly; write prices in a larger unit.`,
      },
    ]);
  }
  return good({
    by: 'money',
    counted: prices.counted,
    notCounted: prices.notCounted,
    partsOf: (frame) => {
      const price = prices.of(frame);
      return price.ok ? inParts(price.amount, places) : { why: price.why };
    },
    costOf: (parts) => ({ by: 'money', amount: ofParts(parts, places) }),
  });
}

/** The search counts up to the square of the pictures times the dearest frame. */
function placesFor(dearest: number, pictures: number): number {
  let places = MOST_PLACES;
  while (places > 0 && (dearest * 10 ** places + 1) * (pictures + 1) ** 2 > Number.MAX_SAFE_INTEGER) places -= 1;
  return places;
}

/** `482.50`, or `425 in of width and height`. */
export function costText(cost: Cost, showing: Showing): string {
  return cost.by === 'money' ? roundedText(cost.amount) : showLength(cost.length, showing).withUnit;
}
