/** The cutting list on paper: each layer's cuts in their order, with guide settings and coordinates. */
import { handlingOf, type Handling } from '../../core/cutting/handling';
import type { CutStep, LayerPlan } from '../../core/cutting/plan';
import type { Point, Size } from '../../core/geometry/box';
import { bevelWords } from '../../core/layout/bevel-words';
import { decimalText, UNIT_NAMES, type Showing } from '../../core/units';
import type { OutputContext } from '../context';
import type { PagePlan } from '../paper/document';
import { endedBy, type Block } from '../paper/flow';
import { filling, type Column } from '../paper/table';
import { headingBlock, numberedBlocks, type Setting } from '../paper/text-blocks';
import { linePages } from './line-pages';
import { listHead, listSetting, listSheets } from './list-sheets';
import { DIGITS, guideOf, guideRow, overcutText, slantWords } from './list-words';
import { capital } from '../../core/phrases';

/** One list a layer, as many pages as its cuts and what is done with the boards need. */
export function planListPages(context: OutputContext, paper: Size): readonly PagePlan[] {
  const setting = listSetting(context, paper);
  return context.plan.layers.flatMap((layer) => [
    ...linePages(context, layer, paper, setting),
    ...listSheets(context, paper, {
      layer,
      view: context.options.view,
      step: `Writing the cutting list of layer ${layer.number}`,
      blocks: layerBlocks(context, layer, setting),
    }),
  ]);
}

/** The cuts; of a layer that is cut behind another or before others, also what is done with its board. */
function layerBlocks(context: OutputContext, layer: LayerPlan, setting: Setting): readonly Block[] {
  const { plan, showing } = context;
  const columns = filling(listColumns(showing, plan.cutter?.scaleOffset), setting.width);
  const title = `Cutting list, layer ${layer.number}`;
  const head = listHead(title, introduction(context, layer, showing), columns, setting);
  const { before, after } =
    plan.way === 'apart' ? { before: [], after: [] } : handlingOf(plan, layer.number - 1, showing);
  const cuts = cutBlocks(context, layer, columns, setting, head);
  return [
    ...boards(`The boards of layer ${layer.number}, before the cuts`, before, setting),
    ...head,
    ...endedBy(cuts, boards(`The boards of layer ${layer.number}, after the last cut`, after, setting)),
  ];
}

function boards(heading: string, steps: readonly Handling[], setting: Setting): Block[] {
  if (steps.length === 0) return [];
  const words = steps.map(({ words: step }) => step);
  return [headingBlock(heading, 12), ...numberedBlocks(words, setting)];
}

function introduction({ plan, options }: OutputContext, layer: LayerPlan, showing: Showing): string {
  const { bevel } = layer;
  return [
    plan.orderRule,
    `Measured in ${UNIT_NAMES[showing.unit]} from the lower left corner of the ${options.view} view: x1 y1 the corner where the cut starts, x2 y2 where it ends.`,
    `The guide setting is the distance from the blank's edge on the cut's own side, and stays until the next one.`,
    bevel.angleDegrees === 0
      ? 'Every cut goes straight down, without a bevel.'
      : `${capital(bevelWords(bevel))} from upright; left and right as seen along the cut.`,
    ...(layer.guideOn.number === layer.number
      ? []
      : [`The guide runs along the edges of layer ${layer.guideOn.number}, which this one is fixed behind.`]),
  ].join(' ');
}

function listColumns(showing: Showing, scaleOffset = 0): readonly Column[] {
  const number = { size: 8, tabular: true };
  const words = { size: 8 };
  const { unit } = showing;
  const guide: Column =
    scaleOffset === 0
      ? { heading: 'Guide setting', width: 26, style: { size: 11, weight: 'bold' } }
      : { heading: `Guide (scale), ${unit}`, width: 29, style: { size: 9, weight: 'bold' } };
  return [
    { heading: 'Cut', width: 7.5, style: { size: 9, weight: 'bold' } },
    guide,
    { heading: 'Window, cut', width: 17, style: words },
    { heading: `x1, ${unit}`, width: 14.4, align: 'right', style: number },
    { heading: 'y1', width: 14.4, align: 'right', style: number },
    { heading: 'x2', width: 14.4, align: 'right', style: number },
    { heading: 'y2', width: 14.4, align: 'right', style: number },
    { heading: 'Bevel to', width: 20.5, style: words },
    { heading: 'Overcut', width: 19, align: 'right', style: words },
    { heading: 'Mind', width: 17, style: words },
  ];
}

function cutBlocks(
  context: OutputContext,
  layer: LayerPlan,
  columns: readonly Column[],
  { typesetter }: Setting,
  again: readonly Block[],
): readonly Block[] {
  const { options, showing } = context;
  const guide = guideOf(context);
  const number = (point: Point) => [point.x, point.y].map((mm) => decimalText(mm, showing.unit, DIGITS[showing.unit]));
  return layer.order[options.view].flatMap((step) => {
    const line = layer.windows[step.window]?.cuts[options.view][step.cut];
    if (!line) return [];
    const row = (told: string) => [
      String(step.number),
      told,
      `${layer.windows[step.window]?.name ?? ''} ${line.name}`,
      ...number(line.start),
      ...number(line.end),
      slantWords(line),
      overcutText(line, showing),
      reminders(step),
    ];
    return [guideRow(typesetter, columns, step, row, guide, again)];
  });
}

function reminders({ turnBoard, dropsOut }: CutStep): string {
  return [...(turnBoard ? ['turn board'] : []), ...(dropsOut ? ['drops out'] : [])].join('\n');
}
