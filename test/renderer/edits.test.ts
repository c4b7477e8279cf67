/** Edits of the written job: the tree of windows, the list of pictures, units and layers. */
import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/core/layout/lay-out';
import { jobJsonSchema } from '../../src/core/job/json-schema';
import { readJob } from '../../src/core/job/read';
import type { WrittenJob, WrittenNode } from '../../src/core/job/written';
import {
  addItem, addSpread, changeGroup, duplicateItem, moveIntoGroup, moveItemAt, moveOutOfGroup, removeItemAt, unwrapGroup, wrapItem,
} from '../../src/renderer/edits/arrange'; // prettier-ignore
import { freeAll, removeFree } from '../../src/renderer/edits/free-windows';
import { removeLayer } from '../../src/renderer/edits/layers';
import { addLine, asKind } from '../../src/renderer/edits/lines';
import { addPicture, duplicatePicture, movePicture, removePicture } from '../../src/renderer/edits/pictures';
import { spellOut } from '../../src/renderer/edits/spell-out';
import { arrangementOf, isGroup } from '../../src/renderer/edits/tree';
import { changeUnits } from '../../src/renderer/edits/units';

const job = (windows?: WrittenNode, count = 3): WrittenJob => ({
  format: 'matwright-job',
  version: 1,
  pictures: Array.from({ length: count }, (_, index) => ({ title: `P${index + 1}`, size: '4 x 5' })),
  ...(windows === undefined ? {} : { windows }),
});
const row = (...items: WrittenNode[]): WrittenNode => ({ kind: 'row', items });
const column = (...items: WrittenNode[]): WrittenNode => ({ kind: 'column', items });

/** Titles of the windows in the order they are laid out. */
function titles(written: WrittenJob): string[] {
  const read = readJob(written);
  if (!read.ok) throw new Error(read.problems[0]?.message);
  const layout = layOut(read.value.job);
  if (!layout.ok) throw new Error(layout.problems[0]?.message);
  return layout.value.windows.map((window) => window.title);
}

describe('a ring', () => {
  const ring = { kind: 'ring', items: ['1', '2', '3'] } as const;

  it('is a group: what is taken out of it, and what its pictures are called, is followed', () => {
    expect(isGroup({ kind: 'ring', items: ['1'] })).toBe(true);
    const left = removePicture({ ...job(), windows: { kind: 'ring', items: ['1', '2', '3'] } }, 0);
    expect(left?.windows).toEqual({ kind: 'ring', items: ['1', '2'] });
  });

  it('keeps a gap that is a length, and drops one that is shared out', () => {
    const made = (gap: string) =>
      changeGroup({ ...job(), windows: { kind: 'row', items: [...ring.items], gap } }, 'windows', 'ring')?.written
        .windows;
    expect(made('1 in')).toEqual({ ...ring, gap: '1 in' });
    expect(made('share between')).toEqual(ring);
  });
});

