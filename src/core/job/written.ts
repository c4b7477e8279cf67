/** What a job file may say: the one definition that checks it and that its published JSON Schema is made from. */
import * as z from 'zod';
import { length, place, size } from './written-lengths';
import { borders } from './written-borders';
import { framePackage } from './written-package';
import { hanging } from './written-hanging';
import { wall } from './written-wall';
import { frame } from './written-frame';
import { mass, quality, thicknesses } from './written-material';
import { cutting } from './written-cutter';
import { colour } from './written-colour';
import { joinedPart, MOST_JOINED } from './written-joined';
import { lines } from './written-lines';
import { shape } from './written-shape';

// Sandboxed screens forbid code made from text, which zod would otherwise probe for.
z.config({ jitless: true });

export const FORMAT = 'matwright-job';
export const VERSION = 1;
export const MAX_LAYERS = 4;
export const MAX_WINDOWS = 2000;

const words = (max: number) => z.string().max(max);
const name = words(200);
const note = words(4000);

const overlap = z.string().max(80).or(z.number()).meta({
  id: 'Overlap',
  description:
    'How far the mat covers the picture on a side: "covers 1/8 in" or "1/8 in"; "shows 1/4 in" or "-1/4 in" leaves a margin of paper in sight.',
});

/** One value for all sides, or a value for each side that differs. */
function perSide<T extends z.ZodType>(value: T, described: string) {
  return z
    .union([
      value,
      z.strictObject({
        left: value.optional(),
        top: value.optional(),
        right: value.optional(),
        bottom: value.optional(),
      }),
    ])
    .describe(described);
}

export const PICTURE_KINDS = [
  'photograph',
  'print',
  'cyanotype',
  'drawing',
  'pastel or charcoal',
  'watercolour',
  'painting on canvas',
  'painting on panel',
  'chart or map',
  'document',
  'textile',
  'other',
] as const;

/** What makes a picture a matter for a conservator. */
export const CONCERNS = ['valuable', 'fragile', 'old', 'double-sided'] as const;

const picture = z
  .strictObject({
    id: name.optional().describe('How windows refer to it. Left out: its place in the list, "1", "2", ...'),
    title: name.optional(),
    kind: z.enum(PICTURE_KINDS).optional().describe('What it is. Default "other".'),
    size: size.describe('The whole sheet of paper.'),
    image: size
      .optional()
      .describe('The image on the sheet, where the sheet has margins. Left out: it fills the sheet.'),
    margins: z
      .strictObject({ left: length.optional(), top: length.optional() })
      .optional()
      .describe("The sheet's margin left of and above the image. Left out: the image lies in the middle."),
    overlapFrom: z.enum(['image', 'sheet']).optional().describe('What the overlap is measured from. Default "image".'),
    overlap: perSide(overlap, 'Default "covers 1/8 in" (3 mm in a metric job).').optional(),
    thickness: length
      .optional()
      .describe(
        'Of a canvas, the depth of its stretcher. Default 0.25 mm; a canvas 3/4 in (19 mm in a metric job), a panel 1/8 in (3 mm).',
      ),
    ...thicknesses,
    weight: mass.optional().describe('Of a canvas or panel; paper weighs next to nothing.'),
    concerns: z.array(z.enum(CONCERNS)).optional().describe('What makes it a matter for a conservator. Default none.'),
    file: words(1000)
      .optional()
      .describe("A picture file to show on the screen and in the proof, from the job's folder."),
    notes: note.optional(),
  })
  .meta({ id: 'Picture' });

const layer = z
  .strictObject({
    board: name.optional().describe('What the board is called on your shelf.'),
    colour: colour.optional().describe('Of its face.'),
    core: colour.optional().describe('Of the core that a standard bevel shows.'),
    thickness: length.optional().describe('Measured, never a ply count. Default 1/16 in (1.5 mm in a metric job).'),
    ...thicknesses,
    quality: quality.optional(),
    bevel: z
      .strictObject({
        angle: z.number().optional().describe("Degrees from the face's normal. Default 45."),
        direction: z.enum(['standard', 'reverse']).optional().describe('Standard shows the core, reverse hides it.'),
      })
      .optional(),
    reveal: perSide(
      length,
      "From this layer's opening to the opening of the layer above it. Not for the top layer. Default 1/4 in (6 mm in a metric job).",
    ).optional(),
  })
  .meta({ id: 'Layer' });

export const GAP_WITH_BORDERS = 'share with borders';
export const GAP_BETWEEN = 'share between';

