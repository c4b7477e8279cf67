/** What is done by hand with the rows of the stock; each deed says what it did. */
import { counted } from '../../core/phrases';
import { KEPT_STOCK } from '../../core/sheets/kept-stock';
import { printStock } from '../../core/sheets/print-stock';
import { readStock } from '../../core/sheets/read-stock';
import type { StockSheet } from '../../core/sheets/stock-sheet';
import { stockRowWords } from '../../core/sheets/use-words';
import type { Workbench } from '../workbench';
import { changeKept, quoted } from './change-kept';
import { columnsLeft } from './columns-left';
import { writeFile } from './write-file';

const ENDINGS = ['csv', 'txt'] as const;
const { nameOf } = KEPT_STOCK;

/** Puts a row into the stock, in the place of what it was before it was changed. */
export function keepRow(bench: Workbench, sheet: StockSheet, before?: StockSheet): Promise<boolean> {
  const [name, was] = [nameOf(sheet), before && nameOf(before)];
  const isRenamed = was !== undefined && was !== name;
  const change = {
    keep: [sheet],
    ...(was === undefined ? {} : { of: [was] }),
    ...(isRenamed ? { remove: [was], were: new Map([[name, was]]) } : {}),
  };
  return changeKept(bench, bench.stock, change, `${quoted(sheet.board)} is in your stock.`);
}

export async function removeRow(bench: Workbench, sheet: StockSheet): Promise<boolean> {
  const answer = await bench.dialogs.choose({
    title: `Take ${quoted(sheet.board)} out of the stock?`,
    text: `${stockRowWords(sheet, bench.session.showing)}. It goes from your stock for all jobs.`,
    choices: [
      { value: 'out', label: 'Take it out', weight: 'main' },
      { value: 'stay', label: 'Leave it' },
    ],
  });
  if (answer !== 'out') return false;
  return changeKept(bench, bench.stock, { remove: [nameOf(sheet)] }, `${quoted(sheet.board)} was taken out of your stock.`); // prettier-ignore
}

/** Rows from a file, in the place of those of the same board, kind and size, or of the whole stock. */
export async function takeStockFromFile(bench: Workbench): Promise<void> {
  const { host, dialogs, stock } = bench;
  const path = await chooseFile(bench);
  if (path === undefined) return;
  const reply = await host.call('readJob', { path });
  const read = reply.ok ? readStock(reply.value.text) : undefined;
  if (!reply.ok || !read?.ok) {
    const text = reply.ok ? path : reply.failure.message;
    const problems = read && !read.ok ? { problems: read.problems } : {};
    return dialogs.tell({ title: 'This file holds no stock that can be taken', text, ...problems });
  }
  const names = new Set(read.value.map(nameOf));
  const others = stock.list.filter((one) => !names.has(nameOf(one)));
  const remove = others.length === 0 ? [] : await askOfOthers(bench, others, columnsLeft(read.problems));
  if (remove === undefined) return;
  const words = `Taken from ${path}: ${counted(read.value.length, 'row')}.${columnsLeft(read.problems)}`;
  const done = await changeKept(bench, stock, { keep: read.value, remove }, words);
  if (done && read.problems.length > 0) {
    await dialogs.tell({ title: 'Taken, but look here', text: path, problems: read.problems });
  }
}

/** Names of the rows that go; undefined when the user changed their mind. @param left columns that are not taken, in words. */
async function askOfOthers(
  { dialogs }: Workbench,
  others: readonly StockSheet[],
  left: string,
): Promise<string[] | undefined> {
  const answer = await dialogs.choose({
    title: 'What happens to the rows that are not in the file?',
    text: `Your stock has ${counted(others.length, 'row')} that the file has not.${left}`,
    choices: [
      { value: 'stay', label: 'They stay', weight: 'main' },
      { value: 'go', label: 'They go' },
      { value: 'none', label: 'Take nothing' },
    ],
  });
  if (answer === 'stay') return [];
  return answer === 'go' ? others.map(nameOf) : undefined;
}

async function chooseFile({ host, info, dialogs }: Workbench): Promise<string | undefined> {
  const title = 'Take stock from a file';
  if (info.kind === 'browser') return dialogs.chooseFile({ title, action: 'Take it', endings: ENDINGS });
  const reply = await host.call('pickJob', { title, of: 'table' });
  return reply.ok ? reply.value.path : undefined;
}

export function writeStockToFile(bench: Workbench): Promise<void> {
  const { stock, host } = bench;
  const text = printStock(stock.list);
  return writeFile(bench, {
    title: 'Write the stock to a file',
    name: 'stock.csv',
    ending: 'csv',
    shown: ENDINGS,
    write: (path, replace) => host.call('saveJob', { path, text, ...(replace ? { replace } : {}) }),
    done: 'Your stock was written to',
    failed: 'The stock could not be written',
  });
}
