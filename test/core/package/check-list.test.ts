/** Check lists: what is there, what is needed, what to look at, by kind of frame. */
import { describe, expect, it } from 'vitest';
import { packageCautions } from '../../../src/core/package/package-words';
import { answerPackage } from '../../../src/core/package/answer';
import type { CheckItem } from '../../../src/core/package/check-item';
import { squareness } from '../../../src/core/package/corners';
import { FRAME_PARTS } from '../../../src/core/job/written-frame';
import { startShelf } from '../../../src/core/shelf/start-shelf';
import type { Size } from '../../../src/core/geometry/box';
import type { Contents } from '../open';
import { inches, inFloatFrame, opened, withoutMat, type Opened } from './opened';

function list({ job, layout }: Opened, measured?: Size): readonly CheckItem[] {
  const ask = { shelf: startShelf('inch'), wallGap: 0, ...(measured ? { measured } : {}) };
  return answerPackage(job, layout, ask).checkList;
}
const print = (frame: Contents['frame'] = {}, held: Contents['package'] = {}) =>
  opened({ pictures: [{ size: '8x10' }], frame: { size: '11x14', ...frame }, package: held });
const states = (items: readonly CheckItem[]) =>
  Object.fromEntries(items.filter(({ what }) => FRAME_PARTS.includes(what as never)).map(({ what, state }) => [what, state])); // prettier-ignore

describe('an open back', () => {
  it('is just the frame: all else is still needed', () => {
    expect(states(list(print()))).toEqual(Object.fromEntries(FRAME_PARTS.map((part) => [part, 'needed'])));
  });

  it('has what comes with it, but for the mat, whose window is another', () => {
    const found = states(list(print({ comesWith: ['glazing', 'mat', 'backing', 'wire'] })));
    expect(found).toMatchObject({ glazing: 'done', mat: 'needed', backing: 'done', wire: 'done', hangers: 'needed' });
  });

  it('wants nothing of what the job leaves out', () => {
    const found = list(print({}, { glazing: { material: 'none' }, dustCover: false }));
    expect(found.filter(({ words }) => words === 'none is wanted').map(({ what }) => what)).toEqual([
      'glazing',
      'dust cover',
    ]);
  });

  it('asks for the depth that is wanted until it is known', () => {
    const depth = (items: readonly CheckItem[]) => items.find(({ what }) => what === 'rabbet depth');
    expect(depth(list(print()))).toMatchObject({ state: 'needed' });
    expect(depth(list(print({ rabbetDepth: '3/4' })))).toMatchObject({ state: 'done' });
  });

  it('is told by its rabbet as measured what it takes', () => {
    const size = (width: number, height: number) =>
      list(print(), { width: width * 25.4, height: height * 25.4 }).find(({ what }) => what === 'rabbet size')!;
    expect(size(11.125, 14.125).state).toBe('done');
    expect(size(11.125, 14.1875).state).toBe('done');
    // A lip of 1/4 in covers less than 1/16 in of what has more than 3/16 in of play.
    expect(size(11.125, 14.25)).toMatchObject({ state: 'look', words: expect.stringContaining('from under the lip') as string }); // prettier-ignore
    const short = size(11, 14);
    expect(short.state).toBe('needed');
    expect([short.measures!['width'], short.measures!['height']].map(inches)).toEqual([10.875, 13.875]);
    expect(short.words).toContain('10 7/8 x 13 7/8 in');
  });
});

