/** How the screen stands: no fault that assistive technology would meet, in any view or dialog, light or dark; nothing cut off. */
import AxeBuilder from '@axe-core/playwright';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const VIEWS = ['Pictures', 'Frame', 'Mat', 'Windows', 'Cutting', 'Package', 'Hanging', 'Shelf', 'Sheets'] as const;
const THEMES = ['light', 'dark'] as const;

// Each look of the checker takes seconds on a slow machine.
test.setTimeout(240_000);

/** A job that has an error, a warning and much to say. */
const job = {
  format: 'matwright-job',
  version: 1,
  title: 'Ferns and charts',
  pictures: [
    { title: 'Lady fern', size: '8 x 10', overlap: { left: 'covers 1/8', bottom: 'shows 1/4' } },
    { title: 'Chart', size: '6 x 8', image: '5 x 7' },
  ],
  frame: { size: '24 x 18' },
  mat: { layers: [{}, { reveal: '1/8' }] },
  borders: { rule: 'by-hand', top: '3' },
  windows: {
    kind: 'row',
    items: ['1', { kind: 'column', items: ['2', { kind: 'window', use: 'title', size: '4 x 1' }] }],
    gap: '7/8',
  },
  cutting: { cutter: { name: 'Bench cutter', overcuts: [{ thickness: '1/16', overcut: '3/64' }] } },
  free: [{ use: 'signature', size: '2 x 1/2', at: { right: '1 1/2', bottom: '1 1/2' } }],
};

const view = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name }).click();

async function start(folder: string, open: (...words: string[]) => Promise<{ page: Page }>): Promise<Page> {
  const path = join(folder, 'job.json');
  await writeFile(path, JSON.stringify(job));
  const { page } = await open(path);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(job.title);
  return page;
}

/** In light by every rule of axe; in dark only the contrast differs. */
async function expectClean(page: Page, where: string, theme: (typeof THEMES)[number]): Promise<void> {
  const axe = new AxeBuilder({ page });
  const { violations } = await (theme === 'dark' ? axe.withRules(['color-contrast']) : axe).analyze();
  const said = violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`);
  expect(said, where).toEqual([]);
}

for (const theme of THEMES) {
  test(`every view is clean in ${theme}`, async ({ folder, openProgram }) => {
    const page = await start(folder, openProgram);
    await page.emulateMedia({ colorScheme: theme, reducedMotion: 'reduce' });
    for (const name of VIEWS) {
      await view(page, name);
      await expectClean(page, `${name}, ${theme}`, theme);
    }
    await page.keyboard.press('Alt+b');
    await page.keyboard.press('F8');
    await expectClean(page, `from the back with problems, ${theme}`, theme);
    await view(page, 'Frame');
    await page.getByLabel('Face width', { exact: true }).fill('1.5/8');
    await page.getByLabel('Face width', { exact: true }).press('Enter');
    await expectClean(page, `with an error, ${theme}`, theme);
  });

  test(`every dialog is clean in ${theme}`, async ({ folder, openProgram }) => {
    const page = await start(folder, openProgram);
    await page.emulateMedia({ colorScheme: theme, reducedMotion: 'reduce' });
    for (const [key, title] of [
      ['F1', 'Keys and help'],
      ['Control+e', 'Export'],
      ['Control+o', 'Open a job'],
      ['Control+Shift+s', 'Save the job as'],
      ['Control+Alt+n', 'A new job'],
      ['Control+Alt+o', 'Sample jobs'],
    ] as const) {
      await page.keyboard.press(key);
      await expect(page.getByRole('dialog', { name: title })).toBeVisible();
      await expectClean(page, `${title}, ${theme}`, theme);
      await page.keyboard.press('Escape');
      await expect(page.getByRole('dialog')).toHaveCount(0);
    }
    await view(page, 'Cutting');
    await page.getByRole('button', { name: 'Calibrate…' }).click();
    await page.getByRole('dialog').getByLabel('Border left').fill('1');
    await expectClean(page, `calibration with a warning, ${theme}`, theme);
    await page.keyboard.press('Escape');
    await view(page, 'Windows');
    await page.getByRole('button', { name: 'Add a window' }).click();
    await expectClean(page, `menu, ${theme}`, theme);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: /^Border left/ }).click();
    await expectClean(page, `field on the picture, ${theme}`, theme);
  });
}

test('a dialog holds the focus and gives it back', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  const opener = page.getByRole('button', { name: 'Export', exact: true });
  await opener.focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Export' });
  for (let press = 0; press < 25; press += 1) {
    await page.keyboard.press('Tab');
    expect(await dialog.evaluate((sheet) => sheet.contains(document.activeElement))).toBe(true);
  }
  await page.keyboard.press('Escape');
  await expect(opener).toBeFocused();
});

test('light and dark follow the system until they are chosen, and the choice is remembered', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await page.emulateMedia({ colorScheme: 'dark' });
  const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  const dark = await paper();
  await page.emulateMedia({ colorScheme: 'light' });
  const light = await paper();
  expect(light).not.toBe(dark);
  await page.getByRole('button', { name: 'Light or dark' }).click();
  await expect.poll(paper).toBe(dark);
  await page.reload();
  await expect.poll(paper).toBe(dark);
});

for (const { name, width, height, text } of [
  { name: '1280 x 800', width: 1280, height: 800, text: '100%' },
  { name: '1920 x 1080', width: 1920, height: 1080, text: '100%' },
  { name: '900 px wide', width: 900, height: 700, text: '100%' },
  { name: 'text at 200 %', width: 1280, height: 800, text: '200%' },
]) {
  test(`nothing is cut off: ${name}`, async ({ folder, openProgram }) => {
    const page = await start(folder, openProgram);
    await page.setViewportSize({ width, height });
    await page.evaluate((size) => void (document.documentElement.style.fontSize = size), text);
    for (const each of VIEWS) {
      await view(page, each);
      const beyond = await page.evaluate(() => {
        const panel = document.querySelector('[data-region="panel"]');
        const wide = [document.documentElement, ...(panel ? [panel] : [])].filter(
          (box) => box.scrollWidth > box.clientWidth + 1,
        );
        const canvas = document.querySelector('[data-region="canvas"]')?.getBoundingClientRect();
        return [
          ...wide.map((box) => box.tagName),
          ...(canvas && canvas.width > 250 && canvas.height > 200 ? [] : ['canvas too small']),
        ];
      });
      expect(beyond, each).toEqual([]);
    }
  });
}
