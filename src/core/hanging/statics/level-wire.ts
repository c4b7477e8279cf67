/** A wire between two rings on one hook or on two level ones, when the picture hangs level: lengths, angle and forces. */
import { pullOfEach } from './two-wires';

export interface WireShape {
  /** Between the rings. */
  readonly span: number;
  /** From the line of the rings up to the hooks. */
  readonly drop: number;
  /** Between the hooks; 0 for one. */
  readonly apart: number;
}

/** Forces as parts of the weight. */
export interface LevelWire extends WireShape {
  /** From a ring in to the hook nearest to it: `(span - apart) / 2`. */
  readonly run: number;
  /** Of the sloping parts above the level, radians: `atan(drop / run)`. */
  readonly angle: number;
  /** From ring to ring over the hooks: `apart + 2 sqrt(run² + drop²)`. */
  readonly length: number;
  /** In the wire, the same all along: `(1 / 2) / sin(angle)`. */
  readonly tension: number;
  /** On each hook downward. */
  readonly hookDown: number;
  /** On each of two hooks toward the other: `tension - tension cos(angle)`; none on one. */
  readonly hookSideways: number;
  /** On each ring upward, along an upright moulding. */
  readonly ringUp: number;
  /** On each ring inward, across it. */
  readonly ringInward: number;
}

export function levelWire({ span, drop, apart }: WireShape): LevelWire {
  const run = (span - apart) / 2;
  const angle = Math.atan2(drop, run);
  const tension = pullOfEach(angle);
  const inward = tension * Math.cos(angle);
  return {
    span,
    drop,
    apart,
    run,
    angle,
    length: apart + 2 * Math.hypot(run, drop),
    tension,
    hookDown: apart === 0 ? 1 : 0.5,
    hookSideways: apart === 0 ? 0 : tension - inward,
    ringUp: 0.5,
    ringInward: inward,
  };
}

/** How far the hooks lie above the rings when a wire of this length is taut: the other way round. */
export function dropOfWire(length: number, span: number, apart: number): number {
  const slope = (length - apart) / 2;
  const run = (span - apart) / 2;
  return slope > run ? Math.sqrt((slope - run) * (slope + run)) : 0;
}

/** Tension over twice the weight begins below this angle: `1 / (2 sin a) = 2`. */
export const FLATTEST = Math.asin(1 / 4);
