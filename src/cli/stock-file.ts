/** Changes the file of a stock: one program at a time, read anew, whole or not at all; the last use is kept beside it. */
import { createHash } from 'node:crypto';
import { realpath } from 'node:fs/promises';
import { resolve } from 'node:path';
import { bad, good, type Result } from '../core/problem';
import { editStock, type EditedStock } from '../core/sheets/edit-stock';
import { readStock } from '../core/sheets/read-stock';
import type { StockSheet } from '../core/sheets/stock-sheet';
import { stepStock, type StockDeed, type StockStep } from '../core/sheets/stock-steps';
import { nothingToTakeBack, parseUseRecord, printUseRecord, type UseRecord } from '../core/sheets/use-record';
import type { RemovedLines } from '../core/tables/removed-lines';
import type { Showing } from '../core/units';
import { errorName, failureFrom } from '../host/failure';
import { recordPath } from '../host/last-use-file';
import { holdStock, type HeldStock } from './held-stock';
import { inFile, placedIn } from './in-file';
import { readText } from './read-text';
import { machineProblem } from './refuse';
import type { World } from './world';

const REMEDY = 'Save the table as comma-separated values in UTF-8.';

export interface StockText {
  readonly text: string;
  readonly list: readonly StockSheet[];
}

/** The list in a file; a problem's place begins with the file's name. */
export async function readStockFile(file: string, world: World): Promise<Result<StockText>> {
  const text = await readText(file, world, REMEDY);
  if (!text.ok) return text;
  const read = inFile(file, readStock(text.value));
  return read.ok ? good({ text: text.value, list: read.value }, read.problems) : read;
}

/** Takes from the stock and puts back; refused where it no longer has what is taken. @param words that tell what is done. */
export function useStockFile(
  file: string,
  steps: readonly StockStep[],
  words: readonly string[],
  showing: Showing,
  world: World,
): Promise<Result<readonly StockSheet[]>> {
  return whileHeld(file, world, async (stockHeld) => {
    const stock = await readStockFile(file, world);
    if (!stock.ok) return stock;
    const { text, list } = stock.value;
    const done = stepped(file, list, steps, 'use', showing);
    if (!done.ok) return done;
    const edited = edit(file, text, done.value.list);
    if (!edited.ok) return edited;
    const record: UseRecord = { words, before: nameOf(text), back: done.value.back, removed: edited.value.removed };
    // A record of a use that was never made is known by the list's text; a use without a record could not be taken back.
    await stockHeld.save(printUseRecord(record), text, edited.value.text);
    return good(done.value.list);
  });
}

export interface TakenBack {
  readonly list: readonly StockSheet[];
  /** What the use was that is taken back. */
  readonly words: readonly string[];
}

/** Undoes the last use; refused where what it put back has been used since. What others changed meanwhile stays. */
export function takeBackStockFile(file: string, showing: Showing, world: World): Promise<Result<TakenBack>> {
  return whileHeld(file, world, async (stockHeld) => {
    const stock = await readStockFile(file, world);
    if (!stock.ok) return stock;
    const { text, list } = stock.value;
    const written = await stockHeld.record();
    if (written === undefined) return bad([nothingToTakeBack(file)]);
    const record = inFile(recordPath(file), parseUseRecord(written));
    if (!record.ok) return record;
    const { before, back, removed, words } = record.value;
    if (before === nameOf(text)) return bad([nothingToTakeBack(file)]);
    const done = stepped(file, list, back, 'take back', showing);
    if (!done.ok) return done;
    const edited = edit(file, text, done.value.list, removed);
    if (!edited.ok) return edited;
    await stockHeld.save(undefined, text, edited.value.text);
    return good({ list: done.value.list, words });
  });
}

function stepped(
  file: string,
  list: readonly StockSheet[],
  steps: readonly StockStep[],
  deed: StockDeed,
  showing: Showing,
): ReturnType<typeof stepStock> {
  const done = stepStock(list, steps, deed, showing);
  return done.ok ? done : bad(done.problems.map((one) => ({ ...one, at: file })));
}

/** What can't be written so that it reads again, such as a list that has grown too long, is told. */
function edit(file: string, text: string, after: readonly StockSheet[], known?: RemovedLines): Result<EditedStock> {
  const edited = editStock(text, after, known ? { known } : {});
  return edited.ok ? edited : bad(placedIn(file, edited.problems));
}

/** Also through a link: all that change one file wait for each other. */
async function whileHeld<T>(
  file: string,
  world: World,
  work: (stock: HeldStock) => Promise<Result<T>>,
): Promise<Result<T>> {
  const named = resolve(world.folder, file);
  const onWait = () => world.tell(`“${file}” is being used by another program; waiting until that is done.\n`);
  try {
    return await holdStock(await realpath(named), work, onWait);
  } catch (error) {
    // A fault of our own is no fault of the drive.
    if (errorName(error) === '') throw error;
    const { code, message } = failureFrom(error, named).failure;
    return bad([machineProblem(code, message)]);
  }
}

function nameOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
