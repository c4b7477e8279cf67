/** Random jobs for properties: every length is written out with its unit, so that nothing hangs on defaults. */
import fc from 'fast-check';
import type { Contents } from './open';
import type { WrittenNode } from '../../src/core/job/written';

type Picture = NonNullable<Contents['pictures']>[number];
type Layer = NonNullable<NonNullable<Contents['mat']>['layers']>[number];

/** A written length between two numbers of millimetres, in one of the ways people write. */
export function length(least: number, most: number): fc.Arbitrary<string> {
  const count = (unit: number) => fc.integer({ min: Math.ceil(least / unit), max: Math.floor(most / unit) });
  return fc.oneof(
    count(0.1).map((tenths) => `${tenths / 10} mm`),
    count(25.4 / 32).map((parts) => `${Math.floor(parts / 32)} ${parts % 32}/32 in`),
    count(1).map((millimetres) => `${(millimetres / 10).toFixed(1).replace('.', ',')} cm`),
    count(25.4 / 16).map((parts) => `${parts}/16"`),
  );
}

function perSide<T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | { left: T; top: T; right: T; bottom: T }> {
  return fc.oneof(value, fc.record({ left: value, top: value, right: value, bottom: value }));
}

const overlap = fc.oneof(
  length(2, 9).map((text) => `covers ${text}`),
  length(2, 9),
  length(1, 20).map((text) => `shows ${text}`),
);

function sheet(wider: number): fc.Arbitrary<string> {
  const side = fc.integer({ min: 2000 + wider, max: 4000 });
  return fc.tuple(side, side).map(([width, height]) => `${width / 10} x ${height / 10} mm`);
}

const image = fc.integer({ min: 1500, max: 1900 }).map((side) => `${side / 10} x ${side / 8} mm`);

const picture: fc.Arbitrary<Picture> = fc.oneof(
  fc.record({ size: sheet(0), overlap: perSide(overlap), thickness: fc.constant('0.3 mm') }),
  fc.record({
    size: sheet(400),
    image,
    overlapFrom: fc.constantFrom('image', 'sheet'),
    overlap: perSide(overlap),
    thickness: fc.constant('0.3 mm'),
  }),
);

const bevel = fc.record({
  angle: fc.constantFrom(45, 45, 0, 30, 60, 52.5),
  direction: fc.constantFrom('standard', 'standard', 'reverse'),
});

function layers(): fc.Arbitrary<Layer[]> {
  const top = fc.record({ thickness: length(1, 3), bevel });
  const lower = fc.record({ thickness: length(1, 3), bevel, reveal: perSide(length(0, 4)) });
  return fc.tuple(top, fc.array(lower, { maxLength: 3 })).map(([first, rest]) => [first, ...rest]);
}

/** What the gaps of an arrangement may be. */
export interface Gaps {
  readonly withBorders?: boolean;
  readonly between?: boolean;
}

function arrangement(pictures: number, gaps: Gaps, depth: number): fc.Arbitrary<WrittenNode> {
  const fixed = length(50, 90);
  const gap = fc.oneof(
    { weight: 3, arbitrary: fixed },
    ...(gaps.withBorders ? [fc.constant('share with borders')] : []),
    ...(gaps.between ? [fc.constant('share between')] : []),
  );
  const reference = fc.integer({ min: 1, max: pictures });
  const leaf: fc.Arbitrary<WrittenNode> = fc.oneof(
    { weight: 4, arbitrary: reference.map((number) => ({ kind: 'window' as const, picture: number })) },
    { weight: 2, arbitrary: reference.map(String) },
    {
      weight: 1,
      arbitrary: fc.record({
        kind: fc.constant('window' as const),
        use: fc.constantFrom('title', 'caption', 'signature', 'empty'),
        size: fc.record({ width: length(60, 120), height: length(20, 60) }),
      }),
    },
    {
      weight: 1,
      arbitrary: fc
        .record({
          kind: fc.constant('spread' as const),
          picture: reference,
          along: fc.constantFrom('row', 'column'),
          bars: fc.constantFrom('hide', 'split'),
          gap: length(30, 40),
        })
        .chain((spread) =>
          fc.array(fc.integer({ min: 2, max: 5 }), { minLength: 2, maxLength: 3 }).map((shares) => ({
            ...spread,
            count: shares.length,
            shares,
          })),
        ),
    },
  );
  if (depth === 0) return leaf;
  const inner = fc.oneof(
    { weight: 2, arbitrary: leaf },
    { weight: 1, arbitrary: arrangement(pictures, gaps, depth - 1) },
  );
  const items = fc.array(inner, { minLength: 1, maxLength: 3 });
  return fc.oneof(
    fc.record({
      kind: fc.constant('row' as const),
      items,
      gap,
      align: fc.constantFrom('top', 'centre', 'bottom', 'baseline'),
    }),
    fc.record({ kind: fc.constant('column' as const), items, gap, align: fc.constantFrom('left', 'centre', 'right') }),
    fc.record({
      kind: fc.constant('grid' as const),
      items: fc.array(inner, { minLength: 2, maxLength: 6 }),
      columns: fc.integer({ min: 1, max: 3 }),
      columnGap: gap,
      rowGap: gap,
      alignColumns: fc.constantFrom('left', 'centre', 'right'),
      alignRows: fc.constantFrom('top', 'centre', 'bottom', 'baseline'),
    }),
  ) as fc.Arbitrary<WrittenNode>;
}

