/** What is kept of sheets over uses and restarts: the stock and its uses, jobs planned together, pins and choices. */
import { copyFile, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { parseUseRecord } from '../../src/core/sheets/use-record';
import { expect, test } from './app-test';
import { again, button, dialog, panel, pieces, pinned, setCopies, sheets, start, STOCK } from './sheets-view';

test.setTimeout(240_000);

test('a stock that can’t be read is told at the plan, which is then not used', async ({ folder, openProgram }) => {
  const state = join(folder, '.state', 'matwright');
  await mkdir(state, { recursive: true });
  await writeFile(join(state, 'stock.csv'), 'board,kind\n"Warm white,sheet\n');
  const { page } = await openProgram('resources/samples/1-sea-chart.json');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sea chart of the harbour');
  await page.keyboard.press('Alt+9');
  await expect(pieces(page)).toHaveCount(1);
  await expect(panel(page)).toContainText('Your stock can’t be read, and this plan is made as if it were empty.');
  await expect(button(page, 'Use this plan…')).toBeDisabled();
  await expect(page.getByRole('contentinfo')).toContainText('1 to mend before cutting');
  await writeFile(join(state, 'stock.csv'), STOCK);
  await button(page, 'Look again').click();
  await expect(panel(page)).not.toContainText('can’t be read');
  await expect(button(page, 'Use this plan…')).toBeEnabled();
});

test('another count of sheets is another plan; a plan used is taken from the stock and can be taken back @desktop', async ({
  folder,
  openProgram,
}) => {
  await copyFile('resources/samples/1-sea-chart.json', join(folder, 'chart.json'));
  const { page } = await openProgram(join(folder, 'chart.json'));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sea chart of the harbour');
  await page.keyboard.press('Alt+9');
  await setCopies(page, 'Sea chart of the harbour', 5);
  await expect(sheets(page)).toHaveCount(2);

  // A row by hand: with sheets of 40 x 60 in all five come from one.
  await page.getByRole('button', { name: 'Add to the stock' }).click();
  await expect(dialog(page).getByRole('textbox', { name: 'Board' })).toHaveValue('Warm white');
  await dialog(page).getByRole('textbox', { name: 'Width' }).fill('40');
  await button(page, 'Keep').click();
  await expect(dialog(page)).toContainText('A sheet needs its size');
  await dialog(page).getByRole('textbox', { name: 'Height' }).fill('60');
  await dialog(page).getByRole('textbox', { name: 'Count' }).fill('2');
  await button(page, 'Keep').click();
  await expect(sheets(page)).toHaveCount(1);
  await expect(panel(page).getByRole('button', { name: /Warm white/ })).toContainText('40 x 60 in, 2 there');

  const stock = () => readFile(join(folder, '.state', 'matwright', 'stock.csv'), 'utf8');
  await button(page, 'Use this plan…').click();
  await expect(dialog(page)).toContainText('Warm white: takes 1 sheet 40 x 60 in; puts back');
  await button(page, 'Use it').click();
  await expect(panel(page)).toContainText('This plan is used');
  // What is left of it: 40 x 60 in less five mats of 16 x 20 in is at least 800 sq in.
  await expect.poll(stock).toMatch(/Warm white,sheet,"?40 in"?,"?60 in"?,1[^]*Warm white,remnant/);
  // The plan stays to be cut by.
  await expect(sheets(page)).toHaveCount(1);
  await button(page, 'Take it back').click();
  await expect.poll(stock).toMatch(/Warm white,sheet,"?40 in"?,"?60 in"?,2/);
  expect(await stock()).not.toContain('remnant');

  await button(page, 'Papers…').click();
  await dialog(page).getByRole('textbox', { name: 'Folder' }).fill(folder);
  await button(page, 'Write them').click();
  await expect(dialog(page)).toContainText('2 files were written');
  expect((await readdir(folder)).filter((name) => name.endsWith('.pdf'))).toHaveLength(2);
});

test('the stock keeps the user’s own columns, and a use is taken back by either button', async ({
  folder,
  openProgram,
}) => {
  const state = join(folder, '.state', 'matwright');
  const own =
    'board,kind,width,height,count,price,rack\nWarm white,sheet,32 in,40 in,3,11.00,A1\nMount board,sheet,32 in,40 in,,8.00,B2\n';
  await mkdir(state, { recursive: true });
  await writeFile(join(state, 'stock.csv'), own);
  await copyFile('resources/samples/1-sea-chart.json', join(folder, 'chart.json'));
  const { page } = await openProgram(join(folder, 'chart.json'));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sea chart of the harbour');
  await page.keyboard.press('Alt+9');
  await expect(pieces(page)).toHaveCount(1);
  await expect(pieces(page).first().locator('.arrow')).toHaveAttribute('data-top', /up|left/);
  await expect(panel(page)).toContainText('Blades: cut away from the body');
  const stock = () => readFile(join(state, 'stock.csv'), 'utf8');
  const last = page.getByRole('button', { name: 'Take the last change back' });
  await expect(last).toBeDisabled();
  const use = async () => {
    await button(page, 'Use this plan…').click();
    await button(page, 'Use it').click();
    await expect(panel(page)).toContainText('This plan is used');
    await expect.poll(stock).toContain('Warm white,sheet,32 in,40 in,2,11.00,A1\n');
    expect(await stock()).toContain('price,rack,note\n');
  };
  await use();
  await last.click();
  await expect.poll(stock).toBe(own);
  await expect(panel(page)).not.toContainText('This plan is used');
  await expect(last).toBeDisabled();
  await use();
  await button(page, 'Take it back').click();
  await expect.poll(stock).toBe(own);
  await expect(panel(page)).not.toContainText('This plan is used');
  await expect(last).toBeDisabled();
});

test('what was chosen is there again after a restart', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await panel(page).getByLabel('Aim').selectOption('Fewest new sheets');
  await panel(page).getByLabel('Trim of new sheets').fill('1/4');
  await panel(page).getByLabel('Trim of new sheets').press('Enter');
  // With 1/4 in off all round two mats of 16 in no longer lie side by side: two from one sheet, one above the other.
  await expect(sheets(page)).toHaveCount(2);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sea chart of the harbour');
  await page.keyboard.press('Alt+9');
  await expect(panel(page).getByLabel('Aim')).toHaveValue('sheets');
  await expect(panel(page).getByLabel('Trim of new sheets')).toHaveValue('1/4');
});

