/** The depth of frames in a show: too shallow ones are not chosen, tight and unmeasured ones are told. */
import { describe, expect, it } from 'vitest';
import { isHung } from '../../../src/core/show/print-list';
import { frameText, whyText } from '../../../src/core/show/show-words';
import { codesOf, frameOf, frames, list, pattern, pictures, placeOf, plain, plan, shelf, whyOf } from './shows';

describe('how deep a frame is', () => {
  const head = 'name,width,height,rabbet depth,build,grooves,price,note\n';
  const show = pictures('Fern,8 in,10 in', 'Kite,8 in,10 in');
  const row = (name: string, depth: string, rest = ',') => `${name},11 in,14 in,${depth},${rest},1,\n`;
  // Glass, mat, sheet with hinges, mount board, foam board and points: 14.0625 mm as named, 0.554 in; 14.94 at its thickest.
  const whys = (rows: string) => whyOf(plan(show, plain, shelf(head + rows)), 'Fern');

  it('one that is known to be too shallow is never taken, however cheap, and is told where none is left', () => {
    const both = `${row('Shallow', '14 mm')}Deep,11 in,14 in,5/8 in,,,99,\n`;
    expect(frameOf(plan(show, plain, shelf(head + both)), 'Fern')).toBe('Deep');
    expect(whys(row('Shallow', '14 mm'))).toBe(
      'The nearest frame, “Shallow”, will not do: its rabbet is 0.551 in deep, and 0.554 in is needed as all is named, with room for points (0.588 in with all at its thickest).',
    );
    const bound = list('title,width,height,frame\nFern,8 in,10 in,Shallow\nKite,8 in,10 in,\n');
    const answer = plan(bound, plain, shelf(head + both));
    expect(whyOf(answer, 'Fern')).toContain('The frame it is bound to, “Shallow”, will not do: its rabbet is 0.551 in deep'); // prettier-ignore
    expect(frameOf(answer, 'Kite')).toBe('Deep');
  });

  it('hangs on the picture’s own thickness', () => {
    const thick = list('title,width,height,thickness\nFern,8 in,10 in,3 mm\nKite,8 in,10 in,\n');
    const answer = plan(thick, plain, shelf(`${head}${row('Shallow', '15 mm')}Deep,11 in,14 in,1 in,,,99,\n`));
    expect([frameOf(answer, 'Fern'), frameOf(answer, 'Kite')]).toEqual(['Deep', 'Shallow']);
  });

  it('one with grooves holds by the groove that fits', () => {
    const grooved = (grooves: string) => plan(show, plain, shelf(head + row('It', '1 in', `with back,${grooves}`)));
    expect(frameOf(grooved('6 mm; 7 mm'), 'Fern')).toBe('It');
    expect(whyOf(grooved('6 mm'), 'Fern')).toContain('its groove 1 for the back lies 0.236 in behind the lip');
  });

  it('one that may not hold all at its thickest is taken and told, one that was never measured too', () => {
    const tight = plan(show, plain, shelf(head + row('Tight', '14.5 mm')));
    expect(frameOf(tight, 'Fern')).toBe('Tight');
    expect(tight.problems.find(({ code }) => code === 'show-depth-tight')?.message).toBe(
      '“Tight” holds “Fern”, the deepest of 2 in it, as all is named, but with all at its thickest 0.588 in is needed where it is 0.571 in deep: measure what you have.',
    );
    expect(codesOf(plan(show, plain, shelf(head + row('Sure', '15 mm')))).filter((code) => code.startsWith('show-depth'))).toEqual([]); // prettier-ignore
    const unknown = plan(show, plain, shelf(head + row('Any', '')));
    expect(unknown.problems.find(({ code }) => code === 'show-depth-unknown')?.message).toBe(
      'How deep the rabbet of “Any” is, the shelf does not say: measure it. Up to 0.554 in is needed as all is named, 0.588 in with all at its thickest.',
    );
  });

  it('one made to size says what depth is wanted, and leaves out a depth that is too little', () => {
    const shallow = pattern({
      frame: { rabbetDepth: '1/2 in' },
      borders: { range: { least: '1 1/2 in', greatest: '3 in' } },
    });
    const from = frames('Small,5 in,7 in,1,');
    const words = whyText(placeOf(plan(show, shallow, from), 'Fern') as Parameters<typeof whyText>[0], plan(show, shallow, from)); // prettier-ignore
    expect(words).toContain('with a rabbet 0.554 in deep (0.588 in with all at its thickest) would do');
    const made = placeOf(plan(show, shallow, from, { allowCustom: true }), 'Fern');
    if (!isHung(made)) throw new Error('it is made to size');
    expect(made.written.frame).not.toHaveProperty('rabbetDepth');
    expect(made.depth).toMatchObject({ verdict: 'depth unknown', needs: { nominal: expect.closeTo(14.0625, 9) as number } }); // prettier-ignore
    expect(frameText(made, plan(show, shallow, from))).toContain('rabbet 0.554 in deep (0.588 in with all at its thickest)'); // prettier-ignore
    const deep = pattern({ frame: { rabbetDepth: '3/4 in' }, borders: { range: { least: '1 1/2 in', greatest: '3 in' } } }); // prettier-ignore
    const kept = placeOf(plan(show, deep, from, { allowCustom: true }), 'Fern');
    expect(isHung(kept) && kept.written.frame?.rabbetDepth).toBe('3/4 in');
  });
});
