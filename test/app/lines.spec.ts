/** Grooves and ruled lines under the hand: of the mat and of one window, one undo step each, drawn where they are. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const job = {
  format: 'matwright-job',
  version: 1,
  title: 'Ferns',
  pictures: [
    { title: 'Lady fern', size: '8 x 10' },
    { title: 'Heron', size: '6 x 6' },
  ],
  mat: { layers: [{ board: 'Slate blue', colour: '#5f7a86' }, { board: 'Cream' }] },
  windows: { kind: 'row', gap: '3', items: [{ kind: 'window', picture: 1, shape: 'oval' }, '2'] },
};

async function start(folder: string, open: (...words: string[]) => Promise<{ page: Page }>): Promise<Page> {
  const path = join(folder, 'ferns.json');
  await writeFile(path, JSON.stringify(job));
  const { page } = await open(path);
  return page;
}
const view = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name }).click();

test('lines of the mat are added, measured, changed and taken away, each in one step', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await view(page, 'Mat');
  await page.getByRole('button', { name: 'Add a groove' }).click();
  const groove = page.getByRole('group', { name: 'Groove 1' });
  await expect(groove.getByText('It goes 1/32 in into the board.')).toBeVisible();
  await page.getByRole('button', { name: 'Add a ruled line' }).click();
  const ruled = page.getByRole('group', { name: 'Ruled line 1' });
  // Clear of the groove, which has the usual distance of 1/2 in.
  await expect(ruled.getByLabel('Distance', { exact: true })).toHaveValue('3/4');
  await ruled.getByLabel('Ink', { exact: true }).fill('#f0e6c8');
  await ruled.getByLabel('Ink', { exact: true }).press('Enter');
  const width = groove.getByLabel('Width', { exact: true });
  await width.fill('1/8');
  await width.press('Enter');
  await expect(groove.getByText(/it would cut through/)).toBeVisible();
  await groove.getByRole('button', { name: 'Make it 1/16 in wide' }).click();
  await expect(groove.getByText(/it would cut through/)).toBeHidden();
  await expect(width).toHaveValue('1/16 in');
  await ruled.getByText('Groove', { exact: true }).click();
  await expect(page.getByRole('group', { name: 'Groove 2' }).getByLabel('Distance')).toHaveValue('3/4');
  const undo = page.getByRole('button', { name: /^Undo/ });
  await undo.click();
  await expect(ruled.getByLabel('Ink', { exact: true })).toHaveValue('#f0e6c8');
  await page.getByRole('button', { name: 'Take groove 1 away' }).click();
  await expect(groove).toBeHidden();
  await undo.click();
  await expect(groove).toBeVisible();
  await page.keyboard.press('Control+s');
  await expect(page.getByRole('status').filter({ hasText: /^Saved / })).toBeVisible();
  const saved = JSON.parse(await readFile(join(folder, 'ferns.json'), 'utf8')) as { mat: { lines: object[] } };
  expect(saved.mat.lines).toEqual([
    { kind: 'groove', width: '1/16 in' },
    { kind: 'ruled', distance: '3/4', colour: '#f0e6c8' },
  ]);
});

test('a window has the mat’s lines, its own, or none; those that run too far are told and brought back', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await view(page, 'Mat');
  await page.getByRole('button', { name: 'Add a groove' }).click();
  await view(page, 'Windows');
  await page.getByRole('button', { name: /^Window B/ }).focus();
  await page.keyboard.press('Enter');
  const whose = page.getByRole('radiogroup', { name: 'Lines on the face' });
  await expect(whose.getByRole('radio', { name: 'As the mat' })).toBeChecked();
  await whose.getByText('Its own', { exact: true }).click();
  const groove = page.getByRole('group', { name: 'Groove 1' });
  const distance = groove.getByLabel('Distance', { exact: true });
  await distance.fill('2');
  await distance.press('Enter');
  await expect(groove.getByText(/runs into the groove round window A/)).toBeVisible();
  // Between the faces lie 3 in less twice 1/4 and 1/16; the other groove reaches 1/2 in and 1/32, this one 1/32 more.
  await groove.getByRole('button', { name: 'Bring it to 1 3/4 in' }).click();
  await expect(distance).toHaveValue('1 3/4 in');
  await expect(groove.getByText(/runs into/)).toBeHidden();
  await page.getByRole('button', { name: 'Take groove 1 away' }).click();
  await expect(page.getByText('None round this window.')).toBeVisible();
  await whose.getByText('As the mat', { exact: true }).click();
  await expect(page.getByText('None round this window.')).toBeHidden();
});

test('the order of cutting begins on the face', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await view(page, 'Mat');
  await page.getByRole('button', { name: 'Add a groove' }).click();
  await view(page, 'Cutting');
  const table = page.getByRole('table', { name: 'On the face, from the front' });
  await expect(table.getByRole('row')).toHaveCount(1 + 2 + 8);
  await expect(table.getByText('B groove, inner left', { exact: true })).toBeVisible();
});
