/** The cutting list on paper: each layer's cuts in their order, with guide settings and coordinates. */
import type { CutStep, LayerPlan } from '../../core/cutting/plan';
import type { Box, Point, Size } from '../../core/geometry/box';
import { bevelWords } from '../../core/layout/bevel-words';
import { decimalText, type Showing } from '../../core/units';
import { titleOf, type OutputContext } from '../context';
import type { PagePlan } from '../paper/document';
import { handlingPages } from './handling-page';
import { drawTable, filling, inLots, ROW_HEIGHT, type Column, type TableRow } from '../paper/table';
import type { Surface } from '../paper/surface';
import { drawSheetFrame } from '../template/sheet-frame';
import { planSheet } from '../template/sheet-plan';
import { layerWords } from '../template/tile-page';
import { viewLayer } from '../template/view-geometry';
import { linePages } from './line-pages';
import { DIGITS, drawGuideMoves, guideOf, overcutText, slantWords, UNIT_WORDS } from './list-words';

/** Room for the heading and the rule in words, mm. */
const INTRODUCTION = 32;

interface ListPage {
  readonly layer: LayerPlan;
  readonly rows: readonly TableRow[];
}

/** One list a layer, as many pages as its cuts need. */
export function planListPages(context: OutputContext, paper: Size): readonly PagePlan[] {
  const { body } = planSheet(paper);
  const rowsPerPage = Math.floor((body.top - body.bottom - INTRODUCTION) / ROW_HEIGHT) - 1;
  return context.plan.layers.flatMap((layer) => [
    ...linePages(context, layer, paper),
    ...handlingPages(context, layer, paper),
    ...inLots(settingsRepeated(layer, context, rowsPerPage), rowsPerPage, rowsPerPage).map((rows) => ({
      size: paper,
      step: `Writing the cutting list of layer ${layer.number}`,
      draw: (surface: Surface, { number, count }: { number: number; count: number }) =>
        drawListPage(surface, context, { layer, rows }, `Page ${number} of ${count}`),
    })),
  ]);
}

function drawListPage(surface: Surface, context: OutputContext, { layer, rows }: ListPage, page: string): void {
  const { plan, options, showing } = context;
  const seen = viewLayer(layer, options.view);
  const { body } = drawSheetFrame(
    surface,
    {
      view: options.view,
      title: titleOf(context),
      under: layerWords(seen, plan.layers.length),
      page,
      place: 'cutting list · scale 100 %',
    },
    {
      blank: layer.blank,
      openings: seen.windows,
      names: seen.windows.map(({ name }) => name),
    },
  );
  const room: Box = { ...body, left: body.left + 2 };
  surface.text(`Cutting list, layer ${layer.number}`, { x: room.left, y: room.top - 5 }, { size: 14, weight: 'bold' });
  surface.paragraph(
    introduction(context, layer, showing),
    { x: room.left, y: room.top - 7.5 },
    room.right - room.left,
    { size: 8 },
  );
  const top = { x: room.left, y: room.top - INTRODUCTION };
  const columns = filling(listColumns(showing, plan.cutter?.scaleOffset), room.right - room.left);
  drawTable(surface, top, columns, rows);
  drawGuideMoves(surface, top, room.right, rows);
}

function introduction({ plan, options }: OutputContext, layer: LayerPlan, showing: Showing): string {
  const { bevel } = layer;
  return [
    plan.orderRule,
    `Measured in ${UNIT_WORDS[showing.unit]} from the lower left corner of the ${options.view} view: x1 y1 the corner where the cut starts, x2 y2 where it ends.`,
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
    { heading: 'Bevel to', width: 18, style: words },
    { heading: 'Overcut', width: 15, align: 'right', style: words },
    { heading: 'Mind', width: 23.5, style: words },
  ];
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function listRows(layer: LayerPlan, context: OutputContext): readonly TableRow[] {
  const { options, showing } = context;
  const guide = guideOf(context);
  const number = (point: Point) => [point.x, point.y].map((mm) => decimalText(mm, showing.unit, DIGITS[showing.unit]));
  return layer.order[options.view].flatMap((step) => {
    const line = layer.windows[step.window]?.cuts[options.view][step.cut];
    if (!line) return [];
    return [
      [
        String(step.number),
        step.moveGuide || step.guideSetting === undefined ? guide(step) : '',
        `${layer.windows[step.window]?.name ?? ''} ${line.name}`,
        ...number(line.start),
        ...number(line.end),
        slantWords(line),
        overcutText(line, showing),
        reminders(step),
      ],
    ];
  });
}

/** The rows of a layer, with the setting in force told again at the head of each page. */
function settingsRepeated(layer: LayerPlan, context: OutputContext, rowsPerPage: number): readonly TableRow[] {
  const steps = layer.order[context.options.view];
  return listRows(layer, context).map((row, index) => {
    const step = steps[index];
    if (index % rowsPerPage !== 0 || step === undefined) return row;
    return row.map((cell, column) => (column === 1 ? guideOf(context)(step) : cell));
  });
}

function reminders({ turnBoard, dropsOut }: CutStep): string {
  if (turnBoard && dropsOut) return 'turn · drops out';
  return turnBoard ? 'turn board' : dropsOut ? 'drops out' : '';
}
