/** Frames found for a job: why some do not work, how they are ranked, what they take and cost. */
import { describe, expect, test } from 'vitest';
import { whyBefore } from '../../../src/core/finding/rank';
import { candidateTitle, candidateWords } from '../../../src/core/finding/words';
import { startShelf } from '../../../src/core/shelf/start-shelf';
import { showFor } from '../../../src/core/layout/show';
import type { Contents } from '../open';
import { found, frameOf, framesOf, inchesOf, one, shelfOf, working } from './shelves';

const fern: Contents = { pictures: [{ title: 'Lady fern', size: '8 x 10 in', overlap: '1/8 in' }] };

function reasonsOf(job: Contents, frame: Partial<Parameters<typeof frameOf>[0]>, turned = false): string[][] {
  const shelf = [frameOf({ name: 'It', size: { width: 11 * 25.4, height: 14 * 25.4 }, ...frame })];
  return one(found(job, shelf), 'It', turned).reasons.map(({ kind, words }) => [kind, words]);
}

const inches = (width: number, height: number) => ({ width: width * 25.4, height: height * 25.4 });

describe('a frame does not work', () => {
  test('that is smaller than the sheet', () => {
    expect(reasonsOf(fern, { size: inches(9, 9) })).toEqual([
      ['picture too large', 'The sheet of picture "Lady fern" is 8 x 10 in, larger than 9 x 9 in.'],
    ]);
  });

  test('that leaves no border', () => {
    const two: Contents = {
      pictures: [{ size: '8 x 10 in' }, { size: '8 x 10 in' }],
      windows: { kind: 'row', gap: '1 in', items: ['1', '2'] },
    };
    expect(reasonsOf(two, { size: inches(16, 20) })).toEqual([
      ['windows do not fit', 'Windows and gaps together are 16 1/2 x 9 3/4 in, which leaves no border in 16 x 20 in.'],
    ]);
  });

  test('whose borders are too narrow or too wide, each told with by how much', () => {
    const job: Contents = { ...fern, borders: { range: { least: '2 in', greatest: '4 in' } } };
    expect(reasonsOf(job, {})).toEqual([
      ['border out of range', 'The left and right borders are 1 5/8 in as cut, 3/8 in too narrow: 2 in or more is wanted.'],
    ]);
    expect(reasonsOf(job, { size: inches(12, 18) })).toEqual([
      ['border out of range', 'The top and bottom borders are 4 1/8 in as cut, 1/8 in too wide: 4 in or less is wanted.'],
    ]);
  }); // prettier-ignore

  test('that is a float frame, for anything but a bare canvas', () => {
    expect(reasonsOf(fern, { build: 'float' })[0]).toEqual([
      'float frame',
      expect.stringContaining('takes a canvas or panel only'),
    ]);
    const canvas: Contents = { pictures: [{ kind: 'painting on canvas', size: '8 x 10 in' }] };
    expect(reasonsOf(canvas, { build: 'float' })[0]![1]).toContain('without a mat');
  });

  test('in which the rule for the bottom has nothing to share, though another rule would do', () => {
    const job: Contents = { ...fern, borders: { rule: 'bottom-amount', amount: '1 in' } };
    const { candidates, ...rest } = found(job, framesOf('11x13'));
    const upright = one({ candidates, ...rest }, '11x13');
    expect(upright.reasons.map(({ kind }) => kind)).toEqual(['border out of range']);
    expect(upright.weighting).toEqual({ rules: expect.arrayContaining(['centred', 'equal']) as unknown, most: expect.closeTo(6.35, 9) as unknown }); // prettier-ignore
    expect(candidateWords({ candidates, ...rest }, upright).join(' ')).toContain('It would do with the rule “centred”');
  });

  test('for what is wrong with the job in any frame, which is told once', () => {
    const job: Contents = {
      pictures: [{ size: '8 x 10 in' }, { size: '8 x 10 in' }],
      windows: { kind: 'row', gap: '1/4 in', items: ['1', '2'] },
    };
    const wrong = found(job, framesOf('24x30', '30x40'));
    expect(working(wrong)).toEqual([]);
    expect(wrong.problems.map(({ code }) => code)).toEqual(['bridge-narrow']);
    expect(wrong.candidates[0]!.reasons[0]!.words).toMatch(/Only 1\/4 in of board/);
  });
});

