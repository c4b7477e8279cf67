/** Costs of several jobs on the screen: together with a sum, side by side without any amount cut, and a proposal with its head. */
import { execFileSync } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readPdf } from '../outputs/read-pdf';
import { expect, test } from './app-test';
import { button, dialog, panel, row, SHELF, stage, start, takeDemo } from './costs-page';

test.setTimeout(240_000);

test('two jobs stand side by side, and ready-made against made to size @desktop', async ({ folder, openProgram }) => {
  const { page, desktop } = await start(folder, openProgram);
  await takeDemo(page);
  await panel(page).getByText('Compared', { exact: true }).click();
  await expect(stage(page)).toContainText('Add another job');
  if (desktop) await desktop.act('answer', { canceled: false, filePaths: [join(folder, 'double.json')] });
  await button(page, 'Add a job…').click();
  if (!desktop) {
    await dialog(page).getByRole('button', { name: 'double.json' }).click();
    await button(page, 'Add it').click();
  }
  // Eight cuts in place of four are 2.40 more: 48.20, 53.02, 106.04, up to 106.50, tax 8.52.
  await expect(stage(page).getByRole('columnheader')).toHaveText(['What', 'Plain fern (1)', 'Plain fern (2)']);
  await expect(row(page, 'Boards')).toHaveText(/11\.00\s*11\.00 \(same\)/);
  await expect(row(page, 'Cutting, straight')).toHaveText(/2\.40\s*4\.80 \(\+2\.40\)/);
  await expect(row(page, 'Margin')).toHaveText(/50\.38\s*53\.02 \(\+2\.64\)/);
  await expect(row(page, 'Total')).toHaveText(/109\.08\s*115\.02 \(\+5\.94\)/);

  await panel(page).getByText('Ready-made', { exact: true }).click();
  await expect(stage(page).getByRole('columnheader')).toHaveText([
    'What',
    /^Ready-made “Oak 16x20”, 16 x 20 in$/,
    /^Made to size of “Ash”, 16 x 20 in$/,
  ]);
  await expect(row(page, 'Frame')).toHaveText(/18\.00\s*13\.20 \(−4\.80\)/);
});

test('variants side by side are never cut: whole columns beside their names, the others by key', async ({
  folder,
  openProgram,
}) => {
  const more = ['Walnut', 'Elm'].map((name) => `frame,${name} 16x20,16 in,20 in,,,1180.00,\n`).join('');
  const { page } = await start(folder, openProgram, SHELF + more);
  await takeDemo(page);
  await panel(page).getByText('Ready-made', { exact: true }).click();
  await expect(stage(page).getByRole('columnheader')).toHaveCount(5);
  const region = stage(page).getByRole('group', { name: 'Side by side' });
  /** Columns that are whole in sight, and cells that are cut by an edge or by the column that stays. */
  const sight = () =>
    region.evaluate((box) => {
      const room = box.getBoundingClientRect();
      const rows = [...box.querySelectorAll('tr')].map((one) => [...one.children].map((cell) => {
        const words = document.createRange();
        words.selectNodeContents(cell);
        return words.getBoundingClientRect();
      })); // prettier-ignore
      const stays = box.querySelector('th')!.getBoundingClientRect().right;
      const isIn = ({ left, right }: DOMRect) => left >= stays - 1 && right <= room.right + 1;
      const isOut = ({ left, right }: DOMRect) => right <= stays + 1 || left >= room.right - 1;
      const cells = rows.flatMap(([, ...others]) => others);
      const names = rows.map(([name]) => name!);
      return {
        whole: rows[0]!.slice(1).flatMap((cell, index) => (isIn(cell) ? [index + 1] : [])),
        cut:
          cells.filter((cell) => !isIn(cell) && !isOut(cell)).length +
          names.filter(({ left, right }) => left < room.left - 1 || right > stays + 1).length,
      };
    });
  await expect(stage(page)).not.toContainText('in sight');
  for (const [width, scale, whole] of [[1920, 1, 4], [1280, 1, 4], [900, 1, 2], [1280, 2, 1], [900, 2, 2]] as const) {
    await page.setViewportSize({ width, height: 800 });
    await page.evaluate((times) => (document.documentElement.style.fontSize = `${times * 100}%`), scale);
    const upTo = Array.from({ length: whole }, (_, index) => index + 1);
    await expect.poll(sight, `${width} px at ${scale}`).toEqual({ whole: upTo, cut: 0 });
    if (whole === 4) continue;
    await expect(stage(page)).toContainText(`${whole === 1 ? 'Column 1' : 'Columns 1 to 2'} of 4 in sight`);
    await region.focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(sight).toEqual({ whole: upTo.map((one) => one + 1), cut: 0 });
    await page.keyboard.press('End');
    await expect.poll(sight).toEqual({ whole: upTo.map((one) => one + 4 - whole), cut: 0 });
    await expect(button(page, 'The next column')).toBeDisabled();
    await page.keyboard.press('Home');
    await expect.poll(sight).toEqual({ whole: upTo, cut: 0 });
  } // prettier-ignore
});

