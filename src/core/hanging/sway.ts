/** How a frame hangs when it was not hung quite level: tilted poses on wire and on rings, with their forces. */
import { levelWire, type LevelWire } from './statics/level-wire';
import { settle, staysLevel, type Pose } from './statics/settle';
import { grippingPose, slidingPose, type Rig } from './statics/wire-poses';

export interface SwayAsk {
  readonly span: number;
  /** From the line of the rings up to the hooks. */
  readonly rise: number;
  readonly hooksApart: number;
  /** From the line of the rings down to the centre of mass, taken to be the middle of the frame. */
  readonly below: number;
  /** How far one hook lies lower than the other; on one hook, one ring lower than the other. */
  readonly outOfLevel: number;
}

export interface WireSway {
  readonly level: LevelWire;
  /** True where the frame comes back to level by itself on a wire that slides without friction. */
  readonly staysLevel: boolean;
  /** At rest on a wire that slides; undefined: it slides on until a ring meets its hook. */
  readonly sliding?: Pose;
  /** At rest on a wire that grips its hooks in the middle; undefined where it can't. */
  readonly gripping?: Pose;
  /** The hardest pull in the wire of all of these, as a part of the weight. */
  readonly worstTension: number;
  /** The greatest load on one hook, downward. */
  readonly worstHook: number;
}

export function wireSway({ span, rise, hooksApart, below, outOfLevel }: SwayAsk): WireSway {
  const level = levelWire({ span, drop: rise, apart: hooksApart });
  const one = hooksApart === 0;
  const rig: Rig = {
    hooks: [
      { x: -hooksApart / 2, y: 0 },
      { x: hooksApart / 2, y: one ? 0 : outOfLevel },
    ],
    rings: [
      { x: -span / 2, y: 0 },
      { x: span / 2, y: one ? outOfLevel : 0 },
    ],
    centre: { x: 0, y: -below },
    length: level.length,
  };
  const [left, right] = rig.hooks;
  const leftSlope = (level.length - Math.hypot(right.x - left.x, right.y - left.y)) / 2;
  const sliding = settle((tilt) => slidingPose(rig, tilt));
  const gripping = settle((tilt) => grippingPose(rig, leftSlope, tilt));
  const poses = [sliding, gripping].filter((pose) => pose !== undefined);
  return {
    level,
    staysLevel: staysLevel((tilt) => slidingPose(levelRig(rig), tilt)),
    ...(sliding ? { sliding } : {}),
    ...(gripping ? { gripping } : {}),
    worstTension: Math.max(level.tension, ...poses.flatMap(({ tensions }) => tensions)),
    worstHook: one ? 1 : Math.max(level.hookDown, ...(gripping ? downOn(gripping, rig) : [])),
  };
}

/** The same, hung as it should be. */
function levelRig(rig: Rig): Rig {
  const flat = ({ x }: { readonly x: number }) => ({ x, y: 0 });
  return {
    ...rig,
    hooks: [flat(rig.hooks[0]), flat(rig.hooks[1])],
    rings: [flat(rig.rings[0]), flat(rig.rings[1])],
  };
}

/** What each of two hooks carries downward. */
function downOn({ rings, tensions }: Pose, { hooks }: Rig): number[] {
  return hooks.map((hook, index) => {
    const ring = rings[index] ?? hook;
    const way = Math.hypot(hook.x - ring.x, hook.y - ring.y);
    return ((tensions[index] ?? 0) * (hook.y - ring.y)) / way;
  });
}

/** Two rings right on two hooks. */
export interface RingSway {
  /** Radians. */
  readonly tilt: number;
  /** What the higher hook carries, as a part of the weight; the lower one carries the rest. */
  readonly higher: number;
}

/**
 * The rings rest on hooks of which one is lower: `sin tilt = lower / span`; the middle of the frame swings toward the
 * higher hook, which then carries `1/2 + below tan(tilt) / span`.
 */
export function ringSway(span: number, below: number, outOfLevel: number): RingSway {
  const tilt = Math.asin(Math.min(1, outOfLevel / span));
  return { tilt, higher: 0.5 + (below * Math.tan(tilt)) / span };
}
