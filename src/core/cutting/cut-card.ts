/** The cuts of a layer as a card tells them: runs of guided cuts, with the guide and the board set once, then those by marks. */
import type { Side } from '../geometry/box';
import type { Cutter } from '../job/job';
import { assert } from '../problem';
import { scaleReading } from './cutter';
import { measureGuided, type GuidedMeasures } from './guided';
import type { CutLine, CutPlan, CutStep, LayerPlan, View, WindowPlan } from './plan';

export interface CardCut {
  readonly step: CutStep;
  readonly window: WindowPlan;
  readonly line: CutLine;
}

export interface GuidedCut extends CardCut {
  readonly measures: GuidedMeasures;
}

/** Cuts made one after another without moving the guide or turning the board. */
export interface GuidedRun {
  readonly setting: number;
  /** What the cutter's scale reads there, where that is something else. */
  readonly reading?: number;
  /** Edge of the board that lies at the guide, and the one that starts and stops are measured from. */
  readonly edge: Side;
  readonly from: Side;
  /** What is done before the first cut of the run. */
  readonly moveGuide: boolean;
  readonly turnBoard: boolean;
  readonly cuts: readonly GuidedCut[];
}

export interface CutCard {
  readonly runs: readonly GuidedRun[];
  /** Cuts that no guide leads, or further in than it reaches. */
  readonly byMarks: readonly CardCut[];
}

export function cutCard({ cutter }: CutPlan, layer: LayerPlan, view: View): CutCard {
  const runs: (GuidedRun & { readonly cuts: GuidedCut[] })[] = [];
  const byMarks: CardCut[] = [];
  for (const step of layer.order[view]) {
    const window = layer.windows[step.window];
    const line = window?.cuts[view][step.cut];
    assert(window && line, 'every step makes a cut of a window');
    const measures = measureGuided(line, layer.blank);
    if (!measures) {
      byMarks.push({ step, window, line });
      continue;
    }
    const cut = { step, window, line, measures };
    const last = runs.at(-1);
    if (last && !step.moveGuide && !step.turnBoard) last.cuts.push(cut);
    else runs.push(runFrom(cut, cutter));
  }
  return { runs, byMarks };
}

/** All cuts of a run travel one way, since they lie along one edge with the waste on one side. */
function runFrom(cut: GuidedCut, cutter: Cutter | undefined) {
  const { setting, edge, from } = cut.measures;
  const { moveGuide, turnBoard } = cut.step;
  const reading = scaleReading(setting, cutter);
  return { setting, ...(reading === undefined ? {} : { reading }), edge, from, moveGuide, turnBoard, cuts: [cut] };
}