export const RULES = [
  'centred', 'equal', 'bottom-amount', 'bottom-ratio', 'height-share', 'equal-steps', 'equal-ratios', 'top-as-sides', 'by-hand',
] as const; // prettier-ignore

const weights = {
  measured: fc.constantFrom('as cut', 'as seen'),
  amount: length(2, 40),
  ratio: fc.constantFrom(1.05, 1.1, 1.2),
  share: fc.constantFrom('45:55', '40/60', '2 : 3', '1:1'),
  step: length(1, 20),
} as const;

const border = length(90, 150);
const handGiven = { left: border, right: border, top: border, bottom: border };

/** Borders of a frame made to fit. */
function fittedBorders(): fc.Arbitrary<NonNullable<Contents['borders']>> {
  return fc.constantFrom(...RULES).chain((rule): fc.Arbitrary<NonNullable<Contents['borders']>> => {
    if (rule === 'by-hand') return fc.record({ rule: fc.constant(rule), ...weights, ...handGiven });
    if (rule === 'equal') return fc.record({ rule: fc.constant(rule), ...weights, all: border });
    const given = rule === 'equal-steps' || rule === 'equal-ratios' || rule === 'top-as-sides' ? {} : { top: border };
    return fc.record({ rule: fc.constant(rule), ...weights, sides: border, ...given });
  });
}

/** Borders of a given frame: shared by the rule, or given where a gap takes the rest. */
function sharedBorders(gaps: Gaps): fc.Arbitrary<NonNullable<Contents['borders']>> {
  if (gaps.between) return fc.record({ rule: fc.constant('by-hand' as const), ...weights, ...handGiven });
  const rules = RULES.filter((rule) => rule !== 'equal');
  return fc.constantFrom(...rules).chain((rule) => fc.record({ rule: fc.constant(rule), ...weights }));
}

const moulding = {
  allowance: length(1, 4),
  lip: length(4, 8),
  mouldingWidth: length(15, 40),
};

const corner = fc.record({
  size: fc.constant('10 x 10 mm'),
  use: fc.constant('signature' as const),
  at: fc.constantFrom({ left: '25 mm', bottom: '25 mm' }, { right: '25 mm', top: '25 mm' }),
});

export interface Wanted extends Gaps {
  readonly frame?: 'given' | 'made to fit';
}

/** Everything a job says but its heading; nearly all of them can be cut. */
export function contents(wanted: Wanted = { withBorders: true }): fc.Arbitrary<Contents> {
  const { frame = 'made to fit' } = wanted;
  return fc.array(picture, { minLength: 1, maxLength: 4 }).chain((pictures) =>
    fc.record({
      units: fc.constantFrom('in', 'mm', 'cm'),
      pictures: fc.constant(pictures),
      frame: frame === 'given' ? fc.record({ size: fc.constant('6000 x 5400 mm'), ...moulding }) : fc.record(moulding),
      mat: fc.record({ layers: layers(), measuredAt: fc.constantFrom('opening', 'face') }),
      windows: arrangement(pictures.length, wanted, 2),
      free: fc.array(corner, { maxLength: 1 }),
      borders: frame === 'given' ? sharedBorders(wanted) : fittedBorders(),
      cutting: fc.record({ waste: fc.constantFrom('left', 'right') }),
    }),
  ) as fc.Arbitrary<Contents>;
}
