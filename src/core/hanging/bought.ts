/** Wire, hook and fitting: as the job gives their loads, as the shelf knows them by name, or the lightest that holds. */
import type { Hanging, HangerKind } from '../job/hanging';
import type { Problem } from '../problem';
import { ofKind, type Shelf } from '../shelf/shelf';

export type BoughtPart = 'wire' | 'hook' | 'fitting';

/** One thing that carries, kg and mm. */
export interface Bought {
  readonly part: BoughtPart;
  readonly name?: string;
  /** What one may carry; undefined: unknown. */
  readonly load?: number;
  /** Where the load comes from, in words. */
  readonly basis?: string;
  /** Of a hook: from the nail's hole down to its seat. */
  readonly seat?: number;
  /** Of one that the shelf gave: by what it was chosen, in words. */
  readonly why?: string;
  /** Whether the job or the shelf named it. */
  readonly from: 'job' | 'shelf' | 'nowhere';
}

interface Candidate {
  readonly name?: string | undefined;
  readonly load?: number | undefined;
  readonly breaksAt?: number | undefined;
  readonly seat?: number | undefined;
}

/** What each must carry at least, kg; undefined where the weight is unknown or not whole. */
export type Needs = Readonly<Partial<Record<BoughtPart, number | undefined>>>;

/** What of the shelf a hanger is fixed to the frame by. */
export const SHELF_KIND = {
  sawtooth: 'sawtooth',
  'rings and wire': 'ring',
  'rings on hooks': 'ring',
  cleat: 'cleat',
} as const satisfies Record<HangerKind, string>;

export function boughtParts(hanging: Hanging, kind: HangerKind, shelf: Shelf, needs: Needs): Bought[] {
  const choose = (part: BoughtPart, given: Candidate, items: readonly Candidate[]) =>
    chooseOne(part, given, items, hanging.wire.margin, needs[part]);
  return [
    ...(kind === 'rings and wire' ? [choose('wire', hanging.wire, ofKind(shelf, 'wire'))] : []),
    ...hookFor(hanging, kind, shelf, choose),
    choose('fitting', hanging.fitting, ofKind(shelf, SHELF_KIND[kind])),
  ];
}

type Choose = (part: BoughtPart, given: Candidate, items: readonly Candidate[]) => Bought;

/** Teeth sit on a nail or a screw, whose head is its own seat; a hook's nail would show above so small a frame. */
function hookFor({ hook }: Hanging, kind: HangerKind, shelf: Shelf, choose: Choose): Bought[] {
  if (kind === 'cleat') return [];
  if (kind !== 'sawtooth') return [choose('hook', hook, ofKind(shelf, 'hook'))];
  if (hook.name !== undefined) return [choose('hook', hook, ofKind(shelf, 'hook'))];
  return [{ ...choose('hook', hook, []), name: 'nail or screw', seat: hook.seat ?? 0 }];
}

function chooseOne(
  part: BoughtPart,
  given: Candidate,
  items: readonly Candidate[],
  margin: number,
  need: number | undefined,
): Bought {
  const named = given.name === undefined ? undefined : items.find((item) => sameName(item.name, given.name));
  const isSaid = given.name !== undefined || given.load !== undefined || given.breaksAt !== undefined;
  if (isSaid) return asBought(part, { ...named, ...withoutUndefined(given) }, margin, 'job');
  const found = lightest(items, margin, need);
  if (!found) return asBought(part, given, margin, 'nowhere');
  const isEnough = need !== undefined && (loadOf(found, margin) ?? 0) >= need;
  const why = isEnough
    ? 'the lightest of the shelf that holds it'
    : need === undefined
      ? 'the strongest of the shelf, since the weight is not whole'
      : 'the strongest of the shelf';
  return { ...asBought(part, { ...found, ...withoutUndefined(given) }, margin, 'shelf'), why };
}

/** The one of least load that carries what it must, else the strongest; of unknown weight the strongest. */
function lightest(items: readonly Candidate[], margin: number, need: number | undefined): Candidate | undefined {
  const rated = items.flatMap((item) => {
    const load = loadOf(item, margin);
    return load === undefined ? [] : [{ item, load }];
  });
  const sorted = rated.toSorted((a, b) => a.load - b.load);
  return (sorted.find(({ load }) => need !== undefined && load >= need) ?? sorted.at(-1))?.item;
}

function asBought(part: BoughtPart, item: Candidate, margin: number, from: Bought['from']): Bought {
  const load = loadOf(item, margin);
  const basis =
    item.load !== undefined
      ? "the maker's rated load"
      : `breaking strength / ${margin}, an analogy to slings: 29 CFR 1926.251, as quoted`;
  return {
    part,
    from,
    ...(item.name === undefined ? {} : { name: item.name }),
    ...(load === undefined ? {} : { load, basis }),
    ...(item.seat === undefined ? {} : { seat: item.seat }),
  };
}

/** The maker's own rating counts first. */
function loadOf({ load, breaksAt }: Candidate, margin: number): number | undefined {
  return load ?? (breaksAt === undefined ? undefined : breaksAt / margin);
}

function sameName(a: string | undefined, b: string | undefined): boolean {
  return a !== undefined && b !== undefined && a.trim().toLowerCase() === b.trim().toLowerCase();
}

function withoutUndefined(item: Candidate): Candidate {
  return Object.fromEntries(Object.entries(item).filter(([, value]) => value !== undefined));
}

/** A name in the job that the shelf does not know; without a shelf nothing is told. */
export function namesNotOnShelf(hanging: Hanging, kind: HangerKind, shelf: Shelf): Problem[] {
  if (shelf.length === 0) return [];
  const asked = [
    ['wire', hanging.wire.name, 'wire'],
    ['hook', hanging.hook.name, 'hook'],
    ['fitting', hanging.fitting.name, SHELF_KIND[kind]],
  ] as const;
  return asked.flatMap(([key, name, shelfKind]): Problem[] => {
    const items = ofKind(shelf, shelfKind);
    // What the job measures itself needs no shelf.
    const isMeasured = hanging[key].load !== undefined || (key === 'wire' && hanging.wire.breaksAt !== undefined);
    if (name === undefined || isMeasured || items.some((item) => sameName(item.name, name))) return [];
    const there = items.map((item) => `“${item.name}”`).join(', ');
    return [
      {
        code: 'not-on-shelf',
        severity: 'warning',
        at: `hanging.${key}.name`,
        message: `The shelf has no ${shelfKind} called “${name.slice(0, 40)}”; ${there === '' ? `it has no ${shelfKind} at all` : `it has ${there}`}.`,
        value: name.slice(0, 60),
      },
    ];
  });
}
