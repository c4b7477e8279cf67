/** What a layout must keep to: windows on the board and apart, pictures held, borders and strips in sight. */
import { boxAt, grow, heightOf, insets, SIDES, widthOf, type Box, type Side } from '../geometry/box';
import { nameOfSize, READY_MADE_SIZES } from '../frame/ready-made';
import type { Job } from '../job/job';
import type { Problem, Severity } from '../problem';
import { lengthText, MM_PER_INCH, showingOf } from '../units';
import type { Cell, Leaf } from './cells';
import { gapPath } from './gaps';
import type { Layout, PlacedWindow } from './layout';
import { nearPairs, separation } from './neighbours';

/** Board left between two openings, mm: warn under 3/4 in, refuse under 3/8 in. Common practice, no source. */
export const BRIDGE_WARN = 0.75 * MM_PER_INCH;
export const BRIDGE_LEAST = 0.375 * MM_PER_INCH;
/** Border in sight, mm: warn under 1 in. Common practice, no source. */
export const SEEN_WARN = MM_PER_INCH;
/** A picture held by less than 1/16 in slips out. Common practice, no source. */
export const HOLD_WARN = MM_PER_INCH / 16;
/** Largest mat board sold, mm: 40 x 60 in. Common practice, no source. */
const LARGEST_SHEET = { short: 40 * MM_PER_INCH, long: 60 * MM_PER_INCH };
/** What double arithmetic may add or lose, mm. */
const SLACK = 1e-6;

type Show = (mm: number) => string;
type Bare = Omit<Layout, 'derivations' | 'problems'>;

/** Windows whose overlap or bevel leaves nothing to look through. */
export function emptyWindows(root: Cell | undefined, free: readonly Leaf[], show: Show): Problem[] {
  return [...(root ? leavesOf(root) : []), ...free]
    .filter(({ size }) => !(size.width > 0 && size.height > 0))
    .map((leaf) => ({
      code: 'window-vanishes',
      severity: 'error',
      at: leaf.at,
      message: `The window ${titled(leaf.title)}would be ${show(leaf.size.width)} x ${show(leaf.size.height)}: ${
        leaf.from === 'written at face'
          ? 'its bevel takes more than the size given'
          : leaf.from === 'spread'
            ? 'overlap and bars hide the whole picture'
            : 'the overlap covers the whole picture'
      }. Cover less, or make it larger.`,
    }));
}

/** Everything a finished layout has to say, errors first. */
export function findProblems(job: Job, layout: Bare, leaves: readonly Leaf[]): Problem[] {
  const show: Show = (mm) => lengthText(mm, showingOf(job));
  const problems = [
    ...offTheBoard(layout, show),
    ...tooNear(layout, leaves, show),
    ...borderProblems(layout, show),
    ...layout.windows.flatMap((window) => holdProblems(job, window, layout, show)),
    ...sheetsInEachOther(layout, show),
    ...stripProblems(layout, show),
    ...generalNotes(job, layout, show),
  ];
  const rank: Record<Severity, number> = { error: 0, warning: 1, note: 2 };
  return problems.sort((a, b) => rank[a.severity] - rank[b.severity]);
}

function leavesOf(cell: Cell): Leaf[] {
  return cell.kind === 'leaf' ? [cell] : cell.cells.flatMap(leavesOf);
}

function offTheBoard(layout: Bare, show: Show): Problem[] {
  const blank = boxAt({ x: 0, y: 0 }, layout.frame.blank);
  return layout.windows.flatMap((window) => {
    const outer = window.layers[0];
    if (!outer) return [];
    const edge = insets(blank, grow(outer.opening, layout.layers[0]?.bevel.run ?? 0));
    const worst = worstSide(edge);
    if (edge[worst] > SLACK) return [];
    return [
      {
        code: 'window-off-the-board',
        severity: 'error' as const,
        at: window.at,
        message: `Window ${window.name} ${titled(window.title)}reaches ${show(-edge[worst])} past the ${worst} edge of the board in the top layer; move it in or take a larger frame.`,
        value: show(-edge[worst]),
        remedy: `move it ${show(-edge[worst])} or more away from the ${worst}`,
      },
    ];
  });
}

