/** A shelf's file: read, printed and read again; every wrong cell told with its line and column. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { money, roundedText } from '../../../src/core/money';
import { itemWords } from '../../../src/core/shelf/item-words';
import { printShelf } from '../../../src/core/shelf/print-shelf';
import { readShelf } from '../../../src/core/shelf/read-shelf';
import { SHELF_COLUMNS } from '../../../src/core/shelf/columns';
import { itemCells, readItemCells } from '../../../src/core/shelf/item-cells';
import { ofKind, SHELF_KINDS, type Shelf, type ShelfItem } from '../../../src/core/shelf/shelf';
import { startShelf } from '../../../src/core/shelf/start-shelf';
import { codesIn, tablesIn } from '../../helpers/markdown';

function read(text: string): Shelf {
  const result = readShelf(text);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('\n'));
  return result.value;
}

function codesOf(text: string): [string, string][] {
  return readShelf(text)
    .problems.map(({ code, at }): [string, string] => [code, at])
    .toSorted((a, b) => `${a}`.localeCompare(`${b}`));
}

describe('reading', () => {
  test('a frame with all its measures', () => {
    const [frame] = read(
      'name,width,height,rabbet depth,lip,face,build,corners,comes with,count,price\n' +
        'Oak,11 in,"14 in","1/2 in","1/4 in",1 in,with back,closed,glazing; backing,3,"12,50"\n',
    );
    expect(frame).toEqual({
      kind: 'frame',
      name: 'Oak',
      size: { width: 279.4, height: 355.6 },
      rabbetDepth: 12.7,
      lip: 6.35,
      face: 25.4,
      build: 'with back',
      corners: 'closed',
      comesWith: ['glazing', 'backing'],
      grooves: [],
      count: 3,
      price: { amount: money('12.5'), per: 'each' },
    });
  });

  test('units from the headings, semicolons between columns, capitals, a byte order mark', () => {
    const [frame] = read('\uFEFFKind;Name;Width (cm);HEIGHT mm\r\nFrame;Ash;30;400\r\n');
    expect(frame).toMatchObject({ kind: 'frame', name: 'Ash', size: { width: 300, height: 400 } });
  });

  test('every kind of thing', () => {
    const shelf = read(
      [
        'kind,name,face,stick,thickness,material,uv filter,load,breaks at,step,seat,length,width,height,price,per',
        'moulding,Ash,1 in,10 ft,,,,,,,,,,,4.20,ft',
        'board,White,,,1.5 mm,,,,,,,,32 in,40 in,11,sheet',
        'glazing,Clear,,,2 mm,glass,no,,,,,,,,30,m2',
        'wire,No. 5,,,,,,25 lb,100 lb,,,,,,0.3,m',
        'hook,Two nails,,,,,,50 lb,,,18 mm,,,,1,each',
        'ring,D-ring,,,,,,20 kg,,,,,,,,',
        'clip,Quarter,,,,,,,,1/4 in,,,,,,',
        'screw,Short,,,,,,,,,,13 mm,,,,',
      ].join('\n'),
    );
    expect(shelf.map(({ kind }) => kind)).toEqual([
      'moulding',
      'board',
      'glazing',
      'wire',
      'hook',
      'ring',
      'clip',
      'screw',
    ]);
    expect(ofKind(shelf, 'wire')[0]?.load).toBeCloseTo(11.33980925, 9);
    expect(ofKind(shelf, 'board')[0]?.size).toEqual({ width: 812.8, height: 1016 });
  });

  test('how sound a board is, and how glazing is treated, as far as it is said', () => {
    const text =
      'kind,name,fibre,pH,alkaline reserve,photo tested,antistatic\n' +
      'board,Rag,Cotton,"8,5",3.5,yes,\nboard,Plain,,,,,\nglazing,Light,,,,,yes\n';
    const shelf = read(text);
    expect(shelf).toMatchObject([
      { quality: { fibre: 'cotton', ph: 8.5, reserve: 3.5, photoTested: true } },
      { name: 'Plain' },
      { antistatic: true },
    ]);
    expect(shelf[1]).not.toHaveProperty('quality');
    expect(read(printShelf(shelf, 'in'))).toEqual(shelf);
    expect(codesOf('kind,name,pH,fibre\nboard,A,15,\nboard,B,acid,rag\n')).toEqual([
      ['number-unreadable', 'line 2, column pH'],
      ['number-unreadable', 'line 3, column pH'],
      ['word-unknown', 'line 3, column fibre'],
    ]);
  });

  test('what is wrong is told with line and column, all of it at once', () => {
    const text =
      'kind,name,width,height,count,price,per,weight\n' +
      'frame,A,8 in,10,1.5,1.000,,3\n' +
      'frme,B,8 in,-10 in,,,,\n' +
      'moulding,C,,,,4,,\n';
    expect(codesOf(text)).toEqual([
      ['cell-empty', 'line 4, column face'],
      ['cell-empty', 'line 4, column per'],
      ['count-unreadable', 'line 2, column count'],
      ['length-out-of-range', 'line 3, column height'],
      ['length-without-unit', 'line 2, column height'],
      ['mass-unreadable', 'line 2, column weight'],
      ['word-unknown', 'line 3, column kind'],
    ]);
  });
});

describe('measures that can’t be together', () => {
  const problems = (rows: string) => readShelf(`kind,name,width,height,face,lip,rabbet,depth,build,grooves\n${rows}`).problems; // prettier-ignore
  test.each([
    ['moulding,A,,,1 in,,1 in,1/2 in,,', 'moulding-too-shallow', 'depth', '1/2 in deep in all, less than its own rabbet of 1 in'],
    ['frame,A,8 in,10 in,,,30 mm,20 mm,,', 'moulding-too-shallow', 'depth', '20 mm deep in all, less than its own rabbet of 30 mm'],
    ['frame,A,8 in,10 in,1/4 in,3/8 in,,,,', 'moulding-narrower-than-lip', 'face', '1/4 in wide, narrower than its own lip of 3/8 in'],
    ['moulding,A,,,1/4 in,3/8 in,,,,', 'moulding-narrower-than-lip', 'face', '1/4 in wide'],
    ['frame,A,8 in,10 in,,,1/2 in,,with back,1/4 in; 5/8 in', 'groove-behind-frame', 'grooves', 'groove 2 begins 5/8 in behind the lip, but the rabbet is only 1/2 in deep'],
  ])('%s', (row, code, column, words) => {
    expect(problems(row)).toMatchObject([{ code, severity: 'error', at: `line 2, column ${column}` }]);
    expect(problems(row)[0]?.message).toContain(words);
  }); // prettier-ignore

  test('are as in a job: what is just right there is right here', () => {
    expect(problems('frame,A,8 in,10 in,1/4 in,1/4 in,1/2 in,1/2 in,with back,1/4 in; 7/16 in')).toEqual([]);
    expect(problems('frame,A,8 in,10 in,1/4 in,3/8 in,,2 in,float,')).toEqual([]);
  });

  test('a face that can’t be read is told once', () => {
    expect(problems('moulding,A,,,wide,,,,,').map(({ code }) => code)).toEqual(['length-unreadable']);
  });
});

describe('what things are called', () => {
  const table = (name: string, colour = '') => `kind,name,colour\nboard,${name},${colour}\n`;
  const of = (...cells: [string, string?]) => readShelf(table(...cells));
  test('is whole, up to 200 letters', () => {
    expect(read(table('W'.repeat(200)))).toMatchObject([{ name: 'W'.repeat(200) }]);
    expect(of('W'.repeat(201)).problems[0]).toMatchObject({ code: 'text-too-long', at: 'line 2, column name' });
    expect(of('White', 'c'.repeat(201)).problems[0]).toMatchObject({ code: 'text-too-long', at: 'line 2, column colour' }); // prettier-ignore
  });

  test.each(['\u0000', '\u0007', '\u001b', '\u0085'])('holds no control characters: %j', (sign) => {
    expect(of(`Wh${sign}ite`).problems[0]).toMatchObject({ code: 'sign-unprintable', at: 'line 2, column name' });
  });
});

describe('limits and amounts', () => {
  const message = (cell: string, column = 'stick') => readShelf(`kind,name,face,per,${column}\nmoulding,A,1 in,ft,${cell}\n`).problems[0]?.message; // prettier-ignore
  test.each([
    ['500 in', 'up to 400 in'],
    ['11 m', 'is not a length'],
    ['20000 mm', 'up to 10160 mm'],
    ['1100 cm', 'up to 1016 cm'],
    ['34 ft', 'up to 400 in'],
  ])('%s is told its limit in its own unit: %s', (cell, words) => {
    expect(message(cell)).toContain(words);
  });

  test('a limit that is no round number of inches is told so that whoever keeps to it is right', () => {
    const told = /up to ([\d.]+) in/.exec(message('30 in', 'rabbet') ?? '')?.[1];
    expect(Number(told) * 25.4).toBeLessThanOrEqual(500);
    expect(message(`${told} in`, 'rabbet')).toBeUndefined();
  });

  test.each([
    ['9999999999999', 'is too large an amount; the greatest is 999999999999'],
    ['0.0000001', 'has too many decimals; an amount has 6 at the most'],
    ['about 3', 'is not an amount'],
    ['"1,250"', 'a mark between thousands'],
  ])('a price of %s: %s', (cell, words) => {
    expect(message(cell, 'price')).toContain(words);
  });

  test('prices in words say all their decimals, and a small sum is never nothing', () => {
    const [screw] = read('kind,name,length,price\nscrew,A,13 mm,0.001\n');
    expect(itemWords(screw!, { unit: 'mm', inchStep: 16, metricStep: 0.5 })).toContain('0.001');
    expect(['0.001', '0.00449', '-0.002', '0.005', '0', '1.005'].map((one) => roundedText(money(one)))).toEqual([
      '0.001', '0.0045', '-0.002', '0.01', '0.00', '1.01',
    ]); // prettier-ignore
  });
});

describe('printing', () => {
  test('names that a spreadsheet would run come back as they were', () => {
    const shelf = read('name,width,height\n-Ash,8 in,10 in\n=Oak,8 in,10 in\n@Elm,8 in,10 in\n');
    const text = printShelf(shelf);
    expect(text).toContain("'=Oak");
    expect(read(text).map(({ name }) => name)).toEqual(['-Ash', '=Oak', '@Elm']);
  });

  test.each(['inch', 'metric'] as const)('the generic shelf in %s sizes reads back, in either unit', (system) => {
    const shelf = startShelf(system);
    for (const unit of ['in', 'mm', undefined] as const)
      expect(closeTo(read(printShelf(shelf, unit)), shelf)).toBe(true);
  });

  test('any shelf of frames reads back', () => {
    const length = fc.double({ min: 1, max: 2000, noNaN: true });
    const frame = fc.record({
      size: fc.record({ width: length, height: length }),
      rabbetDepth: fc.double({ min: 1, max: 100, noNaN: true }),
      count: fc.nat(1000),
      price: fc.integer({ min: 0, max: 1_000_000 }),
      colour: fc
        .string({ minLength: 1, maxLength: 20 })
        .filter((text) => /^[\w ,;"]*\w$/.test(text) && text.trim() === text),
    });
    fc.assert(
      fc.property(fc.array(frame, { maxLength: 8 }), fc.constantFrom('in', 'mm', 'cm', undefined), (frames, unit) => {
        const shelf: Shelf = frames.map(({ price, ...rest }, index) => ({
          kind: 'frame',
          name: `Frame ${index}`,
          ...rest,
          build: 'open back',
          corners: 'mitred',
          comesWith: ['glazing'],
          grooves: [],
          price: { amount: money(price).div(100), per: 'each' },
        }));
        expect(closeTo(read(printShelf(shelf, unit)), shelf)).toBe(true);
      }),
    );
  });
});

/** Equal but for the last bits of lengths and masses. */
function closeTo(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other) < 1e-6;
  if (one === null || other === null || typeof one !== 'object' || typeof other !== 'object') return one === other;
  if ('toFixed' in one && 'toFixed' in other) return String(one) === String(other);
  const [a, b] = [one, other] as Readonly<Record<string, unknown>>[];
  const keys = new Set([...Object.keys(a!), ...Object.keys(b!)]);
  return [...keys].every((key) => closeTo(a![key], b![key]));
}

