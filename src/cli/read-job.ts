/** Finds the job that was named: reads it, understands it, lays it out; or says why that can't be. */
import { basename, dirname, resolve } from 'node:path';
import type { Job } from '../core/job/job';
import { parseJobText } from '../core/job/text';
import type { WrittenJob } from '../core/job/written';
import { buildProblems } from '../core/build-problems';
import { layOut } from '../core/layout/lay-out';
import type { Layout } from '../core/layout/layout';
import { bad, type Problem, type Result } from '../core/problem';
import { withCutter } from '../core/job/given-cutter';
import { jobSizeLimit, readJob } from '../host/job-files';
import { findCutter } from './cutter-option';
import { fileName } from '../core/file-name';
import type { ExitCode, World } from './world';

/** A job as it was written and understood, whether or not it can be cut. */
export interface UnderstoodJob {
  readonly ok: true;
  readonly text: string;
  readonly written: WrittenJob;
  readonly job: Job;
  /** Of its file. */
  readonly problems: readonly Problem[];
}

export interface FoundJob extends UnderstoodJob {
  /** Undefined when it came from standard input. */
  readonly path?: string;
  /** Where outputs go unless another folder is named. */
  readonly folder: string;
  /** Outputs' names begin with it. */
  readonly baseName: string;
  readonly layout: Layout;
  /** Warnings and notes. */
  readonly problems: readonly Problem[];
}

export interface NoJob {
  readonly ok: false;
  /** 1: a job with errors. 2: not a job that can be read. */
  readonly code: ExitCode;
  readonly problems: readonly Problem[];
}

/** These say that the file is no job that this program can read, rather than a job with errors. */
export const UNREADABLE: ReadonlySet<string> = new Set([
  'not-json',
  'not-a-job',
  'version-unknown',
  'version-newer',
  'file-too-large',
  'nested-too-deep',
]);

/**
 * @param name a path, or `-` for standard input.
 * @param cutter a file of cutters, and of which: takes the place of the job's own.
 */
export async function findJob(name: string, world: World, cutter?: string): Promise<FoundJob | NoJob> {
  const opened = await understandJob(name, world, cutter);
  if (!opened.ok) return opened;
  const { job } = opened;
  const layout = layOut(job);
  const problems = [
    ...opened.problems,
    ...layout.problems,
    ...(layout.ok ? buildProblems(job, layout.value, opened.written) : []),
  ];
  if (!layout.ok) return { ok: false, code: 1, problems };
  const place =
    name === '-'
      ? { folder: world.folder, baseName: fileName(job.title) }
      : {
          path: resolve(world.folder, name),
          folder: dirname(resolve(world.folder, name)),
          baseName: fileName(basename(name).replace(/\.json$/i, '')),
        };
  return { ...opened, ...place, layout: layout.value, problems };
}

/** The same of a job that need not be possible in its own frame. */
export async function understandJob(name: string, world: World, cutter?: string): Promise<UnderstoodJob | NoJob> {
  const given = cutter === undefined ? undefined : await findCutter(cutter, world);
  if (given && !given.ok) return { ok: false, code: 2, problems: given.problems };
  const read = name === '-' ? await readGiven(world) : await readFile(resolve(world.folder, name));
  if (!read.ok) return { ok: false, code: 2, problems: read.problems };
  const text = given ? withCutter(read.value, given.value) : read.value;
  const opened = parseJobText(text);
  // Written anew with the cutter, the text no longer shows what stood twice.
  const twice = given ? parseJobText(read.value).problems.filter(({ code }) => code === 'key-twice') : [];
  if (!opened.ok) {
    const unreadable = opened.problems.some(({ code }) => UNREADABLE.has(code));
    return { ok: false, code: unreadable ? 2 : 1, problems: opened.problems };
  }
  return { ok: true, text, ...opened.value, problems: [...twice, ...opened.problems] };
}

async function readFile(path: string): Promise<Result<string>> {
  const read = await readJob(path);
  if (read.ok) return { ok: true, value: read.value.text, problems: [] };
  return bad([{ code: read.failure.code, severity: 'error', at: '', message: read.failure.message }]);
}

async function readGiven(world: World): Promise<Result<string>> {
  const bytes = await world.readInput();
  const refuse = (code: string, message: string) => bad<string>([{ code, severity: 'error', at: '', message }]);
  if (bytes.length > jobSizeLimit) {
    return refuse('too-large', `Standard input gave more than ${jobSizeLimit / 1e6} MB; no job is larger.`);
  }
  try {
    return { ok: true, value: new TextDecoder('utf-8', { fatal: true }).decode(bytes), problems: [] };
  } catch {
    return refuse('not-readable', 'Standard input is not text in UTF-8; a job is JSON text in UTF-8.');
  }
}
