/** What hangs, weighed or reckoned: told as the least there is where it is not whole, and never as none. */
import { describe, expect, it } from 'vitest';
import { hangingWords } from '../../../src/core/hanging/words/hanging-words';
import type { Contents } from '../open';
import { askOf, FERN, hung, problemOf, problemsOf, shelf } from './hung';

const hanging = (said: Contents['hanging']): Contents => ({ ...FERN, hanging: said });

describe('the weight', () => {
  const parts = { counted: { least: 1, nominal: 1.5, greatest: 2 }, notCounted: ['the moulding'] };

  it('is that of the scale, else that of the parts with what they leave out, never 0', () => {
    expect(hung(hanging({ weight: '3 kg' }), { weighed: parts }).hanging.weight).toMatchObject({ source: 'weighed', kg: { greatest: 3 } });
    expect(hung(FERN, { weighed: parts }).hanging.weight).toMatchObject({ source: 'reckoned', kg: parts.counted });
    expect(hung(FERN).hanging.weight).toEqual({ source: 'unknown', notCounted: [] });
    const nothing = { counted: { least: 0, nominal: 0, greatest: 0 }, notCounted: ['all of it'] };
    expect(hung(FERN, { weighed: nothing }).hanging.weight.kg).toBeUndefined();
  }); // prettier-ignore

  it('that is not whole asks to be weighed', () => {
    const { message } = problemOf(FERN, 'weight-not-known', { weighed: parts });
    expect(message).toMatch(/the moulding is not counted\. Every load is more/);
    expect(problemOf(FERN, 'weight-not-known').message).toMatch(/has not been weighed/);
    expect(problemsOf(hanging({ weight: '3 kg' }), { weighed: parts })).toEqual([]);
  });

  it('that is not whole is told as the least there is, with what is missing, and so is every load', () => {
    const told = (more: object) => {
      const contents = hanging({ hanger: 'rings and wire', hook: { load: '1 lb' }, ...more });
      const { frame } = hangingWords(askOf(contents, { weighed: parts }), hung(contents, { weighed: parts }));
      return frame.flatMap(({ rows }) => rows);
    };
    const rows = told({});
    expect(rows.find(({ label }) => label === 'Weight')).toMatchObject({
      value: 'at least 4.4 lb',
      how: expect.stringMatching(/^without the moulding, which is not known;/) as string,
    });
    const words = rows.map(({ value, how }) => `${value}. ${how}`).filter((row) => /x the weight|carries/.test(row));
    expect(words.length).toBeGreaterThan(8);
    for (const row of words) expect(row).toMatch(/at least [\d.]+ (lb|oz)/);
    expect(rows.find(({ label }) => label === 'Hook')!.how).toMatch(/without the moulding/);
    const whole = told({ weight: '2 kg' });
    expect(whole.find(({ label }) => label === 'Weight')).toMatchObject({ value: '4.4 lb', how: 'weighed' });
    expect(whole.some(({ value, how }) => /at least [\d.]+ (lb|oz)/.test(value + how))).toBe(false);
  });

  it('that is not whole is said so in every warning about a rating', () => {
    const hook = hanging({ hanger: 'rings and wire', hook: { load: '1 lb' } });
    const over = problemOf(hook, 'over-rated-load', { weighed: parts });
    expect(over.message).toMatch(/at least 2\.2 lb at worst.*without the moulding/);
    expect(over.remedy).toMatch(/more than 2\.2 lb, once it is weighed whole/);
    const heavy = { counted: { least: 25, nominal: 25, greatest: 25 }, notCounted: ['the frame'] };
    const unfit = problemOf(hanging({ hanger: 'rings and wire' }), 'hanger-unfit', { weighed: heavy });
    expect(unfit.message).toMatch(/weighs at least 55\.1 lb; the weight is without the frame/);
  });

  it('that is not whole has the strongest taken from the shelf, since no lighter one is known to hold', () => {
    const hooks = shelf('kind,name,load\nhook,Small,5 lb\nhook,Large,50 lb\n');
    const hookFor = (notCounted: string[]) =>
      hung(hanging({ hanger: 'rings and wire' }), { shelf: hooks, weighed: { ...parts, notCounted } }).hanging.carried.find(({ part }) => part === 'hook')?.name; // prettier-ignore
    expect([hookFor([]), hookFor(['the moulding'])]).toEqual(['Small', 'Large']);
  });

  it('counts at its greatest', () => {
    const { carried } = hung(hanging({ hanger: 'rings and wire' }), { weighed: parts }).hanging;
    for (const one of carried) expect(one.kg).toBeCloseTo(2 * one.share, 12);
  });
});
