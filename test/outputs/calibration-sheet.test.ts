/** The calibration sheet read back: one page, room to write each measure, the sums, a word of care. */
import { describe, expect, it } from 'vitest';
import { makeCalibrationSheet } from '../../src/outputs/calibration/calibration-sheet';
import { fonts } from './contexts';
import { readPdf } from './read-pdf';

describe.each([
  ['letter', 'in', '6 in by 6 in', 'reads 2 in'],
  ['a4', 'mm', '150 mm by 150 mm', 'reads 50 mm'],
  ['blank', 'cm', '15 cm by 15 cm', 'reads 5 cm'],
  ['a3', 'mm', '150 mm by 150 mm', 'reads 50 mm'],
] as const)('on %s in %s', (paper, units, scrap, reading) => {
  it('is one page within its border, and says what to cut and where to write', async () => {
    const read = readPdf(await makeCalibrationSheet({ paper, units }, fonts));
    expect(read.pages).toHaveLength(1);
    const [page] = read.pages;
    const text = page!.words.map((word) => word.text).join(' ');
    expect(text).toContain(scrap);
    expect(text).toContain(reading);
    const names = [
      'The scale read', 'Overcut used', 'Border left', 'Border top', 'Border right', 'Border bottom',
      'Corner 1', 'Corner 2', 'Corner 3', 'Corner 4', 'Its thickness',
    ]; // prettier-ignore
    for (const name of names) {
      const word = page!.words.find((one) => one.text === name);
      expect(word, name).toBeDefined();
      // A line to write on below it.
      const line = page!.strokes.find(
        ({ from, to }) => Math.abs(from.x - word!.at.x) < 0.1 && from.y === to.y && to.x - from.x > 25 && from.y < word!.at.y && word!.at.y - from.y < 12, // prettier-ignore
      );
      expect(line, name).toBeDefined();
    }
    expect(text).toContain('Scale offset = what the scale read − the mean of the four borders');
    expect(text).toContain('Cut away from the body');
    const outside = page!.words.filter(({ at, last }) => at.x < 14 || last.x > page!.width - 14 || at.y < 14);
    expect(outside).toEqual([]);
  });
});

it('names the cutter where it is known, and is the same each time', async () => {
  const make = () => makeCalibrationSheet({ paper: 'a4', units: 'mm', cutter: 'Bench cutter' }, fonts);
  const bytes = await make();
  expect(readPdf(bytes).pages[0]!.words.map(({ text }) => text)).toContain('Trial square for Bench cutter');
  expect(Buffer.from(await make()).equals(Buffer.from(bytes))).toBe(true);
});