describe('the tree of windows', () => {
  it('is, unsaid, what the job is read as', () => {
    expect(arrangementOf(job())).toEqual(row('1', '2', '3'));
    expect(arrangementOf(job(undefined, 1))).toBe('1');
    expect(titles(job())).toEqual(titles(job(arrangementOf(job()))));
  });

  it('takes an item after another, or into a group', () => {
    const window: WrittenNode = { kind: 'window', use: 'title', size: '4 x 1' };
    expect(addItem(job(), 'windows.items[0]', window)).toEqual({
      written: job(row('1', window, '2', '3')),
      path: 'windows.items[1]',
    });
    expect(addItem(job(), 'windows', window)).toEqual({
      written: job(row('1', '2', '3', window)),
      path: 'windows.items[3]',
    });
    expect(addItem(job('1', 1), 'windows', window)).toEqual({
      written: job(row('1', window), 1),
      path: 'windows.items[1]',
    });
  });

  it('lets an item go, with a group that it leaves empty, but never the last', () => {
    const nested = job(row('1', column('2')));
    expect(removeItemAt(nested, 'windows.items[1].items[0]')?.written).toEqual(job(row('1')));
    expect(removeItemAt(job('1', 1), 'windows')).toBeUndefined();
  });

  it('moves items among their neighbours, into groups and out of them', () => {
    expect(moveItemAt(job(), 'windows.items[0]', 1)).toEqual({
      written: job(row('2', '1', '3')),
      path: 'windows.items[1]',
    });
    expect(moveItemAt(job(), 'windows.items[2]', 1)).toBeUndefined();
    const nested = job(row('1', column('2'), '3'));
    expect(moveIntoGroup(nested, 'windows.items[2]')).toEqual({
      written: job(row('1', column('2', '3'))),
      path: 'windows.items[1].items[1]',
    });
    expect(moveIntoGroup(nested, 'windows.items[0]')).toEqual({
      written: job(row(column('1', '2'), '3')),
      path: 'windows.items[0].items[0]',
    });
    expect(moveOutOfGroup(nested, 'windows.items[1].items[0]')).toEqual({
      written: job(row('1', '2', '3')),
      path: 'windows.items[1]',
    });
    expect(moveIntoGroup(job(), 'windows.items[0]')).toBeUndefined();
    expect(moveOutOfGroup(job(), 'windows.items[0]')).toBeUndefined();
  });

  it('wraps, unwraps and changes groups without losing a window', () => {
    expect(wrapItem(job(), 'windows.items[1]', 'column')?.written).toEqual(job(row('1', column('2'), '3')));
    expect(unwrapGroup(job(row('1', column('2', '3'))), 'windows.items[1]')?.written).toEqual(job(row('1', '2', '3')));
    const grid = changeGroup(job({ kind: 'row', items: ['1', '2', '3'], gap: '2' }), 'windows', 'grid')?.written;
    expect(grid?.windows).toEqual({ kind: 'grid', items: ['1', '2', '3'], columns: 2, gap: '2' });
    expect(titles(grid ?? job())).toEqual(['P1', 'P2', 'P3']);
  });

  it('duplicates an item right after itself', () => {
    expect(duplicateItem(job(), 'windows.items[1]')).toEqual({
      written: job(row('1', '2', '2', '3')),
      path: 'windows.items[2]',
    });
    expect(duplicateItem(job('1', 1), 'windows')?.written).toEqual(job(row('1', '1'), 1));
  });

  it('is spelled out only as far as an edit reaches', () => {
    expect(spellOut(job(), [{ at: 'windows.gap', value: '2' }])).toEqual(job(row('1', '2', '3')));
    const spelled = spellOut(job(), [{ at: 'windows.items[1].title', value: 'x' }]);
    expect(spelled).toEqual(job(row('1', { kind: 'window', picture: '2' }, '3')));
    expect(spellOut(job(), [{ at: 'frame.lip', value: '1/4' }])).toEqual(job());
  });
});

describe('a window placed freely', () => {
  const laid = (written: WrittenJob) => {
    const read = readJob(written);
    const layout = read.ok ? layOut(read.value.job) : read;
    if (!layout.ok) throw new Error(layout.problems[0]?.message);
    return layout.value;
  };

  it.each([{}, { frame: { size: '24 x 12' } }])(
    'stays where it was when the arrangement is taken apart (%o)',
    (frame) => {
      const before = laid({ ...job(row('1', column('2', '3'))), ...frame });
      const freed = freeAll({ ...job(row('1', column('2', '3'))), ...frame }, before);
      const after = laid(freed?.written ?? job());
      expect(freed?.written.windows).toBeUndefined();
      expect(after.frame.blank.width).toBeCloseTo(before.frame.blank.width, 6);
      expect(after.frame.blank.height).toBeCloseTo(before.frame.blank.height, 6);
      for (const [index, { window }] of before.windows.entries()) {
        for (const side of ['left', 'top', 'right', 'bottom'] as const) {
          expect(after.windows[index]?.window[side]).toBeCloseTo(window[side], 5);
        }
      }
    },
  );

  it('cannot be made of a part of a spread', () => {
    const spread = job({ kind: 'spread', picture: '1', count: 2 }, 1);
    expect(freeAll(spread, laid(spread))).toBeUndefined();
  });

  it('goes, unless it is the only window', () => {
    const only: WrittenJob = { format: 'matwright-job', version: 1, free: [{ use: 'empty', size: '4 x 5', at: {} }] };
    expect(removeFree(only, 0)).toBeUndefined();
    expect(removeFree({ ...only, pictures: [{ size: '4 x 5' }] }, 0)).toEqual({
      format: 'matwright-job',
      version: 1,
      pictures: [{ size: '4 x 5' }],
    });
  });
});

