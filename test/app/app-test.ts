/** The test of the whole program: gives each test a folder, a state of its own, and the program open on either host. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test as base, type Page } from '@playwright/test';
import { openDesktop, type Desktop } from '../helpers/desktop';
import { startWebHost } from '../helpers/web';

export { expect } from '@playwright/test';

export interface OpenProgram {
  readonly page: Page;
  /** Only on the desktop: menu, dialogs and closing. */
  readonly desktop?: Desktop;
  /** Ends the program without a word, as a crash would. */
  readonly kill: () => Promise<unknown>;
}

interface Fixtures {
  /** An empty folder, also the user's home, gone after the test. */
  readonly folder: string;
  /** Opens the program, with a job file or other words; also a second time. */
  readonly openProgram: (...words: string[]) => Promise<OpenProgram>;
}

/** Keys are heard once the screen stands. */
async function screenOf(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save' }).first().waitFor({ state: 'attached' });
}

export const test = base.extend<Fixtures>({
  // Playwright reads a fixture's needs from its first parameter's pattern, which here is empty.
  // eslint-disable-next-line no-empty-pattern
  folder: async ({}, use) => {
    const folder = await mkdtemp(join(tmpdir(), 'matwright-app-'));
    await use(folder);
    await rm(folder, { recursive: true, force: true });
  },
  openProgram: async ({ folder, context }, use, info) => {
    const ends: (() => Promise<unknown>)[] = [];
    const faults: string[] = [];
    const watch = (page: Page): Page => {
      page.on('pageerror', (error) => faults.push(error.message));
      page.on('console', (said) => /Content Security Policy/.test(said.text()) && faults.push(said.text()));
      return page;
    };
    const env = { XDG_STATE_HOME: join(folder, '.state'), HOME: folder };
    await use(async (...words) => {
      if (info.project.metadata['host'] === 'desktop') {
        const desktop = await openDesktop({ words, env });
        ends.push(desktop.kill);
        await screenOf(desktop.page as Page);
        return { page: watch(desktop.page as Page), desktop, kill: desktop.kill };
      }
      const web = await startWebHost({ words, env });
      ends.push(() => web.stop());
      const page = watch(await context.newPage());
      await page.goto(web.address);
      await screenOf(page);
      return { page, kill: () => web.stop('SIGKILL') };
    });
    for (const end of ends) await end();
    expect(faults, 'faults of the page').toEqual([]);
  },
});
