/** Laying out as many as fit: every window of the job then lies just where the answer put it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/core/geometry/box';
import { readJob } from '../../src/core/job/read';
import type { WrittenJob } from '../../src/core/job/written';
import { howMany, placesOf } from '../../src/core/layout/how-many';
import { readHowMany, type FitShape } from '../../src/core/layout/how-many-ask';
import { layOut } from '../../src/core/layout/lay-out';
import type { Layout } from '../../src/core/layout/layout';
import { layOutMany, picturesThatFit } from '../../src/renderer/edits/lay-out-many';

const START: WrittenJob = {
  format: 'matwright-job',
  version: 1,
  units: 'mm',
  pictures: [{ size: '100 x 150 mm', overlap: '0 mm' }, { size: '100 x 150 mm', overlap: '0 mm' }, { size: '90 x 90' }],
  frame: { size: '600 x 700', colour: '#123456' },
  borders: { rule: 'bottom-amount', amount: '12 mm' },
};

function laid(written: WrittenJob): Layout {
  const read = readJob(written);
  const outcome = read.ok ? layOut(read.value.job) : undefined;
  const layout = outcome?.ok ? outcome.value : outcome?.sketch;
  if (!layout) throw new Error(JSON.stringify(read.ok ? outcome?.problems : read.problems));
  return layout;
}

function asked(size: string, on: string, gap: string, border: readonly number[], shape: FitShape = 'rectangle') {
  const [left = 0, top = 0, right = 0, bottom = 0] = border;
  const read = readHowMany({ size, on, gap, border: { left, top, right, bottom }, shape }, 'mm');
  if (!read.ok) throw new Error(read.problems[0]?.message);
  return howMany(read.value);
}

/** From the lower left, corners as numbers; the order does not hang on last bits. */
function corners(boxes: readonly Box[]): number[] {
  const place = ({ left, bottom }: Box) => Math.round(left * 100) * 1e6 + Math.round(bottom * 100);
  return boxes
    .toSorted((one, other) => place(one) - place(other))
    .flatMap(({ left, bottom, right, top }) => [left, bottom, right, top]);
}

describe('as many as fit', () => {
  it('stand where the answer has them', () => {
    const side = (min: number, max: number) => fc.integer({ min, max });
    fc.assert(
      fc.property(
        fc.record({
          width: side(30, 90),
          height: side(30, 90),
          across: side(200, 400),
          up: side(200, 400),
          gap: side(10, 20),
          border: fc.array(side(10, 40), { minLength: 4, maxLength: 4 }),
          shape: fc.constantFrom<FitShape>('rectangle', 'oval'),
        }),
        ({ width, height, across, up, gap, border, shape }) => {
          const typed = { size: `${width} x ${height}`, on: `${across} x ${up}`, gap: `${gap} mm` };
          const answer = asked(typed.size, typed.on, typed.gap, border, shape);
          fc.pre(answer.best.count > 0);
          const layout = laid(layOutMany(START, answer, typed, laid(START), 'mm'));
          const wanted = corners(placesOf(answer).map(({ box }) => box));
          const got = corners(layout.windows.map(({ window }) => window));
          expect(got).toHaveLength(wanted.length);
          // A job says lengths in decimals of a millionth of a millimetre.
          got.forEach((mm, index) => expect(mm).toBeCloseTo(wanted[index] ?? NaN, 5));
        },
      ),
      { endOnFailure: true },
    );
  });

  it('show the pictures that have the size, and leave the others in the list', () => {
    const typed = { size: '100 x 150', on: '600 x 700', gap: '25 mm' };
    const answer = asked(typed.size, typed.on, typed.gap, [50, 50, 50, 50]);
    expect(picturesThatFit(answer, laid(START))).toEqual([1, 2]);
    const made = layOutMany(START, answer, typed, laid(START), 'mm');
    expect(
      laid(made)
        .windows.filter(({ picture }) => picture)
        .map(({ picture }) => picture?.index),
    ).toEqual([0, 1]);
    expect(made.pictures).toBe(START.pictures);
    expect(made.frame).toBe(START.frame);
    expect(made.borders).toEqual({ rule: 'centred' });
  });

  it('take the blank that was asked for, and keep what else is said of the frame', () => {
    const typed = { size: '100 x 150', on: '400 x 500 mm', gap: '25 mm' };
    const made = layOutMany(START, asked(typed.size, typed.on, typed.gap, [50, 50, 50, 70]), typed, laid(START), 'mm');
    expect(made.frame).toEqual({ size: '400 x 500 mm', colour: '#123456' });
    expect(made.borders).toMatchObject({ rule: 'by-hand' });
  });
});
