/** What everything but the boards reaches, against the guidance, each named beside its check. */
import { describe, expect, it } from 'vitest';
import { leastAir } from '../../../src/core/care/air';
import type { Grade } from '../../../src/core/care/grade';
import type { Quality } from '../../../src/core/job/package';
import { planned } from '../open';
import { itemOf, kept, SOUND, type Package, type Picture } from './kept';

type Kind = NonNullable<Picture['kind']>;

const grade = (key: string, picture: Partial<Picture> = {}, parts: Package = {}): Grade =>
  itemOf(kept(picture, parts), key).grade;

describe('how the picture is held', () => {
  // Library of Congress, Guide to Preservation Matting and Framing (seen): paper hinges with starch paste, or corners and
  // strips; no pressure-sensitive adhesive, no dry mounting, no glue. FACTS cl. 3.02, 8.01 (quoted): reversible.
  it.each<readonly [NonNullable<NonNullable<Package['hinging']>['method']>, Grade]>([
    ['paper hinges', 'conservation'],
    ['corners', 'conservation'],
    ['edge strips', 'conservation'],
    ['self-adhesive tape', 'decorative'],
    ['glued down', 'decorative'],
    ['none', 'decorative'],
  ])('%s: %s', (method, wanted) => expect(grade('hinging', {}, { hinging: { method } })).toBe(wanted));

  it('is not taken for good when it is not said', () => {
    expect(itemOf(kept({}, { hinging: {} }), 'hinging')).toMatchObject({ known: false, grade: 'decorative' });
  });

  // LC, Matting and Hinging Works of Art on Paper, "Paper hinges" (seen): V-hinges for floated works.
  it('of what floats is folded hinges, since corners would be seen', () => {
    const floats = { overlap: 'shows 1/4 in' };
    expect(grade('hinging', floats, { hinging: { method: 'corners' } })).toBe('protective');
    expect(grade('hinging', floats)).toBe('conservation');
  });

  // CCI Notes 13/17 (seen): textiles are mounted on a solid support, and some are for a textile conservator.
  it('of cloth is a support of its own, which a job can’t say', () => {
    const item = itemOf(kept({ kind: 'textile' }, { hinging: { method: 'edge strips' } }), 'hinging');
    expect(item.grade).toBe('protective');
    expect(item.step?.fix).toBeUndefined();
  });
});

describe('air between picture and glazing', () => {
  const under = (picture: Partial<Picture>, layers: readonly string[], parts: Package = {}) => {
    const job = kept({ size: '8 x 10 in', ...picture }, parts);
    return { ...job, frame: { ...job.frame, size: '40 x 44 in' }, mat: { layers: layers.map(layer) } };
  };
  const layer = (thickness: string) => ({ thickness, thinnest: thickness, quality: SOUND, reveal: undefined });
  const air = (...given: Parameters<typeof under>) => itemOf(under(...given), 'air').grade;

  // FACTS, Standard Guide, cl. 10.01 (quoted): one 4-ply board, 0.045 in, at the least.
  it.each([
    ['0.045 in', 'conservation'],
    ['1.143 mm', 'conservation'],
    ['0.044 in', 'decorative'],
  ])('of %s reaches %s', (thickness, wanted) => expect(air({}, [thickness])).toBe(wanted));

  // Florida Department of State, Archives (seen): photographs and friable media are best double matted.
  it.each<Kind>(['photograph', 'pastel or charcoal'])('is that of two boards for %s', (kind) => {
    expect(air({ kind }, ['1/16 in'])).toBe('protective');
    expect(air({ kind }, ['0.045 in', '0.045 in'])).toBe('conservation');
    expect(air({ kind }, ['1/8 in'])).toBe('conservation');
    expect(air({ kind }, ['0.045 in'], { spacer: { thickness: '0.045 in' } })).toBe('conservation');
    expect(air({ kind }, ['0.045 in'], { spacer: { thickness: '0.05 in', thinnest: '0.04 in' } })).toBe('protective');
  });

  // Common practice, no source: two 4-ply or 1/8 in in front of sheets larger than about 11 x 14 in.
  it('is that of two boards for large sheets, either way round', () => {
    for (const size of ['11 x 14 in', '14 x 11 in']) expect(air({ size }, ['1/16 in'])).toBe('conservation');
    for (const size of ['12 x 14 in', '14 x 12 in', '8 x 15 in']) expect(air({ size }, ['1/16 in'])).toBe('protective');
    expect(air({ size: '16 x 20 in' }, ['1/8 in'])).toBe('conservation');
    // A canvas is stretched.
    expect(air({ size: '16 x 20 in', kind: 'painting on canvas' }, ['1/16 in'])).toBe('conservation');
  });

  it('is the mats and the spacer as thin as they may be; what floats takes its own thickness of it', () => {
    const two = { thickness: '1/16 in', thinnest: '0.05 in', quality: SOUND };
    const base = kept(
      { overlap: 'shows 1/4 in', thickness: '1 mm', thickest: '1.5 mm' },
      { spacer: { thickness: '3 mm' } },
    );
    const { job, layout } = planned({ ...base, mat: { layers: [two] } });
    expect(leastAir(job)).toBeCloseTo(1.27 + 3, 9);
    const placed = layout.windows[0]!.picture!;
    const held = { picture: job.pictures[0]!, placed, name: '', floats: true };
    // The hinges, 0.2 mm, stand behind it.
    expect(leastAir(job, held)).toBeCloseTo(1.27 + 3 - 1.5 - 0.2, 9);
    expect(leastAir(job, { ...held, floats: false })).toBeCloseTo(4.27, 9);
  });

  it('is asked of paper before there is glazing, and of no painting that goes without', () => {
    const glazing = { material: 'none' } as const;
    expect(air({}, ['0.5 mm'], { glazing })).toBe('decorative');
    expect(() => itemOf(kept({ kind: 'painting on canvas' }, { glazing }), 'air')).toThrow('no item');
  });
});

