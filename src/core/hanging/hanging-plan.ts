/** All that is worked out of how a frame hangs: places in mm, loads as parts of its weight and in kg. */
import type { Size } from '../geometry/box';
import type { Bought } from './bought';
import type { Caution } from './cautions';
import type { ChosenHanger } from './choose-hanger';
import type { HangerPlaces } from './hanger-places';
import type { Lean } from './lean';
import type { RingSway, WireSway } from './sway';
import type { HangingWeight } from './weight';

/** The wire, where there is one. */
export interface WirePlan extends WireSway {
  /** From ring to ring over the hooks, taut. */
  readonly length: number;
  /** As it is cut: with both knots. */
  readonly cut: number;
  /** By how much it is longer than the straight line from ring to ring. */
  readonly slack: number;
}

/** What one thing carries beside what it may. */
export interface Carried extends Bought {
  /** Part of the weight that it carries at worst. */
  readonly share: number;
  /** The same, kg; undefined where the weight is unknown. */
  readonly kg?: number;
  /** Heaviest picture that it may carry so, kg; undefined where its load is unknown. */
  readonly most?: number;
}

export interface HangingPlan {
  readonly outside: Size;
  readonly weight: HangingWeight;
  readonly hanger: ChosenHanger;
  readonly places: HangerPlaces;
  readonly wire?: WirePlan;
  /** Of rings that sit right on their hooks. */
  readonly rings?: RingSway;
  /** Undefined where the depth of the moulding is unknown, on a cleat, and where it would not lean. */
  readonly lean?: Lean;
  readonly carried: readonly Carried[];
  readonly cautions: readonly Caution[];
}
