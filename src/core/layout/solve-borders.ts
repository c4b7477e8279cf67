/** Shares out a blank: the borders on each axis, and the border that gaps share, from the job's rule. */
import type { Borders, BorderRule } from '../job/job';
import { defaultLength, DEFAULT_BORDER_RATIO, DEFAULT_BOTTOM_RATIO } from '../job/defaults';
import type { Fix, Problem } from '../problem';
import type { Unit } from '../units';
import type { Extent } from './extent';

/** What is known of one axis. */
export interface AxisAsk {
  /** Length of the blank, mm; undefined when it is made to fit. */
  readonly blank?: number;
  /** How much of each border the frame hides when borders are measured as seen; otherwise 0. */
  readonly hidden: number;
  readonly extent: (border: number) => Extent;
  /** True when a gap shares what is left between the borders. */
  readonly stretchable: boolean;
  readonly borders: Borders;
  readonly units: Unit;
  readonly show: (mm: number) => string;
}

/** Borders of one axis as the rule measures them (as cut or as seen), mm. */
export interface AxisBorders {
  /** Left or top. */
  readonly start: number;
  /** Right or bottom. */
  readonly end: number;
}

export type Solved =
  { readonly ok: true; readonly value: AxisBorders } | { readonly ok: false; readonly problem: Problem };

/** Borders that differ by less are the same, mm. */
export const SAME = 1e-6;

/** Left and right. */
export function solveAcross(ask: AxisAsk): Solved {
  const { borders } = ask;
  const byHand = borders.rule === 'by-hand';
  const both = borders.sides ?? (borders.rule === 'equal' ? borders.all : undefined);
  const start = byHand ? (borders.left ?? both) : both;
  const end = byHand ? (borders.right ?? both) : both;
  const words = { name: 'width', start: 'left', end: 'right', both: 'sides', at: byHand ? 'borders' : 'borders.sides' };
  if (ask.blank === undefined) {
    const usual = start ?? end ?? defaultLength('border', ask.units);
    return madeToFit(ask, words, { start: start ?? usual, end: end ?? usual });
  }
  if (start !== undefined && end !== undefined) return bothGiven(ask, ask.blank, words, { start, end });
  if (start !== undefined || end !== undefined) return oneGiven(ask, ask.blank, words, start, end);
  return shared(ask, ask.blank, words, (border) => ({ length: border, growth: 1 }));
}

/** Top and bottom, given the border at the sides as the rule measures it. */
export function solveUp(ask: AxisAsk, sides: number): Solved {
  const { borders } = ask;
  const words = {
    name: 'height',
    start: 'top',
    end: 'bottom',
    both: 'top and bottom',
    at: borders.rule === 'by-hand' ? 'borders' : 'borders.top',
  };
  if (ask.blank === undefined) return madeToFit(ask, words, fittedUp(borders, sides));
  if (borders.rule === 'by-hand') {
    const { top, bottom } = borders;
    if (top !== undefined && bottom !== undefined) return bothGiven(ask, ask.blank, words, { start: top, end: bottom });
    if (top !== undefined || bottom !== undefined) return oneGiven(ask, ask.blank, words, top, bottom);
    return shared(ask, ask.blank, words, (border) => ({ length: border, growth: 1 }));
  }
  const rule = bottomRule(borders, sides);
  if (borders.rule === 'top-as-sides') return oneGiven(ask, ask.blank, words, sides, undefined);
  const top = borders.top ?? (borders.rule === 'equal' ? borders.all : undefined);
  if (top !== undefined) return bothGiven(ask, ask.blank, words, { start: top, end: rule(top).length });
  return shared(ask, ask.blank, words, rule);
}

interface AxisWords {
  readonly name: string;
  readonly start: string;
  readonly end: string;
  readonly both: string;
  readonly at: string;
}