describe('a frame with a back', () => {
  it('tells of every groove whether the contents go before it, and has its own back', () => {
    const found = list(print({ build: 'with back', rabbetDepth: '3/4', grooves: ['1/8', '1/4', '1/2', '11/16'] }));
    const grooves = found.filter(({ what }) => what.startsWith('groove'));
    // A back of 3/16 in, or up to a tenth more, ends within 3/4 in from the third, and past it from the fourth.
    expect(grooves.map(({ what, state }) => [what, state])).toEqual([
      ['groove 1', 'look'],
      ['groove 2', 'look'],
      ['groove 3', 'done'],
      ['groove 4', 'look'],
    ]);
    expect(grooves[3]?.words).toContain('the back would end 1/8 in behind the frame, with no wood behind it');
    expect(found.find(({ what }) => what === 'back')?.words).toContain('through the whole of groove 3 without force');
    expect(states(found)).toMatchObject({ backing: 'done', fixings: 'done' });
    expect(found.some(({ what }) => what === 'turn buttons')).toBe(false);
  });

  it('ticks no groove whose back is not known to be held', () => {
    const found = list(print({ build: 'with back', grooves: ['1/2'] }));
    expect(found.find(({ what }) => what === 'groove 1')).toMatchObject({
      state: 'look',
      words: expect.stringMatching(/measure the back’s thickness and the rabbet’s depth/) as string,
    });
    const deep = list(print({ build: 'with back', rabbetDepth: '3/4', grooves: ['1/8', '3/16'] }));
    expect(deep.find(({ what }) => what === 'back')?.words).toMatch(/^It goes into no groove/);
  });

  it('whose canvas is held by clips has none of these, and its back is left out', () => {
    const found = list(
      opened({
        pictures: [{ kind: 'painting on canvas', size: '16x20', thickness: '3/4' }],
        frame: { size: '16x20', build: 'with back', rabbetDepth: '3/8', grooves: ['1/4'], comesWith: ['fixings'] },
        mat: { layers: [] },
      }),
    );
    expect(states(found)).toMatchObject({ fixings: 'needed' });
    expect(found.find(({ what }) => what === 'offset clips')).toMatchObject({ state: 'needed' });
    expect(found.filter(({ what }) => what.startsWith('groove'))).toEqual([]);
    expect(found.find(({ what }) => what === 'back')?.words).toMatch(/own back is left out, for offset clips/);
    expect(found.some(({ what }) => what === 'room left')).toBe(false);
  });

  it('without grooves has turn buttons, and the room behind to fill', () => {
    const found = list(print({ build: 'with back', rabbetDepth: '3/4' }));
    expect(found.find(({ what }) => what === 'turn buttons')?.state).toBe('look');
    expect(found.find(({ what }) => what === 'room left')?.words).toMatch(/stays free behind: fill it with sheets/);
  });
});

