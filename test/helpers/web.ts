/** Runs the built local web host as a user would start it, on files of the test's own. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

export interface RunningWebHost {
  readonly address: string;
  /** Ends it by the signal a terminal sends; gives the exit code. */
  stop(): Promise<number | null>;
}

export async function startWebHost(
  words: readonly string[] = [],
  env: NodeJS.ProcessEnv = {},
): Promise<RunningWebHost> {
  const program = fileURLToPath(new URL('../../out/web/index.js', import.meta.url));
  const child = spawn(process.execPath, [program, ...words], {
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
    stop: () => {
      child.kill('SIGINT');
      return ended;
    },
  };
}
