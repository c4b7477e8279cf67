/** Costs on the screen: the user's price list, the sheet by it, variants side by side, and papers with prices or without. */
import AxeBuilder from '@axe-core/playwright';
import { execFileSync } from 'node:child_process';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { readPdf } from '../outputs/read-pdf';
import { expect, test } from './app-test';

test.setTimeout(240_000);

const panel = (page: Page) => page.getByRole('main');
const dialog = (page: Page) => page.getByRole('dialog');
const stage = (page: Page) => page.getByRole('region', { name: 'What it costs' });
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const row = (page: Page, name: string) => stage(page).getByRole('row', { name: new RegExp(`^${name} `) });

/** 16 x 20 in of a moulding 2 in wide; nothing but mat, moulding, points, rings and hooks. */
const PLAIN = {
  format: 'matwright-job',
  version: 1,
  title: 'Plain fern',
  pictures: [{ size: '8 x 10 in' }],
  frame: { size: '16 x 20 in', allowance: 0, lip: 0, mouldingWidth: '2 in', name: 'Ash' },
  mat: { layers: [{ board: 'Soft white' }] },
  package: {
    mountBoard: { without: true },
    backing: { material: 'none' },
    dustCover: false,
    glazing: { material: 'none' },
    hinging: { method: 'none' },
  },
  hanging: { hanger: 'rings on hooks' },
} as const;
/** The same with a second layer: cut from the same sheet, with four straight cuts more. */
const DOUBLE = { ...PLAIN, mat: { layers: [{ board: 'Soft white' }, { board: 'Soft white', reveal: '1/4 in' }] } };

const SHELF = `kind,name,width,height,face,load,price,per
frame,Oak 16x20,16 in,20 in,,,18.00,
moulding,Ash,,,2 in,,1.80,ft
board,Soft white,32 in,40 in,,,11.00,sheet
ring,Ring,,,,20 lb,0.20,
hook,Hook,,,,30 lb,0.35,
`;

/** The program with a job and a shelf, at its costs. */
async function start<O extends { readonly page: Page }>(
  folder: string,
  open: (...words: string[]) => Promise<O>,
  shelf = SHELF,
): Promise<O> {
  await mkdir(join(folder, '.state', 'matwright'), { recursive: true });
  await writeFile(join(folder, '.state', 'matwright', 'shelf.csv'), shelf);
  await writeFile(join(folder, 'plain.json'), JSON.stringify(PLAIN));
  await writeFile(join(folder, 'double.json'), JSON.stringify(DOUBLE));
  const opened = await open(join(folder, 'plain.json'));
  await expect(opened.page.getByRole('heading', { level: 1 })).toHaveText('Plain fern');
  await opened.page.keyboard.press('Alt+c');
  await expect(panel(opened.page).getByRole('heading', { name: 'Costs', exact: true })).toBeVisible();
  return opened;
}

async function takeDemo(page: Page): Promise<void> {
  await button(page, 'Take the invented demo prices…').click();
  await expect(dialog(page)).toContainText('Every price and rule in them is made up');
  await button(page, 'Take the invented prices').click();
  await expect(panel(page)).toContainText('24 rows');
}

async function setHour(page: Page, amount: string): Promise<void> {
  await panel(page).getByRole('button', { name: /^Hour / }).click(); // prettier-ignore
  await dialog(page).getByLabel('Amount').fill(amount);
  await button(page, 'Keep').click();
}

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
    await expect(panel(page).getByRole('listitem').filter({ hasText: text })).toBeVisible();
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
