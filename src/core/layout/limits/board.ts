/** Windows that leave nothing to look through, and windows that reach past the edge of the board. */
import { around, boxAt, insets, sizeOf } from '../../geometry/box';
import type { Problem } from '../../problem';
import { MM_PER_INCH } from '../../units';
import { allLeaves, type Cell, type Leaf } from '../cells';
import type { PlacedLayout } from '../layout';
import type { Show } from '../show';
import { SLACK, titled, worstSide } from './slack';

const VANISHES: Record<Leaf['from'], string> = {
  overlap: 'the overlap covers the whole picture',
  written: 'its size leaves nothing',
  'written at face': 'its bevel takes more than the size given',
  spread: 'overlap and bars hide the whole picture',
};

/** Windows whose overlap or bevel leaves nothing to look through. */
export function emptyWindows(root: Cell | undefined, free: readonly Leaf[], show: Show): Problem[] {
  return [...(root ? allLeaves(root) : []), ...free]
    .filter(({ size }) => !(size.width > 0 && size.height > 0))
    .map((leaf) => {
      const left = [
        ...(leaf.size.width > 0 ? [] : [`its width comes to ${show.length(leaf.size.width)}`]),
        ...(leaf.size.height > 0 ? [] : [`its height comes to ${show.length(leaf.size.height)}`]),
      ].join(' and ');
      return {
        code: 'window-vanishes',
        severity: 'error',
        at: leaf.at,
        message:
          `Nothing is left of the window ${titled(leaf.title).trimEnd()}: ${left}, since ${VANISHES[leaf.from]}. Cover less, or make it larger.`.replace(
            ' :',
            ':',
          ),
        value: show.size(leaf.size),
        remedy: 'cover less, or make it larger',
      };
    });
}

/** A window narrower than this leaves no room to start and stop a blade, mm: 1/2 in. Common practice, no source. */
const WINDOW_LEAST = MM_PER_INCH / 2;

/** Windows that can hardly be cut by hand, each once. */
export function tinyWindows(layout: PlacedLayout, show: Show): Problem[] {
  const told = new Set<string>();
  return layout.windows.flatMap((window): Problem[] => {
    const size = sizeOf(window.window);
    const side = size.width < size.height ? 'width' : 'height';
    if (size[side] >= WINDOW_LEAST - SLACK || told.has(window.at)) return [];
    told.add(window.at);
    return [
      {
        code: 'window-tiny',
        severity: 'warning',
        at: window.at,
        message: `Window ${window.name} ${titled(window.title)}is only ${show.missing(size[side], WINDOW_LEAST)} in ${side}: under ${show.limit(WINDOW_LEAST)} a mat cutter has hardly room to start and stop, and corners tear. Make it larger, or cut it by hand with great care.`,
        value: show.missing(size[side], WINDOW_LEAST),
        limit: show.limit(WINDOW_LEAST),
        remedy: `a window of ${show.limit(WINDOW_LEAST)} or more`,
      },
    ];
  });
}

/** Windows whose cut in the top layer, the widest, touches or passes an edge of the blank. */
export function offTheBoard(layout: PlacedLayout, show: Show): Problem[] {
  const blank = boxAt({ x: 0, y: 0 }, layout.frame.blank);
  return layout.windows.flatMap((window) => {
    const [outer] = window.layers;
    if (!outer) return [];
    const edge = insets(blank, around([outer.face, outer.back]) ?? outer.opening);
    const worst = worstSide(edge);
    if (edge[worst] > SLACK) return [];
    const past = show.length(Math.max(0, -edge[worst]));
    return [
      {
        code: 'window-off-the-board',
        severity: 'error' as const,
        at: window.at,
        message: `Window ${window.name} ${titled(window.title)}reaches ${past} past the ${worst} edge of the board in the top layer; move it in or take a larger frame.`,
        value: past,
        remedy: `move it more than ${past} away from the ${worst}`,
      },
    ];
  });
}
