/** G-code: words, heights, units, and a knife that always points the way it goes. */
import { describe, expect, it } from 'vitest';
import type { MachineOptions } from '../../../src/core/cutting/machine-options';
import { fileOf, GRID, jobOf, machineFiles, SHAPES } from './fixtures';
import { lengthOfPiece, lengthOfStrokes, travelOf, wayAt, type Piece } from './pieces';
import { readGcode, type ReadProgram } from './read-gcode';
import { readJson } from './read-tables';

async function programOf(job: object, machine: Partial<MachineOptions> = {}, units: 'in' | 'mm' = 'mm', layer = 1) {
  const files = await machineFiles(job, ['gcode'], { machine, units });
  return readGcode(fileOf(files, `mat-layer-${layer}.nc`));
}

/** The largest angle between where the knife points and where it goes, degrees. */
function mispointed({ strokes }: ReadProgram): number {
  const differences = strokes.flat().flatMap((piece) => {
    // Six decimals of an inch tell the direction of what is longer than this.
    if (lengthOfPiece(piece) < 0.05 || !piece.headings) return [];
    return [
      [1e-4, piece.headings[0]],
      [1 - 1e-4, piece.headings[1]],
    ].map(([part = 0, heading = NaN]) => apartBy(heading, headingAt(piece, part)));
  });
  return Math.max(...differences);
}

function headingAt(piece: Piece, part: number): number {
  const { x, y } = wayAt(piece, part);
  return (Math.atan2(y, x) * 180) / Math.PI;
}

function apartBy(a: number, b: number): number {
  const turn = Math.abs(a - b) % 360;
  return Math.min(turn, 360 - turn);
}

describe('heights', () => {
  it('are 5 mm above and as deep as the board is thick, unless others are asked for', async () => {
    const usual = await programOf(jobOf('arch'));
    expect([...usual.travelHeights]).toEqual([5]);
    // 4-ply board, 1/16 in.
    expect([...usual.cutHeights]).toEqual([-1.5875]);
    const asked = await programOf(jobOf('arch'), { safeHeight: 12, depth: 2.5, feed: 900 }, 'in');
    expect([...asked.travelHeights].map((height) => height.toFixed(2))).toEqual(['12.00']);
    expect([...asked.cutHeights].map((height) => height.toFixed(2))).toEqual(['-2.50']);
    expect(asked.feed).toBeCloseTo(900, 1);
  });
});

describe('the head', () => {
  it('names job, layer, view, corner and waste in ASCII, and bids care', async () => {
    const job = {
      ...jobOf('oval'),
      title: 'Fougère (mâle) – № 3 漢\n(debug, x) 50 %; go! ~?',
      mat: { layers: [{ board: 'x'.repeat(200) }, {}] },
    };
    const { comments } = await programOf(job, { corner: 'upper-right' });
    expect(comments[0]).toBe('Mat: Fougere [male] _ No 3 _ [debug, x] 50 __ go_ __');
    const all = comments.join('\n');
    for (const wanted of [
      'Layer 1 of 2',
      'cut from the back',
      'upper right corner',
      'waste lies on the right',
      'scrap',
      'Keep hands clear',
      'manual of your machine',
    ])
      expect(all).toContain(wanted);
  });
});

describe('a way', () => {
  it.each([jobOf('oval'), GRID])('is as long as the table says, and ends at the origin corner', async (job) => {
    const files = await machineFiles(job, ['gcode', 'json']);
    const { table } = readJson(fileOf(files, 'mat-cuts.json'));
    for (const { number, cutLength, travel } of table.layers) {
      const { strokes, end } = readGcode(fileOf(files, `mat-layer-${number}.nc`));
      expect(lengthOfStrokes(strokes)).toBeCloseTo(cutLength, 1);
      expect(travelOf(strokes)).toBeCloseTo(travel, 1);
      expect(end).toEqual({ x: 0, y: 0 });
    }
    expect(table.cutLength).toBeCloseTo(
      table.layers.reduce((sum, { cutLength }) => sum + cutLength, 0),
      6,
    );
    expect(table.travel).toBeCloseTo(
      table.layers.reduce((sum, { travel }) => sum + travel, 0),
      6,
    );
  });
});

