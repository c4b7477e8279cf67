/** How many windows fit a blank, asked on the screen, and laid out. */
import { expect, test } from './app-test';

test('counts at every letter, says what would give more, and lays them out in one step', async ({ openProgram }) => {
  const { page } = await openProgram('resources/samples/3-nine-linocuts.json');
  await page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name: 'Windows' }).click();
  await page.getByRole('button', { name: 'How many fit…' }).click();
  const dialog = page.getByRole('dialog', { name: 'How many fit' });
  // The linocuts' windows are 106 mm square, on 500 x 600 mm: (400 + 25) / 131 and (500 + 25) / 131.
  await expect(dialog.getByText('12 fit: 3 columns x 4 rows, upright.')).toBeVisible();
  await expect(dialog.getByText('9 pictures have windows of this size')).toBeVisible();
  await dialog.getByRole('textbox', { name: 'Window' }).fill('4 x 6 in');
  await dialog.getByRole('textbox', { name: 'Blank' }).fill('16 x 20 in');
  await dialog.getByLabel('Gap').fill('1/2 in');
  await dialog.getByLabel('Least border').fill('2 in');
  // Upright or turned 2 x 2 and 1 x 3; but 4 + 1/2 + 6 is less than 12, and then 2 stand beside 3.
  await expect(dialog.getByText(/^5 fit: 1 column x 2 rows upright beside 1 column x 3 rows turned/)).toBeVisible();
  await dialog.getByLabel('Least border').fill('9 in');
  await expect(dialog.getByRole('alert')).toContainText('nothing is left for windows');
  await expect(dialog.getByRole('button', { name: 'Lay them out' })).toBeDisabled();
  await dialog.getByLabel('Least border').fill('2 in');
  await dialog.getByRole('button', { name: 'Lay them out' }).click();
  await expect(page.getByText('5 windows laid out in place of those that were there')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Column of 3', exact: true })).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Grid of 9', exact: true })).toBeVisible();
});
