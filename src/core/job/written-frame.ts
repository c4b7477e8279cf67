/** What a job file may say of the frame. */
import * as z from 'zod';
import { colour } from './written-colour';
import { length, size } from './written-lengths';
import { density, mass } from './written-material';

/** How a frame is made, for what has to be looked at and added. */
export const FRAME_BUILDS = ['open back', 'with back', 'deep', 'float'] as const;
export const FRAME_CORNERS = ['mitred', 'closed'] as const;
/** What a frame may come with, and what a finished one needs. */
export const FRAME_PARTS = [
  'glazing',
  'mat',
  'mount board',
  'backing',
  'fixings',
  'hangers',
  'wire',
  'dust cover',
] as const;

export const frame = z
  .strictObject({
    size: size.optional().describe('Of glazing, mat and backing: the blank.'),
    readyMade: z
      .string()
      .max(200)
      .optional()
      .describe('In place of a size: the name of one sold ready-made, such as "11x14 in", "30x40 cm" or "A3".'),
    hung: z
      .enum(['portrait', 'landscape'])
      .optional()
      .describe('Which way a ready-made frame hangs. Default: as its name has it.'),
    name: z
      .string()
      .max(200)
      .optional()
      .describe('What it is called on your shelf: a frame, whose price then counts, or the moulding it is made of.'),
    allowance: length
      .optional()
      .describe('Total play between the package and the rabbet walls. Default 1/8 in (3 mm in a metric job).'),
    lip: length
      .optional()
      .describe(
        'How far the front edge of the frame covers the face, per side. Default 1/4 in (6 mm in a metric job).',
      ),
    mouldingWidth: length.optional().describe('Face width. Default 3/4 in (20 mm in a metric job).'),
    mouldingDepth: length.optional().describe('Front to back. Default unknown.'),
    rabbetDepth: length.optional().describe('From the back of the lip to the back of the frame. Default unknown.'),
    colour: colour.optional(),
    build: z
      .enum(FRAME_BUILDS)
      .optional()
      .describe(
        '"open back": just the frame; "with back": its own back, held by turn buttons or slid into grooves; "deep": a rabbet deep enough for a canvas or an object; "float": for a canvas, seen with a gap round it. Default "open back".',
      ),
    corners: z.enum(FRAME_CORNERS).optional().describe('How they are made. Default "mitred".'),
    comesWith: z.array(z.enum(FRAME_PARTS)).optional().describe('What is bought with the frame. Default nothing.'),
    grooves: z
      .array(length)
      .max(12)
      .optional()
      .describe(
        'Of a frame with a back: from the back of the lip to the front of each groove that the back slides into.',
      ),
    float: z
      .strictObject({
        gap: length.optional().describe('Between canvas and frame, per side. Default 1/4 in (6 mm in a metric job).'),
        insideDepth: length
          .optional()
          .describe('From the ledge that the canvas lies on to the front of the frame. Default unknown.'),
        setBack: length
          .optional()
          .describe('How far the face of the canvas should lie behind the front of the frame; 0 is flush. Default 0.'),
      })
      .optional(),
    weight: mass.optional().describe('Of the empty frame. Default unknown.'),
    density: density.optional().describe('Of its wood, g/cm³, to work out the weight where it was not weighed.'),
  })
  .meta({ id: 'Frame', description: 'Without size and readyMade it is made to fit the borders.' });

export type WrittenFrame = z.infer<typeof frame>;
