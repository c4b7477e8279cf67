/** A job's text understood and laid out, or why it can't be. */
import { buildProblems } from '../core/build-problems';
import { parseJobText } from '../core/job/text';
import { layOut } from '../core/layout/lay-out';
import type { LaidJob } from '../core/pieces/pieces';
import { bad, good, type Result } from '../core/problem';
import type { Shelf } from '../core/shelf/shelf';

/** Problems beside the job are those of its build, which don't keep it from being laid out. */
export function layJob(text: string, shelf: Shelf): Result<LaidJob> {
  const read = parseJobText(text);
  if (!read.ok) return read;
  const { job, written } = read.value;
  const layout = layOut(job);
  const problems = [...read.problems, ...layout.problems];
  if (!layout.ok) return bad(problems);
  return good({ job, layout: layout.value }, [...problems, ...buildProblems(job, layout.value, written, shelf)]);
}
