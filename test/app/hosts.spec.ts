/** What concerns the host, on both: opening a named job, saving, another's change, export, closing, and work kept through a crash. */
import { execFileSync } from 'node:child_process';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const job = {
  format: 'matwright-job',
  version: 1,
  title: 'Lady fern',
  units: 'in',
  pictures: [{ title: 'Lady fern', size: '8 x 10 in' }],
  frame: { size: '11 x 14 in' },
};

async function writeJob(folder: string): Promise<string> {
  const path = join(folder, 'lady fern.json');
  await writeFile(path, JSON.stringify(job));
  return path;
}

const titleIn = async (path: string) => (JSON.parse(await readFile(path, 'utf8')) as { title: string }).title;
const heading = (page: Page) => page.getByRole('heading', { level: 1 });

async function retitle(page: Page, title: string): Promise<void> {
  await expect(heading(page)).toHaveText('Lady fern');
  const field = page.getByRole('region', { name: 'The job' }).getByLabel('Title');
  await field.fill(title);
  await field.press('Tab');
  await expect(heading(page)).toHaveText(title);
}

test('opens the job it was started with, and saves it @desktop', async ({ folder, openProgram }) => {
  const path = await writeJob(folder);
  const { page } = await openProgram(path);
  await expect(heading(page)).toHaveText('Lady fern');
  await retitle(page, 'Hart’s tongue');
  await page.keyboard.press('Control+s');
  await expect.poll(() => titleIn(path)).toBe('Hart’s tongue');
  expect((await readdir(folder)).filter((name) => !name.startsWith('.'))).toEqual(['lady fern.json']);
});

test('never writes over what another program changed @desktop', async ({ folder, openProgram }) => {
  const path = await writeJob(folder);
  const { page } = await openProgram(path);
  await retitle(page, 'Mine');
  await writeFile(path, JSON.stringify({ ...job, title: 'Theirs' }));
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'The file has changed on disk' });
  await expect(dialog).toContainText(path);
  expect(await titleIn(path)).toBe('Theirs');
  await dialog.getByRole('button', { name: 'Write over it' }).click();
  await expect.poll(() => titleIn(path)).toBe('Mine');
});

test('exports into a folder, and asks before it writes over anything @desktop', async ({ folder, openProgram }) => {
  const { page } = await openProgram(await writeJob(folder));
  const target = join(folder, 'to cut');
  await mkdir(target);
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Export' });
  await dialog.getByLabel('Folder', { exact: true }).fill(target);
  await dialog.getByRole('button', { name: 'Export', exact: true }).click();
  await expect(dialog.getByRole('status')).toContainText('3 files were written');
  const files = (await readdir(target)).sort();
  expect(files).toEqual(['lady-fern-cut-list.csv', 'lady-fern-proof.svg', 'lady-fern-template.pdf']);
  execFileSync('qpdf', ['--check', join(target, 'lady-fern-template.pdf')]);

  await dialog.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  await dialog.getByLabel('Folder', { exact: true }).fill(target);
  await dialog.getByRole('button', { name: 'Export', exact: true }).click();
  await expect(dialog.getByRole('alert')).toContainText('already there');
  await dialog.getByRole('button', { name: 'Write over them' }).click();
  await expect(dialog.getByRole('status')).toContainText('3 files were written');
  expect((await readdir(target)).sort()).toEqual(files);
});

test('says which folder is missing, and writes nothing', async ({ folder, openProgram }) => {
  const { page } = await openProgram(await writeJob(folder));
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Export' });
  await dialog.getByLabel('Folder', { exact: true }).fill(join(folder, 'none'));
  await dialog.getByRole('button', { name: 'Export', exact: true }).click();
  await expect(dialog.getByRole('alert')).toContainText(join(folder, 'none'));
});

test('saves and opens through the screen’s own chooser', async ({ folder, openProgram }) => {
  const { page } = await openProgram(await writeJob(folder));
  await expect(page).toHaveTitle(/^Lady fern/);
  await page.keyboard.press('Control+Shift+s');
  const saving = page.getByRole('dialog', { name: 'Save the job as' });
  await saving.getByLabel('Name').fill('second.json');
  await saving.getByRole('button', { name: 'Save', exact: true }).click();
  await expect.poll(() => titleIn(join(folder, 'second.json')).catch(() => '')).toBe('Lady fern');
  await page.keyboard.press('Control+o');
  const opening = page.getByRole('dialog', { name: 'Open a job' });
  await opening.getByRole('button', { name: 'lady fern.json' }).click();
  await opening.getByRole('button', { name: 'Open', exact: true }).click();
  await expect(page).toHaveTitle(/^Lady fern/);
});

