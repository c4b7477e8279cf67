/** The cuts of a layer as a card tells them: runs of guided cuts, with the guide and the board set once, then those by marks. */
import type { Side } from '../geometry/box';
import type { Cutter } from '../job/job';
import { assert } from '../problem';
import { scaleReading } from './cutter';
import { measureGuided, type GuidedMeasures } from './guided';
import { cutsOfLine, lineCutName, settingOf } from './line-cuts';
import type { CutLine, CutPlan, LayerPlan, LinePlan, View } from './plan';

export interface CardCut {
  /** 1, 2, 3, ... in the order in which they are made. */
  readonly number: number;
  /** What it is part of, and which cut of it: `A left`, `A groove, inner left`. */
  readonly name: string;
  readonly line: CutLine;
  /** The window that falls out with it. */
  readonly dropsOut?: string;
  /** The groove or ruled line it is part of. */
  readonly made?: LinePlan;
}

export interface GuidedCut extends CardCut {
  readonly measures: GuidedMeasures;
}

/** Cuts made one after another in one direction without moving the guide, turning the board or changing the tool. */
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
  readonly cuts: readonly [GuidedCut, ...GuidedCut[]];
}

export interface CutCard {
  readonly runs: readonly GuidedRun[];
  /** Cuts that no guide leads, or further in than it reaches. */
  readonly byMarks: readonly CardCut[];
}

/** A cut with what the order says is done before it. */
interface Ordered {
  readonly cut: CardCut;
  readonly moveGuide: boolean;
  readonly turnBoard: boolean;
}

/** The windows of a layer. */
export function cutCard({ cutter }: CutPlan, layer: LayerPlan, view: View): CutCard {
  const ordered = layer.order[view].map(({ number, moveGuide, turnBoard, dropsOut, ...step }): Ordered => {
    const window = layer.windows[step.window];
    const line = window?.cuts[view][step.cut];
    assert(window && line, 'every step makes a cut of a window');
    const cut = { number, name: `${window.name} ${line.name}`, line, ...(dropsOut ? { dropsOut: window.name } : {}) };
    return { cut, moveGuide, turnBoard };
  });
  return gather(ordered, layer, cutter);
}

/** What is made on the face of a layer before its windows, in front view. */
export function faceCard({ cutter }: CutPlan, layer: LayerPlan): CutCard {
  const ordered = layer.lineOrder.map(({ number, moveGuide, turnBoard, ...step }): Ordered => {
    const made = layer.lines[step.line];
    const line = made && cutsOfLine(made)[step.cut];
    assert(made && line, 'every step makes a cut of a line');
    const cut = { number, name: `${made.window} ${lineCutName(made, step.cut)}`, line, made };
    return { cut, moveGuide, turnBoard };
  });
  return gather(ordered, layer, cutter);
}

type OpenRun = Omit<GuidedRun, 'cuts'> & { readonly cuts: [GuidedCut, ...GuidedCut[]] };

function gather(ordered: readonly Ordered[], { blank }: LayerPlan, cutter: Cutter | undefined): CutCard {
  const runs: OpenRun[] = [];
  const byMarks: CardCut[] = [];
  for (const { cut, moveGuide, turnBoard } of ordered) {
    const measures = measureGuided(cut.line, blank);
    if (!measures) {
      byMarks.push(cut);
      continue;
    }
    const { setting, edge, from } = measures;
    const guided = { ...cut, measures };
    const last = runs.at(-1);
    if (last && !moveGuide && !turnBoard && last.from === from && sameTool(last.cuts[0], cut)) last.cuts.push(guided);
    else {
      const reading = scaleReading(setting, cutter);
      const read = reading === undefined ? {} : { reading };
      runs.push({ setting, ...read, edge, from, moveGuide, turnBoard, cuts: [guided] });
    }
  }
  return { runs, byMarks };
}

function sameTool(one: CardCut, other: CardCut): boolean {
  return (one.made && settingOf(one.made)) === (other.made && settingOf(other.made));
}
