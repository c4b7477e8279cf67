/** The cuts list: what is in it, its sizes to cut and to order, the same whichever way a job is turned. */
import { describe, expect, it, test } from 'vitest';
import { MOTIONS } from '../../../src/core/job/motion';
import { readJob } from '../../../src/core/job/read';
import { parallelTo } from '../../../src/core/geometry/offset';
import { areaOf } from '../../../src/core/geometry/outline';
import { layOut } from '../../../src/core/layout/lay-out';
import { turnJob } from '../../../src/core/layout/turn-job';
import { jobPieces } from '../../../src/core/pieces/job-pieces';
import { cutOutOf } from '../../../src/core/pieces/mat-area';
import { orderLength } from '../../../src/core/pieces/order-size';
import type { Piece } from '../../../src/core/pieces/piece';
import { planned, type Contents, type Planned } from '../open';
import { TURNED_JOBS } from '../turned-jobs';

const IN = 25.4;

function piecesOf(contents: Contents): readonly Piece[] {
  const { job, layout } = planned(contents);
  return jobPieces(job, layout).pieces;
}

function named(pieces: readonly Piece[], name: string): Piece {
  const found = pieces.find((piece) => piece.name === name);
  if (!found) throw new Error(`${name} is not among ${pieces.map((piece) => piece.name).join(', ')}`);
  return found;
}

const inches = ({ width, height }: { readonly width: number; readonly height: number }) => [
  expect.closeTo(width / IN, 9) as number,
  expect.closeTo(height / IN, 9) as number,
];

const full: Contents = {
  pictures: [{ size: '8 x 10 in' }],
  frame: { size: '16 x 20 in', allowance: '1/8 in', lip: '1/4 in', mouldingWidth: '3/4 in' },
  mat: { layers: [{ board: 'Soft white' }, { board: 'Moss', reveal: '1/4 in' }] },
  package: { spacer: { thickness: '1/8 in' } },
};

describe('a double mat behind glass with a spacer', () => {
  const pieces = piecesOf(full);

  it('has every piece from the front to the back', () => {
    expect(pieces.map(({ name, count, material }) => [name, count, material])).toEqual([
      ['Glazing', 1, 'glass'],
      ['Spacer left and right', 2, 'spacer strip'],
      ['Spacer top and bottom', 2, 'spacer strip'],
      ['Mat layer 1', 1, 'Soft white'],
      ['Mat layer 2', 1, 'Moss'],
      ['Mount board', 1, 'Mount board'],
      ['Backing', 1, 'foam board'],
      ['Dust cover', 1, 'paper'],
    ]);
  });

  it('cuts a spacer from a board, as many strips one upon another as make its thickness', () => {
    // 1/8 in of a board of 1/16 in: two strips at every side.
    const layers = [{ board: 'Soft white' }, { board: 'Moss', thickness: '1/16 in', reveal: '1/4 in' }];
    const spaced = (board: string) => piecesOf({ ...full, mat: { layers }, package: { spacer: { thickness: '1/8 in', board } } }); // prettier-ignore
    const told = (board: string) => spaced(board).filter(({ kind }) => kind === 'spacer').map(({ count, material, thickness }) => [count, material, thickness!.nominal / IN]); // prettier-ignore
    expect(told('moss')).toEqual([[4, 'moss', 1 / 16], [4, 'moss', 1 / 16]]); // prettier-ignore
    expect(told('Sand')).toEqual([[2, 'Sand', 1 / 8], [2, 'Sand', 1 / 8]]); // prettier-ignore
    expect(told(' ')[0]).toEqual([2, 'spacer strip', 1 / 8]);
  });

  it('cuts glazing and boards to the frame size', () => {
    for (const { kind, cut, order } of pieces) {
      if (kind === 'spacer' || kind === 'dust cover') continue;
      expect([cut.width / IN, cut.height / IN]).toEqual([16, 20]);
      expect([order.width / IN, order.height / IN]).toEqual(inches(cut));
    }
  });

  it('hides the strips under the lip, the long ones whole and the short ones between them', () => {
    // The lip of 1/4 hides 1/4 - 1/16 = 3/16 of the blank.
    const [long, short] = [named(pieces, 'Spacer left and right'), named(pieces, 'Spacer top and bottom')];
    expect([long.cut.width / IN, long.cut.height / IN]).toEqual([expect.closeTo(3 / 16, 9), 20]);
    expect([short.cut.width / IN, short.cut.height / IN]).toEqual([
      expect.closeTo(16 - 3 / 8, 9),
      expect.closeTo(3 / 16, 9),
    ]);
    expect(short.order.width / IN).toBeCloseTo(15.625, 9);
  });

  it('keeps the dust cover inside the outside, and has it ordered as large', () => {
    // Outside 17 1/8 x 21 1/8; 1/8 inside it on every side: common practice, no source.
    const { cut, order } = named(pieces, 'Dust cover');
    expect([cut.width / IN, cut.height / IN]).toEqual([expect.closeTo(16.875, 9), expect.closeTo(20.875, 9)]);
    expect([order.width / IN, order.height / IN]).toEqual([expect.closeTo(17.125, 9), expect.closeTo(21.125, 9)]);
  });

  it('of a narrow moulding covers half of the wood', () => {
    const { cut } = named(piecesOf({ ...full, frame: { ...full.frame, mouldingWidth: '3/8 in' } }), 'Dust cover');
    expect(cut.width / IN).toBeCloseTo(16.125 + 1 / 8, 9);
  });
});

