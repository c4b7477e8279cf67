/** Costs on the screen: the user's price list, the sheet by it, and papers with prices or without. */
import AxeBuilder from '@axe-core/playwright';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readPdf } from '../outputs/read-pdf';
import { expect, test } from './app-test';
import { button, dialog, panel, row, setHour, stage, start, takeDemo } from './costs-page';

test.setTimeout(240_000);

test('the demo prices give the total that a pencil has, and a changed price another @desktop', async ({
  folder,
  openProgram,
}) => {
  const { page } = await start(folder, openProgram);
  await expect(stage(page)).toContainText('There is no price list yet');
  await takeDemo(page);
  await expect(panel(page)).toContainText('Invented, as every price and rule here');
  // Board 11.00; moulding 2 x (16 + 20) + 8 x 2 = 88 in at 1.80 a foot: 13.20; 72 in of points at 0.60 a metre: 1.10;
  // rings 0.40, hooks 0.70; opening 4.00, layout 5.00; 4 straight cuts of 1.5 min 2.40, 15 min 6.00, 5 min 2.00: 45.80.
  await expect(row(page, 'Moulding')).toContainText('13.20');
  await expect(row(page, 'Points')).toContainText('1.10');
  await expect(row(page, 'Cutting, straight')).toContainText('2.40');
  // A tenth for overhead: 50.38. A margin of 50 %: 100.76, up to 101.00. 8 % tax of that: 8.08.
  await expect(row(page, 'Overhead')).toContainText('4.58');
  await expect(row(page, 'Margin')).toContainText('margin 50 % = markup 100 %');
  await expect(row(page, 'Sales tax')).toContainText('8.08');
  await expect(row(page, 'Total')).toContainText('EUR 109.08');

  // At 36.00 an hour the 26 minutes cost 15.60 in place of 10.40: 51.00, 56.10, 112.20, up to 112.50, tax 9.00.
  await setHour(page, 'soon');
  await expect(dialog(page)).toContainText('“soon” is not an amount');
  await dialog(page).getByLabel('Amount').fill('36');
  await button(page, 'Keep').click();
  await expect(row(page, 'Total')).toContainText('EUR 121.50');
  const kept = () => readFile(join(folder, '.state', 'matwright', 'prices.csv'), 'utf8');
  expect(await kept()).toContain('\r\nhour,36.00,,,\r\n');
  await button(page, 'Take the last change back').click();
  await expect(row(page, 'Total')).toContainText('EUR 109.08');
  expect(await kept()).toContain('\r\nhour,24.00,,,\r\n');
});

test('a line without a price stands out, and leads to where it is said', async ({ folder, openProgram }) => {
  const { page } = await start(folder, openProgram);
  await takeDemo(page);
  await panel(page).getByRole('button', { name: /^Part: points/ }).click(); // prettier-ignore
  await button(page, 'Take it out of the list…').click();
  await button(page, 'Take it out').click();
  await expect(row(page, 'Points')).toContainText('not counted');
  await expect(row(page, 'Cost')).toContainText('without points');
  await button(page, 'Points: Say its price…').click();
  await expect(dialog(page).getByLabel('Which part')).toHaveValue('points');
  await dialog(page).getByLabel('Per', { exact: true }).selectOption('m');
  await dialog(page).getByLabel('Amount').fill('0.60');
  await button(page, 'Keep').click();
  await expect(row(page, 'Total')).toContainText('EUR 109.08');
});

test('a plan of the sheets is what boards are charged by', async ({ folder, openProgram }) => {
  const { page } = await start(folder, openProgram);
  await takeDemo(page);
  await expect(panel(page)).toContainText('by the whole sheets that a job takes by itself');
  await page.keyboard.press('Alt+9');
  const copies = panel(page).getByLabel('Copies of Plain fern');
  await copies.fill('4');
  await copies.press('Enter');
  await expect(page.locator('[data-board="0"] [data-piece]')).toHaveCount(4);
  await page.keyboard.press('Alt+c');
  // Four of 16 x 20 in come from the sheet of 32 x 40 in: 2.75 each.
  await expect(row(page, 'Mat layer 1')).toContainText('2.75');
  await expect(panel(page)).toContainText('by the plan in the view Sheets, of this job with 3 more copies');
});

