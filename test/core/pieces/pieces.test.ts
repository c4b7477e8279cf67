/** Several frames at once, and what is said where something can't be. */
import { describe, expect, it } from 'vitest';
import { cutsListCsv } from '../../../src/core/pieces/cuts-list-csv';
import { sticksRows } from '../../../src/core/pieces/moulding-words';
import { piecesOf, type PiecesAsk } from '../../../src/core/pieces/pieces';
import { railsOf } from '../../../src/core/pieces/sticks';
import { readTable } from '../../../src/core/tables/read-table';
import type { ShelfItem } from '../../../src/core/shelf/shelf';
import { showingOf } from '../../../src/core/units';
import { planned, type Contents } from '../open';
import { faultsOf } from './check-sticks';

const IN = 25.4;
const fern: Contents = { title: 'Fern', pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' } };
const chart: Contents = { title: 'Chart', pictures: [{ size: '11 x 14 in' }], frame: { size: '16 x 20 in' } };
const moulding: ShelfItem = { kind: 'moulding', name: 'Ash', face: 25, lip: 6.35, stick: 3000 };

function made(contents: readonly Contents[], more: Omit<PiecesAsk, 'jobs'> = {}) {
  const result = piecesOf({ jobs: contents.map((one) => planned(one)), ...more });
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('\n'));
  return { ...result.value, problems: result.problems };
}

describe('several frames', () => {
  it('of one moulding share their sticks', () => {
    const { frames, sticks } = made([fern, fern, chart], { stick: 108 * IN });
    expect(sticks.map((group) => group.frames)).toEqual([[0, 1, 2]]);
    expect(faultsOf(sticks[0]!.plan, railsOf(frames.map((frame) => frame.moulding)))).toEqual([]);
    // Two frames of 55 1/2 in and one of 77 1/2 in with their cuts: 188 1/2 in can't come from one stick of 108.
    expect([sticks[0]!.plan.sticks.length, sticks[0]!.plan.atLeast]).toEqual([2, 2]);
  });

  it('of different mouldings do not', () => {
    const wide: Contents = { ...chart, frame: { ...chart.frame, mouldingWidth: '2 in' } };
    const dark: Contents = { ...fern, frame: { ...fern.frame, colour: '#202020' } };
    const { sticks } = made([fern, wide, dark, fern], { stick: 108 * IN });
    expect(sticks.map((group) => group.frames)).toEqual([[0, 3], [1], [2]]);
    // Rails are named by the frame they are for.
    expect(sticks[0]!.plan.sticks.flatMap(({ rails }) => rails.map(({ frame }) => frame)).sort()).toEqual([0, 0, 0, 0, 3, 3, 3, 3]); // prettier-ignore
    const same = made([fern, wide, dark], { shelf: [moulding], moulding: 'ash' });
    expect(same.sticks.map((group) => group.frames)).toEqual([[0, 1, 2]]);
    expect(same.sticks[0]!.plan.stick).toBe(3000);
  });

  it('leave what is worth keeping apart from waste, in rows that add up to the sticks', () => {
    // Rails of 12 1/8 and 15 1/8 in with eight cuts of 1/8 in: 54 1/2 and 1 in of 108 in, and 52 1/2 in to keep.
    const { frames, sticks } = made([fern], { stick: 108 * IN });
    const rows = sticksRows(sticks[0]!, frames, showingOf({ units: 'in', steps: { in: 16, mm: 0.5 } }));
    expect(rows.slice(-3)).toEqual([
      ['Rails', '54 1/2 in', 'of 108 in in all'],
      ['Waste', '0.9 %', '8 saw cuts 1 in, short ends 0 in'],
      ['Left over', '52 1/2 in', '1 piece to keep, of 12 3/8 in or more, enough for the shortest of these rails with its two cuts'], // prettier-ignore
    ]);
    const short = made([fern], { stick: 64 * IN });
    const [rails, waste, left] = sticksRows(short.sticks[0]!, short.frames, showingOf({ units: 'in', steps: { in: 16, mm: 0.5 } })).slice(-3); // prettier-ignore
    expect([rails?.[1], waste, left?.[1]]).toEqual(['54 1/2 in', ['Waste', '14.8 %', '8 saw cuts 1 in, short ends 8 1/2 in'], '0 in']); // prettier-ignore
    expect(left?.[2]).toMatch(/^no piece to keep/);
  });

  it('shown in steps still add up', () => {
    const odd = { ...fern, units: 'mm' as const, frame: { size: '311.3 x 407.7 mm', mouldingWidth: '21.7 mm' } };
    const { frames, sticks } = made([odd, { ...odd, frame: { ...odd.frame, size: '280.2 x 355.9 mm' } }], { stick: 2400.4, kerf: 3.3 }); // prettier-ignore
    for (const mm of [1, 0.5, 0.1] as const) {
      const [rails, waste, left] = sticksRows(sticks[0]!, frames, { unit: 'mm', inchStep: 16, metricStep: mm }).slice(
        -3,
      );
      const numbers = `${rails?.[1]}; ${waste?.[2].replace(/^\d+ saw cuts?/, '')}; ${left?.[1]}`.match(/[\d.]+/g)?.map(Number) ?? []; // prettier-ignore
      const whole = Number(/[\d.]+/.exec(rails?.[2] ?? '')?.[0]);
      expect(numbers).toHaveLength(4);
      expect(numbers.reduce((sum, one) => sum + one, 0)).toBeCloseTo(whole, 9);
    }
  });

  it('no sticks are planned where their length is not known, no costs without a shelf', () => {
    const { sticks, frames } = made([fern]);
    expect(sticks).toEqual([]);
    expect(frames[0]!.costs).toBeUndefined();
  });

  it('the kerf is an eighth of an inch, 3 mm in metric, or as asked', () => {
    expect(made([fern]).kerf).toBe(IN / 8);
    expect(made([{ ...fern, units: 'mm' }]).kerf).toBe(3);
    expect(made([fern], { kerf: 0 }).frames[0]!.moulding.stick).toBeCloseTo((2 * (11.125 + 14.125) + 8 * 0.5) * IN, 9);
  });
});

