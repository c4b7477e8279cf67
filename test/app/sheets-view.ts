/** The view of sheets as its tests see it: where things are on it, and what hands do there. */
import { copyFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import { expect } from './app-test';

export const panel = (page: Page) => page.getByRole('main');
export const dialog = (page: Page) => page.getByRole('dialog');
export const drawing = (page: Page) => page.getByRole('region', { name: 'The sheets and what is cut from them' });
export const pieces = (page: Page, board = 0) => drawing(page).locator(`[data-board="${board}"] [data-piece]`);
export const sheets = (page: Page, board = 0) => drawing(page).locator(`[data-sheet][data-board="${board}"] > svg`);
export const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

export const STOCK = `board,kind,width,height,count,price
Warm white,sheet,32 in,40 in,3,11.00
Mount board,sheet,32 in,40 in,,8.00
`;

/** A mat of 16 x 20 in: four come from a sheet of 32 x 40 in, and no fifth. */
export async function start(
  folder: string,
  open: (...words: string[]) => Promise<{ page: Page }>,
  copies = 3,
  stock = STOCK,
): Promise<Page> {
  await copyFile('resources/samples/1-sea-chart.json', join(folder, 'chart.json'));
  await writeFile(join(folder, 'stock.csv'), stock);
  const { page } = await open(join(folder, 'chart.json'));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sea chart of the harbour');
  await page.keyboard.press('Alt+9');
  await expect(panel(page).getByRole('heading', { name: 'Sheets', exact: true })).toBeVisible();
  await takeStock(page);
  await setCopies(page, 'Sea chart of the harbour', copies);
  await expect(pieces(page)).toHaveCount(copies);
  return page;
}

export async function takeStock(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Take from a file…' }).click();
  await dialog(page).getByRole('button', { name: 'stock.csv' }).click();
  await dialog(page).getByRole('button', { name: 'Take it', exact: true }).click();
  await expect(panel(page)).toContainText('2 rows');
}

export async function setCopies(page: Page, title: string, copies: number): Promise<void> {
  const field = panel(page).getByLabel(`Copies of ${title}`);
  await field.fill(String(copies));
  await field.press('Enter');
}

export async function middle(one: Locator): Promise<{ x: number; y: number }> {
  const { x, y, width, height } = (await one.boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
}

/** By so much on the screen, in steps as a hand makes them. */
export async function drag(page: Page, piece: Locator, by: { readonly x: number; readonly y: number }): Promise<void> {
  const from = await middle(piece);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + by.x, from.y + by.y, { steps: 6 });
  await page.mouse.up();
}

/** Of the board's pinned pieces, in inches from the sheet's lower left corner, to a hundredth. */
export async function pinned(page: Page, board = 0): Promise<string[]> {
  return drawing(page).locator(`[data-board="${board}"] [data-piece]:has(.pin)`).evaluateAll((all) =>
    all.map((one) => {
      const svg = one.closest('svg')!;
      const scale = svg.width.baseVal.value / 32;
      const body = one.querySelector<SVGRectElement>('.body')!;
      const [x, y, height] = (['x', 'y', 'height'] as const).map((name) => Number(body.getAttribute(name)));
      const inches = (pixels: number) => String(Number((pixels / scale).toFixed(2)) + 0);
      return `${inches(x!)} ${inches(svg.height.baseVal.value - y! - height!)}`;
    }),
  ); // prettier-ignore
}

/** As the user does after a restart; the file of the job on the screen is opened again. */
export async function again(page: Page): Promise<void> {
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sea chart of the harbour');
  await page.keyboard.press('Alt+9');
}
