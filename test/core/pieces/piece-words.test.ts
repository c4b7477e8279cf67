/** Weights and costs in words: what is not known is said, and never shown as nothing. */
import { describe, expect, it } from 'vitest';
import { money } from '../../../src/core/money';
import { costRows, densitySources, rangeText, weightRows, piecesCaution } from '../../../src/core/pieces/piece-words';
import type { Weighed } from '../../../src/core/pieces/weight';

const unknown = { name: 'Frame', how: 'weigh it' };
const glass = {
  name: 'Glazing',
  kg: { least: 1.2, nominal: 1.29, greatest: 1.4 },
  how: '2.5 g/cm³, soda-lime glass',
  source: 'EN 572-1',
};

describe('weights', () => {
  it('stand between their bounds, or alone where there is one value', () => {
    expect(rangeText(glass.kg, 'mm')).toBe('1.29 kg (1.20 kg to 1.40 kg)');
    expect(rangeText({ least: 2, nominal: 2, greatest: 2 }, 'in')).toBe('4.4 lb');
  });

  it('of which none is known are no weight of 0', () => {
    const none: Weighed = {
      items: [unknown],
      counted: { least: 0, nominal: 0, greatest: 0 },
      notCounted: ['the frame'],
    };
    expect(weightRows(none, 'mm')).toEqual([
      ['Frame', 'not counted', 'weigh it'],
      ['Counted', 'nothing', 'without the frame, which is not known'],
    ]);
  });

  it('say what they lack, and on whose word they are', () => {
    const some: Weighed = {
      items: [glass, glass, unknown],
      counted: glass.kg,
      notCounted: ['the frame', 'the backing'],
    };
    expect(weightRows(some, 'mm').at(-1)?.[2]).toBe('without the frame and the backing, which are not known');
    expect(weightRows({ ...some, notCounted: [] }, 'mm').at(-1)?.[2]).toBe('everything is counted');
    expect(densitySources(some)).toEqual(['2.5 g/cm³, soda-lime glass: EN 572-1.']);
  });
});

describe('costs', () => {
  it('are rounded to hundredths only where they are shown', () => {
    const rows = costRows({
      lines: [
        { what: 'Glazing', pieces: ['Glazing'], amount: money('3.905'), basis: '1 of 16 x 20 in' },
        { what: 'Dust cover', pieces: ['Dust cover'], basis: 'not among the things of a shelf' },
      ],
      counted: money('3.905'),
      notCounted: ['Dust cover'],
    });
    expect(rows).toEqual([
      ['Glazing', '3.91', '1 of 16 x 20 in'],
      ['Dust cover', 'not counted', 'not among the things of a shelf'],
      ['Counted', '3.91', 'without dust cover'],
      [
        'Basis',
        'what it takes',
        expect.stringMatching(/^whole sheets where the price is by the sheet.*shares of a sheet/),
      ],
    ]);
  });

  it('of nothing that has a price count nothing, which is no price', () => {
    const line = { what: 'Moulding', pieces: [], basis: 'no price' };
    const [, counted] = costRows({ lines: [line], counted: money('0'), notCounted: ['Moulding'] });
    expect(counted).toEqual(['Counted', 'nothing', 'without moulding']);
    const free = { ...line, amount: money('0') };
    expect(costRows({ lines: [free], counted: money('0'), notCounted: [] })[1]![1]).toBe('0.00');
  });
});

describe('cautions', () => {
  it('tell of glass only where glazing is cut', () => {
    expect(piecesCaution([{ kind: 'glazing' }, { kind: 'backing' }])).toContain('Glass breaks');
    expect(piecesCaution([{ kind: 'backing' }])).not.toContain('Glass');
    expect(piecesCaution([])).toContain('saw');
  });
});
