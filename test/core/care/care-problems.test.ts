/** Clear dangers are told where the job says them, with an edit that ends them, and nothing where it says nothing. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setAll } from '../../../src/core/job/edit';
import { written, type Contents } from '../open';
import { dangersOf, kept, NEUTRAL, SOUND } from './kept';

const codes = (contents: Contents) => dangersOf(contents).map(({ code }) => code);

describe('nothing is told', () => {
  it.each(readdirSync('resources/samples').filter((name) => name.endsWith('.json')))('of %s', (name) => {
    expect(codes(JSON.parse(readFileSync(`resources/samples/${name}`, 'utf8')) as Contents)).toEqual([]);
  });

  it.each([
    ['a picture in a frame', { pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' } }],
    ['a photograph', { pictures: [{ size: '8 x 10 in', kind: 'photograph' }], frame: { size: '11 x 14 in' } }],
    ['what floats', { pictures: [{ size: '8 x 10 in', overlap: 'shows 1/2 in' }], frame: { size: '14 x 18 in' } }],
    ['what is kept well', kept()],
  ] as const)('of %s that says no more', (_, contents) => expect(codes(contents as Contents)).toEqual([]));
});

describe('a danger is told, and its edit ends it', () => {
  it.each<readonly [string, Contents, string]>([
    ['tape-on-picture', kept({}, { hinging: { method: 'self-adhesive tape' } }), 'package.hinging.method'],
    ['picture-glued-down', kept({}, { hinging: { method: 'glued down' } }), 'package.hinging.method'],
    ['cyanotype-on-alkaline-board', kept({ kind: 'cyanotype' }, { mountBoard: { quality: SOUND } }, NEUTRAL), 'package.mountBoard.quality'], // prettier-ignore
  ])('%s', (code, contents, at) => {
    const [problem, ...others] = dangersOf(contents);
    expect(problem).toMatchObject({ code, at });
    expect(others).toEqual([]);
    expect(codes(setAll(written(contents), problem!.fix!.edits))).toEqual([]);
  });

  it('charge-lifts-pastel, and the density of acrylic is not kept for glass', () => {
    const job = kept({ kind: 'pastel or charcoal' }, {
      glazing: { material: 'acrylic', density: 1.19 },
      spacer: { thickness: '1/8 in' },
    }); // prettier-ignore
    const [problem] = dangersOf(job);
    expect(problem).toMatchObject({ code: 'charge-lifts-pastel', severity: 'warning' });
    const after = setAll(written(job), problem!.fix!.edits);
    expect(after.package!.glazing).toEqual({ material: 'glass' });
    expect(codes(after)).toEqual(['ask-conservator']);
    const treated = kept({ kind: 'pastel or charcoal' }, { glazing: { material: 'acrylic', antistatic: true } });
    expect(codes(treated)).toEqual(['ask-conservator']);
  });

  // LC guide (seen): pH 7 or slightly alkaline.
  it('board-acid, of every board that is said to be', () => {
    const acid = { ...SOUND, ph: 5.5 };
    const job = kept({}, {}, acid);
    expect(dangersOf(job).map(({ code, at }) => [code, at])).toEqual([
      ['board-acid', 'mat.layers[0].quality.ph'],
      ['board-acid', 'package.mountBoard.quality.ph'],
    ]);
    expect(dangersOf(job).map(({ limit }) => limit)).toEqual(['pH 7 to 9.5', 'pH 7 to 9.5']);
    // CCI Notes 11/5 (seen): unbuffered pH 7; CCAHA (seen): neutral against a cyanotype.
    const limits = (kind: 'chart or map' | 'cyanotype', reserve: number) =>
      dangersOf(kept({ kind }, {}, { ...acid, reserve })).flatMap(({ code, limit }) =>
        code === 'board-acid' ? limit : [],
      );
    expect(limits('chart or map', 0)).toEqual(['pH 6.5 to 7.5', 'pH 6.5 to 7.5']);
    expect(limits('cyanotype', 0)).toEqual(['pH 6.5 to 7.5', 'pH 6.5 to 7.5']);
  });

  it('ask-conservator, once, of what the job says is a matter for one', () => {
    const job = kept({ concerns: ['fragile'] });
    expect(dangersOf(job)).toMatchObject([{ code: 'ask-conservator', severity: 'note', at: 'pictures[0].concerns' }]);
    expect(codes(kept({ kind: 'document' }))).toEqual([]);
  });
});

it('a spacer, or a second mat, is enough for a large sheet', () => {
  const large = { ...kept({ size: '18 x 24 in' }), frame: { size: '24 x 30 in' } };
  expect(codes({ ...large, package: { ...large.package, spacer: { thickness: '1/16 in' } } })).toEqual([]);
  const layers = [{ thickness: '1/16 in' }, { thickness: '1/16 in', reveal: '1/4 in' }];
  expect(codes({ ...large, mat: { layers } })).toEqual([]);
});

it('a cyanotype may lie behind an alkaline layer that does not touch it', () => {
  const layers = [
    { thickness: '1/16 in', quality: SOUND },
    { thickness: '1/16 in', reveal: '1/4 in', quality: NEUTRAL },
  ];
  expect(codes({ ...kept({ kind: 'cyanotype' }, {}, NEUTRAL), mat: { layers } })).toEqual([]);
});