describe('the list of pictures', () => {
  const nested = job(row('1', column('2', { kind: 'window', picture: 3 })));

  it('takes a picture with its window', () => {
    expect(titles(addPicture(nested, { title: 'New', size: '4 x 5' }))).toEqual(['P1', 'P2', 'P3', 'New']);
    expect(titles(addPicture(job(), { title: 'New', size: '4 x 5' }))).toEqual(['P1', 'P2', 'P3', 'New']);
  });

  it('keeps every window over its picture when pictures are moved', () => {
    const moved = movePicture(nested, 0, 2);
    expect(moved.pictures?.map((picture) => picture.title)).toEqual(['P2', 'P3', 'P1']);
    expect(titles(moved)).toEqual(titles(nested));
  });

  it('lets a picture go with its windows and no other', () => {
    expect(titles(removePicture(nested, 1))).toEqual(['P1', 'P3']);
    expect(titles(removePicture(nested, 0))).toEqual(['P2', 'P3']);
    expect(removePicture(job('1', 1), 0)).toEqual(job(undefined, 0));
  });

  it('gives a copy a window of its own', () => {
    const copied = duplicatePicture(nested, 0);
    expect(copied.pictures?.map((picture) => picture.title)).toEqual(['P1', 'P1', 'P2', 'P3']);
    expect(titles(copied)).toEqual(['P1', 'P2', 'P3', 'P1']);
  });
});

describe('the unit of a job', () => {
  it('changes without changing a written length', () => {
    const before: WrittenJob = {
      ...job(row('1', '2')),
      pictures: [
        { size: '8 x 10', overlap: 'covers 1/8' },
        { size: { width: 8, height: '254 mm' }, overlap: { left: '-1/4' } },
      ],
      mat: { layers: [{ thickness: '1/16' }, { thickness: '0.05', reveal: 0.25, bevel: { angle: 45 } }] },
      frame: {
        size: '20x16"',
        lip: 0.25,
        allowance: '1/8',
        mouldingWidth: '3/4',
        grooves: ['1/2', 0.25],
        float: { gap: '3/8' },
      },
      borders: { rule: 'bottom-ratio', ratio: 1.2 },
      steps: { in: '1/32' },
    };
    const after = changeUnits(before, 'mm');
    const readings = [before, after].map((written) => {
      const read = readJob(written);
      if (!read.ok) throw new Error(read.problems[0]?.message);
      const { pictures, frame, layers, borders } = read.value.job;
      return {
        sizes: pictures.map(({ sheet, overlap }) => ({ sheet, left: overlap.left })),
        frame,
        layers,
        ratio: borders.ratio,
      };
    });
    expect(readings[1]).toEqual(readings[0]);
    expect(after.frame?.size).toBe('20x16"');
    expect(after.steps).toEqual({ in: '1/32' });
  });

  it('puts the old unit to every key that the schema says is a length, and to nothing that is counted', () => {
    const { $defs } = jobJsonSchema() as { $defs: Readonly<Record<string, unknown>> };
    const lengths = new Set<string>();
    const refers = (part: unknown) =>
      /^#\/\$defs\/(Length|Size|Overlap|Gap)$/.test((part as { $ref?: string }).$ref ?? '');
    const isLength = (part: object) => [part, ...((part as { anyOf?: unknown[] }).anyOf ?? [])].some(refers);
    const walk = (part: unknown): void => {
      if (part === null || typeof part !== 'object') return;
      for (const [key, value] of Object.entries(part)) {
        if (key === 'properties')
          for (const [name, of] of Object.entries(value as Record<string, object>)) if (isLength(of)) lengths.add(name);
        walk(value);
      }
    };
    walk($defs);
    expect([...lengths]).toEqual(
      expect.arrayContaining(['size', 'radius', 'rise', 'cut', 'step', 'on', 'gap', 'reach']),
    );
    for (const key of lengths) {
      const written = { ...job(), units: 'in', some: { [key]: '1/4' } } as WrittenJob;
      expect((changeUnits(written, 'mm') as unknown as { some: object }).some).toEqual({ [key]: '1/4 in' });
    }
    const counted = { kind: 'window', size: '8 x 8', shape: { kind: 'polygon', sides: 8 } } as const;
    const { windows } = changeUnits({ ...job(), units: 'in', windows: counted }, 'mm');
    expect(windows).toEqual({ ...counted, size: '8 x 8 in' });
  });
});

