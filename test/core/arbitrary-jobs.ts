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
interface Gaps {
  readonly withBorders?: boolean;
}

function arrangement(pictures: number, gaps: Gaps, depth: number): fc.Arbitrary<WrittenNode> {
  const fixed = length(50, 90);
  const gap = fc.oneof(
    { weight: 3, arbitrary: fixed },
    ...(gaps.withBorders ? [fc.constant('share with borders')] : []),
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
    const shared = { rule: fc.constant(rule), ...weights, sides: border };
    const topFollows = ['equal-steps', 'equal-ratios', 'top-as-sides'].includes(rule);
    return topFollows ? fc.record(shared) : fc.record({ ...shared, top: border });
  });
}

type Shared = Pick<Contents, 'windows' | 'borders'>;

/** Windows and borders of a given frame, in which the rule shares what is left over. */
function shared(pictures: number, gaps: Gaps): fc.Arbitrary<Shared> {
  const rules = RULES.filter((rule) => rule !== 'equal');
  return fc.record({
    windows: arrangement(pictures, gaps, 2),
    borders: fc.record({ rule: fc.constantFrom(...rules), ...weights }),
  }) as fc.Arbitrary<Shared>;
}

/** Windows and borders of a given frame, in which the gaps of the outermost group take what is left over. */
function stretched(pictures: number): fc.Arbitrary<Shared> {
  const items = fc.array(arrangement(pictures, {}, 1), { minLength: 2, maxLength: 3 });
  const rules = RULES.filter((rule) => !['equal', 'by-hand', 'top-as-sides'].includes(rule));
  const rule = { rule: fc.constantFrom(...rules), ...weights };
  const between = fc.constant('share between');
  return fc.oneof(
    fc.record({
      windows: fc.record({ kind: fc.constant('row'), gap: between, align: fc.constantFrom('top', 'centre'), items }),
      borders: fc.record({ ...rule, sides: border }),
    }),
    fc.record({
      windows: fc.record({ kind: fc.constant('column'), gap: between, align: fc.constantFrom('left', 'right'), items }),
      borders: fc.record({ ...rule, top: border }),
    }),
    fc.record({
      windows: fc.record({
        kind: fc.constant('grid'),
        columns: fc.constant(2),
        gap: between,
        items: fc.array(arrangement(pictures, {}, 1), { minLength: 3, maxLength: 6 }),
      }),
      borders: fc.record({ ...rule, sides: border, top: border }),
    }),
  ) as fc.Arbitrary<Shared>;
}

/** Windows and borders of a frame made to fit. */
function fitted(pictures: number, gaps: Gaps): fc.Arbitrary<Shared> {
  return fc.record({ windows: arrangement(pictures, gaps, 2), borders: fittedBorders() }) as fc.Arbitrary<Shared>;
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

/** Frames made to fit their borders, given frames, and given frames whose gaps take what is left over. */
export type Wanted = 'made to fit' | 'given' | 'given, gaps take the rest';

/** Everything a job says but its heading; nearly all of them can be cut. */
export function contents(wanted: Wanted = 'made to fit'): fc.Arbitrary<Contents> {
  const gaps = { withBorders: true };
  const frame: fc.Arbitrary<Contents['frame']> =
    wanted === 'made to fit' ? fc.record(moulding) : fc.record({ size: fc.constant('6000 x 5400 mm'), ...moulding });
  return fc.array(picture, { minLength: 1, maxLength: 4 }).chain((pictures) => {
    const count = pictures.length;
    const arranged =
      wanted === 'made to fit' ? fitted(count, gaps) : wanted === 'given' ? shared(count, gaps) : stretched(count);
    const rest = fc.record({
      units: fc.constantFrom('in', 'mm', 'cm'),
      pictures: fc.constant(pictures),
      frame,
      mat: fc.record({ layers: layers(), measuredAt: fc.constantFrom('opening', 'face') }),
      free: fc.array(corner, { maxLength: 1 }),
      cutting: fc.record({ waste: fc.constantFrom('left', 'right') }),
    });
    return fc.tuple(rest, arranged).map(([most, windows]) => ({ ...most, ...windows }));
  }) as fc.Arbitrary<Contents>;
}
