/** The judgement of the whole: the least of its items, no grade without known boards, steps that do what they promise. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { leastOf, reaches } from '../../../src/core/care/grade';
import { judgeCare, type Care } from '../../../src/core/care/judge-care';
import { setAll } from '../../../src/core/job/edit';
import type { Contents } from '../open';
import { planned, written } from '../open';
import { BETTER, builds, LESS_KNOWN } from './arbitrary-builds';
import { careOf, kept, rank, SOUND } from './kept';

const gradesOf = ({ items }: Care) => new Map(items.map(({ key, grade }) => [key, grade]));

describe('the whole', () => {
  test('reaches the highest grade where every item does, and has no further steps', () => {
    const care = careOf(kept());
    expect(care).toMatchObject({ grade: 'conservation', holding: [], unknown: [], cautions: [] });
    expect(care.next).toBeUndefined();
  });

  test('is the least of its items, which are named', () => {
    const care = careOf(kept({}, { sealed: false, dustCover: true, glazing: { material: 'glass' } }));
    expect(care.grade).toBe('protective');
    expect(care.holding.map(({ key }) => key)).toEqual(['glazing', 'dust']);
    expect(care.next).toMatchObject({ grade: 'conservation', notCounted: 2 });
    expect(care.next!.steps.map(({ item }) => item.key)).toEqual(['glazing', 'dust']);
  });

  test('has no grade while it is not said what a board is made of', () => {
    const { mat: _, ...job } = kept();
    const care = careOf(job);
    expect(care.grade).toBeUndefined();
    expect(care.unknown.map(({ key }) => key)).toEqual(['layer 1']);
    expect(care.next).toMatchObject({ grade: 'protective' });
    const mount = careOf(kept({}, { mountBoard: {} }));
    expect(mount.grade).toBeUndefined();
    expect(mount.unknown.map(({ key }) => key)).toEqual(['mount board']);
    // A pH alone does not say what it is made of.
    expect(careOf(kept({}, { mountBoard: { quality: { ph: 8, reserve: 3 } } })).grade).toBeUndefined();
  });

  test('of a job that says nothing has none, and names what it would take', () => {
    const care = careOf({ pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' } });
    expect(care.grade).toBeUndefined();
    expect(care.next!.steps.map(({ item }) => item.key)).toEqual(['layer 1', 'mount board', 'hinging']);
  });

  it('is at every build the least of what counts, or nothing', () => {
    fc.assert(
      fc.property(builds, (build) => {
        const care = careOf(build);
        const least = leastOf(care.items.filter(({ counts }) => counts).map(({ grade }) => grade));
        expect(care.grade).toBe(care.unknown.length > 0 ? undefined : least);
        expect(care.holding.every(({ grade }) => grade === least)).toBe(true);
        expect(care.next === undefined).toBe(least === 'conservation');
        for (const { item, step } of care.next?.steps ?? []) {
          expect(reaches(item.grade, care.next!.grade)).toBe(false);
          expect(reaches(step.reaches, care.next!.grade)).toBe(true);
        }
      }),
    );
  });
});

describe('order of builds', () => {
  it('what is better never lowers the grade, nor that of any item', () => {
    fc.assert(
      fc.property(builds, fc.constantFrom(...Object.entries(BETTER)), (build, [what, better]) => {
        const [before, after] = [careOf(build), careOf(better(build))];
        expect({ what, lower: rank(after.grade) < rank(before.grade) }).toEqual({ what, lower: false });
        const grades = gradesOf(after);
        for (const { key, grade } of before.items) {
          expect({ what, key, lower: rank(grades.get(key) ?? grade) < rank(grade) }).toEqual({
            what,
            key,
            lower: false,
          });
        }
      }),
      { numRuns: 400 },
    );
  });

  it('what is no longer known never raises the grade, nor that of any item', () => {
    fc.assert(
      fc.property(builds, fc.constantFrom(...Object.entries(LESS_KNOWN)), (build, [what, less]) => {
        const [before, after] = [careOf(build), careOf(less(build))];
        expect({ what, higher: rank(after.grade) > rank(before.grade) }).toEqual({ what, higher: false });
        const grades = gradesOf(before);
        for (const { key, grade } of after.items) {
          expect({ what, key, higher: rank(grade) > rank(grades.get(key) ?? grade) }).toEqual({
            what,
            key,
            higher: false,
          });
        }
      }),
      { numRuns: 400 },
    );
  });
});

describe('steps', () => {
  it('lift their item to what they promise, once the job says so', () => {
    let tried = 0;
    fc.assert(
      fc.property(builds, (build) => {
        for (const { key, step } of careOf(build).items) {
          if (!step?.fix) continue;
          tried += 1;
          const after = careOf(setAll(written(build), step.fix.edits));
          const item = after.items.find((one) => one.key === key);
          expect({ key, grade: item?.grade }).toEqual({ key, grade: step.reaches });
        }
      }),
    );
    expect(tried).toBeGreaterThan(50);
  });

  it('lead to the next grade, taken together, and so to the highest', () => {
    let highest = 0;
    fc.assert(
      fc.property(builds, (build) => {
        let job = written(build) as Contents;
        for (let round = 0; round < 4; round += 1) {
          const { next } = careOf(job);
          if (!next) break;
          if (next.steps.some(({ step }) => !step.fix)) return;
          job = setAll(
            written(job),
            next.steps.flatMap(({ step }) => step.fix!.edits),
          );
          expect(reaches(careOf(job).grade ?? 'decorative', next.grade)).toBe(true);
        }
        expect(careOf(job).grade).toBe('conservation');
        highest += 1;
      }),
    );
    expect(highest).toBeGreaterThan(5);
  });
});

it('does not depend on the units that a job is written in', () => {
  fc.assert(
    fc.property(builds, (build) => {
      const all = (['in', 'mm', 'cm'] as const).map((units) => careOf({ ...build, units }));
      for (const care of all) {
        expect(care.grade).toBe(all[0]!.grade);
        expect([...gradesOf(care)]).toEqual([...gradesOf(all[0]!)]);
        expect(care.next?.steps.map(({ step }) => step.reaches)).toEqual(
          all[0]!.next?.steps.map(({ step }) => step.reaches),
        );
      }
    }),
  );
});

describe('cautions', () => {
  const words = (picture: Parameters<typeof kept>[0]) => careOf(kept(picture)).cautions.map((one) => one.words);
  // Library of Congress guide, CCAHA, CCI Notes 10/8 (seen): damaged, double-sided works, parchment: a conservator.
  it('send what is valuable, fragile, old or double-sided to a conservator, whatever the grade', () => {
    expect(words({ concerns: ['old', 'double-sided'] })[0]).toMatch(
      /^“Chart” is said to be double-sided and old: ask a conservator/,
    );
    expect(careOf(kept({ concerns: ['valuable'] })).grade).toBe('conservation');
    expect(words({})).toEqual([]);
  });

  it.each([
    ['pastel or charcoal', /conservator mount them/],
    ['document', /parchment.*conservator/],
    ['textile', /textile conservator/],
  ] as const)('are said of %s', (kind, wanted) => expect(words({ kind })[0]).toMatch(wanted));

  it('name a few of many pictures and count the rest', () => {
    const one = { size: '3 x 4 in', overlap: 'covers 1/8 in', concerns: ['old' as const] };
    const { cautions } = careOf({
      ...kept(),
      frame: { size: '60 x 20 in' },
      pictures: Array.from({ length: 8 }, () => one),
    });
    expect(cautions).toHaveLength(1);
    expect(cautions[0]!.words).toMatch(
      /^Picture 1, picture 2, picture 3, picture 4, picture 5 and 3 more are said to be old/,
    );
  });
});

it('judges what is in the frame only: a picture without a window is in none', () => {
  const job = kept();
  const two = {
    ...job,
    pictures: [...job.pictures!, { size: '8 x 10 in', kind: 'pastel or charcoal' as const }],
    windows: '1',
  };
  expect(careOf(two).items.map(({ key }) => key)).not.toContain('static');
});

it('needs no picture: windows alone are judged as paper', () => {
  const { layout, job } = planned({
    ...kept(),
    pictures: [],
    windows: { kind: 'window', size: '6 x 8 in' },
    mat: { layers: [{ thickness: '1/16 in', quality: SOUND }] },
  });
  expect(judgeCare(job, layout).grade).toBe('conservation');
});
