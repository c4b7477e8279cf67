/** The plan of sheets for the bench: an overview, then each sheet to scale with its cuts in order. */
import { alikeSheets } from '../../core/sheets/alike-sheets';
import type { Box, Size } from '../../core/geometry/box';
import type { MakerHooks } from '../context';
import { drawDocument, openTypesetter, type DrawnDocument, type PagePlan } from '../paper/document';
import { drawBlocks, flow, flowTight } from '../paper/flow';
import { paperSize } from '../paper/page';
import type { Typesetter } from '../paper/typesetter';
import { drawPlainFrame, plainBody } from '../template/sheet-frame';
import { overviewBlocks } from './overview-blocks';
import type { PapersContext } from './papers-context';
import { isDrawnLying, sheetWays, type PageRoom } from './sheet-blocks';

/** Rejects with the signal's reason when cancelled. */
export function makeSheetPlan(context: PapersContext, hooks: MakerHooks = {}): Promise<DrawnDocument> {
  const typesetter = openTypesetter(context.fonts);
  const pages = { upright: pageOf(context, 'portrait', typesetter), lying: pageOf(context, 'landscape', typesetter) };
  const overview = flow(overviewBlocks(context, pages.upright.setting), pages.upright.room);
  const lots = [
    ...overview.map((blocks) => ({ blocks, page: pages.upright })),
    ...context.boards.flatMap((board) =>
      alikeSheets(board.plan.sheets).flatMap((alike) => {
        const page = isDrawnLying(board, alike, pages, context) ? pages.lying : pages.upright;
        return flowTight(sheetWays(board, alike, page, context), page.room).map((blocks) => ({ blocks, page }));
      }),
    ),
  ];
  const plans = lots.map(({ blocks, page: { paper, body } }): PagePlan => ({
    size: paper,
    step: 'Drawing the sheets',
    draw: (surface, { number, count }) => {
      drawPlainFrame(surface, {
        title: context.title,
        under: 'Which sheets to take, and how to cut them',
        page: `Page ${number} of ${count}`,
        place: 'sheet plan · drawings to the scale they say',
      });
      drawBlocks(surface, blocks, { x: body.left, y: body.top });
    },
  }));
  return drawDocument(plans, context.title, context.fonts, hooks);
}

interface Page extends PageRoom {
  readonly paper: Size;
  readonly body: Box;
}

function pageOf(context: PapersContext, way: 'portrait' | 'landscape', typesetter: Typesetter): Page {
  const paper = paperSize(context.paper, way);
  const body = plainBody(paper);
  return { paper, body, room: body.top - body.bottom, setting: { typesetter, width: body.right - body.left } };
}
