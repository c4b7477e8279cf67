/**
 * Sheets with pieces that stay where the user has put them: cuts that part these pieces from what is free round them come
 * first and in their places, and what is free is planned like any other part. There are several ways to part it.
 */
import { trimOf, type Pin, type SheetsAsk } from './ask';
import { cutOf, type Cut, type Free, type Tree, type Way } from './cut-tree';
import { toGrid } from './grid';

/** A pin in grid units with the kerf added, from the lower left corner of what trimming leaves. */
interface Placed {
  readonly pin: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface Room {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** One pinned sheet, parted: pins are leaves, numbered from the first of them, in cuts whose parts keep their order. */
export interface PartedSheet {
  readonly stock: number;
  readonly tree: Tree;
}

/** A part of a pinned sheet that is free, and the changes of direction before it. */
export interface Slot {
  readonly free: Free;
  readonly depth: number;
}

export interface Parting {
  readonly sheets: readonly PartedSheet[];
  readonly slots: readonly Slot[];
}

/** Ways that are tried side by side. */
const MOST_WAYS = 4;
/** Cuts that are tried of one part: those that leave the most in one. */
const MOST_CUTS = 6;

/** Different ways to part all pinned sheets, those with the most in one part first; none where no way of cutting does it. */
export function partingsOf(ask: SheetsAsk, firstPin: number): readonly Parting[] {
  const sheets = [...new Set((ask.pins ?? []).map(({ sheet }) => sheet))].map((sheet) => waysOf(ask, sheet, firstPin));
  if (sheets.some(({ trees }) => trees.length === 0)) return [];
  const most = Math.min(MOST_WAYS, Math.max(...sheets.map(({ trees }) => trees.length)));
  return Array.from({ length: most }, (_, way) => {
    const parted = sheets.map(({ stock, trees }) => ({ stock, tree: trees[Math.min(way, trees.length - 1)]! }));
    return { sheets: parted, slots: parted.flatMap(({ tree }) => slotsIn(tree, 0)) };
  });
}

function waysOf(
  ask: SheetsAsk,
  sheet: number,
  firstPin: number,
): { readonly stock: number; readonly trees: readonly Tree[] } {
  const pins = (ask.pins ?? []).flatMap((pin, index) => (pin.sheet === sheet ? [{ pin, index }] : []));
  const stock = pins[0]!.pin.stock;
  const { width, height } = ask.stock[stock]!;
  const [saw, trim] = [toGrid(ask.kerf), toGrid(trimOf(ask.stock[stock]!, ask))];
  const room: Room = { x: 0, y: 0, width: toGrid(width) - 2 * trim + saw, height: toGrid(height) - 2 * trim + saw };
  const placed = pins.map(({ pin, index }) => placedAt(ask, pin, firstPin + index, saw, trim));
  return { stock, trees: new Parter(ask).part(room, placed) };
}

function placedAt({ pieces }: SheetsAsk, pin: Pin, index: number, saw: number, trim: number): Placed {
  const { width, height } = pieces[pin.piece]!;
  const [wide, high] = pin.turned ? [height, width] : [width, height];
  return {
    pin: index,
    x: toGrid(pin.left) - trim,
    y: toGrid(pin.bottom) - trim,
    width: toGrid(wide) + saw,
    height: toGrid(high) + saw,
  };
}

class Parter {
  readonly #known = new Map<string, readonly Tree[]>();
  readonly #longest: number;
  readonly #saw: number;

  constructor(ask: SheetsAsk) {
    this.#saw = toGrid(ask.kerf);
    this.#longest = ask.longestCut === undefined ? Infinity : toGrid(ask.longestCut) + toGrid(ask.kerf);
  }

  /** The best ways to part a room from the pins in it. */
  part(room: Room, pins: readonly Placed[]): readonly Tree[] {
    const { width, height } = room;
    const [only] = pins;
    if (!only) return [{ kind: 'free', width, height, worth: 0 }];
    if (pins.length === 1 && only.width === width && only.height === height)
      return [{ kind: 'piece', width, height, piece: only.pin, turned: false }];
    const key = [room.x, room.y, width, height].join();
    const known = this.#known.get(key);
    if (known) return known;
    const found = this.#cuts(room, pins).flatMap(({ way, at }) => {
      const [before, after] = halves(room, way, at);
      const lies = (half: Room) => pins.filter((pin) => pin.x >= half.x && pin.y >= half.y && pin.x + pin.width <= half.x + half.width && pin.y + pin.height <= half.y + half.height); // prettier-ignore
      const [firsts, seconds] = [this.part(before, lies(before)), this.part(after, lies(after))];
      const pairs = firsts.flatMap((first) => seconds.map((second) => ({ first, second })));
      return pairs.map(({ first, second }) => parted(room, way, first, second));
    });
    const best = found.toSorted((a, b) => freeWorth(b) - freeWorth(a)).slice(0, MOST_WAYS);
    this.#known.set(key, best);
    return best;
  }

