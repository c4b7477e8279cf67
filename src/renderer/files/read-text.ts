/** Reads a job file for the screen, which also takes jobs that have errors, as long as they are jobs. */
import { readJob } from '../../core/job/read';
import { parseJobText } from '../../core/job/text';
import { writtenJob, type WrittenJob } from '../../core/job/written';
import type { Problem } from '../../core/problem';

export type ReadText =
  { readonly ok: true; readonly written: WrittenJob } | { readonly ok: false; readonly problems: readonly Problem[] };

export function readText(text: string): ReadText {
  const opened = parseJobText(text);
  if (opened.ok) return { ok: true, written: opened.value.written };
  const value = parse(text);
  // Of the right shape, but with lengths that cannot be: the fields are there to mend it.
  if (value !== undefined && !readJob(value).ok && writtenJob.safeParse(value).success)
    return { ok: true, written: value as WrittenJob };
  return { ok: false, problems: opened.problems };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}
