/** Runs the built local web host as a user would start it, on files of the test's own. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

export interface RunningWebHost {
  readonly address: string;
  /** Ends it, by default by the signal a terminal sends; gives the exit code. */
  stop(signal?: NodeJS.Signals): Promise<number | null>;
}

export interface WebHostOptions {
  readonly words?: readonly string[];
  /** Environment beside that of the test. */
  readonly env?: NodeJS.ProcessEnv;
  /** The largest file it may write, in KiB, as on a drive that is full beyond that. */
  readonly largestFile?: number;
}

export async function startWebHost({
  words = [],
  env = {},
  largestFile,
}: WebHostOptions = {}): Promise<RunningWebHost> {
  const program = fileURLToPath(new URL('../../out/web/index.js', import.meta.url));
  const limit = largestFile === undefined ? 'unlimited' : String(largestFile);
  // Beyond the limit a write then fails, as on a full drive, where otherwise the process would be ended.
  const command = [
    '-c',
    'trap "" XFSZ; ulimit -f "$1"; shift; exec "$@"',
    'bash',
    limit,
    process.execPath,
    program,
    ...words,
  ];
  const child = spawn('bash', command, {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = once(child, 'exit').then(([code]) => code as number | null);
  const said = once(createInterface(child.stdout), 'line').then(([line]) => String(line));
  const line = await Promise.race([
    said,
    ended.then((code) => Promise.reject(new Error(`the web host ended (${code})`))),
  ]);
  const address = /http:\/\/\S+/.exec(line)?.[0];
  if (!address) throw new Error(`no address in “${line}”`);
  return {
    address,
    stop: (signal = 'SIGINT') => {
      child.kill(signal);
      return ended;
    },
  };
}
