/** A stock's file changed cell by cell: what is not touched stays to the letter, and what is written reads as it was meant. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editStock } from '../../../src/core/sheets/edit-stock';
import { KEPT_STOCK } from '../../../src/core/sheets/kept-stock';
import { printStock } from '../../../src/core/sheets/print-stock';
import { money } from '../../../src/core/money';
import { readStock } from '../../../src/core/sheets/read-stock';
import { stockName, type StockSheet } from '../../../src/core/sheets/stock-sheet';
import { stepStock, type StockStep } from '../../../src/core/sheets/stock-steps';
import { placeTable, replaceSpans } from '../../../src/core/tables/place-table';
import { parseUseRecord, printUseRecord } from '../../../src/core/sheets/use-record';
import { MM_PER_INCH } from '../../../src/core/units';

const showing = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;
const row = (kind: StockSheet['kind'], width: number, height: number, more: Partial<StockSheet> = {}): StockSheet => ({ board: 'Warm white', kind, width: width * MM_PER_INCH, height: height * MM_PER_INCH, ...more }); // prettier-ignore

function read(text: string): readonly StockSheet[] {
  const result = readStock(text);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('\n'));
  return result.value;
}

function stepped(text: string, steps: readonly StockStep[]) {
  const done = stepStock(read(text), steps, 'use', showing);
  if (!done.ok) throw new Error(done.problems.map(({ message }) => message).join('\n'));
  const edited = editStock(text, done.value.list);
  if (!edited.ok) throw new Error(edited.problems.map(({ message }) => message).join('\n'));
  return { ...edited.value, ...done.value };
}

/** The text once the steps are made, and once they are undone again. */
function thereAndBack(text: string, steps: readonly StockStep[]): [string, string] {
  const used = stepped(text, steps);
  const undone = stepStock(used.list, used.back, 'take back', showing);
  if (!undone.ok) throw new Error('refused');
  const back = editStock(used.text, undone.value.list, { known: used.removed });
  if (!back.ok) throw new Error('refused');
  return [used.text, back.value.text];
}

const FILE = [
  '\uFEFFShelf;Board;Kind;Width (cm);Height (cm);Count;Notes',
  'A1;"Warm ""white""";sheet; 80 ;120; 4 ;"keep; for the linocuts"',
  '',
  'B2;Warm white;remnant;20;60;"1";from the sea charts',
  'B3;Warm white;remnant;"30";60;2',
].join('\n');

