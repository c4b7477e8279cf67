/** Frame, package and hanging on the screen: a frame from the shelf, a package made to fit, a wire that follows its fields. */
import type { Page } from '@playwright/test';
import { expect, test } from './app-test';

const panel = (page: Page) => page.getByRole('main');

test.beforeEach(async ({ openProgram }) => {
  const { page } = await openProgram('resources/samples/2-fern-cyanotype.json');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lady fern, cyanotype');
});

const only = (context: { pages: () => Page[] }) => context.pages().at(-1)!;

async function type(page: Page, label: string, text: string): Promise<void> {
  await panel(page).getByLabel(label, { exact: true }).first().fill(text);
  await panel(page).getByLabel(label, { exact: true }).first().press('Enter');
}

test('a frame of the shelf is taken, and one step back brings the old one', async ({ context }) => {
  const page = only(context);
  await page.keyboard.press('Alt+2');
  const others = panel(page).locator('li:has(summary)').filter({ hasNotText: '(this job)' });
  const title = (await others.first().locator('.title').textContent()) ?? '';
  const line = panel(page).locator('li:has(summary)').filter({ hasText: title }).first();
  await line.locator('summary').click();
  await line.getByRole('button', { name: 'Take this frame' }).click();
  await expect(line).toContainText('(this job)');
  await page.keyboard.press('Control+z');
  await expect(line).not.toContainText('(this job)');
});

test('a package that is too deep is made to fit by its own remedy', async ({ context }) => {
  const page = only(context);
  await page.keyboard.press('Alt+6');
  await type(page, 'Rabbet depth', '3/8 in');
  await expect(panel(page)).toContainText('It does not go into the rabbet');
  const remedies = panel(page).getByRole('listitem').filter({ hasText: 'then it fits' });
  await remedies.getByRole('button', { name: 'Do it' }).first().click();
  await expect(panel(page)).not.toContainText('It does not go into the rabbet');
  await page.keyboard.press('Control+z');
  await expect(panel(page)).toContainText('It does not go into the rabbet');
});

test('the wire follows hooks and rings, and a row of frames its wall', async ({ context }) => {
  const page = only(context);
  await page.keyboard.press('Alt+7');
  const row = (label: string) => panel(page).locator('dt', { hasText: label }).first().locator('+ dd');
  const before = await row('Cut').textContent();
  await panel(page).getByText('One hook', { exact: true }).click();
  await expect(row('Cut')).not.toHaveText(before ?? '');
  await type(page, 'Weighed', '10 lb');
  await expect(row('Weight')).toContainText('10.0 lb');
  await type(page, 'Wall width', '108 in');
  await panel(page).getByRole('button', { name: 'Hang another frame' }).click();
  await expect(panel(page).getByRole('img', { name: /The wall with 2 frames/ })).toBeVisible();
  await expect(row('At most')).toContainText('edge to edge of the wall');
});
