/** What a step says of the guide: its setting, and what the cutter's scale reads there when that is something else. */
import type { Cutter } from '../job/job';
import { showSetting, type Showing } from '../units';
import { scaleReading } from './cutter';
import type { CutStep } from './plan';

export function guideWords(
  { guideSetting }: Pick<CutStep, 'guideSetting'>,
  cutter: Cutter | undefined,
  showing: Showing,
): string {
  if (guideSetting === undefined) return 'by the line';
  const setting = showSetting(guideSetting, showing).withUnit;
  const reading = scaleReading(guideSetting, cutter);
  return reading === undefined ? setting : `${setting} (scale ${showSetting(reading, showing).text})`;
}
