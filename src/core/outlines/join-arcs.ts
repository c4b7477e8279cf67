/** Arcs of one ellipse that follow one another, made one again: path data cuts what is round into parts. */
import type { Point } from '../geometry/box';
import { distance } from '../geometry/edge';
import { onEllipse, type EllipsePiece, type Piece } from './piece';

/** Ellipses whose centres and half axes differ by less, in parts of the larger axis, are one that was written rounded. */
const ALIKE = 1e-6;
/** Beyond three quarters of a turn the ends lie too near one another to tell the ellipse. */
const MOST_TURN = 1.5 * Math.PI;

/** Of a closed chain of pieces. A whole ellipse comes out as four quarters that share one centre. */
export function joinArcs(pieces: readonly Piece[]): readonly Piece[] {
  const follows = (index: number) => isOneEllipse(pieces.at(index - 1), pieces[index]);
  const first = pieces.findIndex((_, index) => !follows(index));
  if (first < 0) return wholeEllipse(pieces.filter(isEllipse)) ?? pieces;
  const joined: Piece[] = [];
  let run: EllipsePiece[] = [];
  const endRun = () => {
    joined.push(...joinRun(run));
    run = [];
  };
  for (const piece of [...pieces.slice(first), ...pieces.slice(0, first)]) {
    if (!isEllipse(piece)) {
      endRun();
      joined.push(piece);
      continue;
    }
    const fits = isOneEllipse(run.at(-1), piece) && Math.abs(sweepOf([...run, piece])) <= MOST_TURN;
    if (!fits) endRun();
    run.push(piece);
  }
  endRun();
  return joined;
}

function isEllipse(piece: Piece | undefined): piece is EllipsePiece {
  return piece?.kind === 'ellipse';
}

function isOneEllipse(a: Piece | undefined, b: Piece | undefined): boolean {
  if (!isEllipse(a) || !isEllipse(b) || a === b || a.sweep > 0 !== b.sweep > 0) return false;
  const near = ALIKE * Math.max(sizeOf(a.across), sizeOf(a.along));
  return (['centre', 'across', 'along'] as const).every((key) => distance(a[key], b[key]) <= near);
}

function sizeOf({ x, y }: Point): number {
  return Math.hypot(x, y);
}

function sweepOf(run: readonly EllipsePiece[]): number {
  return run.reduce((sum, { sweep }) => sum + sweep, 0);
}

function wholeEllipse(run: readonly EllipsePiece[]): Piece[] | undefined {
  const [first] = run;
  const sweep = sweepOf(run);
  if (!first || Math.abs(Math.abs(sweep) - 2 * Math.PI) > 10 * ALIKE) return undefined;
  const mean = (of: (piece: EllipsePiece) => number) => run.reduce((sum, piece) => sum + of(piece), 0) / run.length;
  const centre = { x: mean(({ centre }) => centre.x), y: mean(({ centre }) => centre.y) };
  const quarter = (Math.sign(sweep) * Math.PI) / 2;
  const whole = { ...first, centre };
  const corner = (index: number) => onEllipse(whole, first.start + (index % 4) * quarter);
  return [0, 1, 2, 3].map((index) => ({
    ...whole,
    from: corner(index),
    to: corner(index + 1),
    start: first.start + index * quarter,
    sweep: quarter,
  }));
}

/** One arc through both ends and a joint between; the parts as they are where rounding lets no ellipse through them be found. */
function joinRun(run: readonly EllipsePiece[]): readonly EllipsePiece[] {
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last || run.length < 2) return run;
  const half = sweepOf(run) / 2;
  const middle = jointNear(run, half);
  const round = roundThrough([first.from, middle, last.to].map((point) => inCircle(first, point)));
  if (!round || sizeOf(round.centre) > 10 * ALIKE || Math.abs(round.radius - 1) > 10 * ALIKE) return run;
  const angle = (point: Point) => {
    const { x, y } = inCircle(first, point);
    return Math.atan2(y - round.centre.y, x - round.centre.x);
  };
  const start = angle(first.from);
  const turned = angle(last.to) - start;
  const sweep = turned + 2 * Math.PI * Math.round((2 * half - turned) / (2 * Math.PI));
  const grown = ({ x, y }: Point): Point => ({ x: round.radius * x, y: round.radius * y });
  const centre = shifted(first, round.centre);
  return [{ ...first, to: last.to, centre, across: grown(first.across), along: grown(first.along), start, sweep }];
}

/** The joint after which the run has turned most nearly by an angle. */
function jointNear(run: readonly EllipsePiece[], angle: number): Point {
  const joints = run.slice(0, -1).map(({ to }, index) => {
    return { to, off: Math.abs(sweepOf(run.slice(0, index + 1)) - angle) };
  });
  return joints.reduce((best, joint) => (joint.off < best.off ? joint : best)).to;
}

/** The centre moved by parts of both half axes. */
function shifted({ centre, across, along }: EllipsePiece, by: Point): Point {
  return { x: centre.x + by.x * across.x + by.y * along.x, y: centre.y + by.x * across.y + by.y * along.y };
}

/** Where a point lies when the ellipse is made a circle of radius 1 round the origin. */
function inCircle({ centre, across, along }: EllipsePiece, point: Point): Point {
  const [x, y] = [point.x - centre.x, point.y - centre.y];
  const area = across.x * along.y - across.y * along.x;
  return { x: (x * along.y - y * along.x) / area, y: (across.x * y - across.y * x) / area };
}

/** The circle through three points; undefined where they lie on a line. */
function roundThrough([a, b, c]: readonly Point[]): { centre: Point; radius: number } | undefined {
  if (!a || !b || !c) return undefined;
  const [p, q] = [{ x: b.x - a.x, y: b.y - a.y }, { x: c.x - a.x, y: c.y - a.y }]; // prettier-ignore
  const twice = 2 * (p.x * q.y - p.y * q.x);
  if (twice === 0) return undefined;
  const [pp, qq] = [p.x * p.x + p.y * p.y, q.x * q.x + q.y * q.y];
  const away = { x: (q.y * pp - p.y * qq) / twice, y: (p.x * qq - q.x * pp) / twice };
  return { centre: { x: a.x + away.x, y: a.y + away.y }, radius: sizeOf(away) };
}
