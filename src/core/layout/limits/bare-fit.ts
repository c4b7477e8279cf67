/** How a picture without a mat sits in its frame: held by the lip, loose, tight, or with a gap all round. */
import { sizeOf, type Size } from '../../geometry/box';
import { assert, type Problem } from '../../problem';
import type { BarePicture } from '../bare-picture';
import type { FrameSizes, PlacedLayout } from '../layout';
import type { Show } from '../show';
import { bareRemedy } from './bare-remedy';
import { HOLD_WARN } from './pictures';
import { SLACK, titled } from './slack';

const AXES = [
  { side: 'width', along: 'across', short: 'narrow' },
  { side: 'height', along: 'up and down', short: 'low' },
] as const;
type Axis = (typeof AXES)[number];

/** A picture in its frame, with what messages say of both. */
interface Fitted {
  readonly frame: FrameSizes;
  readonly size: Size;
  readonly at: string;
  readonly name: string;
  readonly show: Show;
}

export function bareFit({ frame, windows }: PlacedLayout, bare: BarePicture, show: Show): Problem[] {
  const placed = windows[0]?.picture;
  assert(placed, 'a job without a mat shows its picture');
  const name = `Picture ${titled(bare.picture.title) || `${bare.index + 1} `}`;
  const fitted = { frame, size: sizeOf(placed.sheet), at: `pictures[${bare.index}].size`, name, show };
  const larger = AXES.filter(({ side }) => fitted.size[side] > frame.rabbet[side] + SLACK);
  if (larger.length > 0) return [doesNotGoIn(fitted)];
  return frame.isFloat ? otherGap(fitted) : [...fallsThrough(fitted), ...tight(fitted), ...loose(fitted)];
}

function doesNotGoIn(fitted: Fitted): Problem {
  const { frame, size, name, show } = fitted;
  const room = show.size(frame.rabbet);
  const { remedy, fix } = bareRemedy(size, frame, show);
  const inside = frame.isFloat ? 'inside the float frame' : 'between the walls of the rabbet';
  return {
    code: 'picture-larger-than-frame',
    severity: 'error',
    at: fitted.at,
    message: `${name}is ${show.size(size)} and does not go in: ${inside} there is room for ${room}. ${sentence(remedy)}`,
    value: show.size(size),
    limit: room,
    remedy,
    fix,
  };
}

/** Not held where the opening is as large as the picture, or larger. */
function fallsThrough(fitted: Fitted): Problem[] {
  const { frame, size, name, show } = fitted;
  const past = AXES.filter((axis) => isThrough(fitted, axis));
  if (past.length === 0) return [];
  const { remedy, fix } = bareRemedy(size, frame, show);
  const what = past.length === AXES.length ? 'would fall through' : 'does not close';
  const lacks = past.map((axis) => lackOf(fitted, axis)).join(' and ');
  return [
    {
      code: 'picture-falls-through',
      severity: 'error',
      at: fitted.at,
      message: `${name}is ${show.size(size)} and ${what} the front of the frame, which is open for ${show.size(frame.sight)}: it is ${lacks}, and the lip has to cover it besides. ${sentence(`${remedy}, or a mat in this one`)}`,
      value: show.size(size),
      limit: show.size(frame.sight),
      remedy,
      fix,
    },
  ];
}

function lackOf({ frame, size, show }: Fitted, { side, short }: Axis): string {
  const lack = frame.sight[side] - size[side];
  return lack > SLACK ? `${show.length(lack)} too ${short}` : `no ${side === 'width' ? 'wider' : 'higher'} than that`;
}

function isThrough({ frame, size }: Fitted, { side }: Axis): boolean {
  return size[side] <= frame.sight[side] + SLACK;
}

/** Larger than the frame size, and still within the rabbet. */
function tight({ frame, size, at, name, show }: Fitted): Problem[] {
  const over = AXES.filter(({ side }) => size[side] > frame.blank[side] + SLACK);
  if (over.length === 0) return [];
  const left = over.map(({ side, along }) => `${show.length(frame.rabbet[side] - size[side])} ${along}`).join(' and ');
  return [
    {
      code: 'picture-tight',
      severity: 'warning',
      at,
      message: `${name}is ${show.size(size)}, larger than the frame size of ${show.size(frame.blank)}: the rabbet leaves it ${left} of play in all. Measure it at its corners, where canvas is folded and thickest, and force nothing.`,
      value: show.size(size),
      limit: show.size(frame.blank),
      remedy: 'measure it at its corners, or take a frame one size up',
    },
  ];
}

/** Smaller than the frame size, or under a lip so narrow, that it has to be kept in the middle. */
function loose(fitted: Fitted): Problem[] {
  const { frame, size, name, show } = fitted;
  // What falls through has more to it than its play.
  if (AXES.some((axis) => isThrough(fitted, axis))) return [];
  const held = AXES.map((axis) => {
    const play = frame.rabbet[axis.side] - size[axis.side];
    return { ...axis, play, aside: frame.lip - play, smaller: size[axis.side] < frame.blank[axis.side] - SLACK };
  });
  const slips = held.filter(({ aside }) => aside < HOLD_WARN - SLACK);
  const told = slips.length > 0 ? slips : held.filter(({ smaller }) => smaller);
  if (told.length === 0) return [];
  const play = told.map((axis) => `${show.length(axis.play)} ${axis.along}`).join(' and ');
  const worst = Math.min(...told.map(({ aside }) => aside));
  const aside =
    worst <= SLACK
      ? 'its edge would show at the other'
      : `it is covered by only ${show.missing(worst, HOLD_WARN)} at the other`;
  const padded = 'keep it in the middle with strips of board at its edges';
  const own = told.some(({ smaller }) => smaller) ? bareRemedy(size, frame, show) : undefined;
  return [
    {
      code: 'picture-loose',
      severity: slips.length > 0 ? 'warning' : 'note',
      at: fitted.at,
      message: `${name}is ${show.size(size)} in a frame of ${show.size(frame.blank)}: its play in the rabbet is ${play}, and pushed to one side ${aside}. ${sentence(own ? `${padded}, or ${own.remedy}` : padded)}`,
      value: play,
      remedy: own ? `${padded}, or ${own.remedy}` : padded,
      ...(own ? { fix: own.fix } : {}),
    },
  ];
}

/** A float frame is sold for one size of canvas; with another the gap is another. */
function otherGap({ frame, size, at, name, show }: Fitted): Problem[] {
  if (AXES.every(({ side }) => Math.abs(size[side] - frame.blank[side]) <= SLACK)) return [];
  const gaps = AXES.map(({ side, along }) => `${show.length((frame.rabbet[side] - size[side]) / 2)} ${along}`);
  return [
    {
      code: 'float-gap-differs',
      severity: 'note',
      at,
      message: `${name}is ${show.size(size)} in a float frame for ${show.size(frame.blank)}: the gap on each side comes to ${gaps.join(' and ')}, and not to ${show.length(frame.allowance / 2)}.`,
      value: gaps.join(' and '),
      limit: show.length(frame.allowance / 2),
    },
  ];
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
