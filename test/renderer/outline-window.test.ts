/** A window with an outline of one's own: the size proposed for it, and what one typed side means. */
import { describe, expect, it } from 'vitest';
import {
  fittedIn, hung, isInProportion, meantSize, plainSizeText, proportionsOf,
} from '../../src/renderer/edits/outline-window'; // prettier-ignore

const IN = 25.4;
const inches = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;
const shape = { kind: 'outline', path: 'M0 0H30V40H0Z' } as const;
const natural = { width: 30, height: 40 };

describe('proportions', () => {
  it('are those of the path, as the window hangs', () => {
    expect(proportionsOf({ shape })).toEqual(natural);
    expect(proportionsOf({ shape, turned: 90 })).toEqual({ width: 40, height: 30 });
    expect(proportionsOf({ shape, turned: 180 })).toEqual(natural);
    expect(hung(natural, 270)).toEqual({ width: 40, height: 30 });
    for (const other of ['oval', { kind: 'outline', path: 'M0 0' }] as const)
      expect(proportionsOf({ shape: other })).toBeUndefined();
    expect(proportionsOf({})).toBeUndefined();
  });

  it('the largest size that fits is proposed, and is in proportion as it is written', () => {
    expect(fittedIn({ width: 300, height: 100 }, natural)).toEqual({ width: 75, height: 100 });
    expect(fittedIn({ width: 60, height: 100 }, natural)).toEqual({ width: 60, height: 80 });
    const odd = { width: 72, height: 112 };
    const fitted = fittedIn({ width: 8 * IN, height: 10 * IN }, odd);
    expect(plainSizeText(fitted, 'in')).toBe('6.4286 x 10');
    expect(isInProportion({ width: 6.4286 * IN, height: 10 * IN }, odd)).toBe(true);
    expect(isInProportion({ width: 6.43 * IN, height: 10 * IN }, odd)).toBe(false);
  });
});

describe('a typed size', () => {
  const meant = (typed: string, before = '6 x 8') => meantSize(typed, before, natural, inches);
  it.each([
    ['9', '9 x 12'],
    ['4 1/2 in', '4 1/2 x 6'],
    ['76.2 mm', '3 x 4'],
    ['9 x 8', '9 x 12'],
    ['6 x 10', '7 1/2 x 10'],
    ['6 x 8', '6 x 8'],
    ['9 x 9', '9 x 9'],
    ['9 x', '9 x'],
    ['', ''],
    ['-3', '-3'],
    ['fern', 'fern'],
  ])('%s means %s', (typed, size) => expect(meant(typed)).toBe(size));

  it('where none stood before means what it says, but for a single side', () => {
    expect(meant('9 x 8', '')).toBe('9 x 8');
    expect(meant('9', '')).toBe('9 x 12');
  });
});
