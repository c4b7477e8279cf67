/** How the mat is cut, as a job file says it: the cutter it is cut with, and how the layers come together. */
import * as z from 'zod';
import { length } from './written-lengths';

export const MOST_OVERCUTS = 20;

const side = z.enum(['right', 'left']).optional();

export const cutter = z
  .strictObject({
    name: z.string().min(1).max(200).describe('What you call it.'),
    reach: length.optional().describe('The longest setting of its guide. Default: as long as any board.'),
    scaleOffset: length
      .optional()
      .describe('What is added to a guide setting to get what its scale must read; may be negative. Default 0.'),
    overcuts: z
      .array(z.strictObject({ thickness: length, overcut: length }))
      .max(MOST_OVERCUTS)
      .optional()
      .describe(
        'How far its cuts run past their corners in boards of these thicknesses; in between by proportion, beyond as in the nearest.',
      ),
    bevelAngle: z
      .number()
      .optional()
      .describe("Degrees from the face's normal, for layers that do not say their own. Default 45."),
    waste: side.describe('On which side of its blade the waste lies, seen in the direction of travel.'),
  })
  .meta({ id: 'Cutter', description: 'A cutter as its user has measured it.' });

export const cutting = z.strictObject({
  overcut: length
    .optional()
    .describe(
      "How far each straight cut runs past its corner. Default: the cutter's for the board, else what the board's thickness and bevel ask for.",
    ),
  waste: side.describe(
    'On which side of the blade the waste lies, seen in the direction of travel. Default: the cutter\'s, else "right".',
  ),
  cutter: cutter.optional(),
  layers: z
    .enum(['apart', 'behind'])
    .optional()
    .describe(
      '"apart": every layer is cut by itself; "behind": a lower layer is fixed behind the cut one above and cut from its edges. Default "apart".',
    ),
  behindTrim: length
    .optional()
    .describe(
      'By how much a lower layer that is cut "behind" is smaller than the blank on every side. Default 1/4 in (6 mm in a metric job).',
    ),
});

export type WrittenCutter = Readonly<z.infer<typeof cutter>>;
export type WrittenCutting = Readonly<z.infer<typeof cutting>>;
