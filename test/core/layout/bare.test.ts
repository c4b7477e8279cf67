/** A picture in its frame without a mat: what is seen of it, and whether it holds. */
import { describe, expect, it } from 'vitest';
import { SIDES, sizeOf, type Box } from '../../../src/core/geometry/box';
import { planToolPaths } from '../../../src/core/cutting/tool-paths';
import { setAll } from '../../../src/core/job/edit';
import { layOut } from '../../../src/core/layout/lay-out';
import { readJob } from '../../../src/core/job/read';
import { planned, problemOf, problemsOf, tryPlan, written, type Contents } from '../open';

const sides = ({ width, height }: { width: number; height: number }) => [width / 25.4, height / 25.4];

function canvas(size: string, frame: Contents['frame'] = {}, more: Contents = {}): Contents {
  return { pictures: [{ title: 'Sea', kind: 'painting on canvas', size }], frame, mat: { layers: [] }, ...more };
}

/** Codes of what is said, but for sizes that are no ready-made ones. */
const codesOf = (contents: Contents) =>
  problemsOf(contents)
    .map(({ code, severity }) => `${severity} ${code}`)
    .filter((code) => code !== 'note size-is-custom');

/** The job with what a problem's button does. */
function mended(contents: Contents, code: string) {
  return tryPlan(setAll(written(contents), problemOf(contents, code).fix!.edits));
}

// As measures of frames are defined for the project: rabbet = frame + allowance, sight = rabbet - 2 x lip,
// outside = rabbet + 2 x (moulding width - lip).
describe('a canvas of 16 x 20 in, in a plain frame', () => {
  const { layout, plan } = planned(canvas('16 x 20 in', { readyMade: '16x20 in', lip: '1/4 in', allowance: '1/8 in' }));
  const [window] = layout.windows;

  it('shows what the lip leaves: 15 5/8 x 19 5/8 in', () => {
    expect(sides(layout.frame.rabbet)).toEqual([16.125, 20.125].map((side) => expect.closeTo(side, 9)));
    expect(sides(sizeOf(window!.window))).toEqual([15.625, 19.625].map((side) => expect.closeTo(side, 9)));
    expect(layout.frame.sight).toEqual({
      width: expect.closeTo(15.625 * 25.4, 9) as number,
      height: expect.closeTo(19.625 * 25.4, 9) as number,
    });
    for (const side of SIDES) expect(window!.picture!.hold[side] / 25.4).toBeCloseTo(3 / 16, 9);
  });

  it('has one window without layers, and nothing to cut', () => {
    expect(layout.windows).toHaveLength(1);
    expect([layout.layers, window!.layers, window!.lines, layout.gaps]).toEqual([[], [], [], []]);
    expect(plan.layers).toEqual([]);
    expect(planToolPaths(plan, { view: 'back', corner: 'lower-left' })).toMatchObject({ layers: [], cutLength: 0 });
  });

  it('tells how its sizes came about, and of no border', () => {
    const told = layout.derivations.map(({ name, how }) => `${name}: ${how}`);
    expect(told).toContain('windows[0].window.width: picture 16 in − 2 × 3/16 in under the lip');
    expect(told.some((one) => one.startsWith('borders'))).toBe(false);
  });

  it('is the same in a frame made to fit, whatever the borders say', () => {
    const fitted = planned(canvas('16 x 20 in', {}, { borders: { rule: 'equal', all: '3 in' } }));
    expect(sides(fitted.layout.frame.blank)).toEqual([expect.closeTo(16, 9), expect.closeTo(20, 9)]);
    expect(fitted.layout.windows[0]!.window).toEqual(window!.window);
  });
});

