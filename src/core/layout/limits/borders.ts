/** Borders and strips of lower layers: wide enough to be seen. */
import { boxAt, insets, SIDES, type Side } from '../../geometry/box';
import { assert, type Problem } from '../../problem';
import { MM_PER_INCH } from '../../units';
import type { PlacedLayout, PlacedWindow } from '../layout';
import type { Show } from '../show';
import { SLACK, worstSide } from './slack';

/** Border in sight, mm: warn under 1 in. Common practice, no source. */
const SEEN_WARN = MM_PER_INCH;

/** Borders of the outermost windows, freely placed ones included. */
export function seenBorders(layout: PlacedLayout, show: Show): Problem[] {
  const { lip, hidden } = layout.frame;
  return SIDES.flatMap((side): Problem[] => {
    const { window, border, top } = outermost(layout, side);
    const at = window.at.startsWith('free') ? window.at : 'borders';
    const seen = border - hidden;
    // Past the edge of the board there is no border to speak of.
    if (top <= SLACK) return [];
    if (top <= lip + SLACK) {
      return [
        {
          code: 'border-behind-lip',
          severity: 'error',
          at,
          message: `The ${side} border of the top layer is ${show.missing(top, lip)}, no wider than the frame's lip of ${show.length(lip)}: none of it would be sure to show there. Make it wider.`,
          value: show.missing(top, lip),
          limit: show.length(lip),
          remedy: `a border of more than ${show.length(lip)}`,
        },
      ];
    }
    if (seen >= SEEN_WARN - SLACK) return [];
    return [
      {
        code: 'border-narrow',
        severity: 'warning',
        at,
        message: `Only ${show.missing(seen, SEEN_WARN)} of the ${side} border shows inside the frame; under ${show.length(SEEN_WARN)} a mat looks pinched and an uneven frame shows.`,
        value: show.missing(seen, SEEN_WARN),
        limit: show.length(SEEN_WARN),
        remedy: `a border of ${show.length(SEEN_WARN + hidden)} or more, as cut`,
      },
    ];
  });
}

/** The window nearest to an edge of the blank, with its border and that of the top layer. */
function outermost(layout: PlacedLayout, side: Side): { window: PlacedWindow; border: number; top: number } {
  const blank = boxAt({ x: 0, y: 0 }, layout.frame.blank);
  const [first, ...rest] = layout.windows;
  assert(first, 'a layout has at least one window');
  const window = rest.reduce((a, b) => (b.borders[side] < a.borders[side] ? b : a), first);
  return { window, border: window.borders[side], top: insets(blank, window.layers[0]?.opening ?? window.window)[side] };
}

/** Lower layers whose reveal is all bevel. */
export function seenStrips(layout: PlacedLayout, show: Show): Problem[] {
  return layout.layers.slice(1).flatMap((layer) => {
    const side = worstSide(layer.shownStrip);
    if (layer.shownStrip[side] > SLACK) return [];
    const standard = layer.bevel.direction === 'standard' ? layer.bevel.run : 0;
    const why =
      standard === 0
        ? `its reveal is ${show.length(layer.reveal[side])}`
        : `its reveal of ${show.missing(layer.reveal[side], standard)} is no wider than its bevel of ${show.length(standard)}`;
    return [
      {
        code: 'layer-not-seen',
        severity: 'warning' as const,
        at: `mat.layers[${layer.number - 1}].reveal`,
        message: `Layer ${layer.number} (${layer.board}) shows no colour at the ${side}: ${why}. Make the reveal wider.`,
        value: show.missing(layer.reveal[side], standard),
        limit: show.length(standard),
        remedy: `a reveal of more than ${show.length(standard)}`,
      },
    ];
  });
}
