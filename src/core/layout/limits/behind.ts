/** Layers that are cut behind the one above: what makes that impossible, and what it does not help with. */
import { around, boxAt, grow, insets } from '../../geometry/box';
import type { Job } from '../../job/job';
import type { Problem } from '../../problem';
import { MM_PER_INCH } from '../../units';
import type { PlacedLayout } from '../layout';
import type { Show } from '../show';
import { SLACK, titled, worstSide } from './slack';

/** Board behind the upper layer's window that tape can hold on to, mm: 1/2 in. Common practice, no source. */
export const HOLD_BEHIND = MM_PER_INCH / 2;

export function cutBehind(job: Job, layout: PlacedLayout, show: Show): Problem[] {
  if (job.cutting.layers === 'apart' || layout.layers.length < 2) return [];
  return [...reverseBevels(layout), ...boardsTooSmall(job, layout, show), ...windowsWithoutGuide(layout)];
}

/** The blade leans one way; a reverse bevel is cut from the face, which lies against the layer above. */
function reverseBevels({ layers }: PlacedLayout): Problem[] {
  return layers.slice(1).flatMap(({ number, bevel }): Problem[] => {
    if (bevel.direction === 'standard' || bevel.run === 0) return [];
    return [
      {
        code: 'behind-reverse-bevel',
        severity: 'error',
        at: `mat.layers[${number - 1}].bevel.direction`,
        message: `Layer ${number} has a reverse bevel, which a blade of one lean cuts from the face; fixed behind layer ${number - 1} its face cannot be reached. Cut each layer by itself, or give it a standard bevel.`,
        remedy: 'cut each layer by itself, or take a standard bevel',
        fix: { label: 'Cut each layer by itself', edits: [{ at: 'cutting.layers', value: 'apart' }] },
      },
    ];
  });
}

/** The board behind is smaller than the blank, and must still cover what the layer above leaves open. */
function boardsTooSmall(job: Job, layout: PlacedLayout, show: Show): Problem[] {
  const { behindTrim: trim } = job.cutting;
  const board = grow(boxAt({ x: 0, y: 0 }, layout.frame.blank), -trim);
  return layout.layers.slice(1).flatMap(({ number }): Problem[] => {
    const cuts = layout.windows.flatMap(({ layers }) => {
      const above = layers[number - 2];
      return above ? [above.face, above.back] : [];
    });
    const open = around(cuts);
    if (!open) return [];
    const left = insets(board, open);
    const side = worstSide(left);
    if (left[side] >= HOLD_BEHIND - SLACK) return [];
    const bare = left[side] <= SLACK;
    const most = show.stepDown(left[side] + trim - HOLD_BEHIND);
    const remedy = most > 0 ? `trim it by ${show.limit(most)} or less` : 'cut each layer by itself';
    const found = show.missing(Math.max(0, left[side]), HOLD_BEHIND);
    return [
      {
        code: 'behind-too-small',
        severity: bare ? 'error' : 'warning',
        at: 'cutting.behindTrim',
        message: bare
          ? `Layer ${number}, trimmed by ${show.length(trim)}, would not cover the window of layer ${number - 1} at the ${side}; ${remedy}.`
          : `Layer ${number}, trimmed by ${show.length(trim)}, has only ${found} behind layer ${number - 1} at the ${side}, too little to fix it by; ${remedy}.`,
        value: found,
        limit: show.limit(HOLD_BEHIND),
        remedy,
        fix: {
          label: most > 0 ? `Trim it by ${show.limit(most)}` : 'Cut each layer by itself',
          edits: [
            most > 0 ? { at: 'cutting.behindTrim', value: show.exact(most) } : { at: 'cutting.layers', value: 'apart' },
          ],
        },
      },
    ];
  });
}

/** A guide on the upper board's edge leads nothing round a curve. */
function windowsWithoutGuide({ windows }: PlacedLayout): Problem[] {
  return windows.flatMap(({ name, title, at, layers }): Problem[] => {
    const outline = layers.at(-1)?.outlines?.opening;
    if (!outline || outline.some((edge) => edge.kind === 'line')) return [];
    return [
      {
        code: 'behind-without-guide',
        severity: 'note',
        at: `${at}.shape`,
        message: `Window ${name} ${titled(title)}has no straight side for a guide: behind the layer above it is cut by marks measured from that layer's edges. An oval head wants each layer by itself.`,
      },
    ];
  });
}
