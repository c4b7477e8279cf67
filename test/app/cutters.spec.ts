/** The user's own cutters on the screen: measured in a job, kept, taken again, shared between windows and files, calibrated. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const job = {
  format: 'matwright-job',
  version: 1,
  title: 'Lady fern',
  units: 'in',
  pictures: [{ title: 'Lady fern', size: '8 x 10' }],
  frame: { size: '16 x 20' },
  mat: { layers: [{ board: 'Warm white' }, { board: 'Moss' }] },
};
const listPath = (folder: string) => join(folder, '.state', 'matwright', 'cutters.json');
const keptIn = async (path: string) =>
  (JSON.parse(await readFile(path, 'utf8')) as { cutters: { name: string; reach?: string }[] }).cutters;

async function start(
  folder: string,
  open: (...words: string[]) => Promise<{ page: Page }>,
  name = 'fern.json',
  more: object = {},
): Promise<Page> {
  const path = join(folder, name);
  await writeFile(path, JSON.stringify({ ...job, ...more }));
  const { page } = await open(path);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lady fern');
  await page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name: 'Cutting' }).click();
  return page;
}

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true }).first();
  await field.fill(text);
  await field.press('Enter');
}
const said = (page: Page, words: RegExp) => page.getByRole('status').filter({ hasText: words });
const cutWith = (page: Page) => page.getByLabel('Cut with', { exact: true });
const act = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

test('a cutter is measured in a job, kept, changed, taken again and removed; the job can undo', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await expect(page.getByText('Your list: none yet')).toBeVisible();
  await act(page, 'Add a cutter').click();
  await type(page, 'Name', 'Bench cutter');
  await type(page, 'Guide reaches', '4');
  await type(page, 'Scale offset', '1/32');
  await act(page, 'Add an overcut for a board').click();
  await page.getByRole('group', { name: 'Overcut 1' }).getByLabel('Overcut', { exact: true }).fill('3/64');
  await page.keyboard.press('Enter');
  // Its measures are in the plan at once: the scale reads more, and a longer setting is beyond its reach.
  await expect(page.getByRole('rowheader', { name: /scale/ }).first()).toBeVisible();
  await expect(page.getByText(/too short for/).first()).toBeVisible();
  await act(page, 'Keep in the list').click();
  await expect(said(page, /“Bench cutter” is kept in your list/)).toBeVisible();
  await expect(page.getByText('These are the measures in your list.')).toBeVisible();
  // Every length says its unit there, since jobs in millimetres share the list.
  expect(await keptIn(listPath(folder))).toEqual([
    {
      name: 'Bench cutter',
      reach: '4 in',
      scaleOffset: '1/32 in',
      overcuts: [{ thickness: '1/16 in', overcut: '3/64 in' }],
    },
  ]);
  await type(page, 'Guide reaches', '20');
  await expect(page.getByText('In your list it has other measures.')).toBeVisible();
  await act(page, 'Take the kept one again').click();
  await expect(page.getByLabel('Guide reaches', { exact: true })).toHaveValue('4 in');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByLabel('Guide reaches', { exact: true })).toHaveValue('20');
  await act(page, 'Keep in the list').click();
  await act(page, 'Change the kept one').click();
  await expect.poll(async () => (await keptIn(listPath(folder)))[0]?.reach).toBe('20 in');
  await act(page, 'Remove from the list').click();
  await act(page, 'Take it out').click();
  await expect(said(page, /was taken out of your list/)).toBeVisible();
  expect(await keptIn(listPath(folder))).toEqual([]);
  await expect(cutWith(page).locator('option:checked')).toHaveText('Bench cutter (this job only)');
  await cutWith(page).selectOption({ label: 'None said' });
  await expect(page.getByLabel('Guide reaches', { exact: true })).toBeHidden();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByLabel('Guide reaches', { exact: true })).toHaveValue('20');
});

test('the list comes from a file and goes into one; a kept cutter is copied into the job', async ({
  folder,
  openProgram,
}) => {
  const given = {
    format: 'matwright-cutters',
    version: 1,
    cutters: [{ name: 'Long', reach: '500 mm', waste: 'left' }],
  };
  await writeFile(join(folder, 'given.json'), JSON.stringify(given));
  const page = await start(folder, openProgram);
  await act(page, 'Take from a file…').click();
  await page.getByRole('dialog').getByText('given.json').click();
  await act(page, 'Take them').click();
  await expect(said(page, /1 new in your list/)).toBeVisible();
  await cutWith(page).selectOption({ label: 'Long' });
  await expect(page.getByLabel('Guide reaches', { exact: true })).toHaveValue('500 mm');
  await page.keyboard.press('Control+s');
  await expect(said(page, /^Saved/)).toBeVisible();
  const saved = JSON.parse(await readFile(join(folder, 'fern.json'), 'utf8')) as { cutting: object };
  expect(saved.cutting).toEqual({ cutter: given.cutters[0] });
  await act(page, 'Write to a file…').click();
  await page.getByRole('dialog').getByRole('button', { name: 'Write', exact: true }).click();
  await expect(said(page, /was written to .*cutters\.json/)).toBeVisible();
  expect(await keptIn(join(folder, 'cutters.json'))).toEqual(given.cutters);
});

test('two windows lose nothing of one another, and a damaged list is told and left', async ({
  folder,
  openProgram,
}) => {
  const one = await start(folder, openProgram, 'one.json', { cutting: { cutter: { name: 'One' } } });
  const two = await start(folder, openProgram, 'two.json', { cutting: { cutter: { name: 'Two' } } });
  await act(one, 'Keep in the list').click();
  await expect(said(one, /is kept in your list/)).toBeVisible();
  // The second window has not seen the change yet.
  await act(two, 'Keep in the list').click();
  await expect(said(two, /is kept in your list/)).toBeVisible();
  expect((await keptIn(listPath(folder))).map(({ name }) => name)).toEqual(['One', 'Two']);
  // The same cutter changed by both is asked about.
  await cutWith(two).selectOption({ label: 'One' });
  await type(two, 'Guide reaches', '10');
  await act(two, 'Keep in the list').click();
  await act(two, 'Change the kept one').click();
  await expect.poll(async () => (await keptIn(listPath(folder)))[0]?.reach).toBe('10 in');
  await type(one, 'Guide reaches', '12');
  await act(one, 'Keep in the list').click();
  await act(one, 'Change the kept one').click();
  await expect(one.getByRole('dialog', { name: 'Changed by another window' })).toBeVisible();
  await act(one, 'Leave what is there').click();
  expect((await keptIn(listPath(folder)))[0]?.reach).toBe('10 in');
  // Damaged from outside.
  await mkdir(join(folder, '.state', 'matwright'), { recursive: true });
  await writeFile(listPath(folder), '{ "format": "matwright-cut');
  await one.getByRole('navigation', { name: 'Views' }).getByRole('button', { name: 'Mat', exact: true }).click();
  await one.getByRole('navigation', { name: 'Views' }).getByRole('button', { name: 'Cutting' }).click();
  await expect(one.getByRole('alert').filter({ hasText: "can't be read and is left as it is" })).toBeVisible();
  await expect(act(one, 'Keep in the list')).toBeDisabled();
  expect(await readFile(listPath(folder), 'utf8')).toBe('{ "format": "matwright-cut');
  await act(one, 'Set it aside and begin a new one').click();
  await expect(one.getByText('Your list: none yet')).toBeVisible();
  const aside = join(folder, '.state', 'matwright', 'cutters-set-aside-1.json');
  expect(await readFile(aside, 'utf8')).toBe('{ "format": "matwright-cut');
});

test('layers are cut apart or behind one another, as the panel says', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await page.getByRole('radio', { name: 'Behind' }).check({ force: true });
  await page
    .getByRole('radiogroup', { name: 'Layer', exact: true })
    .getByRole('radio', { name: '2' })
    .check({ force: true });
  await expect(page.getByText(/^Trim the board of layer 2/)).toBeVisible();
  await type(page, 'Smaller by', '3/8');
  await expect(page.getByText(/3\/8 in smaller than layer 1/)).toBeVisible();
});

test('a trial square is typed in, and gives offset and overcut in one step', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram, 'fern.json', {
    cutting: { cutter: { name: 'Bench', reach: '20 in' } },
  });
  await act(page, 'Calibrate…').click();
  const dialog = page.getByRole('dialog', { name: 'Calibrate Bench' });
  await dialog.getByRole('button', { name: /^Write the sheet/ }).click();
  await page.getByRole('dialog').last().getByRole('button', { name: 'Write', exact: true }).click();
  await expect(said(page, /was written to .*trial-square\.pdf/)).toBeVisible();
  expect((await readFile(join(folder, 'trial-square.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
  for (const [side, text] of [
    ['left', '1 31/32'],
    ['top', '1 31/32'],
    ['right', '2'],
    ['bottom', '1 15/16'],
  ] as const)
    await dialog.getByLabel(`Border ${side}`).fill(text);
  for (const corner of [1, 2, 3, 4]) await dialog.getByLabel(`Corner ${corner}`).fill('-1/64');
  await dialog.getByLabel('Overcut used').fill('1/16');
  await expect(dialog.getByText(/^Scale offset 1\/32 in: the scale must read 1\/32 in more/)).toBeVisible();
  await expect(dialog.getByText(/^Overcut for boards like this scrap: 5\/64 in/)).toBeVisible();
  await expect(dialog.getByText(/The four borders differ by 1\/16 in, more than 1\/32 in/)).toBeVisible();
  await dialog.getByLabel('Border left').fill('0');
  await expect(dialog.getByText(/A border is measured as nothing/)).toBeVisible();
  await expect(act(page, 'Put into the cutter')).toBeDisabled();
  await dialog.getByLabel('Border left').fill('1 31/32');
  await act(page, 'Put into the cutter').click();
  await expect(page.getByLabel('Scale offset', { exact: true })).toHaveValue('1/32 in');
  const overcut = page.getByRole('group', { name: 'Overcut 1' }).getByLabel('Overcut', { exact: true });
  await expect(overcut).toHaveValue('5/64 in');
  await expect(page.getByLabel('Guide reaches', { exact: true })).toHaveValue('20 in');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByLabel('Scale offset', { exact: true })).toHaveValue('');
  await expect(overcut).toBeHidden();
});
