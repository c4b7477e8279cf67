/** Windows of an outline of one's own, laid out and planned: sizes, distances, what is joined, and what is said against them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { directionOn, pointOn } from '../../../src/core/geometry/edge';
import { nearest } from '../../../src/core/geometry/nearness';
import { areaOf, boundsOf, isClosed, type Outline } from '../../../src/core/geometry/outline';
import { bladePath } from '../../../src/core/cutting/outline-cuts';
import { planned, problemOf, problemsOf, tryPlan, written, type Contents } from '../open';
import { anyCurvedPath, anyPathData } from '../outlines/random-paths';
import { trueDistance } from '../geometry/true-distance';

const IN = 25.4;
const LEAF = 'M50 0C62 22 100 40 100 78C100 110 76 124 56 124L56 140L44 140L44 124C24 124 0 110 0 78C0 40 38 22 50 0Z';
const DROP = 'M50 0C50 30 100 55 100 85A50 40 0 0 1 0 85C0 55 50 30 50 0Z';
const CIRCLE = 'M0 5a5 5 0 1 0 10 0a5 5 0 1 0-10 0z';

function outlined(path: string, more: object = {}): Contents {
  return {
    frame: { size: '20 x 24 in' },
    mat: { layers: [{ thickness: '1/16 in' }, { thickness: '1/16 in', reveal: '1/4 in' }] },
    windows: { kind: 'window', size: '8 x 10 in', shape: { kind: 'outline', path }, ...more },
  };
}

function openings(contents: Contents) {
  const [window] = planned(contents).layout.windows;
  const [top, bottom] = window?.layers ?? [];
  if (!window || !top?.outlines || !bottom?.outlines) throw new Error('the window has a shape');
  return { window, top: top.outlines, bottom: bottom.outlines };
}

/** The distances of points all along one outline from another, least and greatest; corners left out. */
function distances(of: Outline, from: Outline): readonly [number, number] {
  const all = of.flatMap((edge) => [0.25, 0.5, 0.75].map((part) => trueDistance(from, pointOn(edge, part))));
  return [Math.min(...all), Math.max(...all)];
}

describe('an outline of one’s own', () => {
  it.each([
    ['a leaf', LEAF],
    ['a drop', DROP],
  ])('%s is as large as the window at the bottom opening, and every layer stands off evenly', (_, path) => {
    const { window, top, bottom } = openings(outlined(path));
    for (const outline of [top.opening, top.face, bottom.opening, bottom.face]) expect(isClosed(outline)).toBe(true);
    const box = boundsOf(bottom.opening);
    for (const side of ['left', 'right', 'top', 'bottom'] as const)
      expect(Math.abs(box[side] - window.window[side])).toBeLessThan(0.001);
    expect(nearest(bottom.opening, top.opening).distance).toBeCloseTo(IN / 4, 6);
    expect(distances(bottom.opening, top.opening)[0]).toBeCloseTo(IN / 4, 6);
    expect(distances(bottom.opening, bottom.face)[0]).toBeCloseTo(IN / 16, 6);
  });

  it('a drawn circle in a square window is the oval of that size', () => {
    const drawn = openings(outlined(CIRCLE, { size: '8 x 8 in' })).top;
    const oval = openings({ ...outlined(CIRCLE), windows: { kind: 'window', size: '8 x 8 in', shape: 'oval' } }).top;
    expect(areaOf(drawn.opening)).toBeCloseTo(areaOf(oval.opening), 6);
    expect(areaOf(drawn.opening)).toBeCloseTo(Math.PI * (4.25 * IN) ** 2, 6);
  });

  it('turned by a quarter, and turned over, keeps its area', () => {
    const upright = areaOf(openings(outlined(LEAF)).top.opening);
    expect(areaOf(openings(outlined(LEAF, { size: '10 x 8 in', turned: 90 })).top.opening)).toBeCloseTo(upright, 4);
    expect(areaOf(openings(outlined(LEAF, { mirrored: true })).top.opening)).toBeCloseTo(upright, 4);
  });

  it('stands upright: the drawing’s top is the window’s', () => {
    // A wedge with its point at the top of the drawing, where y is least.
    const { bottom, window } = openings(outlined('M5 0L10 10H0Z'));
    const highest = bottom.opening.find(({ from }) => Math.abs(from.y - window.window.top) < 1e-6)!;
    expect(highest.from.x).toBeCloseTo((window.window.left + window.window.right) / 2, 6);
  });

  it('is joined with a further opening', () => {
    const joined = [{ title: 'Name', size: '3 x 1 in', at: { bottom: '-1/2 in' } }];
    const { bottom, window } = openings(outlined(DROP, { joined }));
    expect(isClosed(bottom.opening)).toBe(true);
    expect(window.window.top - window.window.bottom).toBeCloseTo(10.5 * IN, 3);
    expect(areaOf(bottom.opening)).toBeGreaterThan(areaOf(openings(outlined(DROP)).bottom.opening) + IN ** 2);
  });

  it('is cut along its drawn curve without a stop from corner to corner', () => {
    const [layer] = planned(outlined(LEAF)).plan.layers;
    const cuts = layer!.windows[0]!.cuts.back;
    expect(cuts.map(({ name }) => name).sort()).toEqual(['bottom', 'curve 1', 'curve 2', 'left', 'right']);
    for (const cut of cuts.filter(({ curve }) => curve)) {
      const path = bladePath(cut);
      expect(path.length).toBeGreaterThan(10);
      for (const [index, edge] of path.slice(1).entries()) {
        const [a, b] = [directionOn(path[index]!, 1), directionOn(edge, 0)];
        expect(Math.abs(a.x * b.y - a.y * b.x)).toBeLessThan(1e-6);
      }
    }
  });

  it('loses no bends where a curve is only shortened towards a corner', () => {
    expect(problemsOf(outlined(LEAF)).map(({ code }) => code)).not.toContain('corner-vanishes');
    // A notch narrower than twice the reveal closes.
    const notched = 'M0 0H48L50 4L52 0H100V100H0Z';
    expect(problemOf(outlined(notched), 'corner-vanishes').message).toContain('loses small bends');
  });
});

