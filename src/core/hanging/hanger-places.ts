/** Where rings, teeth or cleat sit on the back of a frame, and how far below its top the hooks come to lie. */
import type { Size } from '../geometry/box';
import type { Hanging, HangerKind } from '../job/hanging';
import { RINGS_DOWN } from './limits';

export interface HangerPlaces {
  /** From the top of the frame to where the hanger takes the load. */
  readonly down: number;
  /** From the outer edge in to the middle of each ring; of one sawtooth hanger half the width. */
  readonly in: number;
  /** Between the rings, or between two sawtooth hangers; 0 for one. */
  readonly span: number;
  /** Between the hooks; 0 for one. */
  readonly hooksApart: number;
  /** From the top of the frame to where the wire, ring, teeth or cleat sit on the hooks. */
  readonly drop: number;
}

export interface PlacesAsk {
  readonly hanging: Hanging;
  readonly kind: HangerKind;
  readonly hooks: 1 | 2;
  readonly outside: Size;
  readonly mouldingWidth: number;
  readonly lip: number;
}

/** Wood at the back of the moulding, from the outer edge to the wall of the rabbet. */
export function woodWidth({ mouldingWidth, lip }: Pick<PlacesAsk, 'mouldingWidth' | 'lip'>): number {
  return mouldingWidth - lip;
}

export function hangerPlaces(ask: PlacesAsk): HangerPlaces {
  return ask.kind === 'rings and wire' || ask.kind === 'rings on hooks' ? ringPlaces(ask) : railPlaces(ask);
}

function ringPlaces(ask: PlacesAsk): HangerPlaces {
  const { hanging, kind, hooks, outside } = ask;
  const down = hanging.hangerDown ?? RINGS_DOWN.usual * outside.height;
  const inward = hanging.hangerIn ?? woodWidth(ask) / 2;
  const span = outside.width - 2 * inward;
  const onWire = kind === 'rings and wire';
  return {
    down,
    in: inward,
    span,
    hooksApart: onWire ? (hooks === 1 ? 0 : (hanging.hooksApart ?? span / 2)) : span,
    drop: onWire ? hanging.wireBelowTop : down,
  };
}

/** Sawtooth hangers and cleats sit on the upper rail. */
function railPlaces({ hanging, kind, hooks, outside, mouldingWidth }: PlacesAsk): HangerPlaces {
  const down = hanging.hangerDown ?? mouldingWidth / 2;
  const hooksApart = hooks === 1 ? 0 : (hanging.hooksApart ?? outside.width / 2);
  const span = kind === 'sawtooth' ? hooksApart : 0;
  return { down, in: (outside.width - span) / 2, span, hooksApart, drop: down };
}
