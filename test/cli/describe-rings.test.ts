/** `describe` of rings: what lies from each window to the next, and to the middle, against chords worked out here. */
import { describe, expect, it } from 'vitest';
import { jobText, runHere } from './run-cli';

const circle = (size: number) => ({ kind: 'window', size: `${size} x ${size} in`, shape: 'oval' });

function ringJob(ring: object): string {
  return jobText({ frame: { size: '40 x 40 in' }, windows: { kind: 'ring', ...ring } });
}

async function gapsTold(ring: object): Promise<string> {
  const { code, out } = await runHere(['describe', '-'], { input: ringJob(ring) });
  expect(code).toBe(0);
  return (/^Gaps[^]*?\n\n/m.exec(out)?.[0] ?? '').replace(/[ \n]+/g, ' ');
}

/** Six of 3 in round one of 6 in, 1 in away: their middles on a circle of 5 1/2 in, and so 5 1/2 in apart. */
const six = { gap: '1 in', items: [circle(6), ...Array.from({ length: 6 }, () => circle(3))] };

describe('the gaps of a ring', () => {
  it('are those round it and those to the middle', async () => {
    const told = await gapsTold(six);
    expect(told).toContain('2 1/2 in 2 1/2 in 2 3/8 in round B–C, C–D, D–E, E–F, F–G, G–B equal round the ring');
    expect(told).toContain('1 in 1 in 7/8 in to the middle A–B, A–C, A–D, A–E, A–F, A–G as given');
    expect(told).not.toMatch(/ across | up /);
  });

  it('on an ellipse are told without those across it', async () => {
    // Middles on a circle of 8 in: a chord of 8 sqrt 2, less a diameter.
    const told = await gapsTold({
      centre: 'none',
      on: '16 x 16 in',
      items: Array.from({ length: 4 }, () => circle(4)),
    });
    expect(told).toContain('round A–B, B–C, C–D, D–A equal round the ring');
    expect(told).not.toMatch(/A–C|B–D|C–A|D–B|middle/);
  });

  it('of two windows round a middle is one, and angles are named', async () => {
    const told = await gapsTold({ gap: '1 in', spacing: 'equal angles', items: [circle(6), circle(3), circle(3)] });
    expect(told).toContain('8 in 8 in 7 7/8 in round B–C at equal angles round the ring');
    expect(told).not.toContain('C–B');
  });

  it('come in full precision with --json', async () => {
    const { out } = await runHere(['describe', '--json', '-'], { input: ringJob(six) });
    const { rings } = JSON.parse(out) as { rings: { at: string; spaces: { runs: string; gap: number }[] }[] };
    expect(rings.map(({ at }) => at)).toEqual(['windows']);
    const gaps = (which: string) => rings[0]!.spaces.filter(({ runs }) => runs === which).map(({ gap }) => gap / 25.4);
    expect(gaps('round')).toEqual(Array.from({ length: 6 }, () => expect.closeTo(2.5, 6) as number));
    expect(gaps('to the middle')).toEqual(Array.from({ length: 6 }, () => expect.closeTo(1, 6) as number));
  });
});
