/** What is worth knowing of a layout as a whole: pictures left out, boards and frames to be had, hanging either way. */
import { heightOf, sizeOf, widthOf, type Size } from '../../geometry/box';
import { nameOfSize, READY_MADE_SIZES } from '../../frame/ready-made';
import type { Job } from '../../job/job';
import type { Problem } from '../../problem';
import { MM_PER_INCH } from '../../units';
import { framePath } from '../frame-path';
import type { PlacedLayout } from '../layout';
import type { Show } from '../show';
import { SLACK, titled } from './slack';

/** Largest mat board sold, mm: 40 x 60 in. Common practice, no source. */
const LARGEST_BOARD: Size = { width: 40 * MM_PER_INCH, height: 60 * MM_PER_INCH };

export function notes(job: Job, layout: PlacedLayout, show: Show): Problem[] {
  return [
    ...picturesLeftOut(job, layout),
    ...sheetsInTwoPlaces(job, layout),
    ...partedPictures(job, layout, show),
    ...bottomNarrower(job, layout, show),
    ...largerThanBoard(job, layout, show),
    ...customSize(job, layout, show),
    ...hangsEitherWay(layout, show),
  ];
}

export function picturesLeftOut(job: Job, layout: PlacedLayout): Problem[] {
  const shown = new Set(layout.windows.map((window) => window.picture?.index));
  const [where, remedy] =
    layout.layers.length === 0
      ? ['is not in the frame, which holds one picture without a mat; make a job for it.', 'make a job for it']
      : ['is in no window; give it one, or take it out of the job.', 'give it a window, or take it out'];
  return job.pictures.flatMap(({ title }, index): Problem[] => {
    if (shown.has(index)) return [];
    return [
      {
        code: 'picture-without-window',
        severity: 'warning',
        at: `pictures[${index}]`,
        message: `Picture ${titled(title) || `${index + 1} `}${where}`,
        remedy,
      },
    ];
  });
}

/** One sheet can be behind one window only, unless it is spread over several. */
function sheetsInTwoPlaces(job: Job, { windows }: PlacedLayout): Problem[] {
  return job.pictures.flatMap(({ title }, index): Problem[] => {
    const items = new Map(windows.filter(({ picture }) => picture?.index === index).map((one) => [one.at, one.name]));
    if (items.size < 2) return [];
    const names = [...items.values()];
    const last = names.pop();
    return [
      {
        code: 'picture-in-two-windows',
        severity: 'warning',
        at: [...items.keys()].at(-1) ?? `pictures[${index}]`,
        message: `Picture ${titled(title) || `${index + 1} `}is in windows ${names.join(', ')} and ${last}, but there is one sheet of it: have as many prints, or make it a spread.`,
        remedy: 'have a print for each window, or make it a spread',
      },
    ];
  });
}

/** A spread that hides nothing shows a picture that is in pieces. */
function partedPictures(job: Job, { windows }: PlacedLayout, show: Show): Problem[] {
  return windows.flatMap(({ at, picture }): Problem[] => {
    if (picture?.part?.way !== 'split' || picture.part.index > 0) return [];
    const title = titled(job.pictures[picture.index]?.title ?? '') || `${picture.index + 1} `;
    return [
      {
        code: 'picture-in-pieces',
        severity: 'note',
        at,
        message: `Picture ${title}has to be in ${picture.part.count} pieces, each larger than its window (the first ${show.size(sizeOf(picture.sheet))}), as when it is printed in parts. Never cut a work of value: let the bars hide part of it instead.`,
      },
    ];
  });
}

/** Weighting the wrong way round is allowed, but seldom meant. */
function bottomNarrower({ borders: { rule } }: Job, { borders: { cut } }: PlacedLayout, show: Show): Problem[] {
  const weighted = rule === 'bottom-amount' || rule === 'bottom-ratio' || rule === 'height-share';
  if (!weighted || cut.bottom >= cut.top - SLACK) return [];
  return [
    {
      code: 'bottom-narrower',
      severity: 'note',
      at: 'borders',
      message: `The bottom border is ${show.length(cut.top - cut.bottom)} narrower than the top; a mat is usually wider at the bottom, or the picture seems to slip down.`,
    },
  ];
}

function largerThanBoard(job: Job, { frame: { blank } }: PlacedLayout, show: Show): Problem[] {
  const { width: short, height: long } = upright(blank);
  if (short <= LARGEST_BOARD.width + SLACK && long <= LARGEST_BOARD.height + SLACK) return [];
  const largest = show.size(LARGEST_BOARD);
  return [
    {
      code: 'larger-than-sheet',
      severity: 'warning',
      at: framePath(job),
      message: `The blank is ${show.size(blank)}, larger than the largest board commonly sold, ${largest}.`,
      value: show.size(blank),
      limit: largest,
      remedy: `a frame of ${largest} or smaller, or a board to order`,
    },
  ];
}

function customSize(job: Job, { frame: { blank } }: PlacedLayout, show: Show): Problem[] {
  if (job.frame.blank || nameOfSize(blank) !== undefined) return [];
  const next = nextReadyMade(job, blank);
  if (next === undefined) return [];
  return [
    {
      code: 'size-is-custom',
      severity: 'note',
      at: 'frame',
      message: `${show.size(blank)} is not sold ready-made; the nearest above is ${next}.`,
    },
  ];
}

/** The smallest size sold in the job's own units that both sides fit in, whichever way round. */
function nextReadyMade(job: Job, blank: Size): string | undefined {
  const { width: short, height: long } = upright(blank);
  const inches = job.units === 'in';
  return READY_MADE_SIZES.filter((size) => size.name.endsWith(' in') === inches)
    .filter((size) => size.width >= short - SLACK && size.height >= long - SLACK)
    .sort((a, b) => a.width * a.height - b.width * b.height)[0]?.name;
}

/** Four equal borders let the frame hang either way; any weighting takes that away. */
function hangsEitherWay(layout: PlacedLayout, show: Show): Problem[] {
  const { left, top, right, bottom } = layout.borders.cut;
  const equal = [top, right, bottom].every((border) => Math.abs(border - left) < SLACK);
  const oblong = Math.abs(widthOf(layout.content) - heightOf(layout.content)) > SLACK;
  if (!equal || !oblong) return [];
  return [
    {
      code: 'hangs-either-way',
      severity: 'note',
      at: 'borders',
      message: `All four borders are ${show.length(left)}, so the mat may be turned and hang either way; any bottom weighting takes that away.`,
    },
  ];
}

function upright({ width, height }: Size): Size {
  return width <= height ? { width, height } : { width: height, height: width };
}
