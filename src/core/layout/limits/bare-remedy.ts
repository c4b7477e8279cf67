/** What would do where a picture without a mat does not sit in its frame: a frame of its size, or this one turned. */
import type { Size } from '../../geometry/box';
import type { Fix } from '../../problem';
import type { FrameSizes } from '../layout';
import type { Show } from '../show';
import { SLACK } from './slack';

export interface Remedied {
  readonly remedy: string;
  /** Makes the frame as large as the picture; one that is only turned keeps the name it is sold by. */
  readonly fix: Fix;
}

export function bareRemedy(size: Size, { blank }: FrameSizes, show: Show): Remedied {
  if (isTurned(size, blank)) {
    const value = size.width > size.height ? 'landscape' : 'portrait';
    return {
      remedy: 'turn the frame, or the picture: they are of one size',
      fix: { label: 'Turn the frame', edits: [{ at: 'frame.hung', value }] },
    };
  }
  const remedy = `take a frame of ${show.size(size)}`;
  return { remedy, fix: { label: `T${remedy.slice(1)}`, edits: frameOf(size, show) } };
}

/** The edits that give the frame a size. */
export function frameOf({ width, height }: Size, show: Show): Fix['edits'] {
  return [
    { at: 'frame.size', value: { width: show.exact(width), height: show.exact(height) } },
    { at: 'frame.readyMade', value: undefined },
    { at: 'frame.hung', value: undefined },
  ];
}

function isTurned(size: Size, blank: Size): boolean {
  const same = (a: number, b: number) => Math.abs(a - b) <= SLACK;
  return same(blank.width, size.height) && same(blank.height, size.width) && !same(size.width, size.height);
}