describe('a file', () => {
  it('keeps all that is not touched: columns, blanks, quotes, the last line without an end', () => {
    const small = row('remnant', 20 / 2.54, 60 / 2.54);
    const [text, back] = thereAndBack(FILE, [{ row: { ...row('sheet', 80 / 2.54, 120 / 2.54), board: 'warm "white"' }, takes: 1, puts: 0 }, { row: small, takes: 1, puts: 0 }, { row: row('remnant', 40 / 2.54, 61.5 / 2.54, { note: 'left from Heron' }), takes: 0, puts: 2 }]); // prettier-ignore
    expect(text).toBe(
      [
        '\uFEFFShelf;Board;Kind;Width (cm);Height (cm);Count;Notes',
        'A1;"Warm ""white""";sheet; 80 ;120; 3 ;"keep; for the linocuts"',
        '',
        'B3;Warm white;remnant;"30";60;2',
        ';Warm white;remnant;"40";"61.5";2;left from Heron',
      ].join('\n'),
    );
    // The line that was taken out stands again with its own column, under the row that it was under; the last line now ends.
    expect(back).toBe(
      [
        '\uFEFFShelf;Board;Kind;Width (cm);Height (cm);Count;Notes',
        'A1;"Warm ""white""";sheet; 80 ;120; 4 ;"keep; for the linocuts"',
        'B2;Warm white;remnant;20;60;"1";from the sea charts',
        '',
        'B3;Warm white;remnant;"30";60;2',
        '',
      ].join('\n'),
    );
  });

  it('is written with the decimal mark that it has, in all that is put into it', () => {
    const priced = { row: row('remnant', 16.5 / 2.54, 60 / 2.54, { price: money('2.5') }), takes: 0, puts: 1 };
    const put = { row: row('remnant', 16.5 / 2.54, 60 / 2.54), takes: 0, puts: 1 };
    const comma = 'board;kind;width;height;count;price\nWarm white;sheet;81,28 cm;101,6 cm;3;11,50\n';
    expect(stepped(comma, [priced]).text).toBe(`${comma}Warm white;remnant;"165 mm";"600 mm";1;2,5\n`);
    const heading = 'board;kind;width (cm);height (cm);count\nWarm white;sheet;81,28;100;3\n';
    expect(stepped(heading, [put]).text).toBe(`${heading}Warm white;remnant;"16,5";"60";1\n`);
    const quoted = 'board,kind,width (cm),height (cm),count,price\nWarm white,sheet,"81,28",100,3,"11,50"\n';
    expect(stepped(quoted, [priced]).text).toBe(`${quoted}Warm white,remnant,"16,5","60",1,"2,5"\n`);
    const point = heading.replace('81,28', '81.28');
    expect(stepped(point, [put]).text).toBe(`${point}Warm white;remnant;"16.5";"60";1\n`);
    for (const text of [comma, heading, quoted]) expect(thereAndBack(text, [put])[1]).toBe(text);
  });

  it('gets the columns that are wanted and not there, and no others', () => {
    const { text } = stepped('board,width,height\nWarm white,32 in,40 in\n', [{ row: row('remnant', 16, 40, { note: 'left from Heron' }), takes: 0, puts: 1 }]); // prettier-ignore
    expect(text).toBe('board,width,height,kind\nWarm white,32 in,40 in\nWarm white,"16 in","40 in",remnant\n');
    const more = stepped(text, [{ row: row('remnant', 16, 40), takes: 0, puts: 1 }]);
    expect(more.text).toBe(
      'board,width,height,kind,count\nWarm white,32 in,40 in\nWarm white,"16 in","40 in",remnant,2\n',
    );
    expect(stepped('board,width,height', [{ row: row('remnant', 16, 40), takes: 0, puts: 3 }]).text).toBe(
      'board,width,height,kind,count\nWarm white,"16 in","40 in",remnant,3',
    );
  });

  it('writes lengths with the mark of an inch beside those that are written so', () => {
    const { text } = stepped('board,kind,width,height,count\nWarm white,remnant,16",40",2\n', [{ row: row('remnant', 16, 40), takes: 1, puts: 0 }]); // prettier-ignore
    expect(text).toBe('board,kind,width,height,count\nWarm white,remnant,16",40",1\n');
  });

  it('that would be longer than any list is refused', () => {
    const list = Array.from({ length: 2000 }, (_, index) => row('remnant', 10, (index + 10) / 64, { count: 1 }));
    const edited = editStock(printStock(list), [...list, row('remnant', 3, 3, { count: 1 })]);
    expect(edited).toMatchObject({ ok: false, problems: [{ code: 'stock-too-long' }] });
  });
});

const cell = fc.constantFrom('', 'A1', 'a, b', '"quoted"', 'x;y', 'two\nlines', '16"', ' blank ');
const someRow = fc.record(
  {
    board: fc.constantFrom('Warm white', 'Grey, "8"', '=Mount'),
    kind: fc.constantFrom('sheet' as const, 'remnant' as const),
    width: fc.integer({ min: 1, max: 4000 }).map((n) => (n * MM_PER_INCH) / 64),
    height: fc.integer({ min: 1, max: 9000 }).map((n) => n / 4),
    count: fc.nat(5),
    grain: fc.constantFrom('width' as const, 'height' as const),
    note: cell.filter((text) => text.trim() !== '').map((text) => text.trim()),
  },
  { requiredKeys: ['board', 'kind', 'width', 'height'] },
);
const someStock = fc.uniqueArray(someRow, { maxLength: 6, selector: stockName });

/** The list with a column of the user's own in front, under any separator and line end. */
function withOwnColumn(
  list: readonly StockSheet[],
  own: readonly string[],
  separator: string,
  lineEnd: string,
): string {
  // prettier-ignore
  const text = printStock(list);
  const { rows } = placeTable(text);
  const quote = (value: string) => `"${value.replaceAll('"', '""')}"`;
  const cells = rows.map((one, index) => [quote(index === 0 ? 'place' : (own[index] ?? '')), ...one.cells.map(({ from, to }) => (from === to ? '' : text[from] === '"' ? text.slice(from, to) : quote(text.slice(from, to))))]); // prettier-ignore
  return cells.map((one) => one.join(separator) + lineEnd).join('');
}

