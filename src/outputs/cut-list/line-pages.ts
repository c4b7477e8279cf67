/** Pages of the cutting list for grooves and ruled lines: made on the face and listed in front view, whatever the windows are cut from. */
import { cutsOfLine, GROOVE_RULE, LINE_RULE, lineCutName } from '../../core/cutting/line-cuts';
import type { LayerPlan } from '../../core/cutting/plan';
import type { Point, Size } from '../../core/geometry/box';
import { settingText, penText } from '../../core/layout/line-words';
import { decimalText, UNIT_NAMES, type Showing } from '../../core/units';
import type { OutputContext } from '../context';
import type { PagePlan } from '../paper/document';
import type { Block } from '../paper/flow';
import { filling, type Column } from '../paper/table';
import type { Setting } from '../paper/text-blocks';
import { fractions } from '../paper/type';
import { listHead, listSheets } from './list-sheets';
import { DIGITS, guideOf, guideRow } from './list-words';

/** None where the layer has no lines. */
export function linePages(
  context: OutputContext,
  layer: LayerPlan,
  paper: Size,
  setting: Setting,
): readonly PagePlan[] {
  if (layer.lines.length === 0) return [];
  const columns = filling(lineColumns(context.showing), setting.width);
  const title = `On the face of layer ${layer.number}, before its windows`;
  const head = listHead(title, introduction(layer, context.showing), columns, setting);
  return listSheets(context, paper, {
    layer,
    view: 'front',
    step: `Writing what is made on the face of layer ${layer.number}`,
    blocks: [...head, ...lineBlocks(context, layer, columns, setting, head)],
  });
}

function introduction({ lines }: LayerPlan, showing: Showing): string {
  return [
    LINE_RULE,
    ...(lines.some(({ kind }) => kind === 'groove') ? [GROOVE_RULE] : []),
    `Measured in ${UNIT_NAMES[showing.unit]} from the lower left corner of the front view, the face up: x1 y1 where the cut starts, x2 y2 where it ends; the blade leans to the side that is told as seen along the cut. The guide setting is the distance from the blank's edge on the cut's own side, and stays until the next one.`,
  ].join(' ');
}

function lineColumns({ unit }: Showing): readonly Column[] {
  const number = { size: 8, tabular: true };
  const words = { size: 8 };
  return [
    { heading: 'No.', width: 8, style: { size: 9, weight: 'bold' } },
    { heading: 'Guide setting', width: 24, style: { size: 10, weight: 'bold' } },
    { heading: 'Window, line', width: 36, style: { size: 7.5 } },
    { heading: `x1, ${unit}`, width: 15.6, align: 'right', style: number },
    { heading: 'y1', width: 15.6, align: 'right', style: number },
    { heading: 'x2', width: 15.6, align: 'right', style: number },
    { heading: 'y2', width: 15.6, align: 'right', style: number },
    { heading: 'Leans', width: 11, style: words },
    { heading: 'Depth', width: 14, align: 'right', style: words },
    { heading: 'Overcut', width: 14, align: 'right', style: words },
    { heading: 'Mind', width: 9, style: words },
  ];
}

function lineBlocks(
  context: OutputContext,
  layer: LayerPlan,
  columns: readonly Column[],
  { typesetter }: Setting,
  again: readonly Block[],
): readonly Block[] {
  const { showing } = context;
  const guide = guideOf(context);
  const number = (point: Point) => [point.x, point.y].map((mm) => decimalText(mm, showing.unit, DIGITS[showing.unit]));
  return layer.lineOrder.flatMap((step) => {
    const made = layer.lines[step.line];
    const cut = made && cutsOfLine(made)[step.cut];
    if (!made || !cut) return [];
    const row = (told: string) => [
      String(step.number),
      told,
      `${made.window} ${lineCutName(made, step.cut)}`,
      ...number(cut.start),
      ...number(cut.end),
      made.kind === 'groove' ? cut.bevelSide : 'pen',
      fractions(made.kind === 'groove' ? settingText(made.depth, showing) : penText(made.width)),
      // Of a curve without corners at its end alone, where it runs over its start.
      made.kind === 'groove' ? fractions(settingText(Math.max(cut.overcutStart, cut.overcutEnd), showing)) : '',
      step.turnBoard ? 'turn' : '',
    ];
    return [guideRow(typesetter, columns, step, row, guide, again)];
  });
}