describe('what can’t be', () => {
  const codes = (contents: Contents, more: Omit<PiecesAsk, 'jobs'>) =>
    piecesOf({ jobs: [planned(contents)], ...more }).problems.map(({ code, severity }) => `${severity} ${code}`);

  it('a moulding that is not there is told, with the nearest one that is', () => {
    const result = piecesOf({ jobs: [planned(fern)], shelf: [moulding], moulding: 'Ahs' });
    expect(result).toMatchObject({ ok: false, problems: [{ code: 'moulding-unknown', value: 'Ahs' }] });
    expect(result.problems[0]!.message).toContain('Is “Ash” meant?');
    expect(codes(fern, { moulding: 'Ash' })).toEqual(['error moulding-unknown']);
  });

  it('one that is narrower than the job’s lip', () => {
    const { lip: _, ...thin } = { ...moulding, face: 5 };
    expect(codes(fern, { shelf: [thin], moulding: 'Ash' })).toEqual(['error moulding-narrower-than-lip']);
  });

  it('one with another lip is told, since borders as seen change', () => {
    expect(codes(fern, { shelf: [{ ...moulding, lip: 9 }], moulding: 'Ash' })).toEqual(['note moulding-differs']);
    expect(codes(fern, { shelf: [moulding], moulding: 'Ash' })).toEqual([]);
  });

  it('a rail longer than its stick, with what would do', () => {
    const { problems, sticks } = made([fern, chart], { stick: 20 * IN, kerf: IN / 8 });
    expect(sticks).toEqual([]);
    expect(problems).toMatchObject([{ code: 'rail-longer-than-stick', severity: 'warning', limit: '21 3/8 in' }]);
    expect(problems[0]!.message).toContain('left and right of “Chart” are 21 1/8 in long');
  });

  it('a spacer that no lip hides', () => {
    const spaced: Contents = { ...fern, frame: { ...fern.frame, lip: '1/16 in', allowance: '1/8 in' }, package: { spacer: { thickness: '1/8 in' } } }; // prettier-ignore
    expect(codes(spaced, {})).toEqual(['warning spacer-not-hidden']);
    expect(made([spaced]).frames[0]!.pieces.map(({ kind }) => kind)).not.toContain('spacer');
  });
});

describe('the cuts list as a table', () => {
  const jobs = [planned(fern), planned({ ...chart, title: '=cmd', units: 'mm' })];
  const { frames } = made([fern, { ...chart, title: '=cmd', units: 'mm' }]);
  const text = cutsListCsv(frames, jobs.map(({ job }) => showingOf(job))); // prettier-ignore

  it('reads back to the pieces, in the units of each job', () => {
    const keys = ['frame', 'title', 'piece', 'layer', 'material', 'count', 'comes with the frame', 'unit', 'width', 'width shown', 'height', 'height shown', 'order width', 'order width shown', 'order height', 'order height shown', 'thickness', 'thickness shown', 'area (m2)', 'area less windows (m2)', 'how'] as const; // prettier-ignore
    const table = readTable(text, keys.map((key) => ({ key, names: [key] as [string] }))); // prettier-ignore
    if (!table.ok) throw new Error(table.problems.map(({ message }) => message).join('\n'));
    const rows = table.value.rows.map(({ cells }) => cells);
    expect(rows.map(({ piece }) => piece)).toEqual(frames.flatMap(({ pieces }) => ['Rail top and bottom', 'Rail left and right', ...pieces.map(({ name }) => name)])); // prettier-ignore
    expect(rows[0]).toMatchObject({ frame: '1', title: 'Fern', count: '2', unit: 'in', width: '12.125', 'width shown': '12 1/8 in', height: '0.75' }); // prettier-ignore
    const glass = rows.filter(({ piece }) => piece === 'Glazing');
    expect(glass.map(({ unit, width, thickness }) => [unit, width, thickness])).toEqual([['in', '11', '0.0984252'], ['mm', '406.4', '2.5']]); // prettier-ignore
  });

  it('no title is run as a formula', () => expect(text).toContain("2,'=cmd,"));
});