function tooNear(layout: Bare, leaves: readonly Leaf[], show: Show): Problem[] {
  const openings = layout.windows.map((window) => window.layers[0]?.opening ?? window.window);
  const pairs = nearPairs(openings, BRIDGE_WARN - SLACK).map(([one, other]) => ({
    one,
    other,
    bridge: bridgeOf(openings, one, other),
  }));
  const gapOf = new Map(layout.gaps.map((gap) => [pairKey(...gap.between), gap]));
  const pathOf = (one: number, other: number) =>
    gapPath('across', leaves[one], leaves[other]) ??
    gapPath('up', leaves[one], leaves[other]) ??
    layout.windows[other]?.at ??
    '';
  const grouped = new Map<string, typeof pairs>();
  for (const pair of pairs) {
    const at = gapOf.get(pairKey(pair.one, pair.other))?.at ?? pathOf(pair.one, pair.other);
    const group = grouped.get(at);
    if (group) group.push(pair);
    else grouped.set(at, [pair]);
  }
  return [...grouped].flatMap(([at, group]) => {
    const worst = group.reduce((a, b) => (b.bridge < a.bridge ? b : a));
    const gap = gapOf.get(pairKey(worst.one, worst.other));
    return [bridgeProblem(layout, at, worst, group.length, gap && gap.gap - gap.bridge, show)];
  });
}

function bridgeProblem(
  layout: Bare,
  at: string,
  { one, other, bridge }: { one: number; other: number; bridge: number },
  count: number,
  reveals: number | undefined,
  show: Show,
): Problem {
  const names = `${layout.windows[one]?.name} and ${layout.windows[other]?.name}`;
  const more = count > 1 ? ` (and between ${count - 1} more)` : '';
  const severe = bridge < BRIDGE_LEAST - SLACK;
  const limit = severe ? BRIDGE_LEAST : BRIDGE_WARN;
  const least = reveals === undefined ? '' : ` A gap of ${show(limit + reveals)} or more would do.`;
  const found =
    bridge <= 0
      ? `Windows ${names} run into each other by ${show(-bridge)}`
      : `Only ${show(bridge)} of board is left between windows ${names}`;
  return {
    code: bridge <= 0 ? 'windows-collide' : 'bridge-narrow',
    severity: severe ? 'error' : 'warning',
    at,
    message: `${found} in the top layer${more}; ${severe ? 'under' : 'it bends and tears easily under'} ${show(limit)}${severe ? ' it cannot be cut safely' : ''}.${least}`,
    value: show(bridge),
    limit: show(limit),
    ...(reveals === undefined ? {} : { remedy: `a gap of ${show(limit + reveals)} or more` }),
    ...(reveals !== undefined && /gap$/i.test(at)
      ? {
          fix: { label: `Make the gap ${show(limit + reveals)}`, edits: [{ at, value: exact(limit + reveals, show) }] },
        }
      : {}),
  };
}

function borderProblems(layout: Bare, show: Show): Problem[] {
  const { lip, hidden } = layout.frame;
  const outer = layout.windows.map((window) => window.layers[0]?.opening).filter((box) => box !== undefined);
  const blank = boxAt({ x: 0, y: 0 }, layout.frame.blank);
  return SIDES.flatMap((side): Problem[] => {
    const top = Math.min(...outer.map((box) => insets(blank, box)[side]));
    const seen = Math.min(...layout.windows.map((window) => window.borders[side])) - hidden;
    const at = layout.windows.length > 0 ? 'borders' : 'frame';
    if (top > SLACK && top <= lip + SLACK) {
      return [
        {
          code: 'border-behind-lip',
          severity: 'error',
          at,
          message: `The ${side} border of the top layer is ${show(top)}, no wider than the frame's lip of ${show(lip)}: none of the mat would show there.`,
          value: show(top),
          limit: show(lip),
          remedy: `a border of more than ${show(lip)}`,
        },
      ];
    }
    if (top <= 0 || seen >= SEEN_WARN - SLACK) return [];
    return [
      {
        code: 'border-narrow',
        severity: 'warning',
        at,
        message: `Only ${show(seen)} of the ${side} border shows inside the frame; under ${show(SEEN_WARN)} a mat looks pinched and an uneven frame shows.`,
        value: show(seen),
        limit: show(SEEN_WARN),
      },
    ];
  });
}

