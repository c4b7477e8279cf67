/** The overview: what the mat is, which page is which, what to do, and the sizes of every opening. */
import { bevelWords } from '../../core/layout/bevel-words';
import type { CutPlan, LinePlan } from '../../core/cutting/plan';
import { lengthText, showLength, showTogether, type Showing, type Shown } from '../../core/units';
import { titleOf, type OutputContext } from '../context';
import type { PagePlan } from '../paper/document';
import { paperWord } from '../paper/page';
import { drawTable, filling, inLots, ROW_HEIGHT, type Column, type TableRow } from '../paper/table';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';
import type { Box, PerSide, Size } from '../../core/geometry/box';
import { drawMat } from './mat-drawing';
import { drawSheetFrame } from './sheet-frame';
import { planSheet } from './sheet-plan';
import { CAUTIONS, steps } from './steps';
import { drawTileMap, type LayerTiles } from './tile-map';
import type { Tiling } from './tiling';
import type { ViewLayer } from './view-geometry';

export interface OverviewSetting {
  readonly context: OutputContext;
  readonly paper: Size;
  readonly layers: readonly ViewLayer[];
  /** Undefined when each layer has one page of the blank's size. */
  readonly tiling?: Tiling;
  readonly maps: readonly LayerTiles[];
  /** Pages of the cutting list, first and last. */
  readonly listPages: readonly [number, number];
}

/** Enough for the steps on the narrowest paper, with one more where there is something to make on the face. */
function stepsHeight({ layers }: CutPlan): number {
  return layers.some(({ lines }) => lines.length > 0) ? 99 : 86;
}

/** The drawing of the mat, or the facts beside it where many layers make them longer; larger on larger paper. */
function drawingHeight({ layers }: CutPlan, paper: Size): number {
  const facts = layers.length + (layers.some(({ lines }) => lines.length > 0) ? 1 : 0);
  return Math.max(50, 38 + facts * 4.6, paper.height * 0.2);
}

/** Width of the longest words over a tile map, mm. */
const MAP_HEADING = 62;

/** How many pages the overview takes; known before any is drawn. */
export function overviewPageCount(context: OutputContext, paper: Size, tiling?: Tiling): number {
  return sizeLots(context, paper, tiling).length;
}

export function planOverview(setting: OverviewSetting): readonly PagePlan[] {
  const { context, paper } = setting;
  return sizeLots(context, paper, setting.tiling).map((rows, index) => ({
    size: paper,
    step: 'Drawing the overview',
    draw: (surface, { number, count }) => {
      const body = drawSheetFrame(surface, {
        title: titleOf(context),
        under: `Cutting template at full size, ${context.options.view} view · ${context.plan.layers.length === 1 ? 'one layer' : `${context.plan.layers.length} layers`}`,
        page: `Page ${number} of ${count}`,
        place: index === 0 ? 'overview · scale 100 %' : 'sizes, continued · scale 100 %',
      }).body;
      const room = { ...body, left: body.left + 2 };
      const top = index === 0 ? drawFirst(surface, room, setting) : room.top;
      if (rows.length > 0) drawSizes(surface, { ...room, top }, rows, context.showing);
    },
  }));
}

/** True when the blank takes more than one page. */
function joined(tiling: Tiling | undefined): boolean {
  return tiling !== undefined && tiling.columns.length + tiling.rows.length > 4;
}

/** Title, heading and air of the table of sizes, in rows of it. */
const ROWS_BESIDES = 2;

/**
 * More rows of tiles need a taller map for their page numbers to be read; it takes what the sizes leave free, up to
 * what is seen at a glance.
 */
function mapHeight(context: OutputContext, tiling: Tiling, paper: Size): number {
  const least = Math.min(54, Math.max(46, tiling.rows.length * 6.5));
  const sizes = (sizeRows(context).length + ROWS_BESIDES) * ROW_HEIGHT;
  return Math.min(Math.max(least, heightBelowDrawing(context, paper) - sizes), Math.max(least, paper.height * 0.36));
}

/** Between the drawing and the steps. */
function heightBelowDrawing(context: OutputContext, paper: Size): number {
  const { body } = planSheet(paper);
  return body.top - body.bottom - drawingHeight(context.plan, paper) - stepsHeight(context.plan);
}

