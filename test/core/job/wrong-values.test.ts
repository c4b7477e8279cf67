/** Each kind of wrong value is told with its path, in words, and never thrown. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJob } from '../../../src/core/job/read';
import { valueAt } from '../../../src/core/job/edit';
import { tryPlan, written, type Contents } from '../open';

const good = {
  pictures: [
    { id: 'fern', title: 'Fern', size: '8x10' },
    { id: 'chart', size: '8x10' },
  ],
  frame: { size: '30x20' },
  mat: { layers: [{}, { reveal: '1/4' }] },
  windows: { kind: 'row', items: ['fern', { kind: 'window', picture: 'chart' }] },
};

type Wrong = readonly [path: string, value: unknown, code: string, words: RegExp, at?: string];

/** Path of a wrong value, the value, the code and words of its problem; the problem's path where it is another. */
const WRONG: readonly Wrong[] = [
  ['title', 7, 'value-of-wrong-kind', /title is 7; a text is wanted/],
  ['title', 'x'.repeat(300), 'value-too-large', /300 characters; the most is 200/],
  ['units', 'inches', 'value-unknown', /units is "inches"; it must be "in", "mm" or "cm"/],
  ['steps.in', '1/12', 'value-unknown', /"1\/8", "1\/16", "1\/32" or "1\/64"/],
  ['pictures', {}, 'value-of-wrong-kind', /a list in \[ \] is wanted/],
  ['pictures[0]', 'fern', 'value-of-wrong-kind', /a group in \{ \} is wanted/],
  ['pictures[0].size', undefined, 'value-missing', /pictures\[0\]\.size is missing; a text or a group/],
  ['pictures[0].size', true, 'value-of-wrong-kind', /a text or a group/],
  ['pictures[0].size', '8', 'size-unreadable', /"Fern": "8" is not a size/],
  ['pictures[0].size', { width: '8' }, 'value-missing', /size\.height/, 'pictures[0].size.height'],
  ['pictures[0].size', { width: '8', height: 'ten' }, 'length-unreadable', /ten is not a length/, 'pictures[0].size.height'],
  ['pictures[0].size', { width: 0, height: 1 }, 'length-out-of-range', /must be more than 0 in/, 'pictures[0].size.width'],
  ['pictures[0].image', '9x9', 'image-larger-than-sheet', /9 x 9 in, larger than its sheet of 8 x 10 in/],
  ['pictures[0].overlap', '1,000', 'length-unreadable', /Overlap of picture "Fern": 1,000 could be/],
  ['pictures[0].overlap', { left: 'much' }, 'length-unreadable', /much is not a length/, 'pictures[0].overlap.left'],
  ['pictures[0].overlap', 'shows -1/4', 'length-out-of-range', /must be 0 in or more/],
  ['pictures[0].kind', 'oil', 'value-unknown', /"photograph", "/],
  ['pictures[0].kind', 'photogarph', 'value-unknown', /; perhaps "photograph" is meant; it must be /],
  ['pictures[0].thickness', '-1 mm', 'length-out-of-range', /Thickness of picture "Fern"/],
  ['pictures[1].id', 'fern', 'id-twice', /Pictures 1 and 2 both have the id "fern"/],
  ['frame.size', 'huge', 'size-unreadable', /Size of the frame/],
  ['frame.lip', '-1/4', 'length-out-of-range', /Rabbet lip is −1\/4 in; it must be 0 in or more/],
  ['frame.hung', 'upside down', 'value-unknown', /"portrait" or "landscape"/],
  ['frame.mouldingWidth', '1/8', 'moulding-narrower-than-lip', /1\/8 in wide, narrower than its own lip of 1\/4 in/],
  ['frame', { rabbetDepth: '1', mouldingDepth: '1/2' }, 'moulding-too-shallow', /1\/2 in deep in all, less than its own rabbet of 1 in/, 'frame.mouldingDepth'],
  ['frame', { rabbetDepth: '10 mm', mouldingDepth: '9.99 mm' }, 'moulding-too-shallow', /0\.393 in deep .* of 0\.394 in/, 'frame.mouldingDepth'],
  ['frame', { build: 'float', mouldingDepth: '1', float: { insideDepth: '1 1/4' } }, 'moulding-too-shallow', /its own inside depth of 1 1\/4 in/, 'frame.mouldingDepth'],
  ['frame', { rabbetDepth: '1/2', grooves: ['5/8', '1/4'] }, 'groove-behind-frame', /Groove 1 begins 5\/8 in behind the lip, but the rabbet is only 1\/2 in deep/, 'frame.grooves[0]'],
  ['frame', { rabbetDepth: '1/2', grooves: ['1/4', '1/2'] }, 'groove-behind-frame', /Groove 2 begins/, 'frame.grooves[1]'],
  ['frame', { mouldingDepth: '1/2', grooves: ['5/8'] }, 'groove-behind-frame', /the moulding is only 1\/2 in deep/, 'frame.grooves[0]'],
  ['package', { glazing: { thickness: '2 mm', thinnest: '3 mm' } }, 'length-out-of-range', /is 0\.118 in; it must be 0\.078 in or less/, 'package.glazing.thinnest'],
  ['package', { glazing: { thickness: '1/8', thinnest: '3.176 mm' } }, 'length-out-of-range', /is 0\.12504 in; it must be 1\/8 in or less/, 'package.glazing.thinnest'],
  ['package', { glazing: { thickness: '-1 mm' } }, 'length-out-of-range', /is −0\.039 in; it must be more than 0 in/, 'package.glazing.thickness'],
  ['package', { glazing: { thickness: '1/16', thinnest: '1.59 mm' } }, 'length-out-of-range', /is 0\.063 in; it must be 1\/16 in or less/, 'package.glazing.thinnest'],
  ['frame.readyMade', '11x14 in', 'frame-said-twice', /both a size and the name/],
  ['mat.layers', [{}, {}, {}, {}, {}], 'value-too-large', /a list of 5; the most is 4/],
  ['mat.layers[0].reveal', '1/4', 'reveal-on-top-layer', /The top layer has no layer above/],
  ['mat.layers[1].reveal', '-1/4', 'length-out-of-range', /Reveal of layer 2 is −1\/4 in/],
  ['mat.layers[0].bevel', { angle: 90 }, 'number-out-of-range', /Bevel angle of layer 1 is 90; it must lie from 0 to 75/, 'mat.layers[0].bevel.angle'],
  ['mat.layers[0].colour', 'red', 'value-unreadable', /# and six hexadecimal digits/],
  ['windows', { kind: 'circle' }, 'value-unknown', /it must be "window", "spread", "row", "column", "grid" or "ring"/, 'windows.kind'],
  ['windows.items', [], 'value-too-small', /the least is 1/],
  ['windows.items[0]', 'moss', 'picture-unknown', /no picture "moss"; there are "fern", "chart"/],
  ['windows.items[1].picture', 3, 'picture-unknown', /no picture 3/],
  ['windows.items[1]', { kind: 'window' }, 'window-without-size', /needs a size/, 'windows.items[1].size'],
  ['windows.items[1]', { kind: 'spread', count: 3 }, 'spread-without-picture', /needs the picture/, 'windows.items[1].picture'],
  ['windows.items[1]', { kind: 'spread', picture: 'fern', count: 3, shares: [1, 2] }, 'shares-do-not-match', /3 windows but 2 shares/, 'windows.items[1].shares'],
  ['windows.items[1]', { kind: 'spread', picture: 'fern', count: 1 }, 'value-too-small', /count is 1; the least is 2/, 'windows.items[1].count'],
  ['windows.gap', '-0.01', 'length-out-of-range', /Gap is −0\.01 in; it must be more than 0 in/],
  ['windows.kind', 'rwo', 'value-unknown', /perhaps "row" is meant; it must be "window", /],
  ['windows.items[0]', { kind: 'window', size: '5 x 7', turned: 45 }, 'value-of-wrong-kind', /turned is 45; 90, 180 or 270 is wanted/, 'windows.items[0].turned'],
  ['windows.items[0]', { kind: 'window', size: '5 x 7', shape: 'ovall' }, 'value-unknown', /"ovall"; perhaps "oval" is meant; it must be "rectangle", .* or "scooped"/, 'windows.items[0].shape'],
  ['windows.items[0]', { kind: 'window', size: '5 x 7', shape: { kind: 'heart' } }, 'value-unknown', /"heart"; it must be "rectangle", .* or "outline"/, 'windows.items[0].shape.kind'],
  ['windows.items[0]', { kind: 'window', size: '-8 x 7' }, 'length-out-of-range', /Width of the window at windows\.items\[0\] is −8 in/, 'windows.items[0].size'],
  ['windows.gap', '0', 'length-out-of-range', /Gap is 0 in; it must be more than 0 in/],
  ['windows.gap', 'share', 'length-unreadable', /share is not a length/],
  ['free', [{ picture: 'fern', at: { left: 1, right: 1 } }], 'place-said-twice', /left and right at once/, 'free[0].at'],
  ['free', [{ picture: 'fern' }], 'value-missing', /free\[0\]\.at is missing/, 'free[0].at'],
  ['borders', { rule: 'golden' }, 'value-unknown', /"centred", "equal", "bottom-amount"/, 'borders.rule'],
  ['borders', { top: '0' }, 'length-out-of-range', /Border at the top is 0 in; it must be more than 0 in/, 'borders.top'],
  ['borders', { share: 'half' }, 'share-unreadable', /top to bottom like 45:55/, 'borders.share'],
  ['borders', { ratio: 0 }, 'number-out-of-range', /Ratio is 0; it must lie from 0.1 to 10/, 'borders.ratio'],
  ['cutting', { overcut: '-1 mm' }, 'length-out-of-range', /Overcut is/, 'cutting.overcut'],
]; // prettier-ignore

/** The job with one value changed, as a careless hand would. */
function wrong(path: string, value: unknown): unknown {
  const job = structuredClone(written(good as Contents)) as unknown as Record<string, unknown>;
  const keys = [...path.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, name]) => name ?? Number(index));
  const last = keys.pop() ?? '';
  const owner = keys.reduce<Record<string | number, unknown>>(
    (group, key) => (group[key] ??= {}) as Record<string | number, unknown>,
    job,
  );
  owner[last] = value;
  return job;
}

