/** Trying a picture in a frame: the very borders of the layout, found without laying it out. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allSides, eachSide, SIDES } from '../../../src/core/geometry/box';
import type { Frame, Job } from '../../../src/core/job/job';
import { layOut } from '../../../src/core/layout/lay-out';
import { Trial, unevenness } from '../../../src/core/show/trial';
import { contents, RULES, type Wanted } from '../arbitrary-jobs';
import { tryPlan, written, type Contents } from '../open';

/** Less than doubles lose, mm. */
const CLOSE = 1e-9;
const SLACK = 1e-6;

interface Asked {
  readonly job: Contents;
  readonly least: number;
  readonly greatest?: number;
  readonly frames: readonly { readonly width: number; readonly height: number; readonly lip: number }[];
}

const single: fc.Arbitrary<Contents> = fc
  .tuple(
    contents('given'),
    fc.constantFrom('rectangle', 'oval', 'arch', { kind: 'scooped', radius: '12 mm' }),
    fc.constantFrom(0, 90, 180, 270),
    fc.constantFrom(...RULES),
    fc.boolean(),
    fc.boolean(),
  )
  .map(([job, shape, turned, rule, lined, behind]) => ({
    ...job,
    ...(behind ? { cutting: { layers: 'behind' as const, behindTrim: '30 mm' } } : {}),
    pictures: job.pictures?.slice(0, 1),
    free: undefined,
    mat: { ...job.mat, ...(lined ? { lines: [{ kind: 'groove' as const, width: '1 mm', distance: '15 mm' }] } : {}) },
    windows: { kind: 'window', picture: 1, shape, ...(turned === 0 ? {} : { turned }) },
    borders: { ...job.borders, rule },
  })) as fc.Arbitrary<Contents>;

function asked(job: fc.Arbitrary<Contents>): fc.Arbitrary<Asked> {
  const beyond = fc.oneof(fc.integer({ min: -20, max: 300 }), fc.constantFrom(60, 80, 100));
  return fc.record({
    job,
    least: fc.oneof(fc.constantFrom(0, 20, 30, 40), fc.double({ min: 0, max: 80, noNaN: true })),
    greatest: fc.option(fc.integer({ min: 80, max: 200 }), { nil: undefined }),
    frames: fc.array(fc.record({ width: beyond, height: beyond, lip: fc.constantFrom(4, 6, 9) }), {
      minLength: 6,
      maxLength: 6,
    }),
  }) as fc.Arbitrary<Asked>;
}

interface Counts {
  suits: number;
  misses: number;
  faulty: number;
}

/** Every frame is tried both ways: by the trial, and by the layout itself. */
function compare({ job: contents, least, greatest, frames }: Asked, counts: Counts): void {
  const { planned } = tryPlan(written({ ...contents, frame: { ...contents.frame, size: '6000 x 5400 mm' } }));
  fc.pre(planned !== undefined);
  const borders = { ...planned.job.borders, range: { least, ...(greatest === undefined ? {} : { greatest }) } };
  const job: Job = { ...planned.job, borders };
  const trial = new Trial(job);
  const { content } = planned.layout;
  for (const { width, height, lip } of frames) {
    const blank = { width: content.right - content.left + width, height: content.top - content.bottom + height };
    if (!(blank.width > 0 && blank.height > 0)) continue;
    const frame: Frame = { ...job.frame, blank, lip };
    const laid = layOut({ ...job, frame });
    const found = trial.suits(frame);
    const measured = laid.ok
      ? borders.measured === 'as seen'
        ? laid.value.borders.seen
        : laid.value.borders.cut
      : undefined;
    const values = measured && SIDES.map((side) => measured[side]);
    const inRange =
      values?.every((value) => value >= least - SLACK && value <= (greatest ?? Infinity) + SLACK) ?? false;
    expect(found !== undefined).toBe(inRange);
    if (found && measured) {
      for (const side of SIDES) expect(Math.abs(found[side] - measured[side])).toBeLessThan(CLOSE);
      counts.suits += 1;
    } else if (laid.ok) counts.misses += 1;
    else counts.faulty += 1;
  }
}

describe('what suits is what the layout says', () => {
  it('of one window of any shape, with any rule', () => {
    const counts = { suits: 0, misses: 0, faulty: 0 };
    fc.assert(
      fc.property(asked(single), (one) => compare(one, counts)),
      { numRuns: 250, maxSkipsPerRun: 10 },
    );
    // Not all of one sort, or nothing would have been compared.
    for (const count of Object.values(counts)) expect(count).toBeGreaterThan(10);
  });

  it.each<Wanted>(['given', 'given, gaps take the rest'])('of several windows in frames %s', (wanted) => {
    const counts = { suits: 0, misses: 0, faulty: 0 };
    fc.assert(
      fc.property(asked(contents(wanted)), (one) => compare(one, counts)),
      { numRuns: 60, maxSkipsPerRun: 10 },
    );
    expect(counts.misses + counts.faulty).toBeGreaterThan(10);
  });

  it('where a border in range is hidden by the lip, or the sheet would not go in', () => {
    const frame = (size: number, lip: number): Frame => ({ ...job.frame, blank: { width: size, height: size }, lip });
    // A window of 100 mm in a sheet of 200 mm: a frame of 180 leaves borders of 40 mm and can't take the sheet.
    const { job } = tryPlan(
      written({
        units: 'mm',
        pictures: [{ size: '200 x 200 mm', image: '106 x 106 mm', overlap: 'covers 3 mm' }],
        frame: { size: '500 x 500 mm' },
        borders: { range: { least: '8 mm' } },
      }),
    ).planned!;
    const trial = new Trial(job);
    expect(trial.suits(frame(180, 5))).toBeUndefined();
    expect(trial.laidOut(frame(180, 5))).toMatchObject({ problem: { code: 'picture-larger-than-frame' } });
    expect(trial.suits(frame(210, 5))).toEqual(allSides(55));
    expect(trial.suits(frame(210, 60))).toBeUndefined();
    expect(trial.laidOut(frame(210, 60))).toMatchObject({ problem: { code: 'border-behind-lip' } });
  });
});

it('borders are even where the sides differ from top and bottom by nothing, weighting left aside', () => {
  expect(unevenness(allSides(50))).toBe(0);
  expect(unevenness({ left: 50, right: 50, top: 45, bottom: 55 })).toBe(0);
  expect(unevenness({ left: 40, right: 40, top: 50, bottom: 70 })).toBe(20);
  expect(unevenness(eachSide((side) => (side === 'left' || side === 'right' ? 70 : 50)))).toBe(20);
});
