/** Makes papers and writes all of them or none: what every export of its own kind has in common. */
import type { Progress, Reply } from '../bridge';
import type { Problem } from '../core/problem';
import { done, failed } from './failure';
import { readFonts, type PaperFonts } from './fonts';
import { writeTogether } from './write-together';

export interface PaperHooks {
  readonly resources: string;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
}

/** What a maker of papers is handed. */
export interface MakerSetup {
  readonly fonts: PaperFonts;
  readonly onProgress: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

interface MadeFile<Kind> {
  readonly kind: Kind;
  readonly name: string;
  readonly bytes: Uint8Array;
}

interface Written<Kind> {
  readonly files: readonly { readonly kind: Kind; readonly path: string; readonly bytes: number }[];
  readonly problems: readonly Problem[];
}

/** Writing the files is the last twentieth. */
const MAKING = 0.95;

/** @param make rejects with the signal's reason when it is stopped. */
export async function writePapers<Kind>(
  { folder, replace }: { readonly folder: string; readonly replace: boolean },
  { resources, onProgress, signal }: PaperHooks,
  make: (
    setup: MakerSetup,
  ) => Promise<Reply<{ readonly files: readonly MadeFile<Kind>[]; readonly problems: readonly Problem[] }>>,
): Promise<Reply<Written<Kind>>> {
  const fonts = await readFonts(resources);
  const part = ({ done: made, step }: Progress) => onProgress?.({ done: made * MAKING, step });
  let papers: Awaited<ReturnType<typeof make>>;
  try {
    papers = await make({ fonts, onProgress: part, ...(signal ? { signal } : {}) });
  } catch (error) {
    if (signal?.aborted) return failed('cancelled', 'The export was cancelled; nothing was written.');
    throw error;
  }
  if (!papers.ok) return papers;
  const { files, problems } = papers.value;
  onProgress?.({ done: MAKING, step: 'Writing the files' });
  const written = await writeTogether(folder, files, { replace, signal });
  if (!written.ok) return written;
  onProgress?.({ done: 1, step: 'Done' });
  return done({ files: files.map(({ kind, bytes }, index) => ({ kind, path: written.value[index]!, bytes: bytes.length })), problems }); // prettier-ignore
}
