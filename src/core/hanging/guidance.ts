/** Published and common guidance on heights and gaps, shown beside what the user has chosen and never in its place. */

export interface Guidance {
  readonly about: 'centre' | 'gap' | 'reach' | 'hanger';
  readonly words: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';

export const GUIDANCE: readonly Guidance[] = [
  { about: 'centre', words: 'middles at 57 in (1448 mm), or 56 to 60 in', source: PRACTICE },
  {
    about: 'centre',
    words: 'middles at 58 in (1473 mm), 5 to 7 in (127 to 178 mm) between works',
    source: 'Museum of the City of New York, 31 January 2017',
  },
  {
    about: 'centre',
    words: 'seen from a wheelchair: cases 33 to 40 in (838 to 1016 mm) high, looked into at 36 in (914 mm) at most',
    source: 'National Endowment for the Arts, Design for Accessibility, p. 117',
  },
  {
    about: 'gap',
    words: '8 in (203 mm) or more above furniture, 3 to 6 in (76 to 152 mm) between works',
    source: 'Sacher and LaGasa, as quoted',
  },
  {
    about: 'reach',
    words:
      'no more than 4 in (100 mm) off the wall where its lower edge is 27 to 80 in (686 to 2032 mm) above the floor',
    source: 'ADAAG 4.4.1',
  },
  { about: 'hanger', words: 'rings a quarter to a third of the height below the top', source: PRACTICE },
  {
    about: 'hanger',
    words: 'rings a fifth of the height down, at least 3 1/2 in (89 mm); wire 2 in (51 mm) or more below the top',
    source: PRACTICE,
  },
];