test('saves into the folder that stands typed in the chooser, or not at all', async ({ folder, openProgram }) => {
  const { page } = await openProgram(await writeJob(folder));
  const target = join(folder, 'show');
  await mkdir(target);
  await page.keyboard.press('Control+Shift+s');
  const saving = page.getByRole('dialog', { name: 'Save the job as' });
  await saving.getByRole('textbox', { name: 'Folder' }).fill(join(folder, 'not there'));
  await saving.getByLabel('Name').fill('kept.json');
  await saving.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(saving.getByRole('alert')).toContainText('is not there');
  await saving.getByRole('textbox', { name: 'Folder' }).fill(target);
  await saving.getByRole('button', { name: 'Save', exact: true }).click();
  await expect.poll(() => titleIn(join(target, 'kept.json')).catch(() => '')).toBe('Lady fern');
  expect(await readdir(folder)).not.toContain('kept.json');
  await expect(page.getByText(`Saved ${join(target, 'kept.json')}.`)).toBeVisible();
});

test('offers unit and paper of the job on the screen, whatever was exported before', async ({
  folder,
  openProgram,
}) => {
  const { page } = await openProgram(await writeJob(folder));
  const dialog = page.getByRole('dialog', { name: 'Export' });
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  await dialog.getByLabel('Folder', { exact: true }).fill(folder);
  await dialog.getByRole('button', { name: 'Export', exact: true }).click();
  await dialog.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.getByRole('button', { name: 'Millimetres' }).click();
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  await expect(dialog.getByRole('radio', { name: 'mm' })).toBeChecked();
  await expect(dialog.getByLabel('Paper')).toHaveValue('a4');
});

test('hands the job over when the program behind the screen is gone', async ({ folder, openProgram }) => {
  const { page, kill } = await openProgram(await writeJob(folder));
  await retitle(page, 'Made after the end');
  await kill();
  await page.keyboard.press('Control+s');
  const telling = page.getByRole('dialog', { name: 'The job could not be saved' });
  await expect(telling).toContainText('does not answer');
  const coming = page.waitForEvent('download');
  await telling.getByRole('button', { name: 'Keep a copy' }).click();
  const copy = join(folder, 'copy.json');
  await (await coming).saveAs(copy);
  expect(await titleIn(copy)).toBe('Made after the end');
});

test('keeps unsaved work when it is killed, and offers it again @desktop', async ({ folder, openProgram }) => {
  const path = await writeJob(folder);
  const first = await openProgram(path);
  await retitle(first.page, 'Not saved yet');
  const kept = join(folder, '.state', 'matwright', 'unsaved');
  await expect
    .poll(() =>
      readdir(kept).then(
        (names) => names.length,
        () => 0,
      ),
    )
    .toBe(1);
  await first.kill();
  expect(await titleIn(path)).toBe('Lady fern');

  const { page } = await openProgram();
  const dialog = page.getByRole('dialog', { name: 'Unsaved work was kept' });
  await dialog.getByRole('button', { name: 'Open Not saved yet' }).click();
  await expect(heading(page)).toHaveText('Not saved yet');
  await page.keyboard.press('Control+s');
  // What lies in the file now is not known to be what was opened then, so it is asked about.
  await page.getByRole('button', { name: 'Write over it' }).click();
  await expect.poll(() => titleIn(path)).toBe('Not saved yet');
  await expect.poll(() => readdir(kept)).toEqual([]);
});

test('works from the desktop’s menu and dialogs @desktop-only', async ({ folder, openProgram }) => {
  const path = await writeJob(folder);
  const { page, desktop } = await openProgram();
  // The demo job is there, so the screen hears the menu.
  await expect(heading(page)).not.toHaveText('Untitled');
  await desktop!.act('answer', { canceled: false, filePaths: [path] });
  await desktop!.act('choose', 'Open…');
  await expect(heading(page)).toHaveText('Lady fern');
  await retitle(page, 'Shield fern');
  await desktop!.act('choose', 'Undo');
  await expect(heading(page)).toHaveText('Lady fern');
  await desktop!.act('choose', 'Redo');
  const second = join(folder, 'second.json');
  await desktop!.act('answer', { canceled: false, filePath: second });
  await desktop!.act('choose', 'Save as…');
  await expect.poll(() => titleIn(second).catch(() => '')).toBe('Shield fern');
  expect(await titleIn(path)).toBe('Lady fern');
});

test('asks about unsaved work before the window goes @desktop-only', async ({ folder, openProgram }) => {
  const path = await writeJob(folder);
  const { page, desktop } = await openProgram(path);
  await retitle(page, 'Changed');
  await desktop!.act('close');
  const dialog = page.getByRole('dialog', { name: 'Save the changes first?' });
  await dialog.getByRole('button', { name: 'Stay here' }).click();
  await expect(dialog).toBeHidden();
  await expect(heading(page)).toHaveText('Changed');
  await desktop!.act('close');
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  expect(await desktop!.ended).toBe(0);
  expect(await titleIn(path)).toBe('Changed');
  expect(await readdir(join(folder, '.state', 'matwright', 'unsaved')).catch(() => [])).toEqual([]);
});
