/** Words on a drawn piece: whole or not there, within it, and none over another. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrowPlace, labelGrounds, letterPlace, linesThatFit, type Room } from '../../src/renderer/sheets/labels';

const LETTER = 12;
const LINES = [{ text: '7' }, { text: 'Mat layer 1' }, { text: '16 x 20 in', isSize: true }];
const at = (width: number, height: number): Room => ({ x: 30, y: 40, width, height });
const overlap = (a: Room, b: Room) => a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height; // prettier-ignore
const within = (a: Room, b: Room) => a.x >= b.x - 1e-9 && a.y >= b.y - 1e-9 && a.x + a.width <= b.x + b.width + 1e-9 && a.y + a.height <= b.y + b.height + 1e-9; // prettier-ignore

describe('the words of a piece', () => {
  it('are all there where there is room, the number alone where there is little, and never cut short', () => {
    expect(linesThatFit(LINES, at(200, 200), LETTER)).toEqual(['7', 'Mat layer 1', '16 x 20 in']);
    expect(linesThatFit(LINES, at(50, 200), LETTER)).toEqual(['7', '16 x', '20 in']);
    expect(linesThatFit(LINES, at(30, 200), LETTER)).toEqual(['7']);
    expect(linesThatFit(LINES, at(10, 200), LETTER)).toEqual([]);
  });

  it('lie apart from arrow and letters of windows, all within their piece, at any size', () => {
    const side = fc.double({ min: 3, max: 400, noNaN: true });
    let both = 0;
    fc.assert(
      fc.property(side, side, fc.boolean(), fc.double({ min: 0.05, max: 0.4, noNaN: true }), (width, height, turned, border) => {
        const piece = at(width, height);
        const grounds = labelGrounds(linesThatFit(LINES, piece, LETTER), piece, LETTER);
        const arrow = arrowPlace(piece, turned, LETTER, grounds);
        const window = { x: piece.x + border * width, y: piece.y + border * height, width: (1 - 2 * border) * width, height: (1 - 2 * border) * height };
        const letter = letterPlace('A', window, LETTER, [...grounds, arrow ?? []].flat());
        const there = [...grounds, arrow ?? [], letter ?? []].flat();
        if (grounds.length > 0 && arrow && letter) both += 1;
        for (const one of there) expect(within(one, piece)).toBe(true);
        there.forEach((one, index) => there.slice(index + 1).forEach((other) => expect(overlap(one, other)).toBe(false)));
        if (letter) expect(within(letter, window)).toBe(true);
      }),
      { numRuns: 500 },
    ); // prettier-ignore
    // In one of fifteen, as a rule.
    expect(both).toBeGreaterThan(5);
  });

  it('point to the edge that hangs at the top', () => {
    const up = arrowPlace(at(200, 100), false, LETTER, [])!;
    expect([up.x + up.width / 2, up.y < 60]).toEqual([130, true]);
    const left = arrowPlace(at(200, 100), true, LETTER, [])!;
    expect([left.y + left.height / 2, left.x < 50]).toEqual([90, true]);
    expect(arrowPlace(at(15, 100), true, LETTER, [])).toBeUndefined();
  });
});
