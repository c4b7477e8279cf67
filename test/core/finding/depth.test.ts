/** How deep a job lies in a frame: what `frames` says works is what its package says of the job once it has that frame. */
import { describe, expect, test } from 'vitest';
import type { Candidate } from '../../../src/core/finding/candidate';
import { editsToTake } from '../../../src/core/finding/take-frame';
import { candidateWords } from '../../../src/core/finding/words';
import { customWords } from '../../../src/core/finding/custom-words';
import { setAll } from '../../../src/core/job/edit';
import type { ShelfFrame } from '../../../src/core/shelf/shelf';
import { fitOf } from '../../../src/core/package/fit';
import type { Verdict } from '../../../src/core/package/room';
import { stackOf } from '../../../src/core/package/stack';
import { tryPlan, written, type Contents } from '../open';
import { found, frameOf, one, shelfOf } from './shelves';

const fern: Contents = { pictures: [{ title: 'Lady fern', size: '8 x 10 in', overlap: '1/8 in' }] };
const INCH = 25.4;
const SIZE = { width: 11 * INCH, height: 14 * INCH };
// Glass 2.5, mat and mount board 1.5875 each, sheet 0.25, hinges 0.2, foam board 4.7625, and 3.175 for points.
const CONTENTS = 2.5 + 2 * 1.5875 + 0.25 + 0.2 + 4.7625;
const NAMED = CONTENTS + 3.175;
// As usual glass varies by 0.2 mm (EN 572-2, from memory), each board by 0.1016 (Saitzyk 1987), foam board by a tenth.
const THICKEST = NAMED + 0.2 + 2 * 0.1016 + 0.47625;

function inFrame(job: Contents, frame: Partial<ShelfFrame>): Candidate {
  return one(found(job, [frameOf({ name: 'It', size: SIZE, ...frame })]), 'It');
}

/** What the package says of the job once it has taken the frame. */
function verdictOf(job: Contents, frame: Partial<ShelfFrame>): Verdict {
  const all = found(job, [frameOf({ name: 'It', size: SIZE, ...frame })]);
  const { planned } = tryPlan(setAll(written(job), editsToTake(all.job, one(all, 'It'))));
  if (!planned) throw new Error('the job that took the frame can be laid out');
  return fitOf(planned.job, stackOf(planned.job, planned.layout)).verdict;
}

describe('a rabbet', () => {
  const at = (rabbetDepth: number) => inFrame(fern, { rabbetDepth });

  test('holds what is named, with room for the points; deeper than its contents alone is not enough', () => {
    expect(at(NAMED).works).toBe(true);
    expect(at(NAMED - 1e-3).works).toBe(false);
    expect(at(CONTENTS).reasons).toEqual([
      {
        kind: 'rabbet too shallow',
        words: 'Its rabbet is 0.429 in deep, and 0.554 in is needed as all is named, with room for points (0.588 in with all at its thickest).',
      },
    ]);
  }); // prettier-ignore

  test('that may not hold all at its thickest works, and says so', () => {
    expect(at(NAMED + 0.1)).toMatchObject({ works: true, held: { fit: { verdict: 'may not fit' } } });
    expect(at(NAMED + 0.1).remarks).toEqual([
      'Its rabbet is 0.558 in deep: enough for 0.554 in as all is named, with room for points, but with all at its thickest 0.588 in is needed; measure what you have.',
    ]);
    expect(at(THICKEST)).toMatchObject({ works: true, remarks: [], held: { fit: { verdict: 'fits' } } });
  });

  test('that nobody has measured is told with the depth that is wanted', () => {
    const { works, remarks } = inFrame(fern, {});
    expect([works, remarks]).toEqual([
      true,
      [
        'How deep its rabbet is, is not known: it has to be 0.554 in deep as all is named, with room for points (0.588 in with all at its thickest).',
      ],
    ]);
  });

  test('two lengths that differ are never told as one', () => {
    const tight = { ...fern, package: { fixing: { room: '0 mm' }, backing: { material: 'none' } } } satisfies Contents;
    const named = CONTENTS - 4.7625;
    const [{ words } = { words: '' }] = inFrame(tight, { rabbetDepth: named - 0.05 }).reasons;
    expect(words).toContain('Its rabbet is 0.239 in deep, and 0.241 in is needed');
  });

  test.each<[string, Contents]>([
    ['plain', fern],
    ['two layers and a spacer', { ...fern, mat: { layers: [{}, { reveal: '1/4 in' }] }, package: { spacer: { thickness: '1/8 in' } } }],
    ['a thick backing', { ...fern, package: { backing: { thickness: '3/16 in', thinnest: '1/8 in', thickest: '1/4 in' } } }],
    ['held by turn buttons', { ...fern, package: { fixing: { kind: 'turn buttons' } } }],
    ['held by offset clips', { ...fern, package: { fixing: { kind: 'offset clips' } } }],
    ['no glazing', { ...fern, package: { glazing: { material: 'none' } } }],
    ['from a frame with grooves', { ...fern, frame: { build: 'with back', grooves: ['1/4 in'] } }],
  ])('is judged as the package judges it: %s', (_, job) => {
    const verdicts = new Set<Verdict>();
    for (let depth = 4; depth < 24; depth += 0.5) {
      for (const frame of [
        { rabbetDepth: depth },
        { rabbetDepth: 30, build: 'with back' as const, grooves: [depth, depth + 3] },
      ]) {
        const candidate = inFrame(job, frame);
        const verdict = verdictOf(job, frame);
        verdicts.add(verdict);
        expect(candidate.held?.fit.verdict).toBe(verdict);
        expect(candidate.works).toBe(verdict !== 'does not fit');
        if (verdict === 'may not fit') expect(candidate.remarks.join(' ')).toContain('at its thickest');
      }
    }
    expect(verdicts.size).toBeGreaterThan(1);
  }); // prettier-ignore
});

