/** What all pages of the cutting list share: guide settings, slants and overcuts in words, and the rows themselves. */
import { scaleReading } from '../../core/cutting/cutter';
import type { CutLine, CutStep } from '../../core/cutting/plan';
import { showSetting, type Showing } from '../../core/units';
import type { OutputContext } from '../context';
import type { Block } from '../paper/flow';
import type { Column, TableRow } from '../paper/table';
import { rowBlock } from '../paper/table-blocks';
import { fractions } from '../paper/type';
import type { Typesetter } from '../paper/typesetter';

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
  const [start, end] = [overcutStart, overcutEnd].map((mm) => fractions(showSetting(mm, showing).withUnit));
  return start === end ? (start ?? '') : `start ${start}\nend ${end}`;
}

/** Seen in the direction of travel, and in words of the mat. */
export function slantWords({ bevelSide, slopesTo }: CutLine): string {
  return slopesTo === 'none' ? 'upright' : `${bevelSide}, ${slopesTo}`;
}

/**
 * A row of a list; the guide's setting is told where the guide is moved, under a strong line, and again where
 * the row begins a page.
 */
export function guideRow(
  typesetter: Typesetter,
  columns: readonly Column[],
  step: Pick<CutStep, 'guideSetting' | 'moveGuide'>,
  rowOf: (told: string) => TableRow,
  guide: (step: Pick<CutStep, 'guideSetting'>) => string,
  again: readonly Block[],
): Block {
  const told = rowBlock(typesetter, columns, rowOf(guide(step)), 'marked');
  if (step.moveGuide || step.guideSetting === undefined) return { ...told, again };
  return { ...rowBlock(typesetter, columns, rowOf('')), again, asFirst: told };
}
