/** Loads in words: level, out of level, leaning, and beside what each thing may carry. */
import type { HangingPlan, WirePlan } from '../hanging-plan';
import type { RingSway } from '../sway';
import { butWithout } from '../weight';
import { degrees, type Row, type Section, type Words } from './section';

export function loadSection(plan: HangingPlan, words: Words): Section {
  const { wire, hanger } = plan;
  const rows = wire
    ? wireRows(wire, words)
    : [
        {
          label: hanger.kind === 'cleat' ? 'Each fixing, down' : 'Each hook, down',
          value: words.load(1 / hanger.hooks),
          how: hanger.hooks === 1 ? 'all of it' : 'half each',
        },
      ];
  return { heading: 'Loads, hanging level', rows };
}

function wireRows({ level }: WirePlan, { load }: Words): Row[] {
  const one = level.apart === 0;
  const angle = degrees(level.angle);
  return [
    { label: 'Wire', value: load(level.tension), how: `half the weight / sin ${angle}, the same all along` },
    { label: 'Each ring, up', value: load(level.ringUp), how: 'along an upright moulding, square to its screws' },
    { label: 'Each ring, inward', value: load(level.ringInward), how: `across it: the wire's pull × cos ${angle}` },
    { label: 'Each hook, down', value: load(level.hookDown), how: one ? 'all of it' : 'half each' },
    ...(one
      ? []
      : [
          {
            label: 'Each hook, sideways',
            value: load(level.hookSideways),
            how: `toward the other: the wire's pull − the wire's pull × cos ${angle}`,
          },
        ]),
  ];
}

export function swaySection(plan: HangingPlan, outOfLevel: number, words: Words): Section {
  const { wire, rings, outside } = plan;
  const by = words.show.length(outOfLevel);
  const rows = wire
    ? wireSwayRows(wire, by, outside.width, words)
    : rings
      ? ringSwayRows(rings, by, outside.width, words)
      : [];
  return { heading: 'Not quite level', rows };
}

function wireSwayRows(wire: WirePlan, by: string, width: number, { load, show }: Words): Row[] {
  const one = wire.level.apart === 0;
  const lower = one ? `one ring ${by} lower` : `one hook ${by} lower`;
  const { gripping, sliding } = wire;
  return [
    {
      label: 'Wire that grips',
      value: gripping ? tiltText(gripping.tilt, width, show.length) : 'does not reach',
      how: gripping
        ? `${lower}, the wire held fast in the middle; it then pulls ${load(Math.max(...gripping.tensions))}`
        : lower,
    },
    {
      label: 'Wire that slides',
      value: sliding ? tiltText(sliding.tilt, width, show.length) : 'slides away',
      how: sliding
        ? `${lower}, without any friction; it then pulls ${load(sliding.tensions[0])}`
        : `${lower}, without any friction: a ring would run up to its hook`,
    },
    {
      label: 'Without grip',
      value: wire.staysLevel ? 'stays level' : 'would not stay level',
      how: wire.staysLevel
        ? 'its middle lies deep enough under the rings'
        : `its middle lies too near below the rings, so that only the grip of the wire holds it${one ? ': two hooks, or rings right on hooks, are better' : ''}`,
    },
    { label: 'Wire at worst', value: load(wire.worstTension), how: 'of all these; the rings carry the same' },
    { label: 'One hook at worst', value: load(wire.worstHook), how: 'downward' },
  ];
}

function ringSwayRows({ tilt, higher }: RingSway, by: string, width: number, { load, show }: Words): Row[] {
  return [
    { label: 'Tilt', value: tiltText(tilt, width, show.length), how: `one hook ${by} lower` },
    {
      label: 'Higher hook',
      value: load(higher),
      how: 'the lower one carries the rest; where one slips, the other carries all',
    },
  ];
}

function tiltText(tilt: number, width: number, length: (mm: number) => string): string {
  const falls = Math.abs(width * Math.sin(tilt));
  return Math.abs(tilt) < 5e-4 ? 'level' : `${degrees(Math.abs(tilt))}, ${length(falls)} over its width`;
}

/** What leans out, by a model that is told. */
export function leanSection({ lean, hanger }: HangingPlan, depth: number | undefined, words: Words): Section {
  const heading = 'Away from the wall';
  if (hanger.kind === 'cleat') return { heading, rows: [] };
  if (!lean) {
    const why =
      depth === undefined
        ? 'the depth of the moulding is unknown'
        : 'by this model it lies against the wall, with its back or with what stands out behind it';
    return { heading, rows: [{ label: 'Lean', value: 'not reckoned', how: why }] };
  }
  const { show, load } = words;
  return {
    heading,
    rows: [
      {
        label: 'Lean',
        value: leanText(lean.angle),
        how: 'model: stiff, even in itself, its middle in the middle of the moulding’s depth, its lower end on the wall without friction',
      },
      { label: 'Top of the back', value: show.length(lean.top), how: 'off the wall' },
      { label: 'Front', value: show.length(lean.front), how: 'off the wall where it stands out most' },
      {
        label: 'Pull out of the wood',
        value: load(lean.pull),
        how:
          hanger.kind === 'sawtooth'
            ? 'on the hanger, along its screws'
            : 'on both fittings together, along their screws',
      },
    ],
  };
}

function leanText(angle: number): string {
  if (Math.abs(angle) < 5e-4) return 'upright';
  return `${degrees(Math.abs(angle))}, the top ${angle > 0 ? 'further from' : 'nearer to'} the wall`;
}

const WHAT = { wire: 'Wire', hook: 'Hook', fitting: 'Fitting' } as const;

/** What each thing carries beside what it may. */
export function carriedSection({ carried, weight }: HangingPlan, words: Words): Section {
  const { mass } = words;
  const rows = carried.map(({ part, name, load, basis, kg, most, share, why }): Row => {
    const label = `${WHAT[part]}${name === undefined ? '' : `: ${name.slice(0, 40)}`}`;
    const carries = kg === undefined ? `${share.toFixed(2)} x the weight` : words.carried(kg);
    if (load === undefined) {
      return {
        label,
        value: 'rating unknown',
        how: `carries ${carries} at worst: take one that its maker rates for more`,
      };
    }
    const heaviest = most === undefined ? '' : `; so it may carry a picture of up to ${mass(most)}`;
    return {
      label,
      value: mass(load),
      how: `${why === undefined ? '' : `${why}; `}may carry (${basis ?? 'as given'}); carries ${carries} at worst${heaviest}${butWithout(weight)}`,
    };
  });
  return { heading: 'What it may carry', rows };
}
