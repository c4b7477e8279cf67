/** Windows that are no rectangles, laid out: closed forms of their openings in every layer, and what is said of them. */
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/core/geometry/edge';
import { areaOf, boundsOf, isClosed, lengthOf } from '../../../src/core/geometry/outline';
import { nearest } from '../../../src/core/geometry/nearness';
import { SHAPE_KINDS, type WrittenShape } from '../../../src/core/job/written-shape';
import { planned, problemOf, problemsOf, type Contents } from '../open';

const IN = 25.4;
/** A window of 8 x 10 in behind two boards 1/16 in thick, reveal 1/4 in. */
function shaped(shape: WrittenShape, more: object = {}, contents: Contents = {}): Contents {
  return {
    frame: { size: '16 x 20 in' },
    mat: { layers: [{ thickness: '1/16 in' }, { thickness: '1/16 in', reveal: '1/4 in' }] },
    windows: { kind: 'window', size: '8 x 10 in', shape, ...more },
    ...contents,
  };
}

/** Openings of the top and the bottom layer, and the edges of the bottom layer's cut. */
function openings(contents: Contents) {
  const [window] = planned(contents).layout.windows;
  const [top, bottom] = window?.layers ?? [];
  if (!window || !top?.outlines || !bottom?.outlines) throw new Error('the window has a shape');
  return { window, top: top.outlines, bottom: bottom.outlines };
}

describe.each(SHAPE_KINDS.filter((kind) => kind !== 'rectangle'))('%s', (kind) => {
  it('keeps its size at the opening of the bottom layer, and every layer the same distance above it', () => {
    const { window, top, bottom } = openings(shaped(kind));
    for (const outline of [top.opening, top.face, bottom.opening, bottom.face]) expect(isClosed(outline)).toBe(true);
    const box = boundsOf(bottom.opening);
    expect(box.left).toBeCloseTo(window.window.left, 9);
    expect(box.top).toBeCloseTo(window.window.top, 9);
    expect(nearest(bottom.opening, top.opening).distance).toBeCloseTo(IN / 4, 6);
    expect(nearest(bottom.opening, bottom.face).distance).toBeCloseTo(IN / 16, 6);
    expect(areaOf(top.opening)).toBeGreaterThan(areaOf(bottom.opening));
  });

  it('turned by a quarter it is as wide as it was high, with the same area and length', () => {
    const upright = openings(shaped(kind)).top.opening;
    const turned = openings(shaped(kind, { size: '10 x 8 in', turned: 90 })).top.opening;
    expect(areaOf(turned)).toBeCloseTo(areaOf(upright), 6);
    expect(lengthOf(turned)).toBeCloseTo(lengthOf(upright), 6);
    const [a, b] = [boundsOf(upright), boundsOf(turned)];
    expect(b.right - b.left).toBeCloseTo(a.top - a.bottom, 9);
  });
});

describe('closed forms', () => {
  it('an oval of 8 x 10 in has 62.83 sq in (pi a b)', () => {
    expect(areaOf(openings(shaped('oval')).bottom.opening) / IN ** 2).toBeCloseTo(Math.PI * 4 * 5, 9);
  });

  it('an oval whose layers are ellipses tells the least and the greatest reveal', () => {
    const { top } = openings(shaped({ kind: 'oval', reveal: 'axes' }));
    const bounds = boundsOf(top.opening);
    expect(bounds.right - bounds.left).toBeCloseTo(8.5 * IN, 9);
    expect(areaOf(top.opening) / IN ** 2).toBeCloseTo(Math.PI * 4.25 * 5.25, 9);
    const [layer] = planned(shaped({ kind: 'oval', reveal: 'axes' })).layout.windows[0]?.layers.slice(1) ?? [];
    expect(layer?.outlines?.reveal?.greatest).toBeCloseTo(IN / 4, 6);
    // Between the ends of the axes the two ellipses come nearer; sampled apart from the program at 20,000 points.
    const least = Math.min(
      ...Array.from({ length: 200 }, (_, index) => {
        const t = (index / 200) * (Math.PI / 2);
        const from = { x: 4 * IN * Math.cos(t), y: 5 * IN * Math.sin(t) };
        const far = (u: number) => Math.hypot(4.25 * IN * Math.cos(u) - from.x, 5.25 * IN * Math.sin(u) - from.y);
        return Math.min(...Array.from({ length: 400 }, (_, near) => far(t + (near - 200) / 4000)));
      }),
    );
    expect(layer?.outlines?.reveal?.least).toBeCloseTo(least, 3);
    expect(problemsOf(shaped({ kind: 'oval', reveal: 'axes' })).map(({ code }) => code)).toContain(
      'oval-reveal-varies',
    );
  });

  it('an arch 8 in wide with a rise of 2 in, taken in by 1/4 in: r 5 -> 4.75, width 7.5, rise 1.8345 (geometry)', () => {
    // Its own reveal goes outward: from a window 7.5 in wide with a rise of 1.8345 back to 8 and 2.
    const inner = { rise: 4.75 - Math.sqrt(4.75 ** 2 - 3.75 ** 2), height: 10 - 0.5 };
    const { top } = openings(
      shaped({ kind: 'arch', rise: `${inner.rise * IN} mm` }, { size: `7.5 x ${inner.height} in` }),
    );
    const arc = top.opening.find((edge) => edge.kind === 'arc');
    expect(inner.rise).toBeCloseTo(1.8345, 4);
    expect(arc?.kind === 'arc' ? arc.radius / IN : 0).toBeCloseTo(5, 9);
    const box = boundsOf(top.opening);
    expect((box.right - box.left) / IN).toBeCloseTo(8, 9);
    expect((box.top - (arc?.from.y ?? 0)) / IN).toBeCloseTo(2, 9);
  });

  it('a regular polygon is the largest that the size holds', () => {
    const { window } = openings(shaped({ kind: 'polygon', sides: 6 }));
    expect((window.window.right - window.window.left) / IN).toBeCloseTo(8, 9);
    expect((window.window.top - window.window.bottom) / IN).toBeCloseTo(8 * Math.sin(Math.PI / 3), 9);
  });

  it('a size that was measured at the face is kept there, whatever the shape', () => {
    for (const kind of SHAPE_KINDS.filter((one) => one !== 'rectangle')) {
      const mat = { layers: [{ thickness: '1/8 in' }], measuredAt: 'face' as const };
      const [window] = planned(shaped(kind, kind === 'polygon' ? { size: '8 x 8 in' } : {}, { mat })).layout.windows;
      const face = boundsOf(window?.layers[0]?.outlines?.face ?? []);
      expect((face.right - face.left) / IN).toBeCloseTo(8, 9);
    }
  });
});

