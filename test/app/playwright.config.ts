/** How the whole program is tried in Chromium: `web` through the local web host, `desktop` through the Electron stand-in. */
import { defineConfig } from '@playwright/test';
import { chromiumSwitches, findChromium } from '../helpers/chromium.mjs';

export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  outputDir: '../../out/test-results',
  workers: 1,
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: [['list'], ['json', { outputFile: '../../out/app-tests.json' }]],
  use: {
    viewport: { width: 1280, height: 800 },
    launchOptions: { executablePath: findChromium(), args: [...chromiumSwitches] },
  },
  projects: [
    { name: 'web', grepInvert: /@desktop-only/, metadata: { host: 'web' } },
    // The screen is the same in both; what concerns the host (files, export, closing) is tried in the desktop too.
    { name: 'desktop', grep: /@desktop/, metadata: { host: 'desktop' } },
  ],
});