describe('the order', () => {
  const names = (job: Contents, ...shelf: Parameters<typeof frameOf>[0][]) => working(found(job, shelf.map(frameOf)));
  const size = inches(11, 13);

  test('what works comes first, then what works and is not there, then what does not', () => {
    const shelf = [
      frameOf({ name: 'Small', size: inches(8, 10) }),
      frameOf({ name: 'Gone', size, count: 0 }),
      frameOf({ name: 'Uneven', size: inches(18, 24), count: 1 }),
    ];
    const all = found(fern, shelf);
    expect(all.candidates.filter(({ turned }) => !turned).map(({ frame }) => frame.name)).toEqual(['Uneven', 'Gone', 'Small']); // prettier-ignore
    expect(candidateWords(all, one(all, 'Gone')).join(' ')).toContain('None is left on the shelf.');
    expect(one(all, 'Uneven').isThere).toBe(true);
  });

  test('among even frames less board, then less money, then the name decides', () => {
    const priced = (name: string, price: string) =>
      shelfOf('name,width,height,price', `${name},11 in,13 in,${price}`)[0] as ReturnType<typeof frameOf>;
    expect(names(fern, { name: 'Larger', size: inches(12, 14) }, { name: 'Smaller', size }).slice(0, 2)).toEqual(['Smaller', 'Larger']); // prettier-ignore
    expect(names(fern, priced('Dear', '20'), priced('Cheap', '9.5')).slice(0, 2)).toEqual(['Cheap', 'Dear']);
    expect(names(fern, priced('B', '9.50'), priced('A', '9.5')).slice(0, 2)).toEqual(['A', 'B']);
  });

  test('a price that is not known does not count as nothing', () => {
    const shelf = shelfOf('name,width,height,price', 'Unknown,11 in,13 in,', 'Known,11 in,13 in,500');
    expect(working(found(fern, shelf)).slice(0, 2)).toEqual(['Known', 'Unknown']);
  });

  test('of those that do not work the one that misses least comes first', () => {
    const job: Contents = { ...fern, borders: { range: { least: '2 in' } } };
    const all = found(job, framesOf('5x7', '8x10', '11x13', '10x12'));
    const upright = all.candidates.filter(({ turned }) => !turned).map(({ frame }) => frame.name);
    expect(upright).toEqual(['11x13', '10x12', '8x10', '5x7']);
  });

  test('the sizes next to the best are told of', () => {
    const all = found(fern, framesOf('9x12', '11x13', '14x18', '24x36'));
    expect([all.nextSmaller?.frame.name, all.nextLarger?.frame.name]).toEqual(['9x12', '14x18']);
    const words = candidateWords(all, all.candidates[0]!).join(' ');
    expect(words).toContain('One size larger, 14x18, would leave 3 1/8 in at the sides, 4 1/8 in at top and bottom.');
    expect(words).toMatch(/One size smaller, 9x12, .*would not do: the left and right borders are 5\/8 in/);
  });

  test('says why one stands before the next', () => {
    const shelf = shelfOf(
      'name,width,height,price,count',
      'A,11 in,13 in,9,',
      'B,11 in,13 in,9,',
      'C,11 in,13 in,12.5,',
      'D,11 in,13 in,,',
      'E,12 in,14 in,9,',
      'F,12 in,15 in,9,',
      'G,11 in,13 in,1,0',
      'H,11 in,12 in,1,',
      'I,9.5 in,12 in,1,',
    );
    const { candidates, job } = found(fern, shelf);
    const upright = candidates.filter(({ turned }) => !turned);
    expect(upright.map(({ frame }) => frame.name).join('')).toBe('ABCDEFGHI');
    const why = (first: number) => whyBefore(upright[first]!, upright[first + 1]!, showFor(job), job.units);
    expect(upright.slice(1).map((_, index) => why(index))).toEqual([
      'they come to the same, and stand by name',
      'it is as even, and costs 3.50 less',
      'it is as even, and more of its price is known',
      'it is as even, and takes 50 sq in less board',
      'its borders are more even by 1/2 in',
      'of the other none is left',
      'the other does not work',
      'it misses the range by 1/4 in less',
    ]);
    const square = found({ pictures: [{ size: '8 x 8 in' }] }, framesOf('12x14'));
    expect(whyBefore(square.candidates[0]!, square.candidates[1]!, showFor(job), 'in')).toBe('it is the same the other way up'); // prettier-ignore
  });

  test('a turned frame says which way it hangs, and a square one is tried once', () => {
    const all = found(fern, framesOf('12x12', '13x11'));
    expect(all.candidates.map(candidateTitle)).toEqual([
      '13x11, turned to hang portrait', '12x12', '13x11'
    ]);
  }); // prettier-ignore
});

