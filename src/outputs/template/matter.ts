/** What is drawn at full scale over the pages of a paper: how large it is, where it has something to show, what joins avoid. */
import type { Box, Point, Size } from '../../core/geometry/box';
import { boundsOf } from '../../core/geometry/outline';
import type { CutLine } from '../../core/cutting/plan';
import { borderStrips } from './border-strips';
import { cutMeets } from './curve-drawing';
import { clipLine, shared, type ViewLayer } from './view-geometry';

export interface Matter {
  /** All of it; its lower left corner is the common origin. */
  readonly blank: Size;
  /** Positions that joins should stay clear of, from the left and from the bottom. */
  readonly avoid: { readonly across: readonly number[]; readonly up: readonly number[] };
  /** True where a part of it has something to show. */
  readonly holds: (part: Box) => boolean;
  /** True where the mark of a join would lie on something. */
  readonly meets: (spot: Box) => boolean;
}

export function layerMatter(layer: ViewLayer): Matter {
  const { blank, view, windows, lines } = layer;
  const cuts = [
    ...windows.map((window) => window.cut),
    ...(view === 'front' ? lines.map(({ middle }) => boundsOf(middle)) : []),
  ];
  const strips = borderStrips(layer).map(({ strip }) => strip);
  return {
    blank,
    avoid: {
      across: cuts.flatMap((cut) => [cut.left, cut.right]),
      up: cuts.flatMap((cut) => [cut.bottom, cut.top]),
    },
    // A part with nothing but the blank's edge is paper wasted: borders reach all four edges, so that what is printed
    // still lies edge on edge.
    holds: (part) =>
      windows.some((window) => window.lines.some((line) => bladeMeets(line, part))) ||
      strips.some((strip) => shared(strip, part)) ||
      // On the back they are only shown where there is something else to show.
      (view === 'front' && lines.some(({ inner, outer }) => cutMeets(inner, part) || cutMeets(outer, part))),
    meets: (spot) => windows.some((window) => window.lines.some((line) => cutLineMeets(line, spot))),
  };
}

function bladeMeets({ bladeStart, bladeEnd, curve }: CutLine, part: Box): boolean {
  return curve ? cutMeets(curve, part) : clipLine(bladeStart, bladeEnd, part) !== undefined;
}

function cutLineMeets({ start, end, curve }: CutLine, spot: Box): boolean {
  return curve ? cutMeets(curve, spot) : clipLine(start, end, spot) !== undefined;
}

/** The box round a spot in which the mark of a join needs room, mm. */
export function roomRound({ x, y }: Point): Box {
  return { left: x - 6, right: x + 6, bottom: y - 6, top: y + 6 };
}
