/** Runs rows of practitioners' cases: every number named in a row must come out exactly. */
import { expect, it } from 'vitest';
import { problemsOf } from '../core/open';
import { numbersOf, type Case } from './case';

/** Doubles may differ in their last bits; a ruler can't tell a millionth. */
const DIGITS = 9;

export function checkCases(cases: readonly Case[]): void {
  it.each(cases.map((row) => [`${row.has} (${row.source})`, row] as const))('%s', (_name, row) => {
    const { says = [], never = [], words = [], sizeName, ...numbers } = row.expected;
    if (Object.keys(numbers).length > 0 || sizeName !== undefined) {
      const found = numbersOf(row);
      for (const [name, wanted] of Object.entries(numbers)) {
        const got = [found[name as keyof typeof numbers]].flat();
        expect(got, name).toHaveLength([wanted].flat().length);
        [wanted].flat().forEach((value, index) => expect(got[index], name).toBeCloseTo(value, DIGITS));
      }
      if (sizeName !== undefined) expect(found.sizeName).toBe(sizeName);
    }
    const problems = problemsOf({ units: row.unit, ...row.job });
    const codes = problems.map(({ code }) => code);
    for (const code of says) expect(codes).toContain(code);
    for (const code of never) expect(codes).not.toContain(code);
    for (const pattern of words) expect(problems.map(({ message }) => message).join('\n')).toMatch(pattern);
  });
}
