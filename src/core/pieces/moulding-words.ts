/** The moulding of a frame and its sticks in words, a row for each: what, how much, how. */
import { counted, listed } from './counted';
import { lengthText, showLength, type Showing } from '../units';
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
  'joined before they are finished: such a frame is ordered by its rabbet, not cut from a stick',
];

function railWords({ rabbet, sight }: Rail, show: (mm: number) => string): string {
  const inside =
    rabbet === sight ? `${show(sight)} inside` : `${show(rabbet)} at the rabbet, ${show(sight)} at the sight edge`;
  return `at the outside, long point to long point; ${inside}`;
}

/** The sum as one would follow it with a pencil, the unit once. */
function stickSum({ rails, section, cuts, kerf }: FrameMoulding, showing: Showing): string {
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
    ...[...alike].map(([words, { stick, count }]): WordsRow => [`${count} x`, `${show(stick.rest)} left`, words]),
    wasteRow(plan, show),
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

function wasteRow(
  { rails, kerfs, rest, cuts, stick, sticks }: MouldingSticks['plan'],
  show: (mm: number) => string,
): WordsRow {
  const share = (100 * (rest + kerfs)) / (stick * sticks.length);
  const parts = [`rails ${show(rails)}`, `${cuts} saw cuts ${show(kerfs)}`, `left over ${show(rest)}`];
  return ['Waste', `${share.toFixed(1)} %`, listed(parts)];
}
