// Sums what the two test runners wrote down; fails when a test failed, when none ran, or when a runner left no word.
import { readFileSync } from 'node:fs';

/** @type {(name: string) => any} */
const read = (name) => {
  try {
    return JSON.parse(readFileSync(new URL(`../out/${name}`, import.meta.url), 'utf8'));
  } catch {
    console.error(`${name} is missing: its tests did not run to the end.`);
    return undefined;
  }
};

const unit = read('unit-tests.json');
const app = read('app-tests.json');
const passed = (unit?.numPassedTests ?? 0) + (app?.stats.expected ?? 0) + (app?.stats.flaky ?? 0);
const failed = (unit?.numFailedTests ?? 0) + (app?.stats.unexpected ?? 0);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = !unit || !app || passed === 0 || failed > 0 ? 1 : 0;