describe('what can be said against it', () => {
  const at = 'windows.shape.path';
  it.each([
    ['outline-unreadable', 'M0 0H10V10Q', /breaks off after character 11;/],
    ['outline-unreadable', 'M0 0H10V10K3', /from character 11 on \(“K3”\)/],
    ['outline-unreadable', 'M0 0H1e9V10Z', /beyond 10000000/],
    ['outline-too-large', `M0 0${'H1V1H0V0'.repeat(600)}Z`, /2400 lines and curves; the most is 2000/],
    ['outline-empty', 'M0 0H10Z', /encloses nothing/],
    ['outline-many', 'M0 0H10V10H0ZM20 0H30V10H20Z', /There are 2 outlines/],
    ['outline-open', 'M1 2H10V10L4 6', /begins at x 1, y 2 and ends at x 4, y 6, 5 away/],
    ['outline-crosses-itself', 'M0 0L10 10H0L10 0Z', /itself at x 5, y 5;/],
  ])('%s', (code, path, words) => {
    const problem = problemOf(outlined(path), code);
    expect(problem).toMatchObject({ at, severity: 'error' });
    expect(problem.message).toMatch(words);
  });

  it('a path is needed, and the word alone is no shape', () => {
    expect(problemsOf(outlined(DROP, { shape: { kind: 'outline' } }))[0]).toMatchObject({ code: 'value-missing', at });
    const [misspelt] = problemsOf(outlined(DROP, { shape: { kind: 'outlyne', path: DROP } }));
    expect(misspelt).toMatchObject({ at: 'windows.shape.kind' });
    expect(misspelt?.message).toMatch(/perhaps "outline" is meant; it must be .*"scooped" or "outline"/);
    expect(problemsOf(outlined(DROP, { shape: 'outline' })).some(({ severity }) => severity === 'error')).toBe(true);
  });

  it('outline-too-small: arms that run into one another at the size', () => {
    const comb = 'M0 0H100V50H50.001V10H50V50H0Z';
    const problem = problemOf(outlined(comb, { size: '0.02 x 0.02 mm' }), 'outline-too-small');
    expect(problem.at).toBe('windows.shape');
    expect(problem.message).toContain('make it larger');
  });

  it('a reveal that a hollow has no room for is told as of any shape', () => {
    // Its mouth closes before the hollow behind it does.
    const hollow = 'M0 0H100V100H52V90H80V20H20V90H48V100H0Z';
    expect(problemsOf(outlined(hollow)).map(({ code }) => code)).toContain('shape-cannot-be-followed');
  });
});

describe('any drawing', () => {
  it('is planned, or told why not, in every layer and joined to something, and never throws', () => {
    const path = fc.oneof({ weight: 4, arbitrary: anyCurvedPath }, { weight: 1, arbitrary: anyPathData });
    const more = fc.record({ turned: fc.constantFrom(90, 180, 270), mirrored: fc.boolean(), joined: fc.boolean() });
    let plans = 0;
    fc.assert(
      fc.property(path, more, (drawn, { joined, ...lie }) => {
        const parts = joined ? [{ size: '3 x 1 in', at: { bottom: '-1/4 in' } }] : [];
        const { planned: plan, problems } = tryPlan(written(outlined(drawn, { ...lie, joined: parts })));
        expect(plan !== undefined || problems.some(({ severity }) => severity === 'error')).toBe(true);
        if (!plan) return;
        plans += 1;
        const [window] = plan.layout.windows;
        for (const { outlines } of window?.layers ?? []) {
          if (outlines) expect(isClosed(outlines.opening) && isClosed(outlines.face)).toBe(true);
        }
      }),
      { numRuns: 60, endOnFailure: true },
    );
    expect(plans).toBeGreaterThan(5);
  });
});
