/** The invented price list that ships with the program, read from its resources. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Reply } from '../bridge';
import { done, failureFrom } from './failure';

export async function readDemoPrices(resources: string): Promise<Reply<{ readonly text: string }>> {
  const path = join(resources, 'prices.csv');
  try {
    return done({ text: await readFile(path, 'utf8') });
  } catch (error) {
    return failureFrom(error, path);
  }
}