  /** Along the edges of pins, through none of them. */
  #cuts(room: Room, pins: readonly Placed[]): readonly { readonly way: Way; readonly at: number }[] {
    const ways: readonly Way[] = [0, 1];
    const found = ways.flatMap((way) => {
      const low = (one: Room) => (way === 0 ? one.x : one.y);
      const size = (one: Room) => (way === 0 ? one.width : one.height);
      if ((way === 0 ? room.height : room.width) > this.#longest) return [];
      const lines = new Set(pins.flatMap((pin) => [low(pin), low(pin) + size(pin)]));
      return (
        [...lines]
          // What is no wider than the saw can't be cut off at a setting of the guide.
          .filter((at) => at - low(room) > this.#saw && at < low(room) + size(room))
          .filter((at) => pins.every((pin) => low(pin) >= at || low(pin) + size(pin) <= at))
          .map((at) => {
            const [before, after] = halves(room, way, at);
            const isFree = (side: 'before' | 'after') => pins.every((pin) => (side === 'before' ? low(pin) >= at : low(pin) < at)); // prettier-ignore
            const free = Math.max(isFree('before') ? before.width * before.height : 0, isFree('after') ? after.width * after.height : 0); // prettier-ignore
            return { way, at, free };
          })
      );
    });
    return found.sort((a, b) => b.free - a.free).slice(0, MOST_CUTS);
  }
}

function halves({ x, y, width, height }: Room, way: Way, at: number): [Room, Room] {
  return way === 0
    ? [{ x, y, width: at - x, height }, { x: at, y, width: x + width - at, height }]
    : [{ x, y, width, height: at - y }, { x, y: at, width, height: y + height - at }]; // prettier-ignore
}

/** Cuts of one way in one another are one, as everywhere. */
function parted({ width, height }: Room, way: Way, first: Tree, second: Tree): Cut {
  const flat = (tree: Tree) => (tree.kind === 'cut' && tree.way === way ? tree.parts : [tree]);
  return cutOf(way, width, height, [...flat(first), ...flat(second)], true);
}

/** Large parts are worth more than many of them. */
function freeWorth(tree: Tree): number {
  if (tree.kind === 'free') return (tree.width * tree.height) ** 1.25;
  return tree.kind === 'cut' ? tree.parts.reduce((sum, part) => sum + freeWorth(part), 0) : 0;
}

function slotsIn(tree: Tree, depth: number): Slot[] {
  if (tree.kind === 'free') return [{ free: tree, depth }];
  return tree.kind === 'cut' ? tree.parts.flatMap((part) => slotsIn(part, depth + 1)) : [];
}

/** The tree with what was planned in place of what was free. */
export function filled(tree: Tree, planned: ReadonlyMap<Free, Tree>): Tree {
  if (tree.kind === 'free') return planned.get(tree) ?? tree;
  if (tree.kind !== 'cut') return tree;
  return cutOf(tree.way, tree.width, tree.height, tree.parts.map((part) => filled(part, planned)), tree.inOrder); // prettier-ignore
}
