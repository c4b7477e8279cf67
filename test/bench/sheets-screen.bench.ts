/**
 * The first plan of 300 pieces on the screen, in headless Chromium (target: 100 ms): from the number of copies that
 * asks for it until it is known, and until it is drawn, beside what the planner alone needs for the same pieces in this very run.
 */
import { copyFile, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { planSheets } from '../../src/core/sheets/plan-sheets';
import { chromiumSwitches, findChromium } from '../helpers/chromium.mjs';
import { startWebHost } from '../helpers/web';
import { median } from './median';

const TARGET_MS = 100;
const COPIES = 150;
const ROUNDS = 9;
const IN = 25.4;

/** A mat and a mount board for each. */
const STOCK = 'board,kind,width,height,price\nWarm white,sheet,32 in,40 in,11.00\nMount board,sheet,32 in,40 in,8.00\n';

/** ms from the number of copies. */
interface Shown {
  readonly planned: number;
  /** Every sheet in sight with its pieces. */
  readonly seen: number;
  /** All sheets, those out of sight as well. */
  readonly drawn: number;
}

/** Of both boards, whose first plans come together; what the page has drawn is seen at the frame after. */
async function timeOne(page: Page, copies: number): Promise<Shown> {
  return page.evaluate(async (wanted) => {
    const input = document.querySelector<HTMLInputElement>('[aria-label="Copies of Sea chart of the harbour"]');
    if (!input) throw new Error('no field for the copies');
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
    performance.clearMeasures('first sheet plan');
    const began = performance.now();
    input.value = String(wanted);
    for (const kind of ['input', 'change']) input.dispatchEvent(new Event(kind, { bubbles: true }));
    const [first] = await new Promise<PerformanceEntryList>((resolve) => {
      new PerformanceObserver((list, observer) => {
        observer.disconnect();
        resolve(list.getEntriesByName('first sheet plan'));
      }).observe({ entryTypes: ['measure'] });
    });
    if (!first) throw new Error('no first plan');
    const planned = first.startTime + first.duration - began;
    const piecesIn = (within: ParentNode) => within.querySelectorAll('[data-piece]').length;
    const isSeen = () =>
      [...document.querySelectorAll('[data-sheet]')].every(
        (sheet) => sheet.getBoundingClientRect().top > window.innerHeight || piecesIn(sheet) > 0,
      );
    // The plan before may still stand there, of few pieces on a sheet or two.
    await frame();
    while (!isSeen()) await frame();
    const seen = performance.now() - began;
    while (piecesIn(document) !== 2 * wanted) await frame();
    await frame();
    return { planned, seen, drawn: performance.now() - began };
  }, copies);
}

function alone(copies: number): number {
  const began = performance.now();
  for (const board of ['Warm white', 'Mount board'])
    planSheets(
      {
        pieces: [{ id: board, width: 16 * IN, height: 20 * IN, count: copies, mayTurn: true }],
        stock: [{ id: board, kind: 'sheet', width: 32 * IN, height: 40 * IN, cost: 1100 }],
        kerf: 0,
        trim: 0,
        aim: 'cost',
        seed: 1,
      },
      { goOn: () => false },
    );
  return performance.now() - began;
}

const folder = await mkdtemp(join(tmpdir(), 'matwright-bench-'));
const job = join(folder, 'chart.json');
await copyFile('resources/samples/1-sea-chart.json', job);
await writeFile(join(folder, 'stock.csv'), STOCK);
const web = await startWebHost({ words: [job], env: { HOME: folder, XDG_STATE_HOME: folder } });
const browser = await chromium.launch({ executablePath: findChromium(), args: [...chromiumSwitches] });
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  page.on('pageerror', (error) => {
    throw error;
  });
  await page.goto(web.address);
  await page.getByRole('heading', { level: 1, name: 'Sea chart of the harbour' }).waitFor();
  await page.keyboard.press('Alt+9');
  await page.getByRole('button', { name: 'Take from a file…' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'stock.csv' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Take it', exact: true }).click();
  const shown: Shown[] = [];
  const planner: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    // Other counts each time, so that nothing is known from before; few between, so that all is drawn anew.
    await timeOne(page, 4 + round);
    shown.push(await timeOne(page, COPIES + round));
    planner.push(alone(COPIES + round));
  }
  // The first rounds also compile the code.
  const [planned, seen, drawn, own] = [shown.map((one) => one.planned), shown.map((one) => one.seen), shown.map((one) => one.drawn), planner].map((times) => median(times.slice(2))); // prettier-ignore
  const say = (what: string, ms = NaN) => console.log(`${what.padEnd(36)} ${ms.toFixed(0)} ms; ${(ms / TARGET_MS).toFixed(2)} times the target; ${(ms / (own ?? NaN)).toFixed(1)} times the planner alone`); // prettier-ignore
  say('planner alone', own);
  say('first plan known to the page', planned);
  say('first plan drawn, sheets in sight', seen);
  say('all its sheets drawn', drawn);
} finally {
  await browser.close();
  await web.stop();
  await rm(folder, { recursive: true, force: true });
}
