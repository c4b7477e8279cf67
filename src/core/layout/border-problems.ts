/** Problems of borders that ask for what cannot be, each with the nearest that can. */
import type { Size } from '../geometry/box';
import type { Borders, Job } from '../job/job';
import type { Edit, Problem } from '../problem';
import type { AxisAsk, AxisBorders, AxisWords } from './axis';
import type { Show } from './show';

type Told = Pick<Problem, 'code' | 'at' | 'message'> & Partial<Problem>;

function error(told: Told): Problem {
  return { severity: 'error', ...told };
}

/** Both borders are given, but windows and borders do not come to the blank. `nearest` is as near as the rule can come. */
export function doNotAddUp(
  { show, extent, hidden, stretchable }: AxisAsk,
  blank: number,
  words: AxisWords,
  { start, end }: AxisBorders,
  nearest: AxisBorders,
): Problem {
  const natural = extent(start).length;
  const whole = natural + start + end + 2 * hidden;
  const sum = show.length(whole);
  const possible = nearest.start > 0 && nearest.end > 0;
  const borders =
    show.length(nearest.start) === show.length(nearest.end)
      ? `${words.both} ${show.typed(nearest.start)} each`
      : `${words.start} ${show.typed(nearest.start)} and ${words.end} ${show.typed(nearest.end)}`;
  const frame = `a frame ${show.typed(whole)} ${words.measure}`;
  const remedy = possible ? `${borders}, or ${frame}` : frame;
  const keys = words.name === 'width' ? ['left', 'right', 'sides', 'all'] : ['top', 'bottom', 'all'];
  return error({
    code: 'borders-do-not-add-up',
    at: words.at,
    message: `Windows and gaps ${show.length(natural)}, ${words.start} ${show.length(start)} and ${words.end} ${show.length(end)} make ${sum} of ${words.name}, but the frame has ${show.length(blank)}; the nearest possible is ${remedy}.`,
    value: sum,
    limit: show.length(blank),
    remedy,
    ...(possible && !stretchable
      ? {
          fix: {
            label: 'Let the borders take what is left',
            edits: keys.map((key) => ({ at: `borders.${key}`, value: undefined })),
          },
        }
      : {}),
  });
}

/** One border is given and leaves `open` for the other; under `most` it would leave something. */
export function leavesNothing(
  { show }: AxisAsk,
  blank: number,
  words: AxisWords,
  given: { readonly side: string; readonly border: number },
  open: number,
  most: number,
): Problem {
  const other = given.side === words.start ? words.end : words.start;
  const remedy = most > 0 ? `a border under ${show.length(most)}` : 'a larger frame or smaller windows';
  return error({
    code: 'border-leaves-nothing',
    at: words.open ?? `borders.${given.side}`,
    message: `A border of ${show.length(given.border)} at the ${given.side} leaves ${show.length(open)} for the ${other} in a frame ${show.length(blank)} ${words.measure}; take ${remedy}.`,
    value: show.length(given.border),
    ...(most > 0 ? { limit: show.length(most) } : {}),
    remedy,
  });
}

/** A gap takes what is left between the borders, which are not both given. `such` are borders that would do. */
export function bordersNeeded({ show, borders }: AxisAsk, words: AxisWords, such: AxisBorders | undefined): Problem {
  const example = such === undefined ? '' : `, such as ${show.length(such.start)}`;
  const how = borders.rule === 'top-as-sides' ? ' by hand' : '';
  return error({
    code: 'borders-needed',
    at: words.at,
    message: `A gap shares what is left between the borders; say how wide ${words.start} and ${words.end} are${how}${example}.`,
    remedy: `give the borders ${words.start} and ${words.end}${how}${example}`,
    ...(such === undefined
      ? {}
      : {
          fix: {
            label: `Make them ${show.limit(such.start)}`,
            edits: borderEdits(borders, words, show.exact(such.start)),
          },
        }),
  });
}

function borderEdits({ rule }: Borders, words: AxisWords, value: string): Edit[] {
  if (rule === 'equal') return [{ at: 'borders.all', value }];
  if (words.name === 'width') return [{ at: 'borders.sides', value }];
  const keys = rule === 'by-hand' ? ['top', 'bottom'] : ['top'];
  return keys.map((key) => ({ at: `borders.${key}`, value }));
}

export function windowsDoNotFit(
  { show, hidden, frameAt }: AxisAsk,
  blank: number,
  words: AxisWords,
  natural: number,
): Problem {
  const least = show.length(natural + 2 * hidden);
  return error({
    code: 'windows-do-not-fit',
    at: frameAt,
    message: `Windows and gaps need more than ${least} of ${words.name}, but the frame has ${show.length(blank)}; take a larger frame or smaller windows.`,
    value: show.length(blank),
    limit: least,
    remedy: `a frame more than ${least} ${words.measure}`,
    fix: {
      label: 'Make the frame to fit',
      edits: [
        { at: 'frame.size', value: undefined },
        { at: 'frame.readyMade', value: undefined },
      ],
    },
  });
}

