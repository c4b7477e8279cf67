/** Edits by path: what is edited changes, all else stays the very same value. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insertItem, keysOf, moveItem, removeItem, setAll, setAt, valueAt } from '../../../src/core/job/edit';
import { contents } from '../arbitrary-jobs';
import { written } from '../open';

const job = written({
  title: 'Ferns',
  pictures: [{ id: 'a', size: '8x10' }, { id: 'b', size: { width: 5, height: 7 } }, { id: 'c', size: 'A4' }],
  frame: { size: '30x20' },
  mat: { layers: [{}, { reveal: { left: '1/4' } }] },
}); // prettier-ignore

describe('reading and writing at a path', () => {
  it('reads what is written and nothing else', () => {
    expect(valueAt(job, '')).toBe(job);
    expect(valueAt(job, 'pictures[1].size.width')).toBe(5);
    expect(valueAt(job, 'pictures[9].size')).toBeUndefined();
    expect(valueAt(job, 'title.length')).toBeUndefined();
    expect(valueAt(job, 'borders.top')).toBeUndefined();
  });

  it('replaces a value, keeps its place among the keys, and shares the rest', () => {
    const next = setAt(job, 'pictures[1].size.width', '6 in');
    expect(next.pictures?.[1]?.size).toEqual({ width: '6 in', height: 7 });
    expect(Object.keys(next)).toEqual(Object.keys(job));
    expect(next.pictures?.[0]).toBe(job.pictures?.[0]);
    expect(next.mat).toBe(job.mat);
    expect(job.pictures?.[1]?.size).toEqual({ width: 5, height: 7 });
  });

  it('makes the groups and lists on the way', () => {
    expect(setAt(job, 'borders.top', '2 in').borders).toEqual({ top: '2 in' });
    expect(setAt(job, 'free[0].at.left', '1 in').free).toEqual([{ at: { left: '1 in' } }]);
    expect(setAt(job, 'mat.layers[1].reveal', '1/2').mat?.layers?.[1]).toEqual({ reveal: '1/2' });
  });

  it('takes a value away, and the groups it leaves empty, but never an item of a list', () => {
    expect(setAt(job, 'frame.size', undefined)).not.toHaveProperty('frame');
    expect(setAt(job, 'mat.layers[1].reveal.left', undefined).mat?.layers).toEqual([{}, {}]);
    expect(setAt(job, 'pictures[1]', undefined).pictures?.map(({ id }) => id)).toEqual(['a', 'c']);
  });

  it('taking away what is not there changes nothing', () => {
    for (const path of ['borders.top', 'free[0].at', 'pictures[7].title', 'windows.gap', 'mat.layers[1].bevel.angle'])
      expect(setAt(job, path, undefined)).toBe(job);
  });

  it('does several edits in order', () => {
    const edits = [
      { at: 'borders.rule', value: 'by-hand' },
      { at: 'borders.top', value: 1 },
      { at: 'borders.rule', value: undefined },
    ];
    expect(setAll(job, edits).borders).toEqual({ top: 1 });
  });

  it('a list is written without gaps', () =>
    expect(() => setAt(job, 'pictures[5].title', 'x')).toThrow(/without gaps/));

  it('reads paths apart', () => {
    expect(keysOf('windows.items[1].items[20].gap')).toEqual(['windows', 'items', 1, 'items', 20, 'gap']);
    expect(keysOf('')).toEqual([]);
  });
});

describe('keys that every object inherits', () => {
  it.each(['__proto__', 'constructor', 'toString'])('%s is harmless', (key) => {
    expect(valueAt(job, key)).toBeUndefined();
    expect(valueAt(job, `${key}.polluted`)).toBeUndefined();
    const next = setAt(job, `${key}.polluted`, true);
    expect(valueAt(next, `${key}.polluted`)).toBe(true);
    expect(Object.getPrototypeOf(next)).toBe(Object.prototype);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    expect((Object as unknown as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});

describe('lists', () => {
  const order = (next: typeof job) => next.pictures?.map(({ id }) => id).join('');

  it('insert, remove and move', () => {
    expect(order(insertItem(job, 'pictures', 1, { id: 'x', size: 'A4' }))).toBe('axbc');
    expect(order(insertItem(job, 'pictures', 3, { id: 'x', size: 'A4' }))).toBe('abcx');
    expect(insertItem(job, 'free', 0, { at: {} }).free).toEqual([{ at: {} }]);
    expect(order(removeItem(job, 'pictures', 1))).toBe('ac');
    expect(order(moveItem(job, 'pictures', 0, 2))).toBe('bca');
    expect(order(moveItem(job, 'pictures', 2, 0))).toBe('cab');
    expect(order(job)).toBe('abc');
  });

  it('insert then remove, and move there and back, are nothing', () => {
    fc.assert(
      fc.property(fc.nat(2), fc.nat(2), fc.nat(3), (from, to, place) => {
        expect(removeItem(insertItem(job, 'pictures', place, { size: 'A5' }), 'pictures', place)).toEqual(job);
        expect(moveItem(moveItem(job, 'pictures', from, to), 'pictures', to, from)).toEqual(job);
      }),
    );
  });
});

it('what was set is read, and setting it back is the job again', () => {
  const paths = fc.constantFrom(
    'title',
    'borders.rule',
    'borders.top',
    'frame.lip',
    'pictures[0].overlap',
    'mat.layers[0].thickness',
  );
  fc.assert(
    fc.property(contents(), paths, fc.string({ minLength: 1 }), (given, path, value) => {
      const before = written(given);
      const after = setAt(before, path, value);
      expect(valueAt(after, path)).toBe(value);
      expect(setAt(after, path, valueAt(before, path))).toEqual(before);
    }),
  );
});
