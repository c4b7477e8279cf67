/** What one frame or a whole show is made of: pieces, weights, sticks and costs, as screen, paper and terminal tell them. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { priceOfLength, type Money } from '../money';
import { bad, good, isError, type Problem, type Result } from '../problem';
import type { Moulding, Shelf } from '../shelf/shelf';
import { showingOf } from '../units';
import { costsOf, type Costs } from './cost';
import { jobPieces, type JobPieces } from './job-pieces';
import { DEFAULT_KERF } from './kerf';
import { chooseMoulding, mouldingProblems, ownMoulding } from './choose-moulding';
import type { Section } from './section';
import { spacerProblems } from './spacers';
import { stickProblems } from './stick-problems';
import { planSticks, railsOf, type SticksPlan } from './sticks';

export interface LaidJob {
  readonly job: Job;
  readonly layout: Layout;
}

export interface PiecesAsk {
  /** At least one; their rails are cut from the same sticks where they are of one moulding. */
  readonly jobs: readonly LaidJob[];
  readonly shelf?: Shelf;
  /** Name of a moulding of the shelf, in place of the jobs' own. */
  readonly moulding?: string;
  /** What one saw cut takes off a stick, mm. Default 1/8 in, or 3 mm where the first job is metric. */
  readonly kerf?: number;
  /** Length of a stick, mm. Default that of the moulding of the shelf; without either no sticks are planned. */
  readonly stick?: number;
}

export interface FramePieces extends JobPieces {
  readonly title: string;
  /** Undefined without a shelf. */
  readonly costs?: Costs;
}

/** The sticks for all frames of one moulding. */
export interface MouldingSticks {
  readonly section: Section;
  /** Which of the frames, from 0. */
  readonly frames: readonly number[];
  readonly plan: SticksPlan;
  /** On the shelf; undefined: as many as are wanted. */
  readonly onShelf?: number;
  /** Of whole sticks; undefined where the moulding has no price. */
  readonly cost?: Money;
}

export interface Pieces {
  readonly kerf: number;
  /** In the order of the jobs. */
  readonly frames: readonly FramePieces[];
  /** None where no length of a stick is known. */
  readonly sticks: readonly MouldingSticks[];
}

/** Fails only where no such moulding is there, or it can't hold the frames. */
export function piecesOf({ jobs, shelf, moulding: name, kerf: given, stick: length }: PiecesAsk): Result<Pieces> {
  const chosen = name === undefined ? good(undefined) : chooseMoulding(name, shelf);
  if (!chosen.ok) return chosen;
  /** Named for all, or else what each job's frame is said to be made of. */
  const mouldingFor = (job: Job) => chosen.value ?? ownMoulding(job, shelf);
  const kerf = given ?? DEFAULT_KERF[jobs[0]?.job.units ?? 'in'];
  const wrong = jobs.flatMap((one) => {
    const moulding = mouldingFor(one.job);
    return moulding ? mouldingProblems(moulding, one) : [];
  });
  if (wrong.some(isError)) return bad(wrong);
  const frames = jobs.map((one) => framePieces(one, { moulding: mouldingFor(one.job), kerf, shelf }));
  const planned = groupsOf(frames).flatMap((group) => {
    const job = jobs[group[0] ?? 0]?.job;
    const moulding = job && mouldingFor(job);
    const stick = length ?? moulding?.stick;
    return stick === undefined ? [] : [planGroup(group, frames, jobs, stick, moulding)];
  });
  const problems = [
    ...wrong,
    ...jobs.flatMap(({ job }, index) => spacerProblems(job, frames[index]?.moulding)),
    ...planned.flatMap(({ problems }) => problems),
  ];
  return good({ kerf, frames, sticks: planned.flatMap(({ sticks }) => sticks ?? []) }, problems);
}

interface Chosen {
  readonly moulding: Moulding | undefined;
  readonly kerf: number;
  readonly shelf: Shelf | undefined;
}

function framePieces({ job, layout }: LaidJob, { moulding, kerf, shelf }: Chosen): FramePieces {
  const chosen = moulding ? { moulding } : {};
  const made = jobPieces(job, layout, { kerf, ...chosen });
  const parts = { pieces: made.pieces, frame: made.moulding, ...chosen };
  return { title: job.title, ...made, ...(shelf ? { costs: costsOf(job, shelf, parts, showingOf(job)) } : {}) };
}

/** Frames of one moulding, by its measures and colour. */
function groupsOf(frames: readonly FramePieces[]): number[][] {
  const found = new Map<string, number[]>();
  frames.forEach(({ moulding: { section } }, index) => {
    const { name, width, lip, depth, rabbetDepth, colour } = section;
    const key = [name ?? colour, width, lip, depth, rabbetDepth].join('|');
    found.set(key, [...(found.get(key) ?? []), index]);
  });
  return [...found.values()];
}

function planGroup(
  group: readonly number[],
  frames: readonly FramePieces[],
  jobs: readonly LaidJob[],
  stick: number,
  moulding: Moulding | undefined,
): { readonly sticks?: MouldingSticks; readonly problems: readonly Problem[] } {
  const [section, job] = [frames[group[0] ?? 0]?.moulding.section, jobs[group[0] ?? 0]?.job];
  if (!section || !job) return { problems: [] };
  const kerf = frames[0]?.moulding.kerf ?? 0;
  const rails = railsOf(group.flatMap((index) => frames[index]?.moulding ?? [])).map((rail) => ({
    ...rail,
    frame: group[rail.frame] ?? rail.frame,
  }));
  const plan = planSticks(rails, stick, kerf);
  const problems = stickProblems({ rails, stick, kerf, plan, onShelf: moulding?.count }, frames, showingOf(job));
  if (!plan) return { problems };
  const cost = moulding?.price && priceOfLength(moulding.price, plan.sticks.length * stick);
  const onShelf = moulding?.count === undefined ? {} : { onShelf: moulding.count };
  return { sticks: { section, frames: group, plan, ...onShelf, ...(cost ? { cost } : {}) }, problems };
}
