/** What a cutter's own measures make of a cut: overcut by thickness of the board, and what its scale must read. */
import type { Cutter, Cutting } from '../job/job';

/** How far cuts run past a square corner, mm, and who says so. */
export interface UsedOvercut {
  readonly length: number;
  readonly from: 'job' | 'cutter' | 'board';
}

/** What the user gave for the job, else the cutter's for the thickness, else the bevel's run through the board. */
export function overcutFor({ overcut, cutter }: Cutting, thickness: number, bevelRun: number): UsedOvercut {
  if (overcut !== undefined) return { length: overcut, from: 'job' };
  const tabled = cutter && tabledOvercut(cutter, thickness);
  return tabled === undefined ? { length: bevelRun, from: 'board' } : { length: tabled, from: 'cutter' };
}

/** By proportion between two thicknesses, beyond all as in the nearest, mm; undefined where none is known. */
export function tabledOvercut({ overcuts }: Pick<Cutter, 'overcuts'>, thickness: number): number | undefined {
  const above = overcuts.find((one) => one.thickness >= thickness);
  const below = overcuts.findLast((one) => one.thickness <= thickness);
  if (!above || !below) return (above ?? below)?.overcut;
  const between = above.thickness - below.thickness;
  if (between === 0) return below.overcut;
  return below.overcut + ((above.overcut - below.overcut) * (thickness - below.thickness)) / between;
}

/** What the scale reads at a guide setting, mm; undefined where it reads the setting itself. */
export function scaleReading(setting: number, cutter: Cutter | undefined): number | undefined {
  const offset = cutter?.scaleOffset ?? 0;
  return offset === 0 ? undefined : setting + offset;
}
