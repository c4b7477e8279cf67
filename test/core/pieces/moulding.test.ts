/** What a frame takes of its moulding, held against sums worked by hand. */
import { describe, expect, it } from 'vitest';
import { jobPieces } from '../../../src/core/pieces/job-pieces';
import { mouldingRows } from '../../../src/core/pieces/moulding-words';
import type { Moulding } from '../../../src/core/shelf/shelf';
import { planned, type Contents } from '../open';

const IN = 25.4;

function framed(frame: Contents['frame'], kerf = 0, moulding?: Moulding) {
  const { job, layout } = planned({ pictures: [{ size: '4 x 4 in' }], frame });
  return jobPieces(job, layout, { kerf, ...(moulding ? { moulding } : {}) }).moulding;
}

describe('a frame with an opening of 16 x 20 in of 2 in moulding', () => {
  // Common practice, no source: 2 x (w + h) + 8 x width.
  it('takes 88 in by the rule of thumb', () => {
    const { ruleOfThumb, stick, spare } = framed({ size: '16 x 20 in', allowance: 0, lip: 0, mouldingWidth: '2 in' });
    expect(ruleOfThumb / IN).toBeCloseTo(88, 9);
    // Without a lip the opening is the rabbet, and the rule is exact.
    expect(stick / IN).toBeCloseTo(88, 9);
    expect(spare).toBeCloseTo(0, 9);
  });

  it('takes 88 in and its saw cuts when the opening is what one sees through it', () => {
    const { rails, railsLength, stick, ruleOfThumb, spare } = framed({ size: '16 1/2 x 20 1/2 in', allowance: 0, lip: '1/4 in', mouldingWidth: '2 in' }, IN / 8); // prettier-ignore
    expect(rails.map(({ sight }) => sight / IN)).toEqual([expect.closeTo(16, 9), expect.closeTo(20, 9)]);
    expect(rails.map(({ outside }) => outside / IN)).toEqual([expect.closeTo(20, 9), expect.closeTo(24, 9)]);
    expect(railsLength / IN).toBeCloseTo(88, 9);
    expect(stick / IN).toBeCloseTo(89, 9);
    // 2 x (16 1/2 + 20 1/2) + 16.
    expect(ruleOfThumb / IN).toBeCloseTo(90, 9);
    expect(spare / IN).toBeCloseTo(1, 9);
  });
});

describe('rails', () => {
  const made = framed({ size: '11 x 14 in', allowance: '1/8 in', lip: '1/4 in', mouldingWidth: '3/4 in' }, IN / 8);

  it('are as long at the outside, the rabbet and the sight edge as the frame is', () => {
    // Rabbet 11 1/8 x 14 1/8, outside + 2 x (3/4 - 1/4), sight - 2 x 1/4.
    const inches = made.rails.map(({ sides, count, outside, rabbet, sight }) => [sides, count, outside / IN, rabbet / IN, sight / IN]); // prettier-ignore
    expect(inches).toEqual([
      ['top and bottom', 2, 12.125, 11.125, 10.625].map((one) => (typeof one === 'string' ? one : (expect.closeTo(one, 9) as number))), // prettier-ignore
      ['left and right', 2, 15.125, 14.125, 13.625].map((one) => (typeof one === 'string' ? one : (expect.closeTo(one, 9) as number))), // prettier-ignore
    ]);
  });

  it('a mitre of 45 degrees takes the whole width off a rail at either end', () => {
    for (const { outside, sight } of made.rails) expect((outside - sight) / 2).toBeCloseTo(made.section.width, 9);
    expect([made.mitreDegrees, made.cuts]).toEqual([45, 8]);
  });

  it('united inches are width and height of the frame size', () => expect(made.united / IN).toBeCloseTo(25, 9));

  it('say in words what they are and how the stick is reckoned', () => {
    const rows = mouldingRows(made, { unit: 'in', inchStep: 16, metricStep: 0.5 });
    expect(rows).toEqual([
      ['Face', '3/4 in', 'lip 1/4 in'],
      ['United inches', '25 in', 'width + height of the frame size'],
      ['Rails top and bottom', '2 x 12 1/8 in', 'at the outside, long point to long point; 11 1/8 in at the rabbet, 10 5/8 in at the sight edge'], // prettier-ignore
      ['Rails left and right', '2 x 15 1/8 in', 'at the outside, long point to long point; 14 1/8 in at the rabbet, 13 5/8 in at the sight edge'], // prettier-ignore
      ['Mitres', '45°', '8 cuts, 1/8 in each'],
      ['Whole stick', '55 1/2 in', '2 x (11 1/8 + 14 1/8) + 8 x (3/4 − 1/4) + 8 x 1/8'],
      ['Rule of thumb', '56 1/2 in', 'with 8 x the whole width of 3/4 in, no saw cuts: 1 in more than it takes'],
    ]);
  });

  it('closed corners are ordered, not cut', () => {
    const closed = framed({ size: '11 x 14 in', corners: 'closed' });
    expect(mouldingRows(closed, { unit: 'in', inchStep: 16, metricStep: 0.5 }).at(-1)?.[2]).toContain(
      'ordered by its rabbet',
    );
  });
});

it('is the same frame in inches and in millimetres', () => {
  const inches = framed({ size: '16 x 20 in', allowance: '1/8 in', lip: '1/4 in', mouldingWidth: '3/4 in' }, 3);
  const metric = framed(
    { size: '406.4 x 508 mm', allowance: '3.175 mm', lip: '6.35 mm', mouldingWidth: '1.905 cm' },
    3,
  );
  expect(metric.stick).toBeCloseTo(inches.stick, 9);
  expect(metric.rails.map(({ outside }) => outside)).toEqual(
    inches.rails.map(({ outside }) => expect.closeTo(outside, 9) as number),
  );
});

describe('a moulding of the shelf', () => {
  const wide: Moulding = { kind: 'moulding', name: 'Oak', face: 50, lip: 8, depth: 30, rabbetDepth: 14, weight: 0.5 };

  it('takes the place of the job’s own measures', () => {
    const { section, rails } = framed(
      { size: '300 x 400 mm', allowance: '3 mm', lip: '6 mm', mouldingWidth: '20 mm' },
      0,
      wide,
    );
    expect(section).toEqual({ name: 'Oak', width: 50, lip: 8, depth: 30, rabbetDepth: 14, weight: 0.5, corners: 'mitred', colour: '#5b4636' }); // prettier-ignore
    expect(rails.map(({ outside }) => outside)).toEqual([expect.closeTo(303 + 84, 9), expect.closeTo(403 + 84, 9)]);
  });

  it('without a lip of its own has the job’s', () => {
    const { lip: _, ...bare } = wide;
    expect(framed({ size: '300 x 400 mm', lip: '6 mm' }, 0, bare).section.lip).toBe(6);
  });
});
