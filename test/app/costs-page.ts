/** The view Costs as its tests find it: a small job with a shelf, the demo prices, and where things stand on the screen. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect } from './app-test';

export const panel = (page: Page) => page.getByRole('main');
export const dialog = (page: Page) => page.getByRole('dialog');
export const stage = (page: Page) => page.getByRole('region', { name: 'What it costs' });
export const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
export const row = (page: Page, name: string) => stage(page).getByRole('row', { name: new RegExp(`^${name} `) });

/** 16 x 20 in of a moulding 2 in wide; nothing but mat, moulding, points, rings and hooks. */
export const PLAIN = {
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
export const DOUBLE = {
  ...PLAIN,
  mat: { layers: [{ board: 'Soft white' }, { board: 'Soft white', reveal: '1/4 in' }] },
};

export const SHELF = `kind,name,width,height,face,load,price,per
frame,Oak 16x20,16 in,20 in,,,18.00,
moulding,Ash,,,2 in,,1.80,ft
board,Soft white,32 in,40 in,,,11.00,sheet
ring,Ring,,,,20 lb,0.20,
hook,Hook,,,,30 lb,0.35,
`;

/** The program with a job and a shelf, at its costs. */
export async function start<O extends { readonly page: Page }>(
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

export async function takeDemo(page: Page): Promise<void> {
  await button(page, 'Take the invented demo prices…').click();
  await expect(dialog(page)).toContainText('Every price and rule in them is made up');
  await button(page, 'Take the invented prices').click();
  await expect(panel(page)).toContainText('24 rows');
}

export async function setHour(page: Page, amount: string): Promise<void> {
  await panel(page).getByRole('button', { name: /^Hour / }).click(); // prettier-ignore
  await dialog(page).getByLabel('Amount').fill(amount);
  await button(page, 'Keep').click();
}
