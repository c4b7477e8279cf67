/** Puts a plan of sheets on paper: makes the files, then writes all of them or none. */
import { basename } from 'node:path';
import type { HostCalls, Reply } from '../bridge';
import { makeSheetPapers, sheetPaperNames } from '../outputs/sheets/sheet-papers';
import { checkBaseName } from './base-name';
import { wrongInPlans } from './check-sheet-plans';
import { done, failed } from './failure';
import { olderDrawings } from './older-drawings';
import { writePapers, type PaperHooks } from './write-papers';
import { checkFree } from './write-together';

type Call = HostCalls['exportSheets'];
export type SheetsRequest = Omit<Call['request'], 'id'>;

/** The files made, or why they could not be made or written. */
export async function exportSheets(request: SheetsRequest, hooks: PaperHooks): Promise<Reply<Call['reply']>> {
  const { plans, options, folder, baseName, replace } = request;
  const name = checkBaseName(baseName);
  if (!name.ok) return name;
  const wrong = wrongInPlans(plans);
  if (wrong !== undefined) return failed('failed', `The plan of sheets can’t be put on paper: ${wrong}`);
  const free = await checkFree(folder, sheetPaperNames(plans, baseName, options.only), replace);
  if (!free.ok) return free;
  const reply = await writePapers({ folder, replace }, hooks, async (setup) =>
    done(await makeSheetPapers(plans, baseName, options, setup)),
  );
  if (!reply.ok) return reply;
  const { files, problems } = reply.value;
  const older = await olderDrawings(folder, baseName, files.map(({ path }) => basename(path))); // prettier-ignore
  return done({ files, problems: [...problems, ...older] });
}
