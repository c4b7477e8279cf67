/** The real surroundings: this process, its streams, and its signals. */
import { fileURLToPath } from 'node:url';
import { passingLine } from './passing-line';
import type { World } from './world';

/** No job is larger, in bytes; more is not kept in memory. */
const MOST_INPUT = 10_000_000;
/** Below this nothing can be set in columns; beyond it lines become hard to follow. */
const NARROWEST = 60;
const WIDEST = 160;
/** Where nobody says how wide the terminal is. */
const USUAL = 100;

export function terminal(): World {
  const { stdout, stderr, env } = process;
  // A reader that went away, such as `head`, wants no more; that is no fault.
  stdout.on('error', () => undefined);
  stderr.on('error', () => undefined);
  const passing = passingLine(
    (text) => void stderr.write(text),
    () => stderr.columns || NARROWEST,
  );
  return {
    // npm runs scripts in the project's folder, and says where the user was.
    folder: env['npm_lifecycle_event'] === 'matwright' ? (env['INIT_CWD'] ?? process.cwd()) : process.cwd(),
    resources: fileURLToPath(new URL('../../resources', import.meta.url)),
    columns: Math.min(WIDEST, Math.max(NARROWEST, stdout.columns || Number(env['COLUMNS']) || USUAL)),
    isWatched: stderr.isTTY,
    passing: { show: (words) => passing.show(plain(words)), clear: passing.clear },
    readInput,
    say: (text) => {
      passing.clear();
      return say(text);
    },
    tell: (text) => {
      passing.clear();
      stderr.write(plain(text));
    },
    interruptible,
  };
}

async function readInput(): Promise<Uint8Array> {
  if (process.stdin.isTTY) process.stderr.write('Reading the job from the keyboard; Ctrl-D ends it.\n');
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of process.stdin as AsyncIterable<Uint8Array>) {
    parts.push(part);
    length += part.length;
    if (length > MOST_INPUT) break;
  }
  return Buffer.concat(parts);
}

function say(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    process.stdout.write(plain(text), (error) => {
      if (!error || ('code' in error && error.code === 'EPIPE')) resolve();
      else reject(new Error(`the answer could not be written: ${error.message}`));
    });
  });
}

/** Without control characters, which in a title could steer the terminal; tables end their lines with CR and LF. */
function plain(text: string): string {
  // eslint-disable-next-line no-control-regex
  return text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]|\r(?!\n)/g, '\ufffd');
}

async function interruptible<T>(work: (signal: AbortSignal) => Promise<T>): Promise<T> {
  const stop = new AbortController();
  const abort = () => stop.abort();
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  for (const signal of signals) process.on(signal, abort);
  try {
    return await work(stop.signal);
  } finally {
    for (const signal of signals) process.off(signal, abort);
  }
}
