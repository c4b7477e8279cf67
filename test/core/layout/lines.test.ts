/** Grooves and ruled lines, laid out: closed forms of where they run, true distances by sampling, and what is said of those that can't be. */
import { describe, expect, it } from 'vitest';
import { setAll } from '../../../src/core/job/edit';
import { SHAPE_KINDS, type WrittenShape } from '../../../src/core/job/written-shape';
import { pointOn, type Edge } from '../../../src/core/geometry/edge';
import { areaOf, boundsOf, boxOutline, isClosed, type Outline } from '../../../src/core/geometry/outline';
import type { PlacedLine, PlacedWindow } from '../../../src/core/layout/layout';
import { trueDistance } from '../geometry/true-distance';
import { planned, problemOf, problemsOf, tryPlan, written, type Contents } from '../open';

const IN = 25.4;
const LAYERS = [{ thickness: '1/16 in' }, { thickness: '1/16 in', reveal: '1/4 in' }];
/** Reveal and bevel run that lie between the window and its edge on the face of the top layer. */
const AWAY = IN / 4 + IN / 16;

function lined(shape: WrittenShape, lines: object[], more: object = {}, mat: object = { layers: LAYERS }): Contents {
  return {
    frame: { size: '16 x 20 in' },
    mat,
    windows: { kind: 'window', size: '8 x 10 in', shape, lines, ...more },
  } as Contents;
}

function placed(contents: Contents): { window: PlacedWindow; lines: readonly PlacedLine[] } {
  const [window] = planned(contents).layout.windows;
  if (!window) throw new Error('the job has a window');
  return { window, lines: window.lines };
}

function along(outline: Outline, count: number) {
  return outline.flatMap((edge) => Array.from({ length: count }, (_, index) => pointOn(edge, (index + 0.5) / count)));
}

const GROOVE = { kind: 'groove', distance: '1/2 in', width: '1/16 in' };

describe('closed forms', () => {
  it('round a circle a line is a circle of radius r + reveals + run + distance, and the mouth a ring of 2 pi R w', () => {
    const { lines } = placed(lined('oval', [GROOVE], { size: '8 x 8 in' }));
    const [line] = lines;
    const radius = 4 * IN + AWAY + IN / 2;
    for (const [outline, wanted] of [
      [line!.inner, radius - IN / 32],
      [line!.middle, radius],
      [line!.outer, radius + IN / 32],
    ] as const) {
      expect(isClosed(outline)).toBe(true);
      const box = boundsOf(outline);
      expect((box.right - box.left) / 2).toBeCloseTo(wanted, 9);
      for (const point of along(outline, 7)) {
        const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
        expect(Math.hypot(point.x - middle.x, point.y - middle.y)).toBeCloseTo(wanted, 9);
      }
    }
    expect(areaOf(line!.outer) - areaOf(line!.inner)).toBeCloseTo(2 * Math.PI * radius * (IN / 16), 6);
  });

  it('round a rectangle it is a rectangle with square corners, whatever the reveals of its sides', () => {
    const mat = { layers: [LAYERS[0], { thickness: '1/16 in', reveal: { left: '1/4 in', bottom: '3/8 in' } }] };
    const { window, lines } = placed(lined('rectangle', [GROOVE], {}, mat));
    const { left, bottom, right, top } = window.window;
    const out = IN / 16 + IN / 2;
    const wanted = boxOutline({
      left: left - IN / 4 - out,
      bottom: bottom - (3 / 8) * IN - out,
      right: right + IN / 4 + out,
      top: top + IN / 4 + out,
    });
    expect(lines[0]!.middle).toHaveLength(4);
    lines[0]!.middle.forEach((edge, index) => {
      expect(edge.kind).toBe('line');
      expect(edge.from.x).toBeCloseTo(wanted[index]!.from.x, 9);
      expect(edge.from.y).toBeCloseTo(wanted[index]!.from.y, 9);
    });
  });

  it('round an arch the arc keeps its centre and grows by the distance', () => {
    const { lines } = placed(lined({ kind: 'arch', rise: '4 in' }, [GROOVE]));
    const arcs = lines[0]!.middle.filter((edge) => edge.kind === 'arc');
    expect(arcs.length).toBeGreaterThan(0);
    for (const arc of arcs) expect(arc.kind === 'arc' && arc.radius).toBeCloseTo(4 * IN + AWAY + IN / 2, 9);
    // Half a disc over a rectangle.
    const radius = 4 * IN + AWAY + IN / 2;
    expect(areaOf(lines[0]!.middle)).toBeCloseTo(
      (Math.PI * radius ** 2) / 2 + 2 * radius * (6 * IN + AWAY + IN / 2),
      6,
    );
  });

  it.each([
    [45, IN / 32],
    [60, IN / 32 / Math.sqrt(3)],
    [30, (IN / 32) * Math.sqrt(3)],
  ])('slopes of %d° meet at width / 2 / tan(angle)', (angle, depth) => {
    expect(placed(lined('rectangle', [{ ...GROOVE, angle }])).lines[0]?.depth).toBeCloseTo(depth, 12);
  });

  it('of a reverse bevel the distance runs from the opening, which lies on the face', () => {
    const layers = [{ thickness: '1/16 in', bevel: { direction: 'reverse' } }];
    const { window, lines } = placed(lined('rectangle', [GROOVE], {}, { layers }));
    expect(boundsOf(lines[0]!.middle).left).toBeCloseTo(window.window.left - IN / 2, 9);
  });

  it('sizes meant at the face move the opening, and the line with it', () => {
    const { window, lines } = placed(lined('oval', [GROOVE], {}, { layers: LAYERS, measuredAt: 'face' }));
    expect(window.window.right - window.window.left).toBeCloseTo(8 * IN - IN / 8, 9);
    const box = boundsOf(lines[0]!.middle);
    expect(box.right - box.left).toBeCloseTo(8 * IN - IN / 8 + 2 * (AWAY + IN / 2), 6);
  });
});

