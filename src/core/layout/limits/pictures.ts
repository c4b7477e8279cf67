/** Pictures behind their windows: within the frame, held by the mat, clear of one another. */
import { allSides, boxAt, eachSide, insets, SIDES, type Box, type PerSide } from '../../geometry/box';
import type { Job } from '../../job/job';
import { assert, type Edit, type Problem } from '../../problem';
import { MM_PER_INCH } from '../../units';
import type { Leaf } from '../cells';
import { bottomRun } from '../leaf';
import type { PlacedLayout, PlacedPicture, PlacedWindow } from '../layout';
import { nearPairs, separation } from '../neighbours';
import type { Show } from '../show';
import { SLACK, titled, worstSide } from './slack';

/** A picture held by less than 1/16 in slips out. Common practice, no source. */
export const HOLD_WARN = MM_PER_INCH / 16;
/** What holds it well. Common practice, no source. */
const HOLD_WELL = MM_PER_INCH / 8;

/** A window with a picture, and the cell it came from. */
interface Held {
  readonly window: PlacedWindow;
  readonly picture: PlacedPicture;
  readonly leaf: Leaf;
  readonly name: string;
}

export function heldPictures(job: Job, layout: PlacedLayout, leaves: readonly Leaf[], show: Show): Problem[] {
  const told = new Set<string>();
  return findHeld(job, layout, leaves, show).filter(({ code, at, message }) => {
    // The windows of a spread hold one picture, which is told of once.
    const key = [code, at, message].join('|');
    return !told.has(key) && told.add(key);
  });
}

function findHeld(job: Job, layout: PlacedLayout, leaves: readonly Leaf[], show: Show): Problem[] {
  return layout.windows.flatMap((window, index) => {
    const leaf = leaves[index];
    const { picture } = window;
    if (!picture || !leaf) return [];
    const name = `Picture ${titled(job.pictures[picture.index]?.title ?? '') || `${picture.index + 1} `}`.trimEnd();
    const held = { window, picture, leaf, name };
    return [...sheetOffTheFrame(held, layout, show), ...holdOf(job, held, show), ...endsInJoined(held, show)];
  });
}

function sheetOffTheFrame({ picture, name }: Held, layout: PlacedLayout, show: Show): Problem[] {
  const over = insets(boxAt({ x: 0, y: 0 }, layout.frame.blank), picture.sheet);
  const out = worstSide(over);
  if (over[out] >= -SLACK) return [];
  const past = show.length(-over[out]);
  return [
    {
      code: 'picture-larger-than-frame',
      severity: 'error',
      at: `pictures[${picture.index}].size`,
      message: `${name}: its sheet reaches ${past} past the ${out} edge of the frame size; take a larger frame, or move the window.`,
      value: past,
      remedy: 'a larger frame, or the window elsewhere',
    },
  ];
}

function holdOf(job: Job, held: Held, show: Show): Problem[] {
  const { picture, leaf, name } = held;
  const side = worstSide(picture.hold);
  const hold = picture.hold[side];
  if (hold >= HOLD_WARN - SLACK) return [];
  const at = bySize(leaf) ? `${leaf.at}.size` : `pictures[${picture.index}].overlap`;
  if (hold < -SLACK) {
    return [
      {
        code: 'picture-floats',
        severity: 'note',
        at,
        message: `${name} floats: the window is ${show.length(-hold)} larger than its sheet at the ${side}, so no mat holds it; hinge it to the mount board.`,
        value: show.length(hold),
      },
    ];
  }
  const enough = show.limit(HOLD_WELL);
  const found = show.missing(hold, HOLD_WARN);
  return [
    {
      code: 'overlap-too-small',
      severity: 'warning',
      at,
      message: `${name} is held by only ${found} at the ${side}: it can slip through the window, and sheets often measure less than their name. Measure it, and hold it by ${enough}.`,
      value: found,
      limit: show.limit(HOLD_WARN),
      remedy: `hold it by ${enough}`,
      fix: { label: `Hold it by ${enough}`, edits: [bySize(leaf) ? smaller(job, held, show) : cover(job, held, show)] },
    },
  ];
}

