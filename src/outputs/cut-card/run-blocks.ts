/** Guided cuts on a card: where the guide stands and which edge lies at it, then the cuts made so, each on a row. */
import type { CutCard, GuidedCut, GuidedRun } from '../../core/cutting/cut-card';
import type { LayerPlan } from '../../core/cutting/plan';
import { showSetting, type Showing } from '../../core/units';
import type { OutputContext } from '../context';
import type { Block } from '../paper/flow';
import { filling, type Column } from '../paper/table';
import { headingsBlock, rowBlock } from '../paper/table-blocks';
import { headingBlock, paragraphBlock, type Setting } from '../paper/text-blocks';
import { fractions } from '../paper/type';
import { boardWords, settingCell, settingWords, thenWords, toolWords } from './card-words';

/** Over a banner's first words, and under its last ones, mm. */
const ABOVE = 1.2;
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
        ...run.cuts.map((cut) => ({ ...cutBlock(cut, context, layer, columns, setting), again })),
      ];
    }),
  ];
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

function cutBlock(
  cut: GuidedCut,
  { plan, showing }: OutputContext,
  layer: LayerPlan,
  columns: readonly Column[],
  { typesetter }: Setting,
): Block {
  const { line, measures } = cut;
  return rowBlock(typesetter, columns, [
    String(cut.number),
    cut.name,
    ...[measures.start, measures.stop].map((mm) => settingCell(mm, showing)),
    ...[line.overcutStart, line.overcutEnd].map((mm) => fractions(showSetting(mm, showing).text)),
    '',
    thenWords(cut, plan, layer),
  ]);
}

/** Told once for all cuts of a run, and again where they go on over the page. */
function banner(run: GuidedRun, place: boolean | 'again', layer: LayerPlan, showing: Showing, setting: Setting): Block {
  const { reading, edge, from } = run;
  const scale = reading === undefined ? '' : `; the scale reads ${settingWords(reading, showing)}`;
  const tool = toolWords(run.cuts[0], showing);
  const first = `${guideVerb(run, place)} ${settingWords(run.setting, showing)}${scale}`;
  const turn = run.turnBoard && place !== 'again' ? 'Turn the board: the' : 'The';
  const second = `${turn} ${edge.toUpperCase()} edge of ${boardWords(layer.guideOn)} at the guide · start and stop from its ${from.toUpperCase()} edge${tool === '' ? '' : ` · ${tool}`}`;
  const { width } = setting;
  const inner = { ...setting, width: width - 4 };
  // Figures of one width, so that no decimal point is lost between them.
  const big = paragraphBlock(first, inner, { size: 11, weight: 'bold', tabular: true }, 0);
  const words = paragraphBlock(second, inner, { size: 8.5 }, BELOW);
  const high = ABOVE + big.height + words.height;
  return {
    height: high + AIR,
    withNext: true,
    draw: (surface, { x, y }) => {
      const top = y - AIR;
      surface.fill({ left: x, right: x + width, top, bottom: top - high }, '#ececec');
      big.draw(surface, { x: x + 2, y: top - ABOVE });
      words.draw(surface, { x: x + 2, y: top - ABOVE - big.height });
    },
  };
}

function guideVerb({ moveGuide }: GuidedRun, place: boolean | 'again'): string {
  if (place === 'again') return 'Still: guide at';
  if (place) return 'Set the guide to';
  return moveGuide ? 'Move the guide to' : 'Leave the guide at';
}
