/** The back of the frame in words: what it hangs by and why, where that sits, and the wire. */
import type { HangingAsk } from '../hanging-ask';
import type { HangerKind } from '../../job/hanging';
import { isFaceOnWood, woodWidth } from '../hanger-places';
import type { HangingPlan, WirePlan } from '../hanging-plan';
import { RINGS_DOWN } from '../limits';
import type { HangingWeight } from '../weight';
import { degrees, type Row, type Section, type Words } from './section';

const HANGER_WORDS: Readonly<Record<HangerKind, string>> = {
  sawtooth: 'sawtooth hanger',
  'rings and wire': 'D-rings and wire',
  'rings on hooks': 'D-rings, each on a hook',
  cleat: 'cleat',
};

export function hangerSection({ hanger, weight, outside }: HangingPlan, words: Words): Section {
  const { show } = words;
  const count = hanger.hooks === 1 ? 'one' : 'two';
  const points =
    hanger.kind === 'cleat'
      ? `rail held by ${count === 'one' ? 'one fixing' : 'two fixings or more'}`
      : `${count} hook${hanger.hooks === 1 ? '' : 's'}`;
  const rows: Row[] = [
    { label: 'Frame', value: show.size(outside), how: 'outside' },
    { label: 'Hanger', value: `${HANGER_WORDS[hanger.kind]}, ${points}`, how: hanger.why.join(' ') },
  ];
  return { heading: 'How it hangs', rows: [...rows, weightRow(weight, words)] };
}

/** What is missing stands right beside the number that it is missing from. */
function weightRow({ kg, source, notCounted }: HangingWeight, { mass, carried }: Words): Row {
  const label = 'Weight';
  const missing = notCounted.join(', ');
  if (!kg) {
    const unknown = missing === '' ? '' : ` (not known: ${missing})`;
    return { label, value: 'unknown', how: `weigh the finished frame${unknown}; loads are parts of its weight` };
  }
  const value = carried(kg.greatest);
  if (source === 'weighed') return { label, value, how: 'weighed' };
  const range = `${mass(kg.least)} to ${mass(kg.greatest)}`;
  const how =
    missing === ''
      ? `reckoned, ${range}; loads are told for the most`
      : `without ${missing}, which are not known; the rest is reckoned, ${range}, and counted at its most`;
  return { label, value, how: notCounted.length === 1 ? how.replace('which are', 'which is') : how };
}

export function placesSection({ frame, job }: HangingAsk, plan: HangingPlan, words: Words): Section {
  const { kind } = plan.hanger;
  const rows =
    kind === 'rings and wire' || kind === 'rings on hooks'
      ? ringRows(frame, plan, words)
      : railRows(frame, job.hanging.hangerDown !== undefined, plan, words);
  const { width } = job.hanging.fitting;
  const plate: Row[] =
    width === undefined ? [] : [{ label: 'Plate of a fitting', value: words.show.length(width), how: 'as given' }];
  return { heading: 'On the back of the frame', rows: [...rows, ...plate] };
}

function ringRows(frame: HangingAsk['frame'], { places, outside, hanger, wire }: HangingPlan, { show }: Words): Row[] {
  const part = (places.down / outside.height) * 100;
  const range = [RINGS_DOWN.least, RINGS_DOWN.greatest].map((share) => show.length(share * outside.height));
  const onWire = hanger.kind === 'rings and wire';
  return [
    {
      label: 'Rings below the top',
      value: show.length(places.down),
      how: `${part.toFixed(0)} % of ${show.length(outside.height)}; a quarter to a third is ${range.join(' to ')} (common practice)`,
    },
    {
      label: 'Rings from the edge',
      value: show.length(places.in),
      how: `to their middle; ${woodWords(frame, show)}`,
    },
    {
      label: 'Between the rings',
      value: show.length(places.span),
      how: `${show.length(outside.width)} − 2 × ${show.length(places.in)}`,
    },
    {
      label: onWire ? 'Taut wire below the top' : 'Hooks below the top',
      value: show.length(places.drop),
      how: onWire ? 'drawn up at its hooks; the hooks come to lie there' : 'where the rings sit on their hooks',
    },
    ...(hanger.hooks === 2
      ? [
          {
            label: 'Between the hooks',
            value: show.length(places.hooksApart),
            how: wire ? 'evenly about the middle' : 'as far as the rings',
          },
        ]
      : []),
  ];
}

function railRows(
  frame: HangingAsk['frame'],
  isGiven: boolean,
  { places, outside, hanger }: HangingPlan,
  { show }: Words,
): Row[] {
  const [what, edge] =
    hanger.kind === 'cleat'
      ? (['Cleat', 'to the edge that takes the load'] as const)
      : (['Teeth', 'to the teeth'] as const);
  const where = isGiven ? 'as given' : `in the middle of the upper rail's ${isFaceOnWood(frame) ? 'face' : 'wood'}`;
  return [
    {
      label: `${what} below the top`,
      value: show.length(places.drop),
      how: `${where}, ${edge}; ${woodWords(frame, show)}`,
    },
    ...(hanger.hooks === 2
      ? [
          {
            label: hanger.kind === 'cleat' ? 'Between the fixings' : 'Between the hangers',
            value: show.length(places.hooksApart),
            how: `in the middle of ${show.length(outside.width)}`,
          },
        ]
      : []),
  ];
}

function woodWords(frame: HangingAsk['frame'], { length }: Words['show']): string {
  return `the wood is ${length(woodWidth(frame))} wide, moulding ${length(frame.mouldingWidth)} − lip ${length(frame.lip)}`;
}

export function wireSection(knots: number, wire: WirePlan, { show }: Words): Section {
  const { level, length, cut, slack } = wire;
  const flat = level.apart > 0 ? `${show.length(level.apart)} + ` : '';
  const between =
    level.apart > 0
      ? `(${show.length(level.span)} − ${show.length(level.apart)}) / 2`
      : `${show.length(level.span)} / 2`;
  return {
    heading: 'Wire',
    rows: [
      { label: 'Rise', value: show.length(level.drop), how: 'from the rings to the hooks' },
      { label: 'Run', value: show.length(level.run), how: `from a ring to its hook along the level: ${between}` },
      { label: 'Angle', value: degrees(level.angle), how: 'above the level: tan = rise / run' },
      {
        label: 'From ring to ring',
        value: show.length(length),
        how: `taut over the hooks: ${flat}2 × √(run² + rise²)`,
      },
      { label: 'Cut', value: show.length(cut), how: `with ${show.length(knots)} at each end for knot and twist` },
      {
        label: 'Slack',
        value: show.length(slack),
        how: `longer than the straight line of ${show.length(level.span)} between the rings`,
      },
    ],
  };
}
