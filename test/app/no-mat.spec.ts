/** Without a mat on the screen: from a matted canvas to none and back, and what each view says where nothing is cut. */
import { readdir } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const view = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name }).click();
const panel = (page: Page) => page.locator('[data-region="panel"]');

test('a canvas is offered to go without a mat, and gets it back', async ({ openProgram }) => {
  const { page } = await openProgram();
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.getByRole('button', { name: 'Inches' }).click();
  await page.getByLabel('Kind').selectOption('painting on canvas');
  await page.getByRole('button', { name: 'No mat, in a frame of 8 x 10 in' }).click();
  // A lip of 1/4 in less half an allowance of 1/8 in covers 3/16 in on every side.
  await expect(page.getByRole('button', { name: /^Picture, Picture 1, shows 7 5\/8 × 9 5\/8 in/ })).toBeVisible();
  await expect(page.getByRole('region', { name: 'The picture in its frame, seen from the front' })).toBeVisible();
  await expect(panel(page).getByText('Overlap')).toBeHidden();
  await expect(page.getByRole('button', { name: /^Border/ })).toHaveCount(0);
  await page.getByLabel('Size', { exact: true }).fill('7 x 9');
  await page.getByLabel('Size', { exact: true }).press('Enter');
  await expect(panel(page).getByText('would fall through the front of the frame')).toBeVisible();
  await panel(page).getByRole('button', { name: 'Take a frame of 7 x 9 in' }).click();
  await expect(panel(page).getByText('would fall through the front of the frame')).toHaveCount(0);
  await view(page, 'Mat');
  await expect(panel(page).getByText(/^3\/16 in · .* all round$/)).toBeVisible();
  await panel(page).getByRole('button', { name: 'Give it a mat' }).click();
  await expect(panel(page).getByRole('heading', { name: 'Layer 1, the top' })).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(panel(page).getByRole('heading', { name: 'No mat' })).toBeVisible();
  await page.keyboard.press('Control+y');
  await panel(page).getByRole('button', { name: 'No mat' }).click();
  await expect(panel(page).getByRole('heading', { name: 'No mat' })).toBeVisible();
});

test('each view says that nothing is cut, and the export makes the proof alone', async ({ folder, openProgram }) => {
  const { page } = await openProgram('resources/samples/6-painted-sea.json');
  await view(page, 'Frame');
  await expect(panel(page).getByText('20 1/2 × 16 1/2 in')).toBeVisible();
  await expect(panel(page).getByLabel('Gap, each side')).toHaveValue('1/4 in');
  await expect(panel(page).getByLabel('Rabbet lip')).toBeHidden();
  await view(page, 'Windows');
  await expect(panel(page).getByText('Windows are cut in a mat')).toBeVisible();
  await expect(panel(page).getByRole('button', { name: 'Add a window' })).toBeHidden();
  await view(page, 'Cutting');
  await expect(panel(page).getByRole('heading', { name: 'Nothing to cut' })).toBeVisible();
  await page.keyboard.press('Alt+b');
  await expect(page.getByText('picture and frame, turned over left to right; there is nothing to cut')).toBeVisible();
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Export' });
  await expect(dialog.getByText('There is nothing to cut without a mat')).toBeVisible();
  await expect(dialog.getByRole('checkbox', { name: /Cutting template|Cut cards|Coordinates/ })).toHaveCount(0);
  await expect(dialog.getByRole('checkbox', { name: 'Proof picture' })).toBeChecked();
  await dialog.getByLabel('Folder', { exact: true }).fill(folder);
  await dialog.getByRole('button', { name: 'Export', exact: true }).click();
  await expect(dialog.getByRole('status')).toContainText('One file was written');
  const names = (await readdir(folder)).filter((name) => !name.startsWith('.'));
  expect(names).toEqual(['the-sea-by-the-children-s-class-proof.svg']);
});
