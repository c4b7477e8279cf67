/** Works out how a frame hangs: by what, where it sits, what that pulls, and whether it holds. */
import { bad, bySeverity, good, type Result } from '../problem';
import { ofKind, type Shelf } from '../shelf/shelf';
import { boughtParts, namesNotOnShelf, type Bought, type BoughtPart } from './bought';
import { cautionsFor } from './cautions';
import { chooseHanger, type ChosenHanger } from './choose-hanger';
import { hangerPlaces, type HangerPlaces } from './hanger-places';
import { showOf, unitOf, type HangingAsk } from './hanging-ask';
import type { Carried, HangingPlan, WirePlan } from './hanging-plan';
import { leanOf, type Lean } from './lean';
import { loadProblems } from './load-problems';
import { impossiblePlaces, placeProblems } from './place-problems';
import { ringSway, wireSway, type RingSway } from './sway';
import { hangingWeight, isWhole, weightProblems, type HangingWeight } from './weight';

/**
 * Lengths in mm, exact; forces as parts of the weight, which holds whatever it weighs. The centre of mass is taken to be
 * the middle of the frame.
 */
export function planHanging(ask: HangingAsk): Result<HangingPlan> {
  const { job, frame, shelf = [] } = ask;
  const { hanging } = job;
  const [show, unit] = [showOf(ask), unitOf(ask)];
  const weight = hangingWeight(hanging, ask.weighed);
  const hanger = chooseHanger({ hanging, blank: frame.blank, weight, show, unit, sawtoothLoad: sawtoothLoad(shelf) });
  const { outside, mouldingWidth, lip } = frame;
  const places = hangerPlaces({
    hanging,
    kind: hanger.kind,
    hooks: hanger.hooks,
    outside,
    mouldingWidth,
    lip,
    units: job.units,
  });
  const impossible = impossiblePlaces(ask, hanger, places, show);
  if (impossible.length > 0) return bad(impossible);
  const wire = hanger.kind === 'rings and wire' ? planWire(ask, places) : undefined;
  const rings = hanger.kind === 'rings on hooks' ? swayOnRings(ask, places) : undefined;
  const shares = sharesOf(hanger, wire, rings);
  const lean = planLean(ask, hanger, places);
  const plan: HangingPlan = {
    outside,
    weight,
    hanger,
    places,
    ...(wire ? { wire } : {}),
    ...(rings ? { rings } : {}),
    ...(lean ? { lean } : {}),
    carried: boughtParts(hanging, hanger.kind, shelf, needsOf(shares, weight)).map((part) =>
      carriedBy(part, shares, weight),
    ),
    cautions: cautionsFor({ hanging, glazing: job.package.glazing, weight }),
  };
  const problems = [
    ...namesNotOnShelf(hanging, hanger.kind, shelf),
    ...placeProblems(ask, plan, show),
    ...loadProblems({ hanging, units: unit }, plan, show),
    ...weightProblems(weight),
  ];
  return good(plan, bySeverity(problems));
}

function sawtoothLoad(shelf: Shelf): number | undefined {
  const loads = ofKind(shelf, 'sawtooth').flatMap(({ load }) => load ?? []);
  return loads.length === 0 ? undefined : Math.max(...loads);
}

function planWire({ job: { hanging }, frame: { outside } }: HangingAsk, places: HangerPlaces): WirePlan {
  const { span, hooksApart, down, drop } = places;
  const sway = wireSway({
    span,
    rise: down - drop,
    hooksApart,
    below: outside.height / 2 - down,
    outOfLevel: hanging.outOfLevel,
  });
  const { length } = sway.level;
  return { ...sway, length, cut: length + 2 * hanging.knots, slack: length - span };
}

function swayOnRings({ job: { hanging }, frame: { outside } }: HangingAsk, { span, down }: HangerPlaces): RingSway {
  return ringSway(span, outside.height / 2 - down, hanging.outOfLevel);
}

function planLean(
  { job, frame, standsOut }: HangingAsk,
  { kind }: ChosenHanger,
  places: HangerPlaces,
): Lean | undefined {
  const depth = job.frame.mouldingDepth;
  if (depth === undefined || kind === 'cleat') return undefined;
  const { hook, bumpers } = job.hanging;
  const rise = kind === 'rings and wire' ? places.down - places.drop : 0;
  const { standOff } = hook;
  return leanOf({ height: frame.outside.height, depth, down: places.down, rise, standOff, bumpers, standsOut });
}

/** What each kind of thing carries at worst, as a part of the weight. */
function sharesOf(
  hanger: ChosenHanger,
  wire: WirePlan | undefined,
  rings: RingSway | undefined,
): Record<BoughtPart, number> {
  if (wire) return { wire: wire.worstTension, hook: wire.worstHook, fitting: wire.worstTension };
  const each = rings ? rings.higher : 1 / hanger.hooks;
  // A cleat is one rail, however many fixings hold it.
  return { wire: 0, hook: each, fitting: hanger.kind === 'cleat' ? 1 : each };
}

/** Nothing is known to suffice for a weight that is not whole. */
function needsOf(shares: Record<BoughtPart, number>, weight: HangingWeight) {
  const { kg } = weight;
  if (!kg || !isWhole(weight)) return {};
  return { wire: shares.wire * kg.greatest, hook: shares.hook * kg.greatest, fitting: shares.fitting * kg.greatest };
}

function carriedBy(part: Bought, shares: Record<BoughtPart, number>, { kg }: HangingWeight): Carried {
  const share = shares[part.part];
  return {
    ...part,
    share,
    ...(kg ? { kg: share * kg.greatest } : {}),
    ...(part.load === undefined ? {} : { most: part.load / share }),
  };
}
