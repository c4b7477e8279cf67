/** Turning and matching under the hand: one window, a group, the whole mat, with keys and by buttons, each one step back. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const job = {
  format: 'matwright-job',
  version: 1,
  title: 'Two linocuts and a name',
  frame: { size: '24 x 18' },
  borders: { rule: 'bottom-amount', amount: '1 in' },
  windows: {
    kind: 'row',
    gap: '2 in',
    items: [
      { kind: 'window', title: 'Heron', size: '4 x 5 in' },
      { kind: 'window', title: 'Kite', size: '3 x 3 in', shape: 'arch' },
      { kind: 'window', use: 'title', title: 'The harbour', size: '5 x 1 in' },
    ],
  },
};

async function start(folder: string, open: (...words: string[]) => Promise<{ page: Page }>): Promise<Page> {
  const path = join(folder, 'linocuts.json');
  await writeFile(path, JSON.stringify(job));
  const { page } = await open(path);
  await page.getByRole('button', { name: 'Windows', exact: true }).click();
  return page;
}

const windowNamed = (page: Page, letter: string) =>
  page.getByRole('button', { name: new RegExp(`^Window ${letter}\\b`) });

async function choose(page: Page, letter: string): Promise<void> {
  await windowNamed(page, letter).focus();
  await page.keyboard.press('Enter');
}

test('a window turns by its button and its key, and each is one step back', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await choose(page, 'A');
  const size = page.getByLabel('Size', { exact: true });
  await page.getByRole('button', { name: /^Turn left: Heron/ }).click();
  await expect(size).toHaveValue('5 x 4 in');
  await expect(windowNamed(page, 'A')).toHaveAccessibleName(/5 × 4 in/);
  await page.keyboard.press('Alt+r');
  await expect(size).toHaveValue('4 x 5 in');
  const undo = page.getByRole('button', { name: /^Undo/ });
  await undo.click();
  await expect(size).toHaveValue('5 x 4 in');
  await undo.click();
  await expect(size).toHaveValue('4 x 5 in');
});

test('a row becomes a column, and the whole mat turns with its borders held by hand', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await page.getByRole('button', { name: /^Turn right: Row of 3/ }).click();
  await expect(page.getByRole('radio', { name: 'Column' })).toBeChecked();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.getByRole('button', { name: 'Mat', exact: true }).click();
  await page.getByRole('button', { name: 'Turn left: the whole mat' }).click();
  await expect(page.getByText(/borders are now given by hand, each as wide as it was/)).toBeVisible();
  await page.getByRole('button', { name: 'Save' }).first().click();
  await expect(page.getByText(/^Saved/).first()).toBeVisible();
  const saved = JSON.parse(await readFile(join(folder, 'linocuts.json'), 'utf8')) as typeof job;
  expect(saved.frame.size).toBe('18 x 24');
  // 24 in less 12 in of windows and 4 in of gaps; 18 in less 5 in, of which the bottom has 1 in more than the top.
  expect(saved.borders).toEqual({ rule: 'by-hand', bottom: '4', left: '6' });
  expect(saved.windows.items.map(({ title }) => title)).toEqual(['The harbour', 'Kite', 'Heron']);
});

test('a window takes its size from another, and gives it to its group', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await choose(page, 'B');
  const size = page.getByLabel('Size', { exact: true });
  await page.getByLabel('Same size as').selectOption({ label: 'C  The harbour, 5 × 1 in' });
  await page.getByRole('button', { name: 'Height', exact: true }).click();
  await expect(size).toHaveValue('3 x 1 in');
  // An arch 3 in wide has no room in a height of 1 in, so that there is nothing to take a size from now.
  await expect(page.getByRole('button', { name: 'Width', exact: true })).toBeDisabled();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.getByLabel('Same size as').selectOption({ label: 'A  Heron, 4 × 5 in' });
  await page.getByRole('button', { name: 'Width', exact: true }).click();
  await expect(size).toHaveValue('4 x 3 in');
  await page.getByRole('button', { name: 'Give its size to the group' }).click();
  await expect(windowNamed(page, 'C')).toHaveAccessibleName(/4 × 3 in/);
  await expect(windowNamed(page, 'A')).toHaveAccessibleName(/4 × 3 in/);
});
