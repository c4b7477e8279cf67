/** Costs by the shelf's prices, worked by hand; what has no price is told and not counted. */
import { describe, expect, it } from 'vitest';
import { moneyText, roundedText } from '../../../src/core/money';
import { piecesOf } from '../../../src/core/pieces/pieces';
import { piecesPerSheet } from '../../../src/core/pieces/sheet-count';
import { readShelf } from '../../../src/core/shelf/read-shelf';
import { planned, type Contents } from '../open';

const IN = 25.4;

function shelf(rows: string) {
  const read = readShelf(
    `kind,name,width,height,thickness,material,uv filter,face,lip,stick,count,price,per\n${rows}`,
    'in',
  );
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read.value;
}

const job: Contents = {
  pictures: [{ size: '8 x 10 in' }],
  frame: { size: '16 x 20 in', allowance: 0, lip: '1/4 in', mouldingWidth: '3/4 in' },
  mat: { layers: [{ board: 'Soft white' }, { board: 'soft White', reveal: '1/4 in' }] },
  package: { glazing: { thickness: '2 mm' } },
};

function costs(rows: string, more: { moulding?: string; kerf?: number; stick?: number } = {}, contents = job) {
  const made = piecesOf({ jobs: [planned(contents)], shelf: shelf(rows), kerf: 0, ...more });
  if (!made.ok) throw new Error(made.problems.map(({ message }) => message).join('\n'));
  const [frame] = made.value.frames;
  return { ...frame!.costs!, sticks: made.value.sticks, problems: made.problems };
}
const lineOf = (rows: string, what: string, more = {}) => costs(rows, more).lines.find((line) => line.what === what)!;

describe('sheets', () => {
  // Common practice, no source: cases from the bench.
  it.each([
    [[16, 20], [32, 40], 4],
    [[8, 10], [32, 40], 16],
    [[32, 40], [32, 40], 1],
    [[40, 32], [32, 40], 1],
    [[16, 20], [37, 39], 3],
    [[33, 41], [32, 40], 0],
  ] as const)('%j in from %j in: %d', ([width, height], [across, up], count) => {
    expect(piecesPerSheet({ width: width * IN, height: height * IN }, { width: across * IN, height: up * IN })).toBe(
      count,
    );
  });
});

describe('boards and glazing', () => {
  it('pieces of one board are bought together, in whole sheets', () => {
    const line = lineOf('board,Soft White,32,40,,,,,,,,11,sheet', 'Mat layer 1, Mat layer 2');
    expect(moneyText(line.amount!)).toBe('11.00');
    expect(line.basis).toBe('1 sheet of “Soft White”, 32 x 40 in, each good for 4 of this size, at 11.00 per sheet');
    const small = lineOf('board,Soft White,20,20,,,,,,,,7.25,sheet', 'Mat layer 1, Mat layer 2');
    expect(moneyText(small.amount!)).toBe('14.50');
  });

  it('by area: 16 x 20 in is 2 2/9 sq ft', () => {
    const line = lineOf('glazing,Clear,,,0.08,glass,no,,,,,9,sq ft', 'Glazing');
    expect(moneyText(line.amount!)).toBe('20.00');
    expect(line.basis).toBe('1 of 16 x 20 in of “Clear” at 9.00 per sq ft');
  });

  it('of several that fit the cheapest is taken, and one without a price last', () => {
    const rows = [
      'glazing,Unpriced,,,,glass,no,,,,,,',
      'glazing,Dear,,,0.08,glass,no,,,,,30,m2',
      'glazing,Cheap,,,0.08,glass,no,,,,,20,m2',
      'glazing,Filtered,,,0.08,glass,yes,,,,,1,m2',
      'glazing,Thick,,,0.12,glass,no,,,,,1,m2',
      'glazing,Acrylic,,,0.08,acrylic,no,,,,,1,m2',
    ];
    expect(lineOf(rows.join('\n'), 'Glazing').basis).toContain('“Cheap”');
    expect(lineOf(rows[0]!, 'Glazing')).toEqual({
      what: 'Glazing',
      pieces: ['Glazing'],
      name: 'Unpriced',
      basis: '“Unpriced” has no price',
    });
  });

  it.each([
    ['board,Soft white,,,,,,,,,,11,sheet', 'does not say how large'],
    ['board,Soft white,10,10,,,,,,,,11,sheet', 'smaller than 16 x 20 in'],
    ['board,Other,32,40,,,,,,,,11,sheet', 'no board called “Soft white”'],
  ])('%s is not counted', (row, why) => {
    const found = costs(row);
    const line = found.lines.find(({ what }) => what === 'Mat layer 1, Mat layer 2')!;
    expect(line.amount).toBeUndefined();
    expect(line.basis).toContain(why);
    expect(found.notCounted).toContain('Mat layer 1, Mat layer 2');
    expect(moneyText(found.counted)).toBe('0.00');
  });

  it('what comes with the frame is not bought', () => {
    const found = costs(
      'glazing,Clear,,,,glass,no,,,,,9,sq ft',
      {},
      { ...job, frame: { ...job.frame, comesWith: ['glazing'] } },
    );
    expect(found.lines.map(({ what }) => what)).not.toContain('Glazing');
  });
});

describe('moulding', () => {
  // 2 x (16 + 20) + 8 x (1 - 1/4) = 78 in.
  const oak = 'moulding,Oak,,,,,,1,1/4,120,1,4.80,ft';

  it('by the length that the frame takes', () => {
    const line = lineOf(oak, 'Moulding', { moulding: 'oak' });
    expect(roundedText(line.amount!)).toBe('31.20');
    expect(line.basis).toBe('78 in of “Oak” at 4.80 per ft');
  });

  it('whole sticks beside it, and how many are to buy', () => {
    const { sticks, problems } = costs(oak, { moulding: 'Oak' });
    expect(sticks).toHaveLength(1);
    expect(roundedText(sticks[0]!.cost!)).toBe('48.00');
    expect(problems.map(({ code }) => code)).toEqual([]);
    const short = costs(oak, { moulding: 'Oak', stick: 45 * IN });
    expect(short.problems.map(({ code, value, limit }) => [code, value, limit])).toEqual([
      ['sticks-too-few', '1', '2'],
    ]);
  });

  it('is not counted where none is chosen, or it has no price', () => {
    expect(lineOf(oak, 'Moulding').basis).toBe('the frame has no name; choose a frame or a moulding of the shelf');
    expect(lineOf('moulding,Oak,,,,,,1,1/4,,,,', 'Moulding', { moulding: 'Oak' }).basis).toContain('has no price');
  });
});

it('the sum is of all that is counted', () => {
  const found = costs('board,Soft white,32,40,,,,,,,,11,sheet\nglazing,Clear,,,,glass,no,,,,,9,sq ft');
  expect(moneyText(found.counted)).toBe('31.00');
  expect(found.notCounted).toEqual(['Mount board', 'Backing', 'Dust cover', 'Moulding']);
});
