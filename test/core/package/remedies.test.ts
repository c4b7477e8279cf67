/** Remedies for a package that is too deep: each one, made to the job as written, does what it says. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setAll } from '../../../src/core/job/edit';
import { readJob } from '../../../src/core/job/read';
import { layOut } from '../../../src/core/layout/lay-out';
import { fitOf } from '../../../src/core/package/fit';
import { remediesFor, type Remedy } from '../../../src/core/package/remedies';
import { stackOf } from '../../../src/core/package/stack';
import type { Shelf } from '../../../src/core/shelf/shelf';
import { startShelf } from '../../../src/core/shelf/start-shelf';
import { packageProblems } from '../../../src/core/package/problems';
import { planned, written, type Contents } from '../open';

const shelf = startShelf('inch');
const deep: Contents = {
  pictures: [{ title: 'Bracken', size: '8x10' }],
  frame: { size: '11x14', rabbetDepth: '1/2' },
  mat: { layers: [{}, { board: 'Slate' }] },
};

function remedies(contents: Contents, on: Shelf = shelf): readonly Remedy[] {
  const { job, layout } = planned(contents);
  return remediesFor(job, layout, on);
}

/** The written job with a remedy made, read and laid out anew. */
function fitWith(contents: Contents, { edits }: Remedy) {
  const opened = readJob(setAll(written(contents), edits));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  const { job } = opened.value;
  const layout = layOut(job);
  if (!layout.ok) throw new Error(JSON.stringify(layout.problems));
  return fitOf(job, stackOf(job, layout.value));
}

const spacer = fc.constantFrom(undefined, '1/16 in', '2 mm');
const held = fc.record({
  glazing: fc.constantFrom({ material: 'glass' as const }, { material: 'acrylic' as const, thickness: '1/8 in' }, { material: 'glass' as const, thickness: '3 mm', thickest: '3.3 mm' }), // prettier-ignore
  backing: fc.constantFrom({ material: 'foam board' as const }, { material: 'hardboard' as const, thickness: '5 mm' }, { material: 'plywood' as const, thickness: '6 mm' }, { material: 'none' as const }), // prettier-ignore
  fixing: fc.constantFrom({}, { kind: 'brads' as const }, { room: '5 mm' }, { kind: 'turn buttons' as const }),
});
const anyDeep: fc.Arbitrary<Contents> = fc.record({
  units: fc.constantFrom('in' as const, 'mm' as const),
  pictures: fc.constantFrom([{ size: '8x10 in', kind: 'pastel or charcoal' as const }], [{ size: '8x10 in' }]),
  frame: fc.integer({ min: 40, max: 170 }).map((tenths) => ({ size: '11x14 in', rabbetDepth: `${tenths / 10} mm` })),
  mat: fc.integer({ min: 1, max: 3 }).map((count) => ({ layers: Array.from({ length: count }, () => ({})) })),
  package: fc
    .tuple(held, spacer)
    .map(([one, thickness]) => ({ ...one, ...(thickness === undefined ? {} : { spacer: { thickness } }) })),
});

describe('every remedy', () => {
  it('made to the job as written leaves free what it says, and fits where it says so', () => {
    fc.assert(
      fc.property(anyDeep, (contents) => {
        for (const remedy of remedies(contents)) {
          const fit = fitWith(contents, remedy);
          expect(fit.free?.nominal).toBeCloseTo(remedy.free.nominal, 6);
          expect(fit.free?.worst).toBeCloseTo(remedy.free.worst, 6);
          if (remedy.enough === 'sure') expect(['fits', 'held behind']).toContain(fit.verdict);
          if (remedy.enough === 'as named') expect(fit.verdict).toBe('may not fit');
          if (remedy.enough === 'not alone') expect(fit.verdict).toBe('does not fit');
        }
      }),
      { numRuns: 50 },
    );
  });

  it('gains something, and a package that is too deep always has one that is enough', () => {
    fc.assert(
      fc.property(anyDeep, (contents) => {
        const { job, layout } = planned(contents);
        const { verdict, free } = fitOf(job, stackOf(job, layout));
        const found = remedies(contents);
        for (const remedy of found) expect(remedy.free.worst).toBeGreaterThan(free!.worst);
        const isDeep = verdict === 'does not fit' || verdict === 'may not fit';
        expect(found.some(({ enough }) => enough === 'sure')).toBe(isDeep);
      }),
      { numRuns: 50 },
    );
  });

  it('never leaves a picture with too little air that had enough', () => {
    fc.assert(
      fc.property(anyDeep, (contents) => {
        const aired = (one: Contents | ReturnType<typeof setAll>) => {
          const { job, layout } = planned(one as Contents);
          const airs = packageProblems(job, layout).filter(({ code, severity }) => code.includes('air') && severity === 'warning'); // prettier-ignore
          return airs.length === 0;
        };
        fc.pre(aired(contents));
        for (const { edits } of remedies(contents)) expect(aired(setAll(written(contents), edits))).toBe(true);
      }),
      { numRuns: 60, maxSkipsPerRun: 20 },
    );
  });
});

