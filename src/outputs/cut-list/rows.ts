/** The bevel-cut coordinate list as data: one row for each cut, in the order of cutting. */
import type { CutLine, CutStep, LayerPlan, View } from '../../core/cutting/plan';
import type { OutputContext } from '../context';

export interface CutRow {
  readonly view: View;
  readonly layer: LayerPlan;
  readonly step: CutStep;
  readonly window: string;
  readonly title: string;
  /** Side of the window in this view. */
  readonly cut: string;
  readonly line: CutLine;
}

/** All layers' cuts in the chosen view. */
export function cutRows({ plan, options }: OutputContext): readonly CutRow[] {
  const { view } = options;
  return plan.layers.flatMap((layer) =>
    layer.order[view].flatMap((step) => {
      const window = layer.windows[step.window];
      const line = window?.cuts[step.cut]?.[view];
      return window && line
        ? [{ view, layer, step, window: window.name, title: window.title, cut: line.side, line }]
        : [];
    }),
  );
}
