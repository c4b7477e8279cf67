/** Tongues of board within one window's own outline: told by their true width, and lobes and corners left in peace. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { problemOf, problemsOf, type Contents } from '../open';

const drawn = (path: string, size = '8 x 10 in'): Contents => ({
  frame: { size: '16 x 20 in' },
  windows: { kind: 'window', use: 'empty', size, shape: { kind: 'outline', path } },
});
const codes = (contents: Contents) => problemsOf(contents).map(({ code }) => code);

describe('a tongue of board', () => {
  it.each([
    // Drawn 10 x 10 and made 8 x 10 in: a tongue 0.5 high reaches in over four fifths of the width.
    ['5.5', '1/2 in'],
    ['5.75', '1/4 in'],
  ])('between y 6 and y %s is %s wide', (y, width) => {
    const problem = problemOf(drawn(`M0 0H10V10H0V6H8V${y}H0Z`), 'tongue-narrow');
    expect(problem).toMatchObject({ severity: 'warning', at: 'windows', value: width, limit: '3/4 in' });
  });

  it('between curves is as wide as where they come nearest', () => {
    // Arcs of 25 mm over chords of 40 bulge by 25 - sqrt(25² - 20²) = 10 mm from either side of a slot of 30.
    const path = 'M0 0H200V200H115V60A25 25 0 0 1 115 20H85A25 25 0 0 1 85 60V200H0Z';
    const problem = problemOf({ units: 'mm', ...drawn(path, '200 x 200 mm') }, 'tongue-narrow');
    expect(problem.value).toBe('10 mm');
  });

  it('of 3/4 in and more is none, nor is a short lobe, a corner or the tip between the arms of a star', () => {
    expect(codes(drawn('M0 0H10V10H0V6H8V5.2H0Z'))).not.toContain('tongue-narrow');
    expect(codes(drawn('M0 0H10V10H0V6H0.6V5.5H0Z'))).not.toContain('tongue-narrow');
    const star = Array.from({ length: 10 }, (_, index) => {
      const radius = index % 2 === 0 ? 100 : 45;
      return `${radius * Math.sin((index * Math.PI) / 5)} ${-radius * Math.cos((index * Math.PI) / 5)}`;
    });
    expect(codes(drawn(`M${star.join('L')}Z`))).not.toContain('tongue-narrow');
    const sample = JSON.parse(readFileSync('resources/samples/5-chart-and-caption.json', 'utf8')) as Contents;
    expect(codes(sample)).not.toContain('tongue-narrow');
  });
});
