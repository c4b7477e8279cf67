/** Cautions of hanging: which are said of which frame, and where they come from. */
import { describe, expect, it } from 'vitest';
import { cautionsFor } from '../../../src/core/hanging/cautions';
import type { Contents } from '../open';
import { askOf, FERN, hung } from './hung';

const hanging = (said: Contents['hanging'], more: Contents = {}): Contents => ({ ...FERN, ...more, hanging: said });

describe('the cautions', () => {
  const topics = (said: Contents['hanging'], more: Contents = {}) => {
    const { job } = askOf(hanging(said, more));
    const { weight } = hung(hanging(said, more)).hanging;
    return cautionsFor({ hanging: job.hanging, glazing: job.package.glazing, weight }).map(({ topic }) => topic);
  };

  it('of every frame: lifting, cables, tools, fittings, ratings', () => {
    const always = ['lifting', 'cables', 'tools', 'fittings', 'ratings'];
    expect(topics({}, { package: { glazing: { material: 'acrylic' } } })).toEqual(always);
    expect(topics({})).toEqual(['glass', ...always]);
  });

  it.each([
    [['plaster'], ['plaster']],
    [['masonry'], ['masonry']],
    [['stud wall'], ['studs']],
    [['above a bed or seat'], ['over-bed']],
    [['above heat'], ['heat']],
    [['children'], ['children']],
    [['earthquake country'], ['earthquake-light', 'earthquake']],
  ] as const)('with %j: %j', (surroundings, said) => {
    const usual = topics({});
    expect(topics({ surroundings: [...surroundings] }).filter((topic) => !usual.includes(topic))).toEqual([...said].sort((a, b) => topics({ surroundings: [...surroundings] }).indexOf(a) - topics({ surroundings: [...surroundings] }).indexOf(b))); // prettier-ignore
  });

  // Earthquake Country Alliance, hanging objects: under 20 lb, to 50 lb, over 50 lb.
  it.each([
    ['20 lb', 'earthquake-light'],
    ['20 lb 1 oz', 'earthquake-heavy'],
    ['50 lb', 'earthquake-heavy'],
    ['50 lb 1 oz', 'professional'],
  ])('where the earth quakes, of %s: %s', (weight, topic) => {
    const found = topics({ weight, surroundings: ['earthquake country'] });
    const three = ['earthquake-light', 'earthquake-heavy', 'professional'];
    expect(found.filter((one) => three.includes(one))).toEqual([topic]);
  });

  it('come from somewhere, or are common practice', () => {
    const all = { surroundings: ['plaster', 'masonry', 'stud wall', 'above a bed or seat', 'above heat', 'earthquake country', 'children'] } as const; // prettier-ignore
    const { cautions } = hung(hanging({ ...all, surroundings: [...all.surroundings] })).hanging;
    const sourced = cautions.filter(({ source }) => source !== undefined).map(({ topic }) => topic);
    expect(sourced).toEqual(
      expect.arrayContaining(['over-bed', 'earthquake', 'glass', 'lifting', 'studs', 'fittings']),
    );
    expect(new Set(cautions.map(({ topic }) => topic)).size).toBe(cautions.length);
  });
});