// Inside = canvas + 2 x gap; outside = inside + 2 x face width.
describe('the same canvas in a float frame', () => {
  const frame = { size: '16 x 20 in', build: 'float', mouldingWidth: '1/2 in', float: { gap: '1/4 in' } } as const;

  it.each([[{ layers: [] }], [undefined]])('shows its whole face, with %j for the mat', (mat) => {
    const { layout } = planned({ ...canvas('16 x 20 in', frame), mat });
    expect(sides(layout.frame.rabbet)).toEqual([16.5, 20.5].map((side) => expect.closeTo(side, 9)));
    expect(sides(layout.frame.outside)).toEqual([17.5, 21.5].map((side) => expect.closeTo(side, 9)));
    expect(sides(sizeOf(layout.windows[0]!.window))).toEqual([16, 20].map((side) => expect.closeTo(side, 9)));
    expect(layout.windows[0]!.picture!.hold).toEqual({ left: 0, top: 0, right: 0, bottom: 0 });
    expect(layout.derivations.map(({ how }) => how)).toContain('16 in + 2 × gap 1/4 in');
  });

  it('may have a face narrower than the usual lip, since it has none', () => {
    expect(codesOf(canvas('16 x 20 in', { ...frame, mouldingWidth: '3/16 in' }))).toEqual([]);
    expect(codesOf(canvas('16 x 20 in', { ...frame, lip: '1/4 in', allowance: '1/8 in' }))).toEqual([
      'note frame-setting-not-used',
      'note frame-setting-not-used',
    ]);
  });

  it('has another gap round a canvas of another size', () => {
    const problem = problemOf(canvas('15 1/2 x 20 in', frame), 'float-gap-differs');
    expect(problem.message).toContain('1/2 in across and 1/4 in up and down, and not to 1/4 in');
    expect(codesOf(canvas('16 1/4 x 20 in', frame))).toEqual(['note float-gap-differs']);
    expect(codesOf(canvas('16 5/8 x 20 in', frame))).toEqual(['error picture-larger-than-frame']);
  });

  it('is for canvas and panel alone', () => {
    const of = (kind: string): Contents => ({
      pictures: [{ kind, size: '16 x 20 in' } as NonNullable<Contents['pictures']>[number]],
      frame,
    });
    expect(codesOf(of('painting on panel'))).toEqual([]);
    expect(codesOf(of('other'))).toEqual(['warning float-needs-canvas']);
    expect(codesOf(of('textile'))).toEqual(['warning float-needs-canvas']);
    for (const kind of ['cyanotype', 'watercolour', 'chart or map', 'photograph'])
      expect(codesOf(of(kind))).toEqual(['error float-needs-canvas']);
    expect(setAll(written(of('cyanotype')), problemOf(of('cyanotype'), 'float-needs-canvas').fix!.edits).frame).toEqual(
      { size: frame.size, mouldingWidth: frame.mouldingWidth, float: frame.float },
    );
  });

  it('holds no mat', () => {
    const matted: Contents = { ...canvas('12 x 16 in', frame), mat: { layers: [{}] } };
    expect(codesOf(matted)).toContain('error mat-in-float-frame');
    expect(setAll(written(matted), problemOf(matted, 'mat-in-float-frame').fix!.edits).mat).toEqual({ layers: [] });
    const prints: Contents = { ...matted, pictures: [{ kind: 'print', size: '12 x 16 in' }] };
    expect(setAll(written(prints), problemOf(prints, 'mat-in-float-frame').fix!.edits).frame).not.toHaveProperty(
      'build',
    );
  });
});