const SHAPES: WrittenShape[] = [...SHAPE_KINDS, { kind: 'oval', reveal: 'axes' }];

describe.each(SHAPES.map((shape) => [JSON.stringify(shape), shape] as const))('%s', (_, shape) => {
  it('is followed at the true distance from its edge on the face', () => {
    const { window, lines } = placed(
      lined(shape, [GROOVE, { kind: 'ruled', distance: '1/4 in', width: '1 mm' }], { size: '8.5 x 10 in' }),
    );
    const cut = window.layers[0]!;
    const face = cut.outlines?.face ?? boxOutline(cut.face);
    expect(lines).toHaveLength(2);
    for (const { line, inner, middle, outer } of lines) {
      for (const [outline, away] of [
        [inner, line.distance - line.width / 2],
        [middle, line.distance],
        [outer, line.distance + line.width / 2],
      ] as const) {
        const far = along(outline, 5).map((point) => trueDistance(face, point));
        // No point lies nearer; only the tips of corners lie further out.
        expect(Math.min(...far)).toBeGreaterThan(away - 1e-6);
        expect(far.filter((distance) => distance < away + 1e-6).length).toBeGreaterThanOrEqual(far.length / 3);
        // Square to the middle of every edge that is still there, the line lies just so far out.
        const straight = face.filter((edge) => !isShort(edge, away));
        for (const edge of straight)
          expect(Math.abs(trueDistance(outline, pointOn(edge, 0.5)) - away)).toBeLessThan(1e-6);
      }
    }
  });

  it('turned a quarter and turned over it has the same lines, turned and turned over', () => {
    const plain = placed(lined(shape, [GROOVE])).lines[0]!;
    const turned = placed(lined(shape, [GROOVE], { size: '10 x 8 in', turned: 90, mirrored: true })).lines[0]!;
    expect(areaOf(turned.middle)).toBeCloseTo(areaOf(plain.middle), 6);
    const [a, b] = [boundsOf(plain.middle), boundsOf(turned.middle)];
    expect(b.right - b.left).toBeCloseTo(a.top - a.bottom, 6);
  });
});

/** Bends that the way out takes up, and corners they make. */
function isShort(edge: Edge, away: number): boolean {
  if (edge.kind === 'arc' && edge.sweep < 0) return edge.radius < away + 1;
  return edge.kind === 'line' && Math.hypot(edge.to.x - edge.from.x, edge.to.y - edge.from.y) < 3 * away;
}

