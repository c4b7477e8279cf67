/** What holds of frames found for any job: units and turning change nothing, the order is as documented, the numbers are plain sums. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Candidate } from '../../../src/core/finding/candidate';
import { findFrames, type Found } from '../../../src/core/finding/find-frames';
import { SIDES } from '../../../src/core/geometry/box';
import { printShelf } from '../../../src/core/shelf/print-shelf';
import { readShelf } from '../../../src/core/shelf/read-shelf';
import type { Shelf, ShelfFrame } from '../../../src/core/shelf/shelf';
import { contents } from '../arbitrary-jobs';
import { movable, movedPerSide, turned } from '../layout/turn';
import { readJob } from '../../../src/core/job/read';
import { tryPlan, written, type Contents } from '../open';
import { found, frameOf, one, understood } from './shelves';

/** Sides on a step that people type, mm. */
const side = (least: number, most: number) =>
  fc.oneof(
    fc.integer({ min: Math.ceil(least), max: Math.floor(most) }),
    fc.integer({ min: Math.ceil(least / 6.35), max: Math.floor(most / 6.35) }).map((quarters) => quarters * 6.35),
  );

function shelves(least: number, most: number): fc.Arbitrary<ShelfFrame[]> {
  const frame = fc.record({
    size: fc.record({ width: side(least, most), height: side(least, most) }),
    count: fc.constantFrom(0, 1, 5),
    lip: fc.constantFrom(3, 5, 6.35),
  });
  return fc
    .array(frame, { minLength: 2, maxLength: 6 })
    .map((frames) => frames.map((each, index) => frameOf({ name: `Frame ${index}`, face: 20, ...each })));
}

const RANGE = { least: '30 mm', greatest: '900 mm' };
const ranged = (job: Contents): Contents => ({ ...job, borders: { ...job.borders, range: RANGE } });

/** Frames in their order with what was found of them. */
function told({ candidates }: Found) {
  return candidates.map(({ frame, turned: isTurned, works, hangsEitherWay, misses }) => ({
    name: frame.name,
    isTurned,
    works,
    hangsEitherWay,
    misses: misses.map(({ side: where, way }) => [where, way]),
  }));
}

function expectSameBorders(one: readonly Candidate[], other: readonly Candidate[], near: number): void {
  one.forEach(({ borders, shortfall }, index) => {
    const there = other[index]!;
    expect(borders === undefined).toBe(there.borders === undefined);
    expect(Math.abs(shortfall - there.shortfall)).toBeLessThan(near);
    for (const which of SIDES) {
      if (borders) expect(Math.abs(borders.cut[which] - there.borders!.cut[which])).toBeLessThan(near);
    }
  });
}

const KINDS = ['made to fit', 'given', 'given, gaps take the rest'] as const;

describe.each(KINDS)('a job whose frame is %s', (kind) => {
  const jobs = contents(kind).map(ranged);
  const any = shelves(300, 3000);

  test('is found the same frames whatever unit it is worked in, and the shelf is written in', () => {
    fc.assert(
      fc.property(jobs, any, fc.constantFrom('in', 'mm', 'cm'), (job, shelf, unit) => {
        const here = findFrames(understood({ ...job, units: 'in' }), shelf);
        const there = findFrames(understood({ ...job, units: 'mm' }), shelf);
        expect(told(there)).toEqual(told(here));
        expectSameBorders(here.candidates, there.candidates, 1e-9);
        const again = readShelf(printShelf(shelf, unit));
        const typed = findFrames(here.job, again.ok ? again.value : []);
        expect(told(typed)).toEqual(told(here));
        expectSameBorders(here.candidates, typed.candidates, 1e-5);
      }),
      { numRuns: 25 },
    );
  });

  test('is ranked as documented', () => {
    fc.assert(
      fc.property(jobs, any, (job, shelf) => {
        const { candidates } = findFrames(understood(job), shelf);
        const keys = candidates.map(({ works, isThere, shortfall, evenness, used }) => [
          works ? (isThere ? 0 : 1) : 2,
          works ? 0 : shortfall,
          evenness?.by ?? Infinity,
          used.board,
        ]);
        keys.slice(1).forEach((key, index) => {
          const before = keys[index]!;
          const first = key.findIndex(
            (value, place) => Math.abs(value - before[place]!) > [0, 1e-5, 1e-5, 1e-2][place]!,
          );
          if (first >= 0) expect(key[first]).toBeGreaterThan(before[first]!);
        });
      }),
      { numRuns: 25 },
    );
  });
});

const swapped = (shelf: Shelf): Shelf =>
  shelf.map((item) =>
    item.kind === 'frame' ? { ...item, size: { width: item.size.height, height: item.size.width } } : item,
  );

