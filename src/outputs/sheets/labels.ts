/** A label for each piece, in a plain grid that is cut apart along its crosses. */
import { grow, type Box, type Point, type Size } from '../../core/geometry/box';
import { jobTitles } from '../../core/sheets/job-words';
import type { MakerHooks } from '../context';
import { drawDocument, openTypesetter, type DrawnDocument, type PagePlan } from '../paper/document';
import { paperSize, safeBox } from '../paper/page';
import { PENS } from '../paper/pens';
import { drawPieceLabel, leastHeight, pieceLabel, type PieceLabel } from './label-matter';
import type { PapersContext } from './papers-context';

const COLUMNS = 3;
/** A label is as high, mm, unless the longest of the names needs more. */
const USUAL = 36;
/** From its edges to its words, mm. */
const INSIDE = 3.2;
/** Arms of the crosses at which labels are cut apart, mm. */
const ARM = 2;
/** Room of the line at the foot of the page, mm. */
const FOOT = 5;

/** Rejects with the signal's reason when cancelled. */
export function makeLabels(context: PapersContext, hooks: MakerHooks = {}): Promise<DrawnDocument> {
  const paper = paperSize(context.paper, 'portrait');
  const safe = safeBox(paper);
  const area = grow(safe, { left: -ARM, right: -ARM, top: -ARM, bottom: -FOOT });
  const width = (area.right - area.left) / COLUMNS;
  const setting = { typesetter: openTypesetter(context.fonts), width: width - 2 * INSIDE };
  const jobs = jobTitles(context.boards).size;
  const labels = context.boards.flatMap((board) =>
    board.plan.sheets.flatMap((sheet, index) =>
      sheet.pieces.map((piece) => pieceLabel(board, index + 1, piece, jobs, context.showing)),
    ),
  );
  const least = Math.max(USUAL, ...labels.map((label) => leastHeight(label, setting) + 2 * INSIDE));
  const rows = Math.max(1, Math.floor((area.top - area.bottom) / least));
  const size = { width, height: (area.top - area.bottom) / rows };
  const lots = Array.from({ length: Math.ceil(labels.length / (rows * COLUMNS)) }, (_, page) =>
    labels.slice(page * rows * COLUMNS, (page + 1) * rows * COLUMNS),
  );
  const pages = lots.map((lot): PagePlan => ({
    size: paper,
    step: 'Writing the labels',
    draw: (surface, { number, count }) => {
      lot.forEach((label, index) => drawPieceLabel(surface, label, grow(place(area, size, index), -INSIDE), setting));
      surface.lines(crosses(area, size, lot), PENS.mark);
      const foot = surface.fit(`Labels · ${context.title} · page ${number} of ${count} · cut apart at the crosses`, safe.right - safe.left, { size: 7 }); // prettier-ignore
      surface.text(foot, { x: area.left, y: safe.bottom }, { size: 7 });
    },
  }));
  return drawDocument(pages, context.title, context.fonts, hooks);
}

/** Row by row from the upper left. */
function place(area: Box, { width, height }: Size, index: number): Box {
  const left = area.left + (index % COLUMNS) * width;
  const top = area.top - Math.floor(index / COLUMNS) * height;
  return { left, right: left + width, top, bottom: top - height };
}

/** At every corner of a label, once. */
function crosses(area: Box, size: Size, labels: readonly PieceLabel[]): [Point, Point][] {
  const corners = new Map<string, Point>();
  labels.forEach((_, index) => {
    const { left, right, top, bottom } = place(area, size, index);
    for (const x of [left, right])
      for (const y of [top, bottom]) corners.set(`${x.toFixed(3)} ${y.toFixed(3)}`, { x, y });
  });
  return [...corners.values()].flatMap(({ x, y }): [Point, Point][] => [
    [{ x: x - ARM, y }, { x: x + ARM, y }],
    [{ x, y: y - ARM }, { x, y: y + ARM }],
  ]); // prettier-ignore
}