describe('whose lines', () => {
  const pictures = [{ size: '6 x 6 in' }, { size: '6 x 6 in' }, { size: '12 x 6 in' }];
  const job: Contents = {
    pictures,
    mat: { lines: [{ kind: 'groove' }] },
    windows: {
      kind: 'column',
      gap: '3 in',
      items: [
        '1',
        { kind: 'window', picture: 2, lines: [] },
        { kind: 'spread', picture: 3, count: 2, gap: '2 1/2 in', lines: [{ kind: 'ruled' }] },
      ],
    },
    free: [
      {
        size: '2 x 1 in',
        at: { left: '2 in', bottom: '2 in' },
        lines: [{ kind: 'ruled' }, { ...GROOVE, distance: '1/4 in' }],
      },
    ],
    frame: { size: '24 x 40 in' },
  } as Contents;

  it('a window has its own, else the mat’s; a list without any takes them away', () => {
    const { layout } = planned(job);
    expect(layout.windows.map(({ name, lines }) => [name, lines.map(({ line }) => line.at)])).toEqual([
      ['A', ['mat.lines[0]']],
      ['B', []],
      ['C', ['windows.items[2].lines[0]']],
      ['D', ['windows.items[2].lines[0]']],
      ['E', ['free[0].lines[0]', 'free[0].lines[1]']],
    ]);
  });

  it('grooves lean as the cutter does, where that makes a groove', () => {
    const angle = (bevelAngle: number) => {
      const cutting = { cutter: { name: 'Bench', bevelAngle } };
      const [line] = planned({ ...job, cutting }).layout.windows[0]!.lines;
      return line?.line.kind === 'groove' && line.line.angleDegrees;
    };
    expect([angle(40), angle(60), angle(0)]).toEqual([40, 60, 45]);
  });
});

