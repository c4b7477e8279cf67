/** Words of a cut card: boards by name, tools, and what becomes of a piece that comes free. */
import type { CardCut } from '../../core/cutting/cut-card';
import type { CutPlan, LayerPlan } from '../../core/cutting/plan';
import { settingText, penText } from '../../core/layout/line-words';
import { markBeside, settingBesideMark, showSetting, type Showing } from '../../core/units';
import { fractions } from '../paper/type';

/** `layer 1, “Warm white”`. */
export function boardWords({ number, board }: LayerPlan['guideOn']): string {
  return board === '' ? `layer ${number}` : `layer ${number}, “${board}”`;
}

/** A number to be set by a rule; beside decimals of an inch, on a line of its own, the nearest mark. */
export function settingCell(mm: number, showing: Showing): string {
  const mark = markBeside(mm, showing);
  // No space that a line could break at.
  const beside = mark ? `\n(≈\u00a0${mark.text.replace(' ', '\u00a0')})` : '';
  return fractions(`${showSetting(mm, showing).text}${beside}`);
}

/** The same within a sentence, with its unit. */
export function settingWords(mm: number, showing: Showing): string {
  return fractions(settingBesideMark(mm, showing));
}

/** What a groove or ruled line is made with; empty of a window. */
export function toolWords({ made }: CardCut, showing: Showing): string {
  if (!made) return '';
  if (made.kind === 'ruled') return `pen of ${penText(made.width)}, ${made.colour}`;
  return `blade at ${made.angleDegrees}° and ${settingText(made.depth, showing)} deep`;
}

/** To which side the blade of a groove leans; or what comes free with a cut, and whether it is needed again. */
export function thenWords({ dropsOut: name, line, made }: CardCut, plan: CutPlan, { number }: LayerPlan): string {
  if (made) return made.kind === 'groove' ? `leans ${line.bevelSide}` : '';
  if (name === undefined) return '';
  if (plan.way === 'apart') return `${name} falls out`;
  const goesBack = number < plan.layers.length;
  if (number === 1) return `${name} falls out; keep it`;
  return goesBack ? `${name} falls out, both layers; keep` : `${name} falls out with that above`;
}
