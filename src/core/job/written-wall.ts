/** What a job file may say of the wall: where frames hang on it, this job's own or several. */
import * as z from 'zod';
import { hooks } from './written-hanging';
import { length, size } from './written-lengths';
import { mass } from './written-material';

export const WALL_ARRANGEMENTS = ['one', 'row', 'grid', 'stairs', 'group'] as const;
export const WALL_EDGES = ['left', 'right'] as const;
export const WALL_ALIGNS = ['top', 'centre', 'bottom'] as const;
/** Frames on one wall, all told. */
export const MOST_FRAMES = 500;

const wallFrame = z.strictObject({
  title: z.string().max(200).optional(),
  size: size.optional().describe("Outside. Default: this job's own frame."),
  count: z.int().min(1).max(MOST_FRAMES).optional().describe('How many of it, one after another. Default 1.'),
  drop: length
    .optional()
    .describe(
      'From its top to where it sits on its hooks, measured with the wire drawn taut. Default as "hanging" has it.',
    ),
  hooks: hooks.optional().describe('Default as "hanging" has it.'),
  hooksApart: length.optional().describe('Between its two hooks. Default as "hanging" has it.'),
  weight: mass.optional().describe('Default unknown; of this job\'s own frame as "hanging" has it.'),
  depth: length.optional().describe("Front to back. Default unknown; of this job's own frame its moulding's depth."),
  edge: length
    .optional()
    .describe(
      'In a group: from the start of the group to its nearer edge, counted from the edge of the wall. Default after the frame before it.',
    ),
  centre: length.optional().describe("In a group: from the floor to its middle. Default the wall's."),
});

export const wall = z
  .strictObject({
    width: length.optional().describe('Default unknown: places are then counted from the first frame.'),
    height: length.optional().describe('From floor to ceiling. Default unknown.'),
    centre: length
      .optional()
      .describe(
        'From the floor to the line that frames are centred on. Default 57 in (1450 mm in a metric job), common practice.',
      ),
    from: z.enum(WALL_EDGES).optional().describe('The edge of the wall that places are counted from. Default "left".'),
    offset: length
      .optional()
      .describe(
        'From that edge to where the frames begin. Default: in the middle of the wall; 0 where its width is unknown.',
      ),
    arrangement: z
      .enum(WALL_ARRANGEMENTS)
      .optional()
      .describe(
        'How the frames stand, from the edge that is counted from. Default "one" for one frame, "row" for several.',
      ),
    gap: length.optional().describe('Between frames. Default 4 in (100 mm in a metric job).'),
    columnGap: length.optional().describe('Of a grid, where it is another.'),
    rowGap: length.optional().describe('Of a grid, where it is another.'),
    columns: z.int().min(1).max(MOST_FRAMES).optional().describe('Of a grid. Default as near a square as it can be.'),
    align: z
      .enum(WALL_ALIGNS)
      .optional()
      .describe('Of a row: what lines up; the tallest frame is centred. Default "centre".'),
    run: length
      .optional()
      .describe(
        'Of stairs: from the middle of one frame to that of the next, along the floor. Default the widest frame and the gap.',
      ),
    rise: length
      .optional()
      .describe('Of stairs: how much higher the next one hangs; negative where they go down. Default 7 for 11 along.'),
    furniture: length.optional().describe('Height of what stands below. Default nothing.'),
    frames: z.array(wallFrame).min(1).max(MOST_FRAMES).optional().describe("Default this job's own frame."),
  })
  .meta({ id: 'Wall', description: 'Where frames hang on the wall.' });

export type WrittenWall = Readonly<z.infer<typeof wall>>;
export type WrittenWallFrame = Readonly<z.infer<typeof wallFrame>>;
