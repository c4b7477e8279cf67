/** Makes and writes outputs into a folder, with progress told and Ctrl-C heard. */
import { resolve } from 'node:path';
import { InvalidArgumentError } from 'commander';
import type { ExportOptions, HostFailure, Progress, Reply } from '../bridge';
import { makeFolder, removeEmpty } from '../host/make-folder';
import { tellProgress } from './print/progress';
import { columns } from './print/text';
import type { FoundJob, NoJob } from './read-job';
import { machineProblem } from './refuse';
import type { World } from './world';

interface Target {
  readonly out?: string;
  readonly replace?: true;
  /** The text of the shelf's file. */
  readonly shelf?: string;
}

/** What the host's export answers. */
export async function exportInto(
  world: World,
  found: FoundJob,
  options: ExportOptions,
  { out, replace, shelf }: Target,
) {
  // Here, since the other verbs need none of what draws on paper.
  const { exportJob } = await import('../host/export-job');
  const folder = out === undefined ? found.folder : resolve(world.folder, out);
  return into(world, folder, (hooks) =>
    exportJob(
      {
        text: found.text,
        folder,
        baseName: found.baseName,
        options,
        replace: replace ?? false,
        ...(shelf === undefined ? {} : { shelf }),
        ...(found.path === undefined ? {} : { jobPath: found.path }),
      },
      hooks,
    ),
  );
}

interface Hooks {
  readonly resources: string;
  readonly onProgress: (progress: Progress) => void;
  readonly signal: AbortSignal;
}

/** Writes into a folder; one that was made for it goes again when nothing came of it. */
export async function into<T>(
  world: World,
  folder: string,
  write: (hooks: Hooks) => Promise<Reply<T>>,
): Promise<Reply<T>> {
  const made = await makeFolder(folder);
  if (!made.ok) return made;
  const reply = await world.interruptible((signal) =>
    write({ resources: world.resources, onProgress: tellProgress(world), signal }),
  );
  if (!reply.ok && made.value !== undefined) await removeEmpty(folder, made.value);
  return reply;
}

/** How a failed export is told, and with which exit code it ends. */
export function refusedExport({ code, message }: HostFailure): Pick<NoJob, 'code' | 'problems'> {
  const told = code === 'exists' ? message.replace('Replace it', 'Write over it with --replace') : message;
  return { code: code === 'cancelled' ? 130 : 2, problems: [machineProblem(code, told)] };
}

/** A line a file: its kind, its size, its path. */
export function filesText(
  files: readonly { readonly kind: string; readonly bytes: number; readonly path: string }[],
  width: number,
): string {
  const rows = files.map(({ kind, bytes, path }) => [kind, `${(bytes / 1000).toFixed(1)} kB`, path]);
  return `${columns(rows, { indent: 0, width: Math.max(width, 1000), right: [1] }).join('\n')}\n`;
}

/** Of `--out`. */
export function readFolder(words: string): string {
  if (words.trim() === '') throw new InvalidArgumentError('a folder’s name is wanted, or . for this one.');
  return words;
}
