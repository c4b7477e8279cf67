/** How far a hanging frame leans out from the wall at its top, and what that pulls on the rings. */

/** Seen from the side, mm. */
export interface LeanAsk {
  /** Of the frame. */
  readonly height: number;
  /** Of the moulding, front to back; the centre of mass is taken to lie in its middle. */
  readonly depth: number;
  /** From the top to the rings or teeth, which are taken to lie in the plane of the back. */
  readonly down: number;
  /** From the line of the rings up to the hooks, along the wire; 0 where rings or teeth sit right on the hooks. */
  readonly rise: number;
  /** From the wall to the wire or ring on the hook. */
  readonly standOff: number;
  /** Thickness of the bumpers at the lower edge. */
  readonly bumpers: number;
  /** What stands out behind the frame's back, as a canvas may: how far, and how far its sides lie inside the frame's. */
  readonly standsOut?: { readonly by: number; readonly inset: number } | undefined;
}

export interface Lean {
  /** Radians from upright; positive: the top is further from the wall than the bottom. */
  readonly angle: number;
  /** From the wall to the upper edge of the back. */
  readonly top: number;
  /** With which the lower edge presses on the wall and the rings together pull on their screws, as a part of the weight. */
  readonly pull: number;
  /** From the wall to the front of the frame where it stands out most. */
  readonly front: number;
}

interface Side {
  readonly ring: { readonly out: number; readonly up: number };
  /** The centre of mass, from the wall. */
  readonly massOut: number;
}

/** Where the frame rests on the wall: on its bumpers, or on what stands out further, which begins above its lower edge. */
function footOf({ bumpers, standsOut }: LeanAsk): { readonly thick: number; readonly up: number } {
  return standsOut && standsOut.by > bumpers ? { thick: standsOut.by, up: standsOut.inset } : { thick: bumpers, up: 0 };
}

/** What lies where at a lean, from the wall and from where it rests on it. */
function sideAt(ask: LeanAsk, angle: number): Side {
  const { height, depth, down } = ask;
  const { thick, up } = footOf(ask);
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const along = height - down - up;
  return {
    ring: { out: thick * cos + along * sin, up: along * cos - thick * sin },
    massOut: (thick + depth / 2) * cos + (height / 2 - up) * sin,
  };
}

/** What double arithmetic may lose, mm. */
const LAST_BITS = 1e-6;

/** Nothing hangs further from upright, radians. */
const STEEPEST = Math.PI / 4;

/**
 * Model: a stiff frame, even in itself, that rests on the wall with its lower edge, or with the lower end of what stands out
 * further behind it, without friction; the wire, seen from
 * the side, runs straight from the rings to the hook. Moments about the lower edge: `mass out - ring out = ring up x pull`.
 * Undefined where the frame would tip over its rings, or where the wall keeps it from leaning so: it then lies flat.
 */
export function leanOf(ask: LeanAsk): Lean | undefined {
  const rest = (angle: number) => moment(ask, angle);
  if (!(rest(-STEEPEST) > 0 && rest(STEEPEST) < 0)) return undefined;
  let [low, high] = [-STEEPEST, STEEPEST];
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (rest(middle) > 0) low = middle;
    else high = middle;
  }
  const { height, depth, standsOut } = ask;
  const { thick, up } = footOf(ask);
  const [sin, cos] = [Math.sin(low), Math.cos(low)];
  const top = thick * cos + (height - up) * sin;
  const bottom = thick * cos - up * sin;
  // The upper end of what stands out, which the wall may stop first.
  const behind = standsOut && thick * cos + (height - standsOut.inset - up) * sin - standsOut.by * cos;
  const pull = pullAt(ask, low);
  // The wall stands behind the top as well.
  if (top < 0 || pull < 0 || (behind !== undefined && behind < -LAST_BITS)) return undefined;
  return { angle: low, top, pull, front: Math.max(top, bottom) + depth * cos };
}

/** What turns the frame outward, as a part of the weight times mm; falls as the frame leans out. */
function moment(ask: LeanAsk, angle: number): number {
  const { ring, massOut } = sideAt(ask, angle);
  // Right on the hook the rings stay where it holds them, whatever that takes.
  if (ask.rise === 0) return ask.standOff - ring.out;
  return massOut - ring.out - ring.up * wirePull(ask, ring.out);
}

function pullAt(ask: LeanAsk, angle: number): number {
  const { ring, massOut } = sideAt(ask, angle);
  return ask.rise === 0 ? (massOut - ring.out) / ring.up : wirePull(ask, ring.out);
}

/** Toward the wall, from the slant of the wire: it carries the weight upward. */
function wirePull({ rise, standOff }: LeanAsk, ringOut: number): number {
  const out = ringOut - standOff;
  const up = Math.sqrt(Math.max(0, rise * rise - out * out));
  return up === 0 ? Math.sign(out) * Infinity : out / up;
}
