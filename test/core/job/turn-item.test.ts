/** One window or group turned or turned over: its windows lie to one another as before, the other way round. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { around, SIDES, sizeOf, shift, type Box } from '../../../src/core/geometry/box';
import { MOTIONS } from '../../../src/core/job/motion';
import { turnItem } from '../../../src/core/job/turn-in-job';
import type { WrittenJob, WrittenNode } from '../../../src/core/job/written';
import { contents } from '../arbitrary-jobs';
import { movable, movedBox, WAYS, type Way } from '../layout/turn';
import { planned, tryPlan, written, type Planned } from '../open';

const job = (windows: WrittenNode, more: object = {}): WrittenJob =>
  written({ pictures: [{ id: 'fern', title: 'Fern', size: '8 x 10 in' }, { size: '5 x 4 in' }], ...more, windows });

function turn(before: WrittenJob, at: string, way: Way): WrittenJob {
  const moved = turnItem(before, before.windows, at, MOTIONS[way]);
  if (!moved.ok) throw new Error(moved.problems.map(({ message }) => message).join('\n'));
  return moved.value;
}

const after = (windows: WrittenNode, way: Way, at = 'windows') => turn(job(windows), at, way).windows;

describe('what is written', () => {
  it('of a bare picture is a window while it is turned, and the bare picture again', () => {
    expect(after('fern', 'left')).toEqual({ kind: 'window', picture: 'fern', turned: 90 });
    expect(after({ kind: 'window', picture: 'fern', turned: 90 }, 'right')).toBe('fern');
    expect(after('fern', 'left-right')).toBe('fern');
  });

  it('of a size keeps its words and its unit', () => {
    const sized = (size: string) => ({ kind: 'window', use: 'title', size }) as const;
    expect(after(sized('4 1/2 x 1 in'), 'left')).toEqual(sized('1 x 4 1/2 in'));
    expect(after(sized('11,5 × 3 cm'), 'right')).toEqual(sized('3 × 11,5 cm'));
    expect(after(sized('A6 landscape'), 'left')).toEqual(sized('A6'));
    expect(after(sized('4 x 1 in'), 'top-bottom')).toEqual(sized('4 x 1 in'));
  });

  it('of a row turned left is a column read upwards, and turned right one read down', () => {
    const row = { kind: 'row', gap: '2 in', align: 'top', items: ['fern', '2'] } as const;
    const item = (picture: string, turned: number) => ({ kind: 'window', picture, turned });
    expect(after(row as never, 'left')).toEqual({ kind: 'column', gap: '2 in', align: 'left', items: [item('2', 90), item('fern', 90)] });
    expect(after(row as never, 'right')).toEqual({ kind: 'column', gap: '2 in', align: 'right', items: [item('fern', 270), item('2', 270)] });
  }); // prettier-ignore

  it('of a grid has the gaps of rows and columns change places', () => {
    const items = Array.from({ length: 6 }, (_, index) => ({ kind: 'window' as const, size: `${index + 1} x 9 in` }));
    const grid = { kind: 'grid', columns: 3, columnGap: '1 in', rowGap: '2 in', alignRows: 'top', items } as const;
    const turned = after(grid as never, 'left') as typeof grid;
    expect(turned).toMatchObject({ columns: 2, columnGap: '2 in', rowGap: '1 in', alignColumns: 'left' });
    expect(turned.items.map(({ size }) => size[4])).toEqual(['3', '6', '2', '5', '1', '4']);
    expect(turned).not.toHaveProperty('alignRows');
  });

  it('of a ring begins elsewhere, and runs the other way when it is turned over', () => {
    const items = ['1', '2', '3', '4'].map((width) => ({ kind: 'window' as const, size: `${width} x ${width} in` }));
    const ring = { kind: 'ring', start: 30, items } as const;
    const turned = after(ring as never, 'left') as unknown as typeof ring;
    expect(turned.start).toBe(-60);
    const over = after(ring as never, 'left-right') as unknown as typeof ring;
    expect([over.start, over.items.map(({ size }) => size[0])]).toEqual([-30, ['1', '2', '4', '3']]);
  });

  it('of an arch turned over top for bottom points down, with a word about the picture in it', () => {
    const arch = { kind: 'window', picture: 'fern', shape: 'arch' } as const;
    const moved = turnItem(job(arch), arch, 'windows', MOTIONS['top-bottom']);
    expect(moved).toMatchObject({ ok: true, value: { windows: { turned: 180 } } });
    expect(moved.problems).toMatchObject([{ code: 'picture-turned-over', severity: 'note', at: 'windows.turned' }]);
    expect(turnItem(job(arch), arch, 'windows', MOTIONS['left-right']).problems).toEqual([]);
  });

  it('of what is joined lies at the other side', () => {
    const joined = [{ size: '2 x 1 in', at: { left: '1 in', bottom: '-1/2 in' } }];
    const over = after({ kind: 'window', picture: 'fern', joined }, 'left-right') as { joined: unknown[] };
    expect(over.joined).toEqual([{ size: '2 x 1 in', at: { right: '1 in', bottom: '-1/2 in' } }]);
  });

  it('of a free window is held from the same edges', () => {
    const free = [{ size: '3 x 1 in', at: { left: '1 in', top: '2 in' } }];
    const before = written({ frame: { size: '11 x 14 in' }, free });
    expect(turn(before, 'free[0]', 'left').free).toEqual([{ ...free[0], size: '1 x 3 in' }]);
  });
});

describe('what can not be turned', () => {
  it('a baseline over groups, with what would do', () => {
    const group = { kind: 'column', items: ['fern', { kind: 'window', size: '4 x 1 in' }] } as const;
    const row = { kind: 'row', align: 'baseline', items: [group, '2'] } as unknown as WrittenNode;
    const moved = turnItem(job(row), row, 'windows', MOTIONS.left);
    expect(moved).toMatchObject({ ok: false, problems: [{ code: 'turn-of-baseline', at: 'windows.align' }] });
    expect(moved.problems[0]?.fix?.edits).toEqual([{ at: 'windows.align', value: 'bottom' }]);
    expect(turnItem(job(row), row, 'windows', MOTIONS['left-right']).ok).toBe(true);
  });

  it('a baseline under single windows is their lower edge', () => {
    const row = { kind: 'row', align: 'baseline', items: ['fern', '2'] } as unknown as WrittenNode;
    expect(after(row, 'top-bottom')).toMatchObject({ align: 'top' });
    expect(after(row, 'right')).toMatchObject({ kind: 'column', align: 'left' });
  });

  it('a grid whose last row is not full', () => {
    const grid = { kind: 'grid', columns: 2, items: ['fern', '2', 'fern'] } as unknown as WrittenNode;
    expect(turnItem(job(grid), grid, 'windows', MOTIONS['left-right'])).toMatchObject({
      ok: false,
      problems: [{ code: 'turn-of-unfilled-grid', at: 'windows', value: '1', limit: '2' }],
    });
  });

  it.each(['windows.items[7]', 'windows.picture', 'free[0]', 'frame', ''])('"%s", which names no item', (at) => {
    expect(turnItem(job('fern'), 'fern', at, MOTIONS.left)).toMatchObject({
      ok: false,
      problems: [{ code: 'item-unknown' }],
    });
  });
});

describe('any item', () => {
  /** Boxes of the windows of an item, from the lower left corner of the box round them. */
  function boxesIn({ layout }: Planned, at: string): { boxes: Box[]; whole: Box } {
    const boxes = layout.windows.filter((window) => window.at.startsWith(at)).map(({ window }) => window);
    const whole = around(boxes)!;
    return { boxes: boxes.map((box) => shift(box, { x: -whole.left, y: -whole.bottom })), whole };
  }

  function pathsOf(node: WrittenNode, at: string): string[] {
    if (typeof node === 'string' || !('items' in node)) return [at];
    return [at, ...node.items.flatMap((item, index) => pathsOf(item, `${at}.items[${index}]`))];
  }

  it('stands in its place as it was, turned', () => {
    const jobs = contents('made to fit').filter((one) => !JSON.stringify(one.windows).includes('share with'));
    fc.assert(
      fc.property(jobs, fc.nat(), fc.constantFrom(...WAYS), (one, pick, way) => {
        const before = tryPlan(written({ ...one, windows: one.windows && movable(one.windows) })).planned;
        fc.pre(before !== undefined);
        const paths = pathsOf(before.written.windows!, 'windows');
        // What follows a path such as items[1] is not items[10]; lists are shorter than that here.
        const at = paths[pick % paths.length]!;
        const moved = tryPlan(turn(before.written, at, way));
        fc.pre(moved.planned !== undefined);
        const [one_, other] = [boxesIn(before, at), boxesIn(moved.planned, at)];
        expect(other.boxes).toHaveLength(one_.boxes.length);
        for (const box of one_.boxes) {
          const place = movedBox(box, sizeOf(one_.whole), way);
          const isThere = other.boxes.some((each) => SIDES.every((side) => Math.abs(each[side] - place[side]) < 1e-9));
          expect(isThere, JSON.stringify(place)).toBe(true);
        }
      }),
      { numRuns: 80, maxSkipsPerRun: 10, endOnFailure: true },
    );
  });

  it('is itself again after four turns, and after being turned over twice', () => {
    const jobs = contents('made to fit').map((one) =>
      written({ ...one, windows: one.windows && movable(one.windows) }),
    );
    fc.assert(
      fc.property(jobs, fc.constantFrom(...WAYS), (before, way) => {
        const times = way === 'left' || way === 'right' ? 4 : 2;
        let now = before;
        for (let turned = 0; turned < times; turned += 1) now = turn(now, 'windows', way);
        const [one, other] = [tryPlan(before).planned, tryPlan(now).planned];
        fc.pre(one !== undefined);
        expect(other?.layout.windows).toEqual(one.layout.windows.map((window) => ({ ...window })));
      }),
      { numRuns: 40, maxSkipsPerRun: 5, endOnFailure: true },
    );
  });
});

it('the sum of a turned window names the sides of the picture that lie there', () => {
  const overlap = { left: '1 in', top: '2 in', right: '3 in', bottom: '1/2 in' };
  const { layout } = planned({ pictures: [{ size: '20 x 30 in', overlap }], windows: { kind: 'window', picture: 1, turned: 90 } });
  const sum = (side: string) => layout.derivations.find(({ name }) => name === `windows[0].window.${side}`)!;
  expect(sum('width')).toMatchObject({ value: expect.closeTo(27.5 * 25.4, 9) as number, how: 'image 30 in − 2 in covered − 1/2 in covered' });
  expect(sum('height')).toMatchObject({ value: expect.closeTo(16 * 25.4, 9) as number, how: 'image 20 in − 3 in covered − 1 in covered' });
}); // prettier-ignore
