/** Gaps of any arrangement come out as written: measured group by group on the windows themselves. */
import { describe, expect, it } from 'vitest';
import { around, type Box } from '../../../src/core/geometry/box';
import type { Arrangement, GapRule } from '../../../src/core/job/job';
import type { Layout, PlacedWindow } from '../../../src/core/layout/layout';
import type { WrittenNode } from '../../../src/core/job/written';
import { planned, type Contents, type Planned } from '../open';
import { CLOSE, forAllJobs, KINDS } from './for-all-jobs';

interface Strung {
  readonly gap: GapRule;
  readonly axis: 'across' | 'up';
  /** Boxes of the items, or of the columns or rows of a grid, in order. */
  readonly boxes: readonly Box[];
}

/** Box of all windows below an item. */
function boxOf(layout: Layout, item: Arrangement): Box {
  const box = around(
    layout.windows.filter(({ at }) => at === item.at || at.startsWith(`${item.at}.items[`)).map(({ window }) => window),
  );
  if (!box) throw new Error(`no window under ${item.at}`);
  return box;
}

function strungs(layout: Layout, item: Arrangement): Strung[] {
  if (item.kind === 'window') return [];
  if (item.kind === 'spread') {
    const boxes = layout.windows.filter(({ at }) => at === item.at).map(({ window }) => window);
    return [{ gap: item.gap, axis: item.along === 'row' ? 'across' : 'up', boxes }];
  }
  if (item.kind === 'ring') return [];
  const boxes = item.items.map((inner) => boxOf(layout, inner));
  const inside = item.items.flatMap((inner) => strungs(layout, inner));
  if (item.kind !== 'grid') return [{ gap: item.gap, axis: item.kind === 'row' ? 'across' : 'up', boxes }, ...inside];
  const tracks = (count: number, of: (index: number) => number) =>
    Array.from({ length: count }, (_, track) => around(boxes.filter((_, index) => of(index) === track)) as Box);
  const columns = tracks(Math.min(item.columns, boxes.length), (index) => index % item.columns);
  const rows = tracks(Math.ceil(boxes.length / item.columns), (index) => Math.floor(index / item.columns));
  return [
    { gap: item.columnGap, axis: 'across', boxes: columns },
    { gap: item.rowGap, axis: 'up', boxes: rows },
    ...inside,
  ];
}

function measured({ axis, boxes }: Strung): number[] {
  return boxes.slice(1).map((box, index) => {
    const before = boxes[index] as Box;
    return axis === 'across' ? box.left - before.right : before.bottom - box.top;
  });
}

function allStrungs({ layout, job }: Planned): Strung[] {
  return job.windows ? strungs(layout, job.windows) : [];
}

describe.each(KINDS)('of jobs whose frame is %s', (kind) => {
  it('written lengths are the gaps', () => {
    forAllJobs(kind, (found) => {
      for (const strung of allStrungs(found))
        if (typeof strung.gap === 'number')
          for (const gap of measured(strung)) expect(Math.abs(gap - strung.gap)).toBeLessThan(CLOSE);
    });
  });

  it('shared with borders: as wide as the border at the left or the top, as it is measured', () => {
    forAllJobs(kind, (found) => {
      const { cut, seen } = found.layout.borders;
      const borders = found.job.borders.measured === 'as seen' ? seen : cut;
      for (const strung of allStrungs(found))
        if (strung.gap === 'with-borders')
          for (const gap of measured(strung))
            expect(Math.abs(gap - (strung.axis === 'across' ? borders.left : borders.top))).toBeLessThan(1e-7);
    });
  });

  it('shared between: all alike', () => {
    forAllJobs(kind, (found) => {
      for (const strung of allStrungs(found)) {
        if (strung.gap !== 'between') continue;
        const gaps = measured(strung);
        for (const gap of gaps) expect(Math.abs(gap - (gaps[0] ?? NaN))).toBeLessThan(CLOSE);
      }
    });
  });

  it('what is told of a gap is what lies between its two windows', () => {
    forAllJobs(kind, ({ layout, job }) => {
      for (const { axis, between, from, to, gap, bridge, faceBridge, at } of layout.gaps) {
        const [one, other] = between.map((index) => layout.windows[index]);
        if (!one || !other) throw new Error('a gap lies between two windows');
        const ends = axis === 'across' ? (['right', 'left'] as const) : (['top', 'bottom'] as const);
        const span = (of: (window: PlacedWindow) => Box | undefined) =>
          (of(other)?.[ends[1]] ?? NaN) - (of(one)?.[ends[0]] ?? NaN);
        expect([from, to]).toEqual([one.window[ends[0]], other.window[ends[1]]]);
        expect(gap).toBeCloseTo(
          span(({ window }) => window),
          9,
        );
        expect(bridge).toBeCloseTo(
          span(({ layers }) => layers[0]?.opening),
          9,
        );
        expect(faceBridge).toBeCloseTo(
          span(({ layers }) => layers[0]?.face),
          9,
        );
        const reveals = job.layers.reduce((sum, { reveal }) => sum + reveal[ends[0]] + reveal[ends[1]], 0);
        expect(bridge).toBeCloseTo(gap - reveals, 9);
        if (at !== undefined) expect(at).toMatch(/^windows.*gap$/i);
      }
    });
  });
});

