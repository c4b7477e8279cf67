/** Borders of any job keep to the rule that the job names. */
import { describe, expect, it } from 'vitest';
import type { Borders } from '../../../src/core/job/job';
import { eachSide, type PerSide } from '../../../src/core/geometry/box';
import { problemOf, problemsOf, planned, type Contents } from '../open';
import { forAllJobs, KINDS } from './for-all-jobs';

/** What each rule promises of the borders as they are measured, in words of its own. */
function expectRule(borders: Borders, { left, top, right, bottom }: PerSide, given: boolean): void {
  const near = (a: number, b: number) => expect(Math.abs(a - b), borders.rule).toBeLessThan(1e-7);
  if (borders.rule === 'by-hand') {
    near(left, borders.left ?? right);
    near(top, borders.top ?? bottom);
    near(right, borders.right ?? left);
    near(bottom, borders.bottom ?? top);
    return;
  }
  near(left, right);
  switch (borders.rule) {
    case 'centred':
      return near(top, bottom);
    case 'equal':
      near(top, left);
      return near(bottom, left);
    case 'bottom-amount':
      return near(bottom - top, borders.amount);
    case 'bottom-ratio':
      return near(bottom / top, borders.ratio ?? NaN);
    case 'height-share':
      return near(top / (top + bottom), borders.topShare);
    case 'equal-steps':
      if (!given) near(top - left, borders.step);
      return near(bottom - top, top - left);
    case 'equal-ratios':
      if (!given) near(top / left, borders.ratio ?? NaN);
      return near(bottom / top, top / left);
    case 'top-as-sides':
      return near(top, left);
  }
}

describe.each(KINDS)('of jobs whose frame is %s', (kind) => {
  it('the rule holds, as cut or as seen', () => {
    forAllJobs(
      kind,
      ({ job, layout }) => {
        const { cut, seen } = layout.borders;
        const measured = job.borders.measured === 'as seen' ? seen : cut;
        expectRule(
          job.borders,
          eachSide((side) => measured[side]),
          job.frame.blank !== undefined,
        );
      },
      150,
    );
  });
});

describe('what cannot be asked', () => {
  const picture: Contents = { pictures: [{ title: 'Fern', size: '8x10' }], frame: { size: '11x14' } };

  it.each([
    [{ rule: 'by-hand', left: '3', right: '3' }, 'borders-do-not-add-up', 'borders.left', /make 13 3\/4 in of width, but the frame has 11 in; the nearest possible is sides 1 5\/8 in each, or a frame 13 3\/4 in wide/],
    [{ rule: 'bottom-amount', amount: '20' }, 'weighting-too-large', 'borders', /weight the bottom by less/],
    [{ rule: 'equal-steps', top: '3/4' }, 'weighting-too-large', 'borders', /leaves 3\/4 in at the top and −1\/8 in at the bottom/],
    [{ rule: 'equal', all: '2' }, 'borders-do-not-add-up', 'borders.all', /sides 1 5\/8 in each/],
    [{ rule: 'bottom-amount', amount: '1/2', top: '3' }, 'borders-do-not-add-up', 'borders.top', /top 1 7\/8 in and bottom 2 3\/8 in/],
    [{ rule: 'by-hand', top: '5' }, 'border-leaves-nothing', 'borders.top', /at the top leaves −3\/4 in for the bottom/],
    [{ rule: 'by-hand', bottom: '5' }, 'border-leaves-nothing', 'borders.bottom', /a border under 4 1\/4 in/],
  ] as const)('%o', (borders, code, at, words) => {
    const problem = problemOf({ ...picture, borders }, code);
    expect(problem.at).toBe(at);
    expect(problem.message).toMatch(words);
    expect(problem.severity).toBe('error');
  }); // prettier-ignore

  it('one border by hand leaves the rest to the other', () => {
    const { cut } = planned({ ...picture, borders: { rule: 'by-hand', left: '1', top: '3' } }).layout.borders;
    const [left, top, right, bottom] = [cut.left, cut.top, cut.right, cut.bottom].map((border) => border / 25.4);
    expect(left).toBeCloseTo(1, 9);
    expect(top).toBeCloseTo(3, 9);
    expect(right).toBeCloseTo(2.25, 9);
    expect(bottom).toBeCloseTo(1.25, 9);
  });

  it('nearest borders that gaps share are worked out with the gaps', () => {
    const row = { kind: 'row', gap: 'share with borders', items: ['1', '1', '1'] } as const;
    const job: Contents = {
      pictures: [{ size: '5x7', overlap: '1/8' }],
      frame: { size: '24x12' },
      windows: { ...row, items: [...row.items] },
    };
    const problem = problemOf({ ...job, borders: { rule: 'by-hand', sides: '3' } }, 'borders-do-not-add-up');
    expect(problem.message).toMatch(/nearest possible is sides 2 7\/16 in each/);
  });

  it('a gap that takes what is left needs the borders, and a frame that leaves something', () => {
    const row = (): NonNullable<Contents['windows']> => ({ kind: 'row', gap: 'share between', items: ['1', '1'] });
    const job: Contents = { pictures: [{ size: '5x7' }], windows: row() };
    expect(problemOf(job, 'blank-needed').at).toBe('frame.size');
    expect(problemOf({ ...job, frame: { size: '24x12' } }, 'borders-needed').at).toBe('borders.sides');
    expect(problemOf({ ...job, frame: { size: '8x12' } }, 'windows-do-not-fit').message).toMatch(
      /need more than 9 1\/2 in of width/,
    );
  });

  it('borders that the rule takes no notice of are told', () => {
    const unused = (borders: Contents['borders']) =>
      problemsOf({ ...picture, borders })
        .filter(({ code }) => code === 'border-not-used')
        .map(({ at }) => at);
    expect(unused({ rule: 'centred', left: '1', bottom: '1', all: '1' })).toEqual([
      'borders.all',
      'borders.left',
      'borders.bottom',
    ]);
    expect(unused({ rule: 'top-as-sides', top: '9' })).toEqual(['borders.top']);
    // Equal borders take their width from "all" alone.
    const fitted = {
      pictures: [{ size: '8x10', overlap: '1/8' }],
      borders: { rule: 'equal', all: '3', top: '5', sides: '2' },
    } as const;
    const equal: Contents = { pictures: [...fitted.pictures], borders: fitted.borders };
    for (const value of Object.values(planned(equal).layout.borders.cut)) expect(value).toBeCloseTo(76.2, 9);
    expect(
      problemsOf(equal)
        .filter(({ code }) => code === 'border-not-used')
        .map(({ at }) => at),
    ).toEqual(['borders.sides', 'borders.top']);
  });

  it('windows placed freely alone need a frame', () => {
    expect(problemOf({ free: [{ size: '4x1', at: {} }] }, 'blank-needed').message).toMatch(/placed freely/);
  });
});
