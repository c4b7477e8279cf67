/** Sizes as they are written in a job: two lengths with one unit, named papers, groups. */
import { describe, expect, it } from 'vitest';
import { problemOf, planned, type Contents } from '../open';

/** The nearest double to so many inches. */
const inches = (count: number) => (count * 254) / 10;

function sheetOf(size: unknown, units: 'in' | 'mm' | 'cm' = 'in') {
  const job = { units, pictures: [{ size, overlap: '0.5 mm' }], borders: { all: '60 mm' } } as Contents;
  return planned(job).job.pictures[0]?.sheet;
}

describe('a size of 8 x 10 in', () => {
  it.each([
    '8 x 10 in', '8x10in', '8 × 10"', '8" x 10"', '8 in x 10 in', '8 x 10 inches', '8 x 10 in.', '8 X 10 IN', "8 x 10''", '8*10 in',
    '8 x 10 ″', '8 in x 10', '20.32 x 25.4 cm', '203.2 x 254 mm', '203,2 x 254 millimetres', '8 in x 254 mm', '8 by 10 in',
  ])('%s, whatever the units of the job', (size) => {
    for (const units of ['in', 'mm', 'cm'] as const)
      expect(sheetOf(size, units)).toEqual({ width: inches(8), height: inches(10) });
  }); // prettier-ignore

  it('bare, in the units of the job', () => {
    expect(sheetOf('8 x 10')).toEqual({ width: inches(8), height: inches(10) });
    expect(sheetOf('80 x 100', 'mm')).toEqual({ width: 80, height: 100 });
    expect(sheetOf({ width: 8, height: '10' }, 'cm')).toEqual({ width: 80, height: 100 });
  });

  it('with fractions, feet and mixed units', () => {
    expect(sheetOf('8 1/2 x 10-3/4 in', 'mm')).toEqual({ width: inches(8.5), height: inches(10.75) });
    expect(sheetOf(`1' x 2'`, 'mm')).toEqual({ width: inches(12), height: inches(24) });
    expect(sheetOf(`1 x 1' 2"`, 'mm')).toEqual({ width: inches(1), height: inches(14) });
    expect(sheetOf({ width: '8 in', height: '254 mm' })).toEqual({ width: inches(8), height: inches(10) });
  });
});

describe('papers by name (ISO 216)', () => {
  it.each([
    ['A4', 210, 297],
    ['a4 upright', 210, 297],
    ['A4 portrait', 210, 297],
    ['A4 landscape', 297, 210],
    [' A4  lying ', 297, 210],
    ['B5', 176, 250],
  ])('%s', (name, width, height) => expect(sheetOf(name)).toEqual({ width, height }));
});

describe('what is not a size', () => {
  it.each(['8', 'x', '8 x', 'x 10', '8 x 10 x 12', 'A11', 'C4', '', 'A4 sideways'])('%s', (size) => {
    const problem = problemOf({ pictures: [{ title: 'Fern', size }] }, 'size-unreadable');
    expect(problem.at).toBe('pictures[0].size');
    expect(problem.message).toContain(`picture "Fern": "${size}" is not a size; write width x height like 8 x 10 in`);
  });

  it.each([
    ['8 x wide in', 'length-unreadable'],
    ['1,000 x 10 in', 'length-unreadable'],
    ['0 x 10 in', 'length-out-of-range'],
    ['8 x -10 in', 'length-out-of-range'],
    ['8 x 99999 in', 'length-out-of-range'],
  ])('%s: %s', (size, code) => {
    expect(problemOf({ pictures: [{ size }] }, code).at).toBe('pictures[0].size');
  });
});
