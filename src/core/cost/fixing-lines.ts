/** Lines of what holds and hangs a frame, by the piece: hinges, points, clips and screws, rings, wire and hooks. */
import { counted } from '../phrases';
import { priceOfLength } from '../money';
import { SHELF_KIND } from '../hanging/bought';
import type { Carried, HangingPlan } from '../hanging/hanging-plan';
import { hangingAsk } from '../hanging/ask-of';
import { planHanging } from '../hanging/plan-hanging';
import { fixingScrews } from '../package/fixing-screws';
import type { FramePart } from '../job/job';
import { hasFixings } from '../package/parts';
import { stackOf } from '../package/stack';
import { standOutOf } from '../package/stand-out';
import type { ShelfItem, ShelfKind } from '../shelf/shelf';
import { lengthText } from '../units';
import type { LinesAsk } from './cost-ask';
import type { CostSlot, PricedLine } from './line';
import { partLine } from './material-lines';
import { exactMm, priceText } from './price-text';

type Line = Omit<PricedLine, 'group'>;

export function fixingLines(ask: LinesAsk): Line[] {
  const { hinging } = ask.job.package;
  const hinges = hinging.method === 'none' ? [] : [partLine(ask, 'hinges', 'hinges', 'Hinges')];
  return [...hinges, ...heldBy(ask), ...hungBy(ask)];
}

/** What closes the frame; nothing of what it has or comes with. */
function heldBy(ask: LinesAsk): Line[] {
  const { kind } = ask.job.package.fixing;
  if (kind === 'groove' || hasFixings(ask.job)) return [];
  if (kind === 'offset clips') return clipLines(ask);
  return [partLine(ask, 'fixing', kind, kind.charAt(0).toUpperCase() + kind.slice(1))];
}

function clipLines(ask: LinesAsk): Line[] {
  const { job, layout, shelf } = ask;
  const found = standOutOf(job, layout, stackOf(job, layout), { shelf, wallGap: job.hanging.bumpers });
  if (!found) return [];
  const { total } = found.count;
  const screw = fixingScrews(job, layout, shelf).chosen;
  return [
    eachLine(ask, 'fixing', 'Offset clips', total, found.clips?.clip, 'no clip of the shelf is known to do'),
    eachLine(ask, 'fixing', 'Screws of the clips', total, screw, 'no screw of the shelf is known to do'),
  ];
}

function hungBy(ask: LinesAsk): Line[] {
  const { job, layout, shelf, made } = ask;
  const { section, outside } = made.moulding;
  const known = hangingAsk(job, layout, shelf);
  // The moulding that is charged, which need not be the job's own.
  const frame = { ...layout.frame, outside, mouldingWidth: section.width, lip: section.lip };
  const planned = planHanging({ ...known, frame, weighed: made.weight });
  if (!planned.ok) {
    const why = planned.problems.find(({ severity }) => severity === 'error')?.message ?? '';
    return [
      {
        slot: 'hangers',
        what: 'Hangers',
        quantity: '',
        basis: `it can’t hang as the job says: ${why}`,
        lacks: { in: 'job', at: 'hanging' },
      },
    ];
  }
  const comes = (part: Carried['part']) => COMES_AS[part].some((one) => job.frame.comesWith.includes(one));
  return planned.value.carried.filter(({ part }) => !comes(part)).map((part) => carriedLine(ask, planned.value, part));
}

/** Parts that a frame may come with; nothing on the wall is among them. */
const COMES_AS: Readonly<Record<Carried['part'], readonly FramePart[]>> = {
  fitting: ['hangers'],
  wire: ['wire'],
  hook: [],
};

/** Hooks on the wall, what is on the frame, and the wire between. */
function carriedLine(ask: LinesAsk, { hanger, wire }: HangingPlan, { part, name }: Carried): Line {
  const kind = part === 'fitting' ? SHELF_KIND[hanger.kind] : part;
  const item = itemOf(ask, kind, name);
  const why = name === undefined ? `no ${kind} of the shelf is known to do` : `“${name}” is not on the shelf`;
  if (part === 'wire') return wireLine(ask, wire?.cut ?? 0, item, why);
  const isRing = kind === 'ring';
  const count = kind === 'cleat' ? 1 : isRing ? 2 : hanger.hooks;
  return eachLine(ask, 'hangers', WORDS[kind], count, item, why);
}

const WORDS = {
  hook: 'Hooks on the wall',
  ring: 'Rings',
  sawtooth: 'Sawtooth hangers',
  cleat: 'Pair of cleats',
  wire: 'Wire',
} as const;

function wireLine(ask: LinesAsk, mm: number, item: ShelfItem | undefined, why: string): Line {
  const length = lengthText(mm, ask.showing);
  const line = { slot: 'hangers', what: WORDS.wire, quantity: length } as const;
  const amount = item?.price && priceOfLength(item.price, exactMm(mm).toNumber());
  if (!item?.price || !amount) return { ...line, basis: item ? `“${item.name}” has no price` : why };
  const { amount: price, per } = item.price;
  const basis = `${length} of “${item.name}” with its knots at ${priceText(price, ask.prices.currency)} per ${per}`;
  return { ...line, basis, amount };
}

function eachLine(
  { prices }: LinesAsk,
  slot: CostSlot,
  what: string,
  count: number,
  item: ShelfItem | undefined,
  why: string,
): Line {
  const line = { slot, what, quantity: counted(count, 'piece') };
  if (!item?.price) return { ...line, basis: item ? `“${item.name}” has no price` : why };
  const { amount } = item.price;
  return {
    ...line,
    basis: `${count} of “${item.name}” at ${priceText(amount, prices.currency)} each`,
    amount: amount.times(count),
  };
}

function itemOf({ shelf }: LinesAsk, kind: ShelfKind, name: string | undefined): ShelfItem | undefined {
  if (name === undefined) return undefined;
  return shelf.find((item) => item.kind === kind && item.name.trim().toLowerCase() === name.trim().toLowerCase());
}
