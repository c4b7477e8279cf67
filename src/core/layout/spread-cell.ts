/** One picture over several windows, as a row or a column of cells. */
import { grow, heightOf, insets, shift, sizeOf, widthOf, type Box } from '../geometry/box';
import type { Job, SpreadItem } from '../job/job';
import { assert } from '../problem';
import type { Group, Leaf, Line } from './cells';
import { overlappedWindow, turnedBoxes } from './picture-boxes';

/** A row or column of windows that together show one picture. */
export function spreadOf(item: SpreadItem, job: Job, groups: readonly Group[]): Line {
  const picture = job.pictures[item.picture];
  assert(picture, 'a spread shows a picture');
  const { window, sheet, image } = turnedBoxes(overlappedWindow(picture), item.turned);
  const along = item.along === 'row' ? 'across' : 'up';
  const whole = along === 'across' ? widthOf(window) : heightOf(window);
  const hidden = item.bars === 'hide' ? item.gap : 0;
  const shown = whole - hidden * (item.shares.length - 1);
  const cells: Leaf[] = [];
  const line: Line = { kind: 'line', axis: along, cells, gap: item.gap, gapAt: `${item.at}.gap`, align: 'centre' };
  let start = 0;
  for (const [index, share] of item.shares.entries()) {
    const length = share * shown;
    // The part of the whole window that this window shows, seen from the whole window's lower left corner.
    const part =
      along === 'across'
        ? { left: window.left + start, right: window.left + start + length, bottom: window.bottom, top: window.top }
        : { left: window.left, right: window.right, top: window.top - start, bottom: window.top - start - length };
    const lay = (box: Box) => shift(box, { x: -part.left, y: -part.bottom });
    const own = grow(part, insets(sheet, window));
    cells.push({
      kind: 'leaf',
      at: item.at,
      use: 'picture',
      title: `${item.title} (${index + 1} of ${item.shares.length})`,
      size: sizeOf(part),
      shape: { kind: 'rectangle' },
      faults: [],
      lines: item.lines,
      picture: {
        index: item.picture,
        // Split: each part is a sheet of its own, with as much beyond its window as the whole has beyond the outer ones.
        sheet: lay(item.bars === 'split' ? own : sheet),
        image: lay(image),
        ...(item.turned === 0 ? {} : { turned: item.turned }),
        part: { index, count: item.shares.length, way: item.bars === 'hide' ? 'hidden' : 'split' },
      },
      groups: [...groups, line],
      from: 'spread',
    });
    start += length + hidden;
  }
  return line;
}
