/** Grooves and ruled lines: on the board and in sight, clear of one another and of other windows, grooves no deeper than the board. */
import type { FaceLine } from '../../job/job';
import type { Problem } from '../../problem';
import type { Leaf } from '../cells';
import { grooveDepth } from '../face-lines';
import type { PlacedLayout, PlacedWindow } from '../layout';
import { lineWord } from '../line-words';
import type { Show } from '../show';
import { distanceWithRoom, insetOf, meetingsOf, type Meeting } from './line-rings';
import { Gaps } from './ring-gaps';
import { SLACK, titled } from './slack';
import { capital } from '../../phrases';

/** A groove deeper than this part of the board leaves too little under it. Common practice, no source. */
const DEEPEST = 2 / 3;

interface Setting {
  readonly layout: PlacedLayout;
  readonly leaves: readonly Leaf[];
  readonly show: Show;
  readonly gaps: Gaps;
}

/** Each line of the job once, however many windows have it. */
export function lineProblems(layout: PlacedLayout, leaves: readonly Leaf[], show: Show): Problem[] {
  const lists = leaves.map(({ lines }) => lines).filter((list) => list.length > 0);
  if (lists.length === 0) return [];
  const setting = { layout, leaves, show, gaps: new Gaps() };
  const lines = [...new Map(lists.flat().map((line) => [line.at, line])).values()];
  const alone = lines.flatMap((line) => [...tooNear(line, setting), ...tooDeep(line, setting)]);
  return [
    ...alone,
    ...overlapping([...new Set(lists)], show),
    ...lines.flatMap((line) => [
      ...unfollowed(line, setting),
      ...beyond(line, setting),
      ...cornersLost(line, setting),
      ...cornersBlunted(line, setting),
    ]),
    ...crossing(setting),
  ];
}

/** Half the width of a groove, and where the bevel leaves less board under it than that: both must lie outside the window. */
function leastDistance(line: FaceLine, { layers }: PlacedLayout): number {
  const bevel = layers[0]?.bevel;
  const undercut = line.kind === 'groove' && bevel?.direction === 'reverse' && bevel.run > 0;
  const under = undercut ? grooveDepth(line) * Math.tan((bevel.angleDegrees * Math.PI) / 180) : 0;
  return Math.max(line.width / 2, under);
}

function tooNear(line: FaceLine, { layout, show }: Setting): Problem[] {
  const least = leastDistance(line, layout);
  if (line.distance > least + SLACK) return [];
  const right = show.stepUp(least + 2 * SLACK);
  return [
    {
      code: 'line-meets-window',
      severity: 'error',
      at: `${line.at}.distance`,
      message: `${capital(wordOf(line))} ${show.limit(line.width)} wide with its middle ${show.length(line.distance)} from the window runs into the window's own edge; it must be more than ${show.limit(least)} away.`,
      value: show.missing(line.distance, least),
      limit: `more than ${show.limit(least)}`,
      remedy: `${show.limit(right)} or more`,
      fix: {
        label: `Move it to ${show.limit(right)}`,
        edits: [{ at: `${line.at}.distance`, value: show.exact(right) }],
      },
    },
  ];
}

function tooDeep(line: FaceLine, { layout: { layers }, show }: Setting): Problem[] {
  const thickness = layers[0]?.thickness;
  if (line.kind !== 'groove' || thickness === undefined) return [];
  const depth = grooveDepth(line);
  const through = depth >= thickness - SLACK;
  if (depth <= thickness * DEEPEST + SLACK) return [];
  const most = 2 * thickness * DEEPEST * Math.tan((line.angleDegrees * Math.PI) / 180);
  const right = show.stepDown(most) || Math.floor(most * 20) / 20;
  const found = `A groove ${show.limit(line.width)} wide with slopes of ${line.angleDegrees}° goes ${show.limit(depth)} into the top layer`;
  return [
    {
      code: 'groove-too-deep',
      severity: through ? 'error' : 'warning',
      at: `${line.at}.width`,
      message: through
        ? `${found}, which is only ${show.limit(thickness)} thick: it would cut through. Make it ${show.limit(right)} wide or less.`
        : `${found}, which is ${show.limit(thickness)} thick: under a third of the board is left below it, and it breaks there. Make it ${show.limit(right)} wide or less.`,
      value: show.limit(depth),
      limit: show.limit(thickness),
      remedy: `${show.limit(right)} wide or less`,
      fix: {
        label: `Make it ${show.limit(right)} wide`,
        edits: [{ at: `${line.at}.width`, value: show.exact(right) }],
      },
    },
  ];
}

