/** `--prices FILE`: the option that names a price list, and the list in it. */
import { Option } from 'commander';
import type { PriceList } from '../../core/cost/price-list';
import { readPrices } from '../../core/cost/read-prices';
import type { Result } from '../../core/problem';
import { inFile } from '../in-file';
import { readText } from '../read-text';
import type { World } from '../world';

export function pricesOption(): Option {
  return new Option(
    '--prices <file>',
    'your prices and rules: a table of values parted by commas (resources/prices.md tells how)',
  ).makeOptionMandatory();
}

/** A problem's place begins with the file's name. */
export async function findPrices(file: string, world: World): Promise<Result<PriceList>> {
  const read = await readText(file, world, 'Save the table as CSV in UTF-8.');
  return read.ok ? inFile(file, readPrices(read.value)) : read;
}
