/** Shapes that no opening can be cut to: measures without room, joined openings that do not reach each other. */
import type { Problem } from '../../problem';
import { allLeaves, type Cell, type Leaf, type ShapeFault } from '../cells';
import type { Measure } from '../leaf-shape';
import type { Show } from '../show';
import { SLACK, titled } from './slack';

export function shapeFaults(root: Cell | undefined, free: readonly Leaf[], show: Show): Problem[] {
  const leaves = [...(root ? allLeaves(root) : []), ...free];
  return leaves.flatMap((leaf) => leaf.faults.map((fault) => told(fault, leaf, show)));
}

function told(fault: ShapeFault, leaf: Leaf, show: Show): Problem {
  switch (fault.kind) {
    case 'misfit':
      return fault.measure === 'too small' ? tooSmall(fault, show) : misfit(fault, fault.measure, show);
    case 'apart':
      return apart(fault, leaf, show);
    case 'island':
      return {
        code: 'joined-leaves-island',
        severity: 'error',
        at: `${fault.at}.joined`,
        message: `The openings of ${windowNamed(leaf)}enclose a piece of board of ${show.size(fault.size)}, which would fall out when they are cut; move or enlarge one so that it is open on a side, or filled.`,
        value: show.size(fault.size),
        remedy: 'an opening over it too, or one moved away',
      };
  }
}

/** A window has no letter yet when its shape fails; without a title its place in the job tells it. */
function windowNamed({ at, title }: Leaf): string {
  if (title !== '') return `window ${titled(title)}`;
  return at === 'windows' ? 'the window ' : `the window at ${at} `;
}

const MEASURES: Readonly<Record<Measure['key'], string>> = {
  radius: 'radius of its corners',
  rise: 'rise of its arch',
  cut: 'cut of its corners',
  step: 'step of its corners',
};

type Misfit = Extract<ShapeFault, { kind: 'misfit' }>;

function tooSmall({ at, title, size }: Misfit, show: Show): Problem {
  return {
    code: 'outline-too-small',
    severity: 'error',
    at: `${at}.shape`,
    message: `Window ${titled(title)}of ${show.size(size)} is so small that parts of its outline run into one another; make it larger, or its outline simpler.`,
    value: show.size(size),
    remedy: 'a larger window, or a simpler outline',
  };
}

function misfit({ at, title, shape, size }: Misfit, measure: Measure, show: Show): Problem {
  const { key, value, least = 0, most } = measure;
  const nearest = value > most ? Math.max(0, show.stepDown(most)) : show.stepUp(least);
  const impossible = least > most + SLACK || most <= 0 || !(nearest > 0);
  const limit = impossible
    ? `${show.limit(value > most ? most : least)} or ${value > most ? 'less' : 'more'}`
    : `${show.limit(nearest)} or ${value > most ? 'less' : 'more'}`;
  const message = `Window ${titled(title)}of ${show.size(size)}: the ${MEASURES[key]} is ${show.missing(value, value > most ? most : least)}`;
  const remedy = impossible ? 'another shape, or a window of other proportions' : limit;
  const edits = [{ at: `${at}.shape`, value: { ...writtenOf(shape), [key]: show.exact(nearest) } }];
  return {
    code: 'shape-does-not-fit',
    severity: 'error',
    at: `${at}.shape`,
    message: impossible ? `${message}, for which it has no room; take ${remedy}.` : `${message}; it must be ${limit}.`,
    value: show.length(value),
    limit,
    remedy,
    ...(impossible ? {} : { fix: { label: `Make it ${show.limit(nearest)}`, edits } }),
  };
}

/** What of a shape is no length. */
function writtenOf(shape: Leaf['shape']): object {
  return shape.kind === 'stepped' ? { kind: shape.kind, count: shape.count } : { kind: shape.kind };
}

function apart(fault: Extract<ShapeFault, { kind: 'apart' }>, leaf: Leaf, show: Show): Problem {
  const { at, number, title, distance } = fault;
  const touches = distance <= SLACK;
  const what = touches ? 'touches the rest in a single point only' : `lies ${show.length(distance)} from the rest`;
  const remedy = touches ? 'let it overlap' : `move or enlarge it by more than ${show.limit(distance)}`;
  return {
    code: 'joined-apart',
    severity: 'error',
    at,
    message: `Opening ${number} ${titled(title)}of ${windowNamed(leaf)}${what} and cannot become one with it; ${remedy}.`,
    ...(touches ? {} : { value: show.length(distance) }),
    remedy,
  };
}
