/** Rows in columns for a terminal: none is wider than it, and no letter is lost. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { columns } from '../../src/cli/print/text';

it('keeps rows to the width where a column gives way, and every letter', () => {
  const cell = fc.stringMatching(/^[a-z]{0,300}( [a-z]{1,40}){0,6}$/);
  fc.assert(
    fc.property(fc.array(cell, { minLength: 1, maxLength: 4 }), (titles) => {
      const rows = titles.map((title, index) => [String(index + 1), title, '16 x 20', 'turned']);
      const lines = columns(rows, { indent: 6, width: 80, wraps: 1 });
      expect(lines.filter((line) => line.length > 80)).toEqual([]);
      const letters = (text: string) => [...text.replace(/\s/g, '')].sort().join('');
      expect(letters(lines.join(''))).toBe(letters(rows.flat().join('')));
    }),
  );
});

it('sets what goes on under its own beginning', () => {
  const rows = [['1', `1 ${'Chart '.repeat(8)}mat`, '16 x 20 in', '']];
  expect(columns(rows, { indent: 2, width: 50, wraps: 1 })).toEqual([
    '  1  1 Chart Chart Chart Chart Chart  16 x 20 in',
    '     Chart Chart Chart mat',
  ]);
});
