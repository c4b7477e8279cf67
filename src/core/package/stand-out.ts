/** What stands out behind the frame, as canvases do, and how it is held there. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Shelf } from '../shelf/shelf';
import { intoFrame } from './fixing-screws';
import { chooseClip, countClips, type ClipChoice, type ClipCount } from './clips';
import { carriesItself, lyingPictures } from './pictures';
import { exactly, less, SLACK, type Range } from './range';
import { limitsOf, type ScrewLimits } from './screws';
import { sideView, type SideView } from './side-view';
import type { Stack } from './stack';

/** What is known beside the job. */
export interface Around {
  readonly shelf: Shelf;
  /** What keeps the frame's back off the wall, mm. */
  readonly wallGap: number;
}

export interface StandOut {
  /** Depth of the canvas with all else that lies in the rabbet: a rabbet so deep hides it. */
  readonly contents: Range;
  /** Contents less rabbet depth; negative: it lies within. Undefined: the rabbet's depth is not known. */
  readonly standOut?: Range;
  /** Where it stands out. */
  readonly side?: SideView;
  readonly clips?: ClipChoice;
  readonly count: ClipCount;
  /** Of the screw that holds a clip on the frame. */
  readonly intoFrame: ScrewLimits;
  /** Of one that holds it on the canvas's bar. */
  readonly intoBar?: ScrewLimits;
}

/** Of a canvas or a panel, and of any package that is held by offset clips; not in a float frame, whose back is closed by its ledge. */
export function standOutOf(job: Job, layout: Layout, { contents }: Stack, around: Around): StandOut | undefined {
  const { frame, package: held } = job;
  const canvas = lyingPictures(job, layout).find(({ picture }) => carriesItself(picture));
  if (frame.build === 'float' || !(canvas || held.fixing.kind === 'offset clips')) return undefined;
  const depth = frame.rabbetDepth;
  const standOut = depth === undefined ? undefined : less(contents, exactly(depth));
  const clips = standOut && chooseClip(Math.max(0, standOut.nominal), around.shelf);
  const inset = frame.mouldingWidth - frame.lip + frame.allowance / 2;
  return {
    contents,
    ...(standOut ? { standOut } : {}),
    ...(standOut && standOut.nominal > SLACK ? { side: sideView(standOut.nominal, inset, around.wallGap) } : {}),
    ...(clips ? { clips } : {}),
    count: countClips(layout.frame.blank),
    intoFrame: intoFrame(job, around.shelf),
    ...(canvas?.picture.kind === 'painting on canvas'
      ? { intoBar: limitsOf({ into: 'the bar of the stretcher', wood: canvas.picture.thinnest }, around.shelf) }
      : {}),
  };
}
