/** Shelves and jobs for tests of finding a frame: sizes in inches unless said otherwise. */
import type { Candidate } from '../../../src/core/finding/candidate';
import { findFrames, type Found } from '../../../src/core/finding/find-frames';
import { readJob } from '../../../src/core/job/read';
import type { Job } from '../../../src/core/job/job';
import { readShelf } from '../../../src/core/shelf/read-shelf';
import type { Shelf, ShelfFrame } from '../../../src/core/shelf/shelf';
import { written, type Contents } from '../open';

/** Frames of given sizes and nothing else, called by their sizes: `11x14`. */
export function framesOf(...sizes: readonly string[]): ShelfFrame[] {
  return sizes.map((name) => {
    const [width, height] = name.split('x').map((side) => Number(side) * 25.4);
    return frameOf({ name, size: { width: width!, height: height! } });
  });
}

export function frameOf(frame: Pick<ShelfFrame, 'name' | 'size'> & Partial<ShelfFrame>): ShelfFrame {
  return { kind: 'frame', build: 'open back', corners: 'mitred', comesWith: [], grooves: [], ...frame };
}

/** Rows of a shelf's file under its heading. */
export function shelfOf(...rows: readonly string[]): Shelf {
  const read = readShelf(rows.join('\n'));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read.value;
}

/** A job that can be understood, whether or not it can be cut in its own frame. */
export function understood(contents: Contents): Job {
  const opened = readJob(written(contents));
  if (!opened.ok) throw new Error(opened.problems.map(({ message }) => message).join('\n'));
  return opened.value.job;
}

export function found(contents: Contents, shelf: Shelf): Found {
  return findFrames(understood({ units: 'in', ...contents }), shelf);
}

/** One of what was found, by its name and the way it hangs. */
export function one({ candidates }: Found, name: string, turned = false): Candidate {
  const candidate = candidates.find((each) => each.frame.name === name && each.turned === turned);
  if (!candidate) throw new Error(`no ${name} among ${candidates.map(({ frame }) => frame.name).join(', ')}`);
  return candidate;
}

/** In inches: left, top, right, bottom. */
export function inchesOf(borders: Candidate['borders'], measured: 'cut' | 'seen' = 'cut'): number[] {
  if (!borders) throw new Error('there are no borders');
  const { left, top, right, bottom } = borders[measured];
  return [left, top, right, bottom].map((mm) => Number((mm / 25.4).toFixed(9)));
}

/** Those that work, best first. */
export function working({ candidates }: Found): string[] {
  return candidates.filter(({ works }) => works).map(({ frame, turned }) => frame.name + (turned ? ' turned' : ''));
}
