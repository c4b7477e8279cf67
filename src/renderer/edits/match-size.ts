/** Giving one window the width, the height or the whole size of another, in the words that one is written in. */
import { heightOf, widthOf } from '../../core/geometry/box';
import { valueAt } from '../../core/job/edit';
import { exactText } from '../../core/job/exact-text';
import type { Job } from '../../core/job/job';
import { sideTexts } from '../../core/job/size-text';
import type { WrittenJob, WrittenLength, WrittenSize, WrittenWindow } from '../../core/job/written';
import type { Layout } from '../../core/layout/layout';
import type { Edit } from '../../core/problem';
import { unitWord } from '../../core/units';
import { isGroup, nodeAt, parentOf } from './tree';

/** A job as it is written and as it is laid out. */
export interface LaidJob {
  readonly written: WrittenJob;
  readonly job: Job;
  readonly layout: Layout;
}

export type Matched = 'width' | 'height' | 'size';

export interface SizeMatch {
  /** Empty where all have it already. */
  readonly edits: readonly Edit[];
  /** How many windows no longer follow their pictures' overlaps. */
  readonly freed: number;
}

/** Paths of the windows whose size can be given or taken: all but those that share a spread's picture. */
export function sizedWindows({ layout, written }: LaidJob): { readonly at: string; readonly name: string }[] {
  return layout.windows.filter(({ at }) => windowAt(written, at) !== undefined).map(({ at, name }) => ({ at, name }));
}

/** Windows of the group that a window stands in, but for itself. */
export function groupMates(laid: LaidJob, at: string): string[] {
  const parent = parentOf(at);
  if (parent === undefined || !isGroup(nodeAt(laid.written, parent))) return [];
  const own = new RegExp(String.raw`^\.items\[\d+\]$`);
  const paths = sizedWindows(laid).map((one) => one.at);
  return paths.filter((path) => path !== at && path.startsWith(parent) && own.test(path.slice(parent.length)));
}

/** Gives windows what they take of the size of another. */
export function matchSize(laid: LaidJob, from: string, to: readonly string[], what: Matched): SizeMatch {
  const pattern = sizeOfWindow(laid, from);
  const matches = to.flatMap((at) => {
    const own = sizeOfWindow(laid, at);
    if (pattern === undefined || own === undefined) return [];
    const value =
      what === 'size'
        ? pattern.written
        : joined({ ...sideTexts(own.written), [what]: sideTexts(pattern.written)[what] });
    const before = windowAt(laid.written, at)?.size;
    if (JSON.stringify(before) === JSON.stringify(value)) return [];
    return [{ edit: { at: `${at}.size`, value }, isFreed: before === undefined }];
  });
  return { edits: matches.map(({ edit }) => edit), freed: matches.filter(({ isFreed }) => isFreed).length };
}

/** As it is written, or as it is reached where it follows a picture. */
function sizeOfWindow({ written, job, layout }: LaidJob, at: string): { readonly written: WrittenSize } | undefined {
  const window = windowAt(written, at);
  const placed = layout.windows.find((one) => one.at === at);
  if (window?.size !== undefined) return { written: window.size };
  if (window === undefined || placed === undefined) return undefined;
  const box = placed.main ?? placed.window;
  const bevel = layout.layers.at(-1)?.bevel;
  const face = job.measuredAt === 'face' && bevel?.direction === 'standard' ? 2 * bevel.run : 0;
  const text = (mm: number) => exactText(mm, job.units);
  return { written: `${text(widthOf(box) + face)} x ${text(heightOf(box) + face)}` };
}

/** The fields of a window, a bare picture's too; undefined for all else. */
function windowAt(written: WrittenJob, at: string): Partial<WrittenWindow> | undefined {
  const free = at.startsWith('free');
  const node = free ? (valueAt(written, at) as Partial<WrittenWindow> | undefined) : nodeAt(written, at);
  if (typeof node === 'string') return { picture: node };
  return node !== undefined && (free || node.kind === 'window') ? (node as Partial<WrittenWindow>) : undefined;
}

/** In one line, with the unit said once where it is one. */
function joined({ width, height }: { readonly width: WrittenLength; readonly height: WrittenLength }): WrittenSize {
  const [first, second] = [String(width), String(height)];
  const [unit, other] = [unitWord(first), unitWord(second)];
  // A length without a unit would be read in that of its neighbour.
  if ((unit === undefined) !== (other === undefined)) return { width, height };
  const isOne = unit !== undefined && unit === other && first.endsWith(unit);
  return isOne ? `${first.slice(0, -unit.length).trim()} x ${second}` : `${first} x ${second}`;
}
