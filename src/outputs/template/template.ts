/** The template PDF: overview, every layer at full scale, and the cutting list. */
import type { Size } from '../../core/geometry/box';
import { framePath } from '../../core/layout/frame-path';
import { bad, good, type Problem, type Result } from '../../core/problem';
import { lengthText } from '../../core/units';
import { titleOf, type MakerHooks, type OutputContext } from '../context';
import { planListPages } from '../cut-list/list-pages';
import { drawDocument, type PagePlan } from '../paper/document';
import { listPaper, LONGEST_SIDE, paperSize, type TilePaper } from '../paper/page';
import { planBorders } from './border-dimensions';
import { planBlankPage } from './blank-page';
import { overviewPageCount, planOverview } from './overview';
import type { LayerTiles } from './tile-map';
import { lostLetters } from '../paper/lost-letters';
import { layerMatter } from './matter';
import { planTilePage } from './tile-page';
import { chooseTiling, joinsOf, tilesOf, type Tiling } from './tiling';
import { viewLayer, type ViewLayer } from './view-geometry';

/**
 * Makes the template. Problems: `page-too-large` when the blank is longer than a PDF page may be (200 in).
 * Rejects with the signal's reason when cancelled.
 */
export async function makeTemplate(context: OutputContext, hooks: MakerHooks = {}): Promise<Result<Uint8Array>> {
  const { options, plan } = context;
  if (options.paper === 'blank' && Math.max(plan.blank.width, plan.blank.height) > LONGEST_SIDE) {
    return bad([pageTooLarge(context)]);
  }
  const layers = plan.layers.map((layer) => viewLayer(layer, options.view));
  const pages = options.paper === 'blank' ? blankPages(context, layers) : tiledPages(context, layers, options.paper);
  const { bytes, lost } = await drawDocument(pages, titleOf(context), context.fonts, hooks);
  return good(bytes, lostLetters(context, lost));
}

function pageTooLarge({ plan, showing, job }: OutputContext): Problem {
  const longest = Math.max(plan.blank.width, plan.blank.height);
  const limit = lengthText(LONGEST_SIDE, showing);
  return {
    code: 'page-too-large',
    severity: 'error',
    at: framePath(job),
    message: `The blank is ${lengthText(longest, showing)} long, and a page of a PDF can be ${limit} long at most; choose a paper to tile it on, such as A3 or Tabloid.`,
    value: lengthText(longest, showing),
    limit,
    remedy: 'tile it on a3 or tabloid paper',
  };
}

/** Overview and list go on the paper of the job's country of measure; each layer on a page of the blank's size. */
function blankPages(context: OutputContext, layers: readonly ViewLayer[]): readonly PagePlan[] {
  const paper = listPaper('blank', context.showing.unit);
  const drawings = layers.map((layer) =>
    planBlankPage({ title: titleOf(context), layer, layerCount: layers.length, showing: context.showing }),
  );
  return assemble(context, layers, paper, drawings);
}

function tiledPages(context: OutputContext, layers: readonly ViewLayer[], paper: TilePaper): readonly PagePlan[] {
  const tiling = chooseTiling(layers.map(layerMatter), context.plan.blank, paper, context.showing);
  const upright = paperSize(paper, 'portrait');
  const maps = numberTiles(tiling, layers, overviewPageCount(context, upright, tiling));
  const drawings = maps.flatMap((map) => drawTiles(context, tiling, map, layers.length));
  return assemble(context, layers, upright, drawings, tiling, maps);
}

function numberTiles(tiling: Tiling, layers: readonly ViewLayer[], before: number): readonly LayerTiles[] {
  let page = before;
  return layers.map((layer) => {
    const tiles = tilesOf(tiling, layerMatter(layer));
    const pages = new Map(tiles.filter((tile) => !tile.empty).map((tile) => [tile, ++page] as const));
    return { layer, tiles, pages };
  });
}

function drawTiles(context: OutputContext, tiling: Tiling, map: LayerTiles, layerCount: number): readonly PagePlan[] {
  const joins = joinsOf(map.tiles, layerMatter(map.layer));
  const borders = planBorders(map.layer, context.showing);
  return [...map.pages.keys()].map((tile, index) =>
    planTilePage({
      title: titleOf(context),
      layer: map.layer,
      layerCount,
      tiling,
      tile,
      joins,
      borders,
      showing: context.showing,
      turned: context.options.turnEverySecondPage && index % 2 === 1,
    }),
  );
}

function assemble(
  context: OutputContext,
  layers: readonly ViewLayer[],
  paper: Size,
  drawings: readonly PagePlan[],
  tiling?: Tiling,
  maps: readonly LayerTiles[] = [],
): readonly PagePlan[] {
  const list = planListPages(context, paper);
  const before = overviewPageCount(context, paper, tiling) + drawings.length;
  const overview = planOverview({
    context,
    paper,
    layers,
    maps,
    listPages: [before + 1, before + list.length],
    ...(tiling ? { tiling } : {}),
  });
  return [...overview, ...drawings, ...list];
}