describe('what can’t be made is told, with what would be right', () => {
  const two = (gap: string, lines: object[], shape: WrittenShape = 'rectangle'): Contents =>
    ({
      mat: { lines, layers: [{ thickness: '1/16 in' }] },
      windows: {
        kind: 'row',
        gap,
        items: [0, 1].map(() => ({ kind: 'window', size: '4 x 4 in', shape })),
      },
      borders: { sides: '4 in', top: '4 in', rule: 'centred' },
    }) as Contents;

  const CASES: [string, Contents, string, RegExp][] = [
    // Half a mouth of 1/8 in is 1/16 in.
    ['line-meets-window', lined('rectangle', [{ kind: 'groove', distance: '1/16 in', width: '1/8 in', angle: 75 }]), '1/8 in or more', /more than 1\/16 in/],
    // 1/16 x 2/3 deep at 45 degrees is 1/12 wide: 1/16 on the step.
    ['groove-too-deep', lined('rectangle', [{ kind: 'groove', width: '1/8 in' }]), '1/16 in wide or less', /1\/16 in thick: it would cut through/],
    ['groove-too-deep', lined('rectangle', [{ kind: 'groove', width: '3/32 in' }]), '1/16 in wide or less', /under a third/],
    ['lines-overlap', lined('rectangle', [GROOVE, { kind: 'groove', distance: '9/16 in', width: '1/16 in' }]), '5/8 in from the window', /middles are 1\/16 in apart and must be more than 1\/16 in/],
    // The bevel takes 1/16 in of the gap at either side: 7/8 in on the face, so 7/16 in reaches the middle.
    ['line-meets-another', two('1 in', [GROOVE]), '3/8 in from the window or less', /window A runs into the groove round window B/],
    ['line-meets-another', two('1 in', [GROOVE], 'oval'), '3/8 in from the window or less', /window A runs into the groove round window B/],
    // The blank is 16 in wide, the border 4 in less reveal and bevel; the lip may hide 1/4 in.
    ['line-off-the-board', lined('rectangle', [{ ...GROOVE, distance: '4 in' }]), '3 3/8 in from the window or less', /past the (left|right) edge/],
    ['line-off-the-board', lined('oval', [{ ...GROOVE, distance: '4 in' }]), '3 3/8 in from the window or less', /past the (left|right) edge/],
    ['line-behind-lip', lined('rectangle', [{ ...GROOVE, distance: '3 5/8 in' }]), '3 3/8 in from the window or less', /lip may hide 1\/4 in/],
  ]; // prettier-ignore

  it.each(CASES)('%s', (code, contents, remedy, message) => {
    const problem = problemOf(contents, code);
    expect(problem.remedy).toBe(remedy);
    expect(problem.message).toMatch(message);
    // What it offers to do does away with it.
    const mended = setAll(written(contents), problem.fix!.edits);
    expect(tryPlan(mended).problems.filter((one) => one.code.startsWith('line') || one.code === code)).toEqual([]);
  });

  it('a line that reaches into a window without any says so', () => {
    const contents = two('1 in', []);
    const items = (contents.windows as { items: object[] }).items;
    const [a, b] = items;
    const windows = {
      ...(contents.windows as object),
      items: [{ ...a, lines: [{ ...GROOVE, distance: '7/8 in' }] }, b],
    };
    const problem = problemOf({ ...contents, windows } as Contents, 'line-meets-another');
    expect(problem).toMatchObject({
      at: 'windows.items[0].lines[0].distance',
      remedy: '13/16 in from the window or less',
    });
    expect(problem.message).toMatch(/runs into window B/);
  });

  it('the greatest distance that is told is the greatest: one step more still runs into something', () => {
    for (const shape of ['rectangle', 'oval', 'arch'] as const) {
      const told = problemOf(two('1 in', [GROOVE], shape), 'line-meets-another').limit!;
      expect(told).toBe('3/8 in');
      const more = { ...GROOVE, distance: '7/16 in' };
      expect(problemsOf(two('1 in', [more], shape)).map(({ code }) => code)).toContain('line-meets-another');
    }
  });

  it('a line round one window may hold another whole', () => {
    const contents = {
      frame: { size: '20 x 20 in' },
      free: [
        { size: '6 x 6 in', at: {}, lines: [{ kind: 'ruled', distance: '3 in' }] },
        { size: '3 x 1 in', at: { bottom: '5 in' } },
      ],
    } as Contents;
    expect(problemsOf(contents).filter(({ code }) => code.startsWith('line'))).toEqual([]);
    expect(planned(contents).layout.windows[0]?.lines).toHaveLength(1);
  });

  it('every line of a mat is told of once, however many windows have it', () => {
    const items = Array.from({ length: 40 }, () => ({ kind: 'window', size: '3 x 3 in' }));
    const contents = {
      mat: { lines: [GROOVE, { kind: 'ruled', distance: '1/4 in' }] },
      windows: { kind: 'grid', columns: 8, gap: '1 in', items },
      borders: { sides: '3 in' },
    } as Contents;
    const found = problemsOf(contents).filter(({ code }) => code === 'line-meets-another');
    expect(found).toHaveLength(1);
    expect(found[0]?.message).toMatch(/and at \d+ more places/);
  });

  it('a hollow whose neck closes before it does can’t be followed', () => {
    // A slot 1 in wide and 4 in long, open at the top by 1/2 in: the bevel takes 1/16 in from either side of both.
    const joined = [
      { size: '4 x 6 in', at: { left: '5 in', bottom: '0 in' } },
      { size: '9 x 1 in', at: { left: '0 in', bottom: '0 in' } },
      { size: '4 1/4 x 1 in', at: { left: '0 in', top: '0 in' } },
      { size: '4 1/4 x 1 in', at: { left: '4 3/4 in', top: '0 in' } },
    ];
    const contents = (distance: string): Contents =>
      ({
        frame: { size: '20 x 20 in' },
        mat: { layers: [{ thickness: '1/16 in' }] },
        windows: { kind: 'window', size: '4 x 6 in', joined, lines: [{ kind: 'ruled', distance, width: '0.1 mm' }] },
      }) as Contents;
    const codes = (distance: string) => problemsOf(contents(distance)).map(({ code }) => code);
    expect(codes('1/8 in')).not.toContain('line-cannot-be-followed');
    expect(codes('3/8 in')).toContain('line-cannot-be-followed');
    // Further out the slot is closed as well.
    expect(codes('1/2 in')).not.toContain('line-cannot-be-followed');
  });

  it('bends that are lost on the way are a note', () => {
    const problem = problemOf(lined({ kind: 'scooped', radius: '3/4 in' }, [GROOVE]), 'corner-vanishes');
    expect(problem).toMatchObject({ severity: 'note', at: 'windows.lines[0].distance' });
  });
});
