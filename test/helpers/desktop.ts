/** Runs the built desktop program on the Electron stand-in, and lets a test act as its user. */
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { createServer, type AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright';

const root = fileURLToPath(new URL('../..', import.meta.url));
const standin = fileURLToPath(new URL('../standin/', import.meta.url));

export interface DesktopOptions {
  /** Words after the program's folder, such as a job file. */
  readonly words?: readonly string[];
  /** Environment beside that of the test, such as `XDG_STATE_HOME`. */
  readonly env?: NodeJS.ProcessEnv;
}

export interface Desktop {
  readonly page: Page;
  /** Does something outside the page: see `test/standin/boot.mjs`. */
  act(deed: string, given?: unknown): Promise<unknown>;
  /** The exit code, once the program has ended. */
  readonly ended: Promise<number | null>;
  /** Ends it however it stands. */
  kill(): Promise<void>;
}

/** Starts a copy of the program that only waits to be connected to. */
export function startDesktop({ words = [], env = {} }: DesktopOptions, port = 0) {
  const child = fork(`${standin}boot.mjs`, [root, ...words], {
    execArgv: ['--import', `${standin}register.mjs`],
    env: { ...process.env, ...env, STANDIN_PORT: String(port) },
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  });
  const ended = once(child, 'exit').then(([code]) => code as number | null);
  return { child, ended };
}

/** Starts the program and waits for its page. */
export async function openDesktop(options: DesktopOptions = {}): Promise<Desktop> {
  const port = await findFreePort();
  const { child, ended } = startDesktop(options, port);
  const { browser, page } = await connectToPage(port, ended);
  let count = 0;
  return {
    page,
    ended,
    act: (deed, given) =>
      new Promise((resolve, reject) => {
        const id = (count += 1);
        const hear = (answer: { id: number; value?: unknown; error?: string }): void => {
          if (answer.id !== id) return;
          child.off('message', hear);
          if (answer.error === undefined) resolve(answer.value);
          else reject(new Error(answer.error));
        };
        child.on('message', hear);
        child.send({ id, deed, given });
      }),
    kill: async () => {
      await browser.close().catch(() => undefined);
      if (child.connected) child.disconnect();
      await ended;
    },
  };
}

/** The program's page once it is there, with its bridge. @param port of the stand-in's browser. */
export async function connectToPage(port: number, ended: Promise<number | null>) {
  const browser = await connect(port, ended);
  const page = browser.contexts()[0]!.pages()[0]!;
  await page.waitForFunction(() => 'matwrightHost' in window);
  await page.waitForLoadState('load');
  return { browser, page };
}

async function connect(port: number, ended: Promise<number | null>) {
  let over = false;
  void ended.then(() => (over = true));
  for (let tries = 0; ; tries += 1) {
    try {
      return await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
    } catch (error) {
      if (over || tries > 200) throw error;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
}

export async function findFreePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
}