/** The rule for the bottom leaves nothing at the top or at the bottom. */
export function weightingTooLarge(
  { show, borders, extent, hidden, blank }: AxisAsk,
  { start, end }: AxisBorders,
): Problem {
  // All there is to share: an amount must stay under it.
  const most = blank === undefined ? undefined : blank - 2 * hidden - extent(0).length;
  const byAmount = borders.rule === 'bottom-amount' && most !== undefined;
  const remedy = byAmount ? `weight the bottom by less than ${show.length(most)}` : 'weight the bottom by less';
  return error({
    code: 'weighting-too-large',
    at: 'borders',
    message: `The rule for the bottom border leaves ${show.length(start)} at the top and ${show.length(end)} at the bottom; ${remedy}.`,
    value: `${show.length(start)} and ${show.length(end)}`,
    ...(byAmount ? { limit: show.length(most) } : {}),
    remedy,
    ...(borders.rule === 'by-hand'
      ? {}
      : { fix: { label: 'Centre it instead', edits: [{ at: 'borders.rule', value: 'centred' }] } }),
  });
}

/** A gap takes what is left, but a frame made to fit leaves nothing. */
export function nothingLeftOver(words: AxisWords): Problem {
  return error({
    code: 'blank-needed',
    at: 'frame.size',
    message: `A gap shares what is left between the borders, but the frame is made to fit, so nothing is left over in its ${words.name}; give the frame a size, or the gap a length.`,
    remedy: 'give the frame a size, or the gap a length',
  });
}

/** All four borders equal on a blank of given size: only if width and height leave the same over. */
export function unequalBorders(
  blank: Size,
  sides: number,
  topAndBottom: number,
  across: AxisAsk,
  up: AxisAsk,
): Problem {
  const { show } = across;
  // Keep one side of the blank, and give the other what the same border asks for.
  const height = up.extent(sides).length + 2 * (sides + up.hidden);
  const width = across.extent(topAndBottom).length + 2 * (topAndBottom + across.hidden);
  const lower = sizeToTake({ width: blank.width, height }, 'height', show);
  const narrower = sizeToTake({ width, height: blank.height }, 'width', show);
  const [beside, above] = [show.length(sides), show.length(topAndBottom)];
  return error({
    code: 'borders-cannot-be-equal',
    at: 'borders.rule',
    message: `Four equal borders do not fit a frame of ${show.size(blank)}: ${beside} is left at the sides, ${above} at top and bottom. Equal borders of ${beside} need ${lower}, of ${above} need ${narrower}.`,
    value: `${beside} and ${above}`,
    remedy: `a frame of ${lower} or ${narrower}, or centred borders`,
    fix: {
      label: 'Centre the windows instead',
      edits: [
        { at: 'borders.rule', value: 'centred' },
        { at: 'borders.all', value: undefined },
      ],
    },
  });
}

/** A frame's size, with the side that was worked out told exactly where the step rounds it. */
function sizeToTake(size: Size, side: 'width' | 'height', show: Show): string {
  const typed = show.typed(size[side]);
  const exactly = typed === show.length(size[side]) ? '' : `, ${side} ${show.exact(size[side])}`;
  return show.size(size) + exactly;
}

/** Written borders that the rule takes no notice of. */
export function unusedBorders({ borders, frame }: Job): Problem[] {
  const { rule, left, right } = borders;
  const byHand = rule === 'by-hand';
  const used: Readonly<Record<'all' | 'sides' | 'left' | 'right' | 'top' | 'bottom', boolean>> = {
    all: rule === 'equal',
    sides: !(rule === 'equal' && borders.all !== undefined) && !(byHand && left !== undefined && right !== undefined),
    left: byHand,
    right: byHand,
    bottom: byHand || (rule === 'top-as-sides' && !frame.blank),
    top: !['equal', 'top-as-sides', ...(frame.blank ? [] : ['equal-steps', 'equal-ratios'])].includes(rule),
  };
  return (['all', 'sides', 'left', 'right', 'top', 'bottom'] as const)
    .filter((key) => borders[key] !== undefined && !used[key])
    .map((key) => ({
      code: 'border-not-used',
      severity: 'warning' as const,
      at: `borders.${key}`,
      message: `The rule "${rule}" works the borders out without "${key}" and takes no notice of it; take it away, or give all borders by hand.`,
      remedy: 'take it away, or give all borders by hand',
      fix: { label: 'Take it away', edits: [{ at: `borders.${key}`, value: undefined }] },
    }));
}

/** Freely placed windows alone do not say how large a blank is. */
export function blankOnlyForFree(): Problem {
  return error({
    code: 'blank-needed',
    at: 'frame.size',
    message: 'All windows are placed freely, so borders cannot say how large the frame is; give the frame a size.',
    remedy: 'give the frame a size',
  });
}