const gap = z.union([z.enum([GAP_WITH_BORDERS, GAP_BETWEEN]), length]).meta({
  id: 'Gap',
  description:
    'Between the openings of neighbours in the bottom layer: a length; "share with borders", as wide as the border beside it; or "share between", what is left between the borders in equal parts. Default 1 in (25 mm in a metric job).',
});

export const WINDOW_USES = ['title', 'caption', 'signature', 'empty'] as const;

const windowFields = {
  picture: z
    .union([name, z.int().min(1)])
    .optional()
    .describe('The id of a picture, or its number in the list.'),
  use: z.enum(WINDOW_USES).optional().describe('What a window without a picture is for. Default "empty".'),
  title: name.optional(),
  size: size
    .optional()
    .describe('Of the window. Needed where there is no picture; in place of the overlap where there is one.'),
  shape: shape.optional(),
  turned: z
    .union([z.literal(90), z.literal(180), z.literal(270)])
    .optional()
    .describe('Degrees anticlockwise by which the window is turned with the picture in it.'),
  mirrored: z
    .boolean()
    .optional()
    .describe('True where the shape is turned over, left for right, before it is turned.'),
  joined: z
    .array(joinedPart)
    .max(MOST_JOINED)
    .optional()
    .describe('Openings that overlap or touch the window and become one with it.'),
  lines: lines.optional().describe('In place of those that the mat has round every window.'),
};

const window = z.strictObject({ kind: z.literal('window'), ...windowFields }).meta({
  id: 'Window',
  description: 'One window. In a list of items a bare text stands for a window over that picture.',
});

const spread = z
  .strictObject({
    kind: z.literal('spread'),
    picture: windowFields.picture,
    title: name.optional(),
    count: z.int().min(2).max(40).describe('Over how many windows.'),
    along: z.enum(['row', 'column']).optional().describe('Default "row".'),
    bars: z
      .enum(['hide', 'split'])
      .optional()
      .describe(
        '"hide": the picture stays whole and the bars hide part of it; "split": it is cut or printed in parts and nothing is hidden. Default "hide".',
      ),
    gap: length.optional().describe('Width of the bars. Default 1 in (25 mm in a metric job).'),
    shares: z
      .array(z.number().positive())
      .optional()
      .describe('Widths (heights) of the windows to one another, such as [1, 2, 1]. Default equal.'),
    turned: z
      .union([z.literal(90), z.literal(180), z.literal(270)])
      .optional()
      .describe('Degrees anticlockwise by which the picture is turned behind its windows.'),
    lines: windowFields.lines,
  })
  .meta({ id: 'Spread', description: 'One picture over several windows.' });

const HORIZONTAL = ['left', 'centre', 'right'] as const;
const VERTICAL = ['top', 'centre', 'bottom', 'baseline'] as const;

const horizontal = z.enum(HORIZONTAL).optional().describe('How items of unequal width line up. Default "centre".');
const vertical = z
  .enum(VERTICAL)
  .optional()
  .describe(
    'How items of unequal height line up; "baseline" is the lower edge of the picture window, so that titles below do not count. Default "centre".',
  );

const items: z.ZodType<WrittenNode[]> = z.lazy(() => z.array(z.union([name, node])).min(1));

const row = z.strictObject({ kind: z.literal('row'), items, gap: gap.optional(), align: vertical }).meta({ id: 'Row' });
const column = z
  .strictObject({ kind: z.literal('column'), items, gap: gap.optional(), align: horizontal })
  .meta({ id: 'Column' });
const grid = z
  .strictObject({
    kind: z.literal('grid'),
    items,
    columns: z.int().min(1).max(200).describe('How many items a row has; items fill row after row.'),
    gap: gap.optional().describe('Both ways, where columnGap or rowGap say nothing else.'),
    columnGap: gap.optional(),
    rowGap: gap.optional(),
    alignColumns: horizontal,
    alignRows: vertical,
  })
  .meta({ id: 'Grid' });

const ring = z
  .strictObject({
    kind: z.literal('ring'),
    items: items.describe('Windows. The first stands in the middle unless `centre` says otherwise.'),
    centre: z
      .enum(['first', 'none'])
      .optional()
      .describe('Whether the first window stands in the middle. Default "first".'),
    gap: length
      .optional()
      .describe(
        'From the outline of the window in the middle to that of each round it. Default 1 in (25 mm in a metric job).',
      ),
    on: size.optional().describe('In place of the gap: the ellipse on which the middles of the windows lie.'),
    spacing: z
      .enum(['equal gaps', 'equal angles'])
      .optional()
      .describe('What is equal from one window to the next round the ring. Default "equal gaps".'),
    start: z
      .number()
      .min(-360)
      .max(360)
      .optional()
      .describe('Where the ring begins, degrees clockwise from the top. Default 0.'),
  })
  .meta({ id: 'Ring', description: 'Windows round another, or on an ellipse; clockwise.' });

