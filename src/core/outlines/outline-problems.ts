/** What keeps a drawing from being the outline of a window, as problems in words. */
import type { Point } from '../geometry/box';
import type { Problem } from '../problem';
import type { OutlineFault } from './path-outline';

/** @param at path of the value in the job. @param unit of the numbers that places are told in; empty: the path's own. */
export function outlineProblem(fault: OutlineFault, at: string, unit = ''): Problem {
  const severity = 'error';
  const place = ({ x, y }: Point) => `x ${figure(x)}${unit}, y ${figure(y)}${unit}`;
  switch (fault.kind) {
    case 'unreadable':
      return {
        code: 'outline-unreadable',
        severity,
        at,
        message: `The path of the outline ${fault.near === '' ? `breaks off after character ${fault.place - 1}` : `can’t be read from character ${fault.place} on (“${fault.near}”)`}; it must be SVG path data: it begins with M, and has the letters M L H V C S Q T A Z with their numbers.`,
        remedy: 'path data as SVG has it',
      };
    case 'too-large':
      return {
        code: 'outline-too-large',
        severity,
        at,
        message: `The outline has ${fault.count} ${fault.what}; the most is ${fault.most}. Simplify it in the program it was drawn with.`,
        value: `${fault.count} ${fault.what}`,
        limit: `${fault.most} ${fault.what}`,
        remedy: 'a simpler outline',
      };
    case 'far-away':
      return {
        code: 'outline-unreadable',
        severity,
        at,
        message: `The path of the outline has numbers beyond ${fault.most}, which nothing is drawn at; draw it nearer to the middle of its page.`,
        limit: `${fault.most}`,
        remedy: 'smaller numbers',
      };
    case 'empty':
      return {
        code: 'outline-empty',
        severity,
        at,
        message: 'The outline encloses nothing; draw a closed line round the opening.',
        remedy: 'a closed line round an area',
      };
    case 'many':
      return {
        code: 'outline-many',
        severity,
        at,
        message: `There are ${fault.count} outlines, and a window has one; unite them, or leave the one to be cut and delete the others. What lies inside an opening falls out with it.`,
        value: `${fault.count} outlines`,
        limit: '1 outline',
        remedy: 'one outline; further openings as windows of their own, or joined to this one',
      };
    case 'open':
      return {
        code: 'outline-open',
        severity,
        at,
        message: `The outline is open: it begins at ${place(fault.start)} and ends at ${place(fault.end)}, ${figure(fault.gap)}${unit} away; join the two ends.`,
        value: `${figure(fault.gap)}${unit} apart`,
        remedy: 'a closed outline',
      };
    case 'crosses':
      return {
        code: 'outline-crosses-itself',
        severity,
        at,
        message: `The outline crosses or touches itself at ${place(fault.at)}; draw it so that it goes round its opening once.`,
        value: place(fault.at),
        remedy: 'an outline that meets itself nowhere',
      };
  }
}

/** Five figures tell a place well enough to find it; what is left of a nought by doubles is one. */
function figure(value: number): string {
  return `${Number(Number(value.toPrecision(5)).toFixed(6)) + 0}`;
}
