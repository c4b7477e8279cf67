/** Shapes under the hand: chosen from the gallery, measured in fields, dragged by handles, joined with further openings. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const job = {
  format: 'matwright-job',
  version: 1,
  title: 'A fern',
  frame: { size: '16 x 20' },
  mat: { layers: [{}, {}] },
  windows: { kind: 'window', title: 'Fern', size: '8 x 10' },
};

async function start(folder: string, open: (...words: string[]) => Promise<{ page: Page }>): Promise<Page> {
  const path = join(folder, 'fern.json');
  await writeFile(path, JSON.stringify(job));
  const { page } = await open(path);
  await page.getByRole('button', { name: 'Windows', exact: true }).click();
  await page.getByRole('button', { name: /^Window A/ }).focus();
  await page.keyboard.press('Enter');
  return page;
}
const shapeOf = (page: Page) => page.getByRole('radiogroup', { name: 'Shape' }).first();

test('a shape is chosen, measured, dragged by its handle, and undone step by step', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await expect(shapeOf(page).getByRole('radio', { name: 'Rectangle' })).toBeChecked();
  await shapeOf(page).getByText('Arch', { exact: true }).click();
  const rise = page.getByLabel('Rise', { exact: true });
  await expect(rise).toHaveAttribute('placeholder', '4');
  await rise.fill('2 1/2');
  await rise.press('Enter');
  const handle = page.getByRole('slider', { name: 'Rise of the arch' });
  await expect(handle).toHaveAttribute('aria-valuetext', '2 1/2 in');
  await handle.focus();
  await page.keyboard.press('ArrowUp');
  await expect(rise).toHaveValue('2 9/16');
  const box = await handle.boundingBox();
  if (!box) throw new Error('no handle');
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x, at.y - 10);
  await page.mouse.move(at.x, at.y - 24);
  await page.mouse.up();
  // Up is a lower rise.
  await expect(rise).toHaveValue(/^1( \d+\/\d+)?$/);
  const undo = page.getByRole('button', { name: /^Undo/ });
  for (const value of ['2 9/16', '2 1/2']) {
    await undo.click();
    await expect(rise).toHaveValue(value);
  }
});

test('an opening is joined, moved, named, and what does not reach the window is told', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await page.getByRole('button', { name: 'Join an opening' }).click();
  const part = page.getByRole('group', { name: 'Joined opening 1' });
  await part.getByLabel('Title').fill('Lady fern');
  await expect(page.locator('.marks').getByText('Lady fern')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Window A/ })).toHaveAccessibleName(/8 × 10 1\/2 in/);
  const place = part.getByLabel('From its bottom, inward');
  await place.fill('-2');
  await place.press('Enter');
  await expect(part.getByText(/lies 1 in from the rest/)).toBeVisible();
  await place.fill('-3/4');
  await place.press('Enter');
  await expect(part.getByText(/from the rest/)).toBeHidden();
  await part.getByRole('button', { name: /^Take joined opening 1 away/ }).click();
  await expect(part).toBeHidden();
});
