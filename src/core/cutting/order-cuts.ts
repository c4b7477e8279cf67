/** The order of cuts with a parallel guide: fewest moves of the guide, fewest turns of the board, a sheet that stays stiff. */
import { SIDES, type Side } from '../geometry/box';
import type { CutStep, View, WindowPlan } from './plan';

export const ORDER_RULE =
  'The guide goes once from the widest setting to the narrowest: it is moved once for each different setting and never back, and the middle of the sheet is cut while the board round it is still whole. At one setting all cuts along one edge are made before the board is turned, and it is only ever turned on to the next edge that has a cut.';

/** Settings that differ by less are one, mm: finer than any guide can be set. */
const SAME_SETTING = 0.005;

interface Pending {
  readonly window: number;
  readonly cut: number;
  readonly side: Side;
  readonly setting: number;
  /** Where along the edge the cut starts. */
  readonly along: number;
}

/** Steps for one view. */
export function orderCuts(windows: readonly WindowPlan[], view: View): CutStep[] {
  const left = windows.map((window) => window.cuts.length);
  const steps: CutStep[] = [];
  let side: Side = 'left';
  for (const group of bySetting(pendingOf(windows, view))) {
    for (const [place, next] of turnOrder(group, side).entries()) {
      const remaining = (left[next.window] ?? 0) - 1;
      left[next.window] = remaining;
      steps.push({
        number: steps.length + 1,
        window: next.window,
        cut: next.cut,
        guideSetting: next.setting,
        moveGuide: place === 0,
        turnBoard: steps.length > 0 && next.side !== side,
        dropsOut: remaining === 0,
      });
      side = next.side;
    }
  }
  return steps;
}

function pendingOf(windows: readonly WindowPlan[], view: View): Pending[] {
  return windows.flatMap((window, index) =>
    window.cuts.map((cut, place) => {
      const line = cut[view];
      const along = line.side === 'left' || line.side === 'right' ? line.start.y : line.start.x;
      return { window: index, cut: place, side: line.side, setting: line.guideSetting, along };
    }),
  );
}

/** Groups of one setting each, widest first. */
function bySetting(cuts: readonly Pending[]): Pending[][] {
  const groups: Pending[][] = [];
  for (const cut of cuts.toSorted((a, b) => b.setting - a.setting)) {
    const group = groups.at(-1);
    if (group?.[0] && group[0].setting - cut.setting <= SAME_SETTING) group.push(cut);
    else groups.push([cut]);
  }
  return groups;
}

/** The edge at the guide first, then round the board; along each edge in one sweep. */
function turnOrder(group: readonly Pending[], from: Side): Pending[] {
  const first = SIDES.indexOf(from);
  const turns = (cut: Pending) => (SIDES.indexOf(cut.side) - first + SIDES.length) % SIDES.length;
  return group.toSorted((a, b) => turns(a) - turns(b) || a.along - b.along || a.window - b.window);
}
