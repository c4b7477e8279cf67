/** The first minute: a mat for a photograph in a frame from the shelf, bottom weighted, and its template, by pointer and by keyboard alone. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const view = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name }).click();
const number = (page: Page, side: string) => page.getByRole('button', { name: new RegExp(`^Border ${side}`) });

async function exportAll(page: Page, folder: string): Promise<readonly string[]> {
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Export' });
  await dialog.getByLabel('Folder', { exact: true }).fill(folder);
  await dialog.getByRole('button', { name: 'Export', exact: true }).click();
  await expect(dialog.getByRole('status')).toContainText('3 files were written', { timeout: 30_000 });
  await dialog.getByRole('button', { name: 'Done' }).click();
  return (await readdir(folder)).filter((name) => !name.startsWith('.')).sort();
}

test('a photograph of 8 x 10 in, in a frame of 11 x 14 in, weighted at the bottom', async ({ folder, openProgram }) => {
  const { page } = await openProgram();
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.getByRole('button', { name: 'Inches' }).click();
  await page.getByLabel('Title').first().fill('Harbour, first light');
  await page.getByLabel('Sheet', { exact: true }).fill('8x10');
  await page.getByLabel('Sheet', { exact: true }).press('Enter');
  await view(page, 'Frame');
  await page.getByText('Ready-made', { exact: true }).click();
  await page.getByRole('combobox', { name: 'Ready-made' }).selectOption('11x14 in');
  await view(page, 'Mat');
  await page.getByLabel('Rule').selectOption('bottom-amount');
  // 8 x 10 less 1/8 on every side leaves 7 3/4 x 9 3/4: 1 5/8 at the sides; 4 1/4 up and down, the bottom 1/2 wider.
  await expect(number(page, 'left')).toHaveAccessibleName(/: 1 5\/8 in/);
  await expect(number(page, 'right')).toHaveAccessibleName(/: 1 5\/8 in/);
  await expect(number(page, 'top')).toHaveAccessibleName(/: 1 7\/8 in/);
  await expect(number(page, 'bottom')).toHaveAccessibleName(/: 2 3\/8 in/);
  const files = await exportAll(page, folder);
  expect(files).toEqual(['mat-cut-list.csv', 'mat-proof.svg', 'mat-template.pdf']);
  const list = await readFile(join(folder, 'mat-cut-list.csv'), 'utf8');
  expect(list).toContain('1.625');
  expect(list).toContain('2.375');
});

test('the same in millimetres', async ({ folder, openProgram }) => {
  const { page } = await openProgram();
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.getByRole('button', { name: 'Millimetres' }).click();
  await page.getByLabel('Sheet', { exact: true }).fill('203 x 254');
  await page.getByLabel('Sheet', { exact: true }).press('Enter');
  await view(page, 'Frame');
  await page.getByRole('textbox', { name: 'Frame size' }).fill('280 x 360');
  await page.getByRole('textbox', { name: 'Frame size' }).press('Enter');
  await view(page, 'Mat');
  await page.getByLabel('Rule').selectOption('bottom-amount');
  // Overlap 3: window 197 x 248; sides 41.5; 112 up and down, the bottom 12 wider.
  await expect(number(page, 'left')).toHaveAccessibleName(/: 41\.5 mm/);
  await expect(number(page, 'top')).toHaveAccessibleName(/: 50 mm/);
  await expect(number(page, 'bottom')).toHaveAccessibleName(/: 62 mm/);
  await exportAll(page, folder);
  expect(await readFile(join(folder, 'mat-cut-list.csv'), 'utf8')).toContain('41.5');
});

test('by keyboard alone', async ({ folder, openProgram }) => {
  const { page } = await openProgram();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sea chart of the harbour');
  const press = (...keys: string[]) =>
    keys.reduce<Promise<void>>((done, key) => done.then(() => page.keyboard.press(key)), Promise.resolve());
  const tabTo = async (name: string) => {
    for (let tries = 0; tries < 60; tries += 1) {
      const found = await page.evaluate(() => {
        const active = document.activeElement;
        const label =
          active instanceof HTMLInputElement || active instanceof HTMLSelectElement
            ? active.labels?.[0]?.textContent
            : active?.textContent;
        return (active?.getAttribute('aria-label') ?? label ?? '').trim();
      });
      if (found === name) return;
      await press('Tab');
    }
    throw new Error(`never came to ${name}`);
  };
  await press('Control+Alt+n');
  await expect(page.getByRole('dialog', { name: 'A new job' })).toBeVisible();
  await tabTo('Inches');
  await press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Untitled');
  await press('Alt+3', 'F6');
  await tabTo('Rule');
  await page.keyboard.type('Bottom weighted by a l');
  await tabTo('Weighting');
  await page.keyboard.type('1/2');
  await press('Enter', 'ArrowUp', 'ArrowUp');
  await expect(number(page, 'bottom')).toHaveAccessibleName(/: 2 7\/16 in/);
  await press('Control+z', 'Control+z');
  await expect(page.getByRole('textbox', { name: 'Weighting' })).toHaveValue('');
  await press('Control+e');
  const dialog = page.getByRole('dialog', { name: 'Export' });
  await expect(dialog).toBeVisible();
  await expect(dialog.getByRole('button', { name: 'Export', exact: true })).toBeFocused();
  await press('Enter');
  await expect(dialog.getByRole('status')).toContainText('3 files were written', { timeout: 30_000 });
  await press('Escape');
  await expect(dialog).toBeHidden();
  expect((await readdir(folder)).filter((name) => name.startsWith('mat-'))).toHaveLength(3);
});
