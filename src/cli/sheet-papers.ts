/** Options of `sheets` that put the plan on paper, and how that is done. */
import { resolve } from 'node:path';
import { InvalidArgumentError, Option } from 'commander';
import type { PaperName, SheetPaperFile, SheetPaperKind, SheetPlans, UnitName } from '../bridge';
import type { Problem } from '../core/problem';
import type { Showing } from '../core/units';
import { into, readFolder, refusedExport } from './export-into';
import type { FoundJob, NoJob } from './read-job';
import { machineProblem } from './refuse';
import type { World } from './world';

const KINDS = ['sheet-plan', 'labels', 'sheet-cuts', 'sheet-drawings'] as const satisfies readonly SheetPaperKind[];
const PAPERS = ['letter', 'legal', 'tabloid', 'a4', 'a3'] as const satisfies readonly PaperName[];
const UNITS = ['in', 'mm', 'cm'] as const satisfies readonly UnitName[];

export interface PaperWords {
  readonly out?: string;
  readonly only?: readonly SheetPaperKind[];
  readonly paper?: (typeof PAPERS)[number];
  readonly units?: UnitName;
  readonly replace?: boolean;
}

export const PAPERS_HELP = `With --out the plan goes on paper, named after the job's file (of several jobs: sheets):
NAME-sheet-plan.pdf, each sheet to scale with its cuts in order; NAME-labels.pdf, one for each
piece; NAME-sheet-pieces.csv and NAME-sheet-cuts.csv; NAME-board-1-sheet-1.svg and so on, each
sheet at its true size. All are written or none.`;

export function paperOptions(): Option[] {
  return [
    new Option('--out <folder>', 'write the plan on paper there; made if it is not there').argParser(readFolder),
    new Option('--only <kinds>', `some of ${KINDS.join(',')}, parted by commas (default: all)`).argParser(readKinds),
    new Option('--paper <size>', 'of plan and labels (default: letter for a job in inches, else a4)').choices(PAPERS),
    new Option('--units <unit>', 'unit of the lengths shown (default: that of the first job)').choices(UNITS),
    new Option('--replace', 'write over files of the same names; without it none is ever touched'),
  ];
}

type Papers =
  { readonly ok: true; readonly files: readonly SheetPaperFile[]; readonly problems: readonly Problem[] } | NoJob;

/** Nothing where no folder is named. */
export async function putOnPaper(
  world: World,
  jobs: readonly FoundJob[],
  plans: Omit<SheetPlans, 'title'>,
  showing: Showing,
  { out, only = KINDS, paper, replace = false }: PaperWords,
): Promise<Papers> {
  if (out === undefined) {
    if (only === KINDS && paper === undefined && !replace) return { ok: true, files: [], problems: [] };
    return no(2, 'value-missing', 'Say with --out in which folder the papers are to be written.');
  }
  if (plans.boards.length === 0) return no(1, 'nothing-to-cut', 'Of no piece are sheets listed, so there is no plan to put on paper.'); // prettier-ignore
  // Here, since a plan that is only told needs none of what draws on paper.
  const { exportSheets } = await import('../host/export-sheets');
  const [first, second] = jobs;
  const folder = resolve(world.folder, out);
  const [baseName, title] = second ? ['sheets', 'Sheets for several jobs'] : [first?.baseName ?? 'sheets', first?.job.title ?? '']; // prettier-ignore
  const options = { paper: paper ?? (showing.unit === 'in' ? 'letter' : 'a4'), showing, only } as const;
  const request = { plans: { ...plans, title }, folder, baseName, options, replace };
  const reply = await into(world, folder, (hooks) => exportSheets(request, hooks));
  return reply.ok ? { ok: true, ...reply.value } : { ok: false, ...refusedExport(reply.failure) };
}

function no(code: NoJob['code'], kind: string, message: string): NoJob {
  return { ok: false, code, problems: [machineProblem(kind, message)] };
}

function readKinds(words: string): readonly SheetPaperKind[] {
  const named = words.split(',').map((word) => word.trim());
  const wrong = named.find((word) => !KINDS.some((kind) => kind === word));
  if (wrong !== undefined) throw new InvalidArgumentError(`"${wrong}" is none of ${KINDS.join(', ')}.`);
  return KINDS.filter((kind) => named.includes(kind));
}