describe.each(Object.entries(SHAPES))('a knife that is turned along %s', (_, shape) => {
  it.each(['A', 'B', 'C'] as const)(
    'by %s points the way it goes, and turns in the board hardly at all',
    async (rotary) => {
      const arcs = await programOf(jobOf(shape), { rotary }, rotary === 'A' ? 'in' : 'mm');
      expect(mispointed(arcs)).toBeLessThan(0.15);
      expect(Math.max(0, ...arcs.turnsInBoard.map(Math.abs))).toBeLessThan(0.01);
    },
  );

  it('turns from chord to chord, lifted where that is more than the angle that is asked for', async () => {
    const lines = await programOf(jobOf(shape), { rotary: 'C', curves: 'lines' });
    expect(mispointed(lines)).toBeLessThan(0.15);
    expect(Math.max(0, ...lines.turnsInBoard.map(Math.abs))).toBeLessThanOrEqual(20);
    const lifted = await programOf(jobOf(shape), {
      rotary: 'C',
      curves: 'lines',
      liftAngleDegrees: 1,
      tolerance: 0.05,
    });
    expect(mispointed(lifted)).toBeLessThan(0.15);
    expect(Math.max(0, ...lifted.turnsInBoard.map(Math.abs))).toBeLessThanOrEqual(1);
    expect(lifted.strokes.length).toBeGreaterThanOrEqual(lines.strokes.length);
  });
});

describe('strokes', () => {
  it('are one where cuts run into one another, and one for each cut where corners are', async () => {
    const counts = await Promise.all(
      ['rounded', 'oval', 'arch', 'stepped', 'rectangle', 'scooped'].map(
        async (name) => (await programOf(jobOf(SHAPES[name]))).strokes.length,
      ),
    );
    // An arch is its upright sides with the arc between them, and the bottom.
    expect(counts).toEqual([1, 1, 2, 20, 4, 8]);
  });
});

describe('turns of the knife by themselves', () => {
  const words = async (units: 'in' | 'mm') => {
    const files = await machineFiles(jobOf('oval'), ['gcode'], { machine: { rotary: 'C', curves: 'lines' }, units });
    return fileOf(files, 'mat-layer-1.nc').split('\n');
  };

  it('in the board are as quick in inches as in millimetres: degrees a minute know no unit of length', async () => {
    const inches = await words('in');
    const turns = inches.flatMap((line, index) => (/^G1 C\S+ F1500$/.test(line) ? [inches[index + 1]] : []));
    expect(turns.length).toBeGreaterThan(50);
    // 1500 mm a minute again before the next cut.
    expect(new Set(turns)).toEqual(new Set(['F59.055']));
    expect((await words('mm')).filter((line) => /^G1 C\S+$/.test(line)).length).toBeGreaterThan(50);
  });

  it('lifted, go the shorter way round, but for the one that unwinds a whole turn', async () => {
    const files = await machineFiles(GRID, ['gcode'], { machine: { rotary: 'C' }, units: 'mm' });
    let [heading, furthest] = [0, 0];
    const lifted: number[] = [];
    for (const line of fileOf(files, 'mat-layer-1.nc').split('\n')) {
      const found = /\bC(-?[\d.]+)/.exec(line);
      if (!found) continue;
      const next = Number(found[1]);
      if (line.startsWith('G0')) lifted.push(Math.abs(next - heading));
      heading = next;
      furthest = Math.max(furthest, Math.abs(next));
    }
    expect(lifted.length).toBeGreaterThan(8);
    const long = lifted.filter((turn) => turn > 180);
    expect(long.length).toBeLessThan(lifted.length / 4);
    expect(furthest).toBeLessThanOrEqual(360);
  });
});
