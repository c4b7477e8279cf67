/** Practitioners' cases as data: a job, and the numbers it must come to. */
import { heightOf, sizeOf, widthOf } from '../../src/core/geometry/box';
import { tryPlan, written, type Contents, type Planned } from '../core/open';

/** Cases come from what framers asked and worked out at the bench, not from a standard. */
export const SOURCE = 'common practice, no source';

/** Numbers in the unit of the case: what is named must come out as said. */
export interface Expected {
  readonly blank?: readonly [number, number];
  readonly window?: readonly [number, number];
  readonly topOpening?: readonly [number, number];
  /** Left, top, right, bottom, as cut. */
  readonly borders?: readonly [number, number, number, number];
  readonly seen?: readonly [number, number, number, number];
  readonly topBorders?: readonly [number, number, number, number];
  readonly gap?: number;
  readonly bridge?: number;
  readonly shownStrip?: number;
  readonly bevelRun?: number;
  readonly overlap?: number;
  readonly sizeName?: string;
  /** Codes of problems that must be said. */
  readonly says?: readonly string[];
  /** Words that must stand in one of the messages. */
  readonly words?: readonly RegExp[];
  /** Codes of problems that must not be said. */
  readonly never?: readonly string[];
}

export interface Case {
  readonly has: string;
  readonly source: typeof SOURCE;
  readonly unit: 'in' | 'mm';
  readonly job: Contents;
  readonly expected: Expected;
}

/** What the program makes of a job, in the unit of the case. */
export function numbersOf({ job, unit }: Case): Required<Omit<Expected, 'says' | 'words' | 'never' | 'sizeName'>> & {
  readonly sizeName: string | undefined;
} {
  const found = tryPlan(written({ units: unit, ...job }));
  if (!found.planned) throw new Error(found.problems.map(({ message }) => message).join('\n'));
  return inUnit(found.planned, unit === 'in' ? 25.4 : 1);
}

function inUnit({ layout, plan }: Planned, scale: number) {
  const of = (mm: number | undefined) => (mm ?? NaN) / scale;
  const size = (box: { width: number; height: number }) => [of(box.width), of(box.height)] as const;
  const sides = (s: { left: number; top: number; right: number; bottom: number }) =>
    [of(s.left), of(s.top), of(s.right), of(s.bottom)] as const;
  const [first] = layout.windows;
  const [top] = plan.layers[0]?.windows ?? [];
  if (!first || !top) throw new Error('the case has no window');
  const { opening } = top;
  return {
    blank: size(layout.frame.blank),
    window: size(sizeOf(first.window)),
    topOpening: [of(widthOf(opening)), of(heightOf(opening))] as const,
    borders: sides(layout.borders.cut),
    seen: sides(layout.borders.seen),
    topBorders: sides(layout.topBorders.cut),
    gap: of(layout.gaps[0]?.gap),
    bridge: of(layout.gaps[0]?.bridge),
    shownStrip: of(layout.layers.at(-1)?.shownStrip.left),
    bevelRun: of(layout.layers.at(-1)?.bevel.run),
    overlap: of(first.picture?.overlap.left),
    sizeName: layout.sizeName,
  };
}