describe('a picture in a turned window', () => {
  it('is turned with it, sheet, image, margins and overlap', () => {
    const picture = {
      size: '10 x 6 in',
      image: '8 x 5 in',
      margins: { left: '1/2 in', top: '1/4 in' },
      overlap: '1/8 in',
    };
    const at = (turned: 90 | 180 | 270) =>
      planned({ pictures: [picture], frame: { size: '20 x 20 in' }, windows: { kind: 'window', picture: 1, turned } })
        .layout.windows[0]?.picture;
    // A quarter anticlockwise: what was left is at the bottom, what was the top is at the left.
    const margin = (turned: 90 | 180 | 270, side: 'left' | 'top' | 'bottom' | 'right') => {
      const placed = at(turned);
      return Math.abs((placed?.sheet[side] ?? 0) - (placed?.image[side] ?? 0)) / IN;
    };
    expect([margin(90, 'bottom'), margin(90, 'left')]).toEqual([expect.closeTo(0.5, 9), expect.closeTo(0.25, 9)]);
    expect([margin(180, 'right'), margin(180, 'bottom')]).toEqual([expect.closeTo(0.5, 9), expect.closeTo(0.25, 9)]);
    expect([margin(270, 'top'), margin(270, 'right')]).toEqual([expect.closeTo(0.5, 9), expect.closeTo(0.25, 9)]);
    expect(Object.values(at(90)?.overlap ?? {})).toEqual([0, 0, 0, 0].map(() => expect.closeTo(IN / 8, 9) as number));
    expect(at(90)?.turned).toBe(90);
  });
});

