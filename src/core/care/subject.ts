/** What is judged: a job with its layout, what hangs in it, and the shelf that steps are priced by. */
import { SIDES } from '../geometry/box';
import type { Job, Picture, PictureKind } from '../job/job';
import type { Layout, PlacedPicture } from '../layout/layout';
import { showFor, type Show } from '../layout/show';
import type { Shelf } from '../shelf/shelf';

/** A picture where it lies in the frame. */
export interface Held {
  readonly picture: Picture;
  readonly placed: PlacedPicture;
  /** `picture 2` or `“Lady fern”`. */
  readonly name: string;
  /** True where no side lies under a mat. */
  readonly floats: boolean;
}

export interface Subject {
  readonly job: Job;
  readonly layout: Layout;
  readonly shelf: Shelf;
  readonly show: Show;
  readonly held: readonly Held[];
  /** True where something on paper or cloth is in it, or it is not said what is. */
  readonly hasPaper: boolean;
}

const STIFF: readonly PictureKind[] = ['painting on canvas', 'painting on panel'];

/** True of canvas and panel, which need no hinges, mount board or glazing. */
export function isPainting({ kind }: Pick<Picture, 'kind'>): boolean {
  return STIFF.includes(kind);
}

export function subjectOf(job: Job, layout: Layout, shelf: Shelf): Subject {
  const held = layout.windows.flatMap(({ picture: placed }): Held[] => {
    const picture = placed && job.pictures[placed.index];
    if (!picture) return [];
    const floats = SIDES.every((side) => placed.hold[side] < 0);
    return [{ picture, placed, name: nameOf(picture, placed.index), floats }];
  });
  const hasPaper = held.length === 0 || held.some(({ picture }) => !isPainting(picture));
  return { job, layout, shelf, show: showFor(job), held, hasPaper };
}

export function nameOf({ title }: Picture, index: number): string {
  return title === '' ? `picture ${index + 1}` : `“${title.slice(0, 40)}”`;
}

export function hasKind({ held }: Pick<Subject, 'held'>, kinds: readonly PictureKind[]): boolean {
  return held.some(({ picture }) => kinds.includes(picture.kind));
}

/** The item of the least value; undefined of none. */
export function leastBy<T>(items: readonly T[], of: (item: T) => number): T | undefined {
  return items.reduce<T | undefined>((least, item) => (least && of(least) <= of(item) ? least : item), undefined);
}
