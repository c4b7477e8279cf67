/** Cut plans of random jobs, judged by corners, areas and a small piece of solid geometry. */
import { describe, expect, it } from 'vitest';
import { SIDES, type Box, type Point, type Side } from '../../../src/core/geometry/box';
import type { CutLine, LayerPlan, View, WindowPlan } from '../../../src/core/cutting/plan';
import { planned } from '../open';
import { CLOSE, forAllJobs, KINDS } from '../layout/for-all-jobs';
import { leftOf, twiceArea } from './shoelace';

const VIEWS = ['front', 'back'] as const;

interface Seen {
  readonly layer: LayerPlan;
  readonly window: WindowPlan;
  readonly view: View;
  /** In the order of travel, each starting where the last ended. */
  readonly loop: readonly CutLine[];
}

function samePoint(a: Point, b: Point): boolean {
  return Math.abs(a.x - b.x) < CLOSE && Math.abs(a.y - b.y) < CLOSE;
}

/** The four cuts strung together end to start; throws when they do not close. */
function loopOf(lines: readonly CutLine[]): CutLine[] {
  const loop = [lines[0] as CutLine];
  while (loop.length < lines.length) {
    const next = lines.find((line) => samePoint(line.start, (loop.at(-1) as CutLine).end));
    if (!next || loop.includes(next)) throw new Error('the cuts do not close');
    loop.push(next);
  }
  expect(samePoint((loop.at(-1) as CutLine).end, (loop[0] as CutLine).start)).toBe(true);
  return loop;
}

function forAllCuts(kind: (typeof KINDS)[number], property: (seen: Seen, waste: 'left' | 'right') => void): void {
  forAllJobs(
    kind,
    ({ plan }) => {
      for (const layer of plan.layers)
        for (const window of layer.windows)
          for (const view of VIEWS) property({ layer, window, view, loop: loopOf(window.cuts[view]) }, plan.waste);
    },
    40,
  );
}

const middle = ({ left, right, top, bottom }: Box): Point => ({ x: (left + right) / 2, y: (top + bottom) / 2 });

describe.each(KINDS)('of jobs whose frame is %s', (kind) => {
  it('four cuts close round each window, one on each side', () => {
    forAllCuts(kind, ({ window, loop }) => {
      expect(loop).toHaveLength(4);
      expect(new Set(loop.map(({ side }) => side))).toEqual(new Set(SIDES));
      expect(window.cuts.front.map(({ side }) => side)).toEqual(SIDES);
      for (const line of loop) expect(line.name).toBe(line.side);
      for (const { start, end, side } of loop) {
        const upright = side === 'left' || side === 'right';
        expect(upright ? start.x - end.x : start.y - end.y).toBe(0);
      }
    });
  });

  it('front and back are mirror images, by corner and by area', () => {
    forAllCuts(kind, ({ layer, window, loop, view }) => {
      const edge = view === 'front' ? window.face : window.back;
      const width = layer.blank.width;
      const mirrored = view === 'front' ? (x: number) => x : (x: number) => width - x;
      const corners = [edge.left, edge.right].flatMap((x) =>
        [edge.bottom, edge.top].map((y) => ({ x: mirrored(x), y })),
      );
      for (const corner of corners) expect(loop.filter(({ start }) => samePoint(start, corner))).toHaveLength(1);
      const area = (edge.right - edge.left) * (edge.top - edge.bottom);
      const signed = twiceArea(loop.map(({ start }) => start)) / 2;
      expect(Math.abs(Math.abs(signed) - area)).toBeLessThan(1e-6);
    });
  });

  it('each cut of the back is the mirror image of its own cut of the front, but for the bevel', () => {
    forAllJobs(
      kind,
      ({ plan }) => {
        for (const { windows, blank, bevel } of plan.layers) {
          for (const { cuts } of windows) {
            expect(cuts.back).toHaveLength(cuts.front.length);
            for (const [index, front] of cuts.front.entries()) {
              const back = cuts.back[index] as CutLine;
              const upright = front.side === 'left' || front.side === 'right';
              // The two edges of one cut lie one bevel run apart, seen through the board.
              const apart = upright ? blank.width - back.start.x - front.start.x : back.start.y - front.start.y;
              expect(Math.abs(Math.abs(apart) - bevel.run)).toBeLessThan(CLOSE);
              const swapped = { left: 'right', right: 'left', top: 'top', bottom: 'bottom' } as const;
              expect(back.side).toBe(swapped[front.side as Side]);
            }
          }
        }
      },
      40,
    );
  });

  it('the waste lies on the side that was asked for, in both views', () => {
    forAllCuts(kind, ({ window, loop, view, layer }, waste) => {
      const inside = middle(view === 'front' ? window.face : window.back);
      const seen = view === 'front' ? inside : { x: layer.blank.width - inside.x, y: inside.y };
      for (const { start, end } of loop) expect(leftOf(start, end, seen) > 0 ? 'left' : 'right').toBe(waste);
      const counterClockwise = twiceArea(loop.map(({ start }) => start)) > 0;
      expect(counterClockwise ? 'left' : 'right').toBe(waste);
    });
  });

  it('the bevel slopes to where the edge on the far face lies', () => {
    forAllCuts(kind, ({ layer, window, loop, view }) => {
      // In space: this line lies on the face towards the cutter, the other edge a thickness deeper on the far face.
      const near = view === 'front' ? window.face : window.back;
      const far = view === 'front' ? window.back : window.face;
      const mirrored = ({ x, y }: Point) => (view === 'front' ? { x, y } : { x: layer.blank.width - x, y });
      const outward = { left: [-1, 0], right: [1, 0], top: [0, 1], bottom: [0, -1] } as const;
      for (const line of loop) {
        const { start, end } = line;
        const side = line.side as Side;
        const real =
          view === 'back' && (side === 'left' || side === 'right') ? (side === 'left' ? 'right' : 'left') : side;
        const [nx, ny] = outward[real];
        const onSide = (box: Box) => ({
          x: nx === 0 ? (box.left + box.right) / 2 : box[real],
          y: ny === 0 ? (box.top + box.bottom) / 2 : box[real],
        });
        const [here, there] = [onSide(near), onSide(far)];
        const out = (there.x - here.x) * nx + (there.y - here.y) * ny;
        const slopes = Math.abs(out) < CLOSE ? 'none' : out > 0 ? 'border' : 'window';
        expect(line.slopesTo).toBe(slopes);
        if (slopes !== 'none') {
          const turn = leftOf(start, end, mirrored(there));
          expect(line.bevelSide).toBe(turn > 0 ? 'left' : 'right');
          expect(Math.atan2(Math.abs(out), layer.thickness) * (180 / Math.PI)).toBeCloseTo(layer.bevel.angleDegrees, 6);
        } else expect(line.bevelSide).toBe('none');
      }
    });
  });

  it('runs past its corners by the bevel run where the far edge is the wider, else not at all', () => {
    forAllCuts(kind, ({ layer, loop }) => {
      for (const { start, end, bladeStart, bladeEnd, overcutStart: overcut, overcutEnd, slopesTo } of loop) {
        expect(overcutEnd).toBe(overcut);
        expect(overcut).toBeCloseTo(slopesTo === 'border' ? layer.bevel.run : 0, 9);
        const length = Math.hypot(end.x - start.x, end.y - start.y);
        const blade = Math.hypot(bladeEnd.x - bladeStart.x, bladeEnd.y - bladeStart.y);
        expect(blade).toBeCloseTo(length + 2 * overcut, 9);
        expect(Math.hypot(bladeStart.x - start.x, bladeStart.y - start.y)).toBeCloseTo(overcut, 9);
        expect(Math.abs(leftOf(start, end, bladeStart))).toBeLessThan(1e-6);
      }
    });
  });

  it('the guide stands as far from its edge as the cut does', () => {
    forAllCuts(kind, ({ layer, loop }) => {
      const { width, height } = layer.blank;
      for (const { side, start, guideSetting } of loop) {
        const distance = { left: start.x, right: width - start.x, bottom: start.y, top: height - start.y }[
          side as Side
        ];
        expect(Math.abs((guideSetting ?? NaN) - distance)).toBeLessThan(CLOSE);
        expect(guideSetting).toBeGreaterThan(0);
      }
    });
  });

  it('the borders of an opening are its distances from the edges of the blank', () => {
    forAllCuts(kind, ({ layer, window }) => {
      const { opening, borders } = window;
      expect(borders.left + (opening.right - opening.left) + borders.right).toBeCloseTo(layer.blank.width, 8);
      expect(borders.bottom + (opening.top - opening.bottom) + borders.top).toBeCloseTo(layer.blank.height, 8);
      expect([borders.left, borders.bottom]).toEqual([opening.left, opening.bottom]);
    });
  });
});