const node = z.discriminatedUnion('kind', [window, spread, row, column, grid, ring]).meta({ id: 'Arrangement' });

const freeWindow = z
  .strictObject({
    ...windowFields,
    at: place.describe(
      'From the edges of the blank to the window. One across and one up; what is left out is centred.',
    ),
  })
  .meta({ id: 'FreeWindow', description: 'A window placed by coordinates, outside the arrangement.' });

export const writtenJob = z
  .strictObject({
    $schema: words(1000).optional().describe('Where an editor finds the JSON Schema of job files.'),
    format: z.literal(FORMAT),
    version: z.literal(VERSION),
    title: name.optional(),
    notes: note.optional(),
    units: z
      .enum(['in', 'mm', 'cm'])
      .optional()
      .describe('Of lengths written without a unit, and how lengths are shown. Default "in".'),
    steps: z
      .strictObject({
        in: z.enum(['1/8', '1/16', '1/32', '1/64']).optional(),
        mm: z.enum(['1', '0.5', '0.1']).optional(),
      })
      .optional()
      .describe('How finely lengths are shown. Default 1/16 in and 0.5 mm.'),
    pictures: z.array(picture).max(MAX_WINDOWS).optional(),
    frame: frame.optional(),
    package: framePackage.optional(),
    mat: z
      .strictObject({
        layers: z
          .array(layer)
          .max(MAX_LAYERS)
          .optional()
          .describe(
            'From the top (nearest the glazing) down; an empty list is no mat. Default one, and none in a float frame.',
          ),
        measuredAt: z
          .enum(['opening', 'face'])
          .optional()
          .describe(
            'Where written window sizes are meant: at the opening, or at the face edge of the bottom layer. Default "opening".',
          ),
        lines: lines.optional().describe('Round every window that does not say its own. Default none.'),
      })
      .optional(),
    windows: z.union([name, node]).optional().describe('How the windows are arranged. Default: a row of all pictures.'),
    free: z.array(freeWindow).max(MAX_WINDOWS).optional(),
    borders: borders.optional(),
    cutting: cutting.optional(),
    hanging: hanging.optional(),
    wall: wall.optional(),
  })
  .meta({
    id: 'MatwrightJob',
    title: 'Matwright job',
    description: 'A picture or several, a frame, a mat with its windows and borders.',
  });

export type WrittenLength = string | number;
export type WrittenSize = string | { readonly width: WrittenLength; readonly height: WrittenLength };
export type WrittenPerSide<T> = T | { readonly [side in 'left' | 'top' | 'right' | 'bottom']?: T | undefined };
export type WrittenPicture = z.infer<typeof picture>;
export type WrittenLayer = z.infer<typeof layer>;
export type WrittenBorders = z.infer<typeof borders>;
export type WrittenWindow = z.infer<typeof window>;
export type WrittenSpread = z.infer<typeof spread>;
export type WrittenFreeWindow = z.infer<typeof freeWindow>;
export type WrittenHorizontal = (typeof HORIZONTAL)[number];
export type WrittenVertical = (typeof VERTICAL)[number];

interface WrittenList {
  items: WrittenNode[];
}
export interface WrittenRow extends WrittenList {
  kind: 'row';
  gap?: WrittenLength | undefined;
  align?: WrittenVertical | undefined;
}
export interface WrittenColumn extends WrittenList {
  kind: 'column';
  gap?: WrittenLength | undefined;
  align?: WrittenHorizontal | undefined;
}
export interface WrittenGrid extends WrittenList {
  kind: 'grid';
  columns: number;
  gap?: WrittenLength | undefined;
  columnGap?: WrittenLength | undefined;
  rowGap?: WrittenLength | undefined;
  alignColumns?: WrittenHorizontal | undefined;
  alignRows?: WrittenVertical | undefined;
}
export interface WrittenRing extends WrittenList {
  kind: 'ring';
  centre?: 'first' | 'none' | undefined;
  gap?: WrittenLength | undefined;
  on?: WrittenSize | undefined;
  spacing?: 'equal gaps' | 'equal angles' | undefined;
  start?: number | undefined;
}
export type WrittenGroup = WrittenRow | WrittenColumn | WrittenGrid | WrittenRing;
/** An item of an arrangement; a bare text is a window over the picture of that id. */
export type WrittenNode = string | WrittenWindow | WrittenSpread | WrittenGroup;

/** A job as its file says it: every value just as the user wrote it, nothing filled in. */
export type WrittenJob = Readonly<z.infer<typeof writtenJob>>;
