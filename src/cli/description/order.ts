/** The order of cutting, layer by layer: guide setting, cut, and what to do first. */
import type { CutPlan, CutStep, LayerPlan, View } from '../../core/cutting/plan';
import { assert } from '../../core/problem';
import { guideWords } from '../../core/cutting/guide-words';
import { handlingOf, type Handling } from '../../core/cutting/handling';
import { columns, paragraph } from '../print/text';
import type { Section } from './section';
import type { Words } from './words';

export function orderSections(plan: CutPlan, view: View, words: Words): Section[] {
  const { width } = words;
  return [
    {
      heading: 'How the cutting order is made',
      lines: paragraph(plan.orderRule, 2, width),
    },
    ...plan.layers.map((layer, index): Section => {
      const rows = layer.order[view].map((step) => stepRow(layer, plan, step, view, words));
      const { before, after } = handlingOf(plan, index, words.showing);
      return {
        heading: `Cutting layer ${layer.number} of ${plan.layers.length}, “${layer.board}”, from the ${view}`,
        lines: [
          ...handled(before, width),
          ...paragraph(manner(layer, plan, view, words), 2, width),
          ...columns([['step', 'guide', 'cut', ''], ...rows], { indent: 2, width, right: [0] }),
          ...handled(after, width),
        ],
      };
    }),
  ];
}

function handled(steps: readonly Handling[], width: number): string[] {
  return steps.flatMap(({ words }) => paragraph(words, 2, width));
}

/** What all cuts of a layer have in common. */
function manner({ windows, bevel }: LayerPlan, { waste }: CutPlan, view: View, { length }: Words): string {
  const line = windows[0]?.cuts[view][0];
  if (!line) return '';
  const slant =
    line.bevelSide === 'none'
      ? 'the blade stands upright'
      : `the blade goes in at ${bevel.angleDegrees}°, slanting to the ${line.bevelSide}, towards the ${line.slopesTo}`;
  const overcuts = windows.flatMap(({ cuts }) => cuts[view].flatMap((one) => [one.overcutStart, one.overcutEnd]));
  const [least, most] = [Math.min(...overcuts), Math.max(...overcuts)];
  const past =
    most === 0
      ? 'each cut stops at its corners'
      : least === most
        ? `each cut runs ${length(most)} past its corners`
        : `cuts run up to ${length(most)} past their corners, as each corner asks`;
  return `Left and right are as seen from the ${view}. The waste lies on the ${waste} of the travel; ${slant}; ${past}.`;
}

function stepRow({ windows }: LayerPlan, { cutter }: CutPlan, step: CutStep, view: View, { showing }: Words): string[] {
  const window = windows[step.window];
  const line = window?.cuts[view][step.cut];
  assert(window && line, 'every step makes a cut of a window');
  const first = [
    ...(step.turnBoard ? ['turn the board'] : []),
    ...(step.moveGuide ? [step.number === 1 ? 'set the guide' : 'move the guide'] : []),
  ];
  const then = step.dropsOut ? ['the window falls out'] : [];
  return [
    String(step.number),
    guideWords(step, cutter, showing),
    `${window.name} ${line.name}`,
    [first.join(', '), ...then].filter((part) => part !== '').join('; '),
  ];
}
