/** Works out where frames, hook seats and nails lie on the wall. */
import { around, boxAt, type Box } from '../geometry/box';
import { assert, bad, bySeverity, good, type Result } from '../problem';
import { showOf, unitOf, type HangingAsk } from './hanging-ask';
import type { HangingPlan } from './hanging-plan';
import { measureFrames } from './measure-frames';
import { placeFrames, type Place } from './place-frames';
import { impossibleHooks, wallProblems } from './wall-problems';
import type { HookPlace, HungFrame, MeasuredFrame, WallPlan } from './wall-plan';

/** Positions are exact; a hook's height is `middle + height / 2 - drop`. */
export function planWall(ask: HangingAsk, plan: HangingPlan): Result<WallPlan> {
  const { wall } = ask.job;
  const show = showOf(ask);
  const measured = measureFrames(ask, plan);
  const impossible = impossibleHooks(measured, show);
  if (impossible.length > 0) return bad(impossible);
  const places = placeFrames(wall, measured);
  const ends = measured.map(({ size }, index) => (places[index]?.near ?? 0) + size.width);
  const first = Math.min(...places.map(({ near }) => near));
  const whole = Math.max(...ends) - first;
  const start = wall.offset ?? (wall.width === undefined ? 0 : (wall.width - whole) / 2 - first);
  const before = start + first;
  const shifted = places.map(({ near, height }) => ({ near: near + start, height }));
  const width = wall.width ?? before + whole;
  const seat = plan.carried.find(({ part }) => part === 'hook')?.seat;
  const frames = measured.map((frame, index) => {
    const place = shifted[index];
    assert(place, 'every frame has a place');
    return hungFrame(frame, place, { width, from: wall.from, seat }, index + 1);
  });
  const box = around(frames.map((frame) => frame.box));
  assert(box, 'a wall has a frame');
  const most = mostInRow(ask, measured);
  const found: WallPlan = {
    kind: plan.hanger.kind,
    from: wall.from,
    ...(wall.width === undefined ? {} : { width: wall.width, after: wall.width - before - whole }),
    ...(wall.height === undefined ? {} : { height: wall.height }),
    centre: wall.centre,
    ...(wall.furniture === undefined ? {} : { furniture: wall.furniture }),
    arrangement: wall.arrangement,
    ...(seat === undefined ? {} : { seat }),
    frames,
    around: box,
    before,
    ...(most === undefined ? {} : { most }),
  };
  return good(found, bySeverity(wallProblems(found, plan, unitOf(ask), show)));
}

interface Reference {
  /** Of the wall, or of what stands on it from the edge on where that is unknown. */
  readonly width: number;
  readonly from: 'left' | 'right';
  readonly seat: number | undefined;
}

function hungFrame(frame: MeasuredFrame, { near, height }: Place, reference: Reference, number: number): HungFrame {
  const { size } = frame;
  const left = reference.from === 'left' ? near : reference.width - near - size.width;
  const box = boxAt({ x: left, y: height - size.height / 2 }, size);
  return { ...frame, number, box, near, middle: near + size.width / 2, height, hooks: hooksOf(frame, box, reference) };
}

function hooksOf({ size, drop, hooksApart }: MeasuredFrame, { left, top }: Box, reference: Reference): HookPlace[] {
  const middle = left + size.width / 2;
  const xs = hooksApart === 0 ? [middle] : [middle - hooksApart / 2, middle + hooksApart / 2];
  const { width, from, seat } = reference;
  return xs.map((x) => ({
    seat: { x, y: top - drop },
    ...(seat === undefined ? {} : { nail: { x, y: top - drop + seat } }),
    across: from === 'left' ? x : width - x,
  }));
}

/** Last bits of lengths in inches. */
const SLACK = 1e-6;

/** `(wall + gap) / (frame + gap)`, whole. */
function mostInRow({ job: { wall } }: HangingAsk, frames: readonly MeasuredFrame[]): number | undefined {
  const { arrangement, width } = wall;
  const [first] = frames;
  if (arrangement.kind !== 'row' || width === undefined || !first) return undefined;
  const alike = frames.every(({ size }) => Math.abs(size.width - first.size.width) < SLACK);
  return alike ? Math.floor((width + arrangement.gap + SLACK) / (first.size.width + arrangement.gap)) : undefined;
}