/** Bottom border for a top border, and how fast it grows with it. */
function bottomRule(borders: Borders, sides: number): (top: number) => Extent {
  const ratio = borders.ratio ?? DEFAULT_BOTTOM_RATIO;
  const rules: Record<BorderRule, (top: number) => Extent> = {
    centred: (top) => ({ length: top, growth: 1 }),
    equal: (top) => ({ length: top, growth: 1 }),
    'by-hand': (top) => ({ length: top, growth: 1 }),
    'top-as-sides': (top) => ({ length: top, growth: 1 }),
    'bottom-amount': (top) => ({ length: top + borders.amount, growth: 1 }),
    'bottom-ratio': (top) => ({ length: top * ratio, growth: ratio }),
    'height-share': (top) => ({
      length: (top * (1 - borders.topShare)) / borders.topShare,
      growth: (1 - borders.topShare) / borders.topShare,
    }),
    // Sides, top and bottom grow by one step: bottom - top = top - sides.
    'equal-steps': (top) => ({ length: 2 * top - sides, growth: 2 }),
    // Sides : top = top : bottom.
    'equal-ratios': (top) => ({ length: (top * top) / sides, growth: (2 * top) / sides }),
  };
  return rules[borders.rule];
}

function fittedUp(borders: Borders, sides: number): AxisBorders {
  if (borders.rule === 'equal-steps') return { start: sides + borders.step, end: sides + 2 * borders.step };
  if (borders.rule === 'equal-ratios') {
    const ratio = borders.ratio ?? DEFAULT_BORDER_RATIO;
    return { start: sides * ratio, end: sides * ratio * ratio };
  }
  const top = (borders.rule === 'top-as-sides' ? undefined : borders.top) ?? sides;
  if (borders.rule === 'by-hand' || borders.rule === 'top-as-sides') return { start: top, end: borders.bottom ?? top };
  return { start: top, end: bottomRule(borders, sides)(top).length };
}

function madeToFit(ask: AxisAsk, words: AxisWords, value: AxisBorders): Solved {
  if (!ask.stretchable) return { ok: true, value };
  return fail(
    'blank-needed',
    'frame.size',
    `A gap shares what is left between the borders, but the frame is made to fit, so nothing is left over in its ${words.name}; give the frame a size, or the gap a length.`,
  );
}

function bothGiven(ask: AxisAsk, blank: number, words: AxisWords, value: AxisBorders): Solved {
  const natural = ask.extent(value.start).length;
  const room = blank - 2 * ask.hidden - value.start - value.end;
  if (ask.stretchable ? room >= natural : Math.abs(room - natural) <= SAME) return { ok: true, value };
  const { show } = ask;
  const sum = natural + value.start + value.end + 2 * ask.hidden;
  const spare = (room - natural) / 2;
  const nearest =
    value.start === value.end
      ? `${show(value.start + spare)} each`
      : `${show(value.start + spare)} and ${show(value.end + spare)}`;
  const message = `Windows and gaps ${show(natural)}, ${words.start} ${show(value.start)} and ${words.end} ${show(value.end)} make ${show(sum)} in ${words.name}, but the frame has ${show(blank)}; the nearest possible is ${words.both} ${nearest}, or a frame of ${show(sum)}.`;
  const both = words.name === 'width' ? ['left', 'right', 'sides', 'all'] : ['top', 'bottom', 'all'];
  return fail('borders-do-not-add-up', words.at, message, {
    value: show(sum),
    limit: show(blank),
    remedy: `${words.both} ${nearest}`,
    ...(spare + Math.min(value.start, value.end) > 0
      ? {
          fix: {
            label: 'Let the borders take what is left',
            edits: both.map((key) => ({ at: `borders.${key}`, value: undefined })),
          },
        }
      : {}),
  });
}

