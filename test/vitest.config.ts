/** Unit and property tests under Node, and component tests (`*.browser.test.ts`) in a real browser. */
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { chromiumSwitches, findChromium } from './helpers/chromium.mjs';

const inBrowser = 'test/**/*.browser.test.ts';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Vitest itself would leave one of two cores idle.
    maxWorkers: 2,
    reporters: ['default', ['json', { outputFile: 'out/unit-tests.json' }]],
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          include: ['test/**/*.test.ts'],
          exclude: [inBrowser],
          environment: 'node',
          setupFiles: ['test/helpers/seed.ts'],
        },
      },
      {
        extends: true,
        plugins: [svelte({ configFile: false })],
        test: {
          name: 'browser',
          include: [inBrowser],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions: { executablePath: findChromium(), args: [...chromiumSwitches] } }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
    ],
  },
});
