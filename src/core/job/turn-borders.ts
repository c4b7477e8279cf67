/** Written borders of a mat that is turned by a quarter or turned over; a weighted rule is held by hand first. */
import type { PerSide, Side } from '../geometry/box';
import { isQuarterTurn, movedSides, type Motion } from './motion';
import type { WrittenBorders, WrittenLength } from './written';

/** What the written borders come to in the mat as it stands. */
export interface Reached {
  readonly rule: NonNullable<WrittenBorders['rule']>;
  /** Lengths of the borders, as the job measures them, as texts to write. */
  readonly texts: PerSide<string>;
  /** False in a frame that is made to fit the borders. */
  readonly isGiven: boolean;
  /** True where a gap takes what is left between the borders, which then all have to be given. */
  readonly isStretched: boolean;
}

export interface MovedBorders {
  readonly borders: WrittenBorders;
  /** True where a rule gave way to borders by hand. */
  readonly isHeld: boolean;
}

/** Rules that say the same of all sides, or of each two across from one another. */
const EVEN: readonly Reached['rule'][] = ['centred', 'equal'];

export function movedBorders(borders: WrittenBorders, reached: Reached, motion: Motion): MovedBorders {
  const { rule, texts } = reached;
  const isHand = rule === 'by-hand';
  const keepsRule = EVEN.includes(rule) || (!isHand && motion.to.top === 'top');
  if (keepsRule) {
    const isTurned = rule === 'centred' && isQuarterTurn(motion);
    return { borders: isTurned ? turnedCentred(borders, reached) : borders, isHeld: false };
  }
  const { sides, left = sides, right = sides, top, bottom } = isHand ? borders : { ...held(borders, reached) };
  const given: Partial<PerSide<WrittenLength | undefined>> = reached.isGiven
    ? { left, top, right, bottom }
    : { left: left ?? texts.left, top: top ?? texts.top, right: right ?? texts.right, bottom: bottom ?? texts.bottom };
  return { borders: { ...shell(borders, isHand), ...written(movedSides(given, motion)) }, isHeld: !isHand };
}

/** By a rule of its own every height follows from the sides, the top or a setting; by hand it is a length. */
function held({ sides }: WrittenBorders, { texts, isGiven, isStretched }: Reached) {
  const across = { sides: undefined, left: sides ?? texts.left };
  // In a given frame the border across from a given one takes what is left.
  if (isGiven && !isStretched) return { ...across, top: texts.top };
  return { ...across, right: sides ?? texts.right, top: texts.top, bottom: texts.bottom };
}

/** Made to fit, a top that is not said is as wide as the sides, and these have a usual width. */
function turnedCentred(borders: WrittenBorders, { texts, isGiven }: Reached): WrittenBorders {
  const { sides, top, ...rest } = borders;
  const across = isGiven ? top : (top ?? sides);
  const up = isGiven || top === undefined ? (isGiven ? sides : undefined) : (sides ?? texts.left);
  return { ...rest, ...(across === undefined ? {} : { sides: across }), ...(up === undefined ? {} : { top: up }) };
}

/** All that is not a length of one side, nor a setting of a rule that is given up. */
function shell(borders: WrittenBorders, isHand: boolean): WrittenBorders {
  const { left: _l, right: _r, top: _t, bottom: _b, sides: _s, ...kept } = borders;
  if (isHand) return kept;
  const { rule: _rule, all: _all, amount: _amount, ratio: _ratio, share: _share, step: _step, ...rest } = kept;
  return { rule: 'by-hand', ...rest };
}

function written(sides: Partial<PerSide<WrittenLength | undefined>>): WrittenBorders {
  const said = Object.entries(sides).filter(([, value]) => value !== undefined);
  return Object.fromEntries(said) as Partial<Record<Side, WrittenLength>>;
}
