/** Writes the calibration sheet, whole or not at all, and never over a file unasked. */
import { basename, dirname, isAbsolute } from 'node:path';
import type { HostCalls, Reply } from '../bridge';
import { makeCalibrationSheet } from '../outputs/calibration/calibration-sheet';
import { done, failed } from './failure';
import { readFonts } from './fonts';
import { checkFree, writeTogether } from './write-together';

type Call = HostCalls['writeCalibrationSheet'];

export async function writeCalibrationSheet(
  { path, replace, ...choices }: Call['request'],
  resources: string,
): Promise<Reply<Call['reply']>> {
  if (!isAbsolute(path) || path.includes('\0')) {
    return failed('not-found', `“${path}” is not a full path. Give it from the root of the drive.`);
  }
  const [folder, name] = [dirname(path), basename(path)];
  const free = await checkFree(folder, [name], replace);
  if (!free.ok) return free;
  const bytes = await makeCalibrationSheet(choices, await readFonts(resources));
  const written = await writeTogether(folder, [{ name, bytes }], { replace });
  return written.ok ? done({ path, bytes: bytes.length }) : written;
}
