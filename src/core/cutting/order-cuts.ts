/** The order of cuts with a parallel guide: fewest moves of the guide, fewest turns of the board, a sheet that stays stiff. */
import { SIDES } from '../geometry/box';
import type { CutStep, View, WindowPlan } from './plan';

/** How cuts are ordered that a guide leads. */
export const ORDER_RULE =
  'The guide goes once from the widest setting to the narrowest: it is moved once for each different setting and never back, and the middle of the sheet is cut while the board round it is still whole. At one setting all cuts along one edge are made before the board is turned, and it is only ever turned on to the next edge that has a cut.';

/** What becomes of the others. */
export const FREE_RULE =
  'Cuts that no parallel guide can lead come after them, window by window, each window whole before the next.';

/** Settings that differ by less are one, mm: finer than any guide can be set. */
const SAME_SETTING = 0.005;

/** A cut that waits for its turn. */
interface Pending {
  readonly window: number;
  readonly cut: number;
  readonly setting: number;
  /** Where along the edge the cut starts. */
  readonly along: number;
}

/** Cuts of one guide setting, apart by the edge that lies at the guide, in the order of `SIDES`. */
type Group = readonly Pending[][];

/** What has cuts to be put in order. */
type Ordered = Pick<WindowPlan, 'cuts'>;

/** Steps for one view. */
export function orderCuts(windows: readonly Ordered[], view: View): CutStep[] {
  const left = windows.map((window) => window.cuts[view].length);
  const steps: CutStep[] = [];
  let edge = 0;
  for (const group of bySetting(windows, view)) {
    let first = true;
    // The edge at the guide first, then round the board.
    for (let turn = 0, from = edge; turn < SIDES.length; turn += 1) {
      const side = (from + turn) % SIDES.length;
      for (const { window, cut, setting } of inOneSweep(group[side] ?? [])) {
        const remaining = (left[window] ?? 0) - 1;
        left[window] = remaining;
        steps.push({
          number: steps.length + 1,
          window,
          cut,
          guideSetting: setting,
          moveGuide: first,
          turnBoard: steps.length > 0 && side !== edge,
          dropsOut: remaining === 0,
        });
        edge = side;
        first = false;
      }
    }
  }
  return [...steps, ...freeSteps(windows, view, steps.length)];
}

/** Cuts without a guide, the last of which lets the window fall out. */
function freeSteps(windows: readonly Ordered[], view: View, before: number): CutStep[] {
  const free = windows.flatMap((window, index) =>
    window.cuts[view].flatMap((line, cut) => (line.guideSetting === undefined ? [{ window: index, cut }] : [])),
  );
  return free.map((one, place) => ({
    number: before + place + 1,
    ...one,
    moveGuide: false,
    turnBoard: false,
    dropsOut: free[place + 1]?.window !== one.window,
  }));
}

/** Groups of one setting each, widest first. Sorted are the settings, of which even a wall of windows has few. */
function bySetting(windows: readonly Ordered[], view: View): Group[] {
  const found = new Map<number, Group>();
  windows.forEach(({ cuts }, window) =>
    cuts[view].forEach(({ side, start, guideSetting: setting }, cut) => {
      if (side === undefined || setting === undefined) return;
      const along = side === 'left' || side === 'right' ? start.y : start.x;
      let group = found.get(setting);
      if (!group) found.set(setting, (group = SIDES.map(() => [])));
      group[SIDES.indexOf(side)]?.push({ window, cut, setting, along });
    }),
  );
  const groups: Group[] = [];
  let widest = Infinity;
  for (const [setting, group] of [...found].sort(([a], [b]) => b - a)) {
    const last = groups.at(-1);
    if (last && widest - setting <= SAME_SETTING) group.forEach((cuts, side) => last[side]?.push(...cuts));
    else {
      groups.push(group);
      widest = setting;
    }
  }
  return groups;
}

/** Along an edge, without going back. */
function inOneSweep(cuts: Pending[]): readonly Pending[] {
  return cuts.sort((a, b) => compare(a.along, b.along) || a.window - b.window);
}

/** A whole number, where a difference of doubles would leave one behind on the heap at every comparison. */
function compare(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