it('the job they start from is good', () => expect(tryPlan(written(good as Contents)).planned).toBeDefined());

describe.each(WRONG.map((row) => ({ row, name: `${row[0]}: ${JSON.stringify(row[1])?.slice(0, 60)}` })))(
  '$name',
  ({ row }) => {
    const [path, value, code, words, at = path] = row;
    const result = readJob(wrong(path, value));
    const found = result.problems.find((problem) => problem.code === code && problem.at === at);

    it(`is told as ${code} at ${at}`, () => {
      expect(result.ok).toBe(false);
      expect(result.problems.map((problem) => [problem.code, problem.at])).toContainEqual([code, at]);
      expect(found?.message).toMatch(words);
      expect(found?.severity).toBe('error');
    });
  },
);

describe('keys and headings', () => {
  it.each([
    ['', { pictrues: [] }, /"pictrues" means nothing in a job/, 'one of $schema, format'],
    ['pictures[0]', { size: '8x10', titel: 'A' }, /"titel" means nothing in pictures\[0\]/, '"title"'],
    ['windows', { kind: 'row', items: ['fern'], gpa: 3 }, /"gpa" means nothing in windows/, '"gap"'],
    ['windows.items[1]', { kind: 'window', picture: 'chart', szie: 3 }, /"szie" .* in windows\.items\[1\]/, '"size"'],
    ['windows.items[1]', { kind: 'window', picture: 'chart', gap: 3 }, /these do: kind, picture/, 'one of'],
    ['frame', { readymade: '8x10' }, /"readymade" means nothing in frame/, '"readyMade"'],
  ] as const)('a misspelt key in %s', (path, value, words, remedy) => {
    const job = path === '' ? { ...written(good as Contents), ...value } : wrong(path, value);
    const result = readJob(job);
    const found = result.problems.find(({ code }) => code === 'key-unknown');
    expect(result.ok).toBe(false);
    expect(found?.at).toBe([path, Object.keys(value).at(-1)].filter((part) => part !== '').join('.'));
    expect(found?.message).toMatch(words);
    expect(found?.remedy).toContain(remedy);
  });

  it.each([
    [null, 'not-a-job', /a group in \{ \}/],
    [[], 'not-a-job', /a group in \{ \}/],
    [{}, 'not-a-job', /"format" must be/],
    [{ format: 'another' }, 'not-a-job', /"format" must be "matwright-job"/],
    [{ format: 'matwright-job' }, 'version-unknown', /whole number from 1 to 1/],
    [{ format: 'matwright-job', version: 1.5 }, 'version-unknown', /whole number/],
    [{ format: 'matwright-job', version: '1' }, 'version-unknown', /whole number/],
    [{ format: 'matwright-job', version: 2 }, 'version-newer', /version 2 by a newer Matwright.*up to version 1/],
    [{ format: 'matwright-job', version: 1 }, 'nothing-to-mat', /no picture and no window/],
  ])('%o', (value, code, words) => {
    const result = readJob(value);
    expect(result.ok).toBe(false);
    expect(result.problems[0]).toMatchObject({ code, severity: 'error' });
    expect(result.problems[0]?.message).toMatch(words);
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])('%s is a key like any other', (key) => {
    const top = readJob(
      JSON.parse(`{ "format": "matwright-job", "version": 1, "pictures": [{ "size": "8x10" }], "${key}": {} }`),
    );
    expect(top.ok).toBe(false);
    const inside = readJob(
      JSON.parse(`{ "format": "matwright-job", "version": 1, "pictures": [{ "size": "8x10", "${key}": 1 }] }`),
    );
    expect(inside.ok).toBe(false);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    const id = readJob(written({ pictures: [{ id: key, size: '8x10' }], windows: key }));
    expect(id.ok).toBe(true);
    const unknown = readJob(written({ pictures: [{ size: '8x10' }], windows: key }));
    expect(unknown.problems[0]?.code).toBe('picture-unknown');
    const ready = readJob(written({ pictures: [{ size: '8x10' }], frame: { readyMade: key } }));
    expect(ready.problems[0]?.code).toBe('ready-made-unknown');
  });

  it('nesting without end is refused', () => {
    const deep = (levels: number): unknown => (levels === 0 ? '1' : { kind: 'row', items: [deep(levels - 1)] });
    const job = (levels: number) => ({ ...written({ pictures: [{ size: '8x10' }] }), windows: deep(levels) });
    expect(readJob(job(10)).ok).toBe(true);
    expect(readJob(job(14)).problems[0]).toMatchObject({ code: 'groups-too-deep' });
    expect(readJob(job(5000)).problems[0]).toMatchObject({ code: 'nested-too-deep' });
  });

  it('more windows than a job may have are refused', () => {
    const items = Array.from({ length: 2001 }, () => '1');
    const result = readJob(written({ pictures: [{ size: '8x10' }], windows: { kind: 'grid', columns: 50, items } }));
    expect(result.problems.map(({ code }) => code)).toEqual(['too-many-windows']);
  });
});