function holdProblems(job: Job, window: PlacedWindow, layout: Bare, show: Show): Problem[] {
  const { picture } = window;
  if (!picture) return [];
  const at =
    window.at.startsWith('windows') || window.at.startsWith('free') ? `pictures[${picture.index}].overlap` : window.at;
  const name = `Picture ${titled(job.pictures[picture.index]?.title ?? '')}`.trim();
  const blank = boxAt({ x: 0, y: 0 }, layout.frame.blank);
  const over = insets(blank, picture.sheet);
  const out = worstSide(over);
  const outer = picture.part?.way === 'hidden' ? outerHold(window, picture.hold) : picture.hold;
  const side = worstSide(outer);
  const hold = outer[side];
  const problems: Problem[] = [];
  if (over[out] < -SLACK) {
    problems.push({
      code: 'picture-larger-than-frame',
      severity: 'error',
      at: `pictures[${picture.index}].size`,
      message: `${name}: its sheet reaches ${show(-over[out])} past the ${out} edge of the frame size; take a larger frame, or move the window.`,
      value: show(-over[out]),
      remedy: 'a larger frame',
    });
  }
  if (hold < -SLACK) {
    problems.push({
      code: 'picture-floats',
      severity: 'note',
      at,
      message: `${name} floats: the window is ${show(-hold)} larger than its sheet at the ${side}, so no mat holds it; hinge it to the mount board.`,
      value: show(hold),
    });
  } else if (hold < HOLD_WARN - SLACK) {
    problems.push({
      code: 'overlap-too-small',
      severity: 'warning',
      at,
      message: `${name} is held by only ${show(hold)} at the ${side}: it can slip through the window, and sheets often measure less than their name. Measure it, and cover ${show(MM_PER_INCH / 8)}.`,
      value: show(hold),
      limit: show(HOLD_WARN),
      remedy: `cover ${show(MM_PER_INCH / 8)}`,
      fix: {
        label: `Cover ${show(MM_PER_INCH / 8)}`,
        edits: [{ at: `pictures[${picture.index}].overlap`, value: `covers ${exact(MM_PER_INCH / 8, show)}` }],
      },
    });
  }
  return problems;
}

/** Of a picture that stays whole behind several windows only the outer sides are held by an overlap. */
function outerHold(window: PlacedWindow, hold: Readonly<Record<Side, number>>): Readonly<Record<Side, number>> {
  const part = window.picture?.part;
  if (!part) return hold;
  const inner = (first: boolean) => (first ? part.index > 0 : part.index < part.count - 1);
  const across = hold.left + hold.right > hold.top + hold.bottom;
  const open = Infinity;
  return across
    ? { ...hold, left: inner(true) ? open : hold.left, right: inner(false) ? open : hold.right }
    : { ...hold, top: inner(true) ? open : hold.top, bottom: inner(false) ? open : hold.bottom };
}

function sheetsInEachOther(layout: Bare, show: Show): Problem[] {
  const placed = layout.windows.filter((window) => window.picture && window.picture.part?.way !== 'hidden');
  const sheets = placed.map((window) => window.picture?.sheet as Box);
  const worst = nearPairs(sheets, -SLACK)
    .map(([one, other]) => ({ one, other, by: -separation(sheets[one] as Box, sheets[other] as Box) }))
    .sort((a, b) => b.by - a.by)[0];
  if (!worst) return [];
  const [one, other] = [placed[worst.one], placed[worst.other]];
  return [
    {
      code: 'sheets-overlap',
      severity: 'warning',
      at: one?.at ?? 'windows',
      message: `Behind the mat the sheets of windows ${one?.name} and ${other?.name} lie ${show(worst.by)} over each other; widen the gap by as much, or have less margin of paper (a work of value is never trimmed).`,
      value: show(worst.by),
      remedy: `a gap wider by ${show(worst.by)}`,
    },
  ];
}

