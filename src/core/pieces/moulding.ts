/** What a frame takes of its moulding: the lengths of its rails, and the whole stick beside the rule of thumb. */
import type { Size } from '../geometry/box';
import type { Layout } from '../layout/layout';
import type { Section } from './section';

/** One of the two pairs of rails, mm; each end is cut at 45 degrees, so that the outside is the longest. */
export interface Rail {
  readonly sides: 'top and bottom' | 'left and right';
  readonly count: 2;
  /** At the outer edge: the length to cut, long point to long point. */
  readonly outside: number;
  /** At the rabbet's wall. */
  readonly rabbet: number;
  /** At the sight edge: short point to short point. */
  readonly sight: number;
}

/** Four corners of two cuts each. */
export const CUTS_OF_FRAME = 8;
export const CUTS_OF_RAIL = 2;
export const MITRE_DEGREES = 45;

export interface FrameMoulding {
  readonly section: Section;
  /** Width + height of the frame size, mm; in inches the united inches that frames are priced by. */
  readonly united: number;
  readonly outside: Size;
  readonly rails: readonly [Rail, Rail];
  readonly mitreDegrees: typeof MITRE_DEGREES;
  readonly cuts: typeof CUTS_OF_FRAME;
  /** Of one cut, mm. */
  readonly kerf: number;
  /** The four rails end to end without a kerf: `2 x (w + h)` of the rabbet `+ 8 x (width - lip)`. */
  readonly railsLength: number;
  /** The same with a kerf for each cut: what a frame takes of its stick. */
  readonly stick: number;
  /** What is usually reckoned: `2 x (w + h)` of the rabbet `+ 8 x width`. Common practice, no source. */
  readonly ruleOfThumb: number;
  /** How much longer the rule of thumb is than `stick`; negative: too short. */
  readonly spare: number;
}

/** @param kerf what one cut takes off the stick, mm. */
export function mouldingOf({ frame }: Layout, section: Section, kerf: number): FrameMoulding {
  const { blank, rabbet } = frame;
  const beyond = section.width - section.lip;
  const rail = (sides: Rail['sides'], length: number): Rail => ({
    sides,
    count: 2,
    outside: length + 2 * beyond,
    rabbet: length,
    sight: length - 2 * section.lip,
  });
  const around = 2 * (rabbet.width + rabbet.height);
  const railsLength = around + 8 * beyond;
  const stick = railsLength + CUTS_OF_FRAME * kerf;
  const ruleOfThumb = around + 8 * section.width;
  return {
    section,
    united: blank.width + blank.height,
    outside: { width: rabbet.width + 2 * beyond, height: rabbet.height + 2 * beyond },
    rails: [rail('top and bottom', rabbet.width), rail('left and right', rabbet.height)],
    mitreDegrees: MITRE_DEGREES,
    cuts: CUTS_OF_FRAME,
    kerf,
    railsLength,
    stick,
    ruleOfThumb,
    spare: ruleOfThumb - stick,
  };
}
