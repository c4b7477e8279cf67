/** How the sizes of a frame were reached, in words; of a float frame they are called otherwise. */
import type { Job } from '../job/job';
import type { Derivation, FrameSizes, PlacedLayout } from './layout';

export type ShowLength = (mm: number) => string;
type SizeSide = 'width' | 'height';

/** @param fitted the sum behind a size that is made to fit. */
export function frameSums(
  job: Job,
  { frame }: PlacedLayout,
  fitted: (side: SizeSide) => string,
  show: ShowLength,
): Derivation[] {
  const { readyMade, turned } = job.frame;
  const given = (readyMade ? `ready-made ${readyMade}` : 'as given') + (turned ? `, turned to hang ${turned}` : '');
  const how = (side: SizeSide) => (job.frame.blank ? given : `made to fit: ${fitted(side)}`);
  return frame.isFloat ? floatSums(frame, how, show) : lippedSums(frame, how, show);
}

function lippedSums(frame: FrameSizes, how: (side: SizeSide) => string, show: ShowLength): Derivation[] {
  const { blank, rabbet, sight, outside, allowance, lip, mouldingWidth } = frame;
  return [
    ...pair('frame.blank', 'Frame size (blank)', blank, how),
    ...pair('frame.rabbet', 'Rabbet', rabbet, (side) => `${show(blank[side])} + allowance ${show(allowance)}`),
    ...pair('frame.sight', 'Sight size', sight, (side) => `${show(rabbet[side])} − 2 × lip ${show(lip)}`),
    ...pair(
      'frame.outside',
      'Outside',
      outside,
      (side) => `${show(rabbet[side])} + 2 × (moulding ${show(mouldingWidth)} − lip ${show(lip)})`,
    ),
  ];
}

function floatSums(frame: FrameSizes, how: (side: SizeSide) => string, show: ShowLength): Derivation[] {
  const { blank, rabbet, outside, allowance, mouldingWidth } = frame;
  return [
    ...pair('frame.blank', 'Frame size (canvas it is for)', blank, how),
    ...pair('frame.rabbet', 'Inside', rabbet, (side) => `${show(blank[side])} + 2 × gap ${show(allowance / 2)}`),
    ...pair(
      'frame.outside',
      'Outside',
      outside,
      (side) => `${show(rabbet[side])} + 2 × moulding ${show(mouldingWidth)}`,
    ),
  ];
}

/** The same sum of a width and of a height. */
export function pair(
  name: string,
  label: string,
  size: Readonly<Record<SizeSide, number>>,
  how: (side: SizeSide) => string,
): Derivation[] {
  return (['width', 'height'] as const).map((side) => ({
    name: `${name}.${side}`,
    label: `${label}, ${side}`,
    value: size[side],
    how: how(side),
  }));
}
