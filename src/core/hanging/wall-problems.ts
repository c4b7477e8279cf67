/** What is wrong on the wall: frames in each other, off the wall, too near to furniture, or in people's way. */
import type { Show } from '../layout/show';
import { massText } from '../mass';
import type { Unit } from '../units';
import type { Problem } from '../problem';
import type { HangingPlan } from './hanging-plan';
import { ABOVE_FURNITURE, PROTRUSION } from './limits';
import type { HungFrame, MeasuredFrame, WallPlan } from './wall-plan';
import { capital } from '../phrases';

/** What double arithmetic may add or lose, mm. */
const SLACK = 1e-6;

/** Hooks that no frame can have. */
export function impossibleHooks(frames: readonly MeasuredFrame[], show: Show): Problem[] {
  return unique(frames).flatMap(({ at, size, drop, hooksApart }): Problem[] => [
    ...(drop < size.height - SLACK
      ? []
      : [
          {
            code: 'hook-below-frame',
            severity: 'error' as const,
            at: `${at}.drop`,
            message: `The hook would sit ${show.length(drop)} below the top of a frame ${show.length(size.height)} high.`,
            value: show.missing(drop, size.height),
            limit: show.limit(size.height),
            remedy: 'measure from the top of the frame to where the taut wire or the ring sits',
          },
        ]),
    ...(hooksApart <= size.width + SLACK
      ? []
      : [
          {
            code: 'hooks-too-far-apart',
            severity: 'error' as const,
            at: `${at}.hooksApart`,
            message: `The hooks would be ${show.length(hooksApart)} apart, and the frame is only ${show.length(size.width)} wide.`,
            value: show.missing(hooksApart, size.width),
            limit: show.limit(size.width),
            remedy: `${show.limit(size.width)} or less`,
          },
        ]),
  ]);
}

/** One for each entry of the job's list. */
function unique<T extends MeasuredFrame>(frames: readonly T[]): T[] {
  return [...new Map(frames.map((frame) => [frame.at, frame])).values()];
}

export function wallProblems(wall: WallPlan, plan: HangingPlan, units: Unit, show: Show): Problem[] {
  return once([
    ...offTheWall(wall, show),
    ...overlapping(wall, show),
    ...aboveFurniture(wall, show),
    ...nailsInSight(wall, show),
    ...inTheWay(wall, show),
    ...tooHeavy(wall, plan, units),
  ]);
}

/** Of several of one kind at one place the first, with how many more there are. */
function once(problems: readonly Problem[]): Problem[] {
  const lots = new Map<string, Problem[]>();
  for (const problem of problems) {
    const key = `${problem.code} ${problem.at}`;
    lots.set(key, [...(lots.get(key) ?? []), problem]);
  }
  return [...lots.values()].flatMap(([first, ...others]) => {
    if (!first || others.length === 0) return first ?? [];
    const more = others.length === 1 ? 'There is one more like it.' : `There are ${others.length} more like it.`;
    return { ...first, message: `${first.message} ${more}` };
  });
}

/** `frame 2, “Lady fern”`. */
export function frameName({ number, title }: HungFrame): string {
  return title === '' ? `frame ${number}` : `frame ${number}, “${title.slice(0, 40)}”`;
}

function offTheWall({ width, height, frames, most }: WallPlan, show: Show): Problem[] {
  const fit = most === undefined ? '' : ` At most ${most} fit.`;
  return frames.flatMap((frame) => {
    const { box } = frame;
    const aside = width === undefined ? 0 : Math.max(-box.left, box.right - width);
    const above = height === undefined ? 0 : box.top - height;
    return [
      ...past('frame-off-wall', frame, aside, { what: 'the edge of the wall', at: 'wall', more: fit }, show),
      ...past('frame-above-ceiling', frame, above, { what: 'the ceiling', at: 'wall.height' }, show),
      ...past('frame-below-floor', frame, -box.bottom, { what: 'the floor', at: 'wall.centre' }, show),
    ];
  });
}

interface Bound {
  readonly what: string;
  readonly at: string;
  readonly more?: string;
}

/** Nothing where a frame reaches past it by no more than doubles lose on their way. */
function past(code: string, frame: HungFrame, by: number, { what, at, more = '' }: Bound, show: Show): Problem[] {
  if (by <= SLACK) return [];
  const message = `${capital(frameName(frame))} reaches ${show.length(by)} past ${what}.${more}`;
  return [{ code, severity: 'warning', at, message, value: show.length(by), remedy: `${show.length(by)} further in` }];
}

