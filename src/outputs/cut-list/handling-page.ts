/** A page before the cuts of a layer that is cut behind the one above: what is done with the boards first, and at the end. */
import { handlingOf, type Handling } from '../../core/cutting/handling';
import type { LayerPlan } from '../../core/cutting/plan';
import type { Point, Size } from '../../core/geometry/box';
import { titleOf, type OutputContext } from '../context';
import type { PagePlan } from '../paper/document';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';
import { drawSheetFrame } from '../template/sheet-frame';
import { layerWords } from '../template/tile-page';
import { viewLayer } from '../template/view-geometry';

/** One page, or none where every layer is cut by itself. */
export function handlingPages(context: OutputContext, layer: LayerPlan, paper: Size): readonly PagePlan[] {
  const { plan, showing, options } = context;
  if (plan.way === 'apart') return [];
  const { before, after } = handlingOf(plan, layer.number - 1, showing);
  const draw = (surface: Surface, { number, count }: { number: number; count: number }) => {
    const seen = viewLayer(layer, options.view);
    const { body } = drawSheetFrame(
      surface,
      {
        view: options.view,
        title: titleOf(context),
        under: layerWords(seen, plan.layers.length),
        page: `Page ${number} of ${count}`,
        place: 'cutting list · scale 100 %',
      },
      { blank: layer.blank, openings: seen.windows, names: seen.windows.map(({ name }) => name) },
    );
    const width = body.right - body.left - 4;
    let at: Point = { x: body.left + 2, y: body.top - 5 };
    surface.text(`The boards, layer ${layer.number}`, at, { size: 14, weight: 'bold' });
    at = { ...at, y: at.y - 6 };
    for (const [heading, steps] of [
      ['Before the cuts', before],
      ['After the last cut', after],
    ] as const)
      at = drawSteps(surface, heading, steps, at, width);
  };
  return [{ size: paper, step: `Writing what is done with the boards of layer ${layer.number}`, draw }];
}

function drawSteps(surface: Surface, heading: string, steps: readonly Handling[], from: Point, width: number): Point {
  if (steps.length === 0) return from;
  surface.text(heading, { x: from.x, y: from.y - 3 }, { size: 11, weight: 'bold' });
  let y = from.y - 5;
  steps.forEach(({ words }, index) => {
    const numbered = `${index + 1}.  ${fractions(words)}`;
    y -= surface.paragraph(numbered, { x: from.x, y }, width, { size: 10 }) + 2;
  });
  return { x: from.x, y: y - 4 };
}
