/** What a job file may say of the package: all that goes into the frame beside mats and pictures. */
import * as z from 'zod';
import { length } from './written-lengths';
import { density, quality, thicknesses } from './written-material';

export const GLAZINGS = ['glass', 'acrylic', 'polycarbonate', 'none'] as const;
export const HINGINGS = ['paper hinges', 'corners', 'edge strips', 'self-adhesive tape', 'glued down', 'none'] as const;
export const BACKINGS = [
  'foam board',
  'corrugated board',
  'mat board',
  'hardboard',
  'plywood',
  'polypropylene board',
  'other',
  'none',
] as const;
export const FIXINGS = ['points', 'brads', 'bent tabs', 'turn buttons', 'groove', 'offset clips', 'screws'] as const;

const item = { thickness: length.optional(), ...thicknesses };

export const framePackage = z
  .strictObject({
    glazing: z
      .strictObject({
        material: z.enum(GLAZINGS).optional().describe('Default "glass".'),
        ...item,
        thickness: length.optional().describe('Default 2.5 mm.'),
        uvFilter: z.boolean().optional().describe('True where it keeps back ultraviolet. Default false.'),
        antistatic: z.boolean().optional().describe('True where its maker treats it so that it holds no charge.'),
        density: density.optional(),
      })
      .optional(),
    spacer: z
      .strictObject({
        board: z
          .string()
          .max(200)
          .optional()
          .describe('Mat board that it is cut from. Default strips that are bought.'),
        ...item,
        thickness: length.describe('How far it holds the glazing off.'),
      })
      .optional()
      .describe('A strip round the edge that holds the glazing off. Default none.'),
    hinging: z
      .strictObject({
        method: z.enum(HINGINGS).optional().describe('How the picture is held. Default unknown.'),
        ...item,
        thickness: length.optional().describe('What it adds to the picture. Default 0.2 mm; nothing for "none".'),
      })
      .optional(),
    mountBoard: z
      .strictObject({
        without: z.boolean().optional().describe('True where there is none.'),
        board: z.string().max(200).optional().describe('What it is called on your shelf.'),
        ...item,
        thickness: length.optional().describe('Default 1/16 in (1.5 mm in a metric job).'),
        quality: quality.optional(),
        density: density.optional(),
      })
      .optional()
      .describe('What the picture is mounted on. Pictures on canvas or panel have none.'),
    backing: z
      .strictObject({
        material: z.enum(BACKINGS).optional().describe('Default "foam board".'),
        ...item,
        thickness: length.optional().describe('Default 3/16 in (5 mm in a metric job).'),
        quality: quality.optional(),
        density: density.optional(),
      })
      .optional(),
    fixing: z
      .strictObject({
        kind: z
          .enum(FIXINGS)
          .optional()
          .describe(
            'What holds it all in. Default "points"; "offset clips" for a canvas or panel; "groove" or "turn buttons" in a frame with a back; "screws" in a float frame.',
          ),
        room: length
          .optional()
          .describe(
            'What it needs in the rabbet behind the backing. Default 1/8 in (3 mm in a metric job) for points, brads and bent tabs, else nothing.',
          ),
        screw: length.optional().describe('Length of its screws. Default unknown.'),
      })
      .optional(),
    sealed: z
      .boolean()
      .optional()
      .describe('True where the edges of the package are taped against dust. Default false.'),
    dustCover: z
      .boolean()
      .optional()
      .describe(
        'Whether the back is closed with paper. Default true for an open back, of a deep frame too, behind which nothing stands out.',
      ),
  })
  .meta({
    id: 'Package',
    description: 'From the front: glazing, spacer, mats, picture, mount board, backing, fixing.',
  });

export type WrittenPackage = Readonly<z.infer<typeof framePackage>>;
