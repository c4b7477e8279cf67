/** What a job can't say: light and hinges, with the numbers of the guidance. */
import { expect, it } from 'vitest';
import { hoursOfLight, LIGHT } from '../../../src/core/care/advice';
import { SOURCES, sourceText } from '../../../src/core/care/sources';
import { careOf, kept } from './kept';

const told = (...given: Parameters<typeof kept>) => careOf(kept(...given)).advice.map(({ words }) => words).join('\n'); // prettier-ignore

// Science Museum of Minnesota (seen): very sensitive 50 lux and 12,000 lux h a year, sensitive 150 lux and 100,000.
it('light uses up its dose in so many hours', () => {
  expect(hoursOfLight(LIGHT['very sensitive'])).toBe(240);
  expect(hoursOfLight(LIGHT.sensitive)).toBeCloseTo(666.67, 2);
  // Reciprocity, as a lighting handbook has it: 50 lx x 10 h = 250 lx x 2 h.
  expect(hoursOfLight({ lux: 50, dose: 500 })).toBe(5 * hoursOfLight({ lux: 250, dose: 500 }));
});

it('paper and cloth are told the stricter light, paintings the other', () => {
  expect(told()).toMatch(
    /at most 50 lux, and 12,000 lux hours in a year, which is 240 hours .* or 30 days of eight hours/,
  );
  // Texas Association of Museums (quoted).
  expect(told()).toMatch(/75 µW\/lm, better 0 to 10; no more than three months/);
  const canvas = told({ kind: 'painting on canvas' });
  expect(canvas).toMatch(/at most 150 lux, and 100,000 lux hours in a year, which is 666 hours/);
  expect(canvas).not.toMatch(/50 lux,.*12,000|hinges/);
});

// LC, Matting and Hinging Works of Art on Paper (seen); the map from CoOL DistList 2008/0732 (quoted).
it('hinges are at least two, and of a very large sheet a published example is told', () => {
  expect(told()).toMatch(/At least two hinges/);
  expect(told()).not.toMatch(/eight hinges/);
  const map = { ...kept({ size: '50 x 50 in' }), frame: { size: '60 x 60 in' } };
  expect(careOf(map).advice.some(({ words }) => /eight hinges of 4 x 4 in/.test(words))).toBe(true);
});

it('every source says how surely it is known', () => {
  for (const source of Object.values(SOURCES)) {
    expect(sourceText(source)).toMatch(/\((seen|quoted|from memory)\)$|^common practice, no source$/);
  }
  expect(sourceText(SOURCES.factsGap)).toBe(
    'FACTS, Standard Guide for Maximum Preservation Framing, cl. 10.01 (quoted)',
  );
});