describe('a picture of another size than its frame', () => {
  const frame = { readyMade: '16x20 in', lip: '1/4 in', allowance: '1/8 in' };

  it.each([
    // The opening is 15 5/8 x 19 5/8 in.
    ['15 x 19 in', ['error picture-falls-through']],
    ['15 5/8 x 20 in', ['error picture-falls-through']],
    ['16 x 19 1/2 in', ['error picture-falls-through']],
    // Pushed aside, its play of 1/8 + 1/8 or 1/8 + 1/16 in leaves 0 or 1/16 in under a lip of 1/4 in.
    ['15 7/8 x 20 in', ['warning picture-loose']],
    ['15 15/16 x 20 in', ['note picture-loose']],
    ['16 x 20 in', []],
    ['16 1/16 x 20 in', ['warning picture-tight']],
    ['16 1/8 x 20 1/8 in', ['warning picture-tight']],
    ['16 3/16 x 20 in', ['error picture-larger-than-frame']],
  ])('%s: %j', (size, codes) => expect(codesOf(canvas(size, frame))).toEqual(codes));

  it('says by how much it rattles and what would hold it', () => {
    const loose = problemOf(canvas('15 7/8 x 19 15/16 in', frame), 'picture-loose');
    expect(loose).toMatchObject({ at: 'pictures[0].size', value: '1/4 in across' });
    expect(loose.message).toContain('pushed to one side its edge would show at the other');
    expect(loose.message).toContain('Keep it in the middle with strips of board at its edges, or take a frame of');
    const through = problemOf(canvas('15 x 20 in', frame), 'picture-falls-through');
    expect(through).toMatchObject({ value: '15 x 20 in', limit: '15 5/8 x 19 5/8 in' });
    expect(through.message).toContain('it is 5/8 in too narrow, and the lip has to cover it besides');
  });

  it.each(['picture-falls-through', 'picture-loose', 'picture-larger-than-frame'])('mends %s', (code) => {
    const size = { 'picture-falls-through': '15 x 19 in', 'picture-loose': '15 7/8 x 20 in' }[code] ?? '17 x 20 in';
    const { planned: after, problems } = mended(canvas(size, frame), code);
    expect(problems.map((problem) => problem.code)).toEqual([]);
    expect(after!.layout.frame.blank).toEqual(sizeOf(after!.layout.windows[0]!.picture!.sheet));
  });

  it('turns a frame that hangs the wrong way, and keeps its name', () => {
    const contents = canvas('20 x 16 in', frame);
    const problem = problemOf(contents, 'picture-larger-than-frame');
    expect(problem.remedy).toBe('turn the frame, or the picture: they are of one size');
    const { planned: after, problems } = mended(contents, 'picture-larger-than-frame');
    expect(problems).toEqual([]);
    expect(after!.written.frame).toEqual({ ...frame, hung: 'landscape' });
  });

  it('is shown with its fault, where it can be', () => {
    const read = readJob(written(canvas('15 x 19 in', frame)));
    const laid = read.ok ? layOut(read.value.job) : undefined;
    expect(laid?.ok).toBe(false);
    expect(laid?.sketch && sides(sizeOf(laid.sketch.windows[0]!.window))).toEqual([
      expect.closeTo(15, 9),
      expect.closeTo(19, 9),
    ]);
  });

  it('is not to be seen behind a lip that covers it all', () => {
    expect(codesOf(canvas('4 x 6 in', { lip: '2 1/8 in', mouldingWidth: '3 in' }))).toEqual(['error window-vanishes']);
  });
});

describe('windows without a mat', () => {
  const several: Contents = {
    pictures: [
      { title: 'Heron', size: '4 x 5 in' },
      { title: 'Snail', size: '4 x 5 in' },
    ],
    frame: { size: '11 x 14 in' },
    mat: { layers: [] },
  };

  it('are refused with what would do', () => {
    const problem = problemOf(several, 'windows-need-mat');
    expect(problem.message).toContain('this job has 2 windows: "Heron", "Snail"');
    expect(mended(several, 'windows-need-mat').planned?.layout.windows).toHaveLength(2);
    const title = { kind: 'window', use: 'title', size: '4 x 1 in' } as const;
    const arranged = [
      { kind: 'spread', picture: 1, count: 2 },
      title,
      { kind: 'row', items: ['1', title] },
      { kind: 'ring', items: ['1', '2'] },
    ] as NonNullable<Contents['windows']>[];
    for (const windows of arranged) expect(codesOf({ ...several, windows })).toContain('error windows-need-mat');
    const free: Contents = { ...several, free: [{ picture: 1, at: {} }] };
    expect(codesOf(free)).toEqual(['error windows-need-mat']);
  });

  it('offer no mat in a float frame', () => {
    const problem = problemOf({ ...several, frame: { build: 'float' }, mat: undefined }, 'windows-need-mat');
    expect(problem.fix).toBeUndefined();
    expect(problem.remedy).toBe('a job of its own for each picture');
  });

  it('one alone may stand in a group or freely, and its picture turned', () => {
    for (const more of [{ windows: { kind: 'row', items: ['1'] } }, { free: [{ picture: 1, at: {} }] }] as Contents[]) {
      expect(planned(canvas('8 x 10 in', {}, more)).layout.windows[0]!.picture!.index).toBe(0);
    }
    const lying = planned(canvas('8 x 10 in', {}, { windows: { kind: 'window', picture: 1, turned: 90 } }));
    expect(sides(lying.layout.frame.blank)).toEqual([expect.closeTo(10, 9), expect.closeTo(8, 9)]);
  });

  it('leave the other pictures of the job over', () => {
    expect(codesOf({ ...several, windows: '1', frame: {} })).toEqual(['warning picture-without-window']);
  });
});

