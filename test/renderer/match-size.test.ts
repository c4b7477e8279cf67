/** One window takes the width, height or size of another, in that one's words, and no window follows a picture unsaid. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightOf, widthOf } from '../../src/core/geometry/box';
import { setAll } from '../../src/core/job/edit';
import { sideTexts, turnedSize } from '../../src/core/job/size-text';
import { Reader } from '../../src/core/job/reader';
import type { WrittenSize } from '../../src/core/job/written';
import { groupMates, matchSize, sizedWindows, type Matched } from '../../src/renderer/edits/match-size';
import { spellOut } from '../../src/renderer/edits/spell-out';
import { length } from '../core/arbitrary-jobs';
import { planned, type Contents, type Planned } from '../core/open';

const of = (items: readonly unknown[], more: object = {}) =>
  planned({
    pictures: [{ id: 'fern', size: '8 x 10 in' }],
    windows: { kind: 'row', gap: '2 in', items },
    ...more,
  } as Contents);

function matched(before: Planned, from: string, to: readonly string[], what: Matched): Planned {
  const { edits } = matchSize(before, from, to, what);
  const { format: _format, version: _version, ...contents } = setAll(spellOut(before.written, edits), edits);
  return planned(contents);
}

const sizeAt = ({ layout }: Planned, at: string): number[] => {
  const { window } = layout.windows.find((one) => one.at === at)!;
  return [widthOf(window) / 25.4, heightOf(window) / 25.4];
};
const [A, B, C] = [0, 1, 2].map((index) => `windows.items[${index}]`) as [string, string, string];
const empty = (size: WrittenSize) => ({ kind: 'window', use: 'empty', size });

describe('what is written', () => {
  it.each([
    ['4 1/2 x 6 in', '3 x 2 in', 'width', '4 1/2 x 2 in'],
    ['4 1/2 x 6 in', '3 x 2 in', 'height', '3 x 6 in'],
    ['4 1/2 x 6 in', '3 x 2 in', 'size', '4 1/2 x 6 in'],
    ['A6', '3 x 2 in', 'width', '105 mm x 2 in'],
    ['11,5 x 8 cm', '3" x 2"', 'height', '3" x 8 cm'],
    ['4 x 6', '3 x 2', 'width', '4 x 2'],
    ['4 x 6', '30 x 20 mm', 'width', { width: '4', height: '20 mm' }],
    [{ width: 4, height: '6 in' }, '3 x 2 in', 'height', '3 x 6 in'],
  ] as const)('%j for %j: its %s gives %j', (from, to, what, value) => {
    const { edits, freed } = matchSize(of([empty(from), empty(to)]), A, [B], what);
    expect([edits, freed]).toEqual([[{ at: `${B}.size`, value }], 0]);
  });

  it('is nothing where the sizes are the same', () => {
    expect(matchSize(of([empty('4 x 6 in'), empty('4 x 6 in')]), A, [B], 'size').edits).toEqual([]);
  });
});

describe('a picture', () => {
  it('gives the size it reaches, and takes one in place of its overlap, which is told', () => {
    const before = of(['fern', empty('4 x 6 in'), 'fern']);
    expect(matchSize(before, A, [B], 'size')).toEqual({ edits: [{ at: `${B}.size`, value: '7 3/4 x 9 3/4' }], freed: 0 });
    const narrowed = matchSize(before, B, [C], 'width');
    expect(narrowed).toEqual({ edits: [{ at: `${C}.size`, value: { width: '4 in', height: '9 3/4' } }], freed: 1 });
    const [width, height] = sizeAt(matched(before, B, [C], 'width'), C);
    expect(width).toBeCloseTo(4, 9);
    expect(height).toBeCloseTo(9.75, 9);
  }); // prettier-ignore

  it('over several windows is not asked', () => {
    const spread = { kind: 'spread', picture: 'fern', count: 2 };
    const before = of([spread, empty('4 x 6 in'), 'fern']);
    expect(sizedWindows(before).map(({ at }) => at)).toEqual([B, C]);
    expect(groupMates(before, B)).toEqual([C]);
    expect(matchSize(before, B, [A], 'size').edits).toEqual([]);
  });
});

it('sizes that are meant at the face are matched there', () => {
  const before = of(['fern', empty('4 x 6 in')], { mat: { layers: [{}], measuredAt: 'face' } });
  const after = matched(before, A, [B], 'size');
  expect(sizeAt(after, B)[0]).toBeCloseTo(sizeAt(before, A)[0]!, 6);
});

it('one window gives its size to those beside it, not to those in groups of their own', () => {
  const inner = { kind: 'column', items: [empty('1 x 1 in'), empty('2 x 2 in')] };
  const before = of(['fern', empty('4 x 6 in'), inner], { free: [{ size: '1 x 1 in', at: {} }], frame: { size: '40 x 30 in' } });
  expect(groupMates(before, B)).toEqual([A]);
  expect(groupMates(before, `${C}.items[0]`)).toEqual([`${C}.items[1]`]);
  expect(groupMates(before, 'free[0]')).toEqual([]);
}); // prettier-ignore

describe('sizes in any words', () => {
  const read = (size: WrittenSize) => {
    const reader = new Reader('in', { in: 16, mm: 0.5 });
    const found = reader.size(size, 'size', 'it');
    expect(reader.problems).toEqual([]);
    return found;
  };
  const sizes = fc.oneof(
    fc.tuple(length(20, 90), length(20, 90)).map(([width, height]): WrittenSize => ({ width, height })),
    fc.tuple(length(20, 90), length(20, 90), fc.constantFrom(' x ', 'x', ' × ', '*', ' by ')).map(([a, b, cross]) => a + cross + b),
    fc.tuple(fc.nat(90), fc.nat(90), fc.constantFrom('', ' in', '"', ' mm', 'cm')).map(([a, b, unit]) => `${a + 1} x ${b + 1} 1/2${unit}`),
    fc.constantFrom('A4', 'a5 landscape', 'B2 lying', 'A3 upright'),
  ); // prettier-ignore

  it('are the same the other way round, and side by side', () => {
    fc.assert(
      fc.property(sizes, (size) => {
        const { width, height } = read(size);
        expect(read(turnedSize(size))).toEqual({ width: height, height: width });
        expect(read(turnedSize(turnedSize(size)))).toEqual({ width, height });
        expect(read(sideTexts(size))).toEqual({ width, height });
      }),
      { endOnFailure: true },
    );
  });

  it('keep their own other side', () => {
    fc.assert(
      fc.property(sizes, sizes, (from, to) => {
        const before = of([empty(from), empty(to)]);
        const after = matched(before, A, [B], 'width');
        expect(sizeAt(after, B)[0]).toBeCloseTo(sizeAt(before, A)[0]!, 9);
        expect(sizeAt(after, B)[1]).toBeCloseTo(sizeAt(before, B)[1]!, 9);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });
});
