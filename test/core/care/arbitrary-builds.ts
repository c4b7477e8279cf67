/** Random builds, well and badly kept, and what makes any of them better, or less known. */
import fc from 'fast-check';
import type { Quality } from '../../../src/core/job/package';
import { BACKINGS, GLAZINGS, HINGINGS } from '../../../src/core/job/written-package';
import { FIBRES } from '../../../src/core/job/written-material';
import { CONCERNS, PICTURE_KINDS } from '../../../src/core/job/written';
import type { Contents } from '../open';
import type { Package, Picture } from './kept';

const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

/** Without the keys that are undefined: a job file has none. */
function said<T extends object>(value: T): T {
  return Object.fromEntries(Object.entries(value).filter(([, inner]) => inner !== undefined)) as T;
}

const quality: fc.Arbitrary<Quality> = fc
  .record({
    fibre: maybe(fc.constantFrom(...FIBRES)),
    ph: maybe(fc.constantFrom(5.5, 6.4, 6.5, 6.9, 7, 7.5, 7.6, 8, 8.5, 9.5, 9.6, 10, 10.5)),
    reserve: maybe(fc.constantFrom(0, 1, 2, 3, 5, 6)),
    photoTested: maybe(fc.boolean()),
  })
  .map((one) => said(one) as Quality);

const thickness = fc.constantFrom('0.5 mm', '0.045 in', '1.4 mm', '1/16 in', '1/8 in');

const board = fc.record({ thickness, quality });

const parts: fc.Arbitrary<Package> = fc
  .record({
    glazing: fc.record({
      material: fc.constantFrom(...GLAZINGS),
      uvFilter: fc.boolean(),
      antistatic: fc.boolean(),
    }),
    spacer: maybe(fc.record({ thickness })),
    hinging: fc.record({ method: maybe(fc.constantFrom(...HINGINGS)), thickness: fc.constant('0.2 mm') }).map(said),
    mountBoard: fc.oneof(board, fc.constant({ without: true })),
    backing: fc.record({ material: fc.constantFrom(...BACKINGS), quality }),
    sealed: fc.boolean(),
    dustCover: fc.boolean(),
  })
  .map((one) => said(one) as Package);

const picture: fc.Arbitrary<Picture> = fc.record({
  kind: fc.constantFrom(...PICTURE_KINDS),
  size: fc.constantFrom('8 x 10 in', '11 x 14 in', '15 x 11 in', '400 x 500 mm'),
  overlap: fc.constantFrom('covers 1 mm', 'covers 2 mm', 'covers 1/8 in', 'covers 1/4 in', 'shows 1/4 in'),
  thickness: fc.constantFrom('0.25 mm', '2 mm'),
  concerns: fc.subarray([...CONCERNS]),
});

export const builds: fc.Arbitrary<Contents> = fc
  .record({
    units: fc.constantFrom('in', 'mm', 'cm'),
    pictures: fc.array(picture, { minLength: 1, maxLength: 2 }),
    frame: fc.record({
      size: fc.constantFrom('40 x 30 in', '48 x 30 in'),
      allowance: fc.constant('1/8 in'),
      lip: fc.constant('1/4 in'),
    }),
    mat: fc.record({
      layers: fc
        .array(board, { minLength: 1, maxLength: 2 })
        .map((layers) => layers.map((layer, index) => (index === 0 ? layer : { ...layer, reveal: '1/4 in' }))),
    }),
    windows: fc.constant(undefined),
    package: parts,
  })
  .map((one) => said(one) as Contents);

type Change = (build: Contents) => Contents;

const withParts =
  (change: (parts: Package) => Package): Change =>
  (build) => ({ ...build, package: change(build.package ?? {}) });

function withLayers(change: (layer: Layer) => Layer): Change {
  return (build) => ({ ...build, mat: { ...build.mat, layers: (build.mat?.layers ?? []).map(change) } });
}

type Layer = NonNullable<NonNullable<Contents['mat']>['layers']>[number];

const hasCyanotype = ({ pictures = [] }: Contents) => pictures.some(({ kind }) => kind === 'cyanotype');
const hasPaper = ({ pictures = [] }: Contents) =>
  pictures.some(({ kind }) => kind !== 'painting on canvas' && kind !== 'painting on panel');

/** pH 7.2 is within every band that is asked. */
const soundFor = (build: Contents): Quality => ({
  fibre: 'cotton',
  ph: 7.2,
  reserve: hasCyanotype(build) ? 0 : 3,
  photoTested: true,
});

/** None of these can make a build worse by any guidance. */
export const BETTER: Readonly<Record<string, Change>> = {
  'sounder mats': (build) => withLayers((layer) => ({ ...layer, quality: soundFor(build) }))(build),
  'mats of cotton': withLayers((layer) => ({ ...layer, quality: { ...layer.quality, fibre: 'cotton' } })),
  'neutral mats': withLayers((layer) => ({ ...layer, quality: { ...layer.quality, ph: 7.2 } })),
  'tested mats': withLayers((layer) => ({ ...layer, quality: { ...layer.quality, photoTested: true } })),
  'thicker mats': withLayers((layer) => ({ ...layer, thickness: '1/8 in' })),
  'a sound mount board': (build) =>
    withParts((all) => ({ ...all, mountBoard: { thickness: '1/8 in', quality: soundFor(build) } }))(build),
  'paper hinges': (build) =>
    build.pictures!.some(({ kind }) => kind === 'textile')
      ? build
      : withParts((all) => ({ ...all, hinging: { ...all.hinging, method: 'paper hinges' } }))(build),
  'a UV filter': withParts((all) => ({ ...all, glazing: { ...all.glazing, uvFilter: true } })),
  'treatment against charge': withParts((all) => ({ ...all, glazing: { ...all.glazing, antistatic: true } })),
  // To touch its glazing is worse for a painting than to have none.
  glass: (build) =>
    hasPaper(build) ? withParts((all) => ({ ...all, glazing: { ...all.glazing, material: 'glass' } }))(build) : build,
  'a thick spacer': withParts((all) => ({ ...all, spacer: { thickness: '1/4 in' } })),
  'fluted polypropylene': withParts((all) => ({ ...all, backing: { material: 'polypropylene board' } })),
  'sealed edges': withParts((all) => ({ ...all, sealed: true })),
  'a dust cover': withParts((all) => ({ ...all, dustCover: true })),
};

function without(value: Quality | undefined, key: keyof Quality): Quality {
  const { [key]: _, ...rest } = value ?? {};
  return rest;
}

/** What was known is known no more. */
export const LESS_KNOWN: Readonly<Record<string, Change>> = {
  ...Object.fromEntries(
    (['fibre', 'ph', 'reserve', 'photoTested'] as const).flatMap((key): [string, Change][] => [
      [`${key} of the mats`, withLayers((layer) => ({ ...layer, quality: without(layer.quality, key) }))],
      [
        `${key} of the mount board`,
        withParts((all) =>
          all.mountBoard?.quality
            ? { ...all, mountBoard: { ...all.mountBoard, quality: without(all.mountBoard.quality, key) } }
            : all,
        ),
      ],
      [
        `${key} of the backing`,
        withParts((all) => ({ ...all, backing: { ...all.backing, quality: without(all.backing?.quality, key) } })),
      ],
    ]),
  ),
  'how it is held': withParts((all) => ({ ...all, hinging: { thickness: '0.2 mm' } })),
  'the UV filter': withParts((all) => ({ ...all, glazing: { ...all.glazing, uvFilter: false } })),
  'the seal': withParts((all) => ({ ...all, sealed: false })),
};
