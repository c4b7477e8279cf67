/** A section through the lower rail, to scale: the moulding with its rabbet, and the stack in it. */
import type { Box, Point, Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { FloatFit } from './float';
import type { ItemKind, Stack } from './stack';

export interface SectionItem {
  readonly kind: ItemKind;
  readonly name: string;
  /** As it is called, mm. */
  readonly thickness: number;
  readonly box: Box;
}

/** mm; x from the front of the moulding to its back, y up from the outer edge of the rail. */
export interface PackageSection {
  readonly size: Size;
  /** The moulding, corner by corner. */
  readonly wood: readonly Point[];
  readonly items: readonly SectionItem[];
  /** Under a canvas in a float frame, on its ledge. */
  readonly packing?: Box;
  /** Between the least and the greatest that the stack may be, where that differs. */
  readonly range?: Box;
  /** The back of the frame, where the rabbet's depth is known. */
  readonly back?: number;
}

/** How thick wood is drawn that is not measured: before the lip, of a ledge. */
const WOOD = 5;
/** Least that is drawn above the rail. */
const ABOVE = 18;

/** Of the answer to what a package is: all that the section shows. */
interface Shown {
  readonly stack: Stack;
  readonly float?: FloatFit;
}

export function packageSection(job: Job, layout: Layout, { stack, float }: Shown): PackageSection {
  return float ? floatSection(job, float, stack) : rabbetSection(job, layout, stack);
}

/** What is not measured is drawn as deep as what is in it; above the rail as much as makes the section plain. */
function rabbetSection(job: Job, layout: Layout, stack: Stack): PackageSection {
  const { mouldingWidth, lip, allowance, mouldingDepth, rabbetDepth } = job.frame;
  const { whole } = stack;
  const rabbet = rabbetDepth ?? whole.nominal;
  const depth = Math.max(mouldingDepth ?? 0, rabbet + WOOD);
  const front = depth - rabbet;
  const up = aboveRail(job);
  const height = mouldingWidth + up;
  const shelf = mouldingWidth - lip;
  const edge = shelf + allowance / 2;
  const hasMat = job.layers.length > 0;
  const window = edge + Math.min(up * 0.5, layout.borders.cut.bottom);
  const tops: Partial<Record<ItemKind, number>> = { layer: window, spacer: edge + up * 0.2 };
  /** What is hinged under a mat reaches a little below its window; all else stands on the rail. */
  const floorOf = (kind: ItemKind) =>
    hasMat && (kind === 'picture' || kind === 'hinges') ? Math.max(edge, window - up * 0.25) : edge;
  const isRange = whole.greatest > whole.least;
  return {
    size: { width: front + Math.max(rabbet, whole.greatest), height },
    wood: cornersOf([0, 0], [depth, 0], [depth, shelf], [front, shelf], [front, mouldingWidth], [0, mouldingWidth]),
    items: itemsAt(stack, (from, { kind }) => ({
      left: front + from,
      bottom: floorOf(kind),
      top: tops[kind] ?? height,
    })),
    ...(isRange
      ? { range: { left: front + whole.least, right: front + whole.greatest, bottom: shelf, top: height } }
      : {}),
    ...(rabbetDepth === undefined ? {} : { back: depth }),
  };
}

/** The rail stands beside the canvas, the ledge reaches in behind it; a ledge of unknown thickness is drawn as thin wood. */
function floatSection(job: Job, { depth, gap, lies, neededDepth }: FloatFit, stack: Stack): PackageSection {
  const { mouldingWidth, float } = job.frame;
  const up = aboveRail(job);
  const height = mouldingWidth + gap.up + up;
  const packing = lies?.packing ?? 0;
  const inside = float.insideDepth ?? Math.max(neededDepth, depth.nominal);
  const face = inside - packing - depth.nominal;
  // A face that stands proud of the frame begins the drawing.
  const front = Math.max(0, -face);
  const ledge = front + inside;
  const back = ledge + (lies?.ledge ?? WOOD);
  const bottom = mouldingWidth + gap.up;
  const reach = bottom + up * 0.4;
  return {
    size: { width: back, height },
    wood: cornersOf(
      [front, 0],
      [back, 0],
      [back, reach],
      [ledge, reach],
      [ledge, mouldingWidth],
      [front, mouldingWidth],
    ),
    items: itemsAt(stack, (from) => ({ left: front + face + from, bottom, top: height })),
    ...(packing > 0
      ? { packing: { left: ledge - packing, right: ledge, bottom: bottom + up * 0.05, top: reach } }
      : {}),
  };
}

function aboveRail({ frame }: Job): number {
  return Math.max(ABOVE, frame.mouldingWidth * 0.9);
}

function itemsAt(
  { items }: Stack,
  placeOf: (from: number, item: Stack['items'][number]) => Omit<Box, 'right'>,
): SectionItem[] {
  return items.map((item) => {
    const { kind, name, thickness, from } = item;
    const place = placeOf(from.nominal, item);
    return {
      kind,
      name,
      thickness: thickness.nominal,
      box: { ...place, right: place.left + thickness.nominal },
    };
  });
}

function cornersOf(...corners: readonly (readonly [number, number])[]): Point[] {
  return corners.map(([x, y]) => ({ x, y }));
}
