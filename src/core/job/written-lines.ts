/** What a job file may say of decorative lines on the face round a window: V-grooves and ruled lines. */
import * as z from 'zod';
import { colour } from './written-colour';
import { length } from './written-lengths';

export const MOST_LINES = 12;

const distance = length
  .optional()
  .describe(
    "From the window's edge on the face of the top layer outward to the middle of the line. Default 1/2 in (12 mm in a metric job).",
  );

const groove = z
  .strictObject({
    kind: z.literal('groove'),
    distance,
    width: length.optional().describe('Of its mouth, on the face. Default 1/16 in (1.5 mm in a metric job).'),
    angle: z
      .number()
      .optional()
      .describe("Of each of its two slopes, degrees from the face's normal. Default: the cutter's, else 45."),
  })
  .meta({
    id: 'Groove',
    description: 'A V-groove, cut from the face in two passes that lean towards one another and meet in the board.',
  });

const ruled = z
  .strictObject({
    kind: z.literal('ruled'),
    distance,
    width: length.optional().describe('Of the pen. Default 0.5 mm.'),
    colour: colour.optional().describe('Of the ink. Default "#5b5348".'),
  })
  .meta({ id: 'RuledLine', description: 'A line drawn on the face with a pen.' });

export const lines = z
  .array(z.discriminatedUnion('kind', [groove, ruled]))
  .max(MOST_LINES)
  .meta({
    id: 'Lines',
    description:
      'Grooves and ruled lines on the face of the top layer round a window, each following its shape at one distance. An empty list: none.',
  });

export type WrittenLine = z.infer<typeof groove> | z.infer<typeof ruled>;