it('an overcut that was calibrated is used everywhere', () => {
  const { plan } = planned({ pictures: [{ size: '8x10' }], frame: { size: '12x16' }, cutting: { overcut: '2 mm' } });
  const { front = [], back = [] } = plan.layers[0]?.windows[0]?.cuts ?? {};
  expect(front).toHaveLength(4);
  for (const line of [...front, ...back]) expect([line.overcutStart, line.overcutEnd]).toEqual([2, 2]);
});

it('8x10 in 11x14, cut from the back: every number by hand (overlap 1/8, board 1/16, 45 degrees)', () => {
  const { plan } = planned({
    pictures: [{ size: '8x10', overlap: '1/8' }],
    frame: { size: '11x14' },
    free: [{ size: '1 x 1/2', at: { left: '2 1/4', bottom: '1 1/2' } }],
    borders: { rule: 'by-hand', left: '1', bottom: '3' },
  });
  const inch = 25.4;
  const cuts = plan.layers[0]?.windows[0]?.cuts;
  const left = { front: cuts?.front[0], back: cuts?.back[0] };
  // The picture window, 7 3/4 x 9 3/4, stands 1 in from the left and 3 in from the bottom.
  expect(left.back).toMatchObject({ side: 'right', slopesTo: 'border', bevelSide: 'left' });
  expect(left.back?.start.x).toBeCloseTo((11 - 1) * inch, 9);
  expect(left.back?.start.y).toBeCloseTo((3 + 9.75) * inch, 9);
  expect(left.back?.end.y).toBeCloseTo(3 * inch, 9);
  expect(left.back?.bladeEnd.y).toBeCloseTo((3 - 1 / 16) * inch, 9);
  expect(left.back?.guideSetting).toBeCloseTo(inch, 9);
  // From the front the line is the face edge, a bevel run further out, and runs up with the waste on the right.
  expect(left.front).toMatchObject({
    side: 'left',
    slopesTo: 'window',
    bevelSide: 'right',
    overcutStart: 0,
    overcutEnd: 0,
  });
  expect(left.front?.start.x).toBeCloseTo((1 - 1 / 16) * inch, 9);
  expect(left.front?.start.y).toBeCloseTo((3 - 1 / 16) * inch, 9);
  expect(left.front?.end.y).toBeCloseTo((12.75 + 1 / 16) * inch, 9);
});
