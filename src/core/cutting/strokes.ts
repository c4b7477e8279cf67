/** What a machine cuts without lifting its tool: cuts of a window that run into one another smoothly, as one stroke. */
import { directionOn, distance, lengthOfEdge, line, oval, pointOn, continued, type Edge } from '../geometry/edge';
import { assert } from '../problem';
import { SMOOTH } from './manner';
import { bladePath } from './outline-cuts';
import type { CutLine } from './plan';

export interface Stroke {
  /** Names of the cuts it makes, in the order of travel. */
  readonly cuts: readonly string[];
  /** From where the blade enters to where it leaves, overcuts included, mm; each begins where the last one ended. */
  readonly edges: readonly Edge[];
  /** How many mm of it, at either end, lie beyond the outline or run over it a second time. */
  readonly overcutStart: number;
  readonly overcutEnd: number;
  /** True of a whole outline in one stroke: it runs past its own start by its overcut. */
  readonly closed: boolean;
  readonly bevelSide: CutLine['bevelSide'];
  readonly slopesTo: CutLine['slopesTo'];
}

/**
 * The strokes of one window, in the order of its cuts. A straight cut enters and leaves beyond its corners; an outline
 * without corners is entered on the line and runs past its start by `ringOvercut`, mm.
 */
export function strokesOf(cuts: readonly CutLine[], ringOvercut: number): Stroke[] {
  const firsts = cuts.flatMap((cut, index) => (runsOn(cuts.at(index - 1) ?? cut, cut) ? [] : [index]));
  if (firsts.length === 0) return [ringOf(cuts, ringOvercut)];
  return firsts.map((from, place) => {
    const to = firsts[place + 1] ?? (firsts[0] ?? 0) + cuts.length;
    return strokeOf(Array.from({ length: to - from }, (_, step) => cutAt(cuts, from + step)));
  });
}

function strokeOf(cuts: readonly CutLine[]): Stroke {
  const [first, last] = [cutAt(cuts, 0), cutAt(cuts, cuts.length - 1)];
  return {
    cuts: cuts.map(({ name }) => name),
    edges: cuts.flatMap(bladePath),
    overcutStart: first.overcutStart,
    overcutEnd: last.overcutEnd,
    closed: distance(first.start, last.end) < SMOOTH,
    bevelSide: first.bevelSide,
    slopesTo: first.slopesTo,
  };
}

function ringOf(cuts: readonly CutLine[], overcut: number): Stroke {
  // A single closed cut brings its overcut along.
  if (cuts.length === 1) return strokeOf(cuts);
  const once = strokeOf(cuts);
  return { ...once, edges: [...once.edges, ...leadingPart(once.edges, overcut)], overcutEnd: overcut };
}

/** True where the blade need not stop between two cuts: neither runs past the joint, and the direction stays. */
function runsOn(before: CutLine, after: CutLine): boolean {
  if (before.overcutEnd !== 0 || after.overcutStart !== 0) return false;
  const [last, first] = [bladePath(before).at(-1), bladePath(after)[0]];
  assert(last && first, 'a cut follows at least one edge');
  const [a, b] = [directionOn(last, 1), directionOn(first, 0)];
  return distance(last.to, first.from) < SMOOTH && Math.hypot(a.x - b.x, a.y - b.y) < SMOOTH;
}

/** The beginning of a path, as far as a length, mm. */
function leadingPart(edges: readonly Edge[], length: number): Edge[] {
  const part: Edge[] = [];
  let left = length;
  for (const edge of edges) {
    if (left <= 0) break;
    const whole = lengthOfEdge(edge);
    part.push(whole <= left ? edge : continued(precedingOf(edge), left));
    left -= whole;
  }
  return part;
}

/** What would lie before an edge on the same line, circle or oval. */
function precedingOf(edge: Edge): Edge {
  if (edge.kind === 'line') return line(pointOn(edge, -1), edge.from);
  if (edge.kind === 'arc') return { ...edge, from: pointOn(edge, -1), to: edge.from };
  return oval(edge.centre, edge.radii, edge.away, edge.start - edge.sweep, edge.sweep);
}

function cutAt(cuts: readonly CutLine[], index: number): CutLine {
  const cut = cuts[index % cuts.length];
  assert(cut, 'a window has cuts');
  return cut;
}