describe('a frame with grooves for its back', () => {
  const before = CONTENTS - 4.7625;

  test('holds a job by the groove that fits, with wood left behind its back', () => {
    const frame = { build: 'with back' as const, rabbetDepth: before + 8, grooves: [before - 1, before + 1] };
    const { works, remarks, held } = inFrame(fern, frame);
    expect([works, held?.fit.room?.name]).toEqual([true, 'groove 2']);
    expect(remarks).toEqual(['Its back goes into groove 2, 0.281 in behind the lip; fill 0.023 in to 0.055 in before it with card.']); // prettier-ignore
    expect(inFrame(fern, { ...frame, grooves: [before - 1] }).reasons.map(({ words }) => words)).toEqual([
      'Its groove 1 for the back lies 0.202 in behind the lip, and 0.241 in is needed before the back as all is named (0.257 in with all at its thickest).',
    ]);
    const [shallow] = inFrame(fern, { ...frame, grooves: [before + 1], rabbetDepth: before + 4 }).reasons;
    expect(shallow?.words).toMatch(/^In groove 1 its back would not be held: /);
  });
});

describe('a canvas without a mat', () => {
  const canvas: Contents = {
    pictures: [{ title: 'The sea', kind: 'painting on canvas', size: '16 x 20 in', thickness: '3/4 in' }],
    mat: { layers: [] },
  };
  const heading = 'kind,name,width,height,rabbet depth,lip,build,grooves,price,step';
  const row = (name: string, depth: string, rest = ',,,9') => `frame,${name},16 in,20 in,${depth},1/4 in${rest},`;
  const clip = 'clip,Clip 1/8 in,,,,,,,,1/8 in';
  const shelf = shelfOf(heading, row('Shallow', '5/8 in'), row('Deep', '7/8 in'), row('Unknown', ''), 'frame,Float,16 in,20 in,,,float,,9,', clip); // prettier-ignore

  test('stands out behind a shallow rabbet, held by clips; after those that hide it, where nothing else tells them apart', () => {
    const all = found(canvas, shelf);
    const works = all.candidates.filter((each) => each.works);
    expect(works.map(({ frame }) => frame.name)).toEqual(['Deep', 'Float', 'Shallow', 'Unknown']);
    const shallow = candidateWords(all, one(all, 'Shallow'));
    expect(shallow).toContain('It is 3/4 in deep and stands out 1/8 in behind the frame; a rabbet 3/4 in deep would hide it.'); // prettier-ignore
    expect(shallow).toContain('Offset clips of 1/8 in step (Clip 1/8 in).');
    expect(candidateWords(all, one(all, 'Float'))).toContain(
      'It stands before Shallow: they come to the same in all else, and in this one the package goes in, in the other it stands out behind.',
    );
    expect(candidateWords(all, one(all, 'Unknown')).join(' ')).toContain('How deep its rabbet is, is not known.');
    const cheap = shelf.map((item) => (item.kind === 'frame' && item.name === 'Shallow' && item.price ? { ...item, price: { ...item.price, amount: item.price.amount.minus(1) } } : item)); // prettier-ignore
    expect(found(canvas, cheap).candidates[0]!.frame.name).toBe('Shallow');
  });

  test('is told by what covers it and what shows, with no word of a mat', () => {
    const all = found(canvas, shelf);
    const words = candidateWords(all, one(all, 'Deep'));
    expect(words[0]).toBe('The lip covers 3/16 in all round; 15 5/8 x 19 5/8 in is seen.');
    expect(candidateWords(all, one(all, 'Float'))[0]).toBe('All of its 16 x 20 in is seen, with a gap of 1/4 in all round.'); // prettier-ignore
    for (const candidate of all.candidates.filter((each) => each.works)) {
      expect(candidateWords(all, candidate).join(' ')).not.toMatch(/mat\b|border|weight/i);
    }
    expect(words).toContain('There is nothing to cut.');
  });

  test('that is larger than a frame is told to be, whatever the rabbet', () => {
    const all = found(canvas, [...shelf, ...shelfOf('name,width,height,rabbet depth', 'Small,12 in,16 in,1/4 in')]);
    expect(one(all, 'Small').reasons.map(({ words }) => words)).toEqual([
      'Picture "The sea" is 16 x 20 in, larger than a frame of 12 x 16 in.',
    ]);
    expect(candidateWords(all, all.candidates[0]!).join(' ')).toContain(
      'One size smaller, Small, would not do: picture "The sea" is 16 x 20 in, larger than a frame of 12 x 16 in.',
    );
  });

  test('says of grooves whether the frame’s own back goes in behind it', () => {
    const grooved = (grooves: string) => {
      const all = found(canvas, shelfOf(heading, row('It', '1 in', `,with back,${grooves},9`)));
      return one(all, 'It').remarks.join(' ');
    };
    expect(grooved('5/8 in; 11/16 in')).toContain('Its own back may not go in: the grooves for it lie 5/8 in and 11/16 in behind the lip, and 3/4 in is to lie before it'); // prettier-ignore
    expect(grooved('7/8 in')).toContain('Its back goes into groove 1, 7/8 in behind the lip; fill 1/8 in before it with card.'); // prettier-ignore
  });

  test('from a float frame gets the play and the lip of a frame that has one', () => {
    const floating: Contents = { ...canvas, frame: { size: '16 x 20 in', build: 'float', float: { gap: '1/2 in', insideDepth: '1 in' } } }; // prettier-ignore
    const shelf = shelfOf('name,width,height', 'Plain,16 in,20 in');
    const all = found(floating, shelf);
    const plain = one(all, 'Plain');
    expect(plain.works).toBe(true);
    const taken = tryPlan(setAll(written(floating), editsToTake(all.job, plain))).planned!;
    expect(taken.layout.frame).toEqual(plain.layout!.frame);
    expect(taken.job.frame.float).toEqual({ gap: 12.7, setBack: 0 });
    // How deep another float frame is inside nobody has said.
    const float = one(found(floating, shelfOf('name,width,height,build', 'F,16 in,20 in,float')), 'F');
    expect(float.remarks.join(' ')).toContain('How deep it is inside, is not known');
  });
});

describe('a frame made to size', () => {
  const job: Contents = { ...fern, borders: { all: '2 5/8 in' } };
  const stick = (depth: string) => shelfOf('kind,name,face,lip,rabbet depth', `moulding,Stick,3/4 in,1/4 in,${depth}`);
  const wordsOf = (...shelf: ReturnType<typeof stick>) => {
    const all = found(job, shelf);
    return customWords(all, all.customs[0]!).join(' ');
  };

  test('says how deep its rabbet has to be, or what is against the moulding there is', () => {
    const wanted = 'Its rabbet has to be 0.554 in deep as all is named, with room for points (0.588 in with all at its thickest).'; // prettier-ignore
    expect(wordsOf()).toContain(wanted);
    expect(wordsOf(...stick(''))).toContain(wanted);
    expect(wordsOf(...stick('1/2 in'))).toContain('Stick: its rabbet is 1/2 in deep, and 0.554 in is needed');
    expect(wordsOf(...stick('9/16 in'))).toContain('Stick: its rabbet is 9/16 in deep: enough for 0.554 in');
    expect(wordsOf(...stick('5/8 in'))).not.toContain('rabbet');
  });
});
