/** What a trial square found, put into a cutter's measures and into words. */
import { placeText } from '../job/exact-text';
import { SAME_BOARD } from '../job/read-cutting';
import type { WrittenCutter } from '../job/written-cutter';
import { readLength, showSetting, type Showing, type Unit } from '../units';
import type { Calibration } from './calibration';

/** The cutter with its scale offset, and its overcut for boards of the scrap's thickness, mm. Lengths say their unit. */
export function calibratedCutter(
  cutter: WrittenCutter,
  { scaleOffset, overcut }: Calibration,
  thickness: number,
  units: Unit,
): WrittenCutter {
  const text = (mm: number) => `${placeText(mm, units)} ${units}`;
  const known = cutter.overcuts ?? [];
  const place = known.findIndex((one) => {
    const reading = readLength(one.thickness, units);
    return reading.ok && Math.abs(reading.mm - thickness) < SAME_BOARD;
  });
  const found = known[place];
  const next = { thickness: found?.thickness ?? text(thickness), overcut: text(overcut) };
  return {
    ...cutter,
    scaleOffset: text(scaleOffset),
    overcuts: found ? known.map((one, index) => (index === place ? next : one)) : [...known, next],
  };
}

/** A sentence for each thing found. */
export function calibrationWords({ scaleOffset, overcut, spread }: Calibration, showing: Showing): string[] {
  const text = (mm: number) => showSetting(mm, showing).withUnit;
  const more = scaleOffset > 0 ? 'more' : 'less';
  return [
    Math.abs(scaleOffset) < TRUE
      ? 'Scale offset 0: the scale reads true.'
      : `Scale offset ${text(scaleOffset)}: the scale must read ${text(Math.abs(scaleOffset))} ${more} than the setting that is wanted.`,
    `Overcut for boards like this scrap: ${text(overcut)}.`,
    `The four borders differ by ${text(spread.borders)}, the corners by ${text(spread.corners)}.`,
  ];
}

/** Nearer to the truth than any scale can be read, mm. */
const TRUE = 1e-6;
