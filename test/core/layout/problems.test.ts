/** Problems say what, where and what would be right, and each mend does what it says. */
import type { WrittenNode } from '../../../src/core/job/written';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keysOf, setAll, valueAt } from '../../../src/core/job/edit';
import { readJob } from '../../../src/core/job/read';
import type { WrittenJob } from '../../../src/core/job/written';
import type { Problem } from '../../../src/core/problem';
import { contents, length, RULES } from '../arbitrary-jobs';
import { problemOf, problemsOf, tryPlan, written, type Contents } from '../open';

/** Changes that a careless or a bold hand makes, each of which may or may not do harm. */
const slips = fc.array(
  fc.oneof(
    fc.tuple(fc.constant('pictures[0].overlap'), fc.oneof(length(0, 3), fc.record({ left: length(0, 3), top: length(2, 5) }))),
    fc.tuple(fc.constant('frame.readyMade'), fc.constantFrom('A4', '30x40 in', '70x100 cm')),
    fc.tuple(fc.constant('frame.size'), fc.constantFrom('500 x 400 mm', '1100 x 1000 mm', '2000 x 1900 mm', undefined)),
    fc.tuple(fc.constant('mat.layers[0].reveal'), length(1, 9)),
    fc.tuple(fc.constant('borders.rule'), fc.constantFrom(...RULES)),
    fc.tuple(fc.constantFrom('left', 'top', 'right', 'bottom', 'all', 'sides').map((key) => `borders.${key}`), length(5, 400)),
    fc.tuple(fc.constant('borders.amount'), length(1, 900)),
    fc.tuple(fc.constant('windows'), fc.constantFrom(
      undefined,
      { kind: 'row', gap: '6 mm', items: ['1', '1'] },
      { kind: 'row', gap: '11.13 mm', items: ['1', { kind: 'window', picture: 1, size: '300 x 250 mm' }] },
      { kind: 'column', gap: 'share with borders', items: ['1', '1', '1'] },
      { kind: 'row', gap: 'share between', items: ['1', '1'] },
      { kind: 'grid', columns: 2, gap: '2/3 in', items: ['1', '1', '1', '1'] },
      { kind: 'window', picture: 1, size: '350 x 350 mm' },
      { kind: 'row', items: [{ kind: 'window' }, '1'] },
    )),
  ),
  { minLength: 1, maxLength: 4 },
); // prettier-ignore

const sloppy = fc
  .tuple(fc.constantFrom('made to fit' as const, 'given' as const).chain(contents), slips)
  .map(([job, edits]) =>
    setAll(
      written(job),
      edits.map(([at, value]) => ({ at, value })),
    ),
  );

function told(job: unknown): readonly Problem[] {
  return tryPlan(job).problems;
}

/** The group that a path would be written in exists, or is one that the file may have. */
function expectPlace(job: WrittenJob, at: string): void {
  if (at === '') return;
  const keys = keysOf(at);
  expect(['title', 'units', 'steps', 'pictures', 'frame', 'mat', 'windows', 'free', 'borders', 'cutting']).toContain(
    keys[0],
  );
  // Items of lists are there; groups may still have to be written.
  const items = [...at.matchAll(/\[\d+\]/g)].map(({ index, 0: found }) => at.slice(0, index + found.length));
  // A row of all pictures may be left unsaid.
  const unsaid = job.windows === undefined && keys[0] === 'windows';
  if (!unsaid) for (const item of items) expect(valueAt(job, item), item).toBeDefined();
}

