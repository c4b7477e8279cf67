/** Files for machines, chosen and measured in the export dialog. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from './app-test';

test('writes paths for machines as the dialog says, and not while a measure cannot be', async ({
  folder,
  openProgram,
}) => {
  const { page } = await openProgram('resources/samples/2-fern-cyanotype.json');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lady fern, cyanotype');
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Export' });
  const run = dialog.getByRole('button', { name: 'Export', exact: true });
  await expect(dialog.getByText('Origin')).toBeHidden();
  for (const paper of ['Cutting template', 'Coordinates of the cuts', 'Proof picture'])
    await dialog.getByLabel(paper).uncheck();
  await expect(run).toBeDisabled();
  // Cards are printed too, without tiles.
  await dialog.getByLabel('Cut cards').check();
  await expect(dialog.getByLabel('Paper')).toBeVisible();
  await expect(dialog.getByText('Every second page')).toBeHidden();
  await dialog.getByLabel('Cut cards').uncheck();
  await expect(dialog.getByLabel('Paper')).toBeHidden();
  await dialog.getByLabel('DXF').check();
  await expect(dialog.getByLabel('Depth')).toBeHidden();
  await dialog.getByLabel('G-code').check();
  await dialog.getByLabel('Origin').selectOption('upper-right');
  await dialog.getByText('Axis C').click();
  await dialog.getByLabel('Depth').fill('5 in');
  await dialog.getByLabel('Depth').press('Enter');
  await expect(dialog.getByText('Depth must be from 0.05 mm (0.00197 in) to 50 mm (1.969 in).')).toBeVisible();
  await expect(run).toBeDisabled();
  await dialog.getByLabel('Depth').fill('2.5 mm');
  await dialog.getByLabel('Depth').press('Enter');
  await dialog.getByLabel('Feed a minute').fill('40');
  await dialog.getByLabel('Folder', { exact: true }).fill(folder);
  await run.click();
  await expect(dialog.getByRole('status')).toContainText('3 files were written');
  await expect(dialog.getByText('Keep hands clear of the moving tool.')).toBeVisible();
  await expect(dialog.getByText('Print the template')).toBeHidden();

  const names = (await readdir(folder)).filter((name) => !name.startsWith('.')).sort();
  expect(names).toEqual([
    'lady-fern-cyanotype-cuts.dxf',
    'lady-fern-cyanotype-layer-1.nc',
    'lady-fern-cyanotype-layer-2.nc',
  ]);
  const program = await readFile(join(folder, names[1] ?? ''), 'utf8');
  expect(program).toContain('upper right corner');
  // 2.5 mm and 40 in, as the job is in inches.
  expect(program).toMatch(/^G1 Z-0\.0984\d*/m);
  expect(program).toMatch(/^F40\b/m);
  expect(program).toMatch(/\bC-?\d/);
});
