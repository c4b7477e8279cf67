/** What is made on the face before the windows: grooves and ruled lines in their order. */
import { guideWords } from '../../core/cutting/guide-words';
import { cutsOfLine, GROOVE_RULE, LINE_RULE, lineCutName } from '../../core/cutting/line-cuts';
import type { CutPlan, LayerPlan, LineStep } from '../../core/cutting/plan';
import { settingText, penText } from '../../core/layout/line-words';
import { assert } from '../../core/problem';
import { columns, paragraph } from '../print/text';
import type { Section } from './section';
import type { Words } from './words';

export function lineSections(plan: CutPlan, words: Words): Section[] {
  return plan.layers.flatMap((layer): Section[] => {
    if (layer.lines.length === 0) return [];
    const grooves = layer.lines.some(({ kind }) => kind === 'groove');
    const rows = layer.lineOrder.map((step) => stepRow(layer, plan, step, words));
    return [
      {
        heading: `On the face of layer ${layer.number}, before its windows, from the front`,
        lines: [
          ...paragraph(`${LINE_RULE}${grooves ? ` ${GROOVE_RULE}` : ''}`, 2, words.width),
          ...columns([['step', 'guide', 'line', 'with', ''], ...rows], { indent: 2, width: words.width, right: [0] }),
        ],
      },
    ];
  });
}

function stepRow({ lines }: LayerPlan, { cutter }: CutPlan, step: LineStep, { showing }: Words): string[] {
  const made = lines[step.line];
  const cut = made && cutsOfLine(made)[step.cut];
  assert(made && cut, 'every step makes a cut of a line');
  const first = [...(step.turnBoard ? ['turn the board'] : []), ...(step.moveGuide ? ['set the guide'] : [])];
  return [
    String(step.number),
    guideWords(step, cutter, showing),
    `${made.window} ${lineCutName(made, step.cut)}`,
    made.kind === 'groove'
      ? `blade ${settingText(made.depth, showing)} deep, to the ${cut.bevelSide}`
      : `pen of ${penText(made.width)}`,
    first.join(', '),
  ];
}
