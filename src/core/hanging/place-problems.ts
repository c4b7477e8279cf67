/** What is wrong with where hangers and hooks sit: places that can't be, and places that are worth a look. */
import type { HangerKind } from '../job/hanging';
import type { Show } from '../layout/show';
import type { Problem } from '../problem';
import { fitsSawtooth, isHeavy, type ChosenHanger } from './choose-hanger';
import { unitOf, type HangingAsk } from './hanging-ask';
import { woodWidth, type HangerPlaces } from './hanger-places';
import type { HangingPlan } from './hanging-plan';
import { HEAVY, RINGS_DOWN, SAWTOOTH_SIZE, SAWTOOTH_WEIGHT } from './limits';
import { massText } from '../mass';
import { butWithout, isWhole, restingOn } from './weight';

/** What double arithmetic may add or lose, mm. */
const SLACK = 1e-6;

/** Places that no frame can have; those that the others stand on come first. */
export function impossiblePlaces(
  { frame: { outside } }: HangingAsk,
  { kind }: ChosenHanger,
  places: HangerPlaces,
  show: Show,
): Problem[] {
  const { down, span } = places;
  if (down >= outside.height - SLACK) return [offFrame(down, outside.height, show)];
  if (onRings(kind) && span <= SLACK) return [ringsMeet(span, outside.width, show)];
  return [
    ...(kind === 'rings and wire' ? noRise(places, show) : []),
    ...tooFarApart(places.hooksApart, onRings(kind) ? span : outside.width, onRings(kind), show),
  ];
}

function offFrame(down: number, height: number, show: Show): Problem {
  const message = `The hanger would sit ${show.length(down)} below the top of a frame ${show.length(height)} high; put it between a quarter and a third of the height down.`;
  return fault('hanger-off-frame', 'hangerDown', message, [down, height], show);
}

function ringsMeet(span: number, width: number, show: Show): Problem {
  const inward = (width - span) / 2;
  const message = `Each ring would sit ${show.length(inward)} in from its edge, and the frame is only ${show.length(width)} wide.`;
  return fault('rings-meet', 'hangerIn', message, [inward, width / 2], show);
}

function noRise({ drop, down }: HangerPlaces, show: Show): Problem[] {
  if (drop < down - SLACK) return [];
  const message = `The top of the taut wire would lie ${show.length(drop)} below the top of the frame, and the rings sit only ${show.length(down)} below it: the wire must rise from the rings to its hooks. Bring its top nearer to the top of the frame, or set the rings lower.`;
  return [fault('wire-has-no-rise', 'wireBelowTop', message, [drop, down], show)];
}

function tooFarApart(apart: number, most: number, rings: boolean, show: Show): Problem[] {
  if (apart <= most + SLACK) return [];
  const than = rings ? `the rings, ${show.length(most)}` : `the frame is wide, ${show.length(most)}`;
  const message = `The hooks would be ${show.length(apart)} apart, further than ${than}.`;
  return [fault('hooks-too-far-apart', 'hooksApart', message, [apart, most], show)];
}

function fault(
  code: string,
  key: string,
  message: string,
  [value, limit]: readonly [number, number],
  show: Show,
): Problem {
  return {
    code,
    severity: 'error',
    at: `hanging.${key}`,
    message,
    value: show.missing(value, limit),
    limit: show.limit(limit),
    remedy: `less than ${show.limit(limit)}`,
  };
}

/** Places that can be, but are worth a look. */
export function placeProblems(ask: HangingAsk, plan: HangingPlan, show: Show): Problem[] {
  return [
    ...unfitHanger(ask, plan, show),
    ...offTheWood(ask, plan, show),
    ...tooLow(plan, show),
    ...notUsed(ask, plan),
  ];
}

function unfitHanger(ask: HangingAsk, plan: HangingPlan, show: Show): Problem[] {
  const { hanging } = ask.job;
  const { blank } = ask.frame;
  const units = unitOf(ask);
  const { kind } = plan.hanger;
  const warn = (message: string, remedy: string, value: string, limit: string): Problem[] => [
    {
      code: 'hanger-unfit',
      severity: 'warning',
      at: hanging.hanger === 'by size' ? 'hanging' : 'hanging.hanger',
      message: `${message} Take ${remedy}.`,
      value,
      limit,
      remedy,
    },
  ];
  const greatest = plan.weight.kg?.greatest;
  const weighs = greatest === undefined ? '' : restingOn(plan.weight, greatest, units);
  const mayWeigh = isWhole(plan.weight) ? `may weigh ${weighs}` : `weighs ${weighs}${butWithout(plan.weight)}`;
  if (kind === 'sawtooth' && !fitsSawtooth(blank)) {
    const [size, most] = [show.size(blank), show.size(SAWTOOTH_SIZE)];
    return warn(
      `A sawtooth hanger holds frames up to ${most} (common practice), and this one is ${size}.`,
      'rings and wire, on two hooks',
      size,
      most,
    );
  }
  // The maker's rating counts before the usual limit, and is held against the weight with the other loads.
  const rated = plan.carried.some(({ part, load }) => part === 'fitting' && load !== undefined);
  if (kind === 'sawtooth' && !rated && greatest !== undefined && greatest > SAWTOOTH_WEIGHT) {
    const most = massText(SAWTOOTH_WEIGHT, units);
    return warn(
      `A sawtooth hanger holds what weighs up to ${most} (common practice), and this ${mayWeigh}.`,
      'rings and wire, on two hooks',
      weighs,
      most,
    );
  }
  if (isHeavy(plan.weight) && kind !== 'cleat') {
    const most = massText(HEAVY, units);
    return warn(
      `It ${mayWeigh}; what weighs more than ${most} is hung by a professional (Earthquake Country Alliance).`,
      'a cleat, and a professional to hang it',
      weighs,
      most,
    );
  }
  return [];
}

