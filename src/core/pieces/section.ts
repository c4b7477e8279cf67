/** The moulding a frame is made of, as far as its measures are known: the job's own, or one of the shelf. */
import type { Frame, FrameCorners, Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Moulding } from '../shelf/shelf';

export interface Section {
  /** What it is called on the shelf; undefined: the job's own. */
  readonly name?: string;
  /** Of its face, mm. */
  readonly width: number;
  readonly lip: number;
  /** Front to back. */
  readonly depth?: number;
  /** From the back of the lip to the back of the moulding. */
  readonly rabbetDepth?: number;
  readonly colour: string;
  readonly corners: FrameCorners;
  /** Of one metre, kg. */
  readonly weight?: number;
}

/** Of a moulding of the shelf, mm; a float frame has none, whatever its moulding has when it is used otherwise. */
export function lipOf(moulding: Moulding, { build }: Pick<Frame, 'build'>, own: number): number {
  return build === 'float' ? own : (moulding.lip ?? own);
}

/** What the shelf leaves open is taken from the job, as far as that has to be the same for every moulding. */
export function sectionOf({ frame }: Job, layout: Layout, moulding?: Moulding): Section {
  const { lip, mouldingWidth, colour } = layout.frame;
  const { corners } = frame;
  if (!moulding)
    return {
      corners,
      width: mouldingWidth,
      lip,
      colour,
      ...known('depth', frame.mouldingDepth),
      ...known('rabbetDepth', frame.rabbetDepth),
    };
  const { name, face, depth, rabbetDepth, weight } = moulding;
  return {
    name,
    corners,
    width: face,
    lip: lipOf(moulding, frame, lip),
    colour: moulding.colour ?? colour,
    ...known('depth', depth),
    ...known('rabbetDepth', rabbetDepth),
    ...known('weight', weight),
  };
}

function known<K extends string>(key: K, value: number | undefined): Partial<Record<K, number>> {
  return value === undefined ? {} : ({ [key]: value } as Record<K, number>);
}