describe('glazing', () => {
  // LC guide (seen): glass or acrylic. Florida Department of State, Archives (seen): it should keep ultraviolet back.
  it.each<readonly [NonNullable<Package['glazing']>, Grade]>([
    [{ material: 'glass', uvFilter: true }, 'conservation'],
    [{ material: 'acrylic', uvFilter: true }, 'conservation'],
    [{ material: 'polycarbonate', uvFilter: true }, 'protective'],
    [{ material: 'glass' }, 'protective'],
    [{ material: 'none' }, 'decorative'],
  ])('%j: %s', (glazing, wanted) => expect(grade('glazing', {}, { glazing })).toBe(wanted));

  it('does not count for a painting, which may go without', () => {
    const kind = 'painting on panel';
    expect(itemOf(kept({ kind }, { glazing: { material: 'glass' } }), 'glazing')).toMatchObject({ counts: false });
    expect(() => itemOf(kept({ kind }, { glazing: { material: 'none' } }), 'glazing')).toThrow('no item');
  });
});

describe('charge of the glazing', () => {
  // Florida Department of State, Archives (seen): glass for pastel, charcoal, chalk; acrylic can hold a charge.
  it.each<readonly [Kind, NonNullable<Package['glazing']>, Grade]>([
    ['pastel or charcoal', { material: 'glass' }, 'conservation'],
    ['pastel or charcoal', { material: 'acrylic' }, 'decorative'],
    ['pastel or charcoal', { material: 'polycarbonate' }, 'decorative'],
    ['pastel or charcoal', { material: 'acrylic', antistatic: true }, 'protective'],
    // The same names pencil; The Textile Museum, Framing Textiles (seen), loose fibres: glass may be better.
    ['drawing', { material: 'acrylic' }, 'protective'],
    ['drawing', { material: 'acrylic', antistatic: true }, 'conservation'],
    ['textile', { material: 'acrylic' }, 'protective'],
    ['textile', { material: 'glass' }, 'conservation'],
  ])('%s behind %j: %s', (kind, glazing, wanted) => expect(grade('static', { kind }, { glazing })).toBe(wanted));

  it('is not asked where nothing lies loose', () => {
    expect(() => itemOf(kept({ kind: 'print' }, { glazing: { material: 'acrylic' } }), 'static')).toThrow('no item');
  });
});

