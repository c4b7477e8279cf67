/** The canvas under the hand: dragging borders, gaps and free windows, typing where the number stands, zoom and the back view. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './app-test';

const job = {
  format: 'matwright-job',
  version: 1,
  title: 'Three linocuts',
  units: 'in',
  pictures: [
    { title: 'Heron', size: '5 x 7' },
    { title: 'Otter', size: '5 x 7' },
    { title: 'Newt', size: '5 x 7' },
  ],
  frame: { size: '24 x 16' },
  windows: { kind: 'row', items: ['1', '2', '3'], gap: '1 1/2' },
  free: [{ use: 'title', title: 'Names', size: '4 x 1', at: { left: '10', bottom: '2' } }],
};

async function start(folder: string, open: (...words: string[]) => Promise<{ page: Page }>): Promise<Page> {
  const path = join(folder, 'three.json');
  await writeFile(path, JSON.stringify(job));
  const { page } = await open(path);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Three linocuts');
  return page;
}

const windowNamed = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^Window ${name},`) });
const border = (page: Page, side: string) => page.getByRole('button', { name: new RegExp(`^Border ${side}`) });
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const isDirty = (page: Page) => page.getByText('not saved in three.json');

async function boxOf(locator: Locator) {
  const box = await locator.boundingBox();
  if (!box) throw new Error('it is not on the screen');
  return box;
}

async function drag(
  page: Page,
  from: { x: number; y: number },
  by: { x: number; y: number },
  end: 'drop' | 'escape' = 'drop',
) {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let step = 1; step <= 5; step += 1)
    await page.mouse.move(from.x + (by.x * step) / 5, from.y + (by.y * step) / 5);
  if (end === 'escape') await page.keyboard.press('Escape');
  await page.mouse.up();
}

test('a drag of a free window is one step back, and Escape gives it up', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  const before = await boxOf(windowNamed(page, 'D'));
  const grip = { x: before.x + before.width - 12, y: before.y + before.height / 2 };
  await drag(page, grip, { x: 60, y: 0 }, 'escape');
  expect((await boxOf(windowNamed(page, 'D'))).x).toBeCloseTo(before.x, 0);
  await expect(undo(page)).toBeDisabled();
  await expect(isDirty(page)).toBeHidden();
  await drag(page, grip, { x: 60, y: 0 });
  expect((await boxOf(windowNamed(page, 'D'))).x).toBeGreaterThan(before.x + 40);
  await expect(isDirty(page)).toBeVisible();
  await undo(page).click();
  expect((await boxOf(windowNamed(page, 'D'))).x).toBeCloseTo(before.x, 0);
  await expect(undo(page)).toBeDisabled();
});

test('a drag back to where it began leaves no step', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  const box = await boxOf(windowNamed(page, 'D'));
  const at = { x: box.x + box.width - 12, y: box.y + box.height / 2 };
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 50, at.y + 20);
  await page.mouse.move(at.x, at.y);
  await page.mouse.up();
  await expect(undo(page)).toBeDisabled();
});

test('dragging a border makes the rule by hand, to a whole step, and lights its field', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await page.getByRole('navigation').getByRole('button', { name: 'Mat' }).click();
  const box = await boxOf(windowNamed(page, 'A'));
  const line = { x: box.x, y: box.y + box.height * 0.25 };
  await page.mouse.move(line.x, line.y);
  await page.mouse.down();
  await page.mouse.move(line.x + 20, line.y);
  await page.mouse.move(line.x + 24, line.y);
  await expect(page.getByLabel('Rule')).toHaveValue('by-hand');
  await expect(page.locator('.field.lit')).toContainText('Left');
  await page.mouse.up();
  await expect(page.getByLabel('Left', { exact: true })).toHaveValue(/^\d+( \d+\/(2|4|8|16))?$/);
  await undo(page).click();
  await expect(page.getByLabel('Rule')).toHaveValue('centred');
});

test('dragging the edge of a gap widens it', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  const a = await boxOf(windowNamed(page, 'A'));
  await drag(page, { x: a.x + a.width, y: a.y + a.height * 0.25 }, { x: -15, y: 0 });
  await expect(page.getByRole('button', { name: /^Gap between A and B/ })).not.toHaveAccessibleName(/: 1 1\/2 in/);
  await expect(undo(page)).toHaveAccessibleName('Undo: Drag the gap');
});

test('typing at a number says what would change, and Escape leaves it', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await border(page, 'left').click();
  const field = page.getByRole('group', { name: 'Border left, as cut' });
  await expect(field).toContainText('each by hand');
  await page.keyboard.type('2 1/4');
  await page.keyboard.press('Escape');
  await expect(border(page, 'left')).not.toHaveAccessibleName(/: 2 1\/4 in/);
  await border(page, 'left').click();
  await page.keyboard.type('2 1/4');
  await page.keyboard.press('Enter');
  await expect(border(page, 'left')).toHaveAccessibleName(/: 2 1\/4 in/);
  await expect(field).toBeHidden();
  await page.getByRole('button', { name: /^Gap between B and C/ }).click();
  await page.keyboard.type('1');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Gap between A and B/ })).toHaveAccessibleName(/: 1 in/);
});

test('pointing at a field lights the line it governs', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  await page.getByRole('navigation').getByRole('button', { name: 'Windows' }).click();
  await expect(page.locator('path.governed')).toHaveCount(0);
  await page.getByLabel('Gap, length').hover();
  await expect(page.locator('path.governed').first()).toBeAttached();
});

test('windows are reached with Tab, and a free one moves with the arrow keys in one step back', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  await page.getByRole('region', { name: /^The mat/ }).focus();
  for (const name of ['A', 'B', 'C', 'D']) {
    await page.keyboard.press('Tab');
    await expect(windowNamed(page, name)).toBeFocused();
  }
  const before = await boxOf(windowNamed(page, 'D'));
  await page.keyboard.press('Enter');
  await expect(windowNamed(page, 'D')).toHaveAttribute('aria-pressed', 'true');
  for (let step = 0; step < 4; step += 1) await page.keyboard.press('Shift+ArrowRight');
  const after = await boxOf(windowNamed(page, 'D'));
  expect(after.x - before.x).toBeGreaterThan(20);
  await page.keyboard.press('Control+z');
  expect((await boxOf(windowNamed(page, 'D'))).x).toBeCloseTo(before.x, 0);
});

test('the wheel zooms at the pointer; keys zoom and pan; fit brings all of it back', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  const before = await boxOf(windowNamed(page, 'A'));
  const corner = { x: before.x, y: before.y };
  await page.mouse.move(corner.x, corner.y);
  await page.mouse.wheel(0, -400);
  const zoomed = await boxOf(windowNamed(page, 'A'));
  expect(zoomed.width).toBeGreaterThan(before.width * 1.5);
  expect(zoomed.x).toBeCloseTo(corner.x, 0);
  expect(zoomed.y).toBeCloseTo(corner.y, 0);
  await page.getByRole('region', { name: /^The mat/ }).focus();
  await page.keyboard.press('ArrowRight');
  expect((await boxOf(windowNamed(page, 'A'))).x).toBeLessThan(zoomed.x);
  await page.keyboard.press('-');
  expect((await boxOf(windowNamed(page, 'A'))).width).toBeLessThan(zoomed.width);
  await page.keyboard.press('0');
  expect((await boxOf(windowNamed(page, 'A'))).width).toBeCloseTo(before.width, 0);
});

test('the view from the back is the mirror, and says so', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  const order = async () => Promise.all(['A', 'B', 'C'].map(async (name) => (await boxOf(windowNamed(page, name))).x));
  const [frontA = 0, , frontC = 0] = await order();
  expect(frontA).toBeLessThan(frontC);
  await page.keyboard.press('Alt+b');
  await expect(page.getByText('BACK', { exact: true })).toBeVisible();
  await expect(page.getByRole('region', { name: 'The mat, seen from the back' })).toBeVisible();
  const [backA = 0, , backC = 0] = await order();
  expect(backA).toBeGreaterThan(backC);
});

test('a window dragged over another is drawn where it is, and can be dragged away again', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  const mend = page.getByRole('button', { name: /to mend before cutting/ });
  const before = await boxOf(windowNamed(page, 'D'));
  const over = await boxOf(windowNamed(page, 'B'));
  const up = over.y + over.height / 2 - before.y;
  await drag(page, { x: before.x + before.width - 12, y: before.y + before.height / 2 }, { x: 0, y: up });
  await expect(mend).toBeVisible();
  const now = await boxOf(windowNamed(page, 'D'));
  expect(Math.abs(now.y - before.y - up)).toBeLessThan(6);
  await drag(page, { x: now.x + now.width - 12, y: now.y + now.height / 2 }, { x: 0, y: -up });
  await expect(mend).toBeHidden();
  expect(Math.abs((await boxOf(windowNamed(page, 'D'))).y - before.y)).toBeLessThan(6);
});

test('a free window that was clicked moves with the arrow keys, and the view stays', async ({
  folder,
  openProgram,
}) => {
  const page = await start(folder, openProgram);
  const [other, before] = [await boxOf(windowNamed(page, 'A')), await boxOf(windowNamed(page, 'D'))];
  await page.mouse.click(before.x + before.width - 12, before.y + before.height / 2);
  for (let press = 0; press < 8; press += 1) await page.keyboard.press('ArrowRight');
  expect((await boxOf(windowNamed(page, 'D'))).x).toBeGreaterThan(before.x + 3);
  expect((await boxOf(windowNamed(page, 'A'))).x).toBeCloseTo(other.x, 0);
});

test('Ctrl and the wheel zoom by a little, and a newly opened job is seen whole', async ({ folder, openProgram }) => {
  const page = await start(folder, openProgram);
  const before = await boxOf(windowNamed(page, 'A'));
  await page.mouse.move(before.x + 10, before.y + 10);
  await page.keyboard.down('Control');
  await page.mouse.wheel(0, -120);
  await page.keyboard.up('Control');
  const zoomed = await boxOf(windowNamed(page, 'A'));
  expect(zoomed.width / before.width).toBeLessThan(1.3);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.getByRole('button', { name: 'Inches' }).click();
  const canvas = await boxOf(page.getByRole('region', { name: /^The mat/ }));
  const fitted = await boxOf(windowNamed(page, 'A'));
  expect(fitted.x).toBeGreaterThan(canvas.x);
  expect(Math.abs(fitted.x + fitted.width / 2 - canvas.x - canvas.width / 2)).toBeLessThan(60);
});

test('typing at a gap between windows of other sizes sets the distance one sees', async ({ folder, openProgram }) => {
  const path = join(folder, 'uneven.json');
  const windows = {
    kind: 'column',
    gap: '25 mm',
    items: [
      { kind: 'row', gap: '30 mm', items: ['1', '2'] },
      { kind: 'window', use: 'caption', size: '200 x 25 mm' },
    ],
  };
  const pictures = [
    { title: 'Tall', size: '100 x 160' },
    { title: 'Low', size: '100 x 80' },
  ];
  await writeFile(
    path,
    JSON.stringify({ ...job, units: 'mm', title: 'Uneven', pictures, windows, free: [], frame: { size: '500 x 500' } }),
  );
  const { page } = await openProgram(path);
  // (160 - 80) / 2 more than the gap of the column.
  const number = page.getByRole('button', { name: 'Gap between C and B: 65 mm. Change it.' });
  await number.click();
  await page.getByRole('textbox', { name: /Gap between C and B/ }).fill('70');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Gap between C and B: 70 mm. Change it.' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Gap between C and A: 30 mm. Change it.' })).toBeVisible();
});
