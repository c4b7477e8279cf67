/** A picture without a mat in a frame of the shelf, in words: what shows of it, and what the lip covers. */
import { sizeOf } from '../geometry/box';
import type { Job } from '../job/job';
import { showFor, type Show } from '../layout/show';
import type { Layout } from '../layout/layout';
import { bordersText } from './borders-text';

/** `The lip covers 3/16 in all round; 19 5/8 x 15 5/8 in is seen.` */
export function bareSentences(layout: Layout, job: Job): string[] {
  const show = showFor(job);
  const [window] = layout.windows;
  if (!window?.picture) return [];
  const seen = show.size(sizeOf(window.window));
  return layout.frame.isFloat
    ? [`All of its ${seen} is seen, ${gapText(layout, show)}.`]
    : [`The lip covers ${bordersText(window.picture.hold, show)}; ${seen} is seen.`];
}

/** The same in a few words, for lists. */
export function bareText(layout: Layout, job: Job): string {
  const show = showFor(job);
  const hold = layout.windows[0]?.picture?.hold;
  if (layout.frame.isFloat) return gapText(layout, show);
  return hold ? `covered ${bordersText(hold, show)}` : '';
}

/** What is looked for, in place of the borders of a mat. */
export function bareWanted(job: Job): string {
  const gap = showFor(job).limit(job.frame.float.gap);
  return `Wanted: a frame of the picture’s own size, whose lip covers its edges, or a float frame with a gap of ${gap} round a canvas or panel; there is no mat.`;
}

function gapText({ frame, windows }: Layout, show: Show): string {
  const sheet = windows[0]?.picture && sizeOf(windows[0].picture.sheet);
  const { width, height } = frame.rabbet;
  const across = (width - (sheet?.width ?? width)) / 2;
  const up = (height - (sheet?.height ?? height)) / 2;
  return `with a gap of ${bordersText({ left: across, right: across, top: up, bottom: up }, show)}`;
}
