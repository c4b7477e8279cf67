/** Reads the outline of a drawing that the user chose. */
import { readSvg, tooLargeSvg, type ImportedOutline } from '../../core/outlines/read-svg';
import type { Result } from '../../core/problem';

/** Larger files are not read at all, bytes. */
const MOST = 10_000_000;

export async function readDrawing(file: File): Promise<Result<ImportedOutline>> {
  return file.size > MOST ? tooLargeSvg(file.size, MOST) : readSvg(await file.text());
}
