/** The package sheet, for the bench: what goes into the frame, whether it fits, what to cut and order, and what is needed. */
import { judgeCare } from '../../core/care/judge-care';
import { showFor } from '../../core/layout/show';
import { answerPackage, type PackageAnswer } from '../../core/package/answer';
import { packageSection } from '../../core/package/package-section';
import { BUILD_WORDS, packageCautions, remedyGroups, STACK_HEADS, stackWords } from '../../core/package/package-words';
import { mouldingRows, type WordsRow } from '../../core/pieces/moulding-words';
import { costRows, densitySources, hasGlazing, PIECE_HEADS, piecesCaution, pieceRow, sizeRules, weightRows } from '../../core/pieces/piece-words'; // prettier-ignore
import { piecesOf, type FramePieces } from '../../core/pieces/pieces';
import { good, type Result } from '../../core/problem';
import { startShelf } from '../../core/shelf/start-shelf';
import { titleOf, type MakerHooks, type OutputContext } from '../context';
import { drawDocument, openTypesetter, type PagePlan } from '../paper/document';
import { drawBlocks, flowTight, unparted, type Block } from '../paper/flow';
import { listPaper } from '../paper/page';
import { sectionBlocks, tableBlocks } from '../paper/section-blocks';
import { headingBlock, pairedBlocks, paragraphBlock, type Setting } from '../paper/text-blocks';
import { lostLetters } from '../paper/lost-letters';
import { drawPlainFrame, plainBody } from '../template/sheet-frame';
import { careBlocks } from './care-blocks';
import { checkBlocks } from './check-blocks';
import { sectionBlock } from './section-drawing';

const SMALL = { size: 8 } as const;

/** Rejects with the signal's reason when cancelled. */
export async function makePackageSheet(context: OutputContext, hooks: MakerHooks = {}): Promise<Result<Uint8Array>> {
  const { options, showing, fonts } = context;
  const paper = listPaper(options.paper, showing.unit);
  const body = plainBody(paper);
  const setting = { typesetter: openTypesetter(fonts), width: body.right - body.left };
  const pages = flowTight(sheetWays(context, setting), body.top - body.bottom).map((lot): PagePlan => ({
    size: paper,
    step: 'Writing the package sheet',
    draw: (surface, { number, count }) => {
      drawPlainFrame(surface, {
        title: titleOf(context),
        under: 'What goes into the frame',
        page: `Page ${number} of ${count}`,
        place: 'package sheet · drawing to the scale it says',
      });
      drawBlocks(surface, lot, { x: body.left, y: body.top });
    },
  }));
  const { bytes, lost } = await drawDocument(pages, titleOf(context), fonts, hooks);
  return good(bytes, lostLetters(context, lost));
}

/** Of the section at the most, mm; smaller where that saves a page. */
const SECTION_HEIGHTS = [100, 68, 48, 34];

/** The same sheet with a smaller and smaller section. */
function sheetWays(context: OutputContext, setting: Setting): (readonly Block[])[] {
  const { job, layout, shelf } = context;
  /** Told in the unit of the export. */
  const told = { ...job, units: context.showing.unit };
  const answer = answerPackage(told, layout, { shelf: shelf ?? startShelf(job.units === 'in' ? 'inch' : 'metric') });
  const made = piecesOf({ jobs: [{ job, layout }], ...(shelf ? { shelf } : {}) });
  const frame = made.ok ? made.value.frames[0] : undefined;
  const pieces = frame?.pieces ?? [];
  const rest = [
    ...packageBlocks(context, answer, setting),
    ...(frame ? piecesBlocks(context, frame, setting) : []),
    ...checkBlocks(`Check list: ${BUILD_WORDS[job.frame.build]}`, answer.checkList, setting),
    ...careBlocks(judgeCare(told, layout, shelf), setting),
    ...unparted([
      headingBlock('Take care'),
      ...pairedBlocks([piecesCaution(pieces), ...packageCautions(job, hasGlazing(pieces))], setting, SMALL),
    ]),
  ];
  if (answer.stack.items.length === 0) return [rest];
  const section = packageSection(job, layout, answer);
  return SECTION_HEIGHTS.map((most) => [sectionBlock(section, setting.width, most, context.showing.unit), ...rest]);
}

function packageBlocks({ job, showing }: OutputContext, answer: PackageAnswer, setting: Setting): Block[] {
  const show = showFor({ ...job, units: showing.unit });
  const { stack, fit, remedies, air, pressure, standOut, float } = answer;
  const { rows, notes } = stackWords(stack, show);
  const numbered = rows.map((row, index) => [index < stack.items.length ? String(index + 1) : '', ...row]);
  const told = (heading: string, words: readonly string[] = []) =>
    words.length === 0 ? [] : [headingBlock(heading), ...words.map((one) => paragraphBlock(one, setting))];
  return [
    ...tableBlocks('The stack', { heads: ['', ...STACK_HEADS], rows: numbered }, setting),
    ...underTable(notes, setting),
    ...told('Fit', fit.words),
    ...(remedies.length === 0 ? [] : [headingBlock('What to change')]),
    ...remedyGroups(remedies, show).flatMap(({ heading, words }) =>
      [heading, ...words.map((one) => `– ${one}`)].map((one) => paragraphBlock(one, setting)),
    ),
    ...told('Air before the picture', air.words),
    ...told('The mat on the picture', pressure.words),
    ...told('What stands out behind', standOut?.words),
    ...told('Float frame', float?.words),
  ];
}

function piecesBlocks({ showing }: OutputContext, frame: FramePieces, setting: Setting): Block[] {
  const { pieces, moulding, weight, costs } = frame;
  const table = { heads: PIECE_HEADS, rows: pieces.map((piece) => pieceRow(piece, showing)) };
  const rows = (heading: string, list: readonly WordsRow[]) =>
    unparted(sectionBlocks({ heading, rows: list.map(([label, value, how]) => ({ label, value, how })) }, setting));
  return [
    ...(pieces.length === 0 ? [] : tableBlocks('Pieces, from the front', table, setting)),
    ...underTable(sizeRules(pieces), setting),
    ...rows('Moulding', mouldingRows(moulding, showing)),
    ...rows('Weight', weightRows(weight, showing.unit)),
    ...underTable(densitySources(weight), setting),
    ...(costs ? rows('Cost', costRows(costs)) : []),
  ];
}

/** Notes in small type, with air above the first. */
function underTable(notes: readonly string[], setting: Setting): Block[] {
  if (notes.length === 0) return [];
  return [{ height: 1.5, draw: () => undefined }, ...notes.map((note) => paragraphBlock(note, setting, SMALL))];
}
