/** A show's list: read as its reference says, every wrong cell told with its line and column. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SHOW_COLUMNS } from '../../../src/core/show/columns';
import { readShow } from '../../../src/core/show/read-show';
import { codesIn, tablesIn } from '../../helpers/markdown';
import { list } from './shows';

function codesOf(text: string): [string, string][] {
  return readShow(text).problems.map(({ code, at }) => [code, at]);
}

describe('reading', () => {
  it('a picture with all that can be said of it, and one with what is needed', () => {
    const pictures = list(
      'title,width,height,image width,image height,kind,overlap,thickness,count,frame,wall,note\n' +
        'Fern,10 in,13 in,"7 1/2 in",10 in,Cyanotype,shows 3/8 in,0.3 mm,2,Ash 11x14,Stairs,fragile\n' +
        '"Chart, of the bay",420 mm,297 mm,,,,,,,,,\n',
    );
    expect(pictures).toEqual([
      {
        line: 2,
        title: 'Fern',
        sheet: { width: 254, height: 330.2 },
        image: { width: 190.5, height: 254 },
        kind: 'cyanotype',
        overlap: -9.525,
        thickness: 0.3,
        count: 2,
        frame: 'Ash 11x14',
        wall: 'Stairs',
        note: 'fragile',
      },
      { line: 3, title: 'Chart, of the bay', sheet: { width: 420, height: 297 }, count: 1 },
    ]);
  });

  it.each([
    ['covers 1/8 in', 3.175],
    ['1/8 in', 3.175],
    ['Shows 3 mm', -3],
    ['-3 mm', -3],
    ['0 in', 0],
    ['shows 0 mm', 0],
  ])('an overlap of %s', (words, mm) => {
    const [picture] = list(`title,width,height,overlap\nA,8 in,10 in,${words}\nB,8 in,10 in,\n`);
    expect(picture?.overlap).toBe(mm);
  });

  it('units from the headings, semicolons between columns, a byte order mark, titles over two lines', () => {
    const pictures = list(
      '\uFEFFPicture;Width (cm);Height (cm);Room\r\n"Fern\r\nand moss";20;25;Hall\r\nKite;30;40;\r\n',
    );
    expect(pictures).toMatchObject([
      { line: 2, title: 'Fern and moss', sheet: { width: 200, height: 250 }, wall: 'Hall' },
      { line: 4, title: 'Kite', sheet: { width: 300, height: 400 } },
    ]);
  });

  it('a unit given with the call, for a screen that has one', () => {
    expect(readShow('title,width,height\nA,8,10\nB,8,10', 'in')).toMatchObject({
      ok: true,
      value: [{ sheet: { width: 203.2, height: 254 } }, {}],
    });
  });
});

describe('what is wrong', () => {
  it('is told with line and column, all at once', () => {
    const text =
      'title,width,height,image width,image height,kind,overlap,count,frame\n' +
      ',8 in,10,,,photo,1/8,0,\n' +
      'Fern,,-3 in,20 in,2 in,print,covers,1.5,\n' +
      'Moss,5 in,7 in,6 in,5 in,prnt,shows -1 in,501,\n' +
      'Kite,5 in,7 in,,3 in,,,,\n';
    expect(codesOf(text).toSorted((a, b) => `${a}`.localeCompare(`${b}`))).toEqual([
      ['cell-empty', 'line 2, column title'],
      ['cell-empty', 'line 3, column width'],
      ['cell-empty', 'line 5, column image width'],
      ['count-unreadable', 'line 2, column count'],
      ['count-unreadable', 'line 3, column count'],
      ['count-unreadable', 'line 4, column count'],
      ['image-larger-than-sheet', 'line 4, column image width'],
      ['length-out-of-range', 'line 3, column height'],
      ['length-out-of-range', 'line 4, column overlap'],
      ['length-unreadable', 'line 3, column overlap'],
      ['length-without-unit', 'line 2, column height'],
      ['length-without-unit', 'line 2, column overlap'],
      ['word-unknown', 'line 2, column kind'],
      ['word-unknown', 'line 4, column kind'],
    ]);
    const [message] = readShow(text).problems.filter(({ at }) => at === 'line 4, column kind');
    expect(message?.message).toContain('perhaps “print” is meant');
  });

  it.each([
    ['', 'table-empty', 'line 1'],
    ['title,width\nA,8 in\nB,9 in', 'column-missing', 'line 1'],
    ['title,width,height,height (in)\nA,8 in,9 in,9\nB,8 in,9 in,9', 'column-twice', 'line 1, column height (in)'],
    ['title,width,height\nA,8 in,9 in,extra\nB,1 in,1 in', 'cells-too-many', 'line 2'],
    ['title,width,height\n"A,8 in,9 in\nB,1 in,1 in', 'table-quotes', 'line 2'],
    ['title,width,height\nA,8 in,9 in', 'show-too-short', ''],
    ['title,width,height', 'show-too-short', ''],
    ['title,width,height,count\nA,8 in,9 in,300\nB,8 in,9 in,201', 'show-too-long', ''],
    [`title,width,height\n${'x'.repeat(201)},8 in,9 in\nB,1 in,1 in`, 'value-too-large', 'line 2, column title'],
  ])('%j', (text, code, at) => {
    expect(readShow(text).ok).toBe(false);
    expect(codesOf(text)).toContainEqual([code, at]);
  });

  it('a column that nobody knows is passed over with a warning', () => {
    const result = readShow('title,width,height,walls\nA,8 in,9 in,x\nB,8 in,9 in,y');
    expect(result).toMatchObject({ ok: true, problems: [{ code: 'column-unknown', severity: 'warning' }] });
  });

  it('two prints of one edition are a show, and so are 500 pictures', () => {
    expect(readShow('title,width,height,count\nA,8 in,9 in,2').ok).toBe(true);
    expect(readShow(`title,width,height\n${'A,8 in,9 in\n'.repeat(500)}`).ok).toBe(true);
  });

  it('no text makes it throw', () => {
    const cell = fc.oneof(fc.string(), fc.constantFrom('8 in', '1e999 in', '8', 'own', '"', ';', '-1/8 in', 'A4'));
    const row = fc.array(cell, { maxLength: 13 }).map((cells) => cells.join(','));
    fc.assert(
      fc.property(fc.array(row, { maxLength: 5 }), (rows) => {
        const head = SHOW_COLUMNS.map(({ names }) => names[0]).join(',');
        expect(typeof readShow([head, ...rows].join('\n')).ok).toBe('boolean');
        expect(typeof readShow(rows.join('\n')).ok).toBe('boolean');
      }),
    );
  });
});

it('the reference names every column, with every name it goes by', () => {
  const table = tablesIn(readFileSync('resources/show.md', 'utf8')).find(({ heads }) => heads[0] === 'column')!;
  expect(table.rows.map(([column]) => codesIn(column!)[0])).toEqual(SHOW_COLUMNS.map(({ names }) => names[0]));
});