function sizeLots(context: OutputContext, paper: Size, tiling: Tiling | undefined): readonly (readonly TableRow[])[] {
  const { body } = planSheet(paper);
  const left = heightBelowDrawing(context, paper) - (tiling ? mapHeight(context, tiling, paper) : 0);
  const fits = (room: number) => Math.floor(room / ROW_HEIGHT) - ROWS_BESIDES;
  return inLots(sizeRows(context), fits(left), fits(body.top - body.bottom));
}

function drawFirst(surface: Surface, room: Box, setting: OverviewSetting): number {
  const { layers, tiling, maps, paper } = setting;
  const height = drawingHeight(setting.context.plan, paper);
  const drawing = { ...room, right: room.left + (room.right - room.left) * 0.36, bottom: room.top - height + 4 };
  const { context } = setting;
  drawMat(
    surface,
    { ...drawing, bottom: drawing.bottom + 5 },
    {
      blank: context.plan.blank,
      openings: context.layout.windows.map(({ window, layers: cuts }) => {
        const outline = cuts.at(-1)?.outlines?.opening;
        return { opening: window, ...(outline ? { outline } : {}) };
      }),
      names: context.layout.windows.map((window) => window.name),
      lines: context.layout.windows.flatMap(({ lines }) => lines.map(({ middle }) => middle)),
    },
  );
  surface.text(
    'as it hangs, from the front',
    { x: (drawing.left + drawing.right) / 2, y: drawing.bottom + 1 },
    { size: 7, align: 'centre' },
  );
  drawFacts(surface, { ...room, left: drawing.right + 6 }, setting);
  let top = room.top - height;
  if (tiling) {
    const tall = mapHeight(context, tiling, paper);
    const { width: across, height: up } = context.plan.blank;
    const width = Math.min((room.right - room.left) / maps.length, Math.max(MAP_HEADING, (tall * across) / up));
    maps.forEach((map, index) => {
      const left = room.left + index * width;
      drawTileMap(surface, { left, right: left + width - 6, top, bottom: top - tall + 3 }, map, tiling);
    });
    top -= tall;
  }
  drawSteps(surface, { ...room, top: room.bottom + stepsHeight(context.plan) }, setting, layers);
  return top;
}

/** The blank in big numbers, then layers, paper and pages. */
function drawFacts(surface: Surface, room: Box, { context, layers, tiling, maps, listPages }: OverviewSetting): void {
  const { plan, showing, options } = context;
  const size = `${lengthText(plan.blank.width, showing)} × ${lengthText(plan.blank.height, showing)}`;
  let y = room.top - 8;
  const big = { size: 24, weight: 'bold' } as const;
  // A size is set smaller rather than cut short.
  const part = Math.min(1, (room.right - room.left) / surface.width(fractions(size), big));
  surface.text(fractions(size), { x: room.left, y }, { ...big, size: big.size * part });
  y -= 5;
  surface.text('the blank: width × height of every layer, as it hangs', { x: room.left, y }, { size: 8.5 });
  y -= 4;
  const lines = [
    ...layers.map((layer) => layerFacts(layer, showing)),
    ...layers.flatMap(({ plan: { lines } }) => lineFacts(lines)),
    tiling
      ? `Printed on ${paperWord(options.paper)}, ${tiling.paper.width > tiling.paper.height ? 'landscape' : 'portrait'}${options.turnEverySecondPage ? '; every second tile head down' : ''}`
      : `Printed on ${paperWord(options.paper)}, one page a layer`,
    listPages[0] === listPages[1]
      ? `Cutting list: page ${listPages[0]}`
      : `Cutting list: pages ${listPages[0]} to ${listPages[1]}`,
    joined(tiling)
      ? `Joins have small letters, windows capitals. Tile maps below show the side that is printed${maps.some(({ tiles }) => tiles.some((tile) => tile.empty)) ? '; parts crossed out hold no cut and no border, and are not printed' : ''}.`
      : tiling
        ? 'The whole blank goes on one page.'
        : 'Lines nearer than 12 mm to the paper’s edge may be lost by the printer.',
  ];
  for (const line of lines) {
    y -= surface.paragraph(line, { x: room.left, y }, room.right - room.left, { size: 8.5 }) + 0.8;
  }
}

function layerFacts({ plan }: ViewLayer, showing: Showing): string {
  const board = plan.board === '' ? '' : `${plan.board}, `;
  return `Layer ${plan.number}${plan.number === 1 ? ' (top)' : ''}: ${board}${fractions(lengthText(plan.thickness, showing))} thick, ${bevelWords(plan.bevel)}`;
}

