/** Problems of borders that ask for what cannot be, with the nearest that can. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { Problem } from '../problem';
import { lengthText, showingOf } from '../units';
import type { AxisAsk } from './solve-borders';

/** All four borders equal on a blank of given size: only if width and height leave the same over. */
export function unequalBorders(
  job: Job,
  blank: Size,
  sides: number,
  topAndBottom: number,
  across: AxisAsk,
  up: AxisAsk,
): Problem {
  const show = (mm: number) => lengthText(mm, showingOf(job));
  const size = (width: number, height: number) => `${show(width)} x ${show(height)}`;
  // Keep one side of the blank, and give the other what the same border asks for.
  const lower = size(blank.width, up.extent(sides).length + 2 * (sides + up.hidden));
  const narrower = size(across.extent(topAndBottom).length + 2 * (topAndBottom + across.hidden), blank.height);
  return {
    code: 'borders-cannot-be-equal',
    severity: 'error',
    at: 'borders.rule',
    message: `Four equal borders do not fit a frame of ${size(blank.width, blank.height)}: ${show(sides)} is left at the sides, ${show(topAndBottom)} at top and bottom. Equal borders of ${show(sides)} need ${lower}, of ${show(topAndBottom)} need ${narrower}.`,
    value: `${show(sides)} and ${show(topAndBottom)}`,
    remedy: `a frame of ${lower} or ${narrower}, or centred borders`,
    fix: {
      label: 'Centre the windows instead',
      edits: [
        { at: 'borders.rule', value: 'centred' },
        { at: 'borders.all', value: undefined },
      ],
    },
  };
}

/** Written borders that the rule takes no notice of. */
export function unusedBorders(job: Job): Problem[] {
  const { rule } = job.borders;
  const used: Record<string, boolean> = {
    all: rule === 'equal',
    left: rule === 'by-hand',
    right: rule === 'by-hand',
    bottom: rule === 'by-hand' || (rule === 'top-as-sides' && !job.frame.blank),
    top: !['equal', 'top-as-sides', ...(job.frame.blank ? [] : ['equal-steps', 'equal-ratios'])].includes(rule),
    sides: true,
  };
  return (['all', 'left', 'right', 'top', 'bottom'] as const)
    .filter((key) => job.borders[key] !== undefined && !used[key])
    .map((key) => ({
      code: 'border-not-used',
      severity: 'warning' as const,
      at: `borders.${key}`,
      message: `The rule "${rule}" works the borders out itself and takes no notice of "${key}".`,
      remedy: 'take it away, or give all borders by hand',
      fix: { label: 'Take it away', edits: [{ at: `borders.${key}`, value: undefined }] },
    }));
}

/** Freely placed windows alone do not say how large a blank is. */
export function blankOnlyForFree(): Problem {
  return {
    code: 'blank-needed',
    severity: 'error',
    at: 'frame.size',
    message: 'All windows are placed freely, so borders cannot say how large the frame is; give the frame a size.',
    remedy: 'give the frame a size',
  };
}