test('jobs, copies and pins are there again after a restart, and a file that is gone is told by name', async ({
  folder,
  openProgram,
}) => {
  const linocuts = join(folder, 'linocuts.json');
  await copyFile('resources/samples/3-nine-linocuts.json', linocuts);
  const page = await start(folder, openProgram, 2);
  await page.getByRole('button', { name: 'Add jobs' }).click();
  await dialog(page).getByRole('button', { name: 'linocuts.json' }).click();
  await button(page, 'Add it').click();
  await setCopies(page, 'Nine linocuts by the children', 3);
  await expect(pieces(page, 2)).toHaveCount(3);
  await pieces(page).nth(1).click();
  await button(page, 'Pin it where it lies').click();
  await expect.poll(() => pinned(page)).toHaveLength(1);
  const before = await pinned(page);

  await again(page);
  await expect(panel(page).getByLabel('Copies of Nine linocuts by the children')).toHaveValue('3');
  await expect(panel(page).getByLabel('Copies of Sea chart of the harbour')).toHaveValue('2');
  await expect(pieces(page, 2)).toHaveCount(3);
  await expect.poll(() => pinned(page)).toEqual(before);

  await rm(linocuts);
  await again(page);
  await expect(panel(page)).toContainText(`“Nine linocuts by the children” is not planned: “${linocuts}” is not there`);
  await expect(pieces(page)).toHaveCount(2);
  await button(page, 'Take Nine linocuts by the children out').click();
  await again(page);
  await expect(pieces(page)).toHaveCount(2);
  await expect(panel(page)).not.toContainText('Nine linocuts');
});

