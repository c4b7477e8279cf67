/** Drawings of sheets that an older, larger plan left in the folder of a new one: told, since someone could cut by them, and never deleted. */
import { readdir } from 'node:fs/promises';
import type { Problem } from '../core/problem';
import { otherDrawings } from '../outputs/sheets/other-drawings';
import { isDrawingName } from '../outputs/sheets/sheet-papers';

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
  return older.length === 0 ? [] : [otherDrawings(older)];
}

/** Sheet 2 before sheet 10, in every language alike. */
const byNumbers = new Intl.Collator('en', { numeric: true });