describe('any file', () => {
  const separators = fc.constantFrom(',', ';', '\t');
  const ends = fc.constantFrom('\n', '\r\n');

  it('is placed as it is read: cells put back where they stood give the text', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 5 }), ends, (rows, end) => {
        const text = `a,b,c${end}${rows.map((one) => one.map((value) => (/[",;\n]/.test(value) && value !== '16"' ? `"${value.replaceAll('"', '""')}"` : value)).join(',')).join(end)}`; // prettier-ignore
        const { rows: placed } = placeTable(text);
        const spans = placed.flatMap(({ cells }) => cells);
        expect(replaceSpans(text, spans.map((span) => ({ ...span, text: text.slice(span.from, span.to) })))).toBe(text); // prettier-ignore
        for (const { cells } of placed) expect(cells).toHaveLength(3);
      }),
    );
  });

  it('used and taken back holds the same, with the cells of columns that only the user knows', () => {
    const change = fc.record({ index: fc.nat(9), by: fc.integer({ min: -3, max: 3 }).filter((by) => by !== 0) });
    fc.assert(
      fc.property(someStock, fc.array(cell, { minLength: 8, maxLength: 8 }), separators, ends, fc.array(someRow, { maxLength: 2 }), fc.array(change, { minLength: 1, maxLength: 6 }), (rows, own, separator, end, others, changes) => {
        fc.pre(rows.length > 0);
        const text = withOwnColumn(rows, own, separator, end);
        const all = [...rows, ...others];
        const steps = changes.map(({ index, by }): StockStep => ({ row: all[index % all.length]!, takes: Math.max(0, -by), puts: Math.max(0, by) }));
        if (!stepStock(read(text), steps, 'use', showing).ok) return;
        const [used, back] = thereAndBack(text, steps);
        expect(readStock(used).ok).toBe(true);
        // To the letter, but for columns that had to be added, and those are at the end.
        const added = read(used).length > 0 && placeTable(used).rows[0]!.cells.length - placeTable(text).rows[0]!.cells.length;
        if (added === 0) expect(back).toBe(text);
        else expect(read(back).every((one, index) => KEPT_STOCK.isSame(one, rows[index]!))).toBe(true);
      }),
      { numRuns: 300 },
    ); // prettier-ignore
  });
});

describe('a row that is changed', () => {
  const changed = fc.tuple(fc.nat(9), someRow);

  it('any row into any other under its new name keeps its own column, and reads as it was meant', () => {
    fc.assert(
      fc.property(someStock, fc.array(cell, { minLength: 8, maxLength: 8 }), fc.constantFrom(',', ';', '\t'), changed, (rows, own, separator, [place, other]) => {
        fc.pre(rows.length > 0);
        const text = withOwnColumn(rows, own, separator, '\n');
        const before = read(text);
        const old = before[place % before.length]!;
        // As it reads: of a remnant there is one unless more are counted.
        const [sheet] = read(printStock([other], 'mm'));
        fc.pre(!before.some((one) => one !== old && stockName(one) === stockName(sheet!)));
        const after = before.map((one) => (one === old ? sheet! : one));
        const edited = editStock(text, after, { were: new Map([[stockName(sheet!), stockName(old)]]), withNotes: true });
        expect(edited.ok && edited.value.removed.lines).toEqual([]);
        const now = edited.ok ? edited.value.text : '';
        expect(read(now).every((one, index) => KEPT_STOCK.isSame(one, after[index]!))).toBe(true);
        const ownCells = (of: string) => placeTable(of).rows.map(({ cells: [first] }) => of.slice(first!.from, first!.to));
        expect(ownCells(now)).toEqual(ownCells(text));
      }),
      { numRuns: 300 },
    ); // prettier-ignore
  });
});

describe('the record of a use', () => {
  const record = {
    words: ['Warm white: takes 1 sheet 32 x 40 in; puts back nothing'],
    before: 'abc',
    back: stepped(FILE, [{ row: row('remnant', 20 / 2.54, 60 / 2.54), takes: 1, puts: 0 }]).back,
    removed: { heading: 'board', lines: ['Warm white'] },
  };

  it('reads back to the same', () => {
    const read = parseUseRecord(printUseRecord(record));
    expect(read).toMatchObject({ ok: true, value: { words: record.words, before: 'abc', removed: record.removed } });
    expect(read.ok && printUseRecord(read.value)).toBe(printUseRecord(record));
  });

  it.each([
    ['', 'JSON'],
    ['{}', 'it is no matwright-stock-use of version 1'],
    ['null', 'the record holds nothing'],
    [printUseRecord(record).replace('"puts": 1', '"puts": 1.5'), '“puts” is no count'],
    [printUseRecord(record).replace(/"row": ".*"/, '"row": "board,width,height\\nA,1,1 in"'), 'does not say its unit'],
    [printUseRecord(record).replace('"words": [', '"words": [1, '), '“words” is no text'],
    [printUseRecord(record).replace('"puts": 1', '"puts": 1, "atNone": "melts"'), '“atNone” is neither'], // prettier-ignore
  ])('that is damaged says what is wrong: %j', (text, words) => {
    expect(parseUseRecord(text)).toMatchObject({
      ok: false,
      problems: [{ code: 'use-record-unreadable', message: expect.stringContaining(words) as string }],
    });
  });
});