describe('anything at all in the place of a value', () => {
  const junk = fc.oneof(
    fc.jsonValue({ maxDepth: 3 }),
    fc.string(),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.constantFrom(-1, 0, 1e300, '', '🌿', '½', '1e5'),
  );
  const paths = fc.constantFrom(...new Set(WRONG.map(([path]) => path)));

  it('gives a job or problems with words, never a throw', () => {
    fc.assert(
      fc.property(paths, junk, (path, value) => {
        const job = wrong(path, value);
        const { problems, planned } = tryPlan(job);
        expect(planned !== undefined || problems.some(({ severity }) => severity === 'error')).toBe(true);
        for (const problem of problems) {
          expect(problem.message).toMatch(/\S.*[.)]$/s);
          expect(problem.message).not.toMatch(/undefined|NaN|\[object|Infinity/);
          expect(() => valueAt(written(good as Contents), problem.at)).not.toThrow();
        }
      }),
      { numRuns: 1000 },
    );
  });
});

it('says nothing of a margin on a sheet whose own size can’t be read', () => {
  const picture = { size: '1x', image: '5 x 6', margins: { left: '1', top: '1' } };
  const { problems } = tryPlan(written({ pictures: [picture] }));
  expect(problems.map(({ at, code }) => `${at} ${code}`)).toEqual(['pictures[0].size size-unreadable']);
});
