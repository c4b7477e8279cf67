/** Shares out a blank: the borders on each axis, and the border that gaps share, from the job's rule. */
import type { Borders, BorderRule } from '../job/job';
import { defaultLength, DEFAULT_BORDER_RATIO, DEFAULT_BOTTOM_RATIO } from '../job/defaults';
import type { Problem } from '../problem';
import type { AxisAsk, AxisBorders, AxisWords } from './axis';
import {
  bordersNeeded,
  doNotAddUp,
  leavesNothing,
  nothingLeftOver,
  weightingTooLarge,
  windowsDoNotFit,
} from './border-problems';
import type { Extent } from './extent';

export type Solved =
  { readonly ok: true; readonly value: AxisBorders } | { readonly ok: false; readonly problem: Problem };

/** The border at the end for a border at the start, and how fast it grows with it. */
type EndRule = (start: number) => Extent;

/** Borders that differ by less are the same, mm: a tenth of a micron, what a typed decimal of six places may miss. */
export const SAME = 1e-4;

/** Left and right. */
export function solveAcross(ask: AxisAsk): Solved {
  const { borders } = ask;
  const byHand = borders.rule === 'by-hand';
  const all = borders.rule === 'equal' ? borders.all : undefined;
  const both = all ?? borders.sides;
  const start = byHand ? (borders.left ?? both) : both;
  const end = byHand ? (borders.right ?? both) : both;
  const at = `borders.${all !== undefined ? 'all' : byHand && borders.left !== undefined ? 'left' : 'sides'}`;
  const words: AxisWords = { name: 'width', measure: 'wide', start: 'left', end: 'right', both: 'sides', at };
  if (ask.blank === undefined) {
    const usual = start ?? end ?? defaultLength('border', ask.units);
    return madeToFit(ask, words, { start: start ?? usual, end: end ?? usual });
  }
  if (start !== undefined && end !== undefined) return bothGiven(ask, ask.blank, words, { start, end });
  if (start !== undefined || end !== undefined) return oneGiven(ask, ask.blank, words, start, end);
  return shared(ask, ask.blank, words, same);
}

/** Top and bottom, given the border at the sides as the rule measures it. */
export function solveUp(ask: AxisAsk, sides: number): Solved {
  const { borders, blank } = ask;
  const words: AxisWords = {
    name: 'height',
    measure: 'high',
    start: 'top',
    end: 'bottom',
    both: 'top and bottom',
    at: upPath(borders),
  };
  if (blank === undefined) return madeToFit(ask, words, fittedUp(borders, sides));
  const { rule, top, bottom } = borders;
  if (rule === 'top-as-sides') return oneGiven(ask, blank, { ...words, open: 'borders.rule' }, sides, undefined);
  if (rule === 'by-hand' && bottom !== undefined) {
    return top === undefined
      ? oneGiven(ask, blank, words, undefined, bottom)
      : bothGiven(ask, blank, words, { start: top, end: bottom });
  }
  if (rule === 'by-hand' && top !== undefined) return oneGiven(ask, blank, words, top, undefined);
  const end = bottomRule(borders, sides);
  const given = rule === 'equal' ? borders.all : top;
  if (given === undefined) return shared(ask, blank, words, end);
  return bothGiven(ask, blank, words, { start: given, end: end(given).length }, end);
}

function upPath({ rule, all }: Borders): string {
  if (rule === 'top-as-sides') return 'borders.rule';
  return rule === 'equal' && all !== undefined ? 'borders.all' : 'borders.top';
}

const same: EndRule = (start) => ({ length: start, growth: 1 });

function bottomRule(borders: Borders, sides: number): EndRule {
  const ratio = borders.ratio ?? DEFAULT_BOTTOM_RATIO;
  const share = (1 - borders.topShare) / borders.topShare;
  const rules: Record<BorderRule, EndRule> = {
    centred: same,
    equal: same,
    'by-hand': same,
    'top-as-sides': same,
    'bottom-amount': (top) => ({ length: top + borders.amount, growth: 1 }),
    'bottom-ratio': (top) => ({ length: top * ratio, growth: ratio }),
    'height-share': (top) => ({ length: top * share, growth: share }),
    // Sides, top and bottom grow by one step: bottom - top = top - sides.
    'equal-steps': (top) => ({ length: 2 * top - sides, growth: 2 }),
    // Sides : top = top : bottom.
    'equal-ratios': (top) => ({ length: (top * top) / sides, growth: (2 * top) / sides }),
  };
  return rules[borders.rule];
}

