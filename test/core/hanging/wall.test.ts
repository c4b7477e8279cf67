/** Frames on the wall: rows, grids, stairs and groups, hooks and nails, and what is said against them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HungFrame, WallPlan } from '../../../src/core/hanging/wall-plan';
import { hangingWords } from '../../../src/core/hanging/words/hanging-words';
import type { Contents } from '../open';
import { tryPlan, written } from '../open';
import { askOf, FERN, hung, problemOf, problemsOf } from './hung';

const INCH = 25.4;
const on = (wall: Contents['wall'], hanging: Contents['hanging'] = {}): Contents => ({ ...FERN, wall, hanging });
const wallOf = (wall: Contents['wall'], hanging: Contents['hanging'] = {}): WallPlan => hung(on(wall, hanging)).wall;
const inches = (mm: number) => mm / INCH;
const nears = ({ frames }: WallPlan) => frames.map(({ near }) => inches(near));
const heights = ({ frames }: WallPlan) => frames.map(({ height }) => inches(height));

describe('a hook', () => {
  // Practitioners' case (common practice, no source): H = C + F / 2 - drop.
  it('lies at 65 in for a centre line of 57, a picture 20 high and a wire 2 below its top', () => {
    const { frames } = wallOf({ centre: '57 in', frames: [{ size: '16 x 20 in', drop: '2 in', hooks: 1 }] });
    expect(frames[0]!.hooks).toHaveLength(1);
    expect(inches(frames[0]!.hooks[0]!.seat.y)).toBeCloseTo(65, 12);
    expect(frames[0]).toMatchObject({ dropFrom: 'measured' });
  });

  it('has its nail above its seat where the hook’s own measure is known, and no nail where it is not', () => {
    const wall = { frames: [{ size: '16 x 20 in', drop: '2 in' }] };
    const [frame] = wallOf(wall, { hook: { seat: '3/4 in' } }).frames;
    for (const { seat, nail } of frame!.hooks) {
      expect(nail!.x).toBe(seat.x);
      expect(inches(nail!.y - seat.y)).toBeCloseTo(0.75, 12);
    }
    expect(wallOf(wall).frames[0]!.hooks[0]!.nail).toBeUndefined();
  });

  it('is one of two, evenly about the middle', () => {
    const [frame] = wallOf({ frames: [{ size: '16 x 20 in', hooks: 2, hooksApart: '7 in' }] }).frames;
    const [left, right] = frame!.hooks;
    expect(inches(left!.seat.x)).toBeCloseTo(8 - 3.5, 12);
    expect(inches(right!.seat.x)).toBeCloseTo(8 + 3.5, 12);
  });

  it('of the job’s own frame lies where its hanging has it', () => {
    const { wall, hanging } = hung(on({ centre: '1500 mm' }, { hanger: 'rings and wire', wireBelowTop: '40 mm' }));
    expect(wall.frames[0]!.isOwn).toBe(true);
    expect(wall.frames[0]!.hooks[0]!.seat.y).toBeCloseTo(1500 + hanging.outside.height / 2 - 40, 9);
  });
});

describe('a row', () => {
  const three = { width: '9 ft', arrangement: 'row', gap: '2 in', frames: [{ size: '12 x 16 in', count: 3 }] } as const;

  // Practitioners' case (common practice, no source): 12 in frames 2 apart on a 9 ft wall.
  it('of three on a 9 ft wall leaves 34 in at each end, and seven fit at most', () => {
    const wall = wallOf({ ...three, frames: [...three.frames] });
    expect(inches(wall.before)).toBeCloseTo(34, 12);
    expect(inches(wall.after!)).toBeCloseTo(34, 12);
    expect(nears(wall)).toEqual([34, 48, 62].map((near) => expect.closeTo(near, 10)));
    expect(wall.most).toBe(7);
    const seven = on({ ...three, frames: [{ size: '12 x 16 in', count: 7 }] }, { weight: '4 lb' });
    expect(problemsOf(seven).map(({ code }) => code)).not.toContain('frame-off-wall');
    const eight = on({ ...three, frames: [{ size: '12 x 16 in', count: 8 }] });
    expect(problemOf(eight, 'frame-off-wall').message).toMatch(/At most 7 fit/);
  });

  it('told in words adds up to the wall', () => {
    const contents = on({ ...three, frames: [...three.frames] });
    const { wall } = hangingWords(askOf(contents), hung(contents));
    expect(wall.rows.find(({ label }) => label === 'Across')!.how).toBe('from the left: 34 + 12 + 2 + 12 + 2 + 12 + 34 = 108 in');
    // 100 in less 3 frames of 12 1/3 in is 63 in: each length is rounded, and the last takes what remains.
    const odd = on({ ...three, width: '100 1/32 in', frames: [{ size: '12 1/3 x 16 in', count: 3 }] });
    const sum = hangingWords(askOf(odd), hung(odd)).wall.rows.find(({ label }) => label === 'Across')!.how;
    const [parts, whole] = sum.replace('from the left: ', '').split(' = ');
    const value = (text: string) => text.replace(/≈| in/g, '').trim().split(' ').reduce((total, one) => total + (one.includes('/') ? Number(one.split('/')[0]) / Number(one.split('/')[1]) : Number(one)), 0); // prettier-ignore
    expect(parts!.split(' + ').reduce((total, one) => total + value(one), 0)).toBeCloseTo(value(whole!), 9);
  }); // prettier-ignore

  it('is symmetric on its wall, with its gaps kept', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 100, max: 900 }), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 0, max: 300 }),
        (widths, gap) => {
          const frames = widths.map((width) => ({ size: `${width} x 300 mm` }));
          const wall = wallOf({
            width: '12000 mm',
            arrangement: 'row',
            gap: `${gap} mm`,
            frames,
          });
          expect(wall.before).toBeCloseTo(wall.after!, 8);
          wall.frames.slice(1).forEach((frame, index) => {
            expect(frame.box.left - wall.frames[index]!.box.right).toBeCloseTo(gap, 8);
          });
        },
      ),
    );
  });

  it.each([
    ['centre', [57, 57]],
    ['top', [57, 59]],
    ['bottom', [57, 55]],
  ] as const)('lines up at its %s', (align, expected) => {
    const frames = [{ size: '10 x 14 in' }, { size: '8 x 10 in' }];
    expect(heights(wallOf({ arrangement: 'row', align, frames }))).toEqual(expected.map((each) => expect.closeTo(each, 10)));
  }); // prettier-ignore

  it('begins where it is told, counted from either edge', () => {
    const wall = (from: 'left' | 'right') =>
      wallOf({ ...three, from, offset: '10 in', frames: [{ size: '12 x 16 in' }, { size: '6 x 8 in' }] });
    expect(nears(wall('left'))).toEqual([10, 24].map((near) => expect.closeTo(near, 10)));
    const right = wall('right');
    expect(nears(right)).toEqual([10, 24].map((near) => expect.closeTo(near, 10)));
    expect(inches(right.frames[0]!.box.right)).toBeCloseTo(108 - 10, 10);
    expect(inches(right.frames[1]!.box.left)).toBeCloseTo(108 - 30, 10);
  });
});

describe('other arrangements', () => {
  it('a grid: columns as wide as their widest, rows from the top, all about the centre line', () => {
    const frames = ['8 x 10', '12 x 10', '8 x 6', '12 x 6', '8 x 10'].map((size) => ({ size: `${size} in` }));
    const wall = wallOf({ centre: '60 in', arrangement: 'grid', columns: 2, columnGap: '3 in', rowGap: '2 in', frames });
    // Rows of 10, 6 and 10 with gaps of 2 are 30 high: from 75 down to 45.
    expect(heights(wall)).toEqual([70, 70, 60, 60, 50].map((each) => expect.closeTo(each, 10)));
    expect(nears(wall)).toEqual([0, 11, 0, 11, 0].map((each) => expect.closeTo(each, 10)));
    expect(inches(wall.around.top + wall.around.bottom) / 2).toBeCloseTo(60, 10);
  }); // prettier-ignore

  it('stairs that are not measured: the widest frame and the gap along, 7 up for 11', () => {
    const frames = [{ size: '8 x 10 in' }, { size: '18 x 10 in' }];
    const { frames: hung } = wallOf({ arrangement: 'stairs', frames });
    const middles = hung.map(({ box }) =>
      [(box.left + box.right) / 2, (box.top + box.bottom) / 2].map((mm) => mm / 25.4),
    );
    // 18 in and the usual gap of 4 in.
    expect(middles[1]![0]! - middles[0]![0]!).toBeCloseTo(22, 9);
    expect(middles[1]![1]! - middles[0]![1]!).toBeCloseTo(14, 9);
  });

  it('a group without edges: one after another with the gap', () => {
    const frames = [{ size: '8 x 10 in', count: 2 }, { size: '11 x 14 in', edge: '40 in' }, { size: '5 x 7 in' }];
    const { frames: hung } = wallOf({ arrangement: 'group', gap: '2 in', frames });
    expect(hung.map(({ box }) => Math.round((box.left - hung[0]!.box.left) / 25.4))).toEqual([0, 10, 40, 53]);
  });

  it('stairs: middles a run apart, each a rise higher', () => {
    const frames = [{ size: '8 x 10 in' }, { size: '12 x 10 in' }, { size: '8 x 10 in' }];
    const wall = wallOf({ arrangement: 'stairs', run: '20 in', rise: '14 in', offset: '5 in', frames });
    expect(wall.frames.map(({ middle }) => inches(middle))).toEqual(
      [9, 29, 49].map((each) => expect.closeTo(each, 10)),
    );
    expect(heights(wall)).toEqual([57, 71, 85].map((each) => expect.closeTo(each, 10)));
  });

  it('a group: each where it is said, with drops of its own', () => {
    const frames = [
      { size: '8 x 10 in', edge: '2 in', centre: '50 in', drop: '1 in', hooks: 1 },
      { size: '16 x 20 in', edge: '14 in', centre: '64 in', drop: '2 1/2 in', hooks: 2, hooksApart: '6 in' },
    ] as const;
    const wall = wallOf({ arrangement: 'group', offset: '10 in', frames: frames.map((frame) => ({ ...frame })) });
    expect(nears(wall)).toEqual([12, 24].map((each) => expect.closeTo(each, 10)));
    const seats = wall.frames.flatMap(({ hooks }) => hooks.map(({ seat }) => [inches(seat.x), inches(seat.y)]));
    expect(seats.flat()).toEqual([16, 54, 29, 71.5, 35, 71.5].map((each) => expect.closeTo(each, 10)));
  });

  it('one frame hangs in the middle of its wall', () => {
    const wall = wallOf({ width: '100 in', frames: [{ size: '20 x 20 in' }] });
    expect(inches(wall.frames[0]!.middle)).toBeCloseTo(50, 10);
  });
});

const arrangements = fc.constantFrom<Contents['wall'] & object>(
  { arrangement: 'row', gap: '90 mm' },
  { arrangement: 'row', gap: '90 mm', align: 'top' },
  { arrangement: 'grid', columns: 2, columnGap: '70 mm', rowGap: '110 mm' },
  { arrangement: 'stairs', run: '700 mm', rise: '180 mm' },
);
const someFrames = fc
  .array(fc.record({ width: fc.integer({ min: 150, max: 600 }), height: fc.integer({ min: 150, max: 600 }), drop: fc.integer({ min: 10, max: 120 }) }), { minLength: 2, maxLength: 6 })
  .map((frames) => frames.map(({ width, height, drop }) => ({ size: `${width} x ${height} mm`, drop: `${drop} mm`, hooksApart: '100 mm' }))); // prettier-ignore

const outline = ({ box, hooks }: HungFrame) => [box.left, box.right, box.bottom, box.top, ...hooks.flatMap(({ seat }) => [seat.x, seat.y])]; // prettier-ignore

describe('whatever the wall', () => {
  it('mirrored, everything is mirrored', () => {
    fc.assert(
      fc.property(arrangements, someFrames, fc.option(fc.integer({ min: 0, max: 900 })), (how, frames, offset) => {
        const given = { width: '6000 mm', ...how, frames, ...(offset === null ? {} : { offset: `${offset} mm` }) };
        const [left, right] = (['left', 'right'] as const).map((from) => wallOf({ ...given, from }));
        left!.frames.forEach((frame, index) => {
          const other = right!.frames[index]!;
          expect(other.near).toBeCloseTo(frame.near, 8);
          expect(other.box.left).toBeCloseTo(6000 - frame.box.right, 8);
          expect(other.box.bottom).toBeCloseTo(frame.box.bottom, 8);
          const flipped = frame.hooks.map(({ seat }) => 6000 - seat.x).toReversed();
          other.hooks.forEach(({ seat }, hook) => expect(seat.x).toBeCloseTo(flipped[hook]!, 8));
          expect(other.hooks.map(({ across }) => across).toSorted((a, b) => a - b)).toEqual(
            frame.hooks.map(({ across }) => expect.closeTo(across, 8) as number),
          );
        });
      }),
      { numRuns: 50 },
    );
  });

  it('the unit of the job moves nothing, where every length is said', () => {
    fc.assert(
      fc.property(arrangements, someFrames, (how, frames) => {
        const contents = (units: 'in' | 'mm' | 'cm'): Contents => ({
          units,
          pictures: [{ size: '200 x 250 mm', overlap: '3 mm' }],
          frame: { size: '280 x 350 mm', allowance: '3 mm', lip: '6 mm', mouldingWidth: '20 mm', mouldingDepth: '25 mm' },
          mat: { layers: [{ thickness: '1.5 mm' }] },
          hanging: { hanger: 'rings and wire', hangerDown: '100 mm', wireBelowTop: '40 mm', hooksApart: '120 mm', knots: '90 mm', outOfLevel: '4 mm', weight: '2 kg', hook: { seat: '12 mm', standOff: '3 mm' } },
          wall: { centre: '1480 mm', width: '6000 mm', ...how, frames: [...frames, {}] },
        }); // prettier-ignore
        const [inch, ...others] = (['in', 'mm', 'cm'] as const).map((units) => hung(contents(units)));
        for (const other of others) {
          expect(other.hanging.places).toEqual(inch!.hanging.places);
          expect(other.hanging.wire).toEqual(inch!.hanging.wire);
          expect(other.hanging.lean).toEqual(inch!.hanging.lean);
          expect(other.wall.frames.map(outline)).toEqual(inch!.wall.frames.map(outline));
        }
      }),
      { numRuns: 20 },
    );
  });

  it('frames of rows and grids never lie in each other', () => {
    fc.assert(
      fc.property(arrangements, someFrames, (how, frames) => {
        fc.pre(how.arrangement !== 'stairs');
        const codes = problemsOf(on({ ...how, frames })).map(({ code }) => code);
        expect(codes).not.toContain('frames-overlap');
      }),
      { numRuns: 30 },
    );
  });
});

describe('what is said against it', () => {
  const frame = { size: '16 x 20 in' };
  it.each<[string, Contents['wall'], string]>([
    ['frames-overlap', { arrangement: 'stairs', run: '15 in', rise: '2 in', frames: [{ ...frame, count: 2 }] }, 'wall.frames[0]'],
    ['frame-off-wall', { width: '40 in', offset: '30 in', frames: [frame] }, 'wall'],
    ['frame-above-ceiling', { height: '66 in', frames: [frame] }, 'wall.height'],
    ['frame-below-floor', { centre: '9 in', frames: [frame] }, 'wall.centre'],
    ['near-furniture', { furniture: '40 in', frames: [frame] }, 'wall.furniture'],
    ['frame-stands-off', { frames: [{ ...frame, depth: '4 in' }] }, 'wall.frames[0].depth'],
    ['nail-in-sight', { frames: [{ ...frame, drop: '1/4 in' }] }, 'wall.frames[0].drop'],
    ['hook-below-frame', { frames: [{ ...frame, drop: '20 in' }] }, 'wall.frames[0].drop'],
    ['hooks-too-far-apart', { frames: [{ ...frame, hooksApart: '17 in' }] }, 'wall.frames[0].hooksApart'],
  ])('%s', (code, wall, at) => {
    expect(problemOf(on(wall, { hook: { seat: '3/8 in' } }), code)).toMatchObject({ at });
  }); // prettier-ignore

  it('is said once for each place, with how many more there are', () => {
    const heap = on({ arrangement: 'stairs', run: '1 in', rise: '1 in', frames: [{ ...frame, count: 30 }] });
    const found = problemsOf(heap).filter(({ code }) => code === 'frames-overlap');
    // Outside 20 in high and 16 wide: each lies in the 15 after it, the last ones in fewer: 30 x 15 - 15 x 16 / 2.
    expect(found).toHaveLength(1);
    expect(found[0]!.message).toContain(`There are ${30 * 15 - (15 * 16) / 2 - 1} more like it.`);
    const keys = problemsOf(heap).map(({ code, at }) => `${code} ${at}`);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('is nothing just within each limit', () => {
    const fine: Contents['wall'][] = [
      { arrangement: 'stairs', run: '16 in', rise: '2 in', frames: [{ ...frame, count: 2 }] },
      { width: '46 in', offset: '30 in', frames: [frame] },
      { height: '67 in', frames: [frame] },
      { centre: '10 in', frames: [frame] },
      { furniture: '39 in', frames: [frame] },
      // ADAAG 4.4.1: 4 in, counted with 1/8 in that the hook holds the frame off.
      { frames: [{ ...frame, depth: '3 7/8 in' }] },
      // ADAAG 4.4.1: any depth where its lower edge lies at 27 in or below.
      { centre: '37 in', frames: [{ ...frame, depth: '6 in' }] },
      { centre: '90 in', frames: [{ ...frame, depth: '6 in' }] },
    ];
    for (const wall of fine) {
      expect(problemsOf(on(wall, { weight: '4 lb', hook: { seat: '2 in' } }))).toEqual([]);
    }
  });

  it('a frame of another weight is held against the rating of the hooks', () => {
    const wall = (weight: string) =>
      on({ frames: [{ ...frame, weight }] }, { hook: { load: '10 lb' }, weight: '4 lb' });
    expect(problemOf(wall('21 lb'), 'over-rated-load').at).toBe('wall.frames[0].weight');
    expect(problemsOf(wall('20 lb'))).toEqual([]);
  });

  const read = (wall: unknown) => tryPlan(written({ ...FERN, wall } as Contents)).problems;
  it.each([
    ['wall-setting-not-used', { arrangement: 'row', rise: '2 in', frames: [frame] }, 'wall.rise'],
    ['wall-holds-several', { arrangement: 'one', frames: [frame, frame] }, 'wall.arrangement'],
    ['group-frames-in-one-place', { arrangement: 'group', frames: [{ ...frame, edge: 0, count: 2 }] }, 'wall.frames[0].count'],
    ['too-many-frames', { frames: [{ ...frame, count: 400 }, { ...frame, count: 101 }] }, 'wall.frames'],
    ['stairs-not-measured', { arrangement: 'stairs', run: '10 in', frames: [frame, frame] }, 'wall.rise'],
    ['length-out-of-range', { width: '0 in' }, 'wall.width'],
    ['mass-unreadable', { frames: [{ weight: '5' }] }, 'wall.frames[0].weight'],
  ])('%s, as the job is read', (code, wall, at) => {
    expect(read(wall)).toEqual(expect.arrayContaining([expect.objectContaining({ code, at })]));
  }); // prettier-ignore

  it('500 frames are read', () => {
    expect(hung(on({ arrangement: 'grid', frames: [{ size: '4 x 6 in', count: 500 }] })).wall.frames).toHaveLength(500);
  });
});