test('the generic shelf holds the sizes frames are sold in (common practice, no source)', () => {
  const names = ofKind(startShelf('inch'), 'frame').map(({ name }: ShelfItem) => name);
  expect(names).toEqual(
    ['8x10', '9x12', '11x14', '14x18', '16x20', '18x24', '22x28', '24x30', '24x36'].map((n) => `${n} in`),
  );
});

describe('one thing by its cells', () => {
  const shelf = [
    ...startShelf('inch'),
    ...read('kind,name,thickness,width,height,price,per\nboard,White,1.5 mm,32 in,40 in,11,sheet'),
  ];

  test.each(shelf.map((item) => [`${item.kind} ${item.name}`, item] as const))('%s is read as it was', (_, item) => {
    for (const unit of ['in', 'mm'] as const) {
      const { item: again, wrong } = readItemCells(item.kind, itemCells(item, unit), unit);
      expect([...wrong]).toEqual([]);
      expect(closeTo(again, item)).toBe(true);
    }
  });

  test('a bare number is in the unit that is shown, and what is wrong stands with its column', () => {
    const { item } = readItemCells('frame', { name: 'A', width: '8', height: '10 1/2' }, 'in');
    expect(item).toMatchObject({ size: { width: 203.2, height: 266.7 } });
    const { item: none, wrong } = readItemCells('moulding', { name: 'B', face: 'wide', price: '3' }, 'in');
    expect(none).toBeUndefined();
    expect([...wrong.keys()].sort()).toEqual(['face', 'per']);
    expect(wrong.get('per')).toBe('The price of a moulding needs it, and the cell is empty.');
  });
});

test('the reference names every column with the kinds that have it', () => {
  const table = tablesIn(readFileSync('resources/shelf.md', 'utf8')).find(({ heads }) => heads[0] === 'column');
  const told = table?.rows.map(([column, , of]) => [
    codesIn(column!)[0],
    of === 'all' ? [...SHELF_KINDS] : of!.split(', '),
  ]);
  expect(told?.map(([name, of]) => [name, [...(of as string[])].sort()]).sort()).toEqual(
    SHELF_COLUMNS.map(({ names: [name], of }) => [name, [...of].sort()]).sort(),
  );
});
