/** The first page of a wall template: which page is which, where the origin lies, what to do, and the places in numbers. */
import type { HangingWords } from '../../core/hanging/words/hanging-words';
import type { WallPlan } from '../../core/hanging/wall-plan';
import { sits } from '../../core/hanging/words/wall-words';
import { lengthText, type Showing } from '../../core/units';
import { titleOf, type OutputContext } from '../context';
import { openTypesetter, type PagePlan } from '../paper/document';
import { drawBlocks, flowTight, unparted, type Block } from '../paper/flow';
import { paperSize } from '../paper/page';
import { headingBlock, numberedBlocks, pairedBlocks, type Setting } from '../paper/text-blocks';
import { drawSheetFrame } from '../template/sheet-frame';
import { planSheet } from '../template/sheet-plan';
import { drawMap } from '../template/tile-map';
import type { Tile, Tiling } from '../template/tiling';
import { tilePaper } from './hanging-context';
import { tableBlocks } from '../paper/section-blocks';
import type { WallArea } from './wall-area';
import { frameOutlines } from './wall-key';

export interface WallOverview {
  readonly context: OutputContext;
  readonly area: WallArea;
  readonly tiling: Tiling;
  readonly tiles: readonly Tile[];
  /** Those of them that have a page. */
  readonly printed: readonly Tile[];
  readonly wall: WallPlan;
  readonly words: HangingWords;
}

/** Cautions that concern the frame rather than the wall: the hanging sheet has them. */
const ELSEWHERE: readonly string[] = ['glass', 'lifting', 'fittings'];
/** Of the map: its headings, and the most it grows to; less where that saves a page. */
const MAP_HEADING = 11;
const TALLEST_MAPS = [58, 48, 38];
/** Left of everything on the page, beside the upright check bar, mm. */
const INDENT = 2;

export function planWallOverview(overview: WallOverview): readonly PagePlan[] {
  const { context } = overview;
  const paper = paperSize(tilePaper(context), 'portrait');
  const { body } = planSheet(paper);
  const setting = { typesetter: openTypesetter(context.fonts), width: body.right - body.left - INDENT };
  const lotsFor = (before: number) =>
    flowTight(
      TALLEST_MAPS.map((tallest) => overviewBlocks(overview, setting, before, tallest)),
      body.top - body.bottom,
    );
  // Page numbers in the map don't change its height, so that the count is known before them.
  return lotsFor(lotsFor(0).length).map((lot) => ({
    size: paper,
    step: 'Drawing the overview of the wall template',
    draw: (surface, { number, count }) => {
      drawSheetFrame(surface, {
        word: 'WALL',
        title: titleOf(context),
        under: 'Template of the nails, at full size',
        page: `Page ${number} of ${count}`,
        place: 'overview · scale 100 %',
      });
      drawBlocks(surface, lot, { x: body.left + INDENT, y: body.top });
    },
  }));
}

function overviewBlocks(overview: WallOverview, setting: Setting, before: number, tallest: number): Block[] {
  const { context, words } = overview;
  const pages = new Map(overview.printed.map((tile, index) => [tile, before + index + 1] as const));
  const { width, height } = overview.area.size;
  const cautions = words.cautions.flatMap(({ topic, words: said }) => (ELSEWHERE.includes(topic) ? [] : [said]));
  const tall = MAP_HEADING + Math.min(tallest - MAP_HEADING, Math.max(8, (setting.width * height) / width));
  const map: Block = {
    height: tall,
    draw: (surface, { x, y }) =>
      drawMap(
        surface,
        { left: x, right: x + setting.width, top: y - 1, bottom: y - tall + 3 },
        {
          heading: 'The pages as they lie on the wall',
          blank: overview.area.size,
          openings: frameOutlines(overview.area),
          tiles: overview.tiles,
          pages,
        },
        overview.tiling,
      ),
  };
  return [
    map,
    headingBlock('What to do'),
    ...numberedBlocks(steps(overview, pages, context.showing), setting, { size: 8.5 }),
    ...tableBlocks('Hooks and nails', words.hooks, setting),
    ...unparted([headingBlock('Take care'), ...pairedBlocks(cautions, setting, { size: 8 })]),
  ];
}

function steps(overview: WallOverview, pages: ReadonlyMap<Tile, number>, showing: Showing): string[] {
  const { area, wall, printed } = overview;
  const text = (mm: number) => lengthText(mm, showing);
  const edge =
    wall.width === undefined && wall.before === 0 ? `${wall.from} edge of frame 1` : `${wall.from} edge of the wall`;
  const corner = cornerToHold(overview, pages, showing);
  const side = corner.fromEdge < 0 ? 'beyond' : 'from';
  return [
    'Print at 100\u00a0% ("actual size"), never "fit to page", and measure the bars on every page.',
    ...(printed.length > 1
      ? [
          'Trim the right and upper neighbour on its join line, lay it over the other page so that rings, letters and lines meet, and tape. Start at the lower left; every scale counts from the origin.',
        ]
      : []),
    `Hold it on the wall, the arrow up: ${corner.words}, lies ${text(Math.abs(corner.fromEdge))} ${side} the ${edge} and ${text(corner.height)} above the floor.`,
    `Lay a spirit level along the long-dashed line, ${text(area.origin.y + area.level)} above the floor, and fasten the paper with tape that lifts off; try the tape where it does not show. Floors and ceilings are seldom level: go by the line.`,
    'Look for cables and pipes behind every mark before anything goes into the wall.',
    markStep(wall, text),
    `Take the paper off, fix the ${wall.kind === 'cleat' ? 'rail of the cleat' : 'hooks'}, hang the frame and check it with the level. Thin lines are the edges of the frames.`,
  ];
}

function markStep({ kind, seat }: WallPlan, text: (mm: number) => string): string {
  if (kind === 'cleat') {
    return 'The heavy crosses lie on the bearing edge of the rail: hold the rail there, level, and mark its own holes; as many as it has, and into studs or masonry.';
  }
  return seat === undefined
    ? `Each heavy cross is where ${sits(kind)} on ${kind === 'sawtooth' ? 'their' : 'its'} hook, not the hook's hole: hold the hook there, its seat on the middle of the cross, and mark its hole.`
    : `Prick through the middle of each heavy cross, the nail's hole; the light cross ${text(seat)} below it is where ${sits(kind)}. Check that on the hook itself.`;
}

interface Corner {
  readonly words: string;
  readonly fromEdge: number;
  readonly height: number;
}

/** The origin, or where its page is not printed the lowest corner of those that are, the leftmost of them. */
function cornerToHold(
  { area, wall, printed }: WallOverview,
  pages: ReadonlyMap<Tile, number>,
  showing: Showing,
): Corner {
  const [lowest] = printed.toSorted((a, b) => a.own.bottom - b.own.bottom || a.own.left - b.own.left);
  const { left, bottom } = lowest?.own ?? { left: 0, bottom: 0 };
  const x = lengthText(left, showing);
  const words =
    left === 0 && bottom === 0
      ? 'the origin, the lower left corner'
      : `the cross at the lower left of page ${lowest ? pages.get(lowest) : 1}, at x ${x} and y ${lengthText(bottom, showing)}`;
  const fromEdge = area.fromEdge + (wall.from === 'left' ? left : -left);
  return { words, fromEdge, height: area.origin.y + bottom };
}