function onRings(kind: HangerKind): boolean {
  return kind === 'rings and wire' || kind === 'rings on hooks';
}

/** The plate of a ring must lie on wood, and within the outer edge, or it shows from the side. */
function offTheWood({ job: { hanging }, frame }: HangingAsk, { hanger, places }: HangingPlan, show: Show): Problem[] {
  if (!onRings(hanger.kind)) return offTheRail({ hanging, frame }, { hanger, places }, show);
  const wood = woodWidth(frame);
  const half = (hanging.fitting.width ?? 0) / 2;
  if (places.in - half >= -SLACK && places.in + half <= wood + SLACK) return [];
  const plate = half > 0 ? `Its plate is ${show.length(2 * half)} wide and` : 'It';
  const outer = places.in - half < -SLACK;
  return [
    {
      code: 'ring-off-wood',
      severity: 'warning',
      at: hanging.hangerIn === undefined && half > 0 ? 'hanging.fitting.width' : 'hanging.hangerIn',
      message: `A ring sits ${show.length(places.in)} in from the outer edge. ${plate} ${
        outer ? 'reaches past the edge, where it shows from the side' : 'reaches past the wood into the rabbet'
      }: behind the face of ${show.length(frame.mouldingWidth)} with its lip of ${show.length(frame.lip)} there is ${show.length(wood)} of wood.`,
      value: show.length(places.in + half),
      limit: show.length(wood),
      remedy: `the middle of the wood, ${show.length(wood / 2)} in, and a plate no wider than the wood`,
    },
  ];
}

/** Below the upper rail there is nothing to screw a sawtooth hanger or a cleat to. */
function offTheRail(
  { hanging, frame }: Pick<HangingAsk, 'frame'> & Pick<HangingAsk['job'], 'hanging'>,
  { hanger: { kind }, places: { down } }: Pick<HangingPlan, 'hanger' | 'places'>,
  show: Show,
): Problem[] {
  const wood = woodWidth(frame);
  if (down <= wood + SLACK) return [];
  const [what, sits] = kind === 'cleat' ? ['cleat', 'edge'] : ['sawtooth hanger', 'teeth'];
  return [
    {
      code: 'hanger-off-wood',
      severity: 'warning',
      at: hanging.hangerDown === undefined ? 'hanging' : 'hanging.hangerDown',
      message: `A ${what} is screwed to the upper rail, and its ${sits} ${kind === 'cleat' ? 'would lie' : 'would sit'} ${show.length(down)} below the top of the frame: behind the face of ${show.length(frame.mouldingWidth)} with its lip of ${show.length(frame.lip)} there is ${show.length(wood)} of wood, and below it none. It may sit up to ${show.limit(wood)} down.`,
      value: show.missing(down, wood),
      limit: show.limit(wood),
      remedy: `the middle of the wood, ${show.length(wood / 2)} down`,
    },
  ];
}

/** Rings below the middle let a frame tip over; rings a little too low let it lean. */
function tooLow({ hanger, places, outside }: HangingPlan, show: Show): Problem[] {
  if (!onRings(hanger.kind)) return [];
  const { down } = places;
  const told = { at: 'hanging.hangerDown', value: show.length(down) };
  if (down >= outside.height / 2 - SLACK) {
    return [
      {
        ...told,
        code: 'rings-below-middle',
        severity: 'warning',
        message: `The rings sit ${show.length(down)} below the top of a frame ${show.length(outside.height)} high, at or below its middle: it tips forward off the wall.`,
        limit: show.length(outside.height / 2),
        remedy: `between ${show.length(RINGS_DOWN.least * outside.height)} and ${show.length(RINGS_DOWN.greatest * outside.height)} down`,
      },
    ];
  }
  if (down <= outside.height * RINGS_DOWN.greatest + SLACK) return [];
  return [
    {
      ...told,
      code: 'rings-low',
      severity: 'note',
      message: `The rings sit ${show.length(down)} below the top, more than a third of ${show.length(outside.height)}: the top leans out from the wall.`,
      limit: show.length(outside.height * RINGS_DOWN.greatest),
      remedy: `a quarter to a third of the height down (common practice)`,
    },
  ];
}

function notUsed({ job: { hanging } }: HangingAsk, { hanger, places }: HangingPlan): Problem[] {
  const differs = hanging.hooksApart !== undefined && Math.abs(hanging.hooksApart - places.hooksApart) > SLACK;
  const one = hanging.hooks === 1 && hanger.hooks === 2;
  if (!differs && !one) return [];
  return [
    {
      code: 'hooks-not-used',
      severity: 'note',
      at: one ? 'hanging.hooks' : 'hanging.hooksApart',
      message: one
        ? 'Rings that sit right on hooks need two of them.'
        : hanger.hooks === 1
          ? 'There is one hook, so that the distance between hooks says nothing.'
          : 'Rings that sit right on their hooks have the hooks as far apart as themselves.',
    },
  ];
}
