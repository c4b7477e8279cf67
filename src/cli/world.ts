/** What a verb may use of its surroundings, so that a test can stand in for the terminal. */

import type { PassingLine } from './passing-line';

/** 0: done. 1: the job has errors. 2: wrong use, or something that can't be read or written. 130: ended by Ctrl-C. */
export type ExitCode = 0 | 1 | 2 | 130;

export interface World {
  /** Relative paths are taken from here. */
  readonly folder: string;
  /** The program's resources: fonts, samples. */
  readonly resources: string;
  /** Width of the terminal, in characters. */
  readonly columns: number;
  /** Whether someone sees what is told as it is told: it goes to a terminal, not into a file. */
  readonly isWatched: boolean;
  /** What is at work, where someone watches; `say` and `tell` take it away first. */
  readonly passing: PassingLine;
  /** Everything on standard input. */
  readInput(): Promise<Uint8Array>;
  /** Writes a part of the answer; rejects when it can't be written. */
  say(text: string): Promise<void>;
  /** Writes what is not the answer: faults, warnings. */
  tell(text: string): void;
  /** Runs work that Ctrl-C stops in good order. */
  interruptible<T>(work: (signal: AbortSignal) => Promise<T>): Promise<T>;
}