test('a proposal without prices holds no amount, one with prices the total, and none is written over @desktop', async ({
  folder,
  openProgram,
}) => {
  const { page } = await start(folder, openProgram);
  await takeDemo(page);
  await button(page, 'Papers…').click();
  await dialog(page).getByLabel('Proposal for the customer, without prices (PDF)').check();
  await dialog(page)
    .getByLabel(/Cost sheet for the shop/)
    .check();
  await button(page, 'Write them').click();
  await expect(dialog(page)).toContainText('3 files were written');
  const words = async (ending: string) => {
    const { pages } = readPdf(await readFile(join(folder, `plain-fern-${ending}.pdf`)));
    return pages.flatMap((one) => one.words.map(({ text }) => text)).join(' ');
  };
  const without = await words('proposal-without-prices');
  expect(without).toContain('Soft white');
  expect(without).not.toMatch(/EUR|\d\.\d\d/);
  expect(await words('proposal')).toContain('EUR 109.08');
  expect(await words('cost-sheet')).toContain('EUR 109.08');
  await button(page, 'Done').click();
  await button(page, 'Papers…').click();
  await button(page, 'Write them').click();
  await expect(dialog(page)).toContainText('is already there');
  await button(page, 'Write over them').click();
  await expect(dialog(page)).toContainText('3 files were written');
});

test('a file is told its faults by line, and a list at odds with itself says so at its row', async ({
  folder,
  openProgram,
}) => {
  const { page } = await start(folder, openProgram);
  await writeFile(join(folder, 'bad.csv'), 'what,value\ncurrency,EUR\nhour,soon\n');
  await writeFile(join(folder, 'mine.csv'), 'what;value;per\ncurrency;CHF\ncut straight;2 min;cut\n');
  const take = async (name: string) => {
    await button(page, 'Take from a file…').click();
    await dialog(page).getByRole('button', { name }).click();
    await button(page, 'Take it').click();
  };
  await take('bad.csv');
  await expect(dialog(page)).toContainText('Line 3, column “value”: “soon” is not an amount');
  await page.keyboard.press('Escape');
  await take('mine.csv');
  await expect(panel(page)).toContainText('2 rows');
  await expect(panel(page).getByRole('listitem').filter({ hasText: 'Cut straight' })).toContainText('needs a row “hour” beside it'); // prettier-ignore
  await expect(stage(page)).toContainText('lacks something, or is at odds with itself');
  await button(page, 'Add to Labour').click();
  await expect(dialog(page).getByLabel('About')).toHaveValue('hour');
  await dialog(page).getByLabel('Amount').fill('60');
  await button(page, 'Keep').click();
  // Four cuts of 2 min at 60.00 an hour.
  await expect(row(page, 'Cutting, straight')).toContainText('8.00');
  await expect(row(page, 'Total')).toContainText('CHF');

  await button(page, 'Add to Overhead and earnings').click();
  await dialog(page).getByLabel('About').selectOption('markup');
  await dialog(page).getByLabel('Percent').fill('100');
  await button(page, 'Keep').click();
  await expect(row(page, 'Markup')).toContainText('markup 100 % = margin 50 %');
  await button(page, 'Add to Overhead and earnings').click();
  await dialog(page).getByLabel('About').selectOption('margin');
  await dialog(page).getByLabel('Percent').fill('20');
  await expect(dialog(page)).toContainText('It takes the place of your markup');
  await button(page, 'Keep').click();
  await expect(row(page, 'Margin')).toContainText('margin 20 % = markup 25 %');
  await expect(row(page, 'Markup')).toHaveCount(0);
  await expect(page.getByRole('status').filter({ hasText: 'in your price list' })).toHaveText('“Margin” is in your price list, in the place of “Markup”, 100 %. “Take the last change back” brings that again.'); // prettier-ignore
  await button(page, 'Take the last change back').click();
  await expect(row(page, 'Markup')).toContainText('markup 100 % = margin 50 %');
});

test('a row that is at odds with the others is refused at its field, which says what would be right', async ({
  folder,
  openProgram,
}) => {
  const { page } = await start(folder, openProgram);
  await takeDemo(page);
  await panel(page).getByRole('button', { name: /^Rounding / }).click(); // prettier-ignore
  await dialog(page).getByLabel('Rule').fill('up to 0.003');
  await button(page, 'Keep').click();
  await expect(dialog(page)).toContainText('EUR has 2 decimals (ISO 4217), and nothing can be rounded to 0.003; the least is 0.01.'); // prettier-ignore
  await dialog(page).getByLabel('Rule').fill('up to 0.05');
  await button(page, 'Keep').click();
  await expect(row(page, 'Total')).toBeVisible();

  const charge = async (how: string) => {
    await panel(page).getByRole('button', { name: /^Board charged / }).click(); // prettier-ignore
    await dialog(page).getByLabel('Choice').selectOption(how);
    await button(page, 'Keep').click();
  };
  await charge('by area');
  await button(page, 'Add to Boards and moulding').click();
  await dialog(page).getByLabel('Amount').fill('12.40');
  await button(page, 'Keep').click();
  await expect(row(page, 'Total')).toBeVisible();
  // A price for an area is of no use by united inches; its row has the field to mend it.
  await charge('by united inches');
  await panel(page).getByRole('button', { name: /^Board 12\.40/ }).click(); // prettier-ignore
  const per = dialog(page).getByLabel('Per', { exact: true });
  await expect(per).toHaveValue('m2');
  await expect(per.getByRole('option')).toHaveText(['united in', 'm2']);
  await expect(dialog(page)).toContainText('a price for m2 has no use then; it would be for united in');
  await dialog(page).getByLabel('Amount').fill('0.35');
  await button(page, 'Keep').click();
  await expect(dialog(page)).toBeVisible();
  await per.selectOption('united in');
  await button(page, 'Keep').click();
  // 16 + 20 at 0.35.
  await expect(row(page, 'Mat layer 1')).toContainText('12.60');
});

