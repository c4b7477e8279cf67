/** Where rings, teeth or cleat sit on the back of a frame, and how far below its top the hooks come to lie. */
import type { Size } from '../geometry/box';
import { defaultLength } from '../job/defaults';
import type { Hanging, HangerKind } from '../job/hanging';
import { MM_PER_INCH, type Unit } from '../units';
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
  readonly units: Unit;
}

/** What is not said lies on a mark that is easy to find on a rule, mm: in inch jobs, in metric ones. */
const MARKS = { down: [MM_PER_INCH / 4, 5], apart: [MM_PER_INCH / 2, 10] } as const;
/** A wire that rises by this pulls no harder than the weight. */
const GOOD_ANGLE = Math.PI / 6;

/** Wood at the back of the moulding, from the outer edge to the wall of the rabbet. */
export function woodWidth({ mouldingWidth, lip }: Pick<PlacesAsk, 'mouldingWidth' | 'lip'>): number {
  return mouldingWidth - lip;
}

export function hangerPlaces(ask: PlacesAsk): HangerPlaces {
  return ask.kind === 'rings and wire' || ask.kind === 'rings on hooks' ? ringPlaces(ask) : railPlaces(ask);
}

function ringPlaces(ask: PlacesAsk): HangerPlaces {
  const { hanging, kind, outside, units } = ask;
  const down = hanging.hangerDown ?? onMark(RINGS_DOWN.usual * outside.height, 'down', units);
  const inward = hanging.hangerIn ?? woodWidth(ask) / 2;
  const span = outside.width - 2 * inward;
  if (kind === 'rings on hooks') return { down, in: inward, span, hooksApart: span, drop: down };
  const drop = hanging.wireBelowTop ?? Math.min(defaultLength('wireBelowTop', units), down / 2);
  return { down, in: inward, span, hooksApart: hooksOnWire(ask, span, down - drop), drop };
}

/** Half as far apart as the rings, or as far as gives the wire a good angle. */
function hooksOnWire({ hanging, hooks, units }: PlacesAsk, span: number, rise: number): number {
  if (hooks === 1) return 0;
  const steep = span - (2 * Math.max(0, rise)) / Math.tan(GOOD_ANGLE);
  const usual = Math.max(span / 2, steep);
  return hanging.hooksApart ?? Math.min(span, onMark(usual, 'apart', units));
}

function onMark(length: number, what: keyof typeof MARKS, units: Unit): number {
  const step = MARKS[what][units === 'in' ? 0 : 1];
  return Math.max(1, Math.round(length / step)) * step;
}

/** Whether there is wood behind the middle of the face; a deep lip leaves none there. */
export function isFaceOnWood(section: Pick<PlacesAsk, 'mouldingWidth' | 'lip'>): boolean {
  return section.mouldingWidth / 2 <= woodWidth(section);
}

/** Sawtooth hangers and cleats sit on the upper rail, in the middle of its face where that is wood. */
function railPlaces(ask: PlacesAsk): HangerPlaces {
  const { hanging, kind, hooks, outside, mouldingWidth, units } = ask;
  const down = hanging.hangerDown ?? (isFaceOnWood(ask) ? mouldingWidth : woodWidth(ask)) / 2;
  const hooksApart = hooks === 1 ? 0 : (hanging.hooksApart ?? onMark(outside.width / 2, 'apart', units));
  const span = kind === 'sawtooth' ? hooksApart : 0;
  return { down, in: (outside.width - span) / 2, span, hooksApart, drop: down };
}
