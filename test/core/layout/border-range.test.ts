/** Borders outside the range that a job writes: told with what would do, and mended. */
import { describe, expect, test } from 'vitest';
import { setAll } from '../../../src/core/job/edit';
import { planned, problemOf, problemsOf, tryPlan, written, type Contents } from '../open';

const print: Contents = { units: 'in', pictures: [{ size: '16 x 20 in', overlap: '1/8 in' }] };
const CODE = 'border-out-of-range';

function codes(job: Contents): string[] {
  return problemsOf(job).map(({ code }) => code);
}

describe('a border out of the range', () => {
  // Common practice, no source: a print that is asked to show 3 in of mat all round.
  const seen: Contents = {
    ...print,
    frame: { size: '22 x 26 in', lip: '1/4 in', allowance: '1/8 in' },
    borders: { measured: 'as seen', range: { least: '3 in' } },
  };

  test('is measured as the borders are', () => {
    expect(problemOf(seen, CODE)).toMatchObject({
      severity: 'warning',
      at: 'borders',
      message:
        'Measured as seen, all four borders are 2 15/16 in, 1/16 in too narrow for the range you asked for: 3 in or more.',
      value: '2 15/16 in',
      limit: '3 in',
    });
    expect(codes({ ...seen, borders: { range: { least: '3 in' } } })).not.toContain(CODE);
  });

  test('is told only where the job writes that end of the range', () => {
    const narrow: Contents = { ...print, frame: { size: '18 x 22 in' } };
    expect(planned(narrow).layout.borders.cut.left).toBeLessThan(1.5 * 25.4);
    expect(codes(narrow)).not.toContain(CODE);
    expect(codes({ ...narrow, borders: { range: { greatest: '4 in' } } })).not.toContain(CODE);
    expect(codes({ ...narrow, borders: { range: { least: '1 1/2 in' } } })).toContain(CODE);
  });

  test('may be too wide, and sides that miss differently are told apart', () => {
    const job: Contents = {
      ...print,
      frame: { size: '24 x 32 in' },
      borders: { range: { least: '4 1/4 in', greatest: '6 in' } },
    };
    const told = problemsOf(job).filter(({ code }) => code === CODE);
    expect(told.map(({ message }) => message)).toEqual([
      'Measured as cut, the left and right borders are 4 1/8 in, 1/8 in too narrow for the range you asked for: 4 1/4 in or more.',
      'Measured as cut, the top and bottom borders are 6 1/8 in, 1/8 in too wide for the range you asked for: 6 in or less.',
    ]);
  });

  test.each<[string, Contents]>([
    ['equal', { ...print, borders: { all: '2 in', range: { least: '2 1/2 in' } } }],
    ['centred', { ...print, borders: { rule: 'centred', sides: '3 in', top: '1 in', range: { least: '2 in' } } }],
    ['centred, top as the sides', { ...print, borders: { rule: 'centred', sides: '1 in', range: { least: '2 in' } } }],
    [
      'by hand',
      { ...print, borders: { rule: 'by-hand', sides: '2 in', bottom: '5 in', range: { least: '3 in', greatest: '4 in' } } },
    ],
    [
      'weighted too far in a given frame',
      { ...print, frame: { size: '22 x 26 in' }, borders: { rule: 'bottom-amount', amount: '1 in', range: { least: '3 in' } } },
    ],
  ])('%s: its fix mends it', (_, job) => {
    const { fix } = problemOf(job, CODE);
    const after = tryPlan(setAll(written(job), fix!.edits));
    expect(after.planned).toBeDefined();
    expect(after.problems.map(({ code }) => code)).not.toContain(CODE);
  }); // prettier-ignore

  test.each<[string, Contents]>([
    ['steps', { ...print, borders: { rule: 'equal-steps', sides: '1 in', range: { least: '2 in' } } }],
    ['a given frame', { ...print, frame: { size: '20 x 24 in' }, borders: { range: { least: '3 in' } } }],
  ])('has no fix where a border can not be given by itself: %s', (_, job) => {
    expect(problemOf(job, CODE).fix).toBe(undefined);
  });
});
