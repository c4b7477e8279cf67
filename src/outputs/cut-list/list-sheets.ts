/** Pages of the cutting list: what is told of a layer in one view, flowing from page to page within the template's frame. */
import type { LayerPlan, View } from '../../core/cutting/plan';
import type { Size } from '../../core/geometry/box';
import { titleOf, type OutputContext } from '../context';
import { openTypesetter, type PagePlan } from '../paper/document';
import { drawBlocks, flow, type Block } from '../paper/flow';
import type { Column } from '../paper/table';
import { headingsBlock } from '../paper/table-blocks';
import { headingBlock, paragraphBlock, type Setting } from '../paper/text-blocks';
import { drawSheetFrame } from '../template/sheet-frame';
import { planSheet } from '../template/sheet-plan';
import { layerWords } from '../template/tile-page';
import { viewLayer } from '../template/view-geometry';

/** Left of everything on the page, mm. */
const INDENT = 2;

export interface ListSheets {
  readonly layer: LayerPlan;
  readonly view: View;
  readonly step: string;
  readonly blocks: readonly Block[];
}

export function listSetting({ fonts }: OutputContext, paper: Size): Setting {
  const { body } = planSheet(paper);
  return { typesetter: openTypesetter(fonts), width: body.right - body.left - INDENT };
}

export function listSheets(context: OutputContext, paper: Size, list: ListSheets): readonly PagePlan[] {
  const { body } = planSheet(paper);
  const { layer, view, step, blocks } = list;
  const seen = viewLayer(layer, view);
  return flow(blocks, body.top - body.bottom).map((lot) => ({
    size: paper,
    step,
    draw: (surface, { number, count }) => {
      drawSheetFrame(
        surface,
        {
          view,
          title: titleOf(context),
          under: layerWords(seen, context.plan.layers.length),
          page: `Page ${number} of ${count}`,
          place: 'cutting list · scale 100 %',
        },
        {
          blank: layer.blank,
          openings: seen.windows,
          names: seen.windows.map(({ name }) => name),
          ...(view === 'front' ? { lines: layer.lines.map(({ middle }) => middle) } : {}),
        },
      );
      drawBlocks(surface, lot, { x: body.left + INDENT, y: body.top });
    },
  }));
}

/** Name and rules of a list over the headings of its table; told again on each of its pages. */
export function listHead(
  title: string,
  rules: string,
  columns: readonly Column[],
  setting: Setting,
): readonly [Block, ...Block[]] {
  return [
    headingBlock(title, 14),
    { ...paragraphBlock(rules, setting, { size: 8 }, 0), withNext: true },
    headingsBlock(columns),
  ];
}
