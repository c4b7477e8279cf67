/** The moulding of a frame and its sticks in words, a row for each: what, how much, how. */
import { lengthText, showLength, showTogether, type Showing } from '../units';
import { counted } from '../phrases';
import type { FrameMoulding, Rail } from './moulding';
import type { FramePieces, MouldingSticks } from './pieces';
import type { Stick } from './sticks';

export type WordsRow = readonly [what: string, value: string, how: string];

export function mouldingRows(moulding: FrameMoulding, showing: Showing): WordsRow[] {
  const show = (mm: number) => lengthText(mm, showing);
  const { section, rails, kerf, cuts, united, stick, ruleOfThumb } = moulding;
  return [
    ['Face', show(section.width), `${section.name === undefined ? '' : `“${section.name}”, `}lip ${show(section.lip)}`],
    [showing.unit === 'in' ? 'United inches' : 'United size', show(united), 'width + height of the frame size'],
    ...rails.map((rail): WordsRow => [`Rails ${rail.sides}`, `2 x ${show(rail.outside)}`, railWords(rail, show)]),
    ['Mitres', `${moulding.mitreDegrees}°`, `${cuts} cuts, ${show(kerf)} each`],
    ['Whole stick', show(stick), stickSum(moulding, showing)],
    ['Rule of thumb', show(ruleOfThumb), thumbWords(moulding, show)],
    ...(section.corners === 'closed' ? [CLOSED] : []),
  ];
}

const CLOSED: WordsRow = [
  'Corners',
  'closed',
  'joined before they are finished: such a frame is ordered by its rabbet; rails and sticks are told for comparison',
];

function railWords({ rabbet, sight }: Rail, show: (mm: number) => string): string {
  const inside =
    rabbet === sight ? `${show(sight)} inside` : `${show(rabbet)} at the rabbet, ${show(sight)} at the sight edge`;
  return `at the outside, long point to long point; ${inside}`;
}

/** The sum as one would follow it with a pencil, the unit once. */
export function stickSum({ rails, section, cuts, kerf }: FrameMoulding, showing: Showing): string {
  const plain = (mm: number) => showLength(mm, showing).text;
  const [width, height] = rails;
  const saw = kerf > 0 ? ` + ${cuts} x ${plain(kerf)}` : '';
  return `2 x (${plain(width.rabbet)} + ${plain(height.rabbet)}) + 8 x (${plain(section.width)} − ${plain(section.lip)})${saw}`;
}

function thumbWords({ section, spare }: FrameMoulding, show: (mm: number) => string): string {
  const by =
    Math.abs(spare) < 1e-6 ? 'the same' : `${show(Math.abs(spare))} ${spare > 0 ? 'more' : 'less'} than it takes`;
  return `with 8 x the whole width of ${show(section.width)}, no saw cuts: ${by}`;
}

/** One row for each way a stick is cut, then what it comes to. */
export function sticksRows(
  { plan, onShelf }: MouldingSticks,
  frames: readonly FramePieces[],
  showing: Showing,
): WordsRow[] {
  const show = (mm: number) => lengthText(mm, showing);
  const alike = new Map<string, { readonly stick: Stick; readonly count: number }>();
  for (const stick of plan.sticks) {
    const words = railsInStick(stick, frames, show);
    alike.set(words, { stick, count: (alike.get(words)?.count ?? 0) + 1 });
  }
  const there = onShelf === undefined ? '' : `; ${onShelf} on the shelf`;
  return [
    ['In all', `${counted(plan.sticks.length, 'stick')} of ${show(plan.stick)}`, `${provenWords(plan)}${there}`],
    ...[...alike].map(([words, { stick, count }]): WordsRow => [`${count} x`, restWords(stick, show), words]),
    ...balanceRows(plan, showing),
  ];
}

function railsInStick({ rails }: Stick, frames: readonly FramePieces[], show: (mm: number) => string): string {
  const alike = new Map<string, number>();
  for (const { frame, sides, length } of rails) {
    const whose = frames.length === 1 ? '' : `frame ${frame + 1} `;
    const words = `${show(length)} (${whose}${sides})`;
    alike.set(words, (alike.get(words) ?? 0) + 1);
  }
  return [...alike].map(([words, count]) => `${count} x ${words}`).join(', ');
}

function provenWords({ sticks, atLeast }: MouldingSticks['plan']): string {
  return atLeast === sticks.length
    ? 'proven: no way of cutting needs fewer'
    : `${atLeast} at least are needed; fewer than these were not found`;
}

function restWords({ rest, isKept }: Stick, show: (mm: number) => string): string {
  return rest < LEAST_SHOWN ? 'nothing left' : `${show(rest)} ${isKept ? 'to keep' : 'short end'}`;
}

/** What doubles leave of a stick that is filled, mm. */
const LEAST_SHOWN = 1e-3;

/** Where all of the sticks goes; what is shown adds up to them as shown. */
function balanceRows(plan: MouldingSticks['plan'], showing: Showing): WordsRow[] {
  const { rails, kerfs, ends, kept, keptFrom, cuts, stick, sticks } = plan;
  const whole = stick * sticks.length;
  // The rails come last and take what rounding leaves, since they are by far the longest.
  const shown = showTogether([kerfs, ends, kept, rails], whole, showing).map(({ withUnit }) => withUnit);
  const [inCuts = '', inEnds = '', left = '', inRails = ''] = shown;
  const share = ((100 * (kerfs + ends)) / whole).toFixed(1);
  const pieces = sticks.filter(({ isKept }) => isKept).length;
  const enough = `${lengthText(keptFrom, showing)} or more, enough for the shortest of these rails with its two cuts`;
  return [
    ['Rails', inRails, `of ${lengthText(whole, showing)} in all`],
    ['Waste', `${share} %`, `${counted(cuts, 'saw cut')} ${inCuts}, short ends ${inEnds}`],
    ['Left over', left, `${pieces === 0 ? 'no piece' : counted(pieces, 'piece')} to keep, of ${enough}`],
  ];
}