test('several jobs together have the sum that the terminal has, on the screen and in the proposal @desktop', async ({
  folder,
  openProgram,
}) => {
  const { page, desktop } = await start(folder, openProgram);
  await takeDemo(page);
  await panel(page).getByText('Together', { exact: true }).click();
  await expect(stage(page)).toContainText('Add another job');
  if (desktop) await desktop.act('answer', { canceled: false, filePaths: [join(folder, 'double.json')] });
  await button(page, 'Add a job…').click();
  if (!desktop) {
    await dialog(page).getByRole('button', { name: 'double.json' }).click();
    await button(page, 'Add it').click();
  }
  // One sheet of 32 x 40 in gives the three boards: a third of 11.00 and two thirds of it.
  await expect(stage(page).getByRole('row', { name: /^Mat layer 1/ })).toHaveText([/3\.67/, /7\.33/]);
  const files = ['--shelf', join(folder, '.state', 'matwright', 'shelf.csv'), '--prices', 'resources/prices.csv'];
  const jobs = [join(folder, 'plain.json'), join(folder, 'double.json')];
  const out = execFileSync(process.execPath, ['src/launch/cli.mjs', 'cost', ...jobs, ...files], { encoding: 'utf8' });
  const told = /^2 jobs together: EUR \d+\.\d\d$/m.exec(out)![0];
  await expect(stage(page).getByRole('status')).toHaveText(told);
  await button(page, 'Papers…').click();
  await button(page, 'Write them').click();
  await expect(dialog(page)).toContainText('One file was written');
  const { pages } = readPdf(await readFile(join(folder, 'plain-fern-proposal.pdf')));
  const said = pages.flatMap((one) => one.words.map(({ text }) => text)).join(' ');
  expect(said).toContain('What you get: 2 frames');
  expect(said).toContain(told);
});

test('a proposal has shop and customer at its head, which nobody has to give @desktop', async ({
  folder,
  openProgram,
}) => {
  const { page } = await start(folder, openProgram);
  await takeDemo(page);
  for (const text of ['Village library', 'Mill Lane 4, Fernham']) {
    await button(page, 'Add to Your shop').click();
    await dialog(page).getByLabel('Text').fill(text);
    await button(page, 'Keep').click();
    await expect(
      panel(page)
        .getByRole('listitem')
        .filter({ hasText: new RegExp(`^Shop.*${text}`) }),
    ).toBeVisible();
  }
  await button(page, 'Papers…').click();
  await dialog(page).getByLabel('For', { exact: true }).fill('The school by the harbour');
  await button(page, 'Write them').click();
  await expect(dialog(page)).toContainText('One file was written');
  const { pages } = readPdf(await readFile(join(folder, 'plain-fern-proposal.pdf')));
  const said = pages.flatMap((one) => one.words.map(({ text }) => text)).join(' ');
  for (const text of ['Village library', 'Mill Lane 4, Fernham', 'For The school by the harbour']) expect(said).toContain(text); // prettier-ignore
  await button(page, 'Done').click();
  // Of this job it is offered again.
  await button(page, 'Papers…').click();
  await expect(dialog(page).getByLabel('For', { exact: true })).toHaveValue('The school by the harbour');
});