describe('what is there', () => {
  it('comes from the job', () => {
    const bare = piecesOf({
      ...full,
      package: {
        glazing: { material: 'none' },
        mountBoard: { without: true },
        backing: { material: 'none' },
        dustCover: false,
      },
    });
    expect(bare.map(({ kind }) => kind)).toEqual(['mat', 'mat']);
  });

  it('what comes with the frame is said to', () => {
    const pieces = piecesOf({ ...full, frame: { ...full.frame, comesWith: ['glazing', 'backing', 'mat'] } });
    expect(pieces.filter(({ comesWithFrame }) => comesWithFrame).map(({ kind }) => kind)).toEqual([
      'glazing',
      'backing',
    ]);
  });

  it('a layer that is cut behind another is smaller by the trim', () => {
    const pieces = piecesOf({ ...full, cutting: { layers: 'behind', behindTrim: '1/4 in' } });
    expect(named(pieces, 'Mat layer 1').cut.width / IN).toBeCloseTo(16, 9);
    const { cut, area } = named(pieces, 'Mat layer 2');
    expect([cut.width / IN, cut.height / IN]).toEqual([expect.closeTo(15.5, 9), expect.closeTo(19.5, 9)]);
    expect(area.full / IN ** 2).toBeCloseTo(15.5 * 19.5, 9);
  });
});

describe('the size to order', () => {
  const sixteenths = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;

  test.each([
    // A glass 15.97 in long goes into a rabbet of 16.1 in as 16 in; into one of 15.99 in it is ordered shorter.
    [15.97, 16.1, 16],
    [15.97, 15.99, 15.9375],
    [16, 16.125, 16],
    [15.9375, Infinity, 15.9375],
  ])('of %d in with room for %d in is %d in', (length, room, ordered) => {
    expect(orderLength(length * IN, room * IN, sixteenths) / IN).toBeCloseTo(ordered, 9);
  });

  it('is never past the rabbet where the frame is made to fit', () => {
    const pieces = piecesOf({
      pictures: [{ size: '203 x 251 mm' }],
      frame: { allowance: '1/64 in' },
      borders: { rule: 'equal', all: '70 mm' },
    });
    const { cut, order } = named(pieces, 'Glazing');
    expect(order.width).toBeLessThanOrEqual(cut.width + IN / 64 + 1e-6);
    expect(order.width).toBeGreaterThan(cut.width - IN / 16);
  });
});