describe('of any job', () => {
  it('each problem has a place in the job, words with a full stop, and no slip of the tongue', () => {
    fc.assert(
      fc.property(sloppy, (job) => {
        for (const problem of told(job)) {
          expectPlace(job, problem.at);
          expect(problem.code).toMatch(/^[a-z]+(-[a-z]+)*$/);
          expect(problem.message).toMatch(/^[A-Z0-9≈"'].*\.$/s);
          expect(problem.message).not.toMatch(/undefined|NaN|\[object|Infinity| {2}|\b(in|mm|cm) x |≈ .* x ≈/);
          if (problem.severity !== 'note')
            expect(problem.limit ?? problem.remedy ?? problem.fix ?? problem.value, problem.code).toBeDefined();
        }
      }),
      { numRuns: 300 },
    );
  });

  it('each mend takes its own problem away and leaves a job that can be read', () => {
    fc.assert(
      fc.property(sloppy, (job) => {
        for (const { fix, code, at } of told(job)) {
          if (!fix) continue;
          const mended = setAll(job, fix.edits);
          const after = told(mended);
          expect(
            after.filter((problem) => problem.code === code && problem.at === at),
            fix.label,
          ).toEqual([]);
          expect(after.map((problem) => problem.code)).not.toContain('value-of-wrong-kind');
          expect(after.map((problem) => problem.code)).not.toContain('length-unreadable');
        }
      }),
      { numRuns: 400 },
    );
  });
});

describe('windows and board', () => {
  const one: Contents = {
    units: 'mm',
    pictures: [{ title: 'Fern', size: '200 x 250', overlap: 3 }],
    frame: { size: '400 x 500' },
  };
  const pair = (gap: string, size = '400 x 500'): Contents => ({
    ...one,
    frame: { size },
    windows: { kind: 'row', gap, items: ['1', '1'] },
  });

  it('a window past the edge', () => {
    const job: Contents = {
      ...one,
      free: [{ size: '100 x 100', at: { left: '5 mm', top: '50 mm' } }],
      mat: { layers: [{}, { reveal: '6 mm' }] },
    };
    const problem = problemOf(job, 'window-off-the-board');
    expect(problem).toMatchObject({ at: 'free[0]', severity: 'error' });
    expect(problem.message).toMatch(/reaches 2\.5 mm past the left edge/);
  });

  it('a bridge too narrow, its mend, and windows that run into each other', () => {
    const narrow = problemOf(pair('12 mm', '700 x 500'), 'bridge-narrow');
    expect(narrow).toMatchObject({
      severity: 'warning',
      at: 'windows.gap',
      fix: { edits: [{ at: 'windows.gap', value: '19.5 mm' }] },
    });
    expect(problemOf(pair('9.5 mm', '700 x 500'), 'bridge-narrow').severity).toBe('error');
    const both = problemOf(
      { ...pair('12 mm', '700 x 500'), mat: { layers: [{}, { reveal: '7 mm' }] } },
      'windows-collide',
    );
    expect(both.message).toMatch(/In the top layer windows A and B run into each other by 2 mm\./);
    expect(both.remedy).toMatch(/a gap of at least 24 mm, better 33.5 mm/);
  });

  it('a bridge of a row that the job does not spell out is mended by spelling it out', () => {
    const job: Contents = {
      ...one,
      pictures: [{ id: 'a', size: '200 x 250' }, { size: '200 x 250' }],
      frame: { size: '700 x 500' },
      mat: { layers: [{}, { reveal: '6 mm' }] },
    };
    const { fix } = problemOf(job, 'bridge-narrow');
    expect(setAll(written(job), fix?.edits ?? []).windows).toEqual({ kind: 'row', items: ['a', '2'], gap: '31.5 mm' });
  });

  it('a window hidden by its overlap', () => {
    const job: Contents = { ...one, pictures: [{ title: 'Fern', size: '200 x 250', overlap: 100 }] };
    expect(problemOf(job, 'window-vanishes').message).toMatch(
      /Nothing is left of the window "Fern": its width comes to 0 mm, since the overlap covers the whole picture/,
    );
    for (const shape of ['rectangle', 'oval'] as const) {
      const more: Contents = {
        ...one,
        pictures: [{ title: 'Fern', size: '200 x 250', overlap: 110 }],
        windows: { kind: 'window', picture: 1, shape },
      };
      expect(problemOf(more, 'window-vanishes').message).toMatch(/its width comes to −20 mm/);
    }
    const bars: Contents = { ...one, windows: { kind: 'spread', picture: 1, count: 3, gap: 100 } };
    expect(problemOf(bars, 'window-vanishes').message).toMatch(/overlap and bars hide the whole picture/);
  });

  it('a strip that is all bevel', () => {
    const strip = (reveal: string) => problemsOf({ ...one, mat: { layers: [{}, { thickness: 1.5, reveal }] } });
    expect(strip('1.5 mm').map(({ code, at }) => [code, at])).toContainEqual([
      'layer-not-seen',
      'mat.layers[1].reveal',
    ]);
    expect(strip('1.6 mm').map(({ code }) => code)).not.toContain('layer-not-seen');
  });
});

describe('pictures', () => {
  const framed = (picture: object, more: Contents = {}): Contents => ({
    units: 'mm', pictures: [{ title: 'Fern', size: '200 x 250', ...picture }], frame: { size: '400 x 500' }, ...more,
  }); // prettier-ignore

  it('held by too little: the mend covers just what is lacking, on the sides that lack it', () => {
    const one = problemOf(framed({ overlap: { left: 0, top: 3, right: 3, bottom: 3 } }), 'overlap-too-small');
    expect(one.at).toBe('pictures[0].overlap');
    expect(one.fix?.edits[0]?.value).toEqual({
      left: 'covers 3.175 mm',
      top: 'covers 3 mm',
      right: 'covers 3 mm',
      bottom: 'covers 3 mm',
    });
    const margin = problemOf(framed({ image: '180 x 230', overlap: 'shows 10' }), 'overlap-too-small');
    expect(margin.fix?.edits[0]?.value).toBe('shows 6.825 mm');
  });

  it('held by too little in a window with a size of its own: the window is made smaller', () => {
    const job = framed({}, { windows: { kind: 'window', picture: 1, size: '200 x 240' } });
    const { fix, at } = problemOf(job, 'overlap-too-small');
    expect(at).toBe('windows.size');
    expect(fix?.edits).toEqual([{ at: 'windows.size', value: { width: '193.65 mm', height: '240 mm' } }]);
  });

  it('a float is only noted', () => {
    expect(problemOf(framed({ overlap: 'shows 5' }), 'picture-floats').severity).toBe('note');
  });

  it('ending within an opening joined to its window is noted, and the window itself still holds it', () => {
    const tab = (bottom: string): WrittenNode => ({
      kind: 'window',
      picture: 1,
      joined: [{ title: 'The name', size: '60 x 40 mm', at: { bottom } }],
    });
    const job = framed({ overlap: 'covers 5 mm' }, { windows: tab('-30 mm') });
    const { at, message, severity } = problemOf(job, 'sheet-ends-in-joined');
    expect([at, severity]).toEqual(['windows.joined[0]', 'note']);
    // The opening reaches 30 mm past the window, which covers 5 mm of the sheet.
    expect(message).toMatch(/its sheet ends 25 mm short of the bottom of the opening "The name" joined to window A/);
    expect(problemsOf(job).map(({ code }) => code)).not.toContain('picture-floats');
    expect(
      problemsOf(framed({ overlap: 'covers 5 mm' }, { windows: tab('-4 mm') })).map(({ code }) => code),
    ).not.toContain('sheet-ends-in-joined');
  });

  it('a sheet larger than the frame', () => {
    const job = framed({ size: '410 x 250', image: '200 x 200', overlap: 3 });
    expect(problemOf(job, 'picture-larger-than-frame').message).toMatch(/its sheet reaches 5 mm past the left edge/);
  });

  it('sheets over one another behind the mat, also beside a spread', () => {
    const wide = { size: '300 x 250', image: '200 x 200', overlap: 3 };
    const job = framed(wide, { frame: { size: '900 x 500' }, windows: { kind: 'row', gap: 50, items: ['1', '1'] } });
    expect(problemOf(job, 'sheets-overlap').message).toMatch(/lie 56 mm over each other/);
    const spread = framed(wide, {
      frame: { size: '900 x 500' },
      windows: { kind: 'row', gap: 50, items: ['1', { kind: 'spread', picture: 1, count: 2, gap: 30 }] },
    });
    expect(problemsOf(spread).map(({ code }) => code)).toContain('sheets-overlap');
    const alone = framed(wide, { windows: { kind: 'spread', picture: 1, count: 2, gap: 30 } });
    expect(problemsOf(alone).map(({ code }) => code)).not.toContain('sheets-overlap');
  });

  it('one in no window', () => {
    const job: Contents = { pictures: [{ size: '5x7' }, { title: 'Moss', size: '5x7' }], windows: '1' };
    expect(problemOf(job, 'picture-without-window')).toMatchObject({
      at: 'pictures[1]',
      message: expect.stringMatching(/^Picture "Moss" is in no window/) as string,
    });
  });
});

describe('the board as a whole', () => {
  it('larger than the boards that are sold', () => {
    const job = (size: string): Contents => ({ pictures: [{ size: '20x30' }], frame: { size } });
    expect(problemOf(job('41 x 50'), 'larger-than-sheet').message).toMatch(
      /41 x 50 in, larger than the largest board commonly sold, 40 x 60 in/,
    );
    expect(problemsOf(job('60 x 40')).map(({ code }) => code)).not.toContain('larger-than-sheet');
  });
});

it('a job in which nothing is wrong says nothing', () => {
  const result = readJob(written({ pictures: [{ size: '8x10' }], frame: { size: '16x20' } }));
  expect(result.problems).toEqual([]);
  expect(problemsOf({ pictures: [{ size: '8x10' }], frame: { size: '16x21' } })).toEqual([]);
});

it('a length that misses its limit by less than the step is told in decimals', () => {
  // 1/32 in shows as 1/16 in at a step of 1/16 in, which is the limit itself.
  const job: Contents = { pictures: [{ size: '8x10', overlap: '1/32' }], frame: { size: '16x20' } };
  expect(problemOf(job, 'overlap-too-small')).toMatchObject({ value: '0.031 in', limit: '1/16 in' });
});

it('the nearest possible borders work when they are typed as they are told', () => {
  const windows: Contents['windows'] = {
    kind: 'row',
    gap: 'share with borders',
    items: [
      { kind: 'window', size: '7 3/4 x 8 in' },
      { kind: 'window', size: '7 3/4 x 8 in' },
    ],
  };
  const job = (sides: string): Contents => ({
    windows,
    frame: { size: '30 x 14 in' },
    borders: { rule: 'by-hand', sides },
  });
  const told = problemOf(job('2 in'), 'borders-do-not-add-up').remedy ?? '';
  const exact = /\((\d+\.\d+ mm)\)/.exec(told)?.[1] ?? '';
  // (30 - 2 x 7 3/4 in) / 3 is 4 5/6 in.
  expect(parseFloat(exact)).toBeCloseTo((4 + 5 / 6) * 25.4, 5);
  expect(problemsOf(job(exact)).filter(({ severity }) => severity === 'error')).toEqual([]);
});