it('a layer that comes to the top loses its reveal', () => {
  expect(removeLayer([{ board: 'a' }, { board: 'b', reveal: '1/4' }, { board: 'c', reveal: '1/8' }], 0)).toEqual([
    { board: 'b' },
    { board: 'c', reveal: '1/8' },
  ]);
});

describe('a picture spread over several windows', () => {
  const spread = { kind: 'spread', picture: '2', count: 3 } as const;
  it('takes the place of the window it had, in a job that says its arrangement and in one that does not', () => {
    const said = job({ kind: 'row', items: ['1', { kind: 'column', items: ['3', { kind: 'window', picture: '2' }] }] });
    const done = addSpread(said, 'windows', spread);
    expect(done.path).toBe('windows.items[1].items[1]');
    expect(arrangementOf(done.written)).toEqual({
      kind: 'row',
      items: ['1', { kind: 'column', items: ['3', spread] }],
    });
    expect(arrangementOf(addSpread(job(), 'windows', spread).written)).toEqual({
      kind: 'row',
      items: ['1', spread, '3'],
    });
    expect(arrangementOf(addSpread(job(undefined, 1), 'windows', { ...spread, picture: '1' }).written)).toEqual({
      ...spread,
      picture: '1',
    });
  });
  it('is one more item where the picture has no window yet', () => {
    const done = addSpread(job({ kind: 'row', items: ['1', '3'] }), 'windows', spread);
    expect(arrangementOf(done.written)).toEqual({ kind: 'row', items: ['1', '3', spread] });
  });
});

it('a copy of a freely placed window lies a little further in, from the edge it is held by', () => {
  const free = [{ use: 'empty', size: '4 x 6', at: { right: '2', bottom: '1 1/2' } }] as const;
  const done = duplicateItem({ ...job(), free: [...free] }, 'free[0]');
  expect(done?.written.free?.[1]).toEqual({ ...free[0], at: { right: '2 1/2', bottom: '2' } });
});

describe('a list of grooves and ruled lines', () => {
  it('grows outward, clear of the outermost line however it is written', () => {
    expect(addLine([], 'groove', 'in')).toEqual([{ kind: 'groove' }]);
    expect(addLine([{ kind: 'groove' }], 'ruled', 'in')).toEqual([
      { kind: 'groove' },
      { kind: 'ruled', distance: '3/4' },
    ]);
    const lines = [
      { kind: 'ruled', distance: '1 in' },
      { kind: 'groove', distance: '3 mm' },
    ] as const;
    expect(addLine(lines, 'groove', 'mm').at(-1)).toEqual({ kind: 'groove', distance: '31.4' });
    const many = Array.from({ length: 6 }).reduce<ReturnType<typeof addLine>>(
      (list) => addLine(list, 'groove', 'mm'),
      [],
    );
    const written = { ...job(undefined, 1), units: 'mm', mat: { lines: many }, borders: { sides: '150 mm' } } as const;
    const read = readJob(written);
    const laid = read.ok ? layOut(read.value.job) : undefined;
    expect(laid?.problems.filter(({ code }) => code.startsWith('line'))).toEqual([]);
  });

  it('a line made the other way stays where it is, without measures that mean something else', () => {
    expect(asKind({ kind: 'groove', distance: '1 in', width: '1/8 in', angle: 60 }, 'ruled')).toEqual({
      kind: 'ruled',
      distance: '1 in',
    });
    expect(asKind({ kind: 'ruled', colour: '#203040' }, 'groove')).toEqual({ kind: 'groove' });
  });
});
