/** What steps cost from the shelf: differences of prices by area and by sheet, and nothing where the shelf can't tell. */
import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { setAll } from '../../../src/core/job/edit';
import { jobCosts } from '../../../src/core/pieces/job-costs';
import { readShelf } from '../../../src/core/shelf/read-shelf';
import type { Shelf } from '../../../src/core/shelf/shelf';
import { planned, written } from '../open';
import { builds } from './arbitrary-builds';
import { careOf, itemOf, kept, NEUTRAL, SOUND } from './kept';

function shelfOf(...lines: string[]): Shelf {
  const heading = 'kind,name,width,height,thickness,material,uv filter,fibre,ph,reserve,photo tested,price,per';
  const read = readShelf([heading, ...lines].join('\n'));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read.value;
}

// A blank of 14 x 18 in: 252 square inches, 1.75 square feet, 0.16258032 square metres.
const clear = kept({}, { glazing: { material: 'glass' } });
const costOf = (key: string, shelf: Shelf, job = clear) => itemOf(job, key, shelf).step!.cost;

describe('of glazing', () => {
  const PLAIN = 'glazing,Clear,,,2.5 mm,glass,no,,,,,8,sq ft';
  const FILTERED = 'glazing,Filtered,,,2.5 mm,glass,yes,,,,,20,sq ft';

  it('is the difference by area, exactly', () => {
    const { amount, words } = costOf('glazing', shelfOf(PLAIN, FILTERED));
    // 1.75 x (20 - 8).
    expect(amount!.toString()).toBe('21');
    expect(words).toBe('21.00 more: “Filtered” in place of “Clear”');
    const metric = shelfOf('glazing,Clear,,,,glass,no,,,,,50,m2', 'glazing,Filtered,,,,glass,yes,,,,,100,m2');
    expect(costOf('glazing', metric).amount!.toString()).toBe('8.129016');
  });

  it('takes the cheapest that does', () => {
    const dear = 'glazing,Dear,,,2 mm,glass,yes,,,,,30,sq ft';
    const other = 'glazing,Acrylic,,,2 mm,acrylic,yes,,,,,1,sq ft';
    expect(costOf('glazing', shelfOf(dear, PLAIN, FILTERED, other)).words).toContain('“Filtered”');
  });

  it('is the whole price where that of the present one is not known', () => {
    const { amount, words } = costOf('glazing', shelfOf(FILTERED));
    expect(amount!.toString()).toBe('35');
    expect(words).toBe('35.00 for “Filtered” in all, since what it takes the place of has no price on the shelf');
    const none = kept({}, { glazing: { material: 'none' } });
    expect(costOf('glazing', shelfOf(FILTERED), none).words).toBe('35.00 for “Filtered”');
  });

  it('counts a sheet only where the blank fits on it, either way round', () => {
    const sheet = (width: string, height: string) =>
      costOf('glazing', shelfOf(`glazing,Sheet,${width},${height},,glass,yes,,,,,12,sheet`)).amount?.toString();
    expect(sheet('14 in', '18 in')).toBe('12');
    expect(sheet('20 in', '16 in')).toBe('12');
    expect(sheet('13 in', '30 in')).toBeUndefined();
  });

  it('may be less', () => {
    const pastel = kept({ kind: 'pastel or charcoal' }, { glazing: { material: 'acrylic' } });
    const shelf = shelfOf(PLAIN, 'glazing,Light,,,3 mm,acrylic,no,,,,,10,sq ft');
    expect(costOf('static', shelf, pastel)).toMatchObject({ words: '3.50 less: “Clear” in place of “Light”' });
  });

  it('is not counted without a shelf, or without a price', () => {
    expect(costOf('glazing', []).words).toBe('not counted: no shelf is given to price it by');
    const priceless = costOf('glazing', shelfOf('glazing,Filtered,,,,glass,yes,,,,,,'));
    expect(priceless).toEqual({ words: 'not counted: no such glazing on the shelf has a price for this size' });
  });
});

