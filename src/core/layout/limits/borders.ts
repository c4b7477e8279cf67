/** Borders and strips of lower layers: wide enough to be seen. */
import { boxAt, heightOf, insets, SIDES, widthOf, type Side } from '../../geometry/box';
import type { Job } from '../../job/job';
import { assert, type Problem } from '../../problem';
import { MM_PER_INCH } from '../../units';
import type { PlacedLayout, PlacedWindow } from '../layout';
import type { Show } from '../show';
import { alike, bordersAt, SLACK, worstSide } from './slack';

/** Border in sight, mm: warn under 1 in. Common practice, no source. */
const SEEN_WARN = MM_PER_INCH;

/** A border of an outermost window, mm. */
interface Seen {
  readonly side: Side;
  readonly at: string;
  /** Of the top layer, as cut. */
  readonly top: number;
  readonly seen: number;
}

/** Borders of the outermost windows, freely placed ones included; sides with the same to say are told together. */
export function seenBorders(job: Job, layout: PlacedLayout, show: Show): Problem[] {
  const { lip, hidden } = layout.frame;
  const found = SIDES.map((side): Seen => {
    const { window, border, top } = outermost(layout, side);
    return { side, at: window.at.startsWith('free') ? window.at : 'borders', top, seen: border - hidden };
  }).filter(({ top }) => top > SLACK); // Past the edge of the board there is no border to speak of.
  const behind = found.filter(({ top }) => top <= lip + SLACK);
  const narrow = found.filter((one) => !behind.includes(one) && one.seen < SEEN_WARN - SLACK);
  return [
    ...alike(behind, ({ at, top }) => `${at}|${show.missing(top, lip)}`).map((group) => behindLip(group, lip, show)),
    ...alike(narrow, ({ at, seen }) => `${at}|${show.missing(seen, SEEN_WARN)}`).map((group) =>
      narrowOf(job, group, layout, show),
    ),
  ];
}

function behindLip(group: readonly [Seen, ...Seen[]], lip: number, show: Show): Problem {
  const [{ at, top }] = group;
  const found = show.missing(top, lip);
  return {
    code: 'border-behind-lip',
    severity: 'error',
    at,
    message: `In the top layer ${bordersAt(group.map(({ side }) => side))} ${group.length > 1 ? 'are' : 'is'} ${found}, no wider than the frame's lip of ${show.limit(lip)}: none of it would be sure to show there. Make it wider.`,
    value: found,
    limit: show.limit(lip),
    remedy: `a border of more than ${show.limit(lip)}`,
  };
}

function narrowOf(job: Job, group: readonly [Seen, ...Seen[]], layout: PlacedLayout, show: Show): Problem {
  const [{ at, seen }] = group;
  const found = show.missing(seen, SEEN_WARN);
  const wanted = SEEN_WARN + layout.frame.hidden;
  const wider = `a border of ${show.limit(wanted)} or more, as cut`;
  const remedy =
    at === 'borders' && !hasRoom(job, group, layout, wanted) ? 'a larger frame or a smaller window' : wider;
  return {
    code: 'border-narrow',
    severity: 'warning',
    at,
    message: `Inside the frame only ${found} shows of ${bordersAt(group.map(({ side }) => side))}; under ${show.limit(SEEN_WARN)} a mat looks pinched and an uneven frame shows.`,
    value: found,
    limit: show.limit(SEEN_WARN),
    remedy,
  };
}

/** True where the windows leave room in the frame for borders as wide as wanted on both sides. */
function hasRoom(job: Job, group: readonly Seen[], { frame, content }: PlacedLayout, wanted: number): boolean {
  if (!job.frame.blank) return true;
  return group.every(({ side }) => {
    const across = side === 'left' || side === 'right';
    const room = across ? frame.blank.width - widthOf(content) : frame.blank.height - heightOf(content);
    return room >= 2 * wanted - SLACK;
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
        limit: show.limit(standard),
        remedy: `a reveal of more than ${show.limit(standard)}`,
      },
    ];
  });
}
