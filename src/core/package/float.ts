/** A canvas in a float frame: the gap round it, where its face comes to lie, what packs it up, and its screws. */
import { sizeOf, type Size } from '../geometry/box';
import type { Job, Picture } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Shelf } from '../shelf/shelf';
import { carriesItself, lyingPictures, thicknessOf } from './pictures';
import { exactly, less, SLACK, type Range } from './range';
import { limitsOf, type ScrewLimits } from './screws';

export interface FloatFit {
  /** Into the job's pictures. */
  readonly index: number;
  /** False: it is on paper, and must not go in. */
  readonly isCanvas: boolean;
  readonly canvas: Size;
  readonly depth: Range;
  /** Of the frame, between its sides. */
  readonly inside: Size;
  /** On each side; negative where the canvas is larger than the inside. */
  readonly gap: { readonly across: number; readonly up: number };
  /** What the job wants it to be. */
  readonly wantedGap: number;
  /** By how much the gap that misses it most is not the wanted one. */
  readonly gapOff: number;
  /** True where a gap is more than twice the wanted one. */
  readonly isTooWide: boolean;
  /** Depth of canvas and set-back together: the least inside depth that gives what is wanted. */
  readonly neededDepth: number;
  /** Where the inside depth is known. */
  readonly lies?: FloatLie;
  readonly screws: ScrewLimits;
}

export interface FloatLie {
  /** Under the canvas, on the ledge. */
  readonly packing: number;
  /** How far the face lies behind the frame's front; negative: it stands proud. */
  readonly face: Range;
  readonly words: 'flush' | 'recessed' | 'proud';
  /** How much more proud, or less deep, than wanted; 0 where packing brings it right. */
  readonly short: number;
  /** Thickness of the ledge, where the moulding's depth is known too. */
  readonly ledge?: number;
}

/**
 * A gap of more times the wanted one does not do: the canvas no longer fills its frame, and of the ledge and the screws' packing
 * more is seen than of a shadow line. Our own rule, no source.
 */
const MOST_GAP = 2;

/** Undefined where there is no float frame, or nothing to go into it. */
export function floatOf(job: Job, layout: Layout, shelf: Shelf): FloatFit | undefined {
  if (job.frame.build !== 'float') return undefined;
  const lying = lyingPictures(job, layout);
  const { index, picture } = lying.find((one) => carriesItself(one.picture)) ?? lying[0] ?? {};
  if (index === undefined || picture === undefined) return undefined;
  const { gap } = job.frame.float;
  const depth = thicknessOf(picture);
  const sheet = layout.windows.find((window) => window.picture?.index === index)?.picture?.sheet;
  const canvas = sheet ? sizeOf(sheet) : picture.sheet;
  const blank = job.frame.blank ?? canvas;
  const inside = { width: blank.width + 2 * gap, height: blank.height + 2 * gap };
  const around = { across: (inside.width - canvas.width) / 2, up: (inside.height - canvas.height) / 2 };
  const lies = lieOf(job, depth);
  return {
    index,
    isCanvas: carriesItself(picture),
    canvas,
    depth,
    inside,
    gap: around,
    wantedGap: gap,
    gapOff: Math.max(Math.abs(around.across - gap), Math.abs(around.up - gap)),
    isTooWide: Math.max(around.across, around.up) > MOST_GAP * gap + SLACK,
    neededDepth: depth.nominal + job.frame.float.setBack,
    ...(lies ? { lies } : {}),
    screws: screwsOf(lies, picture, shelf),
  };
}

/** From behind: through ledge and packing into the bar. */
function screwsOf(lies: FloatLie | undefined, { kind, thinnest: wood }: Picture, shelf: Shelf): ScrewLimits {
  const bar = kind === 'painting on panel' ? 'the panel' : 'the bar of the stretcher';
  if (!lies) return limitsOf({ into: bar, passes: 'the ledge with its packing', wood }, shelf);
  const { packing, ledge } = lies;
  const packed = packing > SLACK;
  const into = packed ? `packing and ${bar}` : bar;
  if (ledge === undefined) return limitsOf({ into, passes: 'the ledge', through: packing, wood }, shelf);
  return limitsOf({ into: packed ? `ledge, ${into}` : `ledge and ${bar}`, through: ledge + packing, wood }, shelf);
}

function lieOf({ frame: { float, mouldingDepth } }: Job, depth: Range): FloatLie | undefined {
  const { insideDepth, setBack } = float;
  if (insideDepth === undefined) return undefined;
  const room = insideDepth - depth.nominal - setBack;
  const packing = room > SLACK ? room : 0;
  const face = less(exactly(insideDepth - packing), depth);
  return {
    packing,
    face,
    words: Math.abs(face.nominal) <= SLACK ? 'flush' : face.nominal > 0 ? 'recessed' : 'proud',
    short: room < -SLACK ? -room : 0,
    ...(mouldingDepth === undefined ? {} : { ledge: Math.max(0, mouldingDepth - insideDepth) }),
  };
}
