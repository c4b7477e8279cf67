/** A whole show on the screen: from a list, with fewer or more sizes, to a job for each picture. */
import { copyFile, mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from './app-test';

test('a list becomes frames, what fewer sizes cost, and a job for each picture', async ({ openProgram, folder }) => {
  await copyFile('resources/samples/library-show.csv', join(folder, 'library-show.csv'));
  await mkdir(join(folder, 'jobs'));
  await writeFile(join(folder, 'wrong.csv'), 'title,width,height\nHeron,8,10 in\nOwl,8 in,\n');
  const { page } = await openProgram('resources/samples/library-show-mat.json');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Mat for the library show');
  await page.keyboard.press('Alt+8');
  await page.getByRole('button', { name: 'Plan a whole show…' }).click();
  const dialog = page.getByRole('dialog', { name: 'A whole show' });
  const write = dialog.getByRole('button', { name: 'Write the jobs and lists…' });
  const take = async (name: string) => {
    await dialog.getByRole('button', { name: 'Choose the list (CSV)…' }).click();
    await page.getByRole('button', { name }).click();
    await page.getByRole('button', { name: 'Take it', exact: true }).click();
  };
  await expect(write).toBeDisabled();
  await take('wrong.csv');
  await expect(dialog).toContainText('Line 3, column “height”: A picture needs it, and the cell is empty');
  await expect(write).toBeDisabled();
  await take('library-show.csv');
  await expect(dialog).toContainText(/Chosen: \d sizes for \d+ of 24 pictures/);
  await dialog.getByRole('radio', { name: '2 sizes' }).check();
  await expect(dialog).toContainText(/Chosen: 2 sizes/);
  await write.click();
  await page.getByRole('dialog', { name: 'Where the jobs go' }).getByRole('button', { name: 'jobs' }).click();
  await page.getByRole('button', { name: 'Write here' }).click();
  await expect.poll(async () => (await readdir(join(folder, 'jobs'))).length).toBeGreaterThan(10);
  const names = await readdir(join(folder, 'jobs'));
  expect(names).toEqual(expect.arrayContaining(['show-list.csv', 'frames-to-buy.csv']));
  const job = names.find((name) => name.endsWith('Maidenhair fern.json'));
  expect(JSON.parse(await readFile(join(folder, 'jobs', job ?? ''), 'utf8'))).toMatchObject({
    format: 'matwright-job',
    pictures: [{ title: 'Maidenhair fern' }],
  });
});
