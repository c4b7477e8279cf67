/** What steps cost: by how much they change what the pieces of the job cost from the shelf; all else is not counted. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { GlazingMaterial } from '../job/package';
import { NO_MONEY, priceOfArea, roundedText, type Money } from '../money';
import { listed, uncapital } from '../phrases';
import type { CostLine, Costs } from '../pieces/cost';
import { jobCosts } from '../pieces/job-costs';
import { ofKind, type ShelfBoard, type ShelfGlazing } from '../shelf/shelf';
import type { Cost, Step, Taken } from './judgement';
import type { Subject } from './subject';

export const NOTHING_TO_PAY: Cost = { amount: NO_MONEY, words: 'nothing to pay' };

export function notCounted(why: string): Cost {
  return { words: `not counted: ${why}` };
}

const NO_SHELF = notCounted('no shelf is given to price it by');

/** The cheapest board that does for this size; or else why none is counted. */
export function cheapestBoard(
  { shelf, layout }: Subject,
  does: (board: ShelfBoard) => boolean,
): ShelfBoard | { readonly cost: Cost } {
  if (shelf.length === 0) return { cost: NO_SHELF };
  const found = cheapest(ofKind(shelf, 'board').filter(does), layout.frame.blank);
  return found ?? { cost: notCounted('no board on the shelf that is known to do has a price for this size') };
}

/** What the shelf's board of that name is; undefined where it has none. */
export function boardNamed({ shelf }: Subject, name: string): ShelfBoard | undefined {
  return ofKind(shelf, 'board').find((board) => sameName(board.name, name));
}

export interface WantedGlazing {
  readonly material: GlazingMaterial;
  readonly uvFilter: boolean;
}

/** The cheapest glazing of a kind for this size; or else why none is counted. */
export function cheapestGlazing(
  { shelf, layout, job }: Subject,
  { material, uvFilter }: WantedGlazing,
): ShelfGlazing | { readonly cost: Cost } {
  if (shelf.length === 0) return { cost: NO_SHELF };
  if (job.frame.comesWith.includes('glazing')) return { cost: notCounted('the frame comes with glazing of its own') };
  const such = ofKind(shelf, 'glazing').filter((one) => one.material === material && one.uvFilter === uvFilter);
  return cheapest(such, layout.frame.blank) ?? { cost: notCounted('no such glazing on the shelf has a price for this size') }; // prettier-ignore
}

function cheapest<T extends ShelfBoard | ShelfGlazing>(items: readonly T[], blank: Size): T | undefined {
  return items
    .flatMap((item) => {
      const price = priceFor(item, blank);
      return price ? [{ item, price }] : [];
    })
    .reduce<{ item: T; price: Money } | undefined>(
      (best, one) => (best && best.price.lte(one.price) ? best : one),
      undefined,
    )?.item;
}

/** Of one piece of the blank's size: its area's worth, or the sheet it is cut from; undefined where the sheet can't hold it. */
function priceFor({ price, size }: ShelfBoard | ShelfGlazing, blank: Size): Money | undefined {
  if (!price || (size && !holds(size, blank))) return undefined;
  if (price.per === 'sheet') return size && price.amount;
  return priceOfArea(price, blank.width * blank.height);
}

function holds(sheet: Size, blank: Size): boolean {
  const upright = sheet.width >= blank.width && sheet.height >= blank.height;
  return upright || (sheet.width >= blank.height && sheet.height >= blank.width);
}

/** What a step costs by itself. */
export function costOfTaking(subject: Subject, taken: Taken): Cost {
  return costAfter(subject, subject.job, { taken, cost: NOTHING_TO_PAY }).cost;
}

/**
 * What a step adds to the cost of a job in which those before it are done, and the job with it done too. Pieces of one
 * board come from the same sheets, and only so do the steps add up to what the whole costs more.
 */
export function costAfter(
  { layout, shelf }: Subject,
  before: Job,
  { taken, cost }: Pick<Step, 'taken' | 'cost'>,
): { readonly cost: Cost; readonly job: Job } {
  if (!taken) return { cost, job: before };
  const after = taken.into(before);
  const [now, then] = [jobCosts(before, layout, shelf), jobCosts(after, layout, shelf)];
  const line = lineOf(then, taken);
  if (!line?.amount) return { cost: notCounted(line?.basis ?? 'it comes with the frame'), job: before };
  const amount = then.counted.minus(now.counted);
  return { cost: { amount, words: takenWords(amount, taken, { old: lineOf(now, taken), line }) }, job: after };
}

function lineOf({ lines }: Costs, { piece }: Taken): CostLine | undefined {
  return lines.find(({ pieces }) => pieces.includes(piece));
}

/** @param of what is bought for the piece now, if there is such a piece, and what then. */
function takenWords(
  amount: Money,
  taken: Taken,
  { old, line }: { readonly old: CostLine | undefined; readonly line: CostLine },
): string {
  const name = `“${taken.name}”`;
  const together = togetherWords(line, taken);
  const more = amount.isZero()
    ? 'nothing more'
    : `${roundedText(amount.abs())} ${amount.isNegative() ? 'less' : 'more'}`;
  if (old?.amount) {
    const instead = old.name === undefined || old.name === taken.name ? '' : ` in place of “${old.name}”`;
    return `${more}: ${name}${instead}${together}`;
  }
  if (amount.isZero()) return `${more}: ${name}${together}`;
  const whole = old ? ' in all, since what it takes the place of has no price on the shelf' : '';
  return `${roundedText(amount)} for ${name}${whole}${together}`;
}

/** Where its sheet is bought for other pieces too. */
function togetherWords({ pieces }: CostLine, { piece }: Taken): string {
  const others = pieces.filter((one) => one !== piece);
  return others.length === 0 ? '' : `, bought together with ${listed(others.map(uncapital))}`;
}

function sameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
