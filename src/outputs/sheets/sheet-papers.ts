/** The papers of a plan of sheets: one table of them, and the one door through which a plan becomes files. */
import type { Progress, SheetPaperKind, SheetPapersOptions, SheetPlans } from '../../bridge';
import type { Problem } from '../../core/problem';
import { USUAL_KEEP } from '../../core/sheets/remnants';
import type { Fonts, MakerHooks } from '../context';
import type { DrawnDocument } from '../paper/document';
import { lostIn, type Named } from '../paper/lost-letters';
import { makeLabels } from './labels';
import type { PapersContext } from './papers-context';
import { sheetCutsCsv, sheetPiecesCsv } from './sheet-lists';
import { makeSheetPlan } from './sheet-plan';
import { sheetSvg } from './sheet-svg';

export interface PaperFile {
  readonly kind: SheetPaperKind;
  readonly name: string;
  readonly bytes: Uint8Array;
}

interface PapersMade {
  readonly files: readonly PaperFile[];
  /** Names that the type on paper can't show. */
  readonly problems: readonly Problem[];
}

interface PapersHooks {
  readonly fonts: Fonts;
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

/** A file by what ends its name. */
interface Part {
  readonly ending: string;
  readonly make: (context: PapersContext, hooks: MakerHooks) => Promise<DrawnDocument>;
}

const PAPERS: Readonly<Record<SheetPaperKind, (boards: SheetPlans['boards']) => readonly Part[]>> = {
  'sheet-plan': () => [{ ending: '-sheet-plan.pdf', make: makeSheetPlan }],
  labels: () => [{ ending: '-labels.pdf', make: makeLabels }],
  'sheet-cuts': () => [
    { ending: '-sheet-pieces.csv', make: written(sheetPiecesCsv) },
    { ending: '-sheet-cuts.csv', make: written(sheetCutsCsv) },
  ],
  'sheet-drawings': (boards) =>
    boards.flatMap(({ plan }, board) =>
      plan.sheets.map((_, sheet) => ({
        ending: drawingEnding(board, sheet),
        make: written((context) => sheetSvg(context, board, sheet)),
      })),
    ),
};

function drawingEnding(board: number, sheet: number): string {
  return `-board-${board + 1}-sheet-${sheet + 1}.svg`;
}

/** Whether a file is called as the drawings of a plan of that name are. */
export function isDrawingName(baseName: string, name: string): boolean {
  return name.startsWith(baseName) && /^-board-[1-9]\d*-sheet-[1-9]\d*\.svg$/.test(name.slice(baseName.length));
}

function written(textOf: (context: PapersContext) => string): Part['make'] {
  return async (context) => ({ bytes: new TextEncoder().encode(textOf(context)), lost: new Set() });
}

function partsOf(boards: SheetPlans['boards'], only: readonly SheetPaperKind[]) {
  const kinds = (Object.keys(PAPERS) as SheetPaperKind[]).filter((kind) => only.includes(kind));
  return kinds.flatMap((kind) => PAPERS[kind](boards).map((part) => ({ kind, ...part })));
}

/** What the files are called, in the order in which they are made. */
export function sheetPaperNames({ boards }: SheetPlans, baseName: string, only: readonly SheetPaperKind[]): string[] {
  return partsOf(boards, only).map(({ ending }) => baseName + ending);
}

/** The same plan and options give the same bytes. Rejects with the signal's reason (an `AbortError`) when cancelled. */
export async function makeSheetPapers(
  plans: SheetPlans,
  baseName: string,
  { paper, showing, only }: SheetPapersOptions,
  { fonts, onProgress, signal }: PapersHooks,
): Promise<PapersMade> {
  const { title, boards, unplanned, keep = USUAL_KEEP } = plans;
  const context: PapersContext = { title: title.trim() === '' ? 'Sheets' : title, boards, unplanned, keep, paper, showing, fonts }; // prettier-ignore
  const parts = partsOf(boards, only);
  const files: PaperFile[] = [];
  const lost = new Set<string>();
  for (const [index, { kind, ending, make }] of parts.entries()) {
    signal?.throwIfAborted();
    const report = (done: number, step: string) => onProgress?.({ done: (index + done) / parts.length, step });
    report(0, 'Putting the sheets on paper');
    const made = await make(context, { onProgress: report, ...(signal ? { signal } : {}) });
    signal?.throwIfAborted();
    files.push({ kind, name: baseName + ending, bytes: made.bytes });
    for (const sign of made.lost) lost.add(sign);
  }
  onProgress?.({ done: 1, step: 'Done' });
  return { files, problems: lostIn(namesIn(plans), lost) };
}

/** Each once, in the order in which they are met. */
function namesIn({ title, boards }: SheetPlans): Named[] {
  const names = [
    title,
    ...boards.flatMap(({ board, ask }) => [
      board,
      ...ask.pieces.flatMap(({ id, from }) => (from ? [from.title, from.name] : [id])),
    ]),
  ];
  return [...new Set(names)].map((words) => ({ at: 'sheets', words }));
}
