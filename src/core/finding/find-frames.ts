/** Finds the frame on the shelf that suits a job: every size, both ways up, judged and ranked, with custom sizes beside them. */
import type { Job } from '../job/job';
import { SAME } from '../layout/solve-borders';
import type { Problem } from '../problem';
import { ofKind, type Shelf } from '../shelf/shelf';
import { candidateOf, type Candidate } from './candidate';
import { areaOf } from './cost';
import { customsFor, type Custom } from './custom';
import { ranked } from './rank';
import { wishOf } from './wish';

export interface Found {
  readonly job: Job;
  /** Every frame of the shelf in both turns (a square one once), the one that suits best first, as `ranked` has it. */
  readonly candidates: readonly Candidate[];
  /** Frames made to size, to compare with the best. */
  readonly customs: readonly Custom[];
  /** The ready-made sizes next to the best, by area, each the way up that suits better. */
  readonly nextSmaller?: Candidate;
  readonly nextLarger?: Candidate;
  /** Of the shelf, or of the job whatever its frame. */
  readonly problems: readonly Problem[];
}

/** Nothing is rounded; lengths are mm, areas mm². The frame that the job has of its own is not asked. */
export function findFrames(job: Job, shelf: Shelf): Found {
  const wish = wishOf(job);
  const frames = ofKind(shelf, 'frame');
  const candidates = ranked(
    frames.flatMap((frame) => {
      const isSquare = Math.abs(frame.size.width - frame.size.height) <= SAME;
      return (isSquare ? [false] : [false, true]).map((turned) => candidateOf(wish, frame, turned, shelf));
    }),
  );
  const best = bestOf(candidates);
  return {
    job,
    candidates,
    customs: customsFor(wish, { candidates, best, shelf }),
    ...(best ? neighbours(best, candidates) : {}),
    problems: [...(frames.length === 0 ? [noFrames()] : []), ...(best ? [] : alwaysWrong(candidates))],
  };
}

/** The first that works; undefined where none does. */
export function bestOf(candidates: readonly Candidate[]): Candidate | undefined {
  return candidates.find(({ works }) => works);
}

function neighbours(best: Candidate, candidates: readonly Candidate[]): Pick<Found, 'nextSmaller' | 'nextLarger'> {
  const area = areaOf(best.size);
  const apart = ({ size }: Candidate) => areaOf(size) - area;
  // Of one area the first suits best, since they are ranked.
  const nearest = (side: 1 | -1) =>
    candidates
      .filter((one) => side * apart(one) > 1)
      .reduce<Candidate | undefined>((a, b) => (a && Math.abs(apart(a)) <= Math.abs(apart(b)) + 1 ? a : b), undefined);
  const [nextSmaller, nextLarger] = [nearest(-1), nearest(1)];
  return { ...(nextSmaller ? { nextSmaller } : {}), ...(nextLarger ? { nextLarger } : {}) };
}

/** Errors that the job has in every frame in which it can be laid out. */
function alwaysWrong(candidates: readonly Candidate[]): Problem[] {
  const laid = candidates.filter(({ layout }) => layout);
  const [first, ...rest] = laid;
  if (!first) return [];
  return first.errors.filter(
    ({ code, at }) =>
      !OF_THE_FRAME.has(code) &&
      rest.every(({ errors }) => errors.some((error) => error.code === code && error.at === at)),
  );
}

/** Of a picture without a mat: that it is not of this frame's size. */
const OF_THE_FRAME = new Set(['picture-falls-through', 'picture-larger-than-frame']);

function noFrames(): Problem {
  return {
    code: 'no-frames-on-shelf',
    severity: 'warning',
    at: '',
    message: 'There is no frame on the shelf; add rows of the kind “frame” with a name and a size.',
    remedy: 'rows of the kind “frame”',
  };
}
