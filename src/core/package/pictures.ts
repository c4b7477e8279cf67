/** The pictures that lie in a package: which they are, how they lie behind the mat, and what each of them is. */
import { SIDES } from '../geometry/box';
import type { Job, Picture, PictureKind } from '../job/job';
import type { Layout, PlacedPicture } from '../layout/layout';
import { SLACK, type Range } from './range';

/** A picture of the job as it lies in the package. */
export interface LyingPicture {
  /** Into the job's pictures. */
  readonly index: number;
  readonly picture: Picture;
  /** Behind its windows; none without a mat. */
  readonly placed: readonly PlacedPicture[];
  /** True where the mat reaches over its edge somewhere, and so rests on it. */
  readonly underMat: boolean;
}

/** Those behind windows; without a mat every picture of the job. */
export function lyingPictures(job: Job, layout: Layout): LyingPicture[] {
  const behind = new Map<number, PlacedPicture[]>();
  for (const { picture } of layout.windows) {
    if (picture) behind.set(picture.index, [...(behind.get(picture.index) ?? []), picture]);
  }
  const matted = job.layers.length > 0;
  return job.pictures.flatMap((picture, index): LyingPicture[] => {
    const placed = behind.get(index) ?? [];
    if (matted && placed.length === 0) return [];
    return [{ index, picture, placed: matted ? placed : [], underMat: matted && placed.some(isHeld) }];
  });
}

/** A sheet that is smaller than its window on every side floats in it. */
function isHeld({ hold }: PlacedPicture): boolean {
  return SIDES.some((side) => hold[side] > SLACK);
}

export function thicknessOf({ thinnest, thickness, thickest }: Picture): Range {
  return { least: thinnest, nominal: thickness, greatest: thickest };
}

const CARRIES_ITSELF: ReadonlySet<PictureKind> = new Set(['painting on canvas', 'painting on panel']);
const RUBS_OFF: ReadonlySet<PictureKind> = new Set(['pastel or charcoal']);
const RAISED: ReadonlySet<PictureKind> = new Set(['painting on canvas', 'painting on panel', 'textile']);

/** On canvas or panel: no hinges hold it. */
export function carriesItself({ kind }: Picture): boolean {
  return CARRIES_ITSELF.has(kind);
}

/** Its medium is powder that lies loose on the sheet. */
export function rubsOff({ kind }: Picture): boolean {
  return RUBS_OFF.has(kind);
}

/** A surface varying by more than this is a relief, mm. */
const RELIEF = 0.5;

/** Its surface stands up in places, or gives way. */
export function isRaised({ kind, thinnest, thickest }: Picture): boolean {
  return RAISED.has(kind) || thickest - thinnest > RELIEF;
}

/** `picture "Lady fern"`, `picture 2`. */
export function calledOf({ picture: { title }, index }: Pick<LyingPicture, 'picture' | 'index'>): string {
  return title === '' ? `picture ${index + 1}` : `picture "${title.slice(0, 40)}"`;
}