function overlapping({ frames }: WallPlan, show: Show): Problem[] {
  const pairs = frames.flatMap((one, index) =>
    frames.slice(index + 1).flatMap((other) => {
      const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
      const up = Math.min(one.box.top, other.box.top) - Math.max(one.box.bottom, other.box.bottom);
      return across > SLACK && up > SLACK ? [{ one, other, by: Math.min(across, up) }] : [];
    }),
  );
  return pairs.map(({ one, other, by }) => ({
    code: 'frames-overlap',
    severity: 'warning',
    at: other.at,
    message: `${capital(frameName(one))}, and ${frameName(other)} lie ${show.length(by)} in each other.`,
    value: show.length(by),
    remedy: `${show.length(by)} more between them`,
  }));
}

function aboveFurniture({ furniture, frames }: WallPlan, show: Show): Problem[] {
  if (furniture === undefined) return [];
  const [lowest] = frames.toSorted((a, b) => a.box.bottom - b.box.bottom);
  const gap = (lowest?.box.bottom ?? Infinity) - furniture;
  if (!lowest || gap >= ABOVE_FURNITURE - SLACK) return [];
  return [
    {
      code: 'near-furniture',
      severity: gap < 0 ? 'warning' : 'note',
      at: 'wall.furniture',
      message: `The lower edge of ${frameName(lowest)} lies ${
        gap < 0 ? `${show.length(-gap)} behind` : `only ${show.length(gap)} above`
      } what stands below; ${show.limit(ABOVE_FURNITURE)} or more is usual (Sacher and LaGasa, as quoted).`,
      value: show.length(gap),
      limit: show.limit(ABOVE_FURNITURE),
      remedy: `a centre line ${show.length(ABOVE_FURNITURE - gap)} higher`,
    },
  ];
}

/** A nail above the frame it holds is seen. */
function nailsInSight({ frames }: WallPlan, show: Show): Problem[] {
  return unique(frames).flatMap((frame): Problem[] => {
    const by = Math.max(...frame.hooks.map(({ nail }) => (nail ? nail.y - frame.box.top : -Infinity)));
    if (by <= SLACK) return [];
    return [
      {
        code: 'nail-in-sight',
        severity: 'warning',
        at: frame.isOwn ? 'hanging.hook.seat' : `${frame.at}.drop`,
        message: `The nail of ${frameName(frame)} comes to lie ${show.length(by)} above its upper edge, where it is seen: its hook sits ${show.length(frame.drop)} below that edge, and the hole lies higher by the hook's own length.`,
        value: show.length(by),
        remedy: 'a shorter hook, or a hanger or wire further below the top',
      },
    ];
  });
}

/** ADAAG 4.4.1 is about walks, halls, corridors, passageways and aisles. */
function inTheWay({ frames }: WallPlan, show: Show): Problem[] {
  const { most, from, to } = PROTRUSION;
  return unique(
    frames.filter(
      ({ box, front }) => (front ?? 0) > most + SLACK && box.bottom > from + SLACK && box.bottom < to - SLACK,
    ),
  ).map((frame) => ({
    code: 'frame-stands-off',
    severity: 'warning',
    at: frame.isOwn ? 'frame.mouldingDepth' : `${frame.at}.depth`,
    message: `${capital(frameName(frame))} stands ${show.length(frame.front ?? 0)} off the wall, its lower edge ${show.length(frame.box.bottom)} above the floor. Where people walk along it, ${show.limit(most)} is the most from ${show.limit(from)} to ${show.limit(to)} above the floor (ADAAG 4.4.1): a cane does not find it.`,
    value: show.length(frame.front ?? 0),
    limit: show.limit(most),
    remedy: 'a flatter frame there, or something on the floor below it that a cane finds',
  }));
}

/** Of the job's own frame the loads are known better, and told with its plan. */
function tooHeavy({ frames }: WallPlan, plan: HangingPlan, units: Unit): Problem[] {
  const hook = plan.carried.find(({ part }) => part === 'hook');
  if (hook?.load === undefined) return [];
  const { load } = hook;
  return unique(frames).flatMap((frame): Problem[] => {
    if (frame.isOwn || frame.weight === undefined) return [];
    const each = frame.weight / frame.hooks.length;
    if (each <= load) return [];
    return [
      {
        code: 'over-rated-load',
        severity: 'warning',
        at: `${frame.at}.weight`,
        message: `Each hook of ${frameName(frame)} carries ${massText(each, units)}, and may carry ${massText(load, units)} (${hook.basis ?? 'as given'}).`,
        value: massText(each, units),
        limit: massText(load, units),
        remedy: frame.hooks.length === 1 ? 'two hooks, or one rated for more' : 'hooks rated for more',
      },
    ];
  });
}