describe('remedies, one by one', () => {
  const of = (contents: Contents, kind: Remedy['kind'], on: Shelf = shelf) =>
    remedies(contents, on).filter((remedy) => remedy.kind === kind);

  it('come in the order in which one would try them', () => {
    const kinds = remedies({ ...deep, package: { spacer: { thickness: '1/16' } } }).map(({ kind }) => kind);
    expect(kinds).toEqual(['backing', 'glazing', 'glazing', 'spacer', 'layer', 'deeper', 'built up', 'clips']);
  });

  it('the backing is the thickest that fits: a sixteenth more would not', () => {
    const contents: Contents = { ...deep, mat: { layers: [{}] }, frame: { size: '11x14', rabbetDepth: '17/32' } };
    const [backing] = of(contents, 'backing');
    expect(backing).toMatchObject({ enough: 'sure', words: expect.stringContaining('1/8 in thick or thinner') as string }); // prettier-ignore
    const more = `${backing!.measure + 25.4 / 16} mm`;
    const fit = fitWith(contents, { ...backing!, edits: [{ at: 'package.backing.thickness', value: more }] });
    expect(fit.verdict).not.toBe('fits');
  });

  it('where foam board is not made so thin it is mat board', () => {
    const [backing] = of({ ...deep, mat: { layers: [{}] }, frame: { size: '11x14', rabbetDepth: '7/16' } }, 'backing');
    expect(backing?.words).toContain('of mat board 1/16 in');
  });

  it('panes come from the shelf where it has any, and never plastic over loose powder', () => {
    const panes: Shelf = [
      { kind: 'glazing', name: 'Clear acrylic', material: 'acrylic', uvFilter: true, thickness: 1.5 },
      { kind: 'glazing', name: 'Sold out', material: 'glass', uvFilter: false, thickness: 1.2, count: 0 },
      { kind: 'glazing', name: 'Picture glass', material: 'glass', uvFilter: false, thickness: 2 },
    ];
    const words = of(deep, 'glazing', panes).map((one) => one.words);
    expect(words).toEqual([expect.stringContaining('(Picture glass)'), expect.stringContaining('(Clear acrylic)')]);
    const pastel: Contents = { ...deep, pictures: [{ size: '8x10', kind: 'pastel or charcoal' }] };
    expect(of(pastel, 'glazing', panes).map((one) => one.words)).toEqual([expect.stringContaining('(Picture glass)')]);
    expect(of(pastel, 'glazing').map((one) => one.words)).toEqual([expect.stringContaining('take glass')]);
  });

  it('a layer is left out while one stays, and only where the picture can spare it', () => {
    expect(of(deep, 'layer')).toMatchObject([{ words: 'leave out layer 2 (Slate), 1/16 in' }]);
    expect(of({ ...deep, mat: { layers: [{}] } }, 'layer')).toEqual([]);
    expect(of({ ...deep, pictures: [{ size: '8x10', kind: 'photograph' }] }, 'layer')).toEqual([]);
  });

  it('the rabbet is the least on the step that holds all at its thickest', () => {
    const { job, layout } = planned(deep);
    const { greatest } = stackOf(job, layout).whole;
    const [deeper] = of(deep, 'deeper');
    expect(deeper!.measure).toBeGreaterThanOrEqual(greatest);
    expect(deeper!.measure - 25.4 / 16).toBeLessThan(greatest);
    const [built] = of(deep, 'built up');
    expect(12.7 + built!.measure).toBeGreaterThanOrEqual(greatest);
  });

  it('clips only where there are some that step far enough', () => {
    expect(of(deep, 'clips')).toHaveLength(1);
    expect(of(deep, 'clips', [])).toEqual([]);
    const flat: Shelf = [{ kind: 'clip', name: 'Flat', step: 0 }];
    expect(of(deep, 'clips', flat)[0]?.words).toContain('screwed flat on the back');
    expect(of({ ...deep, frame: { size: '11x14', rabbetDepth: '3/8' } }, 'clips', flat)).toEqual([]);
  });

  it('of a frame with grooves: what lies in front, or another groove', () => {
    const grooved: Contents = { ...deep, frame: { size: '11x14', build: 'with back', grooves: ['1/4'] } };
    const found = remedies(grooved);
    expect(found.map(({ kind }) => kind)).toEqual(['glazing', 'glazing', 'layer', 'deeper']);
    expect(found.at(-1)?.words).toContain('behind the lip');
  });

  it('of a groove that leaves its back no wood: a thinner back, or a deeper frame, and each is enough', () => {
    const grooved: Contents = {
      pictures: [{ size: '8x10' }],
      frame: { size: '11x14', build: 'with back', rabbetDepth: '3/4', mouldingDepth: '7/8', grooves: ['5/8'] },
    };
    const found = remedies(grooved);
    expect(found.map(({ kind }) => kind)).toEqual(['backing', 'deeper']);
    for (const remedy of found) {
      expect(fitWith(grooved, remedy)).toMatchObject({ verdict: remedy.enough === 'sure' ? 'fits' : 'may not fit' });
    }
    const deep = remedies({ ...grooved, frame: { ...grooved.frame, grooves: ['1/8'] } });
    for (const remedy of deep) expect(fitWith({ ...grooved, frame: { ...grooved.frame, grooves: ['1/8'] } }, remedy).behind!.worst).toBeCloseTo(remedy.behind!.worst, 9); // prettier-ignore
  });

  it('of a frame whose moulding is measured leave it deep enough for its rabbet', () => {
    const measured: Contents = { ...deep, frame: { size: '11x14', rabbetDepth: '1/2', mouldingDepth: '9/16' } };
    for (const remedy of [...of(measured, 'deeper'), ...of(measured, 'built up')]) {
      expect(fitWith(measured, remedy).verdict).toBe('fits');
    }
  });

  it('none where the package fits, or nothing is known of the depth', () => {
    expect(remedies({ ...deep, frame: { size: '11x14', rabbetDepth: '1' } })).toEqual([]);
    expect(remedies({ ...deep, frame: { size: '11x14' } })).toEqual([]);
  });
});