function oneGiven(
  ask: AxisAsk,
  blank: number,
  words: AxisWords,
  start: number | undefined,
  end: number | undefined,
): Solved {
  if (ask.stretchable) {
    return fail(
      'borders-needed',
      words.at,
      `A gap shares what is left between the borders; say how wide ${words.start} and ${words.end} are.`,
    );
  }
  const given = start ?? end ?? 0;
  // A gap that shares the border follows the border at the start; when that is the open one it is solved for.
  const open =
    start === undefined
      ? solveFor((border) => sum(ask.extent(border), { length: border + given, growth: 1 }), blank - 2 * ask.hidden)
      : blank - 2 * ask.hidden - given - ask.extent(given).length;
  if (open > 0)
    return { ok: true, value: start === undefined ? { start: open, end: given } : { start: given, end: open } };
  const { show } = ask;
  const most = given + open;
  const other = start === undefined ? words.start : words.end;
  const side = start === undefined ? words.end : words.start;
  return fail(
    'border-leaves-nothing',
    `borders.${side}`,
    `A border of ${show(given)} at the ${side} leaves ${show(open)} for the ${other} in a frame ${show(blank)} in ${words.name}; it must be under ${show(Math.max(0, most))}.`,
    { value: show(given), limit: show(Math.max(0, most)) },
  );
}

/** Nothing given: what is left over is shared by the rule. */
function shared(ask: AxisAsk, blank: number, words: AxisWords, end: (start: number) => Extent): Solved {
  const room = blank - 2 * ask.hidden;
  const total = (border: number) =>
    sum(ask.extent(border), { length: border + end(border).length, growth: 1 + end(border).growth });
  const { show } = ask;
  if (ask.stretchable) {
    const each = Math.max(0, room - ask.extent(0).length) / 3;
    return fail(
      'borders-needed',
      words.at,
      `A gap shares what is left between the borders; say how wide the borders (${words.both}) are, such as ${show(each)}.`,
      {
        remedy: `give the borders (${words.both})`,
        fix: {
          label: `Make them ${show(each)}`,
          edits: [
            { at: words.name === 'width' ? 'borders.sides' : 'borders.top', value: `${show(each).replace('≈ ', '')}` },
          ],
        },
      },
    );
  }
  const natural = ask.extent(0).length;
  if (natural >= room) {
    const least = natural + 2 * ask.hidden;
    return fail(
      'windows-do-not-fit',
      'frame.size',
      `Windows and gaps need more than ${show(least)} in ${words.name}, but the frame has ${show(blank)}; take a larger frame or smaller windows.`,
      {
        value: show(blank),
        limit: show(least),
        remedy: `a frame of more than ${show(least)} in ${words.name}`,
      },
    );
  }
  const start = solveFor(total, room);
  const value = { start, end: end(start).length };
  if (start > 0 && value.end > 0) return { ok: true, value };
  return fail(
    'weighting-too-large',
    'borders',
    `The rule for the bottom border leaves ${show(start)} at the top and ${show(value.end)} at the bottom; ${show(room - natural)} is all there is to share.`,
    {
      limit: show(room - natural),
      remedy: 'weight the bottom by less',
      fix: { label: 'Centre it instead', edits: [{ at: 'borders.rule', value: 'centred' }] },
    },
  );
}

/** Where a growing, convex function reaches a value: Newton's method from above, exact in a few steps for straight pieces. */
function solveFor(of: (border: number) => Extent, wanted: number): number {
  let border = wanted;
  for (let step = 0; step < 60; step += 1) {
    const { length, growth } = of(border);
    const next = border - (length - wanted) / growth;
    if (Math.abs(next - border) <= 1e-12 * Math.max(1, Math.abs(border))) return next;
    border = next;
  }
  return border;
}

function sum(a: Extent, b: Extent): Extent {
  return { length: a.length + b.length, growth: a.growth + b.growth };
}

function fail(
  code: string,
  at: string,
  message: string,
  more: Partial<Pick<Problem, 'value' | 'limit' | 'remedy'>> & { fix?: Fix } = {},
): Solved {
  return { ok: false, problem: { code, severity: 'error', at, message, ...more } };
}
