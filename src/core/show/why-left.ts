/** Why no frame of the shelf takes a picture: the one that comes nearest, and which border it misses by how much. */
import { SIDES, type PerSide, type Side, type Size } from '../geometry/box';
import type { Frame, Job } from '../job/job';
import { SLACK } from '../layout/limits/slack';
import { showFor } from '../layout/show';
import { shallowWords } from '../package/room-words';
import type { Candidate, Candidates, LeftOut } from './candidates';
import type { ShelfFrame } from '../shelf/shelf';
import type { Trial } from './trial';
import type { TriedPicture } from './try-pictures';
import { titled } from './words';

/** Frames that would hold some picture, with borders in range, were they deep enough: each with what it lacks. */
export function tooShallow(tried: readonly TriedPicture[], { frames }: Candidates, job: Job): LeftOut[] {
  const taken = new Set(tried.flatMap(({ fits }) => [...fits.keys()]));
  return frames.flatMap((candidate, index): LeftOut[] => {
    if (taken.has(index)) return [];
    for (const { trial } of tried) {
      if (!trial) continue;
      for (const frame of candidate.ways) {
        const solved = trial.solved(frame);
        if (!solved.ok || worstOf(solved.borders, job).by > SLACK) continue;
        const why = shallowIn(trial, candidate, frame, job);
        if (why !== undefined) return [{ frame: candidate.frame, why }];
      }
    }
    return [];
  });
}

interface Nearest {
  readonly candidate: Candidate;
  readonly frame: Frame;
  /** How far the worst border is out of range, mm; 0 where something else is wrong. */
  readonly by: number;
  readonly why: string;
}

/** @param job of the pattern. */
export function whyLeft({ picture, trial }: TriedPicture, { frames, leftOut }: Candidates, job: Job): string {
  if (!trial) return 'No job can be made of it.';
  const { natural } = trial;
  if (natural && !(natural.width > 0 && natural.height > 0)) {
    const laid = trial.laidOut(job.frame);
    if (!laid.ok && laid.problem) return laid.problem.message;
  }
  const named = picture.frame?.toLowerCase();
  const isNamed = ({ frame }: { readonly frame: ShelfFrame }) => frame.name.toLowerCase() === named;
  const asked = named === undefined ? frames : frames.filter(isNamed);
  const refused = leftOut.find(isNamed);
  if (asked.length === 0 && refused) {
    return `The frame it is bound to, ${titled(refused.frame.name)}, can’t be taken: ${refused.why.replace(/\.$/, '')}.`;
  }
  const nearest = asked
    .flatMap((candidate) => candidate.ways.map((frame) => missOf(trial, candidate, frame, job)))
    .reduce<Nearest | undefined>((best, one) => (best && best.by <= one.by ? best : one), undefined);
  if (!nearest) return 'The shelf has no frame to choose from.';
  const { width, height } = nearest.frame.blank ?? { width: 0, height: 0 };
  const hung = width > height ? ', lying' : '';
  const which = named === undefined ? 'The nearest frame' : 'The frame it is bound to';
  return `${which}, ${titled(nearest.candidate.frame.name)}${hung}, ${nearest.why}.`.replace(/\.\.$/, '.');
}

function missOf(trial: Trial, candidate: Candidate, frame: Frame, job: Job): Nearest {
  const tried = trial.solved(frame);
  const borders = tried.ok ? tried.borders : evenBorders(trial.natural, frame);
  const miss = borders && worstOf(borders, job);
  if (miss && miss.by > SLACK) return { candidate, frame, ...miss };
  const laid = trial.laidOut(frame);
  const problem = !tried.ok ? tried.problem : !laid.ok ? laid.problem : undefined;
  const shallow = problem ? undefined : shallowIn(trial, candidate, frame, job);
  if (shallow !== undefined) return { candidate, frame, by: 0, why: `will not do: ${shallow}` };
  return {
    candidate,
    frame,
    by: borders ? 0 : Infinity,
    why: `will not do: ${problem?.message ?? 'it can’t be laid out'}`,
  };
}

function shallowIn(trial: Trial, { fixing }: Candidate, frame: Frame, job: Job): string | undefined {
  const fit = trial.depthIn(frame, fixing);
  return fit && shallowWords({ package: { ...job.package, fixing } }, fit, showFor(job));
}

/** Where the rule has no answer: halves of what is left, which may be less than nothing. */
function evenBorders(natural: Size | undefined, { blank }: Frame): PerSide | undefined {
  if (!natural || !blank) return undefined;
  const [side, above] = [(blank.width - natural.width) / 2, (blank.height - natural.height) / 2];
  return { left: side, right: side, top: above, bottom: above };
}

function worstOf(borders: PerSide, job: Job): { readonly by: number; readonly why: string } {
  const { least, greatest = Infinity } = job.borders.range;
  const show = showFor(job);
  const side = (of: (side: Side) => number) => SIDES.reduce((worst, one) => (of(one) > of(worst) ? one : worst));
  const narrowest = side((one) => -borders[one]);
  const widest = side((one) => borders[one]);
  const short = least - borders[narrowest];
  const over = borders[widest] - greatest;
  if (short >= over) {
    const found = borders[narrowest];
    const why =
      found <= 0
        ? 'is no larger than its window'
        : `leaves it a border of only ${show.missing(found, least)} at the ${narrowest}; the least is ${show.limit(least)}`;
    return { by: short, why };
  }
  const why = `leaves it a border of ${show.missing(borders[widest], greatest)} at the ${widest}; the greatest is ${show.limit(greatest)}`;
  return { by: over, why };
}