describe('what cannot be', () => {
  it.each([
    [{ kind: 'rounded', radius: '5 in' }, '4 in or less', { kind: 'rounded', radius: '4 in' }],
    [{ kind: 'arch', rise: '6 in' }, '4 in or less', { kind: 'arch', rise: '4 in' }],
    [{ kind: 'pointed', rise: '3 in' }, '4 in or more', { kind: 'pointed', rise: '4 in' }],
    [
      { kind: 'stepped', step: '2 in', count: 3 },
      '1 3/16 in or less',
      { kind: 'stepped', count: 3, step: '1 3/16 in' },
    ],
    [{ kind: 'cut-corners', cut: '9 in' }, '4 in or less', { kind: 'cut-corners', cut: '4 in' }],
  ] as const)('%o is told its limit and mended by the fix', (shape, remedy, mended) => {
    const problem = problemOf(shaped(shape), 'shape-does-not-fit');
    expect(problem).toMatchObject({ severity: 'error', at: 'windows.shape', remedy });
    expect(problem.fix?.edits).toEqual([{ at: 'windows.shape', value: mended }]);
    expect(problemsOf(shaped(mended)).filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('a reveal that differs from side to side round an oval', () => {
    const mat = { layers: [{}, { reveal: { left: '1/4 in', bottom: '1/2 in' } }] };
    const problem = problemOf(shaped('oval', {}, { mat }), 'reveal-differs-round-shape');
    expect(problem.at).toBe('mat.layers[1].reveal');
    expect(problem.fix?.edits[0]?.value).toBe('1/2 in');
  });

  it('hollow corners that vanish on the way out are told of, not hidden', () => {
    const contents = shaped({ kind: 'scooped', radius: '1/8 in' });
    expect(problemOf(contents, 'corner-vanishes').message).toContain('from layer 1 up');
    expect(openings(contents).top.opening.every(({ kind }) => kind === 'line')).toBe(true);
  });
});

describe('board between windows that are no rectangles', () => {
  const pair = (gap: string): Contents => ({
    frame: { size: '20 x 20 in' },
    free: [
      { size: '5 x 5 in', shape: 'oval', at: { left: '2 in', top: '2 in' } },
      { size: '5 x 5 in', shape: 'oval', at: { left: gap, top: '6 in' } },
    ],
  });

  it('is measured between the true outlines: boxes that overlap may leave circles far apart', () => {
    // Centres 4 in across and 4 in down: 5.657 in apart, so 0.657 in of board are left between circles of 5 in.
    const problem = problemOf(pair('6 in'), 'bridge-narrow');
    expect(problem.severity).toBe('warning');
    expect(problem.value).toBe('≈ 11/16 in');
    expect(problemsOf(pair('6.5 in')).map(({ code }) => code)).not.toContain('bridge-narrow');
  });

  it('circles that run into each other say how far apart they must be moved', () => {
    // Centres 1 in across and 4 in down, 4.123 in apart: they overlap by 0.877 in.
    const problem = problemOf(pair('3 in'), 'windows-collide');
    expect(problem.message).toMatch(/run into each other by ≈ 7\/8 in/);
  });

  it('circles that touch are said to, and what is less than a step is told in decimals', () => {
    const beside = (left: string): Contents => ({
      frame: { size: '20 x 20 in' },
      free: [
        { size: '5 x 5 in', shape: 'oval', at: { left: '3 in', top: '3 in' } },
        { size: '5 x 5 in', shape: 'oval', at: { left, top: '3 in' } },
      ],
    });
    expect(problemOf(beside('8 in'), 'windows-collide').message).toMatch(/windows A and B touch\./);
    expect(problemOf(beside('7.98 in'), 'windows-collide').message).toMatch(/run into each other by 0\.02 in/);
    expect(problemOf(beside('7.9997 in'), 'windows-collide').message).toMatch(/run into each other by under 0\.001 in/);
    const tiny = { frame: { size: '20 x 20 in' }, free: [{ size: '0.01 x 0.02 in', at: {} }] };
    expect(problemOf(tiny, 'window-tiny').message).toMatch(/only 0\.01 in in width/);
  });

  it('an opening that lies apart is told with the window it should join', () => {
    const windows: Contents['windows'] = {
      kind: 'row',
      items: [{ kind: 'window', size: '5 x 5 in', joined: [{ size: '2 x 2 in', at: { left: '9 in' } }] }],
    };
    const { message } = problemOf({ frame: { size: '20 x 20 in' }, windows }, 'joined-apart');
    expect(message).toMatch(/Opening 2 of the window at windows\.items\[0\] lies 4 in from the rest/);
  });

  it('openings that touch in one point alone are not joined: the opening would be pinched there', () => {
    const tab = (bottom: string): Contents => ({
      frame: { size: '20 x 20 in' },
      windows: {
        kind: 'window',
        use: 'empty',
        size: '6 x 6 in',
        joined: [{ size: '2 x 2 in', shape: 'oval', at: { bottom } }],
      },
    });
    expect(problemOf(tab('-2 in'), 'joined-apart').message).toContain('touches the rest in a single point only');
    for (const bottom of ['-1.99 in', '0 in', '2 in'])
      expect(problemsOf(tab(bottom)).map(({ code }) => code)).not.toContain('joined-apart');
  });

  it('a window that lies in another collides with it', () => {
    const inside: Contents = {
      frame: { size: '20 x 20 in' },
      free: [
        { size: '15 x 15 in', shape: 'oval', at: {} },
        { size: '2 x 2 in', shape: 'oval', at: {} },
      ],
    };
    expect(problemOf(inside, 'windows-collide').severity).toBe('error');
  });
});

it('outlines are those of the window where it hangs', () => {
  const { layout } = planned(
    shaped('arch', { picture: undefined }, { borders: { rule: 'bottom-amount', amount: '2 in' } }),
  );
  const [window] = layout.windows;
  const outline = window?.layers[1]?.outlines?.opening ?? [];
  const corner = { x: window?.window.left ?? 0, y: window?.window.bottom ?? 0 };
  expect(Math.min(...outline.map(({ from }) => distance(from, corner)))).toBeLessThan(1e-9);
});
