/** Every format read back by something not ours: on the plan within 0.01 mm, closed, as long, as large, the waste on its side. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { ExportOptions, MachineKind } from '../../../src/bridge';
import { bladeLength } from '../../../src/core/cutting/outline-cuts';
import { isInside } from '../../../src/core/geometry/nearness';
import { areaOf, lengthOf } from '../../../src/core/geometry/outline';
import {
  allPieces,
  alongEdge,
  context,
  expectedOf,
  fileOf,
  FORMATS,
  GRID,
  jobOf,
  machineFiles,
  readDrawings,
  SHAPES,
} from './fixtures';
import {
  areaInside,
  farthest,
  largestGap,
  lengthOfPiece,
  lengthOfStrokes,
  pointAt,
  pointsAlong,
  wayAt,
  type Piece,
} from './pieces';
import { noReader } from './read-dxf';

/** The plan is kept to this, mm; beside it a plotter's whole units may lie half a unit off both ways. */
const NEAR: Readonly<Record<MachineKind, number>> = {
  json: 0.001,
  csv: 0.001,
  svg: 0.001,
  dxf: 0.01,
  gcode: 0.01,
  hpgl: 0.01 + 0.025,
};
const KINDS = (Object.keys(FORMATS) as MachineKind[]).filter((kind) => kind !== 'dxf' || noReader === undefined);
if (noReader !== undefined) console.warn(noReader);

const JOBS: [string, object][] = [
  ...Object.entries(SHAPES).map(([name, shape]): [string, object] => [name, jobOf(shape)]),
  ['a grid', GRID],
];

/** Neither past a corner nor twice over the start, so that pieces make loops. */
const EXACT = { cutting: { overcut: '0 in' } };

function closedJob(job: object, waste: 'left' | 'right'): object {
  return { ...job, cutting: { ...EXACT.cutting, waste } };
}

const VIEWS = ['back', 'front'] as const;
const WAYS = [
  ['arcs', 'right'],
  ['lines', 'left'],
] as const;

beforeAll(async () => {
  if (noReader !== undefined) return;
  const files = await Promise.all(
    JOBS.flatMap(([, job]) => [
      ...VIEWS.map((view) => machineFiles(job, ['dxf'], { view })),
      ...WAYS.map(([curves, waste]) => machineFiles(closedJob(job, waste), ['dxf'], { machine: { curves } })),
    ]),
  );
  readDrawings(files.map((one) => fileOf(one, 'mat-cuts.dxf')));
});

describe.each(JOBS)('%s', (_, job) => {
  it.each(VIEWS)('from the %s: every format lies on the plan, and all of the plan is cut', async (view) => {
    const files = await machineFiles(job, KINDS, { view });
    const opened = context(job, { view });
    for (const layer of [1, 2]) {
      const expected = expectedOf(opened, view, layer);
      const wanted = expected.outlines.flat().flatMap((edge) => alongEdge(edge, 4));
      for (const kind of KINDS) {
        const strokes = FORMATS[kind](files, layer);
        const drawn = allPieces(strokes).map((piece) => pointsAlong(piece, piece.bend ? 0.5 : Infinity));
        const looked = allPieces(strokes).flatMap((piece) => pointsAlong(piece, 4));
        // Bends of small radius over steps of 0.5 mm.
        const slack = NEAR[kind] + 0.004;
        expect(farthest(looked, expected.chains), `${kind} is off the plan`).toBeLessThan(slack);
        expect(farthest(wanted, drawn), `${kind} leaves some out`).toBeLessThan(slack);
      }
    }
  });

  it.each(WAYS)(
    'as %s, waste %s: loops close, lengths and areas are the plan’s, and the waste lies on its side',
    async (curves, waste) => {
      const closed = closedJob(job, waste);
      const options: Partial<ExportOptions> = { machine: { curves } };
      const files = await machineFiles(closed, KINDS, options);
      const opened = context(closed, options);
      for (const layer of [1, 2]) {
        const { outlines } = expectedOf(opened, 'back', layer);
        const length = outlines.reduce((sum, outline) => sum + lengthOf(outline), 0);
        const area = outlines.reduce((sum, outline) => sum + areaOf(outline), 0);
        for (const kind of KINDS) {
          const pieces = allPieces(FORMATS[kind](files, layer));
          if (curves === 'lines') expect(pieces.every(({ bend }) => !bend)).toBe(true);
          expect(largestGap(pieces), `${kind} does not close`).toBeLessThan(kind === 'hpgl' ? 0.036 : 0.002);
          // Inside the tolerance of 0.01 mm a chain of chords is shorter and its loop smaller; whole units make it zigzag.
          const slack = kind === 'hpgl' ? 5e-4 : 2e-4;
          expect(Math.abs(lengthOfStrokes([pieces]) / length - 1), `${kind} is of another length`).toBeLessThan(slack);
          const sign = waste === 'left' ? 1 : -1;
          expect(Math.abs((sign * areaInside(pieces)) / area - 1), `${kind} is of another area`).toBeLessThan(3e-4);
          expect(pieces.filter((piece) => !keepsWaste(piece, waste, outlines))).toEqual([]);
        }
      }
    },
  );
});

