/** The bevel-cut coordinate list as data: one row for each cut, in the order of cutting; of a curve one for each of its pieces. */
import { cutsOfLine, lineCutName } from '../../core/cutting/line-cuts';
import type { CutLine, CutStep, LayerPlan, LinePlan, View } from '../../core/cutting/plan';
import { line, type Edge } from '../../core/geometry/edge';
import type { OutputContext } from '../context';

export interface CutRow {
  readonly view: View;
  readonly layer: LayerPlan;
  readonly step: Omit<CutStep, 'window' | 'cut'>;
  readonly window: string;
  readonly title: string;
  /** The cut's name in this view: its side, or what else it is. */
  readonly cut: string;
  readonly line: CutLine;
  /** The groove or ruled line it makes; undefined of a window's cut. */
  readonly made?: LinePlan;
  /** What is cut in one stroke of one form. */
  readonly edge: Edge;
  /** 1, 2, ... of how many. */
  readonly piece: number;
  readonly pieces: number;
}

/** All layers' cuts in the chosen view; before them what is made on the face, which is always in front view. */
export function cutRows({ plan, options }: OutputContext): readonly CutRow[] {
  const { view } = options;
  return plan.layers.flatMap((layer) => [
    ...lineRows(layer),
    ...layer.order[view].flatMap((step) => {
      const window = layer.windows[step.window];
      const cut = window?.cuts[view][step.cut];
      if (!window || !cut) return [];
      const { name, title } = window;
      return inPieces({ view, layer, step, window: name, title, cut: cut.name, line: cut });
    }),
  ]);
}

function lineRows(layer: LayerPlan): CutRow[] {
  return layer.lineOrder.flatMap((step) => {
    const made = layer.lines[step.line];
    const cut = made && cutsOfLine(made)[step.cut];
    const window = made && layer.windows[made.windowIndex];
    if (!made || !cut || !window) return [];
    const row = { view: 'front', layer, window: window.name, title: window.title, line: cut, made } as const;
    return inPieces({ ...row, step: { ...step, dropsOut: false }, cut: lineCutName(made, step.cut) });
  });
}

function inPieces(row: Omit<CutRow, 'edge' | 'piece' | 'pieces'>): CutRow[] {
  const edges = row.line.curve ?? [line(row.line.start, row.line.end)];
  return edges.map((edge, index) => ({ ...row, edge, piece: index + 1, pieces: edges.length }));
}
