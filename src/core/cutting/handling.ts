/** What is done with the boards before and after the cuts of a layer, in the order in which it is done. */
import { HOLD_BEHIND } from '../layout/limits/behind';
import { lengthText, sizeText, type Showing } from '../units';
import { GROOVE_RULE, LINE_RULE } from './line-cuts';
import type { CutPlan, LayerPlan } from './plan';

export type HandlingKind = 'lines' | 'trim' | 'put back' | 'fix' | 'guide' | 'drop' | 'keep' | 'join';

export interface Handling {
  readonly kind: HandlingKind;
  /** A sentence or two for the bench. */
  readonly words: string;
}

export interface LayerHandling {
  readonly before: readonly Handling[];
  readonly after: readonly Handling[];
}

/** Of layer `index`, counted from 0, as the plan's way of cutting has it. */
export function handlingOf(plan: CutPlan, index: number, showing: Showing): LayerHandling {
  const layer = plan.layers[index];
  const last = index === plan.layers.length - 1;
  const lines = layer ? onTheFace(layer, plan) : [];
  if (!layer || plan.layers.length === 1) return { before: lines, after: [] };
  if (plan.way === 'apart') return { before: lines, after: last ? [joining(plan, showing)] : [] };
  return {
    before: index === 0 ? lines : beforeBehind(plan, layer, index, showing),
    after: [...(index === 0 ? [] : [dropping(index)]), last ? turning(plan) : keeping(index)],
  };
}

/** What is made on the face while the board is whole. */
function onTheFace({ lines, lineOrder }: LayerPlan, { layers }: CutPlan): Handling[] {
  if (lines.length === 0) return [];
  const which = layers.length === 1 ? 'the board' : 'layer 1';
  const steps = lineOrder.length === 1 ? 'its one step' : `the ${lineOrder.length} steps`;
  return [
    {
      kind: 'lines',
      words: `Lay ${which} face up first. ${LINE_RULE} The cutting list has ${steps}, measured from the front. Turn the board over only then, where its windows are cut from the back.`,
    },
    ...(lines.some(({ kind }) => kind === 'groove') ? [{ kind: 'lines' as const, words: GROOVE_RULE }] : []),
  ];
}

function beforeBehind(plan: CutPlan, layer: LayerPlan, index: number, showing: Showing): Handling[] {
  const { number, trim, blank, guideOn } = layer;
  const above = number - 1;
  const size = { width: blank.width - 2 * trim, height: blank.height - 2 * trim };
  const windows = plan.layers[0]?.windows.map(({ name }) => name) ?? [];
  const which = windows.length === 1 ? `window ${windows[0]}` : `windows ${windows[0]} to ${windows.at(-1)}`;
  return [
    {
      kind: 'trim',
      words: `Trim the board of layer ${number} to ${sizeText(size, showing)}: ${lengthText(trim, showing)} smaller than layer 1 on every side, so that the guide only ever meets layer 1.`,
    },
    { kind: 'put back', words: puttingBack(plan, index, which) },
    {
      kind: 'fix',
      words: `Fix layer ${number} face down on the back of layer ${above}, its edges ${lengthText(trim, showing)} inside those of layer 1 all round. Tape or adhesive fit for conservation, at least ${lengthText(HOLD_BEHIND, showing)} outside every window: none may touch the picture. Fix each piece of fallout to layer ${number} too, well inside its window, with a bit of tape.`,
    },
    {
      kind: 'guide',
      words: `Cut from the back with the edges of layer ${guideOn.number}, “${guideOn.board}”, at the guide. Set the depth to go through layer ${number} and just mark the fallout beneath.`,
    },
  ];
}

/** A standard bevel makes the piece wider at the face, so that the board is lowered over it; a reverse one narrower. */
function puttingBack(plan: CutPlan, index: number, which: string): string {
  const above = plan.layers.slice(0, index);
  const numbers = above.map(({ number }) => number);
  const layers = index === 1 ? 'layer 1' : `layers ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
  const reverse = above[0]?.bevel.direction === 'reverse' && above[0].bevel.run > 0;
  const how = reverse
    ? 'lay layer 1 face down and let the piece into it from the back'
    : 'lay each piece face down on the bench and lower the board over it, face down';
  return `Put the fallout of ${layers} back into ${which}, the way it came out: ${how}. It holds up the board that is cut next.`;
}

function dropping(index: number): Handling {
  return {
    kind: 'drop',
    words: `With the last cut of each window its fallout of layer ${index + 1} falls out and takes that of the layer above along.`,
  };
}

function keeping(index: number): Handling {
  return {
    kind: 'keep',
    words: `Keep every piece of fallout of layer ${index + 1}, marked with its window's letter: it goes back before layer ${index + 2} is cut.`,
  };
}

function turning({ layers }: CutPlan): Handling {
  return {
    kind: 'join',
    words: `Turn the mat face up only now. All ${layers.length} layers are already fixed together; see that no tape reaches into a window.`,
  };
}

function joining({ layers }: CutPlan, showing: Showing): Handling {
  return {
    kind: 'join',
    words: `When all ${layers.length} layers are cut, lay them on one another edge on edge and fix them with tape or adhesive fit for conservation, at least ${lengthText(HOLD_BEHIND, showing)} outside every window: none may touch the picture.`,
  };
}