/** Looks a quarter of a millimetre to either side of a piece that is long enough to tell. */
function keepsWaste(
  piece: Piece,
  waste: 'left' | 'right',
  outlines: readonly Parameters<typeof isInside>[0][],
): boolean {
  if (lengthOfPiece(piece) < 0.5) return true;
  const [at, way] = [pointAt(piece, 0.5), wayAt(piece, 0.5)];
  const side = waste === 'left' ? 0.25 : -0.25;
  const beside = (by: number) => ({ x: at.x - by * way.y, y: at.y + by * way.x });
  const inWaste = (by: number) => outlines.some((outline) => isInside(outline, beside(by)));
  return inWaste(side) && !inWaste(-side);
}

describe('an oval of 8 x 10 in', () => {
  it('has 62.83 sq in in every format (pi a b)', async () => {
    const files = await machineFiles(jobOf('oval', EXACT), KINDS);
    for (const kind of KINDS) {
      const area = Math.abs(areaInside(allPieces(FORMATS[kind](files, 2)))) / 25.4 ** 2;
      expect(area, kind).toBeCloseTo(Math.PI * 4 * 5, 1);
      expect(area.toFixed(2), kind).toMatch(/^62\.8[23]$/);
    }
  });
});

describe('lengths', () => {
  it('are those of the blade in the plan, with what a ring runs past its start', async () => {
    const job = jobOf('stepped');
    const files = await machineFiles(job, KINDS);
    const [layer] = context(job).plan.layers;
    const length = layer!.windows[0]!.cuts.back.reduce((sum, cut) => sum + bladeLength(cut), 0);
    for (const kind of KINDS) {
      const error = Math.abs(lengthOfStrokes(FORMATS[kind](files, 1)) - length);
      expect(error, kind).toBeLessThan(kind === 'hpgl' ? 1 : 0.001);
    }
  });

  it.each(['rounded', 'oval', 'arch', 'stepped', 'scooped'])('of %s stay the same when it is turned', async (name) => {
    const lengths: number[] = [];
    for (const turned of [undefined, 90, 180, 270]) {
      const across = turned === 90 || turned === 270;
      const job = {
        frame: { size: across ? '14 x 11 in' : '11 x 14 in' },
        windows: {
          kind: 'window',
          size: across ? '10 x 8 in' : '8 x 10 in',
          shape: SHAPES[name],
          ...(turned ? { turned } : {}),
        },
        mat: { layers: [{}, {}] },
        borders: { rule: 'centred' },
      };
      const files = await machineFiles(job, ['json', 'gcode']);
      lengths.push(lengthOfStrokes(FORMATS.json(files, 1)), lengthOfStrokes(FORMATS.gcode(files, 1)));
    }
    for (const length of lengths) expect(Math.abs(length - lengths[0]!)).toBeLessThan(0.02);
  });
});

describe('units', () => {
  it.each(KINDS)('of a 10 in square make no difference to %s', async (kind) => {
    const job = {
      frame: { size: '14 x 14 in' },
      windows: { kind: 'window', size: '10 x 10 in' },
      mat: { layers: [{}] },
    };
    const [inches, metric] = await Promise.all(
      (['in', 'mm'] as const).map(async (units) =>
        allPieces(FORMATS[kind](await machineFiles(job, [kind], { units }), 1)),
      ),
    );
    expect(inches!.length).toBe(4);
    expect(metric!.length).toBe(4);
    inches!.forEach((piece, index) => {
      expect(farthest([piece.from], [[metric![index]!.from, metric![index]!.from]])).toBeLessThan(0.0005);
      expect(farthest([piece.to], [[metric![index]!.to, metric![index]!.to]])).toBeLessThan(0.0005);
    });
    const overcut = lengthOfPiece(inches![0]!) - 254;
    // By default the blade runs past each corner by the bevel run, the board's thickness at 45 degrees: 1/16 in.
    expect(Math.abs(overcut - 2 * 25.4 * (1 / 16))).toBeLessThan(kind === 'hpgl' ? 0.026 : 0.001);
  });
});

describe('the origin corner', () => {
  it.each([
    ['lower-left', 0, 0],
    ['lower-right', -1, 0],
    ['upper-left', 0, -1],
    ['upper-right', -1, -1],
  ] as const)('%s moves everything and turns nothing', async (corner, across, up) => {
    const job = jobOf('arch');
    const plain = await machineFiles(job, KINDS);
    const moved = await machineFiles(job, KINDS, { machine: { corner } });
    const by = { x: across * 11 * 25.4, y: up * 14 * 25.4 };
    const chains = expectedOf(context(job), 'back', 2).chains.map((chain) =>
      chain.map(({ x, y }) => ({ x: x + by.x, y: y + by.y })),
    );
    for (const kind of KINDS) {
      const pieces = allPieces(FORMATS[kind](moved, 2));
      expect(
        farthest(
          pieces.flatMap((piece) => pointsAlong(piece, 2)),
          chains,
        ),
        kind,
      ).toBeLessThan(NEAR[kind] + 0.001);
      const [before, after] = [plain, moved].map((files) => lengthOfStrokes(FORMATS[kind](files, 2))) as [
        number,
        number,
      ];
      expect(Math.abs(before - after), kind).toBeLessThan(0.2);
    }
  });
});
