/** Guided cuts on a card: where the guide stands and which edge lies at it, then the cuts made so, each on a row. */
import type { CutCard, GuidedCut, GuidedRun } from '../../core/cutting/cut-card';
import type { LayerPlan } from '../../core/cutting/plan';
import { showSetting, type Showing } from '../../core/units';
import type { OutputContext } from '../context';
import type { Block } from '../paper/flow';
import { drawHeadings, drawRow, filling, ROW_HEIGHT, type Column } from '../paper/table';
import { PENS } from '../paper/pens';
import { headingBlock, paragraphBlock, type Setting } from '../paper/text-blocks';
import { fractions } from '../paper/type';
import { boardWords, thenWords, toolWords } from './card-words';

/** Height of a banner's first line, and what lies under its second, mm. */
const FIRST_LINE = 6.1;
const BELOW = 1.1;
const AIR = 1.5;

/** Between numbers that end and words that begin. */
export const SPACE: Column = { heading: '', width: 3 };

export function runBlocks(context: OutputContext, layer: LayerPlan, { runs }: CutCard, setting: Setting): Block[] {
  if (runs.length === 0) return [];
  const columns = filling(runColumns(context.showing, runs[0]?.cuts[0].made ? 46 : 25), setting.width);
  const headings = headingsBlock(columns);
  return [
    headingBlock('With the guide'),
    headings,
    ...runs.flatMap((run, index) => {
      const told = banner(run, index === 0, layer, context.showing, setting);
      const again = [headings, banner(run, 'again', layer, context.showing, setting)];
      return [
        { ...told, again: [headings] },
        ...run.cuts.map((cut) => ({ ...rowBlock(cut, context, layer, columns), again })),
      ];
    }),
  ];
}

export function headingsBlock(columns: readonly Column[]): Block {
  return {
    height: ROW_HEIGHT,
    withNext: true,
    draw: (surface, { x, y }) => drawHeadings(surface, { x, y: y - ROW_HEIGHT }, columns),
  };
}

export function cellsBlock(columns: readonly Column[], cells: readonly string[]): Block {
  const width = columns.reduce((sum, column) => sum + column.width, 0);
  return {
    height: ROW_HEIGHT,
    draw: (surface, { x, y }) => {
      drawRow(surface, x, y - ROW_HEIGHT, columns, cells);
      surface.line({ x, y: y - ROW_HEIGHT }, { x: x + width, y: y - ROW_HEIGHT }, PENS.hair);
    },
  };
}

function runColumns({ unit }: Showing, nameWidth: number): readonly Column[] {
  const number = { size: 10, weight: 'bold' } as const;
  const right = 'right' as const;
  return [
    { heading: 'Cut', width: 10, style: number },
    { heading: 'Window, cut', width: nameWidth, style: { size: 8.5 } },
    { heading: `Start, ${unit}`, width: 25, align: right, style: { size: 10, tabular: true } },
    { heading: `Stop, ${unit}`, width: 25, align: right, style: { size: 10, tabular: true } },
    { heading: `Overcut at start, ${unit}`, width: 29, align: right, style: { size: 9, tabular: true } },
    { heading: 'and at stop', width: 24, align: right, style: { size: 9, tabular: true } },
    SPACE,
    { heading: 'Then', width: 69 - nameWidth, style: { size: 8.5 } },
  ];
}

function rowBlock(
  cut: GuidedCut,
  { plan, showing }: OutputContext,
  layer: LayerPlan,
  columns: readonly Column[],
): Block {
  const { line, measures } = cut;
  return cellsBlock(columns, [
    String(cut.number),
    cut.name,
    ...[measures.start, measures.stop, line.overcutStart, line.overcutEnd].map((mm) =>
      fractions(showSetting(mm, showing).text),
    ),
    '',
    thenWords(cut, plan, layer),
  ]);
}

/** Told once for all cuts of a run, and again where they go on over the page. */
function banner(run: GuidedRun, place: boolean | 'again', layer: LayerPlan, showing: Showing, setting: Setting): Block {
  const { reading, edge, from } = run;
  const text = (mm: number) => fractions(showSetting(mm, showing).withUnit);
  const scale = reading === undefined ? '' : ` (the scale reads ${text(reading)})`;
  const tool = toolWords(run.cuts[0], showing);
  const first = `${guideVerb(run, place)} ${text(run.setting)}${scale}`;
  const turn = run.turnBoard && place !== 'again' ? 'Turn the board: the' : 'The';
  const second = `${turn} ${edge.toUpperCase()} edge of ${boardWords(layer.guideOn)} at the guide · start and stop from its ${from.toUpperCase()} edge${tool === '' ? '' : ` · ${tool}`}`;
  const { width } = setting;
  const words = paragraphBlock(second, { ...setting, width: width - 4 }, { size: 8.5 }, BELOW);
  const high = FIRST_LINE + words.height;
  return {
    height: high + AIR,
    withNext: true,
    draw: (surface, { x, y }) => {
      const top = y - AIR;
      surface.fill({ left: x, right: x + width, top, bottom: top - high }, '#ececec');
      // Figures of one width, so that no decimal point is lost between them.
      const big = { size: 11, weight: 'bold', tabular: true } as const;
      surface.text(surface.fit(first, width - 4, big), { x: x + 2, y: top - 4.6 }, big);
      words.draw(surface, { x: x + 2, y: top - FIRST_LINE });
    },
  };
}

function guideVerb({ moveGuide }: GuidedRun, place: boolean | 'again'): string {
  if (place === 'again') return 'Still: guide at';
  if (place) return 'Set the guide to';
  return moveGuide ? 'Move the guide to' : 'Leave the guide at';
}
