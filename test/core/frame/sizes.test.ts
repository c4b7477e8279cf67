/** Paper and frame sizes against their published tables. */
import { describe, expect, it } from 'vitest';
import { isoSize } from '../../../src/core/frame/iso-216';
import { findReadyMade, nameOfSize, READY_MADE_SIZES } from '../../../src/core/frame/ready-made';

describe('ISO 216', () => {
  // ISO 216: A0 has an area of 1 m2, sides 1 : sqrt 2; each next size halves the long side, rounded down to the millimetre.
  it.each(Array.from({ length: 10 }, (_, index) => index))('A%s halves into the next size', (index) => {
    const size = isoSize(`A${index}`);
    const next = isoSize(`A${index + 1}`);
    expect(next).toEqual({ width: Math.floor((size?.height ?? 0) / 2), height: size?.width });
  });

  it('A0 is one square metre to the nearest millimetre of its sides', () => {
    expect(isoSize('A0')).toEqual({ width: Math.round(1000 / 2 ** 0.25), height: Math.round(1000 * 2 ** 0.25) });
  });

  it.each([
    ['A0', 841, 1189], ['A1', 594, 841], ['A2', 420, 594], ['A3', 297, 420], ['A4', 210, 297], ['A5', 148, 210],
    ['A6', 105, 148], ['A7', 74, 105], ['A8', 52, 74], ['A9', 37, 52], ['A10', 26, 37],
    ['B0', 1000, 1414], ['B1', 707, 1000], ['B2', 500, 707], ['B3', 353, 500], ['B4', 250, 353], ['B5', 176, 250],
  ])('%s is %s x %s mm', (name, width, height) => {
    expect(isoSize(name)).toEqual({ width, height });
    expect(isoSize(name.toLowerCase())).toEqual({ width, height });
  }); // prettier-ignore

  it.each(['A11', 'B6', 'C4', 'A', '4', 'A4x', ''])('has no size %s here', (name) =>
    expect(isoSize(name)).toBeUndefined(),
  );
});

describe('photographic sizes (rule of nR sizes, "Photo print sizes", an encyclopaedia page)', () => {
  // nR: n inches and the long edge 2 in more up to 10, 3 in more from 11.
  it.each([4, 5, 8, 11])('%sR is sold as a frame', (short) => {
    const long = short + (short <= 10 ? 2 : 3);
    expect(findReadyMade(`${short}x${long} in`)?.size).toMatchObject({
      width: (short * 254) / 10,
      height: (long * 254) / 10,
    });
  });
});

describe('ready-made sizes', () => {
  it('each has a name of its own and stands upright', () => {
    expect(new Set(READY_MADE_SIZES.map(({ name }) => name)).size).toBe(READY_MADE_SIZES.length);
    for (const { width, height } of READY_MADE_SIZES) expect(width).toBeLessThanOrEqual(height);
  });

  it.each(READY_MADE_SIZES.map((size) => [size.name, size] as const))(
    '%s is found by its name and its sides',
    (name, size) => {
      expect(findReadyMade(name)).toEqual({ size, turned: false });
      expect(findReadyMade(` ${name.toUpperCase().replace('X', ' × ')} `)?.size).toEqual(size);
      expect(nameOfSize(size)).toBe(name);
    },
  );

  it('are found lying', () => {
    expect(findReadyMade('14 x 11')).toMatchObject({ size: { name: '11x14 in' }, turned: true });
    expect(nameOfSize({ width: 14 * 25.4, height: 11 * 25.4 })).toBe('14x11 in');
  });

  it('are nothing else', () => {
    expect(findReadyMade('16x20 cm')).toBeUndefined();
    expect(findReadyMade('constructor')).toBeUndefined();
    expect(nameOfSize({ width: 13 * 25.4, height: 15 * 25.4 })).toBeUndefined();
    // 16 x 20 in is 406.4 x 508 mm: not the 400 x 500 mm that is sold beside it.
    expect(nameOfSize({ width: 400, height: 500 })).toBe('40x50 cm');
  });
});
