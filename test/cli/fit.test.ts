/** `fit` in the words of its help: the answer, its data, and what it refuses. */
import { describe, expect, it } from 'vitest';
import { runHere } from './run-cli';

const asked = ['fit', '--size', '4 x 6 in', '--on', '16 x 20 in', '--gap', '1/2 in', '--border', '2 in'];

/** The words with one option said otherwise. */
function but(option: string, value: string): string[] {
  const place = asked.indexOf(option);
  return place < 0 ? [...asked, option, value] : asked.with(place + 1, value);
}

describe('fit', () => {
  it('answers in sentences', async () => {
    const { code, out, err } = await runHere(asked);
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n')).toEqual([
      '5 fit: 1 column x 2 rows upright beside 1 column x 3 rows turned on their side.',
      'Borders then: 2 3/4 in left and right, 3 1/2 in top and bottom.',
      'All upright 4, all turned 3.',
      '6 would fit with borders of at most 1 3/4 in.',
      '',
    ]);
  });

  it('takes a border of its own for a side, and units', async () => {
    const { out } = await runHere([...but('--border-bottom', '70'), '--units', 'mm']);
    expect(out).toContain('Borders then: ≈ 70 mm left and right');
    const plain = await runHere(['fit', '--size', '100 x 150', '--on', '400 x 500', '--gap', '10', '--border', '40', '--units', 'mm']); // prettier-ignore
    expect(plain.out).toContain('8 fit: 3 columns x 2 rows upright above 2 columns x 1 row turned on their side.');
  });

  it('gives its data in mm', async () => {
    const { code, out } = await runHere([...asked, '--json']);
    expect(code).toBe(0);
    const data = JSON.parse(out) as { places: { box: { left: number } }[] };
    expect(data).toMatchObject({ ok: true, lengths: 'mm', count: 5, best: { way: 'mixed' }, problems: [] });
    expect(data.places).toHaveLength(5);
    expect(data.places[0]!.box.left).toBeCloseTo(2.75 * 25.4, 9);
  });

  it.each([
    ['--size', '4 by', '[size-unreadable]'],
    ['--gap', 'wide', '[length-unreadable]'],
    ['--border', '8 in', '[no-room-for-windows]'],
    ['--shape', 'arch', 'Allowed choices are rectangle, oval'],
  ])('%s %s is refused', async (option, value, hint) => {
    const { code, out, err } = await runHere(but(option, value));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(hint);
  });

  it('asks for what it needs', async () => {
    const { code, err } = await runHere(asked.slice(0, 5));
    expect(code).toBe(2);
    expect(err).toContain("required option '--gap <length>' not specified");
  });
});