describe('of boards', () => {
  const poor = kept({}, {}, { fibre: 'wood pulp', ph: 6, reserve: 0 });
  const RAG = 'board,Rag,32 in,40 in,1/16 in,,,cotton,8,3,yes,18,sheet';

  it('is that of a board known to do, never of one of which nothing is known', () => {
    const shelf = shelfOf('board,Cheap,32 in,40 in,1/16 in,,,,,,,6,sheet', RAG);
    const cost = costOf('layer 1', shelf, poor);
    expect(cost.words).toBe('18.00 for “Rag” in all, since what it takes the place of has no price on the shelf');
    const thin = shelfOf('board,Thin,32 in,40 in,0.5 mm,,,cotton,8,3,yes,9,sheet');
    expect(costOf('layer 1', thin, poor).amount).toBeUndefined();
  });

  it('is the difference to the board of the job’s own name', () => {
    const shelf = shelfOf('board,white,32 in,40 in,1/16 in,,,wood pulp,6,0,no,7.50,sheet', RAG);
    expect(costOf('layer 1', shelf, poor)).toMatchObject({
      words: '10.50 more: “Rag” in place of “white”',
    });
  });

  it('is nothing where the shelf knows that very board to be sound', () => {
    const shelf = shelfOf('board,White,32 in,40 in,1/16 in,,,cotton,8,3,yes,18,sheet');
    const unknown = kept({}, {}, {});
    const { step } = itemOf(unknown, 'layer 1', shelf);
    expect(step).toMatchObject({
      words: expect.stringContaining('Your shelf has “White” as cotton, pH 8, reserve 3 %') as string,
      fix: { edits: [{ at: 'mat.layers[0].quality', value: SOUND }] },
      cost: { words: 'nothing to pay' },
    });
    // The judgement itself is of what the job says.
    expect(careOf(unknown, shelf).grade).toBeUndefined();
  });

  it('asks of a board for a cyanotype what a cyanotype asks', () => {
    const job = kept({ kind: 'cyanotype' }, {}, SOUND);
    expect(costOf('layer 1', shelfOf(RAG), job).amount).toBeUndefined();
    const neutral = shelfOf(RAG, 'board,Unbuffered,32 in,40 in,1/16 in,,,cotton,7,0,yes,21,sheet');
    expect(costOf('layer 1', neutral, job).words).toContain('21.00 for “Unbuffered”');
    expect(itemOf(job, 'layer 1').step!.fix!.edits).toContainEqual({ at: 'mat.layers[0].quality', value: NEUTRAL });
  });
});

it('adds up for the next grade, and tells how many steps are not counted', () => {
  const job = kept({}, { glazing: { material: 'glass' }, sealed: false });
  const shelf = shelfOf('glazing,Clear,,,,glass,no,,,,,8,sq ft', 'glazing,Filtered,,,,glass,yes,,,,,20,sq ft');
  const { next } = careOf(job, shelf);
  expect(next!.cost.toString()).toBe('21');
  expect(next!.notCounted).toBe(1);
  expect(careOf(job).next!.notCounted).toBe(2);
});

describe('of all steps together', () => {
  const read = readShelf(readFileSync('resources/shelf.csv', 'utf8'));
  if (!read.ok) throw new Error('the shelf can be read');
  const shelf = read.value;

  it('counts one sheet once where it gives several pieces', () => {
    const white = { board: 'Prussian blue', quality: { fibre: 'wood pulp', ph: 6 } } as const;
    const job = { ...kept({}, { mountBoard: {} }), mat: { layers: [white, white] } };
    const { steps, cost } = careOf(job, shelf).next!;
    // Both layers come from one sheet of 13.50, the mount board from one of 8.00; all three from one sheet of the latter.
    expect(steps.map(({ step }) => step.cost.amount?.toString())).toEqual(['0', '-13.5', '0']);
    expect(cost.toString()).toBe('-13.5');
    expect(steps[0]!.step.cost.words).toBe(
      'nothing more: “Mount board” in place of “Prussian blue”, bought together with mount board',
    );
  });

  it('is the difference of what the pieces cost with every counted step done, and now', () => {
    let counted = 0;
    fc.assert(
      fc.property(builds, (build) => {
        const { job, layout } = planned(build);
        const { next } = careOf(build, shelf);
        if (!next) return;
        const edits = next.steps.flatMap(({ step }) => (step.cost.amount ? (step.fix?.edits ?? []) : []));
        const done = planned(setAll(written(build), edits));
        counted += next.steps.filter(({ step }) => step.taken && step.cost.amount).length;
        const difference = jobCosts(done.job, done.layout, shelf).counted.minus(jobCosts(job, layout, shelf).counted);
        expect(next.cost.toString()).toBe(difference.toString());
      }),
    );
    expect(counted).toBeGreaterThan(0);
  });
});
