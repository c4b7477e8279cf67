/** What all pages of the cutting list share: guide settings, slants and overcuts in words, and the lines between rows. */
import { scaleReading } from '../../core/cutting/cutter';
import type { CutLine, CutStep } from '../../core/cutting/plan';
import type { Point } from '../../core/geometry/box';
import { lengthText, showSetting, type Showing } from '../../core/units';
import type { OutputContext } from '../context';
import { PENS } from '../paper/pens';
import { ROW_HEIGHT, type TableRow } from '../paper/table';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';

export const UNIT_WORDS: Readonly<Record<Showing['unit'], string>> = {
  in: 'inches',
  mm: 'millimetres',
  cm: 'centimetres',
};

/** Decimals that tell a hundredth of a millimetre apart. */
export const DIGITS: Readonly<Record<Showing['unit'], number>> = { in: 4, mm: 2, cm: 3 };

export function guideOf({ plan, showing }: OutputContext): (step: Pick<CutStep, 'guideSetting'>) => string {
  return (step) => {
    const reading = step.guideSetting === undefined ? undefined : scaleReading(step.guideSetting, plan.cutter);
    if (step.guideSetting === undefined) return 'by the line';
    const setting = showSetting(step.guideSetting, showing);
    // The unit stands in the heading where both must have room.
    return fractions(
      reading === undefined ? setting.withUnit : `${setting.text} (${showSetting(reading, showing).text})`,
    );
  };
}

/** One length where both ends have the same, else that of the start and that of the end. */
export function overcutText({ overcutStart, overcutEnd }: CutLine, showing: Showing): string {
  const [start, end] = [overcutStart, overcutEnd].map((mm) => fractions(lengthText(mm, showing)));
  return start === end ? (start ?? '') : `${start}; ${end}`;
}

/** Seen in the direction of travel, and in words of the mat. */
export function slantWords({ bevelSide, slopesTo }: CutLine): string {
  return slopesTo === 'none' ? 'upright' : `${bevelSide}, ${slopesTo}`;
}

/** A stronger line above each row at which the guide is moved. */
export function drawGuideMoves(surface: Surface, corner: Point, right: number, rows: readonly TableRow[]): void {
  rows.forEach((row, index) => {
    const y = corner.y - (index + 1) * ROW_HEIGHT;
    if (row[1] !== '') surface.line({ x: corner.x, y }, { x: right, y }, PENS.edge);
  });
}
