/** How the sizes of a picture in its frame without a mat were reached, in words. */
import { sizeOf } from '../geometry/box';
import type { Job } from '../job/job';
import { assert } from '../problem';
import { lengthText, showingOf } from '../units';
import { frameSums, pair } from './derive-frame';
import type { Derivation, PlacedLayout } from './layout';

/** The frame, then what is seen of the picture. */
export function bareDerivations(job: Job, layout: PlacedLayout): Derivation[] {
  const show = (mm: number) => lengthText(mm, showingOf(job));
  const [window] = layout.windows;
  assert(window?.picture, 'a job without a mat shows its picture');
  const sheet = sizeOf(window.picture.sheet);
  const seen = sizeOf(window.window);
  const how = (side: 'width' | 'height') =>
    seen[side] === sheet[side]
      ? 'the whole face of the picture'
      : `picture ${show(sheet[side])} − 2 × ${show((sheet[side] - seen[side]) / 2)} under the lip`;
  return [
    ...frameSums(job, layout, (side) => `the picture's ${side} ${show(sheet[side])}`, show),
    ...pair('windows[0].window', 'Seen of the picture', seen, how),
  ];
}