describe('areas', () => {
  it('of a rectangular window without bevel', () => {
    const pieces = piecesOf({ frame: { size: '300 x 400 mm' }, mat: { layers: [{ bevel: { angle: 0 } }] }, windows: { kind: 'window', size: '100 x 150 mm' } }); // prettier-ignore
    expect(named(pieces, 'Mat layer 1').area).toEqual({ full: 120000, net: expect.closeTo(105000, 6) as number });
  });

  it.each(TURNED_JOBS)(
    'of %s leave less than the blank and more than what lies outside the faces',
    (_, { job, layout }) => {
      for (const { kind, area, layer } of jobPieces(job, layout).pieces) {
        if (kind !== 'mat') continue;
        const openings = layout.windows.map(({ layers }) => layers[layer! - 1]!);
        const small = openings.reduce(
          (sum, { opening, outlines }) => sum + (outlines ? areaOf(outlines.opening) : box(opening)),
          0,
        );
        const large = openings.reduce((sum, { face, back, outlines }) => sum + Math.max(outlines ? areaOf(outlines.face) : box(face), outlines ? areaOf(outlines.back) : box(back)), 0); // prettier-ignore
        expect(area.full - area.net).toBeGreaterThanOrEqual(small - 1e-6);
        expect(area.full - area.net).toBeLessThanOrEqual(large + 1e-6);
      }
    },
  );
});

describe('what a bevel takes out of the board', () => {
  const shaped = TURNED_JOBS.flatMap(([name, { layout }]) =>
    layout.layers.flatMap(({ bevel: { run }, number }, index) => {
      const outlines = layout.windows.flatMap(({ layers }) => layers[index]?.outlines?.opening ?? []);
      return run > 0 && outlines.length > 0 ? [[`${name}, layer ${number}`, layout, index, run] as const] : [];
    }),
  );

  // Areas of parallel curves all through the board, by the composite rule of Simpson.
  it.each(shaped)('of %s is the mean of its areas at every depth', (_, layout, index, run) => {
    const steps = 64;
    const mean = layout.windows.reduce((sum, { layers }) => {
      const { opening, outlines } = layers[index]!;
      const at = (away: number) => {
        if (!outlines) return box({ left: opening.left - away, right: opening.right + away, bottom: opening.bottom - away, top: opening.top + away }); // prettier-ignore
        return areaOf(away === 0 ? outlines.opening : parallelTo(outlines.opening, away)!.outline);
      };
      const weight = (step: number) => (step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2);
      const parts = Array.from({ length: steps + 1 }, (_, step) => weight(step) * at((run * step) / steps));
      return sum + parts.reduce((all, one) => all + one, 0) / (3 * steps);
    }, 0);
    expect(Math.abs(cutOutOf(layout, index) / mean - 1)).toBeLessThan(1e-5);
  });

  it('is tried on many shapes', () => expect(shaped.length).toBeGreaterThan(20));
});

function box({ left, right, bottom, top }: { left: number; right: number; bottom: number; top: number }): number {
  return (right - left) * (top - bottom);
}

describe('turning a job by a quarter', () => {
  const turns = TURNED_JOBS.flatMap(([name, one]) => {
    const turned = turn(one);
    return turned ? [[name, one, turned] as const] : [];
  });

  it.each(turns)('%s: turns the pieces and changes nothing of weight, stick or areas', (_, before, after) => {
    const [one, other] = [jobPieces(before.job, before.layout), jobPieces(after.job, after.layout)];
    expect(other.moulding.stick).toBeCloseTo(one.moulding.stick, 6);
    expect(other.moulding.united).toBeCloseTo(one.moulding.united, 6);
    expect(other.weight.counted.nominal).toBeCloseTo(one.weight.counted.nominal, 9);
    expect(other.weight.notCounted).toEqual(one.weight.notCounted);
    one.pieces.forEach(({ cut, area }, index) => {
      const same = other.pieces[index]!;
      expect([same.cut.width, same.cut.height]).toEqual([expect.closeTo(cut.height, 6), expect.closeTo(cut.width, 6)]);
      expect(same.area.net).toBeCloseTo(area.net, 4);
    });
  });

  it('is tried on many jobs', () => expect(turns.length).toBeGreaterThan(20));
});

function turn({ written, job, layout }: Planned): Pick<Planned, 'job' | 'layout'> | undefined {
  const turned = turnJob({ written, job }, layout, MOTIONS.left);
  const opened = turned.ok ? readJob(turned.value) : undefined;
  const laid = opened?.ok ? layOut(opened.value.job) : undefined;
  return opened?.ok && laid?.ok ? { job: opened.value.job, layout: laid.value } : undefined;
}
