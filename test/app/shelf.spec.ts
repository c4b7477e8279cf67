/** The shelf on the screen: a generic one to begin with, changed by hand, from a file and into one, safe from a second window. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const shelf = (page: Page) => page.getByRole('main');
const dialog = (page: Page) => page.getByRole('dialog');

async function openShelf(page: Page): Promise<void> {
  await page.keyboard.press('Alt+8');
  await expect(shelf(page).getByRole('heading', { name: 'Shelf' })).toBeVisible();
}

async function addFrame(page: Page, cells: Readonly<Record<string, string>>): Promise<void> {
  await page.getByRole('button', { name: 'Add to Frames' }).click();
  for (const [label, text] of Object.entries(cells)) await dialog(page).getByLabel(label, { exact: true }).fill(text);
}

const keep = (page: Page) => dialog(page).getByRole('button', { name: 'Keep', exact: true }).click();

test('a frame is added, refused while it cannot be right, changed and taken off', async ({ openProgram, folder }) => {
  const { page } = await openProgram();
  await openShelf(page);
  await expect(shelf(page)).toContainText('This is a generic list');
  await addFrame(page, { Name: 'Ash', Width: '11', Height: 'banana', Price: '14.50' });
  await expect(dialog(page)).toContainText('Banana is not a length');
  await keep(page);
  await expect(dialog(page)).toBeVisible();
  await dialog(page).getByLabel('Height').fill('14');
  await dialog(page).getByLabel('Glazing').check();
  await keep(page);
  await expect(shelf(page).getByRole('button', { name: /Ash/ })).toContainText('11 x 14 in · with glazing · 14.50');
  await expect(shelf(page)).not.toContainText('This is a generic list');

  await addFrame(page, { Name: 'ash', Width: '8', Height: '10' });
  await keep(page);
  await expect(dialog(page)).toContainText('There is one of this name');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Drop it' }).click();

  await shelf(page).getByRole('button', { name: /Ash/ }).click();
  await dialog(page).getByLabel('Name', { exact: true }).fill('Ash, oiled');
  await dialog(page).getByLabel('Count').fill('0');
  await keep(page);
  await expect(shelf(page).getByRole('button', { name: /Ash, oiled/ })).toContainText('none left');
  const kept = await readFile(join(folder, '.state', 'matwright', 'shelf.csv'), 'utf8');
  expect(kept.split('\r\n').filter((line) => line.includes('Ash'))).toEqual([
    expect.stringMatching(/^frame,"Ash, oiled","11 in","14 in",.*,glazing,.*,0,14\.5,each$/),
  ]);

  await shelf(page)
    .getByRole('button', { name: /Ash, oiled/ })
    .click();
  await dialog(page).getByRole('button', { name: 'Take it off the shelf…' }).click();
  await page.getByRole('button', { name: 'Take it off', exact: true }).click();
  await expect(shelf(page).getByRole('button', { name: /Ash/ })).toHaveCount(0);
});

test('a file takes the place of the generic shelf, its faults are told by line, and the shelf goes into one', async ({
  openProgram,
  folder,
}) => {
  await writeFile(join(folder, 'bad.csv'), 'name,width,height\nOak,11 in,14\n');
  await writeFile(join(folder, 'good.csv'), 'name;width (cm);height (cm);price\nOak;30;40;22,50\nAsh;40;50;\n');
  const { page } = await openProgram();
  await openShelf(page);
  const take = async (name: string) => {
    await page.getByRole('button', { name: 'Take from a file…' }).click();
    await page.getByRole('button', { name }).click();
    await dialog(page).getByRole('button', { name: 'Take it', exact: true }).click();
  };
  await take('bad.csv');
  await expect(dialog(page)).toContainText('Line 2, column “height”: 14 does not say its unit');
  await page.keyboard.press('Escape');
  await take('good.csv');
  await dialog(page).getByRole('button', { name: 'They go' }).click();
  await expect(shelf(page)).toContainText('2 things');
  await expect(shelf(page).getByRole('button', { name: /Oak/ })).toContainText('22.50');

  await page.getByRole('button', { name: 'Write to a file…' }).click();
  await dialog(page).getByRole('button', { name: 'Write', exact: true }).click();
  await expect.poll(() => readFile(join(folder, 'shelf.csv'), 'utf8').catch(() => '')).toContain('"300 mm","400 mm"');
});

test('two windows lose nothing of one another', async ({ openProgram, folder }) => {
  const { page: one } = await openProgram();
  const { page: two } = await openProgram();
  for (const page of [one, two]) await openShelf(page);
  await addFrame(one, { Name: 'One', Width: '8', Height: '8' });
  await keep(one);
  await expect(shelf(one).getByRole('button', { name: /^One/ })).toBeVisible();
  // The second window has not seen the change yet.
  await addFrame(two, { Name: 'Two', Width: '9', Height: '9' });
  await keep(two);
  for (const name of [/^One/, /^Two/]) await expect(shelf(two).getByRole('button', { name })).toBeVisible();
  const kept = await readFile(join(folder, '.state', 'matwright', 'shelf.csv'), 'utf8');
  expect(kept).toMatch(/frame,One[^]*frame,Two/);
  // The same frame changed by both is asked about.
  await shelf(two).getByRole('button', { name: /^One/ }).click();
  await dialog(two).getByLabel('Count').fill('2');
  await keep(two);
  await shelf(one).getByRole('button', { name: /^One/ }).click();
  await dialog(one).getByLabel('Count').fill('3');
  await keep(one);
  await expect(one.getByRole('dialog', { name: 'Changed by another window' })).toBeVisible();
  await one.getByRole('button', { name: 'Leave what is there' }).click();
  // What was typed is not dropped by a key alone.
  await one.keyboard.press('Escape');
  await one.getByRole('button', { name: 'Go on typing' }).click();
  await expect(dialog(one).getByLabel('Count')).toHaveValue('3');
  await one.keyboard.press('Escape');
  await one.getByRole('button', { name: 'Drop it' }).click();
  await expect(one.getByRole('dialog')).toHaveCount(0);
  await expect(shelf(one).getByRole('button', { name: /^One/ })).toContainText('2 there');
  // Where nothing was typed there is nothing to ask.
  await shelf(one).getByRole('button', { name: /^One/ }).click();
  await expect(dialog(one)).toBeVisible();
  await one.keyboard.press('Escape');
  await expect(one.getByRole('dialog')).toHaveCount(0);
});
