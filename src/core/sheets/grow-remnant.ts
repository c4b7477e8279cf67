/**
 * Makes the largest remnant of a plan larger: a remnant is looked for as if it were one more piece to be cut, first much
 * larger than what there is, then less and less so; where it counts for money, also on other sheets than the plan's.
 */
import { BETWEEN } from './contest';
import { Climb, type Found } from './climb';
import { withoutPiece } from './cut-tree';
import type { Field, FieldPiece } from './field';
import { mixesWithin, type Mix } from './mixes';
import type { Judged, Objective } from './objective';
import { ontoFree } from './onto-free';
import { OpenSheet } from './open-sheet';
import { ordersOf } from './orders';
import type { Random } from './random';
import { tidied } from './tidy';
import { tightened } from './tighten';

/** By how much a remnant should grow at once: large steps first. */
const STEPS = [1.3, 1.1, 1.03, 1 + 1e-6] as const;
/** With smaller steps only sizes that cuts beside pieces give. */
const LEAST_STEP = 1.01;
/** Times a few rounds for each size that is tried, for every so many pieces, at the most. */
const MOST_TURNS = 6;
const PIECES_A_TURN = 4;
/** Sizes that are made of sides of pieces, for each sheet; of few pieces nearly all. */
const MOST_SIDES = { few: 48, many: 8 };
const FEW = 8;
/** Other mixes of sheets that are tried where a remnant counts for money. */
const MOST_OTHERS = 6;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Yields after every few rounds whether there is a better one; ends when nothing that is tried is. */
export function* growRemnant(
  field: Field,
  random: Random,
  objective: Objective,
  start: Judged,
): Generator<Judged, Judged> {
  const fewer = yield* onFewer(field, random, objective, start);
  let best = yield* tidied(field, random, objective, yield* ontoFree(field, random, objective, fewer));
  let step = 0;
  while (step < STEPS.length) {
    let grown: Judged | undefined;
    for (const target of targetsFor(field, random, objective, best, STEPS[step]!)) {
      const search = reach(field, random, best.found, target);
      let next = search.next();
      while (!next.done) {
        yield best;
        next = search.next();
      }
      const judged = next.value && bestOf(objective, [next.value, allTightened(next.value, field)]);
      if (judged && objective.isBetter(judged, best)) {
        grown = judged;
        break;
      }
    }
    if (grown) best = grown;
    else step += 1;
    yield best;
  }
  return yield* tidied(field, random, objective, best);
}

/** Tightening helps as a rule, and now and then takes away from what is largest. */
function bestOf(objective: Objective, plans: readonly Found[]): Judged {
  return plans.map((plan) => objective.judge(plan)).reduce((a, b) => (objective.isBetter(b, a) ? b : a));
}

function allTightened({ sheets, cost }: Found, { trees }: Field): Found {
  return { cost, sheets: sheets.map(({ stock, tree }) => new OpenSheet(stock, tightened(tree, trees))) };
}

/** Without some sheet that costs nothing, for as long as the others have room for what was on it. */
function* onFewer(field: Field, random: Random, objective: Objective, start: Judged): Generator<Judged, Judged> {
  let best = start;
  for (const stock of field.stock.keys()) {
    for (;;) {
      const mix = ownMix(field, best.found);
      if (mix[stock] === 0 || field.stock[stock]!.cost > 0) break;
      const fewer = mix.map((count, index) => (index === stock ? count - 1 : count));
      const search = climbed(field, new Climb(field, random, ordersOf(field), best.found, best.found.cost, fewer));
      let next = search.next();
      while (!next.done) {
        yield best;
        next = search.next();
      }
      const judged = next.value && objective.judge(next.value);
      if (!judged || !objective.isBetter(judged, best)) break;
      best = judged;
    }
  }
  return best;
}

function ownMix({ stock }: Field, { sheets }: Found): Mix {
  return stock.map((_, index) => sheets.filter((sheet) => sheet.stock === index).length);
}

/** What a climb finds within its rounds. */
function* climbed({ pieces }: Field, climb: Climb): Generator<undefined, Found | undefined> {
  const turns = Math.min(MOST_TURNS, Math.ceil(pieces.length / PIECES_A_TURN));
  for (let turn = 0; turn < turns; turn++) {
    for (let round = 0; round < BETWEEN; round++) {
      const found = climb.round();
      if (found) return found;
    }
    yield undefined;
  }
  return undefined;
}

interface Target extends Size {
  readonly mix: Mix;
  readonly cost: number;
}