describe.each(['made to fit', 'given'] as const)('a job whose frame is %s, turned by a quarter', (kind) => {
  const any = shelves(300, 3000);
  const jobs = contents(kind).map((job) => ranged({ ...job, windows: job.windows && movable(job.windows) }));

  /** The turned job; undefined where it can't be. */
  function turnedJob(job: Contents) {
    const before = tryPlan(written(job)).planned;
    const moved = before && turned(before, 'left');
    const opened = moved?.ok ? readJob(moved.value) : undefined;
    return before && opened?.ok ? { before, after: opened.value.job } : undefined;
  }

  test('is found the turned result: the same order in turned frames, and the borders turned with it', () => {
    const even = jobs.map((job): Contents => ({
      ...job,
      borders: { ...job.borders, rule: kind === 'given' ? 'centred' : 'equal' },
    }));
    fc.assert(
      fc.property(even, any, (job, shelf) => {
        const pair = turnedJob(job);
        fc.pre(pair !== undefined);
        const upright = findFrames(pair!.before.job, shelf);
        const lying = findFrames(pair!.after, swapped(shelf));
        expect(told(lying).map(({ misses: _, ...rest }) => rest)).toEqual(told(upright).map(({ misses: _, ...rest }) => rest)); // prettier-ignore
        upright.candidates.forEach((candidate, index) => {
          if (!candidate.borders) return;
          const expected = movedPerSide(candidate.borders.cut, 'left');
          for (const which of SIDES)
            expect(Math.abs(lying.candidates[index]!.borders!.cut[which] - expected[which])).toBeLessThan(1e-6);
        });
        // The shelf need not be turned: its frames hang either way.
        expect(told(findFrames(pair!.after, shelf)).map(({ name, works }) => [name, works])).toEqual(
          told(upright).map(({ name, works }) => [name, works]),
        );
      }),
      { numRuns: 25 },
    );
  }); // prettier-ignore

  test('and weighted by an amount, keeps the same borders in every frame', () => {
    const plain = jobs.filter((job) => !JSON.stringify(job).includes('share with borders'));
    const weighted = plain.map((job): Contents => ({ ...job, borders: { ...job.borders, rule: 'bottom-amount' } }));
    fc.assert(
      fc.property(weighted, any, (job, shelf) => {
        const pair = turnedJob(job);
        fc.pre(pair !== undefined);
        const upright = findFrames(pair!.before.job, shelf);
        const lying = findFrames(pair!.after, swapped(shelf));
        for (const candidate of upright.candidates) {
          const there = one(lying, candidate.frame.name, candidate.turned);
          if (!candidate.works) continue;
          const expected = movedPerSide(candidate.borders!.cut, 'left');
          for (const which of SIDES)
            expect(Math.abs(there.borders!.cut[which] - expected[which])).toBeLessThan(1e-4);
        }
      }),
      { numRuns: 25 },
    );
  }); // prettier-ignore
});

test('halves of a sixty-fourth of an inch lie within one step of the order, whatever the last bits', () => {
  // 1/128 in is 198437.5 millionths of a millimetre.
  const shelf = [1e-11, 0, -1e-11].map((off, index) =>
    frameOf({ name: `Frame ${index}`, size: { width: 280, height: 280 + 25.4 / 64 + off } }),
  );
  const square: Contents = { pictures: [{ size: '200 x 200 mm', overlap: '2 mm' }] };
  const { candidates } = found(square, shelf);
  expect(candidates.map(({ frame }) => frame.name)).toEqual(['Frame 0', 'Frame 0', 'Frame 1', 'Frame 1', 'Frame 2', 'Frame 2']); // prettier-ignore
});

describe('one picture', () => {
  const sheet = fc.record({ width: side(100, 500), height: side(100, 500) });
  const asked = (size: { width: number; height: number }, borders: Contents['borders']): Contents => ({
    units: 'mm',
    pictures: [{ size: { width: `${size.width} mm`, height: `${size.height} mm` }, overlap: '3 mm' }],
    frame: { lip: '5 mm', allowance: '2 mm' },
    borders,
  });

  test('works exactly where half of what is left over is in range, and is as uneven as the halves differ', () => {
    fc.assert(
      fc.property(sheet, shelves(100, 900), side(10, 60), side(61, 200), (size, shelf, least, greatest) => {
        const range = { least: `${least} mm`, greatest: `${greatest} mm` };
        for (const { size: blank, borders, works, evenness, misses } of found(asked(size, { range }), shelf).candidates) {
          const halves = [blank.width - size.width + 6, blank.height - size.height + 6].map((left) => left / 2);
          const inRange = halves.every((half) => half > least - 1e-6 && half < greatest + 1e-6);
          expect(works).toBe(inRange);
          if (!borders) continue;
          expect(borders.cut.left).toBeCloseTo(halves[0]!, 9);
          expect(borders.cut.bottom).toBeCloseTo(halves[1]!, 9);
          expect(evenness!.by).toBeCloseTo(Math.abs(halves[0]! - halves[1]!), 9);
          expect(misses.length > 0).toBe(!inRange);
        }
      }),
    );
  }); // prettier-ignore

  test('may be weighted as far as is said, and no further', () => {
    fc.assert(
      fc.property(sheet, shelves(250, 900), fc.boolean(), (size, shelf, isSeen) => {
        const borders = { measured: isSeen ? 'as seen' : 'as cut', range: { least: '20 mm', greatest: '150 mm' } } as const;
        const all = found(asked(size, borders), shelf);
        for (const { weighting, works, size: blank, frame } of all.candidates) {
          if (!works) continue;
          const most = weighting.most!;
          const lies = (amount: number) => {
            const rule = { ...borders, rule: 'bottom-amount', amount: `${amount} mm` } as const;
            const { planned } = tryPlan(written({
              ...asked(size, rule),
              frame: { size: { width: `${blank.width} mm`, height: `${blank.height} mm` }, lip: `${frame.lip} mm`, allowance: '2 mm' },
            }));
            const reached = planned?.layout.borders[isSeen ? 'seen' : 'cut'];
            return reached !== undefined && SIDES.every((which) => reached[which] > 20 - 1e-3 && reached[which] < 150 + 1e-3);
          };
          expect(lies(most)).toBe(true);
          expect(lies(most + 0.1)).toBe(false);
        }
      }),
      { numRuns: 60 },
    );
  }); // prettier-ignore
});
