/** Undo and redo of a written job: past, present and future, with typing and nudging merged into one step. */
import type { WrittenJob } from './written';

export interface Moment {
  readonly written: WrittenJob;
  /** What was done to get here, in words: `Border at the top`. */
  readonly label: string;
  /** Edits with the same key that follow one another are one step. */
  readonly mergeKey?: string;
}

export interface History {
  readonly past: readonly Moment[];
  readonly present: Moment;
  readonly future: readonly Moment[];
}

/** As many steps as anyone takes back; older ones are let go so that memory stays bounded. */
const MOST_STEPS = 1000;

export function startHistory(written: WrittenJob): History {
  return { past: [], present: { written, label: 'Opened' }, future: [] };
}

/** A new present. An edit that changed nothing leaves history, redo included, as it was. */
export function commit(history: History, written: WrittenJob, label: string, mergeKey?: string): History {
  if (sameJob(history.present.written, written)) return history;
  const present: Moment = mergeKey === undefined ? { written, label } : { written, label, mergeKey };
  const merges = mergeKey !== undefined && history.present.mergeKey === mergeKey && history.future.length === 0;
  const past = merges ? history.past : [...history.past, history.present].slice(-MOST_STEPS);
  return { past, present, future: [] };
}

/** Ends merging, as when a field is left: the next edit with the same key is a step of its own. */
export function settle(history: History): History {
  const { mergeKey, ...present } = history.present;
  return mergeKey === undefined ? history : { ...history, present };
}

export function undo(history: History): History {
  const present = history.past.at(-1);
  if (!present) return history;
  return { past: history.past.slice(0, -1), present, future: [history.present, ...history.future] };
}

export function redo(history: History): History {
  const [present, ...future] = history.future;
  if (!present) return history;
  return { past: [...history.past, history.present], present, future };
}

function sameJob(a: WrittenJob, b: WrittenJob): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
