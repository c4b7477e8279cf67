/** What a layout warns of though it can be cut: one sheet in two places, tiny windows, what goes unheard. */
import { describe, expect, it } from 'vitest';
import { parseJobText } from '../../../src/core/job/text';
import { problemOf, problemsOf, type Contents } from '../open';

const codes = (job: Contents) => problemsOf(job).map(({ code }) => code);

it('one picture in two windows is one sheet too few', () => {
  const job = (items: Contents['windows'][]): Contents => ({
    pictures: [{ id: 'fern', title: 'Lady fern', size: '4x5' }],
    windows: { kind: 'row', items: items as never },
    frame: { size: '20x12' },
  });
  expect(problemOf(job(['fern', 'fern', 'fern']), 'picture-in-two-windows')).toMatchObject({
    severity: 'warning',
    at: 'windows.items[2]',
    message: expect.stringMatching(/"Lady fern" is in windows A, B and C/) as string,
  });
  expect(codes(job(['fern']))).not.toContain('picture-in-two-windows');
  const spread = { kind: 'spread', picture: 'fern', count: 3 } as const;
  expect(codes({ ...job([]), windows: spread })).not.toContain('picture-in-two-windows');
});

it('a window under 1/2 in is told of once (common practice, no source)', () => {
  const job = (size: string): Contents => ({ windows: { kind: 'window', size }, frame: { size: '8x10' } });
  expect(problemOf(job('4 x 7/16'), 'window-tiny')).toMatchObject({ at: 'windows', value: '7/16 in', limit: '1/2 in' });
  expect(codes(job('4 x 1/2'))).not.toContain('window-tiny');
});

describe('settings of another rule', () => {
  const told = (borders: Contents['borders'], frame: Contents['frame'] = { size: '11x14' }) =>
    problemsOf({ pictures: [{ size: '6x8' }], frame, borders }).flatMap(({ code, at }) =>
      code === 'border-setting-not-used' ? [at] : [],
    );
  it('are told as notes, each with what would ask for it', () => {
    expect(told({ rule: 'centred', amount: '1 in', ratio: 1.1, share: '45:55', step: '1/4' })).toEqual([
      'borders.amount',
      'borders.ratio',
      'borders.share',
      'borders.step',
    ]);
    const job: Contents = { pictures: [{ size: '6x8' }], frame: { size: '11x14' }, borders: { amount: '1 in' } };
    expect(problemOf(job, 'border-setting-not-used')).toMatchObject({
      severity: 'note',
      message: expect.stringContaining('"bottom-amount" would') as string,
    });
  });
  it('are not told where the rule asks for them', () => {
    expect(told({ rule: 'bottom-amount', amount: '1 in' })).toEqual([]);
    expect(told({ rule: 'bottom-ratio', ratio: 1.1 })).toEqual([]);
    expect(told({ rule: 'height-share', share: '45:55' })).toEqual([]);
    expect(told({ rule: 'equal-steps', step: '1/4' }, {})).toEqual([]);
    expect(told({ rule: 'equal-steps', step: '1/4' })).toEqual(['borders.step']);
    expect(told({ rule: 'equal-ratios', ratio: 1.1 }, {})).toEqual([]);
    expect(told({ rule: 'equal-ratios', ratio: 1.1 })).toEqual(['borders.ratio']);
  });
});

describe('narrow borders', () => {
  const job = (windows: string, frame: string): Contents => ({
    windows: { kind: 'window', size: windows },
    frame: { size: frame },
  });
  it('of one measure are told together', () => {
    const [one, ...more] = problemsOf(job('6 x 8', '7 x 9')).filter(({ code }) => code === 'border-narrow');
    expect(more).toEqual([]);
    expect(one?.message).toMatch(/^Inside the frame only 5\/16 in shows of all four borders;/);
    expect(problemOf(job('6 x 4', '7 x 9'), 'border-narrow').message).toMatch(/of the left and right borders;/);
  });
  it('are not advised to be wider than the frame has room for', () => {
    expect(problemOf(job('6 x 8', '7 x 9'), 'border-narrow').remedy).toBe('a larger frame or a smaller window');
    const askew: Contents = { ...job('6 x 4', '9 x 9'), borders: { rule: 'by-hand', left: '1 in' } };
    expect(problemOf(askew, 'border-narrow').remedy).toMatch(/a border of 1 3\/16 in or more, as cut/);
  });
});

describe('keys given twice', () => {
  const read = (inside: string) => parseJobText(`{ "format": "matwright-job", "version": 1, ${inside} }`).problems;
  it('are told with their path, in groups and in lists', () => {
    expect(read('"pictures": [{ "size": "8x10" }, { "size": "8x10", "title": "A", "size": "5x7" }]')).toMatchObject([
      { code: 'key-twice', severity: 'warning', at: 'pictures[1].size' },
    ]);
    expect(read('"pictures": [], "pictures": [{ "size": "8x10" }]')).toMatchObject([{ at: 'pictures' }]);
  });
  it('are not seen where a key only looks alike, or stands in a text', () => {
    expect(
      read('"title": "\\"title\\": 1, \\"title\\": 2", "pictures": [{ "size": "8x10" }, { "size": "5x7" }]'),
    ).toEqual([]);
    expect(read('"pictures": [{ "size": "8x10" }], "frame": { "size": "11x14" }')).toEqual([]);
  });
  it('are known however the key is written', () => {
    expect(read('"pictures": [{ "size": "8x10", "s\\u0069ze": "5x7" }]')).toMatchObject([{ at: 'pictures[0].size' }]);
  });
});

it('an empty share of a spread is told with what would be right', () => {
  const windows = { kind: 'spread', picture: 1, count: 2, shares: [1, 0] } as const;
  expect(problemOf({ pictures: [{ size: '8x10' }], windows: windows as never }, 'value-too-small').message).toBe(
    'windows.shares[1] is 0; it must be more than 0.',
  );
});

it('what else may be written for a gap or an overlap is told with the length', () => {
  const job: Contents = {
    pictures: [{ size: '8x10', overlap: 'a bit' }],
    windows: { kind: 'row', gap: 'even', items: ['1'] },
  };
  expect(problemsOf(job).map(({ remedy }) => remedy)).toEqual([
    expect.stringContaining('or "covers" or "shows" with a length'),
    expect.stringContaining('or "share with borders" or "share between"'),
  ]);
});

it('a picture parted over windows has to be in pieces; bars that hide part of it leave it whole', () => {
  const job = (bars: 'hide' | 'split'): Contents => ({
    units: 'mm',
    pictures: [{ title: 'The sea', size: '606x206', overlap: '3 mm' }],
    windows: { kind: 'spread', picture: 1, count: 3, bars },
    frame: { size: '900x500' },
  });
  // A third of 600 mm, and 3 mm on every side to be held by.
  expect(problemOf(job('split'), 'picture-in-pieces')).toMatchObject({
    severity: 'note',
    message: expect.stringMatching(/"The sea" has to be in 3 pieces, .*the first 206 x 206 mm.*Never cut/) as string,
  });
  expect(codes(job('hide'))).not.toContain('picture-in-pieces');
});

it('a bottom lighter than the top is worth a word', () => {
  const job = (amount: string): Contents => ({
    pictures: [{ size: '6x8' }],
    frame: { size: '11x14' },
    borders: { rule: 'bottom-amount', amount },
  });
  expect(problemOf(job('-1 in'), 'bottom-narrower').message).toMatch(/is 1 in narrower than the top/);
  expect(codes(job('1 in'))).not.toContain('bottom-narrower');
});