/** Two lines round one window that leave no board between them. */
function overlapping(lists: readonly (readonly FaceLine[])[], show: Show): Problem[] {
  return lists.flatMap((list) =>
    list.flatMap((line, index): Problem[] => {
      const other = list
        .slice(0, index)
        .find((one) => Math.abs(one.distance - line.distance) <= (one.width + line.width) / 2 + SLACK);
      if (!other) return [];
      const apart = (other.width + line.width) / 2;
      const right = show.stepUp(other.distance + apart + 2 * SLACK);
      const found = show.missing(Math.abs(other.distance - line.distance), apart);
      return [
        {
          code: 'lines-overlap',
          severity: 'error',
          at: `${line.at}.distance`,
          message: `${capital(wordOf(line))} ${show.length(line.distance)} from the window lies on ${wordOf(other)} ${show.length(other.distance)} from it: their middles are ${found} apart and must be more than ${show.limit(apart)}. Move one, or take one away.`,
          value: found,
          limit: `more than ${show.limit(apart)}`,
          remedy: `${show.limit(right)} from the window`,
          fix: {
            label: `Move it to ${show.limit(right)}`,
            edits: [{ at: `${line.at}.distance`, value: show.exact(right) }],
          },
        },
      ];
    }),
  );
}

function unfollowed(line: FaceLine, { layout, leaves }: Setting): Problem[] {
  const missed = layout.windows.filter(
    ({ lines }, index) => leaves[index]?.lines.includes(line) && !lines.some((placed) => placed.line === line),
  );
  const [first, ...more] = missed;
  if (!first) return [];
  return [
    {
      code: 'line-cannot-be-followed',
      severity: 'error',
      at: `${line.at}.distance`,
      message: `${capital(wordOf(line))} cannot follow window ${nameOf(first, more.length)}: so far out the shape runs into itself. Bring it nearer to the window, or take it away there.`,
      remedy: 'a smaller distance from the window, or no such line there',
    },
  ];
}

/** Bends that the window still has on the face, but not so far out. */
function cornersLost(line: FaceLine, { layout }: Setting): Problem[] {
  const [first, ...more] = layout.windows.filter(({ lines }) =>
    lines.some((placed) => placed.line === line && placed.vanished > 0),
  );
  if (!first) return [];
  return [
    {
      code: 'corner-vanishes',
      severity: 'note',
      at: `${line.at}.distance`,
      message: `${capital(wordOf(line))} loses small bends of window ${nameOf(first, more.length)}: so far out they are shorter than the distance takes away, and their neighbours meet in a corner.`,
    },
  ];
}

/** Points of a window's shape that so far out would be needles. */
function cornersBlunted(line: FaceLine, { layout }: Setting): Problem[] {
  const [first, ...more] = layout.windows.filter(({ lines }) =>
    lines.some((placed) => placed.line === line && placed.blunted > 0),
  );
  if (!first) return [];
  return [
    {
      code: 'corner-blunted',
      severity: 'note',
      at: `${line.at}.distance`,
      message: `${capital(wordOf(line))} cannot keep all corners of window ${nameOf(first, more.length)} as points: so far out they would be needles, and are rounded or cut off.`,
    },
  ];
}

