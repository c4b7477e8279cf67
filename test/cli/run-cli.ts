/** Runs the command line: the built one as a user would, or the same words in memory. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { resolve } from 'node:path';
import { runWords } from '../../src/cli/run-words';
import type { World } from '../../src/cli/world';

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  /** What standard error said. */
  readonly err: string;
}

const launcher = resolve('src/launch/cli.mjs');

export interface Surroundings {
  readonly input?: string | Uint8Array;
  readonly folder?: string;
  readonly env?: NodeJS.ProcessEnv;
  /** Called once it runs. */
  readonly onStart?: (signal: (name: NodeJS.Signals) => void) => void;
}

/** The built command line, in a process of its own. */
export function runCli(words: readonly string[], surroundings: Surroundings = {}): Promise<Ran> {
  return run(process.execPath, [launcher, ...words], surroundings);
}

/** A line of shell that calls the program as its own help says, `npm run -s matwright -- ...`. */
export function runLine(line: string, surroundings: Surroundings = {}): Promise<Ran> {
  // Stands for npm, which would look for the project in the test's own folder.
  const npm = `npm() { shift 4; "${process.execPath}" "${launcher}" "$@"; }; set -o pipefail; `;
  return run('bash', ['-c', npm + line], surroundings);
}

async function run(program: string, words: readonly string[], { input = '', folder, env, onStart }: Surroundings) {
  const child = spawn(program, words, {
    cwd: folder ?? process.cwd(),
    env: { ...process.env, COLUMNS: '100', ...env },
  });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (out += text));
  child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
  onStart?.((name) => void child.kill(name));
  // One that doesn't read its input ends before it is written.
  child.stdin.on('error', () => undefined).end(input);
  const [code] = (await once(child, 'close')) as [number | null];
  return { code, out, err };
}

/** The same words in this process. */
export async function runHere(words: readonly string[], { input = '', folder }: Surroundings = {}): Promise<Ran> {
  let out = '';
  let err = '';
  const world: World = {
    folder: folder ?? process.cwd(),
    resources: resolve('resources'),
    columns: 100,
    isWatched: false,
    passing: { show: () => undefined, clear: () => undefined },
    readInput: () => Promise.resolve(typeof input === 'string' ? Buffer.from(input) : input),
    say: (text) => {
      out += text;
      return Promise.resolve();
    },
    tell: (text) => void (err += text),
    interruptible: (work) => work(new AbortController().signal),
  };
  const code = await runWords(words, world);
  return { code, out, err };
}

/** The text of a job file. */
export function jobText(job: object): string {
  return JSON.stringify({ format: 'matwright-job', version: 1, ...job });
}