function lineFacts(lines: readonly LinePlan[]): string[] {
  if (lines.length === 0) return [];
  const grooves = lines.filter(({ kind }) => kind === 'groove').length;
  const ruled = lines.length - grooves;
  const counted = [
    ...(grooves > 0 ? [grooves === 1 ? 'one groove' : `${grooves} grooves`] : []),
    ...(ruled > 0 ? [ruled === 1 ? 'one ruled line' : `${ruled} ruled lines`] : []),
  ];
  return [`On the face of layer 1, before its windows: ${counted.join(' and ')}`];
}

function drawSteps(surface: Surface, room: Box, setting: OverviewSetting, layers: readonly ViewLayer[]): void {
  const { context, tiling } = setting;
  const split = room.left + (room.right - room.left) * 0.64;
  const bevels = new Set(
    layers.flatMap((layer) => layer.windows.flatMap((window) => window.lines.map((line) => line.bevelSide))),
  );
  const [bevelSide] = bevels;
  const words = steps({
    view: context.options.view,
    tiled: joined(tiling),
    layers: layers.length,
    waste: context.plan.waste,
    lines: layers.some((layer) => layer.lines.length > 0),
    overcut: layers.some((layer) =>
      layer.windows.some((window) => window.lines.some((line) => line.overcutStart > 0 || line.overcutEnd > 0)),
    ),
    ...(bevels.size === 1 && bevelSide ? { bevelSide } : {}),
  });
  let y = room.top - 1;
  words.forEach((step, index) => {
    surface.text(String(index + 1), { x: room.left, y: y - 2.6 }, { size: 9, weight: 'bold' });
    y -= surface.paragraph(step, { x: room.left + 6, y }, split - room.left - 10, { size: 8 }) + 0.9;
  });
  let down = room.top - 1;
  surface.text('Take care', { x: split, y: down - 2.6 }, { size: 9, weight: 'bold' });
  down -= 5;
  for (const caution of CAUTIONS) {
    down -= surface.paragraph(caution, { x: split, y: down }, room.right - split, { size: 8 }) + 1.6;
  }
}

/** The unit stands in the headings, so that long numbers have room. */
const sizeColumns = (unit: string): readonly Column[] => [
  { heading: 'Layer', width: 11 },
  { heading: 'Window', width: 38 },
  { heading: `Opening, width × height, ${unit}`, width: 46, style: { size: 9, weight: 'bold', tabular: true } },
  ...['Left', 'Top', 'Right', 'Bottom'].map((side): Column => ({
    heading: `${side}, ${unit}`,
    width: 20,
    align: 'right',
    style: { size: 9, tabular: true },
  })),
];

function drawSizes(surface: Surface, room: Box, rows: readonly TableRow[], { unit }: Showing): void {
  const columns = filling(sizeColumns(unit), room.right - room.left);
  const title = 'Openings, and their borders as the mat hangs, from the edges of the blank';
  surface.text(title, { x: room.left, y: room.top - 3.4 }, { size: 9, weight: 'bold' });
  drawTable(surface, { x: room.left, y: room.top - 4 }, columns, rows);
}

function sizeRows({ plan, showing }: OutputContext): readonly TableRow[] {
  const text = (mm: number) => bare(showLength(mm, showing));
  return plan.layers.flatMap((layer) =>
    layer.windows.map(({ name, title, opening, borders }) => [
      String(layer.number),
      title === '' ? name : `${name}  ${title}`,
      `${text(opening.right - opening.left)} × ${text(opening.top - opening.bottom)}`,
      ...bordersShown(borders, plan.blank, showing),
    ]),
  );
}

/** Left, top, right, bottom, so that with the opening between them they add up to the blank as shown. */
function bordersShown({ left, top, right, bottom }: PerSide, blank: Size, showing: Showing): readonly string[] {
  const across = showTogether([left, blank.width - left - right, right], blank.width, showing);
  const up = showTogether([top, blank.height - top - bottom, bottom], blank.height, showing);
  return [across[0], up[0], across[2], up[2]].map((shown) => (shown ? bare(shown) : ''));
}

function bare({ rounded, text }: Shown): string {
  return fractions(`${rounded ? '≈ ' : ''}${text}`);
}
