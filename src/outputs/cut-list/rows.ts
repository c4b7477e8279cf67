/** The bevel-cut coordinate list as data: one row for each cut, in the order of cutting; of a curve one for each of its pieces. */
import type { CutLine, CutStep, LayerPlan, View } from '../../core/cutting/plan';
import { line, type Edge } from '../../core/geometry/edge';
import type { OutputContext } from '../context';

export interface CutRow {
  readonly view: View;
  readonly layer: LayerPlan;
  readonly step: CutStep;
  readonly window: string;
  readonly title: string;
  /** The cut's name in this view: its side, or what else it is. */
  readonly cut: string;
  readonly line: CutLine;
  /** What is cut in one stroke of one form. */
  readonly edge: Edge;
  /** 1, 2, ... of how many. */
  readonly piece: number;
  readonly pieces: number;
}

/** All layers' cuts in the chosen view. */
export function cutRows({ plan, options }: OutputContext): readonly CutRow[] {
  const { view } = options;
  return plan.layers.flatMap((layer) =>
    layer.order[view].flatMap((step) => {
      const window = layer.windows[step.window];
      const cut = window?.cuts[view][step.cut];
      if (!window || !cut) return [];
      const edges = cut.curve ?? [line(cut.start, cut.end)];
      return edges.map((edge, index) => ({
        view,
        layer,
        step,
        window: window.name,
        title: window.title,
        cut: cut.name,
        line: cut,
        edge,
        piece: index + 1,
        pieces: edges.length,
      }));
    }),
  );
}
