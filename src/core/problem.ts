/** Problems and results: what can be wrong with a user's job, as data, and `assert` for faults of our own. */

/** `error`: no cut plan exists while it stands. `warning`: it can be cut, but look here. `note`: worth knowing. */
export type Severity = 'error' | 'warning' | 'note';

/** One edit of the written job that would mend a problem: set the value at `at` (undefined takes it away). */
export interface Edit {
  readonly at: string;
  readonly value: unknown;
}

/** What a problem's button does, with the words on it. */
export interface Fix {
  readonly label: string;
  readonly edits: readonly Edit[];
}

/** One thing wrong, or worth a look, in a job. */
export interface Problem {
  /** Stable kebab-case name of the kind of problem, such as `overlap-too-small`. */
  readonly code: string;
  readonly severity: Severity;
  /** Path of the value it concerns in the written job, such as `pictures[0].overlap`. */
  readonly at: string;
  /** Names the thing, its value with unit, the limit, and what to do, in words for the person at the bench. */
  readonly message: string;
  /** The value found, as shown in the message. */
  readonly value?: string;
  /** The limit it passed, as shown in the message. */
  readonly limit?: string;
  /** What would be right: the nearest thing that works. */
  readonly remedy?: string;
  /** An edit that does what the remedy says. */
  readonly fix?: Fix;
}

/** Either a value (perhaps with warnings beside it), or the problems that keep it from being made. */
export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A value without problems, or with those that do not stop it. */
export function good<T>(value: T, problems: readonly Problem[] = []): Result<T> {
  return { ok: true, value, problems };
}

/** No value: at least one of the problems is an error. */
export function bad<T>(problems: readonly Problem[]): Result<T> {
  assert(problems.some(isError), 'a failed result needs at least one error');
  return { ok: false, problems };
}

const RANK: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

/** Errors first, then warnings, then notes; otherwise in the order they came. */
export function bySeverity(problems: readonly Problem[]): Problem[] {
  return problems.toSorted((a, b) => RANK[a.severity] - RANK[b.severity]);
}

/** True of a problem that keeps the job from being cut. */
export function isError(problem: Problem): boolean {
  return problem.severity === 'error';
}

/** Throws when our own reasoning is broken; never used for what a user typed. */
export function assert(condition: unknown, message: string): asserts condition {
  if (!condition) throw new Error(`internal fault: ${message}`);
}