describe('several windows', () => {
  const three: Contents = { pictures: [1, 2, 3].map(() => ({ size: '5 x 7 in', overlap: '1/8 in' })) };
  const row = (gap: string): Contents['windows'] => ({ kind: 'row', gap, items: ['1', '2', '3'] });

  // Common practice, no source: three 5x7 prints in 24x12.
  test('share what is left with the borders, or keep their gaps', () => {
    const spaced = found({ ...three, windows: row('1 1/2 in') }, framesOf('12x24'));
    expect(working(spaced)).toEqual(['12x24 turned']);
    expect(inchesOf(one(spaced, '12x24', true).borders)).toEqual([3.375, 2.625, 3.375, 2.625]);
    const even = found({ ...three, windows: row('share with borders') }, framesOf('12x24'));
    expect(inchesOf(one(even, '12x24', true).borders)).toEqual([2.4375, 2.625, 2.4375, 2.625]);
    expect(one(even, '12x24', true).layout!.gaps[0]!.gap / 25.4).toBeCloseTo(2.4375, 9);
  });

  test('whose gaps take what is left keep the borders that are given', () => {
    const given = found({ ...three, windows: row('share between'), borders: { sides: '2 in' } }, framesOf('12x24', '14x30')); // prettier-ignore
    for (const [name, gap] of [['12x24', 2.875], ['14x30', 5.875]] as const) {
      expect(inchesOf(one(given, name, true).borders)[0]).toBe(2);
      expect(one(given, name, true).layout!.gaps[0]!.gap / 25.4).toBeCloseTo(gap, 9);
    } // prettier-ignore
    expect(given.customs).toEqual([]);
    const open = found({ ...three, windows: row('share between') }, framesOf('12x24'));
    expect(one(open, '12x24', true).reasons[0]!.words).toMatch(/say how wide left and right are/);
  });

  test('placed freely stay where they are, and only the sheet and the range can be against a frame', () => {
    const free: Contents = {
      pictures: [{ size: '5 x 7 in', overlap: '1/8 in' }],
      free: [{ picture: 1, at: { left: '2 in', top: '3 in' } }],
    } as Contents;
    const all = found(free, framesOf('11x14'));
    expect(inchesOf(one(all, '11x14').borders)).toEqual([2, 3, 4.25, 4.25]);
    expect(one(all, '11x14').evenness!.by / 25.4).toBeCloseTo(2.25, 9);
    expect(one(all, '11x14').weighting).toEqual({ rules: [] });
    expect(all.customs).toEqual([]);
  });
});

describe('borders by hand', () => {
  test('keep their difference in every frame, and are made equal in none', () => {
    const hand: Contents = { ...fern, borders: { rule: 'by-hand', left: '2 in', right: '3 in', top: '2 in', bottom: '4 in' } }; // prettier-ignore
    const all = found(hand, framesOf('14x18', '8x30'));
    expect(inchesOf(one(all, '14x18').borders)).toEqual([2.625, 3.125, 3.625, 5.125]);
    expect(one(all, '8x30').reasons[0]!.words).toMatch(/leaves too little for borders that are to differ, left and right by 1 in and top and bottom by 2 in/); // prettier-ignore
    expect(all.customs[0]!.blank.width / 25.4).toBeCloseTo(12.75, 9);
  });

  test('of a given frame likewise', () => {
    const hand: Contents = { ...fern, frame: { size: '12 x 15 in' }, borders: { rule: 'by-hand', top: '2 in' } };
    // 2 in at the top leaves 3 1/4 in at the bottom.
    const all = found(hand, framesOf('14x18'));
    expect(inchesOf(one(all, '14x18').borders)).toEqual([3.125, 3.5, 3.125, 4.75]);
  });
});

describe('weighting', () => {
  test('as far as every border stays in range', () => {
    const job: Contents = { ...fern, borders: { range: { least: '1 1/2 in', greatest: '3 in' } } };
    const all = found(job, framesOf('11x14', '12x13', '12x15.5'));
    // 4 1/4 in between top and bottom: 1 1/2 and 2 3/4.
    expect(one(all, '11x14').weighting.most! / 25.4).toBeCloseTo(1.25, 9);
    // 3 1/4 in: 1 1/2 and 1 3/4.
    expect(one(all, '12x13').weighting.most! / 25.4).toBeCloseTo(0.25, 9);
    expect(one(all, '12x13').weighting.rules).not.toContain('bottom-amount');
    // 5 3/4 in: 2 3/4 and 3, the greatest.
    expect(one(all, '12x15.5').weighting.most! / 25.4).toBeCloseTo(0.25, 9);
  });

  test('no further than the sheet stays in the frame', () => {
    const wide: Contents = {
      pictures: [{ size: '16 x 20 in', image: '8 x 10 in', overlap: '1/4 in' }],
    };
    // The window is 7 1/2 x 9 1/2, its sheet reaches 5 1/4 in past it: 12 1/2 in are shared as 5 1/4 and 7 1/4.
    expect(one(found(wide, framesOf('18x22')), '18x22').weighting.most! / 25.4).toBeCloseTo(2, 6);
  });

  test('not at all where borders are out of range', () => {
    expect(one(found(fern, framesOf('9x12')), '9x12').weighting).toEqual({ rules: [] });
  });
});

