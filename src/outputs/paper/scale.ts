/** Scales of the small drawings: those that rules have, so that one can be laid on them. */
import type { UnitName } from '../../bridge';
import type { Box, Point, Size } from '../../core/geometry/box';
import { fractions } from './type';

/** What a drawing is reduced by. */
const METRIC = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500];
const INCH = [1, 2, 4, 8, 12, 16, 24, 48, 96, 192];
/** The same with those of rules by tenths between them, where every bit of room counts. */
export const FINE_INCH: readonly number[] = [1, 2, 4, 5, 6, 8, 10, 12, 16, 24, 48, 96, 192];
/** And enlarged by. */
const ENLARGED = { metric: [10, 5, 2], inch: [8, 4, 2] } as const;

export interface Scale {
  /** From what is drawn to the paper. */
  readonly factor: number;
  /** `1 : 24, 1/2 in to the foot`. */
  readonly words: string;
}

/** The largest scale at which something is no larger than a room, and no larger than asked. */
export function scaleFor(
  size: Size,
  most: Size,
  unit: UnitName,
  enlarge: 'enlarged' | 'at most full' = 'at most full',
  inch: readonly number[] = INCH,
): Scale {
  const times = Math.min(most.width / size.width, most.height / size.height) * (1 + 1e-9);
  const isInch = unit === 'in';
  const enlarged =
    enlarge === 'enlarged' ? ENLARGED[isInch ? 'inch' : 'metric'].find((each) => each <= times) : undefined;
  if (enlarged !== undefined) return { factor: enlarged, words: `${enlarged} : 1` };
  const [ratio = beyond(1 / times)] = (isInch ? inch : METRIC).filter((each) => 1 / each <= times);
  return reduced(ratio, unit);
}

/** All scales at which something is no larger than a room, and no larger than it is, from the largest. */
export function scalesFor(size: Size, most: Size, unit: UnitName): readonly [Scale, ...Scale[]] {
  const largest = scaleFor(size, most, unit);
  const smaller = (unit === 'in' ? INCH : METRIC).filter((ratio) => 1 / ratio < largest.factor * (1 - 1e-9));
  return [largest, ...smaller.map((ratio) => reduced(ratio, unit))];
}

function reduced(ratio: number, unit: UnitName): Scale {
  const isInch = unit === 'in';
  const named = isInch ? TO_THE_FOOT[ratio] : undefined;
  const foot = named === undefined ? '' : `, ${fractions(named)} in to the foot`;
  return { factor: 1 / ratio, words: `1 : ${ratio}${foot}` };
}

/** Past the end of the series nothing is read off with a rule. */
function beyond(ratio: number): number {
  return Math.ceil(ratio / 1000) * 1000;
}

/** As the rules are named. */
const TO_THE_FOOT: Readonly<Record<number, string>> = {
  12: '1',
  16: '3/4',
  24: '1/2',
  48: '1/4',
  96: '1/8',
  192: '1/16',
};

/** Where a point of what is drawn, from its lower left corner, lies on the page. */
export type At = (point: Point) => Point;

export function atScale({ factor }: Scale, corner: Point): At {
  return ({ x, y }) => ({ x: corner.x + x * factor, y: corner.y + y * factor });
}

export function boxAtScale(at: At, box: Box): Box {
  const low = at({ x: box.left, y: box.bottom });
  const high = at({ x: box.right, y: box.top });
  return { left: low.x, bottom: low.y, right: high.x, top: high.y };
}
