/** Writes the sheet that a cutter is calibrated by, where the user says. */
import type { Workbench } from '../workbench';
import { writeFile } from './write-file';

export function writeSheet(bench: Workbench, cutter: string | undefined): Promise<void> {
  const { host, session } = bench;
  const { unit } = session.showing;
  const paper = unit === 'in' ? 'letter' : 'a4';
  return writeFile(bench, {
    title: 'Write the calibration sheet',
    name: 'trial-square.pdf',
    ending: 'pdf',
    shown: ['pdf'],
    write: (path, replace) =>
      host.call('writeCalibrationSheet', {
        path,
        paper,
        units: unit,
        ...(cutter === undefined ? {} : { cutter }),
        replace,
      }),
    done: 'The calibration sheet was written to',
    failed: 'The sheet could not be written',
  });
}
