/** Puts a plan of sheets on paper: makes the files, then writes all of them or none. */
import type { HostCalls, Progress, Reply } from '../bridge';
import { makeSheetPapers, sheetPaperNames } from '../outputs/sheets/sheet-papers';
import { checkBaseName } from './base-name';
import { wrongInPlans } from './check-sheet-plans';
import { done, failed } from './failure';
import { readFonts } from './fonts';
import { checkFree, writeTogether } from './write-together';

type Call = HostCalls['exportSheets'];
export type SheetsRequest = Omit<Call['request'], 'id'>;

interface Hooks {
  readonly resources: string;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
}

/** Writing the files is the last twentieth. */
const MAKING = 0.95;

/** The files made, or why they could not be made or written. */
export async function exportSheets(request: SheetsRequest, hooks: Hooks): Promise<Reply<Call['reply']>> {
  const { plans, options, folder, baseName, replace } = request;
  const name = checkBaseName(baseName);
  if (!name.ok) return name;
  const wrong = wrongInPlans(plans);
  if (wrong !== undefined) return failed('failed', `The plan of sheets can’t be put on paper: ${wrong}`);
  const free = await checkFree(folder, sheetPaperNames(plans, baseName, options.only), replace);
  if (!free.ok) return free;
  const { signal, onProgress } = hooks;
  const made = await makeFiles(request, hooks);
  if (!made) return failed('cancelled', 'The export was cancelled; nothing was written.');
  onProgress?.({ done: MAKING, step: 'Writing the files' });
  const written = await writeTogether(folder, made.files, { replace, signal });
  if (!written.ok) return written;
  onProgress?.({ done: 1, step: 'Done' });
  const files = made.files.map(({ kind, bytes }, index) => ({
    kind,
    path: written.value[index]!,
    bytes: bytes.length,
  }));
  return done({ files, problems: made.problems });
}

/** Undefined when it was stopped on the way. */
async function makeFiles({ plans, options, baseName }: SheetsRequest, { resources, onProgress, signal }: Hooks) {
  const fonts = await readFonts(resources);
  try {
    return await makeSheetPapers(plans, baseName, options, {
      fonts,
      onProgress: ({ done: part, step }) => onProgress?.({ done: part * MAKING, step }),
      ...(signal ? { signal } : {}),
    });
  } catch (error) {
    if (signal?.aborted) return undefined;
    throw error;
  }
}
