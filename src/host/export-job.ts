/** Exports a job: makes the files from its text, then writes all of them or none. */
import type { HostCalls, Progress, Reply } from '../bridge';
import { good, isError, type Problem, type Result } from '../core/problem';
import { readShelf } from '../core/shelf/read-shelf';
import type { Shelf } from '../core/shelf/shelf';
import { exportFiles, outputNames } from '../outputs/index';
import { checkBaseName } from './base-name';
import { done, failed } from './failure';
import { readFonts } from './fonts';
import { pictureAsResult } from './pictures';
import { checkFree, writeTogether } from './write-together';

export type ExportRequest = Omit<HostCalls['exportJob']['request'], 'id'>;

export interface ExportHooks {
  readonly resources: string;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
}

/** The files made, or the job's problems, or why they could not be written. */
export async function exportJob(
  request: ExportRequest,
  hooks: ExportHooks,
): Promise<Reply<HostCalls['exportJob']['reply']>> {
  const name = checkBaseName(request.baseName);
  if (!name.ok) return name;
  const { signal, onProgress } = hooks;
  const names = outputNames(request.text, request.baseName, request.options.only);
  const free = await checkFree(request.folder, names, request.replace);
  if (!free.ok) return free;
  const shelf = readShelfText(request.shelf);
  if (!shelf.ok) return failed('failed', `The shelf can’t be read: ${shelf.problems.find(isError)?.message ?? ''}`);
  const made = await makeFiles(request, shelf.value, hooks);
  if (signal?.aborted) return cancelled();
  if (!made) return cancelled();
  if (!made.ok) return { ok: false, failure: refused(made.problems) };
  onProgress?.({ done: 0.95, step: 'Writing the files' });
  const written = await writeTogether(request.folder, made.value, { replace: request.replace, signal });
  if (!written.ok) return written;
  onProgress?.({ done: 1, step: 'Done' });
  const files = made.value.map(({ kind, bytes }, index) => ({
    kind,
    path: written.value[index]!,
    bytes: bytes.length,
  }));
  return done({ files, problems: made.problems });
}

/** A sound job may still have nothing to cut. */
function refused(problems: readonly Problem[]) {
  const nothing = problems.find(({ code }) => code === 'nothing-to-cut');
  const message =
    nothing?.message ?? 'The job has errors, and nothing is cut from a job with errors. Mend them, then export again.';
  return { code: 'job-has-errors', message, problems } as const;
}

function readShelfText(text: string | undefined): Result<Shelf | undefined> {
  return text === undefined ? good(undefined) : readShelf(text);
}

/** Undefined when it was stopped on the way. */
async function makeFiles(
  request: ExportRequest,
  shelf: Shelf | undefined,
  { resources, onProgress, signal }: ExportHooks,
) {
  const fonts = await readFonts(resources);
  try {
    return await exportFiles(request.text, request.baseName, request.options, {
      fonts,
      shelf,
      readPicture: (file) => pictureAsResult(file, request.jobPath),
      // Writing the files is the last twentieth.
      onProgress: ({ done: part, step }) => onProgress?.({ done: part * 0.95, step }),
      ...(signal ? { signal } : {}),
    });
  } catch (error) {
    if (signal?.aborted) return undefined;
    throw error;
  }
}

function cancelled(): Reply<never> {
  return failed('cancelled', 'The export was cancelled; nothing was written.');
}