/** Past the edge of the board, or where the frame hides it; told of the window where it lies furthest out. */
function beyond(line: FaceLine, setting: Setting): Problem[] {
  const { layout, show, gaps } = setting;
  const { lip } = layout.frame;
  const found = layout.windows
    .flatMap((window) =>
      window.lines.filter((placed) => placed.line === line).map((placed) => ({ window, ...insetOf(placed, layout) })),
    )
    .filter(({ inset }) => inset < lip - SLACK)
    .sort((a, b) => a.inset - b.inset);
  const [worst, ...more] = found;
  if (!worst) return [];
  const off = worst.inset <= SLACK;
  const least = leastDistance(line, layout);
  const right =
    distanceWithRoom(line.at, layout, show, least, lip, gaps) ??
    (off ? distanceWithRoom(line.at, layout, show, least, 0, gaps) : undefined);
  const remedy =
    right === undefined ? 'a wider border, or no such line there' : `${show.limit(right)} from the window or less`;
  const what = `${capital(wordOf(line))} ${show.length(line.distance)} outside window ${nameOf(worst.window, more.length)}`;
  const message = off
    ? `${what} reaches ${show.length(-worst.inset)} past the ${worst.side} edge of the board`
    : `${what} comes as near as ${show.missing(worst.inset, lip)} to the ${worst.side} edge of the board, and the frame's lip may hide ${show.limit(lip)} there`;
  return [
    {
      code: off ? 'line-off-the-board' : 'line-behind-lip',
      severity: off ? 'error' : 'warning',
      at: `${line.at}.distance`,
      message: `${message}. ${right === undefined ? 'Make the border wider, or take it away there.' : `Bring it to ${remedy}.`}`,
      value: show.missing(worst.inset, off ? 0 : lip),
      limit: off ? show.limit(0) : show.limit(lip),
      remedy,
      ...moveTo(line, right, show),
    },
  ];
}

/** One problem for each line that meets another, or a window. */
function crossing({ layout, show, gaps }: Setting): Problem[] {
  const groups = new Map<string, Meeting[]>();
  for (const meeting of meetingsOf(
    layout.windows.map((window) => ({ window, lines: window.lines })),
    gaps,
  )) {
    const group = groups.get(meeting.line.at);
    if (group) group.push(meeting);
    else groups.set(meeting.line.at, [meeting]);
  }
  return [...groups.values()].flatMap((group): Problem[] => {
    const [meeting] = group;
    if (!meeting) return [];
    // A line may run into several lines of one window.
    const more = new Set(group.map(({ one, other }) => [one.name, other.name].sort().join(' '))).size - 1;
    const { one, line, other, into } = meeting;
    const right = distanceWithRoom(line.at, layout, show, leastDistance(line, layout), 0, gaps);
    const remedy =
      right === undefined ? 'a wider gap, or no such line there' : `${show.limit(right)} from the window or less`;
    const met = into ? `the ${lineWord(into)} round window ${other.name}` : `window ${other.name}`;
    const others = more > 0 ? ` (and at ${more} more ${more === 1 ? 'place' : 'places'})` : '';
    return [
      {
        code: 'line-meets-another',
        severity: 'error',
        at: `${line.at}.distance`,
        message: `${capital(wordOf(line))} ${show.length(line.distance)} outside window ${nameOf(one, 0)} runs into ${met}${others}. ${right === undefined ? 'Widen the gap, or take the line away there.' : `Bring it to ${remedy}.`}`,
        value: show.length(line.distance),
        ...(right === undefined ? {} : { limit: show.limit(right) }),
        remedy,
        ...moveTo(line, right, show),
      },
    ];
  });
}

function moveTo(line: FaceLine, distance: number | undefined, show: Show): Pick<Problem, 'fix'> {
  if (distance === undefined) return {};
  return {
    fix: {
      label: `Bring it to ${show.limit(distance)}`,
      edits: [{ at: `${line.at}.distance`, value: show.exact(distance) }],
    },
  };
}

function wordOf(line: FaceLine): string {
  return `a ${lineWord(line)}`;
}

function nameOf({ name, title }: PlacedWindow, more: number): string {
  return `${name} ${titled(title)}`.trimEnd() + (more > 0 ? ` (and ${more} more)` : '');
}
