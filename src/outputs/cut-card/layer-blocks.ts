/** What stands on the card of one layer, from the drawing to the last thing done with its board. */
import { cutCard, faceCard } from '../../core/cutting/cut-card';
import { handlingOf, type Handling } from '../../core/cutting/handling';
import { GROOVE_RULE, LINE_RULE } from '../../core/cutting/line-cuts';
import type { LayerPlan } from '../../core/cutting/plan';
import type { OutputContext } from '../context';
import { endedBy, type Block } from '../paper/flow';
import { headingBlock, numberedBlocks, paragraphBlock, type Setting } from '../paper/text-blocks';
import { CAUTIONS } from '../template/steps';
import { headBlocks } from './card-head';
import { markBlocks } from './mark-blocks';
import { runBlocks } from './run-blocks';

export function layerBlocks(context: OutputContext, layer: LayerPlan, setting: Setting): Block[] {
  const { plan, options, showing } = context;
  const card = cutCard(plan, layer, options.view);
  const { before, after } = handlingOf(plan, layer.number - 1, showing);
  const cuts = [...runBlocks(context, layer, card, setting), ...markBlocks(context, layer, card, setting)];
  return [
    ...headBlocks(context, layer, card, setting),
    ...care(setting),
    ...handled('Before the cuts', before, setting),
    ...endedBy(cuts, handled('After the last cut', after, setting)),
  ];
}

/** Grooves and ruled lines, in the front view; none where the layer has no lines. */
export function faceBlocks(context: OutputContext, layer: LayerPlan, setting: Setting): Block[] {
  if (layer.lines.length === 0) return [];
  const card = faceCard(context.plan, layer);
  const grooves = layer.lines.some(({ kind }) => kind === 'groove');
  return [
    ...headBlocks(context, layer, card, setting),
    ...care(setting),
    headingBlock('On the face, before any window is cut'),
    paragraphBlock(LINE_RULE, setting),
    ...(grooves ? [paragraphBlock(GROOVE_RULE, setting)] : []),
    ...runBlocks(context, layer, card, setting),
    ...markBlocks(context, layer, card, setting),
  ];
}

/** Under the drawing, so that it is read before the first cut and never has a page to itself. */
function care(setting: Setting): Block[] {
  return [headingBlock('Take care', 9), paragraphBlock(CAUTIONS[0] ?? '', setting, { size: 8 })];
}

function handled(heading: string, steps: readonly Handling[], setting: Setting): Block[] {
  if (steps.length === 0) return [];
  return [
    headingBlock(heading),
    ...numberedBlocks(
      steps.map(({ words }) => words),
      setting,
    ),
  ];
}