describe('windows of unequal size line up', () => {
  const items = [
    { kind: 'window', size: '100 x 100' },
    { kind: 'window', size: '60 x 40' },
  ] as const;
  const second = (windows: NonNullable<Planned['written']['windows']>) =>
    planned({ units: 'mm', frame: { size: '600 x 600' }, windows }).layout.windows.map(({ window }) => window);

  it.each([
    ['top', 'top', 0],
    ['bottom', 'bottom', 0],
    ['baseline', 'bottom', 0],
    ['centre', 'bottom', 30],
  ] as const)('row, %s', (align, edge, off) => {
    const [one, two] = second({ kind: 'row', items: [...items], gap: 50, align });
    expect((two?.[edge] ?? NaN) - (one?.[edge] ?? NaN)).toBeCloseTo(off, 9);
  });

  it.each([
    ['left', 'left', 0],
    ['right', 'right', 0],
    ['centre', 'left', 20],
  ] as const)('column, %s', (align, edge, off) => {
    const [one, two] = second({ kind: 'column', items: [...items], gap: 50, align });
    expect((two?.[edge] ?? NaN) - (one?.[edge] ?? NaN)).toBeCloseTo(off, 9);
  });

  it('grid, each column and row by itself', () => {
    const grid = {
      kind: 'grid',
      items: [...items, ...items].reverse(),
      columns: 2,
      gap: 50,
      alignColumns: 'right',
      alignRows: 'top',
    } as const;
    const [a, b, c, d] = second({ ...grid, items: [...grid.items] });
    expect(a?.top).toBeCloseTo(b?.top ?? NaN, 9);
    expect(c?.top).toBeCloseTo(d?.top ?? NaN, 9);
    expect(a?.right).toBeCloseTo(c?.right ?? NaN, 9);
    expect(b?.right).toBeCloseTo(d?.right ?? NaN, 9);
  });

  it('baseline: the pictures stand on one line, titles below them do not count', () => {
    const title: WrittenNode = { kind: 'window', use: 'title', size: '80 x 20' };
    const titled: WrittenNode = { kind: 'column', gap: 30, items: [{ kind: 'window', size: '80 x 90' }, title] };
    const [one, two, below] = second({ kind: 'row', gap: 50, align: 'baseline', items: [items[0], titled] });
    expect(two?.bottom).toBeCloseTo(one?.bottom ?? NaN, 9);
    expect(below?.top).toBeCloseTo((two?.bottom ?? NaN) - 30, 9);
  });
});

describe('gaps that share what is left, group within group', () => {
  const small = { kind: 'window', size: '3 x 4 in' } as const;
  const of = (windows: Contents['windows'], axis: 'across' | 'up' = 'across'): Contents => ({
    windows: windows as NonNullable<Contents['windows']>,
    frame: { size: '30 x 20 in' },
    borders: { rule: 'by-hand', sides: '2 in', ...(axis === 'up' ? { top: '2 in', bottom: '2 in' } : {}) },
  });
  const gaps = (windows: Contents['windows'], axis: 'across' | 'up') =>
    planned(of(windows, axis))
      .layout.gaps.filter((gap) => gap.axis === axis)
      .map(({ gap }) => gap / 25.4);

  it('share it in equal parts, whichever group they are written in', () => {
    const inner = { kind: 'row', gap: 'share between', items: [small, small, small] } as const;
    // 30 - 2 x 2 leaves 26; four windows take 12, the written gap 2: 12 are left for two gaps.
    const row = { kind: 'row', gap: '2 in', items: [small, inner] } as never;
    expect(gaps(row, 'across')).toEqual([expect.closeTo(2, 9), expect.closeTo(6, 9), expect.closeTo(6, 9)]);
    // Both groups share: 26 - 12 leaves 14 for three gaps.
    const both = { kind: 'row', gap: 'share between', items: [small, inner] } as never;
    for (const gap of gaps(both, 'across')) expect(gap).toBeCloseTo(14 / 3, 9);
  });

  it('share it within the columns and rows of a grid', () => {
    const column = { kind: 'column', gap: 'share between', items: [small, small] } as const;
    const grid = {
      kind: 'grid',
      columns: 2,
      columnGap: 'share between',
      rowGap: '1 in',
      items: [column, column, column, column],
    } as never;
    // Windows 2 in high, so that four of them leave something in 20 in.
    const low = JSON.parse(JSON.stringify(grid).replaceAll('3 x 4 in', '3 x 2 in')) as never;
    // 16 - 4 x 2 - 1 leaves 7 for two gaps.
    expect(
      gaps(low, 'up')
        .map((gap) => Number(gap.toFixed(9)))
        .toSorted((a, b) => a - b),
    ).toEqual([1, 1, 3.5, 3.5, 3.5, 3.5]);
  });

  it('are told as sums', () => {
    const how = (windows: Contents['windows']) =>
      planned(of(windows)).layout.derivations.find(({ name }) => name === 'gaps[0]')?.how;
    const row = (gap: string): Contents['windows'] => ({ kind: 'row', gap, items: [small, small] });
    expect(how(row('share between'))).toMatch(/^what is left between left and right, in equal parts; bridge/);
    expect(how(row('20 in'))).toMatch(/^as given; bridge/); // 2 + 3 + 20 + 3 + 2 is 30.
    expect(
      planned({
        windows: row('share with borders') as NonNullable<Contents['windows']>,
        frame: { size: '30 x 20 in' },
      }).layout.derivations.find(({ name }) => name === 'gaps[0]')?.how,
    ).toMatch(/^as wide as the border at the left; bridge/);
  });
});
