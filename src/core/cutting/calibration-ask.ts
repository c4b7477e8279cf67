/** What was measured of a trial square, as it is typed: read into mm, or said to be no measure. */
import { eachSide, type PerSide } from '../geometry/box';
import { Reader } from '../job/reader';
import type { WrittenLength } from '../job/written';
import { bad, good, isError, type Result } from '../problem';
import type { Showing, Unit } from '../units';
import type { CalibrationCut } from './calibration';

/** Lengths as people type them. */
export interface WrittenCalibration {
  readonly scale: WrittenLength;
  readonly borders: PerSide<WrittenLength>;
  readonly corners: readonly WrittenLength[];
  readonly usedOvercut: WrittenLength;
}

/** A scrap that is larger is no scrap, mm; cuts that run over by more are no cuts of a trial. */
const MOST = { border: 1000, corner: 50 };

/** Problems name `scale`, `borders.left`, `corners[0]` or `overcut`. */
export function readCalibration(
  written: WrittenCalibration,
  units: Unit,
  steps: { readonly in: Showing['inchStep']; readonly mm: Showing['metricStep'] } = { in: 64, mm: 0.1 },
): Result<CalibrationCut> {
  const reader = new Reader(units, steps);
  const cut: CalibrationCut = {
    scale: reader.length(written.scale, 'scale', { name: 'What the scale read', most: MOST.border }, NaN),
    borders: eachSide((side) =>
      reader.length(written.borders[side], `borders.${side}`, { name: `The ${side} border`, most: MOST.border }, NaN),
    ),
    corners: written.corners.map((corner, index) =>
      reader.length(
        corner,
        `corners[${index}]`,
        { name: `Corner ${index + 1}`, least: -MOST.corner, most: MOST.corner },
        NaN,
      ),
    ),
    usedOvercut: reader.length(written.usedOvercut, 'overcut', { name: 'The overcut used', most: MOST.corner }, NaN),
  };
  return reader.problems.some(isError) ? bad(reader.problems) : good(cut);
}