describe('what is said of a mat that is not there', () => {
  it('is kept and told, once', () => {
    const told = problemOf(
      canvas('8 x 10 in', {}, {
        pictures: [{ size: '8 x 10 in', overlap: '1/4 in' }],
        mat: { layers: [], measuredAt: 'face', lines: [{ kind: 'groove' }] },
        windows: { kind: 'row', items: [{ kind: 'window', picture: 1, shape: 'oval', size: '4 x 4 in', lines: [], joined: [] }] },
        borders: { rule: 'centred' },
      }),
      'kept-for-a-mat',
    ); // prettier-ignore
    expect(told).toMatchObject({ severity: 'note', at: 'mat.layers' });
    expect(told.message).toBe(
      "Without a mat nothing is made of the borders, the overlap, where sizes are meant, the lines on the face, the window's size, the window's shape and what is joined to the window; the job keeps it for when there is one.",
    );
  });

  it('is nothing where only a frame is chosen by it', () => {
    expect(codesOf(canvas('8 x 10 in', {}, { borders: { range: { least: '1 in' } } }))).toEqual([]);
  });
});

describe('a canvas behind a mat', () => {
  it('is offered to go without, in a frame of its own size', () => {
    const matted: Contents = { ...canvas('8 x 10 in', { readyMade: '11x14 in' }), mat: undefined };
    expect(codesOf(matted)).toEqual(['note canvas-under-mat']);
    const { planned: after, problems } = mended(matted, 'canvas-under-mat');
    expect(problems).toEqual([]);
    expect(after!.layout.layers).toEqual([]);
    expect(after!.written.frame).toEqual({ size: { width: '8 in', height: '10 in' } });
    const fitted = mended({ ...matted, frame: {} }, 'canvas-under-mat').planned!;
    expect(fitted.written.frame).toEqual({});
    const sheet = { pictures: [{ kind: 'drawing', size: '8 x 10 in' }], frame: { readyMade: '11x14 in' } } as const;
    expect(codesOf(sheet as unknown as Contents)).toEqual([]);
  });

  it('among others is told to have a job of its own', () => {
    const two: Contents = {
      pictures: [
        { kind: 'painting on panel', size: '4 x 6 in' },
        { kind: 'print', size: '4 x 6 in' },
      ],
    };
    expect(problemOf(two, 'canvas-under-mat').fix).toBeUndefined();
  });
});

it('a mat given back lays the job out as before it was taken away', () => {
  const contents: Contents = {
    pictures: [{ size: '8 x 10 in', overlap: 'covers 1/4 in' }],
    frame: { size: '11 x 14 in' },
    borders: { rule: 'bottom-amount', amount: '1/2 in' },
  };
  const without = setAll(written(contents), [{ at: 'mat.layers', value: [] }]);
  const again = setAll(without, [{ at: 'mat.layers', value: [{}] }]);
  const boxes = (value: unknown): Box[] => tryPlan(value).planned!.layout.windows.map(({ window }) => window);
  expect(boxes(again)).toEqual(boxes(written(contents)));
});
