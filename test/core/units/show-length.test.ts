/** Showing lengths: to the step, marked where rounded, and adding up where they stand together. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  markBeside,
  showSetting,
  decimalText,
  lengthText,
  readLength,
  showLength,
  showTogether,
  sizeText,
  stepLength,
  type Showing,
} from '../../../src/core/units';

const inches = (inchStep: Showing['inchStep']): Showing => ({ unit: 'in', inchStep, metricStep: 0.5 });
const metric = (metricStep: Showing['metricStep'], unit: 'mm' | 'cm' = 'mm'): Showing => ({
  unit,
  inchStep: 16,
  metricStep,
});
const SHOWINGS: readonly Showing[] = [
  ...([8, 16, 32, 64] as const).map(inches),
  ...([1, 0.5, 0.1] as const).map((step) => metric(step)),
  ...([1, 0.5, 0.1] as const).map((step) => metric(step, 'cm')),
];
const showings = fc.constantFrom(...SHOWINGS);
const lengths = fc.double({ min: -3000, max: 3000, noNaN: true });

describe('to the step', () => {
  it.each([
    [15.99 * 25.4, inches(16), '16'],
    [5.19 * 25.4, inches(8), '5 1/4'],
    [15.99 * 25.4, inches(64), '15 63/64'],
    [165.1, inches(8), '6 1/2'],
    [25.4 / 32, inches(16), '1/16'],
    [25.4 / 64, inches(16), '0'],
    [-165.1, inches(16), '−6 1/2'],
    [-6.35, inches(16), '−1/4'],
    [0, inches(16), '0'],
    [165.1, metric(0.1), '165.1'],
    [165.1, metric(0.5), '165'],
    [165.25, metric(0.5), '165.5'],
    [165.1, metric(1), '165'],
    [100, metric(0.1), '100'],
    [0.3, metric(0.1), '0.3'],
    [165.1, metric(0.1, 'cm'), '16.51'],
    [165.1, metric(0.5, 'cm'), '16.5'],
    [100, metric(1, 'cm'), '10'],
  ])('%s mm in %o reads %s', (mm, showing, text) => {
    const shown = showLength(mm, showing);
    expect(shown.text).toBe(text);
    expect(shown.withUnit).toBe(`${text} ${showing.unit}`);
  });

  it('gives the parts of a fraction in lowest terms', () => {
    expect(showLength(-2.75 * 25.4, inches(16)).parts).toEqual({
      sign: '−',
      whole: '2',
      fraction: { numerator: 3, denominator: 4 },
    });
    expect(showLength(12.7, inches(64)).parts).toEqual({
      sign: '',
      whole: '',
      fraction: { numerator: 1, denominator: 2 },
    });
    expect(showLength(10.5, metric(0.5)).parts).toEqual({ sign: '', whole: '10.5' });
  });

  it('is never further off than half a step', () => {
    fc.assert(
      fc.property(lengths, showings, (mm, showing) => {
        expect(Math.abs(showLength(mm, showing).value - mm)).toBeLessThanOrEqual(stepLength(showing) / 2 + 1e-6);
      }),
    );
  });
});

describe('marked as rounded', () => {
  it('beyond a thousandth of an inch, and only then', () => {
    const step = inches(16);
    expect(showLength(25.4 + 0.0253, step).rounded).toBe(false);
    expect(showLength(25.4 + 0.0255, step).rounded).toBe(true);
    expect(showLength(25.4 - 0.0255, step).rounded).toBe(true);
    expect(lengthText(25.4 + 0.0253, step)).toBe('1 in');
    expect(lengthText(25.4 + 0.0255, step)).toBe('≈ 1 in');
  });

  it('by what the text itself says', () => {
    fc.assert(
      fc.property(lengths, showings, (mm, showing) => {
        const shown = showLength(mm, showing);
        const said = readLength(shown.withUnit, 'mm');
        expect(said.ok && shown.rounded === Math.abs(said.mm - mm) > 0.0254).toBe(true);
        expect(lengthText(mm, showing).startsWith('≈')).toBe(shown.rounded);
      }),
    );
  });

  it('once for a size of two sides in one unit', () => {
    expect(sizeText({ width: 254, height: 203.2 }, inches(16))).toBe('10 x 8 in');
    expect(sizeText({ width: 254, height: 203 }, inches(16))).toBe('≈ 10 x 8 in');
    expect(sizeText({ width: 210, height: 297 }, metric(0.5))).toBe('210 x 297 mm');
  });
});

describe('reading what was shown', () => {
  it('is the shown value, exactly', () => {
    fc.assert(
      fc.property(lengths, showings, fc.constantFrom('in', 'mm', 'cm'), (mm, showing, unit) => {
        const shown = showLength(mm, showing);
        const withUnit = readLength(shown.withUnit, unit as 'in');
        const bare = readLength(shown.text, showing.unit);
        expect(withUnit.ok && withUnit.mm === shown.value).toBe(true);
        expect(bare.ok && bare.mm === shown.value).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('and showing it again changes nothing', () => {
    fc.assert(
      fc.property(lengths, showings, (mm, showing) => {
        const once = showLength(mm, showing);
        expect(showLength(once.value, showing)).toEqual({ ...once, rounded: false });
      }),
    );
  });

  it('toggling units a hundred times changes nothing', () => {
    fc.assert(
      fc.property(lengths, showings, (mm, showing) => {
        // What is written stays; each toggle only reads it anew and shows it in the other unit.
        const written = showLength(mm, showing).withUnit;
        const shown = new Map<string, Set<string>>();
        for (let turn = 0; turn < 100; turn += 1) {
          const now = SHOWINGS[turn % SHOWINGS.length] as Showing;
          const reading = readLength(written, now.unit);
          const text = reading.ok ? lengthText(reading.mm, now) : reading.message;
          const key = JSON.stringify(now);
          shown.set(key, (shown.get(key) ?? new Set()).add(text));
        }
        expect([...shown.values()].map((texts) => texts.size)).toEqual(SHOWINGS.map(() => 1));
        const last = readLength(written, 'cm');
        expect(last.ok && showLength(last.mm, showing).withUnit).toBe(written);
      }),
    );
  });
});

describe('shown together', () => {
  const parts = fc.array(fc.double({ min: 0.01, max: 900, noNaN: true }), { minLength: 1, maxLength: 9 });
  const inSteps = (mm: number, showing: Showing) => Math.round(mm / stepLength(showing));

  it('adds up to the whole as shown', () => {
    fc.assert(
      fc.property(parts, showings, (lengths, showing) => {
        const total = lengths.reduce((a, b) => a + b, 0);
        const shown = showTogether(lengths, total, showing);
        const said = shown.map(({ withUnit }) => readLength(withUnit, 'mm'));
        const sum = said.reduce((steps, reading) => steps + (reading.ok ? inSteps(reading.mm, showing) : NaN), 0);
        expect(sum).toBe(inSteps(showLength(total, showing).value, showing));
      }),
      { numRuns: 1000 },
    );
  });

  it('puts the remainder on the last alone', () => {
    fc.assert(
      fc.property(parts, showings, (lengths, showing) => {
        const total = lengths.reduce((a, b) => a + b, 0);
        const shown = showTogether(lengths, total, showing);
        expect(shown.slice(0, -1)).toEqual(lengths.slice(0, -1).map((length) => showLength(length, showing)));
        const last = shown.at(-1);
        expect(last?.rounded).toBe(Math.abs((last?.value ?? NaN) - (lengths.at(-1) ?? NaN)) > 0.0254);
      }),
    );
  });

  it('thirds of 10 in: 3 5/16, 3 5/16 and what remains', () => {
    const third = 254 / 3;
    expect(showTogether([third, third, third], 254, inches(16)).map(({ text }) => text)).toEqual([
      '3 5/16',
      '3 5/16',
      '3 3/8',
    ]);
  });
});

describe('decimals for machines', () => {
  it('have a point, so many digits, and never a minus before nothing', () => {
    expect(decimalText(165.1, 'in', 4)).toBe('6.5000');
    // Half way up, though 50.00625 / 25.4 falls short of it by the last bit of a double.
    expect(decimalText(1.96875 * 25.4, 'in', 4)).toBe('1.9688');
    expect(decimalText(-1.96875 * 25.4, 'in', 4)).toBe('-1.9688');
    expect(decimalText(165.1, 'cm', 3)).toBe('16.510');
    expect(decimalText(-0.00001, 'mm', 3)).toBe('0.000');
    expect(decimalText(-0, 'mm', 0)).toBe('0');
    fc.assert(
      fc.property(lengths, fc.constantFrom('in', 'mm', 'cm'), fc.integer({ min: 0, max: 9 }), (mm, unit, digits) => {
        const text = decimalText(mm, unit as 'in', digits);
        expect(text).toMatch(digits === 0 ? /^-?\d+$/ : new RegExp(String.raw`^-?\d+\.\d{${digits}}$`));
        expect(text).not.toMatch(/^-[0.]+$/);
        const perUnit = { in: 25.4, mm: 1, cm: 10 }[unit as 'in'];
        expect(Math.abs(Number(text) * perUnit - mm)).toBeLessThanOrEqual(perUnit * 10 ** -digits * 0.500001);
      }),
    );
  });
});

it('a setting is told in decimals where the step would round it', () => {
  const showing = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;
  expect(showSetting(1.96875 * 25.4, showing)).toMatchObject({ withUnit: '1 31/32 in', rounded: false });
  expect(showSetting(1.9701 * 25.4, showing)).toMatchObject({ withUnit: '1.970 in', rounded: false });
  expect(showSetting(2.75 * 25.4, showing).withUnit).toBe('2 3/4 in');
  expect(showSetting(37.7, { ...showing, unit: 'mm' }).withUnit).toBe('37.70 mm');
  expect(showSetting(-1.96875 * 25.4, showing).text).toBe('−1 31/32');
  // The nearest mark of a rule beside decimals alone: 1.9701 x 64 = 126.09.
  expect(markBeside(1.9701 * 25.4, showing)?.text).toBe('1 31/32');
  expect(markBeside(1.96875 * 25.4, showing)).toBeUndefined();
  expect(markBeside(37.7, { ...showing, unit: 'mm' })).toBeUndefined();
});
