/** Where the mat presses on a picture, or lies hollow round one that is thick. */
import { SIDES } from '../geometry/box';
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { MM_PER_INCH } from '../units';
import { isRaised, lyingPictures, rubsOff, thicknessOf, type LyingPicture } from './pictures';
import { SLACK, sum } from './range';

export interface MatOnPicture {
  /** Into the job's pictures. */
  readonly index: number;
  /** `presses`: it rests on a surface that is raised or rubs off. `hollow`: it bridges a step round a thick picture. */
  readonly kind: 'presses' | 'hollow';
  /** Strips round the picture, on the mount board, that carry the mat instead, mm high. */
  readonly strips: number;
}

/** A mat lies down over a step of less by itself, mm: 1/16 in. Common practice, no source. */
const HOLLOW = MM_PER_INCH / 16;

export function matOnPictures(job: Job, layout: Layout): MatOnPicture[] {
  return lyingPictures(job, layout).flatMap((lying): MatOnPicture[] => {
    if (!lying.underMat) return [];
    const { index, picture } = lying;
    const height = sum([thicknessOf(picture), job.package.hinging.thickness]);
    if (restsOnImage(lying) && (isRaised(picture) || rubsOff(picture))) {
      return [{ index, kind: 'presses', strips: height.greatest }];
    }
    return picture.thickest > HOLLOW + SLACK ? [{ index, kind: 'hollow', strips: height.nominal }] : [];
  });
}

/** A margin of paper left in sight on every side keeps the mat off the image. */
function restsOnImage({ placed }: LyingPicture): boolean {
  return placed.some(({ overlap, hold }) => SIDES.some((side) => overlap[side] > SLACK && hold[side] > SLACK));
}