test('a use can be taken back after a restart, on the screen and by the record that the terminal reads @desktop', async ({
  folder,
  openProgram,
}) => {
  const state = join(folder, '.state', 'matwright');
  await mkdir(state, { recursive: true });
  await writeFile(join(state, 'stock.csv'), STOCK);
  await copyFile('resources/samples/1-sea-chart.json', join(folder, 'chart.json'));
  const stock = () => readFile(join(state, 'stock.csv'), 'utf8');
  const open = async () => {
    const { page, kill } = await openProgram(join(folder, 'chart.json'));
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sea chart of the harbour');
    await page.keyboard.press('Alt+9');
    await expect(pieces(page)).toHaveCount(1);
    return { page, kill };
  };
  const { page, kill } = await open();
  await expect(button(page, 'Take the last change back')).toBeDisabled();
  await button(page, 'Use this plan…').click();
  await button(page, 'Use it').click();
  await expect.poll(stock).toContain('Warm white,sheet,32 in,40 in,2,');
  expect(parseUseRecord(await readFile(join(state, 'stock.csv.last-use.json'), 'utf8'))).toMatchObject({ ok: true });
  await kill();

  const { page: later } = await open();
  await button(later, 'Take the last change back').click();
  await expect(dialog(later)).toContainText('Warm white: takes 1 sheet 32 x 40 in; puts back');
  await button(later, 'Take it back').click();
  await expect.poll(stock).toContain('Warm white,sheet,32 in,40 in,3,');
  expect(await stock()).not.toContain('remnant');
  expect(await readdir(state)).not.toContain('stock.csv.last-use.json');
  await expect(button(later, 'Take the last change back')).toBeDisabled();
});

test('a row that another window takes out comes back only when it is asked for', async ({ folder, openProgram }) => {
  const one = await start(folder, openProgram, 1);
  const { page: two } = await openProgram(join(folder, 'chart.json'));
  await expect(two.getByRole('heading', { level: 1 })).toHaveText('Sea chart of the harbour');
  await two.keyboard.press('Alt+9');
  const row = (page: Page) => panel(page).getByRole('button', { name: /^Mount board sheet/ });
  await row(one).click();
  await dialog(one).getByRole('textbox', { name: 'Price' }).fill('9');
  await row(two).click();
  await button(two, 'Take it out of the stock…').click();
  await button(two, 'Take it out').click();
  await expect(row(two)).toHaveCount(0);

  await button(one, 'Keep').click();
  const asked = one.getByRole('dialog', { name: 'Taken out by another window' });
  await expect(asked).toContainText('“Mount board”, sheet, 32 x 40 in');
  await button(one, 'Leave it out').click();
  const stock = () => readFile(join(folder, '.state', 'matwright', 'stock.csv'), 'utf8');
  expect(await stock()).not.toContain('Mount board');
  // What was typed is still there, and can be kept after all.
  await button(one, 'Keep').click();
  await button(one, 'Add mine anew').click();
  await expect(dialog(one)).toHaveCount(0);
  expect(await stock()).toMatch(/Mount board,sheet,.*,9\b/);
});

test('columns of a file that are not taken are named before and after', async ({ folder, openProgram }) => {
  await writeFile(join(folder, 'mine.csv'), `${STOCK.split('\n')[0]!},rack,bin\nMoss,sheet,32 in,40 in,2,9.00,A1,7\n`);
  const page = await start(folder, openProgram, 1);
  await page.getByRole('button', { name: 'Take from a file…' }).click();
  await dialog(page).getByRole('button', { name: 'mine.csv' }).click();
  await dialog(page).getByRole('button', { name: 'Take it', exact: true }).click();
  const words = 'Not taken, since there is no place for them here: the columns “rack” and “bin”.';
  await expect(dialog(page)).toContainText(words);
  await button(page, 'They stay').click();
  await expect(dialog(page).getByRole('button', { name: 'All right' })).toBeVisible();
  await button(page, 'All right').click();
  await expect(page.getByRole('status')).toContainText(words);
  await expect(panel(page)).toContainText('3 rows');
});
