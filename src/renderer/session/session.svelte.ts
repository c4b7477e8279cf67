/** The session: the written job with its history, and everything that follows from it: the understood job, the layout, the cut plan, the problems. */
import { buildProblems } from '../../core/build-problems';
import type { Shelf } from '../../core/shelf/shelf';
import { planCuts } from '../../core/cutting/plan-cuts';
import { setAll } from '../../core/job/edit';
import { commit, redo, settle, startHistory, undo, type History } from '../../core/job/history';
import type { Job } from '../../core/job/job';
import { layersIn } from '../../core/job/layers-in';
import { readJob } from '../../core/job/read';
import type { WrittenJob } from '../../core/job/written';
import { layOut } from '../../core/layout/lay-out';
import type { Layout } from '../../core/layout/layout';
import { isError, type Edit, type Problem } from '../../core/problem';
import type { Showing, Unit } from '../../core/units';
import { spellOut } from '../edits/spell-out';
import { stepsOf } from './steps';

/** A job and its layout that belong together. */
export interface Picture {
  readonly job: Job;
  readonly layout: Layout;
  /** True when the written job has errors that keep it from being laid out at all, and this is what stood before them. */
  readonly stale: boolean;
}

/** A gesture's job so far: shown, but not yet part of the history. */
interface Preview {
  readonly written: WrittenJob;
  readonly label: string;
}

const MOST_MOVED_IN_FULL = 24;

export class Session {
  #history = $state.raw<History>() as History;
  #preview = $state.raw<Preview>();
  #lastProblems: readonly Problem[] = [];
  #lastGood: { readonly job: Job; readonly layout: Layout } | undefined;

  /** Path of the selected window in the written job. */
  selected = $state.raw<string>();
  /** Path of the length under the pointer or being typed, on the canvas as in the panel. */
  lit = $state.raw<string>();
  /** Path of the window whose outline is stretched to sizes typed freely, though it now has its own proportions. */
  stretched = $state.raw<string>();
  /** The unit lengths are shown in when it is not the job's own. */
  shownUnit = $state.raw<Unit>();

  readonly written = $derived<WrittenJob>(this.#preview?.written ?? this.#history.present.written);
  /** True where the picture goes into its frame without a mat. */
  readonly isBare = $derived(layersIn(this.written).length === 0);
  readonly units = $derived<Unit>(this.written.units ?? 'in');
  readonly #inchStep = $derived(stepsOf(this.written).in);
  readonly #metricStep = $derived(stepsOf(this.written).mm);
  /** The same value for as long as nothing about it changes, so that what is shown by it is not worked out at every edit. */
  readonly showing = $derived<Showing>({
    unit: this.shownUnit ?? this.units,
    inchStep: this.#inchStep,
    metricStep: this.#metricStep,
  });
  readonly #reading = $derived(readJob(this.written));
  readonly #outcome = $derived(this.#reading.ok ? layOut(this.#reading.value.job) : undefined);
  readonly problems = $derived.by<readonly Problem[]>(() => {
    const laidOut = this.#reading.ok && this.#outcome?.ok;
    const [job, layout] = laidOut ? [this.#reading.value.job, this.#outcome.value] : [];
    const beyond = job && layout ? buildProblems(job, layout, this.written, this.shelf()) : [];
    const found = once([...this.#reading.problems, ...(this.#outcome?.problems ?? []), ...beyond]);
    if (JSON.stringify(found) !== JSON.stringify(this.#lastProblems)) this.#lastProblems = found;
    return this.#lastProblems;
  });
  readonly errors = $derived(this.problems.filter(isError));
  /** What the canvas shows: the job as it is, or as it last could be laid out; undefined when it never could. */
  readonly picture = $derived.by<Picture | undefined>(() => {
    if (this.#reading.ok && this.#outcome?.ok) {
      this.#lastGood = { job: this.#reading.value.job, layout: this.#outcome.value };
      return { ...this.#lastGood, stale: false };
    }
    // What cannot be cut can often still be shown, and dragged to where it can.
    if (this.#reading.ok && this.#outcome?.sketch) {
      this.#lastGood = { job: this.#reading.value.job, layout: this.#outcome.sketch };
      return { ...this.#lastGood, stale: false };
    }
    return this.#lastGood && { ...this.#lastGood, stale: true };
  });
  /** Undefined while the job has errors. */
  readonly plan = $derived(
    this.#outcome?.ok && this.picture ? planCuts(this.picture.job, this.picture.layout) : undefined,
  );

  /** True while something is dragged in a mat of so many windows that redrawing all there is to each would stutter. */
  readonly muchMoves = $derived(
    this.#preview !== undefined && (this.picture?.layout.windows.length ?? 0) > MOST_MOVED_IN_FULL,
  );

  readonly canUndo = $derived(this.#history.past.length > 0);
  readonly canRedo = $derived(this.#history.future.length > 0);
  readonly undoLabel = $derived(this.#history.present.label);
  readonly redoLabel = $derived(this.#history.future[0]?.label);
  /** The job as committed, without a gesture in progress. */
  readonly committed = $derived<WrittenJob>(this.#history.present.written);

  /** @param shelf what the user has, by whose loads and clips a build is judged. */
  constructor(
    written: WrittenJob,
    private readonly shelf: () => Shelf,
  ) {
    this.#history = startHistory(written);
  }

  /** The problems of the value at a path, and of its parts where it is shown as a whole. */
  problemsAt(at: string, withParts = false): readonly Problem[] {
    return this.problems.filter(
      (problem) =>
        problem.at === at || (withParts && (problem.at.startsWith(`${at}.`) || problem.at.startsWith(`${at}[`))),
    );
  }

  light(at: string): void {
    this.lit = at;
  }

  unlight(at: string): void {
    if (this.lit === at) this.lit = undefined;
  }

  /** Begins with another job and an empty history. */
  start(written: WrittenJob): void {
    this.#lastGood = undefined;
    this.#preview = undefined;
    this.#history = startHistory(written);
    this.selected = undefined;
    this.lit = undefined;
    this.stretched = undefined;
    this.shownUnit = undefined;
  }

  /** One undo step; steps with the same merge key in a row become one. An edit that changes nothing leaves none. */
  edit(edits: readonly Edit[], label: string, mergeKey?: string): void {
    this.replace(setAll(spellOut(this.committed, edits), edits), label, mergeKey);
  }

  replace(written: WrittenJob, label: string, mergeKey?: string): void {
    this.#preview = undefined;
    this.#history = commit(this.#history, written, label, mergeKey);
  }

  /** Ends merging: the next edit is a step of its own. */
  settle(): void {
    this.#history = settle(this.#history);
  }

  /** Shows what an edit would give, while a gesture goes on. */
  show(edits: readonly Edit[], label: string): void {
    this.#preview = { written: setAll(spellOut(this.committed, edits), edits), label };
  }

  /** Ends a gesture: what it shows becomes one undo step. */
  keepShown(): void {
    const preview = this.#preview;
    if (preview) this.replace(preview.written, preview.label);
  }

  /** Ends a gesture as if it had not been. */
  dropShown(): void {
    this.#preview = undefined;
  }

  undo(): void {
    this.dropShown();
    this.#history = undo(this.#history);
  }

  redo(): void {
    this.dropShown();
    this.#history = redo(this.#history);
  }
}

/** The same problem found on the way and in the layout is said once. */
function once(problems: readonly Problem[]): Problem[] {
  const seen = new Set<string>();
  return problems.filter((problem) => {
    const key = `${problem.code} ${problem.at} ${problem.message}`;
    return seen.has(key) ? false : (seen.add(key), true);
  });
}
