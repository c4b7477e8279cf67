/** Cuts on a card that no guide leads or that lie beyond its reach: two marks each, and what a curve is drawn from. */
import type { CardCut, CutCard } from '../../core/cutting/cut-card';
import type { CutPlan, LayerPlan } from '../../core/cutting/plan';
import { showSetting, type Showing } from '../../core/units';
import type { OutputContext } from '../context';
import type { Block } from '../paper/flow';
import { filling, type Column } from '../paper/table';
import { headingsBlock, rowBlock } from '../paper/table-blocks';
import { headingBlock, paragraphBlock, type Setting } from '../paper/text-blocks';
import { fractions } from '../paper/type';
import { figureWords } from '../template/figures';
import { boardWords, settingCell, thenWords, toolWords } from './card-words';
import { SPACE } from './run-blocks';

export function markBlocks(context: OutputContext, layer: LayerPlan, card: CutCard, setting: Setting): Block[] {
  const { byMarks } = card;
  if (byMarks.length === 0) return [];
  const far = byMarks.some(({ line }) => line.beyondReach !== undefined);
  const columns = filling(markColumns(context.showing, far, byMarks[0]?.made ? 36 : 24), setting.width);
  const headings = headingsBlock(columns);
  return [
    headingBlock('By marks'),
    { ...paragraphBlock(introduction(context, layer, byMarks), setting), withNext: true },
    headings,
    ...byMarks.flatMap((cut) => {
      const row = { ...rowBlock(setting.typesetter, columns, cells(cut, context, layer, far)), again: [headings] };
      const curve = curveWords(cut, context.showing);
      if (curve === '') return [row];
      return [{ ...row, withNext: true }, lowered(paragraphBlock(curve, setting, { size: 8 }, 1.6))];
    }),
  ];
}

/** Clear of the line under the row it belongs to. */
function lowered(block: Block): Block {
  const air = 0.8;
  return {
    height: block.height + air,
    draw: (surface, { x, y }) => block.draw(surface, { x, y: y - air }),
  };
}

function introduction({ plan, options }: OutputContext, layer: LayerPlan, cuts: readonly CardCut[]): string {
  const far = cuts.filter(({ line }) => line.beyondReach !== undefined).length;
  const free = cuts.length - far;
  const curved = cuts.some(({ line }) => line.curve);
  return [
    ...(far === 0 ? [] : [beyondWords(plan, far)]),
    ...(free === 0
      ? []
      : [
          free === 1
            ? 'No parallel guide leads one cut, which is a curve or slants.'
            : `No parallel guide leads ${free} cuts, which are curves or slant.`,
        ]),
    `Marks are measured across from the LEFT edge and up from the BOTTOM edge of ${boardWords(layer.guideOn)}, seen from the ${options.view}.`,
    'Prick both marks, lay a straightedge with a guard so that the blade runs from the one to the other, and run past them by the overcut.',
    ...(curved ? ['Draw a curve through its marks as told below it, or take it from the full-scale template.'] : []),
  ].join(' ');
}

function beyondWords({ cutter }: CutPlan, count: number): string {
  const who = cutter ? `The guide of ${cutter.name}` : 'The guide';
  return `${who} is too short for ${count === 1 ? 'one cut' : `${count} cuts`}, beside which stands how far it would have to reach.`;
}

function markColumns({ unit }: Showing, far: boolean, nameWidth: number): readonly Column[] {
  const number = { size: 9, tabular: true };
  const mark = (heading: string, width: number): Column => ({ heading, width, align: 'right', style: number });
  return [
    { heading: 'Cut', width: 9, style: { size: 10, weight: 'bold' } },
    { heading: 'Window, cut', width: nameWidth, style: { size: 9 } },
    mark(`From across, ${unit}`, 28),
    mark('up', 16),
    mark('to across', 20),
    mark('up', 16),
    mark('Overcut', 16),
    mark('at stop', 16),
    ...(far ? [mark('Guide needs', 21)] : []),
    SPACE,
    { heading: 'Then', width: 63 - nameWidth, style: { size: 8 } },
  ];
}

function cells(cut: CardCut, { plan, showing }: OutputContext, layer: LayerPlan, far: boolean): readonly string[] {
  const { line } = cut;
  const { start, end, beyondReach } = line;
  const text = (mm: number) => fractions(showSetting(mm, showing).text);
  return [
    String(cut.number),
    cut.name,
    ...[start.x, start.y, end.x, end.y].map((mm) => settingCell(mm, showing)),
    ...[line.overcutStart, line.overcutEnd].map(text),
    ...(far ? [beyondReach === undefined ? '' : text(beyondReach)] : []),
    '',
    thenWords(cut, plan, layer),
  ];
}

/** What a line is made with, and radius or axes and centre of a curve; empty of a straight cut of a window. */
function curveWords(cut: CardCut, showing: Showing): string {
  const { line, number } = cut;
  const tool = toolWords(cut, showing);
  const found = line.curve ? figureWords({ lines: [line] }, showing) : [];
  const length = line.curve && line.curve.length > 1 ? [`${line.curve.length} pieces`] : [];
  const figure = line.curve && found.length === 0 ? ['as the full-scale template has it'] : found;
  const words = [...(tool === '' ? [] : [tool]), ...length, ...figure];
  return words.length === 0 ? '' : `Cut ${number}: ${words.join('; ')}.`;
}
