/** Which sizes a show takes: the fewest that hold all, the trade-off from one size to six, and the choice that was asked for. */
import type { Candidates } from './candidates';
import type { Costs } from './costs';
import { TABLE_SIZES, type Choice, type ShowOptions, type ShowPlan, type SizeUse, type TradeOffRow } from './plan';
import { isBetter, type Choosing, type Chosen } from './search/choosing';
import { fewestSizes, type Fewest } from './search/fewest';
import { Filler } from './search/fill';
import { leastCost, type Found } from './search/least-cost';

export interface ChosenSizes {
  readonly fewest: ShowPlan['fewest'];
  readonly tradeOff: readonly TradeOffRow[];
  readonly chosen: Choice;
  /** Indices of the sizes chosen. */
  readonly sizes: readonly number[];
}

export function chooseSizes(
  choosing: Choosing,
  candidates: Candidates,
  costs: Costs,
  { aim = 'cost', most = TABLE_SIZES }: ShowOptions,
): ChosenSizes {
  const filler = new Filler(choosing);
  const fewest = fewestSizes(choosing);
  const bestOf = (count: number, before?: Found) => leastCost(choosing, count, startFor(count, before, fewest, filler));
  const table: Found[] = [];
  while (table.length < TABLE_SIZES) table.push(bestOf(table.length + 1, table.at(-1)));
  const find = (count: number) => table[count - 1] ?? bestOf(count, table.at(-1));
  const wanted = Math.max(1, aim === 'sizes' ? fewest.sizes.length : most);
  const choice = find(wanted);
  const asChoice = (one: Found, count: number) => choiceOf(one, count, filler, choosing, candidates, costs);
  const rows = table.map((one, index) => asChoice(one, index + 1));
  return {
    fewest: { held: fewest.held, least: fewest.least, sizes: fewest.sizes.length },
    tradeOff: rows.map((row, index) => ({ ...row, ...savingOf(table[index - 1], table[index], costs) })),
    chosen: asChoice(choice, wanted),
    sizes: choice.sizes,
  };
}

/** What is known to be possible: the choice of one size fewer, or the fewest sizes that hold all. */
function startFor(sizes: number, before: Found | undefined, fewest: Fewest, filler: Filler): Chosen | undefined {
  if (fewest.sizes.length > sizes) return before;
  const { held, cost } = filler.fill(fewest.sizes);
  const all = { sizes: fewest.sizes, held, cost };
  return before && !isBetter(all, before) ? before : all;
}

function choiceOf(
  { sizes, held, cost, proven, bound }: Found,
  most: number,
  filler: Filler,
  { frames }: Choosing,
  candidates: Candidates,
  costs: Costs,
): Choice {
  const pictures = new Map<number, number>();
  for (const { frame, count } of filler.fill(sizes).shares.flat()) {
    const size = frames[frame]?.size ?? -1;
    pictures.set(size, (pictures.get(size) ?? 0) + count);
  }
  const uses = candidates.sizes.flatMap((size, index): SizeUse[] => {
    const count = pictures.get(index);
    return count === undefined ? [] : [{ size, pictures: count }];
  });
  const least = { held: bound.held, cost: costs.costOf(bound.cost) };
  return { most, uses, held, cost: costs.costOf(cost), proven, bound: least };
}

function savingOf(before: Found | undefined, now: Found | undefined, costs: Costs): Pick<TradeOffRow, 'saves'> {
  if (!before || !now || before.held !== now.held || before.cost === now.cost) return {};
  return { saves: costs.costOf(before.cost - now.cost) };
}
