/** The one picture that goes into its frame without a mat; windows in a board, and so several pictures, need one. */
import { itemsOf } from '../job/item-at';
import type { Job, Picture, SpreadItem, WindowItem } from '../job/job';
import { bad, good, type Fix, type Problem, type Result } from '../problem';
import { titled } from './limits/slack';

export interface BarePicture {
  readonly item: WindowItem;
  /** Index into the job's pictures. */
  readonly index: number;
  readonly picture: Picture;
}

export function barePicture(job: Job): Result<BarePicture> {
  const items = [...(job.windows ? itemsOf(job.windows) : []), ...job.free.map(({ window }) => window)].filter(
    (item) => item.kind === 'window' || item.kind === 'spread',
  );
  const [item] = items;
  if (items.length > 1) return bad([severalPictures(job, items)]);
  if (item?.kind === 'spread') return bad([spreadWithoutMat(job, item)]);
  const index = item?.picture;
  const picture = index === undefined ? undefined : job.pictures[index];
  if (!item || index === undefined || !picture) return bad([windowWithoutPicture(job, item)]);
  return good({ item, index, picture });
}

/** Titles told; more are counted. */
const MOST_TOLD = 4;

function severalPictures(job: Job, items: readonly (WindowItem | SpreadItem)[]): Problem {
  const told = items.slice(0, MOST_TOLD).map(({ title }, index) => titled(title).trimEnd() || `number ${index + 1}`);
  const more = items.length > MOST_TOLD ? `, and ${items.length - MOST_TOLD} more` : '';
  return needsMat(
    job,
    `Without a mat one picture goes into one frame, and this job has ${items.length} windows: ${told.join(', ')}${more}.`,
    'a job of its own for each picture',
    String(items.length),
  );
}

function spreadWithoutMat(job: Job, { title, shares }: SpreadItem): Problem {
  return needsMat(
    job,
    `The picture ${titled(title)}is to be seen through ${shares.length} windows, and without a mat there is no board to cut them in.`,
    'one window over the whole picture',
  );
}

function windowWithoutPicture(job: Job, item: WindowItem | undefined): Problem {
  return needsMat(
    job,
    `The window ${titled(item?.title ?? '')}shows no picture, and without a mat there is no board to cut it in.`,
    'a picture with its size',
  );
}

/** A float frame would not hold a mat either. */
function needsMat(job: Job, what: string, instead: string, value?: string): Problem {
  const isFloat = job.frame.build === 'float';
  const remedy = isFloat ? instead : `${instead}, or a mat`;
  const fix: Fix = { label: 'Give it a mat', edits: [{ at: 'mat.layers', value: [{}] }] };
  return {
    code: 'windows-need-mat',
    severity: 'error',
    at: 'mat.layers',
    message: `${what} What would do: ${remedy}.`,
    ...(value === undefined ? {} : { value, limit: '1' }),
    remedy,
    ...(isFloat ? {} : { fix }),
  };
}