function fittedUp(borders: Borders, sides: number): AxisBorders {
  const { rule, step } = borders;
  if (rule === 'equal') return { start: sides, end: sides };
  if (rule === 'equal-steps') return { start: sides + step, end: sides + 2 * step };
  if (rule === 'equal-ratios') {
    const ratio = borders.ratio ?? DEFAULT_BORDER_RATIO;
    return { start: sides * ratio, end: sides * ratio * ratio };
  }
  const top = (rule === 'top-as-sides' ? undefined : borders.top) ?? sides;
  if (rule === 'by-hand' || rule === 'top-as-sides') return { start: top, end: borders.bottom ?? top };
  return { start: top, end: bottomRule(borders, sides)(top).length };
}

function madeToFit(ask: AxisAsk, words: AxisWords, value: AxisBorders): Solved {
  if (ask.stretchable) return { ok: false, problem: nothingLeftOver(words) };
  if (value.start > 0 && value.end > 0) return { ok: true, value };
  return { ok: false, problem: weightingTooLarge(ask, value) };
}

function bothGiven(ask: AxisAsk, blank: number, words: AxisWords, value: AxisBorders, rule?: EndRule): Solved {
  if (value.end <= 0) return { ok: false, problem: weightingTooLarge(ask, value) };
  const natural = ask.extent(value.start).length;
  const room = blank - 2 * ask.hidden;
  const left = room - value.start - value.end - natural;
  if (ask.stretchable ? left >= -SAME : Math.abs(left) <= SAME) return { ok: true, value };
  const end: EndRule = rule ?? ((start) => ({ length: start + value.end - value.start, growth: 1 }));
  const start = solveFor((border) => sum(ask.extent(border), sum(same(border), end(border))), room);
  return { ok: false, problem: doNotAddUp(ask, blank, words, value, { start, end: end(start).length }) };
}

/** One border given, the other takes what is left. */
function oneGiven(
  ask: AxisAsk,
  blank: number,
  words: AxisWords,
  start: number | undefined,
  end: number | undefined,
): Solved {
  if (ask.stretchable) return { ok: false, problem: bordersNeeded(ask, words, undefined) };
  const room = blank - 2 * ask.hidden;
  // A gap that shares the border follows the border at the start, so that what is left for the start has to be solved for.
  const startFor = (end: number) => solveFor((border) => sum(ask.extent(border), same(border)), room - end);
  if (start === undefined) {
    const given = end ?? 0;
    const open = startFor(given);
    if (open > 0) return { ok: true, value: { start: open, end: given } };
    const border = { side: words.end, border: given };
    return { ok: false, problem: leavesNothing(ask, blank, words, border, open, room - ask.extent(0).length) };
  }
  const open = room - start - ask.extent(start).length;
  if (open > 0) return { ok: true, value: { start, end: open } };
  const border = { side: words.start, border: start };
  return { ok: false, problem: leavesNothing(ask, blank, words, border, open, startFor(0)) };
}

/** Nothing given: what is left over is shared by the rule. */
function shared(ask: AxisAsk, blank: number, words: AxisWords, end: EndRule): Solved {
  const room = blank - 2 * ask.hidden;
  const natural = ask.extent(0).length;
  if (natural >= room) return { ok: false, problem: windowsDoNotFit(ask, blank, words, natural) };
  const total = (border: number) => sum(ask.extent(border), sum(same(border), end(border)));
  if (ask.stretchable) {
    // As much for the gap as for a border, so that the borders of the example fit.
    const start = solveFor((border) => sum(total(border), same(border)), room);
    const such = start > 0 && end(start).length > 0 ? { start, end: end(start).length } : undefined;
    return { ok: false, problem: bordersNeeded(ask, words, such) };
  }
  const start = solveFor(total, room);
  const value = { start, end: end(start).length };
  if (start > 0 && value.end > 0) return { ok: true, value };
  return { ok: false, problem: weightingTooLarge(ask, value) };
}

/**
 * Where a length that grows with the border reaches what is wanted: Newton's method, exact in a few steps for straight
 * pieces, kept between the nearest borders known to be too small and too large.
 */
export function solveFor(of: (border: number) => Extent, wanted: number): number {
  let [low, high] = [-Infinity, Infinity];
  let border = wanted;
  for (let step = 0; step < 200; step += 1) {
    const { length, growth } = of(border);
    if (length < wanted) low = border;
    else high = border;
    const newton = border - (length - wanted) / growth;
    const next = newton >= low && newton <= high ? newton : (low + high) / 2;
    if (Math.abs(next - border) <= 1e-12 * Math.max(1, Math.abs(border))) return next;
    border = next;
  }
  return border;
}

function sum(a: Extent, b: Extent): Extent {
  return { length: a.length + b.length, growth: a.growth + b.growth };
}