/** In an opening joined to the window that reaches past the sheet, the sheet's edge is seen. */
function endsInJoined({ window, picture, name }: Held, show: Show): Problem[] {
  return (window.parts ?? []).flatMap(({ title, box }, index) => {
    const room = insets(picture.sheet, box);
    const side = worstSide(room);
    if (room[side] >= -SLACK) return [];
    const past = show.length(-room[side]);
    return [
      {
        code: 'sheet-ends-in-joined',
        severity: 'note' as const,
        at: `${window.at}.joined[${index}]`,
        message: `${name}: its sheet ends ${past} short of the ${side} of the opening ${titled(title)}joined to window ${window.name}, and its edge is seen there; lay what is shown there over it on a sheet of its own, or take a larger sheet.`,
        value: past,
      },
    ];
  });
}

/** True where the window has a size of its own, so that the picture's overlap is not asked. */
function bySize(leaf: Leaf): boolean {
  return leaf.from === 'written' || leaf.from === 'written at face';
}

/** The overlap that holds the sheet well on every side; sides that hold it already are left alone. */
function cover(job: Job, { picture }: Held, show: Show): Edit {
  const of = job.pictures[picture.index];
  assert(of, 'a window shows a picture of the job');
  const margins = of.overlapFrom === 'image' ? of.margins : allSides(0);
  // Of the picture and not of the window, which may show only a part of it.
  const short = lacking(eachSide((side) => of.overlap[side] + margins[side]));
  const words = eachSide((side) => {
    const better = of.overlap[side] + short[side];
    return better < 0 ? `shows ${show.exact(-better)}` : `covers ${show.exact(better)}`;
  });
  const same = SIDES.every((side) => words[side] === words.left);
  return { at: `pictures[${picture.index}].overlap`, value: same ? words.left : words };
}

/** The window's own size, less what is lacking. */
function smaller(job: Job, { picture, leaf }: Held, show: Show): Edit {
  const { left, top, right, bottom } = lacking(picture.hold);
  const bevels = leaf.from === 'written at face' ? 2 * bottomRun(job) : 0;
  return {
    at: `${leaf.at}.size`,
    value: {
      width: show.exact(leaf.size.width + bevels - left - right),
      height: show.exact(leaf.size.height + bevels - top - bottom),
    },
  };
}

function lacking(hold: PerSide): PerSide {
  return eachSide((side) => (hold[side] < HOLD_WARN - SLACK ? HOLD_WELL - hold[side] : 0));
}

/** Sheets that lie over one another behind the mat; of a picture whole behind several windows there is only one. */
export function sheetsInEachOther(layout: PlacedLayout, show: Show): Problem[] {
  const placed = layout.windows.flatMap((window) => {
    const { picture } = window;
    const again = picture?.part?.way === 'hidden' && picture.part.index > 0;
    return picture && !again ? [{ window, sheet: picture.sheet }] : [];
  });
  const sheets = placed.map(({ sheet }) => sheet);
  const worst = nearPairs(sheets, -SLACK)
    .map(([one, other]) => ({ one, other, by: -separation(sheets[one] as Box, sheets[other] as Box) }))
    .reduce<{ one: number; other: number; by: number } | undefined>((a, b) => (a && a.by >= b.by ? a : b), undefined);
  if (!worst) return [];
  const [one, other] = [placed[worst.one]?.window, placed[worst.other]?.window];
  return [
    {
      code: 'sheets-overlap',
      severity: 'warning',
      at: one?.at ?? 'windows',
      message: `Behind the mat the sheets of windows ${one?.name} and ${other?.name} lie ${show.length(worst.by)} over each other; widen the gap by as much, or have less margin of paper (a work of value is never trimmed).`,
      value: show.length(worst.by),
      remedy: `a gap wider by ${show.length(worst.by)}`,
    },
  ];
}
