/** By what a frame hangs, where that sits, what it carries, and what is said against it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hang, hangingProblems } from '../../../src/core/hanging/hang';
import { dropOfWire } from '../../../src/core/hanging/statics/level-wire';
import { ringSway } from '../../../src/core/hanging/sway';
import { hangingWords } from '../../../src/core/hanging/words/hanging-words';
import { hangingAsk } from '../../../src/core/hanging/ask-of';
import { readShelf } from '../../../src/core/shelf/read-shelf';
import type { Shelf } from '../../../src/core/shelf/shelf';
import { planned, type Contents } from '../open';
import { askOf, FERN, hung, problemOf, problemsOf, shelf } from './hung';

const INCH = 25.4;
const POUND = 0.45359237;
const hanging = (said: Contents['hanging'], more: Contents = {}): Contents => ({ ...FERN, ...more, hanging: said });
const sized = (size: string, said: Contents['hanging'] = {}): Contents => ({
  frame: { size },
  windows: { kind: 'window', size: '2 x 2 in' },
  hanging: said,
});

describe('the hanger', () => {
  // Common practice, no source: sawtooth up to 8 x 10 in and light (here 5 lb), rings and wire above.
  // Over 50 lb: a professional (Earthquake Country Alliance, hanging objects); here a cleat.
  it.each([
    ['8 x 10 in', undefined, 'sawtooth', 1],
    ['10 x 8 in', '5 lb', 'sawtooth', 1],
    ['8 x 10 in', '5 lb 1 oz', 'rings and wire', 2],
    ['8 x 10 1/16 in', '1 lb', 'rings and wire', 2],
    ['9 x 9 in', '1 lb', 'rings and wire', 2],
    ['24 x 36 in', '50 lb', 'rings and wire', 2],
    ['24 x 36 in', '50 lb 1 oz', 'cleat', 2],
  ] as const)('of %s that weighs %s: %s on %d', (size, weight, kind, hooks) => {
    const { hanger } = hung(sized(size, weight === undefined ? {} : { weight })).hanging;
    expect(hanger).toMatchObject({ kind, hooks, from: 'size' });
    expect(hanger.why.length).toBeGreaterThan(0);
  });

  it('is held to the maker’s rating of the sawtooth hangers on the shelf, before the usual limit', () => {
    const rated = shelf('kind,name,load\nsawtooth,Large,9 lb\nsawtooth,Small,3 lb\n');
    const kind = (weight: string) => hung(sized('8 x 10 in', { weight }), { shelf: rated }).hanging.hanger.kind;
    expect(['9 lb', '9 lb 1 oz'].map(kind)).toEqual(['sawtooth', 'rings and wire']);
    const six = sized('8 x 10 in', { hanger: 'sawtooth', weight: '6 lb' });
    expect(problemsOf(six).map(({ code }) => code)).toEqual(['hanger-unfit']);
    expect(problemsOf(six, { shelf: rated })).toEqual([]);
  });

  it('is what the job says, with two hooks unless it says one', () => {
    expect(hung(hanging({ hanger: 'rings and wire' })).hanging.hanger).toMatchObject({ hooks: 2, from: 'job' });
    expect(hung(hanging({ hanger: 'rings and wire', hooks: 1 })).hanging.hanger.hooks).toBe(1);
    expect(hung(hanging({ hanger: 'rings on hooks', hooks: 1 })).hanging.hanger.hooks).toBe(2);
  });

  it('says that a small frame has to be weighed while its weight is not whole', () => {
    expect(hung(sized('8 x 10 in')).hanging.hanger.why.join(' ')).toMatch(/Weigh it: over 5\.0 lb/);
    const { why } = hung(sized('8 x 10 in', { weight: '2 lb' })).hanging.hanger;
    expect(why.join(' ')).not.toMatch(/Weigh it/);
  });
});

describe('places on the back', () => {
  it('of rings: a quarter to a third down, in the middle of the wood, hooks half as far apart', () => {
    fc.assert(
      fc.property(fc.integer({ min: 9, max: 40 }), fc.integer({ min: 11, max: 60 }), (width, height) => {
        const { outside, places } = hung(sized(`${width} x ${height} in`, { hanger: 'rings and wire' })).hanging;
        const step = INCH / 4;
        expect(places.down).toBeGreaterThanOrEqual(outside.height / 4 - step / 2);
        expect(places.down).toBeLessThanOrEqual(outside.height / 3 + step / 2);
        expect(Math.abs(places.down / step - Math.round(places.down / step))).toBeLessThan(1e-9);
        // Moulding 3/4 in less its lip of 1/4 in is 1/2 in of wood.
        expect(places.in).toBeCloseTo(INCH / 4, 9);
        expect(places.span + 2 * places.in).toBeCloseTo(outside.width, 9);
        expect(places.hooksApart).toBeGreaterThanOrEqual(places.span / 2 - step);
        expect(places.hooksApart).toBeLessThanOrEqual(places.span);
        expect(places.drop).toBeLessThan(places.down);
      }),
    );
  });

  it('of a small frame on wire: the wire half way between rings and top (common practice, no source)', () => {
    const { places } = hung(sized('5 x 7 in', { hanger: 'rings and wire' })).hanging;
    expect(places.drop).toBeCloseTo(places.down / 2, 12);
  });

  it('given, are kept to the last bit', () => {
    const said = { hanger: 'rings and wire', hangerDown: '101 mm', hangerIn: '9 mm', wireBelowTop: '33 mm', hooksApart: '77 mm' } as const; // prettier-ignore
    expect(hung(hanging(said)).hanging.places).toMatchObject({ down: 101, in: 9, drop: 33, hooksApart: 77 });
  });

  it('of rings right on their hooks: the hooks as far apart as the rings, and as far down', () => {
    const { places } = hung(hanging({ hanger: 'rings on hooks', hangerDown: '4 in' })).hanging;
    expect(places.hooksApart).toBe(places.span);
    expect(places.drop).toBe(4 * INCH);
  });

  it('of a sawtooth hanger: in the middle of the upper rail', () => {
    const { places } = hung(hanging({ hanger: 'sawtooth' })).hanging;
    expect(places).toMatchObject({ down: 9.525, drop: 9.525, hooksApart: 0, span: 0 });
    expect(places.in).toBeCloseTo((12.125 * INCH) / 2, 9);
  });

  it('of a sawtooth hanger or a cleat behind a deep lip: in the middle of what wood there is', () => {
    const frame = { ...FERN.frame, mouldingWidth: '3/4 in', lip: '1/2 in' };
    for (const hanger of ['sawtooth', 'cleat'] as const) {
      const contents = hanging({ hanger }, { frame });
      expect(hung(contents).hanging.places.down).toBeCloseTo(INCH / 8, 9);
      expect(problemsOf(contents).map(({ code }) => code)).not.toContain('hanger-off-wood');
    }
  });

  it('say where they come from', () => {
    const where = (said: Contents['hanging'], frame = {}) => {
      const contents = hanging(said, { frame: { ...FERN.frame, ...frame } });
      const { frame: sections } = hangingWords(askOf(contents), hung(contents));
      return sections.flatMap(({ rows }) => rows).find(({ label }) => / below the top$/.test(label))!.how;
    };
    expect(where({ hanger: 'sawtooth' })).toMatch(
      /^in the middle of the upper rail's face, to the teeth; the wood is 1\/2 in/,
    );
    expect(where({ hanger: 'sawtooth' }, { lip: '1/2 in' })).toMatch(/^in the middle of the upper rail's wood,/);
    expect(where({ hanger: 'sawtooth', hangerDown: '1/4 in' })).toMatch(/^as given, to the teeth/);
    expect(where({ hanger: 'cleat', hangerDown: '1/4 in' })).toMatch(/^as given, to the edge/);
  });
});

describe('the wire', () => {
  const lengths = fc.record({
    down: fc.double({ min: 80, max: 120, noNaN: true }),
    below: fc.double({ min: 5, max: 75, noNaN: true }),
    apart: fc.double({ min: 1, max: 290, noNaN: true }),
    knots: fc.double({ min: 0, max: 200, noNaN: true }),
    one: fc.boolean(),
  });

  it('is as long as its way over the hooks, and is cut with both knots; nobody pulls less than half the weight', () => {
    fc.assert(
      fc.property(lengths, ({ down, below, apart, knots, one }) => {
        const mm = (value: number) => `${value.toFixed(6)} mm`;
        const said = { hanger: 'rings and wire', hooks: one ? 1 : 2, hangerDown: mm(down), wireBelowTop: mm(below), knots: mm(knots), ...(one ? {} : { hooksApart: mm(apart) }) } as const; // prettier-ignore
        const { wire, places } = hung(hanging(said)).hanging;
        expect(wire!.cut - wire!.length).toBeCloseTo(2 * Number(knots.toFixed(6)), 9);
        expect(wire!.slack).toBeCloseTo(wire!.length - places.span, 9);
        expect(dropOfWire(wire!.length, places.span, places.hooksApart)).toBeCloseTo(places.down - places.drop, 5);
        expect(wire!.level.tension).toBeGreaterThanOrEqual(0.5 - 1e-12);
        expect(wire!.worstTension).toBeGreaterThanOrEqual(wire!.level.tension);
        expect(wire!.worstHook).toBeGreaterThanOrEqual(wire!.level.hookDown);
      }),
      { numRuns: 60 },
    );
  });

  // Practitioners' case (common practice, no source): 30, 15 and 5 degrees give 1.00, 1.93 and 5.74 times the weight.
  it.each([
    [30, 1],
    [15, 1.93],
    [5, 5.74],
  ])('at %d degrees pulls %d times the weight', (angle, factor) => {
    // Outside 308 mm wide, rings 6.35 mm in: half the span is 147.625 mm.
    const half = (12.125 * INCH) / 2 - INCH / 4;
    const rise = half * Math.tan((angle * Math.PI) / 180);
    const said = {
      hanger: 'rings and wire',
      hooks: 1,
      hangerDown: '120 mm',
      wireBelowTop: `${120 - rise} mm`,
    } as const;
    const { wire } = hung(hanging(said)).hanging;
    expect(wire!.level.tension).toBeCloseTo(factor, 2);
    expect(problemsOf(hanging(said)).some(({ code }) => code === 'wire-too-taut')).toBe(angle === 5);
  });

  it('with one hook lower that grips, hangs tilted by about as much as the hooks; one that slides stays level or slides far', () => {
    const said = { hanger: 'rings and wire', outOfLevel: '3 mm', hooksApart: '150 mm' } as const;
    const { wire } = hung(hanging(said)).hanging;
    expect(Math.abs(wire!.gripping!.tilt)).toBeGreaterThan(0.5 * (3 / 150));
    expect(Math.abs(wire!.gripping!.tilt)).toBeLessThan(2 * (3 / 150));
    const still = hung(hanging({ ...said, outOfLevel: 0 })).hanging.wire!;
    expect(still.gripping!.tilt).toBeCloseTo(0, 9);
    expect(still.gripping!.tensions[0]).toBeCloseTo(still.level.tension, 9);
  });
});

describe('rings right on their hooks', () => {
  it('tilt by what one hook lies lower, and load the higher one more (lever, by hand)', () => {
    const { tilt, higher } = ringSway(300, 200, 6);
    expect(Math.sin(tilt)).toBeCloseTo(6 / 300, 12);
    // The middle hangs 200 below: it swings 200 sin(tilt) towards the higher hook, over a level span of 300 cos(tilt).
    expect(higher).toBeCloseTo((150 * Math.cos(tilt) + 200 * Math.sin(tilt)) / (300 * Math.cos(tilt)), 12);
    expect(ringSway(300, 200, 0)).toEqual({ tilt: 0, higher: 0.5 });
  });
});

describe('what things may carry', () => {
  const said = { hanger: 'rings and wire', weight: '20 lb', hooksApart: '6 in' } as const;
  const part = (which: string, contents: Contents, items?: Shelf) =>
    hung(contents, items ? { shelf: items } : {}).hanging.carried.find((one) => one.part === which)!;

  it('is the maker’s rating before all else', () => {
    const wire = part('wire', hanging({ ...said, wire: { load: '25 lb', breaksAt: '50 lb' } }));
    expect(wire).toMatchObject({ basis: "the maker's rated load" });
    expect(wire.load).toBeCloseTo(25 * POUND, 9);
    expect(wire.most! * wire.share).toBeCloseTo(25 * POUND, 9);
  });

  it('is else the breaking strength over a margin of 5 (29 CFR 1926.251, slings, as quoted: an analogy)', () => {
    expect(part('wire', hanging({ ...said, wire: { breaksAt: '100 lb' } })).load).toBeCloseTo(20 * POUND, 9);
    expect(part('wire', hanging({ ...said, wire: { breaksAt: '100 lb', margin: 10 } })).load).toBeCloseTo(
      10 * POUND,
      9,
    );
  });

  const items = shelf(
    'kind,name,load,breaks at,seat\nwire,Thick,60 lb,,\nwire,Thin,5 lb,,\nwire,Middle,,100 lb,\nwire,Unknown,,,\nhook,Small,8 lb,,10 mm\nhook,Big,30 lb,,15 mm\nring,Ring,20 lb,,\n',
  );

  it('is chosen from the shelf: the lightest that holds, the strongest where none does or the weight is unknown', () => {
    expect(part('wire', hanging(said), items).name).toBe('Middle');
    expect(part('hook', hanging(said), items)).toMatchObject({ name: 'Big', seat: 15 });
    expect(part('wire', hanging({ ...said, weight: '200 lb' }), items).name).toBe('Thick');
    expect(part('wire', hanging({ hanger: 'rings and wire' }), items).name).toBe('Thick');
    expect(part('wire', hanging({ ...said, weight: '1 lb' }), items).name).toBe('Thin');
  });

  it('is found by name, and a name that the shelf does not have is told', () => {
    expect(part('hook', hanging({ ...said, hook: { name: 'small' } }), items).load).toBeCloseTo(8 * POUND, 9);
    const named = hanging({ ...said, wire: { name: 'Gold' } });
    expect(problemOf(named, 'not-on-shelf', { shelf: items })).toMatchObject({ at: 'hanging.wire.name' });
    expect(problemsOf(named).map(({ code }) => code)).not.toContain('not-on-shelf');
  });

  it('is told when it is passed, and not when it is just kept', () => {
    const { level } = hung(hanging(said)).hanging.wire!;
    const worst = hung(hanging(said)).hanging.wire!.worstTension * 20;
    expect(worst).toBeGreaterThanOrEqual(level.tension * 20);
    const load = (pounds: number) => hanging({ ...said, wire: { load: `${pounds} lb` } });
    expect(problemOf(load(worst - 0.5), 'over-rated-load')).toMatchObject({ at: 'hanging.wire' });
    expect(problemsOf(load(worst + 0.001)).map(({ code }) => code)).not.toContain('over-rated-load');
    expect(problemOf(hanging({ ...said, hook: { load: '9 lb' } }), 'over-rated-load').at).toBe('hanging.hook');
    expect(problemOf(hanging({ ...said, fitting: { load: '9 lb' } }), 'over-rated-load').at).toBe('hanging.fitting');
  });
});

describe('a sawtooth hanger', () => {
  it('sits on a nail or screw, whose hole is its seat, unless the job names a hook', () => {
    const shelf = readShelf('kind,name,load,seat\nhook,Hook,30 lb,5/8 in\nsawtooth,Teeth,5 lb,\n');
    if (!shelf.ok) throw new Error('no shelf');
    const carried = (more: object) => {
      const plan = planned({ pictures: [{ size: '5 x 7 in' }], frame: { size: '8 x 10 in' }, hanging: { hanger: 'sawtooth', weight: '2 lb', ...more } } as Contents); // prettier-ignore
      const answer = hang(hangingAsk(plan.job, plan.layout, shelf.value));
      return answer.ok ? answer.value.hanging.carried : [];
    };
    expect(carried({}).find(({ part }) => part === 'hook')).toMatchObject({ name: 'nail or screw', seat: 0 });
    expect(carried({ hook: { name: 'Hook' } }).find(({ part }) => part === 'hook')).toMatchObject({ seat: 15.875 });
  });
});

describe('any frame', () => {
  /** Every number there is in a value, however deep. */
  const numbers = (value: unknown): number[] =>
    typeof value === 'number' ? [value] : value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbers) : []; // prettier-ignore

  it('hangs with finite numbers, or says why it can’t', () => {
    const mm = (most: number) => fc.double({ min: 0, max: most, noNaN: true }).map((value) => `${value.toFixed(3)} mm`);
    const ask = fc.record(
      {
        hanger: fc.constantFrom('by size', 'sawtooth', 'rings and wire', 'rings on hooks', 'cleat' as const),
        hooks: fc.constantFrom(1 as const, 2 as const),
        hooksApart: mm(1000).filter((text) => !text.startsWith('0.000')),
        hangerDown: mm(900),
        hangerIn: mm(300),
        wireBelowTop: mm(500),
        outOfLevel: mm(100),
        bumpers: mm(30),
        weight: fc.integer({ min: 1, max: 60_000 }).map((grams) => `${grams} g`),
      },
      { requiredKeys: [] },
    );
    let hangs = 0;
    fc.assert(
      fc.property(ask, fc.integer({ min: 60, max: 900 }), fc.integer({ min: 60, max: 900 }), (said, width, height) => {
        const contents: Contents = {
          windows: { kind: 'window', size: '20 x 20 mm' },
          frame: { size: `${width} x ${height} mm`, mouldingDepth: '25 mm' },
          hanging: said,
        };
        const found = hang(askOf(contents));
        expect(found.problems.map(({ message }) => message).join(' ')).not.toMatch(/NaN|Infinity|undefined/);
        if (!found.ok) return;
        hangs++;
        expect(numbers(found.value).every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 200 },
    );
    expect(hangs).toBeGreaterThan(20);
  });
});