describe('other kinds', () => {
  it('a deep frame says what a spacer may use of its depth', () => {
    const found = list(print({ build: 'deep', rabbetDepth: '1 1/2' }));
    const [room, strips] = ['room left', 'strips'].map((name) => found.find(({ what }) => what === name));
    // No thicker than what is left with all at its thickest, on the step.
    const most = Math.floor(inches(room?.measures!['worst']) * 16) / 16;
    expect([most, strips?.words]).toEqual([0.875, expect.stringContaining('Strips 7/8 in deep')]);
    expect(room?.measures!['nominal']).toBeGreaterThan(20);
  });

  it('a float frame takes a canvas alone', () => {
    const pictures = [{ kind: 'painting on canvas' as const, size: '16x20', thickness: '3/4' }];
    const frame = { size: '16x20', build: 'float' as const, float: { insideDepth: '1' } };
    const window = { kind: 'window' as const, picture: 1, size: '12x16' };
    const canvas = list(withoutMat({ pictures, frame, windows: window }));
    expect(states(canvas)).toMatchObject({ glazing: 'done', mat: 'done', 'mount board': 'done', fixings: 'needed' });
    expect(canvas.find(({ what }) => what === 'canvas')).toMatchObject({
      state: 'done',
      measures: { across: expect.closeTo(6.35, 9) as number },
    });
    const matted = inFloatFrame(opened({ pictures, frame: { size: '16x20' }, windows: window }));
    expect(states(list(matted))).toMatchObject({ mat: 'look' });
    const paper = list(inFloatFrame(print()));
    expect(paper.find(({ what }) => what === 'canvas')).toMatchObject({ state: 'look' });
  });

  it.each([
    ['turn buttons', 'with back', 'A turn button’s screw'],
    ['screws', 'open back', 'A screw'],
    ['offset clips', 'open back', 'A clip’s screw'],
  ] as const)('%s say how long their screws may be', (kind, build, what) => {
    const of = (frame: Contents['frame']) =>
      list(print({ build, ...frame }, { fixing: { kind } })).find((item) => item.what === 'screws');
    const known = of({ rabbetDepth: '3/4' });
    expect(known?.words).toContain(
      `${what} that goes into the wood beside the rabbet: 1/4 in to 5/8 in long, never longer`,
    );
    expect(of({})?.words).toContain('whose depth is not known: measure it');
  });

  it('points and a groove have no screws', () => {
    for (const kind of ['points', 'brads', 'bent tabs', 'groove'] as const)
      expect(list(print({}, { fixing: { kind } })).some(({ what }) => what === 'screws')).toBe(false);
  });

  it('a canvas wants clips, as many as its sides ask', () => {
    const canvas = withoutMat({
      pictures: [{ kind: 'painting on canvas', size: '16x20', thickness: '3/4' }],
      frame: { size: '16x20', rabbetDepth: '3/8' },
      windows: { kind: 'window', picture: 1, size: '12x16' },
    });
    expect(list(canvas).find(({ what }) => what === 'offset clips')).toMatchObject({
      state: 'needed',
      measures: { total: 4, step: 9.525 },
    });
    const cover = (one: Opened) => list(one).find(({ what }) => what === 'dust cover');
    expect(cover(canvas)).toMatchObject({ state: 'done', words: expect.stringContaining('none is wanted') as string });
    const asked = { ...canvas, job: { ...canvas.job, package: { ...canvas.job.package, dustCover: true } } };
    expect(cover(asked)).toMatchObject({ state: 'look', words: expect.stringContaining('leave it out') as string });
  });

  it('what comes with a frame and is not wanted is taken out', () => {
    const frame = { size: '16x20', build: 'with back' as const, rabbetDepth: '3/4', comesWith: ['glazing', 'mat', 'backing'] as const }; // prettier-ignore
    const canvas = opened({
      mat: { layers: [] },
      pictures: [{ kind: 'painting on canvas', size: '16x20', thickness: '3/4' }],
      frame: { ...frame, comesWith: [...frame.comesWith] },
    });
    const found = list(canvas);
    expect(states(found)).toMatchObject({ glazing: 'look', mat: 'look', backing: 'look', 'mount board': 'done' });
    expect(found.find(({ what }) => what === 'glazing')?.words).toContain('take out');
    const { frame: plain, package: held } = canvas.job;
    expect(packageCautions(canvas.job).join(' ')).toContain('Glass breaks');
    expect(packageCautions({ frame: { ...plain, comesWith: [] }, package: held }).join(' ')).not.toContain('Glass');
    expect(packageCautions(print().job).join(' ')).toContain('Glass breaks');
  });

  it('a deep frame is told what is its own: room left, strips, lining, and a dust cover like any open back', () => {
    const found = list(print({ build: 'deep', rabbetDepth: '1 3/8' }, { spacer: { thickness: '1/4' } }));
    expect(states(found)).toMatchObject({ 'dust cover': 'needed' });
    const room = found.find(({ what }) => what === 'room left')!;
    const strips = found.find(({ what }) => what === 'strips')!;
    expect(room.measures!['worst']! - strips.measures!['left']!).toBeGreaterThanOrEqual(0);
    expect(room.measures!['worst']! - strips.measures!['left']!).toBeLessThan(25.4 / 16);
    expect(strips.measures!['before']).toBeCloseTo(6.35, 9);
    expect(found.find(({ what }) => what === 'lining')?.words).toContain('1/8 in');
    const shallow = list(print({ build: 'deep', rabbetDepth: '1/2' })).find(({ what }) => what === 'strips')!;
    expect(shallow.words).toContain('No room is left');
  });

  it.each(['mitred', 'closed'] as const)('%s corners are looked at as such', (corners) => {
    const words = list(print({ corners })).find(({ what }) => what === 'corners')?.words;
    expect(words).toMatch(corners === 'mitred' ? /^Mitred: no gap/ : /can’t be cut down/);
  });
});

describe('out of square', () => {
  /** Whether a package lies in a rabbet that leans, its longer side along the rabbet's: by the corners of both. */
  function liesIn(width: number, height: number, allowance: number, lean: number): boolean {
    const [short, long] = [Math.min(width, height), Math.max(width, height)];
    const slope = Math.tan(Math.asin(lean));
    // The rabbet's short sides rise from left to right; the package is pushed to the left and to the bottom as far as it goes.
    const bottom = (short - allowance) * slope;
    const isWideEnough = short - allowance <= short * Math.sqrt(1 - lean ** 2);
    return isWideEnough && bottom + long - allowance <= long;
  }

  it.each([
    [16.125, 20.125],
    [20.125, 16.125],
    [10.125, 10.125],
  ])('%d x %d in: the diagonals may differ by what uses the allowance up', (width, height) => {
    const allowance = 0.125;
    const { diagonal, mayDiffer } = squareness({ rabbet: { width, height }, allowance });
    expect(diagonal).toBeCloseTo(Math.hypot(width, height), 12);
    // Corner to corner both ways, of a rabbet that leans so.
    const [one, other] = [1, -1].map((way) => {
      const lean = allowance / Math.min(width, height);
      return Math.hypot(width + way * height * lean, height * Math.sqrt(1 - lean ** 2));
    });
    expect(one! - other!).toBeCloseTo(mayDiffer, 9);
    const used = allowance / Math.min(width, height);
    expect(liesIn(width, height, allowance, used)).toBe(true);
    expect(liesIn(width, height, allowance, used * 1.05)).toBe(false);
  });
});
