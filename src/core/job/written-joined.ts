/** What a job file may say of openings joined to a window. */
import * as z from 'zod';
import { place, size } from './written-lengths';
import { shape } from './written-shape';

export const MOST_JOINED = 12;

export const joinedPart = z
  .strictObject({
    title: z.string().max(200).optional().describe('What is seen there, such as a caption.'),
    size,
    shape: shape.optional(),
    turned: z
      .union([z.literal(90), z.literal(180), z.literal(270)])
      .optional()
      .describe('Degrees anticlockwise by which the opening is turned.'),
    mirrored: z
      .boolean()
      .optional()
      .describe('True where its shape is turned over, left for right, before it is turned.'),
    at: place
      .optional()
      .describe(
        'From the edges of the window it is joined to, inward; what is negative reaches out of it. One across and one up; what is left out is centred.',
      ),
  })
  .meta({
    id: 'Joined',
    description: 'A further opening that overlaps or touches a window and becomes one opening with it.',
  });

export type WrittenJoined = z.infer<typeof joinedPart>;
