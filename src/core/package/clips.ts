/** Offset clips: which step of those at hand holds what stands out behind a frame, how many, and where. */
import type { PerSide, Size } from '../geometry/box';
import { ofKind, type OffsetClip, type Shelf } from '../shelf/shelf';
import { MM_PER_INCH } from '../units';
import { SLACK } from './range';

export interface ClipChoice {
  readonly clip: OffsetClip;
  /** Step less stand-out: to be packed between the clip and what it holds where it is more than nothing, lacking where it is less. */
  readonly over: number;
}

/** The least step that is no less than the stand-out, else the greatest there is; undefined: there are no clips. */
export function chooseClip(standOut: number, shelf: Shelf): ClipChoice | undefined {
  const clips = ofKind(shelf, 'clip')
    .filter(({ count }) => count !== 0)
    .toSorted((a, b) => a.step - b.step);
  const clip = clips.find(({ step }) => step >= standOut - SLACK) ?? clips.at(-1);
  return clip && { clip, over: clip.step - standOut };
}

/** One clip holds so much of a side, mm: 24 in. Our rule; it gives the four of common practice for 16 x 20 in. */
const HOLDS = 24 * MM_PER_INCH;

export interface ClipCount {
  readonly total: number;
  readonly each: PerSide;
  /** From one clip to the next, and twice as far as from the corner to the first; of the upper and lower side, of the others. */
  readonly apart: { readonly across: number; readonly up: number };
}

/** One on every side, and one more for each further 24 in of it; they share a side evenly. */
export function countClips({ width, height }: Size): ClipCount {
  const across = Math.max(1, Math.ceil((width - SLACK) / HOLDS));
  const up = Math.max(1, Math.ceil((height - SLACK) / HOLDS));
  return {
    total: 2 * (across + up),
    each: { left: up, right: up, top: across, bottom: across },
    apart: { across: width / across, up: height / up },
  };
}
