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

const drawing = (inside: string) => ({
  name: 'leaf.svg',
  mimeType: 'image/svg+xml',
  buffer: Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="90mm" viewBox="0 0 60 90">${inside}</svg>`,
  ),
});
const LEAF = '<path d="M30 5C50 25 55 50 30 85C5 50 10 25 30 5Z"/>';

test('an outline comes from an SVG file, keeps its proportions while a side is typed, and goes again with one undo @desktop', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  const size = page.getByLabel('Size', { exact: true });
  const file = page.getByLabel('From an SVG file…');
  await file.setInputFiles(drawing(`${LEAF}<text>Fern</text>`));
  await expect(page.getByRole('alert')).toContainText('leaf.svg was not taken');
  await expect(page.getByRole('alert')).toContainText('turn it into paths');
  await expect(size).toHaveValue('8 x 10');
  await file.setInputFiles(drawing('<rect width="30" height="80"/>'));
  await expect(page.getByRole('alert')).toBeHidden();
  await expect(shapeOf(page).getByRole('radio', { name: 'Own outline' })).toBeChecked();
  // The largest of 3 x 8 that 8 x 10 in holds.
  await expect(size).toHaveValue(/^3 3\/4 x 10$/);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(size).toHaveValue('8 x 10');
  await expect(shapeOf(page).getByRole('radio', { name: 'Rectangle' })).toBeChecked();
  await page.getByRole('button', { name: /^Redo/ }).click();
  await size.fill('3');
  await size.press('Enter');
  await expect(size).toHaveValue(/^3 x 8$/);
  await size.fill('3 x 4');
  await size.press('Enter');
  await expect(size).toHaveValue(/^1 1\/2 x 4$/);

  const proportions = page.getByRole('radiogroup', { name: 'Proportions' });
  await proportions.getByText('Stretched').click();
  await size.fill('6 x 4');
  await size.press('Enter');
  await expect(size).toHaveValue(/^6 x 4$/);
  await proportions.getByText('Kept').click();
  await expect(size).toHaveValue(/^1 1\/2 x 4$/);

  await page.getByLabel('Replace the outline…').setInputFiles(drawing(LEAF));
  await expect(page.getByRole('alert')).toBeHidden();
  await shapeOf(page).getByText('Oval', { exact: true }).click();
  await shapeOf(page).getByText('Own outline').click();
  await expect(shapeOf(page).getByRole('radio', { name: 'Own outline' })).toBeChecked();
});
