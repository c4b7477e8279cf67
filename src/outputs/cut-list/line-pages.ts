/** Pages of the cutting list for grooves and ruled lines: made on the face and listed in front view, whatever the windows are cut from. */
import { cutsOfLine, GROOVE_RULE, LINE_RULE, lineCutName } from '../../core/cutting/line-cuts';
import type { LayerPlan, LineStep } from '../../core/cutting/plan';
import type { Point, Size } from '../../core/geometry/box';
import { fineText, penText } from '../../core/layout/line-words';
import { decimalText, type Showing } from '../../core/units';
import { titleOf, type OutputContext } from '../context';
import type { PagePlan } from '../paper/document';
import { drawTable, filling, inLots, ROW_HEIGHT, type Column, type TableRow } from '../paper/table';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';
import { drawSheetFrame } from '../template/sheet-frame';
import { planSheet } from '../template/sheet-plan';
import { layerWords } from '../template/tile-page';
import { viewLayer } from '../template/view-geometry';
import { DIGITS, drawGuideMoves, guideOf, UNIT_WORDS } from './list-words';

/** Room for the heading and the rules in words, mm. */
const INTRODUCTION = 35;

/** None where the layer has no lines. */
export function linePages(context: OutputContext, layer: LayerPlan, paper: Size): readonly PagePlan[] {
  if (layer.lines.length === 0) return [];
  const { body } = planSheet(paper);
  const fits = Math.floor((body.top - body.bottom - INTRODUCTION) / ROW_HEIGHT) - 1;
  return inLots(layer.lineOrder, fits, fits).map((steps) => ({
    size: paper,
    step: `Writing what is made on the face of layer ${layer.number}`,
    draw: (surface: Surface, { number, count }: { number: number; count: number }) =>
      drawLinePage(surface, context, layer, steps, `Page ${number} of ${count}`),
  }));
}

function drawLinePage(
  surface: Surface,
  context: OutputContext,
  layer: LayerPlan,
  steps: readonly LineStep[],
  page: string,
): void {
  const { plan, showing } = context;
  const seen = viewLayer(layer, 'front');
  const { body } = drawSheetFrame(
    surface,
    {
      view: 'front',
      title: titleOf(context),
      under: layerWords(seen, plan.layers.length),
      page,
      place: 'cutting list · scale 100 %',
    },
    {
      blank: layer.blank,
      openings: seen.windows,
      names: seen.windows.map(({ name }) => name),
      lines: layer.lines.map(({ middle }) => middle),
    },
  );
  const room = { ...body, left: body.left + 2 };
  const heading = `On the face of layer ${layer.number}, before its windows`;
  surface.text(heading, { x: room.left, y: room.top - 5 }, { size: 14, weight: 'bold' });
  surface.paragraph(introduction(layer, showing), { x: room.left, y: room.top - 7.5 }, room.right - room.left, {
    size: 8,
  });
  const top = { x: room.left, y: room.top - INTRODUCTION };
  const columns = filling(lineColumns(showing), room.right - room.left);
  const rows = lineRows(context, layer, steps);
  drawTable(surface, top, columns, rows);
  drawGuideMoves(surface, top, room.right, rows);
}

function introduction({ lines }: LayerPlan, showing: Showing): string {
  return [
    LINE_RULE,
    ...(lines.some(({ kind }) => kind === 'groove') ? [GROOVE_RULE] : []),
    `Measured in ${UNIT_WORDS[showing.unit]} from the lower left corner of the front view, the face up: x1 y1 where the cut starts, x2 y2 where it ends; the blade leans to the side that is told as seen along the cut. The guide setting is the distance from the blank's edge on the cut's own side, and stays until the next one.`,
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

function lineRows(context: OutputContext, layer: LayerPlan, steps: readonly LineStep[]): TableRow[] {
  const { showing } = context;
  const guide = guideOf(context);
  const number = (point: Point) => [point.x, point.y].map((mm) => decimalText(mm, showing.unit, DIGITS[showing.unit]));
  return steps.flatMap((step, index) => {
    const made = layer.lines[step.line];
    const cut = made && cutsOfLine(made)[step.cut];
    if (!made || !cut) return [];
    return [
      [
        String(step.number),
        // The setting in force is told again at the head of each page.
        step.moveGuide || step.guideSetting === undefined || index === 0 ? guide(step) : '',
        `${made.window} ${lineCutName(made, step.cut)}`,
        ...number(cut.start),
        ...number(cut.end),
        made.kind === 'groove' ? cut.bevelSide : 'pen',
        fractions(made.kind === 'groove' ? fineText(made.depth, showing) : penText(made.width)),
        // Of a curve without corners at its end alone, where it runs over its start.
        made.kind === 'groove' ? fractions(fineText(Math.max(cut.overcutStart, cut.overcutEnd), showing)) : '',
        step.turnBoard ? 'turn' : '',
      ],
    ];
  });
}
