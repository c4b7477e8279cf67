/** Windows, layers and pictures of any job lie where their measures say. */
import { describe, expect, it } from 'vitest';
import { boxAt, grow, insets, SIDES, sizeOf, type Box } from '../../../src/core/geometry/box';
import { lettersOf } from '../../../src/core/letters';
import { planned } from '../open';
import { CLOSE, forAllJobs, KINDS } from './for-all-jobs';

function expectSame(one: Box, other: Box | undefined): void {
  for (const side of SIDES) expect(Math.abs(one[side] - (other?.[side] ?? NaN))).toBeLessThan(CLOSE);
}

describe.each(KINDS)('of jobs whose frame is %s', (kind) => {
  it('borders and windows add up to the blank, as cut and as seen', () => {
    forAllJobs(kind, ({ layout, job }) => {
      const { blank, sight, rabbet, outside } = layout.frame;
      const { cut, seen } = layout.borders;
      const content = sizeOf(layout.content);
      const { lip, allowance, mouldingWidth } = job.frame;
      expect(Math.abs(cut.left + content.width + cut.right - blank.width)).toBeLessThan(CLOSE);
      expect(Math.abs(cut.top + content.height + cut.bottom - blank.height)).toBeLessThan(CLOSE);
      expect(Math.abs(seen.left + content.width + seen.right - sight.width)).toBeLessThan(CLOSE);
      expect(Math.abs(seen.top + content.height + seen.bottom - sight.height)).toBeLessThan(CLOSE);
      for (const side of SIDES) expect(seen[side]).toBeCloseTo(cut[side] - (lip - allowance / 2), 9);
      for (const axis of ['width', 'height'] as const) {
        expect(rabbet[axis]).toBeCloseTo(blank[axis] + allowance, 9);
        expect(sight[axis]).toBeCloseTo(rabbet[axis] - 2 * lip, 9);
        expect(outside[axis]).toBeCloseTo(rabbet[axis] + 2 * (mouldingWidth - lip), 9);
      }
    });
  });

  it('every opening lies inside the one above it by exactly the reveal', () => {
    forAllJobs(kind, ({ layout, job }) => {
      for (const window of layout.windows) {
        expect(window.layers).toHaveLength(job.layers.length);
        expect(window.layers.at(-1)?.opening).toEqual(window.window);
        window.layers.slice(1).forEach((lower, index) => {
          const above = window.layers[index];
          expectSame(grow(lower.opening, job.layers[index + 1]?.reveal ?? NaN), above?.opening);
        });
      }
      const reveals = SIDES.map((side) => job.layers.reduce((sum, layer) => sum + layer.reveal[side], 0));
      SIDES.forEach((side, index) =>
        expect(layout.topBorders.cut[side]).toBeCloseTo(layout.borders.cut[side] - (reveals[index] ?? NaN), 9),
      );
    });
  });

  it('face and back of a cut lie one bevel run apart, the opening being the smaller', () => {
    forAllJobs(kind, ({ layout, job }) => {
      for (const window of layout.windows) {
        window.layers.forEach(({ opening, face, back }, index) => {
          const layer = job.layers[index];
          const run = (layer?.thickness ?? NaN) * Math.tan(((layer?.bevel.angleDegrees ?? NaN) * Math.PI) / 180);
          const [smaller, larger] = layer?.bevel.direction === 'standard' ? [back, face] : [face, back];
          expect(smaller).toEqual(opening);
          expectSame(grow(smaller, run), larger);
        });
      }
    });
  });

  it('windows are as large as their pictures less the overlaps, and show them there', () => {
    forAllJobs(kind, ({ layout, job }) => {
      for (const { window, picture } of layout.windows) {
        const of = picture && job.pictures[picture.index];
        if (!picture || !of || picture.part) continue;
        const covered = of.overlapFrom === 'image' ? picture.image : picture.sheet;
        expect(sizeOf(covered).width).toBeCloseTo(of.overlapFrom === 'image' ? of.image.width : of.sheet.width, 9);
        expectSame(
          grow(covered, {
            left: -of.overlap.left,
            top: -of.overlap.top,
            right: -of.overlap.right,
            bottom: -of.overlap.bottom,
          }),
          window,
        );
        expectSame(insets(picture.image, window) as unknown as Box, picture.overlap as unknown as Box);
        expectSame(insets(picture.sheet, picture.image) as unknown as Box, of.margins as unknown as Box);
      }
    });
  });

  it('a spread shows the whole picture less what its bars hide, in its shares', () => {
    forAllJobs(kind, ({ layout, job }) => {
      for (const first of layout.windows) {
        const { part } = first.picture ?? {};
        if (!first.picture || !part || part.index > 0) continue;
        const parts = layout.windows.filter(({ at }) => at === first.at);
        expect(parts).toHaveLength(part.count);
        const of = job.pictures[first.picture.index];
        const base = of?.overlapFrom === 'image' ? of.image : of?.sheet;
        if (!of || !base) throw new Error('a spread has a picture');
        const whole = {
          width: base.width - of.overlap.left - of.overlap.right,
          height: base.height - of.overlap.top - of.overlap.bottom,
        };
        const inRow = Math.abs((parts[1]?.window.bottom ?? NaN) - first.window.bottom) < CLOSE;
        const along = inRow ? 'width' : 'height';
        const across = inRow ? 'height' : 'width';
        const shown = parts.reduce((sum, { window }) => sum + sizeOf(window)[along], 0);
        const bars = parts.slice(1).reduce((sum, { window }, index) => {
          const before = parts[index]?.window;
          return sum + (inRow ? window.left - (before?.right ?? NaN) : (before?.bottom ?? NaN) - window.top);
        }, 0);
        for (const { window } of parts) expect(sizeOf(window)[across]).toBeCloseTo(whole[across], 9);
        expect(shown + (part.way === 'hidden' ? bars : 0)).toBeCloseTo(whole[along], 8);
        // Hidden: one sheet lies still behind all the windows.
        if (part.way === 'hidden') for (const { picture } of parts) expectSame(first.picture.sheet, picture?.sheet);
      }
    });
  });
});

it('the free window stands where it was put', () => {
  for (const [at, box] of [
    [
      { left: '30 mm', bottom: '40 mm' },
      { left: 30, bottom: 40, right: 130, top: 70 },
    ],
    [
      { right: '30 mm', top: '40 mm' },
      { left: 270, bottom: 430, right: 370, top: 460 },
    ],
    [{}, { left: 150, bottom: 235, right: 250, top: 265 }],
    [{ top: '40 mm' }, { left: 150, bottom: 430, right: 250, top: 460 }],
  ] as const) {
    const { layout } = planned({ units: 'mm', frame: { size: '400 x 500' }, free: [{ size: '100 x 30', at }] });
    expect(layout.windows[0]?.window).toEqual(box);
  }
});

it('windows are lettered A to Z, then AA', () => {
  expect([0, 1, 25, 26, 27, 51, 52, 701, 702].map(lettersOf)).toEqual([
    'A',
    'B',
    'Z',
    'AA',
    'AB',
    'AZ',
    'BA',
    'ZZ',
    'AAA',
  ]);
});

it('boxes measure as they should', () => {
  const outer = boxAt({ x: 1, y: 2 }, { width: 10, height: 20 });
  expect(insets(outer, { left: 2, top: 20, right: 8, bottom: 6 })).toEqual({ left: 1, top: 2, right: 3, bottom: 4 });
});
