/** Loads the pictures' files that the proof shows; one that can't be read costs a warning, never the export. */
import type { Job } from '../../core/job/job';
import type { Problem, Result } from '../../core/problem';

export interface LoadedPictures {
  /** Data URLs by index in the job. */
  readonly pictures: ReadonlyMap<number, string>;
  readonly problems: readonly Problem[];
}

export const NO_PICTURES: LoadedPictures = { pictures: new Map(), problems: [] };

interface Hooks {
  readonly readPicture?: ((file: string) => Promise<Result<string>>) | undefined;
  readonly signal?: AbortSignal;
}

/** One after the other, so that many large files never lie in memory twice at once. */
export async function loadPictures(job: Job, { readPicture, signal }: Hooks): Promise<LoadedPictures> {
  const pictures = new Map<number, string>();
  const problems: Problem[] = [];
  for (const [index, { file, title }] of job.pictures.entries()) {
    if (file === undefined || !readPicture) continue;
    signal?.throwIfAborted();
    const read = await readPicture(file);
    if (read.ok) pictures.set(index, read.value);
    else problems.push(warning(index, title, read.problems[0]?.message ?? ''));
  }
  return { pictures, problems };
}

function warning(index: number, title: string, why: string): Problem {
  return {
    code: 'picture-file-unreadable',
    severity: 'warning',
    at: `pictures[${index}].file`,
    message: `The proof shows a card in place of picture ${title === '' ? index + 1 : `"${title.slice(0, 40)}"`}. ${why}`,
    remedy: 'choose its file again',
  };
}
