/** Words of a cut card: boards by name, and what becomes of a piece that comes free. */
import type { CardCut } from '../../core/cutting/cut-card';
import type { CutPlan, LayerPlan } from '../../core/cutting/plan';

/** `layer 1, “Warm white”`. */
export function boardWords({ number, board }: LayerPlan['guideOn']): string {
  return board === '' ? `layer ${number}` : `layer ${number}, “${board}”`;
}

/** What comes free with a cut, and whether it is needed again. */
export function dropWords({ step, window }: CardCut, plan: CutPlan, { number }: LayerPlan): string {
  if (!step.dropsOut) return '';
  const { name } = window;
  if (plan.way === 'apart') return `${name} falls out`;
  const goesBack = number < plan.layers.length;
  if (number === 1) return `${name} falls out; keep it`;
  return goesBack ? `${name} falls out, both layers; keep` : `${name} falls out with that above`;
}
