/** What is done with the rows of the price list; each deed says what it did. */
import { KEPT_PRICES } from '../../core/cost/kept-prices';
import type { PriceEntry } from '../../core/cost/price-entry';
import { priceRowTitle, priceRowWords } from '../../core/cost/price-row-words';
import { placesOf, printPrices } from '../../core/cost/print-prices';
import { readPriceRows } from '../../core/cost/read-price-rows';
import { counted } from '../../core/phrases';
import type { Workbench } from '../workbench';
import { changeKept, quoted } from './change-kept';
import { columnsLeft } from './columns-left';
import { writeFile } from './write-file';

const ENDINGS = ['csv', 'txt'] as const;
const { nameOf } = KEPT_PRICES;
/** As the button under the list is called. */
const TAKE_BACK = 'Take the last change back';

/** Puts a row into the list, in the place of what it was before it was changed. */
export function keepPrice(bench: Workbench, entry: PriceEntry, before?: PriceEntry): Promise<boolean> {
  const isRenamed = before !== undefined && nameOf(before) !== nameOf(entry);
  const change = {
    keep: [entry],
    ...(isRenamed ? { remove: [nameOf(before)] } : {}),
    ...(before ? { of: [nameOf(before)] } : {}),
  };
  // Markup and margin say one thing in two ways.
  const replaced = bench.prices.list.find((one) => nameOf(one) === nameOf(entry) && one.what !== entry.what);
  const words = replaced && `${toldRow(bench, replaced)}. “${TAKE_BACK}” brings that again`;
  const place = words === undefined ? '' : `, in the place of ${words}`;
  return changeKept(bench, bench.prices, change, `${quoted(priceRowTitle(entry))} is in your price list${place}.`);
}

function toldRow({ prices }: Workbench, entry: PriceEntry): string {
  return `${quoted(priceRowTitle(entry))}, ${priceRowWords(entry, placesOf(prices.list))}`;
}

export async function removePrice(bench: Workbench, entry: PriceEntry): Promise<boolean> {
  const title = quoted(priceRowTitle(entry));
  const answer = await bench.dialogs.choose({
    title: `Take ${title} out of the price list?`,
    text: `${priceRowWords(entry, placesOf(bench.prices.list))}. It goes from your price list for all jobs.`,
    choices: [
      { value: 'out', label: 'Take it out', weight: 'main' },
      { value: 'stay', label: 'Leave it' },
    ],
  });
  if (answer !== 'out') return false;
  return changeKept(bench, bench.prices, { remove: [nameOf(entry)] }, `${title} was taken out of your price list.`);
}

/** The invented list that ships with the program, once the user knows that it is invented. */
export async function takeDemoPrices(bench: Workbench): Promise<void> {
  const { host, dialogs, prices } = bench;
  const answer = await dialogs.choose({
    title: 'Take the invented demo prices?',
    text: 'Every price and rule in them is made up, for a village library that frames its own shows: to look around with, not to ask of anyone. Change each into your own, or take them all back.',
    choices: [
      { value: 'take', label: 'Take the invented prices', weight: 'main' },
      { value: 'not', label: 'Not now' },
    ],
  });
  if (answer !== 'take') return;
  const reply = await host.call('demoPrices', {});
  const read = reply.ok ? readPriceRows(reply.value.text) : undefined;
  if (!reply.ok || !read?.ok) {
    const text = reply.ok ? 'They can’t be read.' : reply.failure.message;
    return dialogs.tell({ title: 'The demo prices could not be taken', text });
  }
  await changeKept(bench, prices, { keep: read.value }, 'The invented demo prices are your price list now.');
}

/** Rows from a file, in the place of those about the same, or of the whole list. */
export async function takePricesFromFile(bench: Workbench): Promise<void> {
  const { host, dialogs, prices } = bench;
  const path = await chooseFile(bench);
  if (path === undefined) return;
  const reply = await host.call('readJob', { path });
  const read = reply.ok ? readPriceRows(reply.value.text) : undefined;
  if (!reply.ok || !read?.ok) {
    const text = reply.ok ? path : reply.failure.message;
    const problems = read && !read.ok ? { problems: read.problems } : {};
    return dialogs.tell({ title: 'This file holds no price list that can be taken', text, ...problems });
  }
  const names = new Set(read.value.map(nameOf));
  const others = prices.list.filter((one) => !names.has(nameOf(one)));
  const remove = others.length === 0 ? [] : await askOfOthers(bench, others, columnsLeft(read.problems));
  if (remove === undefined) return;
  const words = `Taken from ${path}: ${counted(read.value.length, 'row')}.${columnsLeft(read.problems)}`;
  const done = await changeKept(bench, prices, { keep: read.value, remove }, words);
  if (done && read.problems.length > 0) {
    await dialogs.tell({ title: 'Taken, but look here', text: path, problems: read.problems });
  }
}

/** Names of the rows that go; undefined when the user changed their mind. @param left columns that are not taken, in words. */
async function askOfOthers(
  { dialogs }: Workbench,
  others: readonly PriceEntry[],
  left: string,
): Promise<string[] | undefined> {
  const answer = await dialogs.choose({
    title: 'What happens to the rows that are not in the file?',
    text: `Your price list has ${counted(others.length, 'row')} that the file has not: ${others.slice(0, 6).map(priceRowTitle).join(', ')}${others.length > 6 ? ' …' : '.'}${left}`, // prettier-ignore
    choices: [
      { value: 'go', label: 'They go', weight: 'main' },
      { value: 'stay', label: 'They stay' },
      { value: 'none', label: 'Take nothing' },
    ],
  });
  if (answer === 'stay') return [];
  return answer === 'go' ? others.map(nameOf) : undefined;
}

async function chooseFile({ host, info, dialogs }: Workbench): Promise<string | undefined> {
  const title = 'Take prices from a file';
  if (info.kind === 'browser') return dialogs.chooseFile({ title, action: 'Take it', endings: ENDINGS });
  const reply = await host.call('pickJob', { title, of: 'table' });
  return reply.ok ? reply.value.path : undefined;
}

export function writePricesToFile(bench: Workbench): Promise<void> {
  const { prices, host } = bench;
  const text = printPrices(prices.list);
  return writeFile(bench, {
    title: 'Write the price list to a file',
    name: 'prices.csv',
    ending: 'csv',
    shown: ENDINGS,
    write: (path, replace) => host.call('saveJob', { path, text, ...(replace ? { replace } : {}) }),
    done: 'Your price list was written to',
    failed: 'The price list could not be written',
  });
}
