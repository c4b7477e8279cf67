/** What a job takes of board and glazing in a frame, and what that costs as far as the shelf says. */
import type { Size } from '../geometry/box';
import type { Job, FramePart } from '../job/job';
import { sumOf, type Money } from '../money';
import { ofKind, type Shelf } from '../shelf/shelf';
import { pieceOf } from './piece-price';

/** Areas to be cut, mm². What comes with the frame is not among them. */
export interface Used {
  /** Of each layer, from the top down. */
  readonly layers: readonly number[];
  readonly mountBoard: number;
  /** Layers and mount board together. */
  readonly board: number;
  readonly glazing: number;
}

/** One thing that has to be paid for. */
export interface CostPart {
  /** `frame`, `layer 1`, `mount board`, `glazing`. */
  readonly what: string;
  /** What it is called on the shelf. */
  readonly name?: string;
  /** Undefined: not known, which is not nothing. */
  readonly amount?: Money;
  /** True where it comes with the frame and costs nothing more. */
  readonly isIncluded?: true;
  /** Why the amount is not known. */
  readonly why?: string;
}

export interface Cost {
  readonly parts: readonly CostPart[];
  /** Sum of what is known; undefined where nothing is. */
  readonly counted?: Money;
  /** Parts that are not in the sum. */
  readonly notCounted: readonly string[];
}

/** @param comesWith what is bought with the frame. */
export function usedIn(job: Job, blank: Size, comesWith: readonly FramePart[]): Used {
  const { mountBoard, glazing } = job.package;
  const whole = areaOf(blank);
  const layers = layerSizes(job, blank).map(areaOf);
  const mount = mountBoard && !comesWith.includes('mount board') ? whole : 0;
  return {
    layers,
    mountBoard: mount,
    board: layers.reduce((sum, area) => sum + area, mount),
    glazing: glazing && !comesWith.includes('glazing') ? whole : 0,
  };
}

/** A layer that is cut behind the one above it is trimmed; from the top down. */
export function layerSizes({ layers, cutting }: Job, blank: Size): Size[] {
  const trim = cutting.layers === 'behind' ? 2 * cutting.behindTrim : 0;
  const behind = { width: blank.width - trim, height: blank.height - trim };
  return layers.map((_, index) => (index === 0 ? blank : behind));
}

/** @param frame what the frame itself costs. */
export function costOf(
  frame: Omit<CostPart, 'what'>,
  job: Job,
  blank: Size,
  comesWith: readonly FramePart[],
  shelf: Shelf,
): Cost {
  const { mountBoard, glazing } = job.package;
  const ours = (part: FramePart, what: string, price: () => Omit<CostPart, 'what'>): CostPart =>
    comesWith.includes(part) ? { what, isIncluded: true } : { what, ...price() };
  const sizes = layerSizes(job, blank);
  const parts = [
    { what: 'frame', ...frame },
    ...job.layers.map(({ board }, index) => ({
      what: `layer ${index + 1}`,
      ...boardPrice(board, sizes[index] ?? blank, shelf),
    })),
    ...(mountBoard ? [ours('mount board', 'mount board', () => boardPrice(mountBoard.board, blank, shelf))] : []),
    ...(glazing ? [ours('glazing', 'glazing', () => glazingPrice(glazing, blank, shelf))] : []),
  ];
  return withSum(parts);
}

function withSum(parts: readonly CostPart[]): Cost {
  const known = parts.flatMap(({ amount }) => amount ?? []);
  return {
    parts,
    ...(known.length > 0 ? { counted: sumOf(known) } : {}),
    notCounted: parts.flatMap(({ what, amount, isIncluded }) => (amount || isIncluded ? [] : [what])),
  };
}

/** Boards go by the name that the job calls them by. */
function boardPrice(called: string, piece: Size, shelf: Shelf): Omit<CostPart, 'what'> {
  const plain = (name: string) => name.trim().toLowerCase();
  const board = ofKind(shelf, 'board').find(({ name }) => plain(name) === plain(called));
  return board ? { name: board.name, ...pieceOf(board, piece) } : { why: `no board called “${called}” on the shelf` };
}

/** The cheapest of its material, with or without the UV filter as the job has it. */
function glazingPrice(
  { material, uvFilter }: NonNullable<Job['package']['glazing']>,
  piece: Size,
  shelf: Shelf,
): Omit<CostPart, 'what'> {
  const such = ofKind(shelf, 'glazing').filter((one) => one.material === material && one.uvFilter === uvFilter);
  const pieces = such.map((one): Omit<CostPart, 'what'> => ({ name: one.name, ...pieceOf(one, piece) }));
  const priced = pieces.filter(({ amount }) => amount !== undefined);
  const [first, ...rest] = priced;
  if (!first) return pieces[0] ?? { why: `no ${material}${uvFilter ? ' with a UV filter' : ''} on the shelf` };
  return rest.reduce((best, one) => (one.amount && best.amount && one.amount.lt(best.amount) ? one : best), first);
}

export function areaOf({ width, height }: Size): number {
  return width * height;
}
