/** What a short job leaves out is filled in, one way for inches and one for metric. */
import { describe, expect, it } from 'vitest';
import { parseJobText } from '../../../src/core/job/text';
import { layOut } from '../../../src/core/layout/lay-out';

const TEN_LINES = `{
  "format": "matwright-job",
  "version": 1,
  "title": "Lady fern",
  "pictures": [{ "title": "Lady fern", "size": "8 x 10 in" }],
  "frame": { "readyMade": "11x14 in" }
}
`;

function open(text: string) {
  const opened = parseJobText(text);
  if (!opened.ok) throw new Error(opened.problems[0]?.message);
  return opened.value.job;
}

describe('a job of seven lines', () => {
  it('is a whole mat', () => {
    const job = open(TEN_LINES);
    expect(job).toMatchObject({
      title: 'Lady fern',
      units: 'in',
      steps: { in: 16, mm: 0.5 },
      frame: { allowance: 3.175, lip: 6.35, mouldingWidth: 19.05 },
      measuredAt: 'opening',
      borders: { rule: 'centred', measured: 'as cut' },
      cutting: { waste: 'right' },
    });
    expect(job.layers).toEqual([
      expect.objectContaining({ thickness: 1.5875, bevel: { angleDegrees: 45, direction: 'standard' } }),
    ]);
    expect(job.pictures[0]).toMatchObject({
      id: '1',
      kind: 'other',
      overlapFrom: 'image',
      overlap: { left: 3.175, top: 3.175, right: 3.175, bottom: 3.175 },
    });
    expect(layOut(job).ok).toBe(true);
  });

  it('in millimetres has round metric defaults', () => {
    const job = open(
      TEN_LINES.replace('"title": "Lady fern",\n', '"units": "mm",\n').replace('8 x 10 in', '200 x 250'),
    );
    expect(job.frame).toMatchObject({ allowance: 3, lip: 6, mouldingWidth: 20 });
    expect(job.layers[0]?.thickness).toBe(1.5);
    expect(job.pictures[0]?.overlap.left).toBe(3);
  });
});

describe('what is left out', () => {
  const base = { format: 'matwright-job', version: 1 };
  const job = (rest: object) => open(JSON.stringify({ ...base, ...rest }));
  const pictures = [{ size: '5x7' }, { size: '5x7', id: 'two' }, { size: '4x4' }];

  it('the windows: a row of all pictures, or the one picture', () => {
    const row = job({ pictures }).windows;
    expect(row).toMatchObject({ kind: 'row', gap: 25.4, align: 'centre' });
    expect(row?.kind === 'row' && row.items.map((item) => item.kind === 'window' && item.picture)).toEqual([0, 1, 2]);
    expect(job({ pictures: pictures.slice(0, 1) }).windows).toMatchObject({
      kind: 'window',
      picture: 0,
      at: 'windows',
    });
  });

  it('pictures with a window of their own are not arranged again', () => {
    const free = [{ picture: 'two', at: {} }];
    const { windows, free: placed } = job({ pictures, free, frame: { size: '30x20' } });
    expect(windows?.kind === 'row' && windows.items.map((item) => item.kind === 'window' && item.picture)).toEqual([
      0, 2,
    ]);
    expect(placed[0]?.window.picture).toBe(1);
  });

  it('borders: centred in a given frame, equal in one made to fit', () => {
    expect(job({ pictures, frame: { size: '30x20' } }).borders.rule).toBe('centred');
    expect(job({ pictures }).borders.rule).toBe('equal');
  });

  it('sides of an overlap and of a reveal', () => {
    const read = job({
      pictures: [{ size: '5x7', overlap: { left: 'shows 1/4', top: 0 } }],
      mat: { layers: [{}, { reveal: { bottom: '1/2 in' } }] },
    });
    expect(read.pictures[0]?.overlap).toEqual({ left: -6.35, top: 0, right: 3.175, bottom: 3.175 });
    expect(read.layers[1]?.reveal).toEqual({ left: 6.35, top: 6.35, right: 6.35, bottom: 12.7 });
  });

  it('the place of an image on its sheet: the middle', () => {
    const [picture] = job({
      pictures: [{ size: '10.1 x 12 mm', image: '8.1 x 10 mm', margins: { left: '2 mm' } }],
    }).pictures;
    expect(picture?.margins.left).toBe(2);
    expect(picture?.margins.right).toBeCloseTo(0, 9);
    expect(picture?.margins).toMatchObject({ top: 1, bottom: 1 });
  });

  it('overlap in words: covers and shows', () => {
    const overlaps = ['covers 1/8', '1/8', 'shows 1/8', '-1/8', 'COVERS 1/8 in', 'covers 3.175 mm', 0.125];
    const read = job({ pictures: overlaps.map((overlap) => ({ size: '5x7', overlap })) });
    expect(read.pictures.map(({ overlap }) => overlap.left)).toEqual([
      3.175, 3.175, -3.175, -3.175, 3.175, 3.175, 3.175,
    ]);
  });
});
