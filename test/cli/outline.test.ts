/** `outline` in the words of its help: the window it makes of a drawing, its data, and what it refuses. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const folder = await makeTempFolder();
const leaf = 'resources/samples/leaf.svg';

describe('outline', () => {
  it('answers with a window that a job can take as it is', async () => {
    const { code, out, err } = await runHere(['outline', leaf, '--height', '9 1/2 in']);
    expect([code, err]).toEqual([0, '']);
    const [words, window] = out.split('\n');
    expect(words).toBe('Drawn 72 x 112 mm, ≈ 2 13/16 x 4 7/16 in; as a window 155.1 x 241.3 mm, ≈ 6 1/8 x 9 1/2 in:');
    const job = { windows: JSON.parse(window!) as object, frame: { size: '14 x 18 in' } };
    const checked = await runHere(['describe', '-', '--json'], { input: jobText(job) });
    expect(checked).toMatchObject({ code: 0 });
  });

  it('gives its data in mm: as drawn, in proportion, or stretched', async () => {
    const sizes: readonly (readonly [string[], number, number])[] = [
      [[], 72, 112],
      [['--width', '14.4 cm'], 144, 224],
      [['--height', '56 mm'], 36, 56],
      [['--width', '100 mm', '--height', '100 mm'], 100, 100],
    ];
    for (const [words, width, height] of sizes) {
      const { code, out } = await runHere(['outline', leaf, '--json', ...words]);
      expect(code).toBe(0);
      const data = JSON.parse(out) as { size: { width: number; height: number }; shape: { kind: string } };
      expect(data).toMatchObject({ ok: true, lengths: 'mm', natural: { width: 72, height: 112 }, problems: [] });
      expect([data.size.width, data.size.height]).toEqual([expect.closeTo(width, 9), expect.closeTo(height, 9)]);
      expect(data.shape.kind).toBe('outline');
    }
  });

  it('reads standard input', async () => {
    const input =
      '<svg xmlns="http://www.w3.org/2000/svg" width="96" height="96"><circle cx="48" cy="48" r="24"/></svg>';
    const { code, out } = await runHere(['outline', '-'], { input });
    expect(code).toBe(0);
    expect(out).toContain('"size": "12.7 x 12.7 mm"');
  });

  it('a drawing that cannot be cut gives 1 and says why, in words and as data', async () => {
    const path = join(folder, 'text.svg');
    await writeFile(path, '<svg xmlns="http://www.w3.org/2000/svg"><text>Fern</text></svg>');
    const { code, out, err } = await runHere(['outline', path]);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('[outline-has-text]');
    const asked = await runHere(['outline', path, '--json']);
    expect(asked.code).toBe(1);
    expect(JSON.parse(asked.out)).toMatchObject({ ok: false, problems: [{ code: 'outline-has-text' }] });
  });

  it('what cannot be read, and a length without its unit, give 2', async () => {
    const bytes = join(folder, 'bytes.svg');
    await writeFile(bytes, Buffer.from([0x3c, 0xff, 0xfe]));
    for (const [words, hint] of [
      [['nowhere.svg'], 'is not there'],
      [['resources'], 'is a folder'],
      [[bytes], 'not text in UTF-8'],
      [[leaf, '--width', '8'], '--width'],
      [[leaf, '--width', '-8 in'], 'a length above nothing with its unit'],
      [[leaf, '--height', 'tall'], 'The height'],
      [[], "missing required argument 'SVG'"],
    ] as const) {
      const { code, out, err } = await runHere(['outline', ...words]);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain(hint);
    }
  });
});
