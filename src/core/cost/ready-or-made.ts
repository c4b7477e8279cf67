/** One job in the ready-made frames of the shelf that work, and in a frame made to size of a moulding: variants to compare. */
import { bestOf, findFrames } from '../finding/find-frames';
import type { Candidate } from '../finding/candidate';
import { jobInFrame } from '../finding/job-in-frame';
import { offersFor, withMoulding } from '../finding/offers';
import { wishOf } from '../finding/wish';
import type { Job } from '../job/job';
import { layOut } from '../layout/lay-out';
import { chooseMoulding } from '../pieces/choose-moulding';
import type { LaidJob } from '../pieces/pieces';
import { bad, good, type Problem, type Result } from '../problem';
import type { Moulding, Shelf } from '../shelf/shelf';

export interface FrameVariant extends LaidJob {
  readonly kind: 'ready-made' | 'made to size';
}

/** Ready-made frames that are shown, those that suit best. */
const MOST_READY = 3;

/**
 * Ready-made frames first, as they are ranked; then the job's own size made of the moulding named, or of that which is deep
 * enough and costs least.
 */
export function readyOrMade(job: Job, shelf: Shelf, moulding?: string): Result<readonly FrameVariant[]> {
  const named = moulding === undefined ? good(undefined) : chooseMoulding(moulding, shelf);
  if (!named.ok) return named;
  const { candidates, problems } = findFrames(job, shelf);
  const works = candidates.filter((one) => one.works && one.isThere);
  const ready = firstOfEach(works)
    .slice(0, MOST_READY)
    .flatMap((candidate) => readyMade(job, candidate));
  const made = madeToSize(job, shelf, named.value);
  const told = [
    ...problems,
    ...(ready.length === 0 ? [noReadyMade(bestOf(candidates) !== undefined)] : []),
    ...(made.length === 0 ? [noneToMake()] : []),
  ];
  const variants = [...ready, ...made];
  return variants.length === 0 ? bad(told.map((one) => ({ ...one, severity: 'error' }))) : good(variants, told);
}

/** A frame that works both ways up is one frame. */
function firstOfEach(works: readonly Candidate[]): Candidate[] {
  return works.filter(({ frame }, index) => works.findIndex((other) => other.frame.name === frame.name) === index);
}

function readyMade(job: Job, { frame, size }: Candidate): FrameVariant[] {
  const taken = jobInFrame(wishOf(job), frame, size);
  return taken ? laid('ready-made', { ...taken, frame: { ...taken.frame, name: frame.name } }) : [];
}

function madeToSize(job: Job, shelf: Shelf, named: Moulding | undefined): FrameVariant[] {
  const moulding = named ?? offersFor(job, shelf)[0]?.moulding;
  if (!moulding) return [];
  const made = withMoulding(job, moulding);
  return laid('made to size', { ...made, frame: { ...made.frame, name: moulding.name } });
}

function laid(kind: FrameVariant['kind'], job: Job): FrameVariant[] {
  const layout = layOut(job);
  return layout.ok ? [{ kind, job, layout: layout.value }] : [];
}

function noReadyMade(isOut: boolean): Problem {
  return {
    code: 'no-frame-works',
    severity: 'warning',
    at: '',
    message: `No ready-made frame of the shelf ${isOut ? 'that suits the job is left' : 'suits the job'}; “frames” tells why of each.`,
    remedy: 'a frame of another size on the shelf, or one made to size',
  };
}

function noneToMake(): Problem {
  return {
    code: 'no-moulding-works',
    severity: 'warning',
    at: '',
    message:
      'No moulding of the shelf makes a frame for the job; add rows of the kind “moulding” with a name and a face.',
    remedy: 'rows of the kind “moulding”',
  };
}
