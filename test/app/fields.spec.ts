/** Fields and panels: what is typed stays, mistakes are told beside the field, and every edit can be taken back and done again. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const job = {
  format: 'matwright-job',
  version: 1,
  title: 'Lady fern',
  units: 'in',
  pictures: [{ title: 'Lady fern', size: '8 x 10' }],
  frame: { size: '11 x 14' },
};

async function start(
  folder: string,
  open: (...words: string[]) => Promise<{ page: Page }>,
  more: object = {},
): Promise<Page> {
  const path = join(folder, 'fern.json');
  await writeFile(path, JSON.stringify({ ...job, ...more }));
  const { page } = await open(path);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lady fern');
  return page;
}

const view = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name }).click();

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(text);
  await field.press('Enter');
}

test('a length is read in every notation and kept as it was typed, through save and open', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await view(page, 'Frame');
  for (const [typed, echo] of [
    ['11/4', '= 2 3/4 in'],
    ['1-5/8', '= 1 5/8 in'],
    ['1½"', '= 1 1/2 in'],
    ['38,1 mm', '= 1 1/2 in'],
  ] as const) {
    await type(page, 'Face width', typed);
    await expect(page.getByLabel('Face width', { exact: true })).toHaveValue(typed);
    await expect(page.getByLabel('Face width', { exact: true })).toHaveAccessibleDescription(new RegExp(echo));
  }
  await page.keyboard.press('Control+s');
  await expect(page.getByRole('status').filter({ hasText: /^Saved .*fern\.json\./ })).toBeVisible();
  const saved = JSON.parse(await readFile(join(folder, 'fern.json'), 'utf8')) as { frame: object };
  expect(saved).toEqual({ ...job, frame: { size: '11 x 14', mouldingWidth: '38,1 mm' } });
  await page.reload();
  await view(page, 'Frame');
  await expect(page.getByLabel('Face width', { exact: true })).toHaveValue('38,1 mm');
});

test('a bare number means the unit that is shown, and showing another changes nothing', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await view(page, 'Frame');
  await type(page, 'Face width', '1 1/2');
  await page.keyboard.press('Alt+u');
  await expect(page.getByLabel('Face width', { exact: true })).toHaveValue('1 1/2 in');
  await type(page, 'Rabbet lip', '7');
  await expect(page.getByLabel('Rabbet lip', { exact: true })).toHaveValue('7 mm');
  for (let turn = 0; turn < 30; turn += 1) await page.keyboard.press('Alt+u');
  await page.keyboard.press('Control+s');
  await expect(page.getByRole('status').filter({ hasText: 'Saved' })).toBeVisible();
  const saved = JSON.parse(await readFile(join(folder, 'fern.json'), 'utf8')) as { frame: object };
  expect(saved.frame).toEqual({ size: '11 x 14', mouldingWidth: '1 1/2', lip: '7 mm' });
});

test('what cannot be read is told beside the field, kept, and can be saved', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await view(page, 'Frame');
  const field = page.getByLabel('Face width', { exact: true });
  await field.fill('1,000');
  await expect(page.getByText('1,000 could be 1000 or 1')).toBeVisible();
  await field.press('Escape');
  await expect(field).toHaveValue('');
  await type(page, 'Face width', '1.5/8');
  await expect(field).toHaveValue('1.5/8');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByRole('button', { name: '1 to mend before cutting' })).toBeVisible();
  await expect(page.getByText('This cannot be cut as it stands')).toBeVisible();
  await page.keyboard.press('Control+s');
  await expect(page.getByRole('status').filter({ hasText: 'with 1 thing in it that cannot be cut yet' })).toBeVisible();
  await page.reload();
  await view(page, 'Frame');
  await expect(field).toHaveValue('1.5/8');
  await view(page, 'Cutting');
  await page.keyboard.press('F8');
  await page.getByRole('button', { name: /^Go to it/ }).click();
  await expect(field).toBeFocused();
});

test('a picture larger than the frame is told with what would fit', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await type(page, 'Sheet', '16x20"');
  await expect(page.getByText(/need more than .* but the frame has 11 in/).first()).toBeVisible();
  for (const text of ['-8 x 10', '0 x 0', '99999 x 4', '8', 'x', '🖼 x 🖼']) {
    await type(page, 'Sheet', text);
    await expect(page.getByLabel('Sheet', { exact: true })).toHaveValue(text);
    await expect(page.getByRole('button', { name: /to mend before cutting/ })).toBeVisible();
  }
});

test('odd titles stay within their place', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  const title = page.getByRole('region', { name: 'The job' }).getByLabel('Title');
  await title.fill('🌿'.repeat(20) + 'fern '.repeat(600));
  await title.press('Enter');
  expect((await title.inputValue()).length).toBe(200);
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(1280);
});

test('arrow keys go along the step, and one undo takes all of them back', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await view(page, 'Frame');
  const field = page.getByLabel('Rabbet lip', { exact: true });
  await field.focus();
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('ArrowUp');
  await expect(field).toHaveValue('7/16');
  await page.keyboard.press('Shift+ArrowDown');
  await expect(field).toHaveValue('-1/16');
  await page.keyboard.press('Control+z');
  await expect(field).toHaveValue('');
});

test('everything undone and done again is just what it was', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await page.getByRole('button', { name: 'Add a picture' }).click();
  await type(page, 'Sheet', '5 x 7');
  await page.getByText('Shows paper', { exact: true }).click();
  await page.getByText('Each its own', { exact: true }).click();
  await view(page, 'Frame');
  await page.getByText('To fit', { exact: true }).click();
  await page.getByText('Ready-made', { exact: true }).click();
  await page.getByRole('combobox', { name: 'Ready-made' }).selectOption('24x36 in');
  await view(page, 'Mat');
  await page.getByLabel('Rule').selectOption('height-share');
  await page.getByRole('button', { name: 'Add a layer' }).click();
  await page.getByText('Reverse', { exact: true }).first().click();
  await view(page, 'Windows');
  await page.getByRole('button', { name: 'Column round it' }).click();
  await page.getByRole('button', { name: 'Add a window' }).click();
  await page.getByRole('menuitem', { name: 'For a title' }).click();
  await page.keyboard.press('Control+s');
  const read = async () => readFile(join(folder, 'fern.json'), 'utf8');
  await expect(page.getByRole('status').filter({ hasText: 'Saved' })).toBeVisible();
  const done = await read();
  expect(done).toContain('"use": "title"');
  const undo = page.getByRole('button', { name: /^Undo/ });
  while (await undo.isEnabled()) await undo.click();
  await page.keyboard.press('Control+s');
  await expect.poll(async () => JSON.parse(await read()) as object).toEqual(job);
  const redo = page.getByRole('button', { name: /^Redo/ });
  while (await redo.isEnabled()) await redo.click();
  await page.keyboard.press('Control+s');
  await expect.poll(read).toBe(done);
});

test('windows can be added, grouped, moved and taken away again', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram, {
    pictures: [
      { title: 'Heron', size: '4 x 5' },
      { title: 'Otter', size: '4 x 5' },
    ],
    frame: { size: '24 x 20' },
  });
  await view(page, 'Windows');
  const rows = page.getByRole('region', { name: 'Arrangement' }).getByRole('listitem');
  await expect(rows).toHaveText([/Row of 2/, /Heron/, /Otter/]);
  await page.getByRole('button', { name: 'Add a window' }).click();
  await page.getByRole('menuitem', { name: 'For a caption' }).click();
  await expect(rows).toHaveText([/Row of 3/, /Heron/, /Otter/, /Caption/]);
  await page.getByRole('button', { name: 'Up', exact: true }).click();
  await expect(rows).toHaveText([/Row of 3/, /Heron/, /Caption/, /Otter/]);
  await rows.filter({ hasText: 'Heron' }).getByRole('button').click();
  await page.getByRole('button', { name: 'Column round it' }).click();
  await rows.filter({ hasText: 'Caption' }).getByRole('button').click();
  await page.getByRole('button', { name: 'Into group' }).click();
  await expect(rows).toHaveText([/Row of 2/, /Column of 2/, /Heron/, /Caption/, /Otter/]);
  await page.getByLabel('Size', { exact: true }).fill('4 x 1/2');
  await page.getByLabel('Size', { exact: true }).press('Enter');
  await expect(page.getByRole('button', { name: /^Window B, .*4 × 1\/2 in/ })).toBeVisible();
  await page.getByRole('button', { name: 'Remove', exact: true }).click();
  await expect(rows).toHaveText([/Row of 2/, /Column of 1/, /Heron/, /Otter/]);
});

test('shares of a spread are taken as they are typed, one for each window', async ({ folder, openProgram }) => {
  const path = join(folder, 'spread.json');
  const spread = { kind: 'spread', picture: 1, count: 3, gap: '20 mm' };
  const head = { format: 'matwright-job', version: 1, title: 'Spread', units: 'mm' };
  await writeFile(
    path,
    JSON.stringify({ ...head, pictures: [{ size: '606 x 200' }], windows: spread, frame: { size: '900 x 400' } }),
  );
  const { page } = await openProgram(path);
  await page.getByRole('navigation').getByRole('button', { name: 'Windows' }).click();
  const field = page.getByLabel('Shares', { exact: true });
  await field.fill('1 : 2 : 1');
  await field.press('Enter');
  await expect(field).toHaveValue('1 : 2 : 1');
  // 606 - 2 x 3 covered - 2 x 20 of bars leaves 560.
  await expect(page.getByRole('button', { name: /^Window B,.* 280 × 194 mm/ })).toBeVisible();
  await field.fill('1 : 2');
  await expect(page.getByText('for each of the 3 windows, such as 1 : 2 : 1')).toBeVisible();
  await field.press('Tab');
  await expect(page.getByRole('button', { name: /^Window B,.* 280 × 194 mm/ })).toBeVisible();
});

test('words are part of the job while they are typed, as one step back', async ({ folder, openProgram }) => {
  const path = join(folder, 'words.json');
  const head = { format: 'matwright-job', version: 1, title: 'Words' };
  await writeFile(path, JSON.stringify({ ...head, pictures: [{ size: '8x10' }], frame: { size: '11x14' } }));
  const { page } = await openProgram(path);
  const title = page.getByLabel('Title', { exact: true }).last();
  await title.click();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('Harbour ', { delay: 20 });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Harbour/);
  await page.keyboard.type('wall', { delay: 20 });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Harbour wall');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Words');
  await title.fill('x'.repeat(300));
  await expect(page.getByText('No more than 200 characters are kept.')).toBeVisible();
});
