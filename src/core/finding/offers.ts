/** Mouldings of the shelf from which a frame can be made for a job, and how much of each it takes. */
import type { Job } from '../job/job';
import { layOut } from '../layout/lay-out';
import type { Layout } from '../layout/layout';
import { priceOfLength, type Money } from '../money';
import { ofKind, type Moulding, type Shelf } from '../shelf/shelf';
import { fitOf } from '../package/fit';
import { stackOf } from '../package/stack';
import { frameToFit, packageIn } from './job-in-frame';

/** A moulding from which a frame is made. */
export interface Offer {
  readonly moulding: Moulding;
  /** Length of moulding that it takes, mm: 2 x (width + height of the rabbet) + 8 x (moulding width - lip). */
  readonly length: number;
  readonly amount?: Money;
  /** False where its rabbet is known to be too shallow as all is named. */
  readonly isDeepEnough: boolean;
}

/** Of those that are there the deep enough and cheapest first; prices not known come last. */
export function offersFor(job: Job, shelf: Shelf): Offer[] {
  const there = ofKind(shelf, 'moulding').filter(({ count }) => count !== 0);
  const offers = there.flatMap((moulding): Offer[] => {
    const made = withMoulding(job, moulding);
    const laid = layOut(made);
    if (!laid.ok) return [];
    const length = stickLength(laid.value);
    const amount = moulding.price && priceOfLength(moulding.price, length);
    return [
      {
        moulding,
        length,
        ...(amount ? { amount } : {}),
        isDeepEnough: fitOf(made, stackOf(made, laid.value)).verdict !== 'does not fit',
      },
    ];
  });
  return offers.toSorted(
    (a, b) =>
      Number(b.isDeepEnough) - Number(a.isDeepEnough) ||
      Number(a.amount === undefined) - Number(b.amount === undefined) ||
      (a.amount && b.amount ? a.amount.cmp(b.amount) : 0) ||
      (a.moulding.name < b.moulding.name ? -1 : 1),
  );
}

export function withMoulding(job: Job, moulding: Moulding): Job {
  const { blank } = job.frame;
  const frame = { ...frameToFit(job, moulding), ...(blank ? { blank } : {}) };
  return { ...job, frame, package: packageIn(job, frame) };
}

/** The whole stick round the rabbet, with what the mitres take: 2 x (w + h) + 8 x (moulding width - lip), mm. */
export function stickLength({ frame: { rabbet, mouldingWidth, lip } }: Layout): number {
  return 2 * (rabbet.width + rabbet.height) + 8 * (mouldingWidth - lip);
}

export function mouldingPrice(offer: Offer | undefined) {
  if (!offer) return { why: 'no moulding on the shelf' };
  const { moulding, amount } = offer;
  return amount ? { name: moulding.name, amount } : { name: moulding.name, why: 'no price on the shelf' };
}
