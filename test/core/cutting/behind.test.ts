/** Both ways of cutting a double mat: settings, boards, fallout, and what makes one of them impossible. */
import { describe, expect, it } from 'vitest';
import { handlingOf } from '../../../src/core/cutting/handling';
import { parseJobText } from '../../../src/core/job/text';
import { layOut } from '../../../src/core/layout/lay-out';
import { showingOf } from '../../../src/core/units';
import { planned, type Contents } from '../open';

const IN = 25.4;
// Worked by hand: blank 16 x 20, window 10 x 14, borders 3; reveal 1/4: top borders 2 3/4.
const WINDOW = { kind: 'window', size: '10 x 14 in' } as const;
const DOUBLE: Contents = {
  frame: { size: '16 x 20 in' },
  mat: { layers: [{ board: 'White' }, { board: 'Moss', reveal: '1/4 in' }] },
  windows: WINDOW,
};
const behind = { layers: 'behind' } as const;

const settings = (cutting: Contents['cutting'], layer: number) =>
  planned({ ...DOUBLE, cutting }).plan.layers[layer]!.order.back.map(({ guideSetting }) => guideSetting! / IN);

const codes = (job: object) => {
  const opened = parseJobText(JSON.stringify({ format: 'matwright-job', version: 1, ...job }));
  if (!opened.ok) throw new Error('the job can be read');
  return layOut(opened.value.job).problems.flatMap(({ code, severity }) =>
    code.startsWith('behind') ? [`${severity} ${code}`] : [],
  );
};

describe.each(['apart', 'behind'] as const)('a double mat cut %s', (layers) => {
  it('has 2 3/4 in for the upper layer and 3 in for the lower', () => {
    for (const setting of settings({ layers }, 0)) expect(setting).toBeCloseTo(2.75, 12);
    for (const setting of settings({ layers }, 1)) expect(setting).toBeCloseTo(3, 12);
  });
});

describe('the boards', () => {
  it('are each their own when cut apart', () => {
    const { plan } = planned(DOUBLE);
    expect(plan.way).toBe('apart');
    expect(plan.layers.map(({ guideOn, trim }) => [guideOn.number, guideOn.board, trim])).toEqual([
      [1, 'White', 0],
      [2, 'Moss', 0],
    ]);
  });

  it('lie behind the top one, 1/4 in smaller, when cut behind', () => {
    const { plan } = planned({ ...DOUBLE, cutting: behind });
    expect(plan.way).toBe('behind');
    expect(plan.layers.map(({ guideOn, trim }) => [guideOn.number, guideOn.board, trim])).toEqual([
      [1, 'White', 0],
      [1, 'White', IN / 4],
    ]);
    const metric = planned({ ...DOUBLE, units: 'mm', cutting: behind }).plan;
    expect(metric.layers[1]!.trim).toBe(6);
  });

  it('are one way or the other only where there are several', () => {
    const { plan } = planned({ ...DOUBLE, mat: { layers: [{}] }, cutting: behind });
    expect(plan.way).toBe('apart');
    expect(handlingOf(plan, 0, showingOf(planned(DOUBLE).job))).toEqual({ before: [], after: [] });
  });
});

describe('what is done with them', () => {
  const handled = (job: Contents) => {
    const { plan, job: read } = planned(job);
    const showing = showingOf(read);
    return plan.layers.map((_, index) => handlingOf(plan, index, showing));
  };
  const kinds = (job: Contents) =>
    handled(job).map(({ before, after }) => [before, after].map((list) => list.map(({ kind }) => kind)));

  it('apart: all are joined at the end', () => {
    expect(kinds(DOUBLE)).toEqual([
      [[], []],
      [[], ['join']],
    ]);
  });

  it('behind: fallout is kept, put back before the next board is fixed, and falls out', () => {
    const middle = ['trim', 'put back', 'fix', 'guide'];
    expect(kinds({ ...DOUBLE, cutting: behind })).toEqual([
      [[], ['keep']],
      [middle, ['drop', 'join']],
    ]);
    const three = { ...DOUBLE, mat: { layers: [{}, {}, {}] }, cutting: behind };
    expect(kinds(three)).toEqual([
      [[], ['keep']],
      [middle, ['drop', 'keep']],
      [middle, ['drop', 'join']],
    ]);
    expect(handled(three)[2]!.before[1]!.words).toContain('layers 1 and 2');
  });

  it('is said with its lengths and boards', () => {
    const { before } = handled({ ...DOUBLE, cutting: { ...behind, behindTrim: '3/8 in' } })[1]!;
    expect(before[0]!.words).toContain('15 1/4 x 19 1/4 in: 3/8 in smaller');
    expect(before[1]!.words).toContain('lower the board over it');
    expect(before[2]!.words).toContain('none may touch the picture');
    expect(before[3]!.words).toContain('layer 1, “White”');
  });

  it('lets a reverse fallout in from the back', () => {
    const layers: NonNullable<Contents['mat']>['layers'] = [{ bevel: { direction: 'reverse' } }, { reveal: '1/4 in' }];
    expect(handled({ ...DOUBLE, mat: { layers }, cutting: behind })[1]!.before[1]!.words).toContain('from the back');
  });
});

describe('cut behind', () => {
  it('a lower layer has no reverse bevel', () => {
    const layers = [{}, { reveal: '1/4 in', bevel: { direction: 'reverse' } }];
    expect(codes({ ...DOUBLE, mat: { layers } })).toEqual([]);
    expect(codes({ ...DOUBLE, mat: { layers }, cutting: behind })).toEqual(['error behind-reverse-bevel']);
  });

  it.each([
    ['2 in', []],
    ['2 1/4 in', ['warning behind-too-small']],
    ['2 3/4 in', ['error behind-too-small']],
    ['3 in', ['error behind-too-small']],
  ])('a board trimmed by %s on every side is judged', (behindTrim, found) => {
    expect(codes({ ...DOUBLE, cutting: { ...behind, behindTrim } })).toEqual(found);
  });

  it('the trim that is proposed works', () => {
    const job = { format: 'matwright-job', version: 1, ...DOUBLE, cutting: { ...behind, behindTrim: '2 5/8 in' } };
    const opened = parseJobText(JSON.stringify(job));
    const problems = opened.ok ? layOut(opened.value.job).problems : [];
    const problem = problems.find(({ code }) => code === 'behind-too-small');
    const value = problem?.fix?.edits[0]?.value;
    // The face edge of layer 1 lies 1/16 in further out than its opening, 1/2 in of board is to be behind it.
    expect(value).toBe('2 3/16 in');
    expect(codes({ ...DOUBLE, cutting: { ...behind, behindTrim: value } })).toEqual([]);
  });

  it('an oval is said to have no guide', () => {
    const windows = { ...WINDOW, shape: 'oval' };
    expect(codes({ ...DOUBLE, windows, cutting: behind })).toEqual(['note behind-without-guide']);
    expect(codes({ ...DOUBLE, windows: { ...windows, shape: 'arch' }, cutting: behind })).toEqual([]);
  });
});
