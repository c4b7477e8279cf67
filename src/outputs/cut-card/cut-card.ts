/** Cut cards: for each layer, on as few pages as it takes, how it is cut by hand with a guided cutter. */
import type { LayerPlan, View } from '../../core/cutting/plan';
import { good, type Result } from '../../core/problem';
import { titleOf, type MakerHooks, type OutputContext } from '../context';
import { drawDocument, openTypesetter, type PagePlan } from '../paper/document';
import { drawBlocks, flow, type Block } from '../paper/flow';
import { listPaper } from '../paper/page';
import { lostLetters } from '../paper/lost-letters';
import { drawPlainFrame, plainBody } from '../template/sheet-frame';
import { layerWords } from '../template/tile-page';
import { viewLayer } from '../template/view-geometry';
import { faceBlocks, layerBlocks } from './layer-blocks';

/** Makes the cards of all layers as one PDF. Rejects with the signal's reason when cancelled. */
export async function makeCutCard(context: OutputContext, hooks: MakerHooks = {}): Promise<Result<Uint8Array>> {
  const { plan, options, showing, fonts } = context;
  const paper = listPaper(options.paper, showing.unit);
  const body = plainBody(paper);
  const setting = { typesetter: openTypesetter(fonts), width: body.right - body.left };
  const pagesOf = (layer: LayerPlan, view: View, blocks: readonly Block[]): PagePlan[] =>
    flow(blocks, body.top - body.bottom).map((lot) => ({
      size: paper,
      step: `Writing the cut card of layer ${layer.number}`,
      draw: (surface, { number, count }) => {
        drawPlainFrame(surface, {
          view,
          title: titleOf(context),
          under: layerWords(viewLayer(layer, view), plan.layers.length),
          page: `Page ${number} of ${count}`,
          place: 'cut card · drawing not to scale',
        });
        drawBlocks(surface, lot, { x: body.left, y: body.top });
      },
    }));
  const seenFrom = (view: View): OutputContext => ({ ...context, options: { ...options, view } });
  const pages = plan.layers.flatMap((layer) => {
    const view = sideCut(context, layer);
    const face = faceBlocks(seenFrom('front'), layer, setting);
    return [
      ...(face.length === 0 ? [] : pagesOf(layer, 'front', face)),
      ...pagesOf(layer, view, layerBlocks(seenFrom(view), layer, setting)),
    ];
  });
  const { bytes, lost } = await drawDocument(pages, titleOf(context), fonts, hooks);
  return good(bytes, lostLetters(context, lost));
}

/** As chosen; but a layer that is fixed behind another shows nothing but its back. */
function sideCut({ plan, options }: OutputContext, { number }: LayerPlan): View {
  return plan.way === 'behind' && number > 1 ? 'back' : options.view;
}
