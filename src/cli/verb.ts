/** What makes up a verb of the command line, such as `check`. */
import type { Option } from 'commander';
import type { ExitCode, World } from './world';

export interface Verb<Options = never> {
  readonly name: string;
  /** One line for the list of verbs. */
  readonly summary: string;
  /** Sentences below the options. */
  readonly more: string;
  /** Command lines that work as they stand, from the project's folder. */
  readonly examples: readonly string[];
  /** Whether it takes the name of a job's file. */
  readonly takesJob: boolean;
  /** Whether it takes more than one. */
  readonly takesSeveral?: true;
  /** Another file it takes in its place. */
  readonly takesFile?: { readonly name: string; readonly what: string; readonly isOptional?: true };
  readonly options: readonly Option[];
  /**
   * `job` is the file's name, empty for a verb that takes none, or where it may be left out and is; `more` are the others
   * of a verb that takes several.
   */
  run(world: World, options: Options, job: string, more: readonly string[]): Promise<ExitCode>;
}
