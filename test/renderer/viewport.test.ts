/** The viewport: to the screen and back, fitting, zooming at a pixel, and the mirrored back view. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxOnScreen,
  fitBox,
  panBy,
  toScreen,
  toSheet,
  zoomAt,
  type Viewport,
} from '../../src/renderer/canvas/viewport';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc.record({ x: number(-2000, 2000), y: number(-2000, 2000) });
const viewport: fc.Arbitrary<Viewport> = fc.record({
  scale: number(0.05, 40),
  x: number(-3000, 3000),
  y: number(-3000, 3000),
  mirrorWidth: fc.option(number(50, 2000), { nil: undefined }),
});

function near(a: { x: number; y: number }, b: { x: number; y: number }) {
  expect(a.x).toBeCloseTo(b.x, 6);
  expect(a.y).toBeCloseTo(b.y, 6);
}

describe('viewport', () => {
  it('comes back to where it was from the screen', () => {
    fc.assert(fc.property(viewport, point, (view, at) => near(toSheet(view, toScreen(view, at)), at)));
  });

  it('keeps the place under the pointer when it zooms', () => {
    fc.assert(
      fc.property(viewport, point, number(0.2, 5), (view, pixel, factor) => {
        near(toSheet(zoomAt(view, pixel, factor), pixel), toSheet(view, pixel));
      }),
    );
  });

  it('moves everything by as many pixels as it pans', () => {
    fc.assert(
      fc.property(viewport, point, point, (view, at, by) => {
        const before = toScreen(view, at);
        near(toScreen(panBy(view, by), at), { x: before.x + by.x, y: before.y + by.y });
      }),
    );
  });

  it.each([undefined, 400])('fits the whole box into the room, in the middle (mirrored at %s)', (mirrorWidth) => {
    const box = { left: -20, bottom: -20, right: 420, top: 520 };
    const room = { left: 60, top: 50, right: 30, bottom: 40 };
    const view = fitBox(box, { width: 1000, height: 700 }, room, mirrorWidth);
    const shown = boxOnScreen(view, box);
    expect(shown.height).toBeCloseTo(700 - 50 - 40, 6);
    expect(shown.top).toBeCloseTo(50, 6);
    expect(shown.left - 60).toBeCloseTo(1000 - 30 - (shown.left + shown.width), 6);
  });

  it('shows left on the right from the back', () => {
    const view = { scale: 2, x: 100, y: 500, mirrorWidth: 300 };
    expect(toScreen(view, { x: 0, y: 0 })).toEqual({ x: 700, y: 500 });
    expect(toScreen(view, { x: 300, y: 10 })).toEqual({ x: 100, y: 480 });
  });
});