function stripProblems(layout: Bare, show: Show): Problem[] {
  return layout.layers.slice(1).flatMap((layer) => {
    const side = worstSide(layer.shownStrip);
    if (layer.shownStrip[side] > SLACK) return [];
    return [
      {
        code: 'layer-not-seen',
        severity: 'warning' as const,
        at: `mat.layers[${layer.number - 1}].reveal`,
        message: `Layer ${layer.number} (${layer.board}) shows no colour at the ${side}: its reveal of ${show(layer.reveal[side])} is no wider than its bevel of ${show(layer.bevel.run)}.`,
        value: show(layer.reveal[side]),
        limit: show(layer.bevel.run),
        remedy: `a reveal of more than ${show(layer.bevel.run)}`,
      },
    ];
  });
}

function generalNotes(job: Job, layout: Bare, show: Show): Problem[] {
  const { blank } = layout.frame;
  const [short, long] = [Math.min(blank.width, blank.height), Math.max(blank.width, blank.height)];
  const problems: Problem[] = [];
  const shown = new Set(layout.windows.map((window) => window.picture?.index));
  job.pictures.forEach((picture, index) => {
    if (shown.has(index)) return;
    problems.push({
      code: 'picture-without-window',
      severity: 'warning',
      at: `pictures[${index}]`,
      message: `Picture ${titled(picture.title) || index + 1} is in no window.`,
    });
  });
  if (short > LARGEST_SHEET.short + SLACK || long > LARGEST_SHEET.long + SLACK) {
    problems.push({
      code: 'larger-than-sheet',
      severity: 'warning',
      at: 'frame.size',
      message: `The blank is ${show(blank.width)} x ${show(blank.height)}, larger than the largest board commonly sold, ${show(LARGEST_SHEET.short)} x ${show(LARGEST_SHEET.long)}.`,
      limit: `${show(LARGEST_SHEET.short)} x ${show(LARGEST_SHEET.long)}`,
    });
  }
  if (!job.frame.blank && nameOfSize(blank) === undefined) {
    const next = nextReadyMade(job, blank.width, blank.height);
    if (next)
      problems.push({
        code: 'size-is-custom',
        severity: 'note',
        at: 'frame',
        message: `${show(blank.width)} x ${show(blank.height)} is not sold ready-made; the nearest above is ${next}.`,
      });
  }
  problems.push(...turnNote(layout, show));
  return problems;
}

/** Four equal borders let the frame hang either way; any weighting takes that away. */
function turnNote(layout: Bare, show: Show): Problem[] {
  const { left, top, right, bottom } = layout.borders.cut;
  const equal = [top, right, bottom].every((border) => Math.abs(border - left) < SLACK);
  const oblong = Math.abs(widthOf(layout.content) - heightOf(layout.content)) > SLACK;
  if (!equal || !oblong) return [];
  return [
    {
      code: 'hangs-either-way',
      severity: 'note',
      at: 'borders',
      message: `All four borders are ${show(left)}, so the mat may be turned and hang either way; any bottom weighting takes that away.`,
    },
  ];
}

/** The smallest size sold in the job's own units that both sides fit in, whichever way round. */
function nextReadyMade(job: Job, width: number, height: number): string | undefined {
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  const inches = job.units === 'in';
  return READY_MADE_SIZES.filter((size) => size.name.endsWith(' in') === inches)
    .filter((size) => size.width >= short - SLACK && size.height >= long - SLACK)
    .sort((a, b) => a.width * a.height - b.width * b.height)[0]?.name;
}

function bridgeOf(boxes: readonly Box[], one: number, other: number): number {
  return separation(boxes[one] as Box, boxes[other] as Box);
}

function pairKey(one: number, other: number): string {
  return one < other ? `${one} ${other}` : `${other} ${one}`;
}

function worstSide(sides: Readonly<Record<Side, number>>): Side {
  return SIDES.reduce((worst, side) => (sides[side] < sides[worst] ? side : worst));
}

function titled(title: string): string {
  return title === '' ? '' : `"${title.slice(0, 40)}" `;
}

/** A length to write into the job: as shown when that is exact, otherwise in millimetres. */
function exact(mm: number, show: Show): string {
  const shown = show(mm);
  return shown.startsWith('≈') ? `${Number(mm.toFixed(3))} mm` : shown;
}
