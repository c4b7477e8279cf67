/** The plan of sheets for the bench: an overview, then each sheet to scale with its cuts in order. */
import { alikeSheets } from '../../core/sheets/alike-sheets';
import type { MakerHooks } from '../context';
import { drawDocument, openTypesetter, type DrawnDocument, type PagePlan } from '../paper/document';
import { drawBlocks, flow, flowTight } from '../paper/flow';
import { paperSize } from '../paper/page';
import { drawPlainFrame, plainBody } from '../template/sheet-frame';
import { overviewBlocks } from './overview-blocks';
import type { PapersContext } from './papers-context';
import { sheetWays } from './sheet-blocks';

/** Rejects with the signal's reason when cancelled. */
export function makeSheetPlan(context: PapersContext, hooks: MakerHooks = {}): Promise<DrawnDocument> {
  const paper = paperSize(context.paper, 'portrait');
  const body = plainBody(paper);
  const room = body.top - body.bottom;
  const setting = { typesetter: openTypesetter(context.fonts), width: body.right - body.left };
  const lots = [
    ...flow(overviewBlocks(context, setting), room),
    ...context.boards.flatMap((board) =>
      alikeSheets(board.plan.sheets).flatMap((alike) => flowTight(sheetWays(board, alike, setting, context), room)),
    ),
  ];
  const pages = lots.map((lot): PagePlan => ({
    size: paper,
    step: 'Drawing the sheets',
    draw: (surface, { number, count }) => {
      drawPlainFrame(surface, {
        title: context.title,
        under: 'Which sheets to take, and how to cut them',
        page: `Page ${number} of ${count}`,
        place: 'sheet plan · drawings to the scale they say',
      });
      drawBlocks(surface, lot, { x: body.left, y: body.top });
    },
  }));
  return drawDocument(pages, context.title, context.fonts, hooks);
}
