/** Drawings of sheets that an older, larger plan left in the folder of a new one: told, since someone could cut by them, and never deleted. */
import { readdir } from 'node:fs/promises';
import { counted, listed } from '../core/phrases';
import type { Problem } from '../core/problem';
import { isDrawingName } from '../outputs/sheets/sheet-papers';

/** More of them say nothing new. */
const MOST_TOLD = 3;

/**
 * A warning where there are any; none where this export wrote no drawings, since it then says nothing of those there are.
 *
 * @param written names of the files that were written just now.
 */
export async function olderDrawings(folder: string, baseName: string, written: readonly string[]): Promise<Problem[]> {
  const isDrawing = (name: string) => isDrawingName(baseName, name);
  if (!written.some(isDrawing)) return [];
  const now = new Set(written);
  // A folder that can be written but not listed has told all that it can.
  const names = await readdir(folder).catch(() => []);
  const older = names.filter((name) => isDrawing(name) && !now.has(name)).toSorted(byNumbers.compare);
  if (older.length === 0) return [];
  const [are, them] = older.length === 1 ? ['is', 'it'] : ['are', 'them'];
  return [
    {
      code: 'older-drawings',
      severity: 'warning',
      at: '',
      message: `The folder also holds ${counted(older.length, 'drawing')} of another plan, which ${are} not of this one: ${listed(older, MOST_TOLD)}. Don’t cut by ${them}; move or delete ${them}.`,
    },
  ];
}

/** Sheet 2 before sheet 10, in every language alike. */
const byNumbers = new Intl.Collator('en', { numeric: true });
