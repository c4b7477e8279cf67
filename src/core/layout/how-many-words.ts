/** How many windows fit, in sentences for the person at the bench. */
import type { PerSide } from '../geometry/box';
import { lengthText, showLength, sizeText, stepLength, type Showing } from '../units';
import type { FitBlock } from './fit-blocks';
import type { FitWay, HowMany } from './how-many';
import { SAME } from './solve-borders';
import { capital } from '../phrases';

/** The answer first, then what it leaves and what would give more. */
export function howManyWords(answer: HowMany, showing: Showing): string[] {
  const { ask, best, borders, smallerGap, smallerBorder } = answer;
  const more = [
    smallerGap ? `${counted(smallerGap.count)} with a gap of at most ${most(smallerGap.gap, showing)}.` : '',
    smallerBorder ? `${counted(smallerBorder.count)} with ${borderWords(answer, showing)}.` : '',
  ].filter((line) => line !== '');
  if (best.count === 0) {
    const size = sizeText(ask.size, showing);
    return [`None of ${size} fits on ${sizeText(ask.blank, showing)} with these borders, upright or turned.`, ...more];
  }
  const others = otherWays(answer);
  return [
    `${best.count} ${best.count === 1 ? 'fits' : 'fit'}: ${wayWords(best)}.`,
    `Borders then: ${sidesText(borders, showing)}.`,
    ...(others === '' ? [] : [others]),
    ...more,
  ];
}

function counted(count: number): string {
  return `${count} would fit`;
}

/** Rounded down to the step, so that what is shown works. */
function most(mm: number, showing: Showing): string {
  const step = stepLength(showing);
  const steps = Math.floor(mm / step + 1e-6);
  return steps > 0 ? showLength(steps * step, showing).withUnit : lengthText(mm, showing);
}

function borderWords({ ask, smallerBorder }: HowMany, showing: Showing): string {
  const { left, top, right, bottom } = ask.border;
  const by = smallerBorder?.by ?? 0;
  const alike = [top, right, bottom].every((side) => Math.abs(side - left) <= SAME);
  if (alike) return `borders of at most ${most(left - by, showing)}`;
  const step = stepLength(showing);
  return `all borders narrower by ${showLength(Math.ceil(by / step - 1e-6) * step, showing).withUnit}`;
}

export function wayWords(way: FitWay): string {
  if (way.way === 'staggered') {
    const [first, second] = way.inRow;
    const line = way.along === 'across' ? 'row' : 'column';
    const turned = way.turned ? ', turned on their side' : '';
    const each = first === second ? `of ${first}` : `of ${first} and ${second} by turns`;
    return `${way.rows} staggered ${line}s ${each}${turned}`;
  }
  const [one, other] = way.blocks;
  if (!one) return 'none';
  if (!other) return `${rowsText(one)}, ${one.turned ? 'turned on their side' : 'upright'}`;
  const beside = way.along === 'across' ? 'beside' : 'above';
  return `${rowsText(one)} upright ${beside} ${rowsText(other)} turned on their side`;
}

function rowsText({ columns, rows }: FitBlock): string {
  return `${columns} ${columns === 1 ? 'column' : 'columns'} x ${rows} ${rows === 1 ? 'row' : 'rows'}`;
}

/** What all upright or all turned would hold, where it is not the answer already. */
function otherWays({ best, plain }: HowMany): string {
  const said = plain
    .filter((way) => way.way !== best.way)
    .map(({ way, count }) => `all ${way === 'upright' ? 'upright' : 'turned'} ${count}`);
  return said.length === 0 ? '' : `${capital(said.join(', '))}.`;
}

function sidesText({ left, top, right, bottom }: PerSide, showing: Showing): string {
  const pair = (one: number, other: number, [first, second]: readonly [string, string]) =>
    Math.abs(one - other) <= SAME
      ? `${lengthText(one, showing)} ${first} and ${second}`
      : `${lengthText(one, showing)} ${first}, ${lengthText(other, showing)} ${second}`;
  return `${pair(left, right, ['left', 'right'])}, ${pair(top, bottom, ['top', 'bottom'])}`;
}