test('a price list that can’t be read says that, and nothing of what it would hold', async ({
  folder,
  openProgram,
}) => {
  await mkdir(join(folder, '.state', 'matwright'), { recursive: true });
  await writeFile(join(folder, '.state', 'matwright', 'prices.csv'), 'what,value\ncurrency,EUR\nmargin,oops\n');
  const { page } = await start(folder, openProgram);
  await expect(panel(page)).toContainText('“oops”');
  await expect(stage(page)).toContainText('The price list can’t be read');
  await expect(panel(page)).not.toContainText('No row says the currency');
});

test('two windows lose nothing of one another', async ({ folder, openProgram }) => {
  const { page: one } = await start(folder, openProgram);
  await takeDemo(one);
  const { page: two } = await openProgram(join(folder, 'plain.json'));
  await two.keyboard.press('Alt+c');
  await expect(panel(two)).toContainText('24 rows');
  await setHour(one, '36');
  await expect(row(one, 'Total')).toContainText('EUR 121.50');
  await panel(two).getByRole('button', { name: /^Layout / }).click(); // prettier-ignore
  await dialog(two).getByLabel('Amount').fill('6');
  await button(two, 'Keep').click();
  // Both count: 52.00, 57.20, 114.40, up to 114.50, tax 9.16.
  await expect(row(two, 'Total')).toContainText('EUR 123.66');
});

test('by key alone: prices are taken, one is changed, and the sheet is reached', async ({ folder, openProgram }) => {
  const { page } = await start(folder, openProgram);
  const tabTo = async (name: RegExp) => {
    for (let step = 0; step < 60; step += 1) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? ''); // prettier-ignore
      if (name.test(at.trim())) return;
    }
    throw new Error(`Tab does not come to ${name.source}`);
  };
  await tabTo(/^Take the invented demo prices/);
  await page.keyboard.press('Enter');
  await expect(dialog(page)).toBeVisible();
  await expect(button(page, 'Take the invented prices')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(panel(page)).toContainText('24 rows');
  await tabTo(/^Hour/);
  await page.keyboard.press('Enter');
  await page.keyboard.type('36');
  await page.keyboard.press('Enter');
  await expect(row(page, 'Total')).toContainText('EUR 121.50');
  await tabTo(/^Costs$/);
  await page.keyboard.press('End');
  await expect(row(page, 'Total')).toBeInViewport();
});

for (const theme of ['light', 'dark'] as const) {
  test(`the costs are clean in ${theme}, and nothing is cut off when narrow or large`, async ({
    folder,
    openProgram,
  }) => {
    const { page } = await start(folder, openProgram);
    await page.emulateMedia({ colorScheme: theme, reducedMotion: 'reduce' });
    const clean = async () => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200)}`)).toEqual([]);
    };
    await clean();
    await takeDemo(page);
    await panel(page).getByRole('button', { name: /^Part: points/ }).click(); // prettier-ignore
    await clean();
    await button(page, 'Take it out of the list…').click();
    await button(page, 'Take it out').click();
    await expect(row(page, 'Points')).toContainText('not counted');
    await clean();
    await panel(page).getByText('Ready-made', { exact: true }).click();
    await expect(row(page, 'Total')).toBeVisible();
    await clean();
    await panel(page).getByText('This job', { exact: true }).click();
    for (const [width, scale] of [[1920, 1], [1280, 2], [900, 1], [900, 2]] as const) {
      await page.setViewportSize({ width, height: 800 });
      await page.evaluate((times) => (document.documentElement.style.fontSize = `${times * 100}%`), scale);
      await expect(row(page, 'Total')).toBeVisible();
      const over = await stage(page).evaluate((one) => {
        const scroller = one.querySelector('[role="group"]')!;
        return scroller.scrollWidth - scroller.clientWidth;
      });
      expect(over, `${width} px at ${scale}`).toBeLessThanOrEqual(0);
    } // prettier-ignore
    await clean();
  });
}
