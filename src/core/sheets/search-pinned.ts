/** The search with pins: each way to part the pinned sheets is searched by itself, all of them in turn. Parts beside pins are like what falls out: there anyway, and not trimmed. */
import type { SheetsAsk, Stock, WantedPiece } from './ask';
import { leastCost } from './bounds';
import type { Found } from './climb';
import { fieldOf, type Field } from './field';
import { toMm } from './grid';
import { OpenSheet } from './open-sheet';
import { filled, partingsOf, type Parting } from './pinned';
import { Objective, type Judged } from './objective';
import type { Progress } from './plan-search';
import { searchField, worthIn } from './search-all';

/** Its best is made of sheets of the ask itself; ends when each way is proven, or there is no way. */
export function* searchPinned(ask: SheetsAsk): Generator<Progress, Progress> {
  const pins = ask.pins ?? [];
  const rest = withoutPinned(ask);
  const all = fieldOf({ ...ask, pieces: ask.pieces.map((piece) => ({ ...piece, count: 0 })) });
  const free = fieldOf(rest);
  const pinned = pins.map(({ piece }) => ({ wanted: piece, width: 0, height: 0, mayTurn: false, area: 0 }));
  const field: Field = { ...all, pieces: [...free.pieces, ...pinned] };
  const partings = partingsOf(ask, free.pieces.length);
  const used = [...new Set(pins.map(({ sheet }) => sheet))].map((sheet) => pins.find((pin) => pin.sheet === sheet)!.stock); // prettier-ignore
  const paid = used.reduce((sum, stock) => sum + all.stock[stock]!.cost, 0);
  // As if the pinned sheets were free as a whole, which holds whichever way they are parted.
  const bound =
    paid +
    leastCost(fieldOf({ ...rest, stock: [...rest.stock, ...used.map((stock) => asRemnant(ask.stock[stock]!))] }));
  // With all sheets that are there, pinned or not.
  const objective = new Objective({ ...field, stock: fieldOf(ask).stock }, worthIn(ask));
  let best: Judged | undefined;
  let rounds = 0;
  const progress = (): Progress => ({
    field,
    best: best?.found,
    bound: Math.min(bound, best?.found.cost ?? bound),
    rounds,
  });
  const searches = partings.map((parting) => ({
    parting,
    search: searchParting(rest, parting),
    rounds: 0,
    isDone: false,
    found: undefined as Found | undefined,
  }));
  while (searches.some(({ isDone }) => !isDone)) {
    for (const one of searches.filter(({ isDone }) => !isDone)) {
      const { done = false, value } = one.search.next();
      one.isDone = done;
      rounds += value.rounds - one.rounds;
      one.rounds = value.rounds;
      if (!value.best || value.best === one.found) continue;
      one.found = value.best;
      const whole = { cost: paid + value.best.cost, sheets: composed(one.parting, value.best, rest) };
      const judged: Judged = objective.judge(whole);
      if (!best || objective.isBetter(judged, best)) best = judged;
    }
    yield progress();
    const least = best?.found.cost ?? Infinity;
    // Ways that cost as little may still leave larger parts.
    const isOpen = ({ isDone, found }: (typeof searches)[number]) => !isDone && found !== undefined && paid + found.cost <= least + 1e-9; // prettier-ignore
    if (least <= bound + 1e-9 && !searches.some(isOpen)) break;
  }
  return progress();
}

/** What is not pinned, and sheets that are not. */
function withoutPinned({ pins = [], pieces, stock, ...ask }: SheetsAsk): SheetsAsk {
  const countOf = (list: readonly number[], index: number) => list.filter((one) => one === index).length;
  const pinnedPieces = pins.map(({ piece }) => piece);
  const pinnedStock = [...new Set(pins.map(({ sheet }) => sheet))].map((sheet) => pins.find((pin) => pin.sheet === sheet)!.stock); // prettier-ignore
  const fewerPieces = (piece: WantedPiece, index: number): WantedPiece => ({ ...piece, count: Math.max(0, piece.count - countOf(pinnedPieces, index)) }); // prettier-ignore
  const fewerStock = (one: Stock, index: number): Stock => (one.count === undefined ? one : { ...one, count: Math.max(0, one.count - countOf(pinnedStock, index)) }); // prettier-ignore
  return { ...ask, pieces: pieces.map(fewerPieces), stock: stock.map(fewerStock) };
}

function asRemnant(stock: Stock): Stock {
  return { ...stock, kind: 'remnant', cost: 0, count: 1 };
}

function searchParting(rest: SheetsAsk, { slots }: Parting): Generator<Progress, Progress> {
  const saw = rest.kerf;
  const parts = slots.map(({ free, depth }, index) => ({ id: `part ${index}`, kind: 'fallout' as const, width: toMm(free.width) - saw, height: toMm(free.height) - saw, cost: 0, count: 1, depth })); // prettier-ignore
  const field = fieldOf({ ...rest, stock: [...rest.stock, ...parts] });
  const depths = [...rest.stock.map(() => 0), ...parts.map(({ depth }) => depth)];
  const stock = field.stock.map((one, index) => ({ ...one, depth: depths[index] ?? 0 }));
  return searchField({ ...field, stock }, worthIn(rest), rest.seed);
}

/** Pinned sheets first, each with what was planned for its parts. */
function composed({ sheets, slots }: Parting, { sheets: found }: Found, rest: SheetsAsk): readonly OpenSheet[] {
  const planned = new Map(
    found.flatMap(({ stock, tree }) => {
      const slot = slots[stock - rest.stock.length];
      return slot ? [[slot.free, tree] as const] : [];
    }),
  );
  return [
    ...sheets.map(({ stock, tree }) => new OpenSheet(stock, filled(tree, planned))),
    ...found.filter(({ stock }) => stock < rest.stock.length),
  ];
}