/** Sizes in grid units with the kerf added: whole strips of a sheet, and what grows out of the remnant there is. */
function targetsFor(field: Field, random: Random, objective: Objective, best: Judged, step: number): Target[] {
  const needed = field.pieces.reduce((sum, piece) => sum + piece.width * piece.height, 0);
  return mixesFor(field, objective, best).flatMap((mix) => {
    const cost = costOf(field, mix);
    const room = mix.reduce((sum, count, stock) => sum + count * field.stock[stock]!.width * field.stock[stock]!.height, 0) - needed; // prettier-ignore
    return mix.flatMap((count, stock): Target[] => {
      const area = count > 0 ? objective.areaFor(cost, stock, best) : undefined;
      if (area === undefined) return [];
      const sheet = field.stock[stock]!;
      const least = area === 0 ? (sheet.width * sheet.height) / 100 : area * step;
      return [
        ...(step > LEAST_STEP ? shapesOf(sheet, least, field.saw, best.remnant) : []),
        ...besidePieces(field, random, sheet, least),
      ]
        .filter(({ width, height }) => width * height <= room * (1 + 1e-12))
        .map((size) => ({ ...size, mix, cost }));
    });
  });
}

function shapesOf(sheet: Size, area: number, saw: number, now: Size | undefined): Size[] {
  const [wide, high] = [sheet.width - saw, sheet.height - saw];
  const grown: Size[] = now
    ? [
        { width: now.width, height: area / now.width },
        { width: area / now.height, height: now.height },
      ]
    : [];
  const middling = Math.sqrt((area * wide) / high);
  const shapes = [{ width: wide, height: area / wide }, { width: area / high, height: high }, ...grown, { width: middling, height: area / middling }]; // prettier-ignore
  return shapes
    .map(({ width, height }) => ({ width: Math.ceil(width) + saw, height: Math.ceil(height) + saw }))
    .filter(({ width, height }) => width <= sheet.width && height <= sheet.height);
}

/** What is left of a sheet beside one piece or two, either way: where the cut that frees a remnant is likely to run. */
function besidePieces({ pieces, saw }: Field, random: Random, sheet: Size, area: number): Size[] {
  const sides = [...new Set(pieces.flatMap(({ width, height }) => [width, height]))];
  const pairs = sides.flatMap((side, index) => sides.slice(index).map((other) => side + other));
  const triples = sides.length > FEW ? [] : pairs.flatMap((pair) => sides.map((side) => pair + side));
  const sums = [...new Set([0, ...sides, ...pairs, ...triples])];
  const restsOf = (length: number) => sums.map((sum) => length - sum).filter((rest) => rest > saw);
  const [widths, heights] = [restsOf(sheet.width), restsOf(sheet.height)];
  const most = pieces.length > FEW ? MOST_SIDES.many : MOST_SIDES.few;
  /** The least of some lengths that makes the area. */
  const other = (side: number, lengths: readonly number[]) => Math.min(...lengths.filter((length) => (length - saw) * (side - saw) >= area)); // prettier-ignore
  return [
    ...drawn(widths, most, random).map((width) => ({ width, height: other(width, heights) })),
    ...drawn(heights, most, random).map((height) => ({ width: other(height, widths), height })),
  ].filter(({ width, height }) => width < Infinity && height < Infinity);
}

/** A few of many. */
function drawn(all: readonly number[], most: number, random: Random): number[] {
  const values = [...all];
  while (values.length > most) values.splice(Math.floor(random() * values.length), 1);
  return values;
}

/** The plan's own mix, and those that would cost less for what their remnant is worth. */
function mixesFor(field: Field, objective: Objective, { found, cost }: Judged): readonly Mix[] {
  const own = ownMix(field, found);
  if (objective.worth === 0) return [own];
  const dearest = Math.max(...field.stock.map((stock) => stock.cost));
  const within = mixesWithin(field, cost + objective.worth * dearest) ?? swaps(field, own);
  const key = own.join();
  return [own, ...within.filter((mix) => mix.join() !== key).slice(0, MOST_OTHERS)];
}

/** One sheet of the mix in place of another. */
function swaps({ stock }: Field, mix: Mix): Mix[] {
  return mix.flatMap((count, out) =>
    stock.flatMap(({ count: most }, into): Mix[] =>
      count === 0 || into === out || (mix[into] ?? 0) >= most
        ? []
        : [mix.map((each, index) => each + (index === into ? 1 : index === out ? -1 : 0))],
    ),
  );
}

function costOf({ stock }: Field, mix: Mix): number {
  return mix.reduce((sum, count, index) => sum + count * stock[index]!.cost, 0);
}

/** A plan of that mix with room for the remnant. */
function* reach(
  field: Field,
  random: Random,
  from: Found,
  { width, height, mix, cost }: Target,
): Generator<undefined, Found | undefined> {
  const index = field.pieces.length;
  const remnant: FieldPiece = { wanted: -1, width, height, mayTurn: false, area: (width * height) / field.largest };
  const more: Field = { ...field, pieces: [...field.pieces, remnant] };
  const found = yield* climbed(field, new Climb(more, random, ordersOf(more), from, cost, mix));
  if (!found) return undefined;
  const sheets = found.sheets.map(({ stock, tree }) => new OpenSheet(stock, withoutPiece(tree, index, field.trees)));
  const used = sheets.filter(({ isEmpty }) => !isEmpty);
  return { sheets: used, cost: used.reduce((sum, { stock }) => sum + field.stock[stock]!.cost, 0) };
}