describe('what it takes and costs', () => {
  const double: Contents = {
    ...fern,
    mat: { layers: [{ board: 'Soft white' }, { board: 'Moss' }] },
    package: { mountBoard: { board: 'mount board' } },
  };
  const heading = 'kind,name,width,height,price,per,comes with,material,uv filter';
  const boards = [
    'board,soft white,32 in,40 in,11,sheet,,,',
    'board,Moss,32 in,40 in,24,m2,,,',
    'board,Mount board,,,8,sheet,,,',
    'glazing,Clear,30 in,40 in,2.40,sq ft,,glass,no',
    'glazing,Dearer,30 in,40 in,9.40,sq ft,,glass,no',
    'glazing,Filter,30 in,40 in,1.00,sq ft,,glass,yes',
  ];

  test('every layer, the mount board and the glazing as large as the blank', () => {
    const { used } = one(found(double, framesOf('11x14')), '11x14');
    expect(used.layers.map((area) => area / 25.4 ** 2)).toEqual([expect.closeTo(154, 9), expect.closeTo(154, 9)]);
    expect(used.board / 25.4 ** 2).toBeCloseTo(3 * 154, 9);
    expect(used.glazing / 25.4 ** 2).toBeCloseTo(154, 9);
    const behind: Contents = { ...double, cutting: { layers: 'behind', behindTrim: '1/2 in' } };
    const { used: trimmed } = one(found(behind, framesOf('11x14')), '11x14');
    expect(trimmed.layers.map((area) => area / 25.4 ** 2)).toEqual([expect.closeTo(154, 9), expect.closeTo(10 * 13, 9)]); // prettier-ignore
  });

  test('prices by the sheet, by area, and none', () => {
    const shelf = shelfOf(heading, 'frame,Ash,11 in,14 in,12.50,each,,,', ...boards);
    const all = found(double, shelf);
    const { cost } = one(all, 'Ash');
    const amounts = Object.fromEntries(cost.parts.map(({ what, amount }) => [what, amount?.toNumber()]));
    expect(amounts).toEqual({
      frame: 12.5,
      // Two by three of 11 x 14 in lie on a sheet of 32 x 40.
      'layer 1': expect.closeTo(11 / 6, 9) as unknown,
      'layer 2': expect.closeTo((24 * 154 * 25.4 ** 2) / 1e6, 9) as unknown,
      'mount board': undefined,
      glazing: expect.closeTo((2.4 * 154) / 144, 9) as unknown,
    });
    expect(cost.notCounted).toEqual(['mount board']);
    expect(cost.parts[3]!.why).toBe('a price by the sheet, and no size of a sheet');
    expect(candidateWords(all, one(all, 'Ash'))).toContain(
      'Price as far as it is known 19.28: frame 12.50, layer 1 1.83, layer 2 2.38, glazing 2.57; not counted: mount board (a price by the sheet, and no size of a sheet).',
    );
  });

  test('what comes with the frame costs nothing more and is not cut', () => {
    const shelf = shelfOf(heading, 'frame,Whole,11 in,14 in,20,each,glazing; mount board,,', ...boards);
    const { cost, used } = one(found(double, shelf), 'Whole');
    expect([used.glazing, used.mountBoard]).toEqual([0, 0]);
    expect(cost.notCounted).toEqual([]);
    expect(cost.counted!.toNumber()).toBeCloseTo(20 + 11 / 6 + (24 * 154 * 25.4 ** 2) / 1e6, 9);
  });

  test('a piece larger than the sheets is not counted', () => {
    const shelf = shelfOf(heading, 'frame,Wide,36 in,44 in,80,each,,,', ...boards);
    const { cost } = one(found(double, shelf), 'Wide');
    expect(cost.notCounted).toEqual(['layer 1', 'layer 2', 'mount board', 'glazing']);
    expect(cost.counted!.toNumber()).toBe(80);
  });

  test('where the shelf has no price at all, none is made up', () => {
    const all = found(fern, startShelf('inch'));
    for (const { cost } of all.candidates) {
      expect(cost.counted).toBe(undefined);
      expect(cost.notCounted).toEqual(['frame', 'layer 1', 'mount board', 'glazing']);
    }
    expect(candidateWords(all, all.candidates[0]!)).toContain(
      'Price: not known; frame (no price on the shelf), layer 1 (no board called “Top board” on the shelf), mount board (no board called “Mount board” on the shelf), glazing (no glass on the shelf).',
    );
  });
});

test('a shelf without frames is told of', () => {
  const { candidates, customs, problems } = found(fern, []);
  expect(candidates).toEqual([]);
  expect(problems.map(({ code }) => code)).toEqual(['no-frames-on-shelf']);
  expect(customs.map(({ kind }) => kind)).toEqual(['own']);
});
