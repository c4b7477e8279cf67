/** The order of cuts keeps its own rule: least moves of the guide, least turns of the board, every cut once. */
import { describe, expect, it } from 'vitest';
import { orderCuts, ORDER_RULE } from '../../../src/core/cutting/order-cuts';
import type { CutLine, LayerPlan, View } from '../../../src/core/cutting/plan';
import { planned } from '../open';
import { forAllJobs, KINDS } from '../layout/for-all-jobs';

/** Finer than any guide can be set, mm. */
const SAME_SETTING = 0.005;

/** Settings so far apart that the guide has to be moved between them. */
function differentSettings(settings: readonly number[]): number {
  let groups = 0;
  let widest = Infinity;
  for (const setting of settings.toSorted((a, b) => b - a)) {
    if (widest - setting <= SAME_SETTING) continue;
    groups += 1;
    widest = setting;
  }
  return groups;
}

function lineOf(layer: LayerPlan, view: View, step: { window: number; cut: number }): CutLine {
  const line = layer.windows[step.window]?.cuts[view][step.cut];
  if (!line) throw new Error('a step names a cut of the plan');
  return line;
}

describe.each(KINDS)('of jobs whose frame is %s', (kind) => {
  const forAllOrders = (property: (layer: LayerPlan, view: View) => void) =>
    forAllJobs(
      kind,
      ({ plan }) => {
        for (const layer of plan.layers) for (const view of ['front', 'back'] as const) property(layer, view);
      },
      60,
    );

  it('each cut is made exactly once, numbered from 1', () => {
    forAllOrders((layer, view) => {
      const steps = layer.order[view];
      expect(steps.map(({ number }) => number)).toEqual(steps.map((_, index) => index + 1));
      const made = new Set(steps.map(({ window, cut }) => `${window} ${cut}`));
      expect(made.size).toBe(steps.length);
      expect(steps).toHaveLength(layer.windows.length * 4);
    });
  });

  it('the guide is set to each cut, never widened, and moved as seldom as can be', () => {
    forAllOrders((layer, view) => {
      const steps = layer.order[view];
      for (const step of steps) expect(step.guideSetting).toBe(lineOf(layer, view, step).guideSetting);
      steps
        .slice(1)
        .forEach((step, index) =>
          expect(step.guideSetting).toBeLessThanOrEqual((steps[index]?.guideSetting ?? NaN) + SAME_SETTING),
        );
      expect(steps[0]?.moveGuide).toBe(true);
      expect(steps.filter(({ moveGuide }) => moveGuide)).toHaveLength(
        differentSettings(steps.map(({ guideSetting }) => guideSetting as number)),
      );
      // What is cut without moving the guide lies within what a guide can tell.
      let set = NaN;
      for (const { moveGuide, guideSetting = NaN } of steps) {
        if (moveGuide) set = guideSetting;
        expect(Math.abs(guideSetting - set)).toBeLessThanOrEqual(SAME_SETTING);
      }
    });
  });

  it('the board is turned only on to another edge, and at one setting only once to each', () => {
    forAllOrders((layer, view) => {
      const steps = layer.order[view];
      let sides: string[] = [];
      steps.forEach((step, index) => {
        const { side } = lineOf(layer, view, step);
        const before = steps[index - 1];
        expect(step.turnBoard).toBe(before !== undefined && lineOf(layer, view, before).side !== side);
        if (step.moveGuide) {
          const here = steps.filter(
            (other, place) =>
              place >= index && !steps.slice(index + 1, place + 1).some(({ moveGuide }) => moveGuide) && other,
          );
          // An edge that lies at the guide already and has a cut at the new setting comes first.
          const edges = new Set(here.map((other) => lineOf(layer, view, other).side));
          const last = sides.at(-1);
          if (last !== undefined && edges.has(last as 'left')) expect(side).toBe(last);
          sides = [];
        }
        if (sides.at(-1) !== side) {
          expect(sides).not.toContain(side);
          sides.push(side as string);
        }
      });
    });
  });

  it('each window falls out once, with its last cut', () => {
    forAllOrders((layer, view) => {
      const left = layer.windows.map(({ cuts }) => cuts[view].length);
      for (const { window, dropsOut } of layer.order[view]) {
        left[window] = (left[window] ?? 0) - 1;
        expect(dropsOut).toBe(left[window] === 0);
      }
      expect(left.every((cuts) => cuts === 0)).toBe(true);
    });
  });
});

describe('worked examples', () => {
  it('one window with four equal borders: one setting, four edges in turn', () => {
    const { plan } = planned({ pictures: [{ size: '10x14', overlap: '1/8' }], frame: { size: '16x20' } });
    const steps = plan.layers[0]?.order.back ?? [];
    expect(steps.map(({ moveGuide }) => moveGuide)).toEqual([true, false, false, false]);
    expect(steps.map(({ turnBoard }) => turnBoard)).toEqual([false, true, true, true]);
    expect(steps.map(({ dropsOut }) => dropsOut)).toEqual([false, false, false, true]);
  });

  it('sides 2 in, top and bottom 3 in: two settings, the wider first', () => {
    const { plan } = planned({ pictures: [{ size: '8 1/4 x 8 1/4', overlap: '1/8' }], frame: { size: '12x14' } });
    const steps = plan.layers[0]?.order.back ?? [];
    expect(steps.map(({ guideSetting }) => Math.round((guideSetting ?? NaN) * 10) / 10)).toEqual([
      76.2, 76.2, 50.8, 50.8,
    ]);
    expect(steps.filter(({ moveGuide }) => moveGuide)).toHaveLength(2);
  });

  it('settings that drift by less than a guide can tell are one until the drift adds up', () => {
    const windows =
      planned({
        units: 'mm',
        frame: { size: '900 x 900' },
        free: [0, 0.004, 0.008].map((drift, index) => ({
          size: '50 x 50',
          at: { left: `${100 + drift} mm`, bottom: `${100 + 200 * index + 7 * index} mm` },
        })),
      }).plan.layers[0]?.windows ?? [];
    const steps = orderCuts(windows, 'front').filter(
      ({ window, cut }) => windows[window]?.cuts.front[cut]?.side === 'left',
    );
    expect(steps.map(({ window }) => window)).toContain(2);
    // 100.008 and 100.004 in one, 100 in the next.
    expect(steps.map(({ moveGuide }) => moveGuide).filter(Boolean)).toHaveLength(2);
  });

  it('says its rule in words', () => expect(ORDER_RULE).toMatch(/widest setting to the narrowest/));
});
