/** What a frame hangs by: as the job says, or by its size and weight, with the reasons in words. */
import type { Size } from '../geometry/box';
import type { Hanging, HangerKind } from '../job/hanging';
import type { Show } from '../layout/show';
import { massText } from '../mass';
import type { Unit } from '../units';
import { HEAVY, SAWTOOTH_SIZE, SAWTOOTH_WEIGHT } from './limits';
import { isWhole, restingOn, type HangingWeight } from './weight';

export interface ChosenHanger {
  readonly kind: HangerKind;
  readonly hooks: 1 | 2;
  /** Whether the job said it, or it follows from size and weight. */
  readonly from: 'job' | 'size';
  /** Sentences. */
  readonly why: readonly string[];
}

export interface HangerAsk {
  readonly hanging: Hanging;
  /** Frame size. */
  readonly blank: Size;
  readonly weight: HangingWeight;
  readonly show: Show;
  readonly unit: Unit;
  /** The maker's rating of the strongest sawtooth hanger on the shelf, kg; counts before the usual limit. */
  readonly sawtoothLoad?: number | undefined;
}

/** Last bits of a size in inches. */
const SLACK = 1e-6;

export function chooseHanger(ask: HangerAsk): ChosenHanger {
  const { hanger } = ask.hanging;
  const chosen = hanger === 'by size' ? bySize(ask) : { kind: hanger, why: [`The job says so.`] };
  const hooks = hooksOf(ask.hanging, chosen.kind);
  const from = hanger === 'by size' ? 'size' : 'job';
  return { kind: chosen.kind, hooks, from, why: [...chosen.why, ...whyHooks(chosen.kind, hooks)] };
}

function bySize({ blank, weight, show, unit, sawtoothLoad }: HangerAsk): {
  readonly kind: HangerKind;
  readonly why: string[];
} {
  const size = show.size(blank);
  const most = show.size(SAWTOOTH_SIZE);
  const limit = sawtoothLoad ?? SAWTOOTH_WEIGHT;
  const light = massText(limit, unit);
  const whose = sawtoothLoad === undefined ? 'common practice' : 'as its maker rates it';
  const known = isWhole(weight);
  if (isHeavy(weight)) {
    return {
      kind: 'cleat',
      why: [
        `It ${known ? 'may weigh' : 'weighs'} more than ${massText(HEAVY, unit)}: a cleat spreads the weight along the frame and pulls on no wire. So heavy a frame is hung by a professional (Earthquake Country Alliance).`,
      ],
    };
  }
  if (!fitsSawtooth(blank)) {
    return {
      kind: 'rings and wire',
      why: [`${size} is larger than ${most}, where sawtooth hangers end (common practice).`],
    };
  }
  if (weight.kg && weight.kg.greatest > limit) {
    return {
      kind: 'rings and wire',
      why: [
        `It ${known ? 'may weigh' : 'weighs'} ${restingOn(weight, weight.kg.greatest, unit)}, and a sawtooth hanger holds ${light} at most (${whose}).`,
      ],
    };
  }
  return {
    kind: 'sawtooth',
    why: [
      `A frame up to ${most} hangs by a sawtooth hanger (common practice).`,
      known
        ? `It weighs no more than ${light}, which that holds (${whose}).`
        : `Weigh it: over ${light} (${whose}) take rings and wire.`,
    ],
  };
}

export function isHeavy({ kg }: HangingWeight): boolean {
  return kg !== undefined && kg.greatest > HEAVY;
}

/** Whether a sawtooth hanger holds so large a frame, hung either way. */
export function fitsSawtooth({ width, height }: Size): boolean {
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  return short <= SAWTOOTH_SIZE.width + SLACK && long <= SAWTOOTH_SIZE.height + SLACK;
}

function hooksOf({ hooks }: Hanging, kind: HangerKind): 1 | 2 {
  if (kind === 'rings on hooks') return 2;
  return hooks ?? (kind === 'sawtooth' ? 1 : 2);
}

function whyHooks(kind: HangerKind, hooks: 1 | 2): string[] {
  if (kind === 'sawtooth') {
    return hooks === 1 ? ['One hook carries it; it may need setting straight now and then.'] : [];
  }
  if (kind === 'cleat') return ['The rail on the wall holds it level along its whole length.'];
  return hooks === 2
    ? ['Two points on the wall: it can’t swing, and stays level when a door slams.']
    : ['On one hook it turns about a single point: two hooks keep it level when a door slams.'];
}
