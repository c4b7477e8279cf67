/** A drag on the canvas with 60 windows in two layers, in headless Chromium: time of work and time between frames (target: 95 % under 16.7 ms). */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { chromiumSwitches, findChromium } from '../helpers/chromium.mjs';
import { startWebHost } from '../helpers/web';

const TARGET_MS = 16.7;
const FRAMES = 240;

const job = {
  format: 'matwright-job',
  version: 1,
  title: 'Sixty linocuts',
  pictures: Array.from({ length: 60 }, (_, index) => ({ title: `Linocut ${index + 1}`, size: '3 x 4 in' })),
  frame: { size: '48 x 40 in' },
  windows: {
    kind: 'grid',
    columns: 10,
    gap: '1 1/4 in',
    items: Array.from({ length: 60 }, (_, index) => String(index + 1)),
  },
  mat: { layers: [{}, { reveal: '1/8 in' }] },
};

interface Frames {
  /** From the pointer's event to the end of layout, ms: reading the job, laying it out, drawing, placing the numbers. */
  readonly work: number[];
  /** From one frame to the next, ms: all of that, and putting it on the screen; 16.7 when the screen was never kept waiting. */
  readonly between: number[];
  /** What the page's own thread was busy with a frame, ms of processor time: the same however busy the machine is otherwise. */
  readonly busy: number;
}

/** Moves the pointer to and fro once a frame, with the button held, and times each frame from inside the page. */
async function dragFrom(page: Page, x: number, y: number, axis: 'x' | 'y'): Promise<Frames> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const busyFor = async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? NaN) * 1000;
  };
  await page.mouse.move(x, y);
  await page.mouse.down();
  const before = await busyFor();
  const frames = await page.evaluate(
    async ({ x, y, axis, count }) => {
      const stage = document.querySelector('[data-region="canvas"]');
      if (!stage) throw new Error('no canvas');
      const frame = () => new Promise<number>((resolve) => requestAnimationFrame(resolve));
      const work: number[] = [];
      const between: number[] = [];
      let last = await frame();
      for (let step = 0; step < count; step += 1) {
        const by = 14 + 12 * Math.sin(step / 12);
        const began = performance.now();
        stage.dispatchEvent(
          new PointerEvent('pointermove', {
            pointerId: 1,
            bubbles: true,
            clientX: x + (axis === 'x' ? by : 0),
            clientY: y + (axis === 'y' ? by : 0),
          }),
        );
        // What follows from the job is worked out once the event is over.
        await Promise.resolve();
        document.body.getBoundingClientRect();
        work.push(performance.now() - began);
        const now = await frame();
        between.push(now - last);
        last = now;
      }
      return { work, between };
    },
    { x, y, axis, count: FRAMES },
  );
  const busy = ((await busyFor()) - before) / FRAMES;
  await page.keyboard.press('Escape');
  await page.mouse.up();
  return { ...frames, busy };
}

function say(name: string, times: readonly number[]): void {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
  const under = (times.filter((time) => time < TARGET_MS).length / times.length) * 100;
  console.log(
    `${name.padEnd(36)} half under ${at(0.5).toFixed(1)} ms, 95 % under ${at(0.95).toFixed(1)} ms; ${under.toFixed(1)} % under ${TARGET_MS} ms; ${(at(0.95) / TARGET_MS).toFixed(2)} times the target`,
  );
}

const folder = await mkdtemp(join(tmpdir(), 'matwright-bench-'));
const path = join(folder, 'sixty.json');
await writeFile(path, JSON.stringify(job));
const web = await startWebHost({ words: [path], env: { HOME: folder, XDG_STATE_HOME: folder } });
const browser = await chromium.launch({ executablePath: findChromium(), args: [...chromiumSwitches] });
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  page.on('pageerror', (error) => {
    throw error;
  });
  await page.goto(web.address);
  await page.getByRole('heading', { level: 1, name: job.title }).waitFor();
  await page.getByRole('navigation').getByRole('button', { name: 'Mat' }).click();
  // In the second row no number of a gap lies in the way.
  const box = await page.getByRole('button', { name: /^Window K,/ }).boundingBox();
  if (!box) throw new Error('the first window is not on the screen');
  const drags = {
    'left border': await dragFrom(page, box.x, box.y + box.height * 0.1, 'x'),
    'gap between columns': await dragFrom(page, box.x + box.width, box.y + box.height * 0.1, 'x'),
  };
  for (const [name, { work, between, busy }] of Object.entries(drags)) {
    // The first frames also compile the code.
    say(`${name}: work`, work.slice(20));
    console.log(`${`${name}: processor`.padEnd(36)} ${busy.toFixed(1)} ms a frame, drawing and painting included`);
    const late = between.slice(20).filter((time) => time > TARGET_MS * 1.5).length;
    console.log(
      `${`${name}: frames`.padEnd(36)} ${(100 - (late / (between.length - 20)) * 100).toFixed(1)} % came at the screen's next turn`,
    );
  }
} finally {
  await browser.close();
  await web.stop();
  await rm(folder, { recursive: true, force: true });
}