describe('what is said against it', () => {
  const deep = '1 in';
  it.each([
    ['hanger-off-frame', { hanger: 'rings and wire', hangerDown: '16 in' }, 'hanging.hangerDown'],
    ['rings-meet', { hanger: 'rings and wire', hangerIn: '6 1/16 in' }, 'hanging.hangerIn'],
    ['wire-has-no-rise', { hanger: 'rings and wire', hangerDown: '2 in', wireBelowTop: '2 in' }, 'hanging.wireBelowTop'],
    ['hooks-too-far-apart', { hanger: 'rings and wire', hooksApart: '11 11/16 in' }, 'hanging.hooksApart'],
    ['hanger-unfit', { hanger: 'sawtooth' }, 'hanging.hanger'],
    ['hanger-unfit', { hanger: 'rings and wire', weight: '51 lb' }, 'hanging.hanger'],
    ['ring-off-wood', { hanger: 'rings and wire', hangerIn: '9/16 in' }, 'hanging.hangerIn'],
    ['ring-off-wood', { hanger: 'rings and wire', fitting: { width: '5/8 in' } }, 'hanging.fitting.width'],
    ['hanger-off-wood', { hanger: 'sawtooth', hangerDown: '4 in' }, 'hanging.hangerDown'],
    ['hanger-off-wood', { hanger: 'cleat', hangerDown: '9 in' }, 'hanging.hangerDown'],
    ['rings-below-middle', { hanger: 'rings and wire', hangerDown: '8 in' }, 'hanging.hangerDown'],
    ['rings-low', { hanger: 'rings and wire', hangerDown: '5 1/2 in' }, 'hanging.hangerDown'],
    ['wire-too-taut', { hanger: 'rings and wire', hooks: 1, wireBelowTop: '4 in' }, 'hanging.wireBelowTop'],
    ['hooks-not-used', { hanger: 'rings on hooks', hooks: 1 }, 'hanging.hooks'],
    ['hooks-not-used', { hanger: 'rings and wire', hooks: 1, hooksApart: '3 in' }, 'hanging.hooksApart'],
  ] as const)('%s of %j', (code, said, at) => {
    const problem = problemOf(hanging(said, { frame: { ...FERN.frame, mouldingDepth: deep } }), code);
    expect(problem.at).toBe(at);
    expect(problem.message).toMatch(/\d|two|one hook/);
  }); // prettier-ignore

  it('is at the edge of each limit nothing', () => {
    const fine = [
      { hanger: 'rings and wire', hooksApart: '11 5/8 in' },
      { hanger: 'rings and wire', hangerIn: '1/2 in' },
      { hanger: 'rings and wire', fitting: { width: '1/2 in' } },
      { hanger: 'rings and wire', hangerDown: '5 1/24 in' },
      { hanger: 'cleat', hangerDown: '1/2 in' },
      { hanger: 'rings and wire', weight: '50 lb' },
    ] as const;
    for (const said of fine) {
      expect(problemsOf(hanging({ weight: '4 lb', ...said }))).toEqual([]);
    }
  });

  it('keeps no mat from being cut: in a check an error is a warning', () => {
    const wrong = hanging({ hanger: 'rings and wire', hooksApart: '20 in', weight: '4 lb' });
    expect(problemOf(wrong, 'hooks-too-far-apart').severity).toBe('error');
    expect(hangingProblems(askOf(wrong)).map(({ severity }) => severity)).toEqual(['warning']);
  });

  it('names what would be right, and that is', () => {
    const taut = { hanger: 'rings and wire', hooks: 1, hangerDown: '120 mm', wireBelowTop: '100 mm', outOfLevel: 0, weight: '4 lb' } as const; // prettier-ignore
    const run = (12.125 * INCH) / 2 - INCH / 4;
    const rise = run / Math.sqrt(15);
    expect(problemOf(hanging(taut), 'wire-too-taut').remedy).toMatch(/a rise of/);
    expect(problemsOf(hanging({ ...taut, wireBelowTop: `${120 - rise - 0.01} mm` }))).toEqual([]);
  });
});
