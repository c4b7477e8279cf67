/** The mat of one picture of a show: its job, opened and laid out. */
import type { Job } from '../job/job';
import { readJob } from '../job/read';
import type { WrittenJob } from '../job/written';
import { layOut } from '../layout/lay-out';
import type { Layout } from '../layout/layout';
import { good, type Result } from '../problem';
import type { Pattern } from './pattern';
import type { ShowPicture } from './picture';
import { writeMat, type FrameChoice } from './written-mat';

export interface Mat {
  readonly written: WrittenJob;
  readonly job: Job;
  readonly layout: Layout;
}

/** With warnings and notes of the job and its layout beside it; or with the errors that keep it from being made. */
export function matFor(pattern: Pattern, picture: ShowPicture, choice: FrameChoice): Result<Mat> {
  const read = readJob(writeMat(pattern, picture, choice));
  if (!read.ok) return read;
  const { written, job } = read.value;
  const laid = layOut(job);
  if (!laid.ok) return laid;
  return good({ written, job, layout: laid.value }, [...read.problems, ...laid.problems]);
}