describe('backing', () => {
  const board = (quality: Quality): Package => ({ backing: { material: 'mat board', quality } });
  // Florida Department of State, Archives (seen): no foam core, wood or cardboard.
  it.each<readonly [string, Package, Grade]>([
    ['fluted polypropylene', {}, 'conservation'],
    ['foam board behind a mount board', { backing: { material: 'foam board' } }, 'protective'],
    [
      'foam board against the picture',
      { backing: { material: 'foam board' }, mountBoard: { without: true } },
      'decorative',
    ],
    ['hardboard', { backing: { material: 'hardboard' } }, 'decorative'],
    ['plywood', { backing: { material: 'plywood' } }, 'decorative'],
    ['cardboard of unknown make', { backing: { material: 'corrugated board' } }, 'decorative'],
    ['sound corrugated board', { backing: { material: 'corrugated board', quality: SOUND } }, 'conservation'],
    ['sound board', board({ fibre: 'purified pulp', ph: 8, reserve: 3 }), 'conservation'],
    ['board of buffered pulp', board({ fibre: 'wood pulp', ph: 8, reserve: 3 }), 'protective'],
    ['none', { backing: { material: 'none' } }, 'decorative'],
  ])('%s', (_, parts, wanted) => expect(grade('backing', {}, parts)).toBe(wanted));

  // CCI Notes 10/10 (seen): all paintings should have a backing board; fluted plastic or hardboard.
  it.each<readonly [NonNullable<NonNullable<Package['backing']>['material']>, Grade]>([
    ['polypropylene board', 'conservation'],
    ['hardboard', 'conservation'],
    ['plywood', 'protective'],
    ['foam board', 'protective'],
    ['none', 'decorative'],
  ])('behind a canvas, %s: %s', (material, wanted) => {
    expect(grade('backing', { kind: 'painting on canvas' }, { backing: { material } })).toBe(wanted);
  });
});

// AIC, Creating Well-Sealed Frames and Display Packages (seen); for paintings CCI Notes 10/10 (seen).
it('a sealed package keeps dust out, a dust cover most of it', () => {
  expect(grade('dust')).toBe('conservation');
  expect(grade('dust', {}, { sealed: false, dustCover: true })).toBe('protective');
  expect(grade('dust', {}, { sealed: false, dustCover: false })).toBe('decorative');
  const ownBack = kept({}, { sealed: false });
  expect(itemOf({ ...ownBack, frame: { ...ownBack.frame, build: 'with back' } }, 'dust').grade).toBe('protective');
});

describe('paper from bare wood', () => {
  // FACTS, Standard Guide, cl. 10.02 (quoted): 1 in (25 mm) in every direction; canvas is excepted (10.02.1).
  const beside = (size: string, kind: Kind = 'print') => {
    const job = kept({ kind, size: '8 x 10 in' });
    return itemOf({ ...job, frame: { size, allowance: '2 mm', lip: '5 mm' } }, 'wood');
  };
  // Half of what the blank is wider, and half of the allowance, 1 mm.
  it.each([
    ['251.2 x 302 mm', 'conservation'], // 24 + 1 mm
    ['251.0 x 302 mm', 'protective'],
    ['300 x 301.8 mm', 'protective'],
  ])('%s: %s', (size, wanted) => expect(beside(size).grade).toBe(wanted));

  it('tells what a job can’t say: a lined rabbet', () => {
    const item = beside('251.0 x 302 mm');
    expect(item.demands.at(-1)!.words).toMatch(/unless the rabbet is lined with metal foil or glass/);
    expect(item.step).toMatchObject({ reaches: 'conservation' });
    expect(item.step!.fix).toBeUndefined();
  });

  it('does not concern canvas', () => expect(() => beside('300 x 302 mm', 'painting on canvas')).toThrow('no item'));
});

// Common practice, no source: 1/8 in (3 mm) holds a sheet, 1/16 in (1.5 mm) barely.
it.each([
  ['1/8 in', 'conservation'],
  ['3 mm', 'conservation'],
  ['2.9 mm', 'protective'],
  ['1/16 in', 'protective'],
  ['1.4 mm', 'decorative'],
])('a sheet covered by %s: %s', (overlap, wanted) => expect(grade('hold', { overlap })).toBe(wanted));

it('a sheet that floats is not asked how far it is covered', () => {
  expect(() => itemOf(kept({ overlap: 'shows 1/4 in' }), 'hold')).toThrow('no item');
});
