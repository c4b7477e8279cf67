/** What a job file may say of how the finished frame hangs: what it hangs by, where that sits, what it weighs. */
import * as z from 'zod';
import { length } from './written-lengths';
import { mass } from './written-material';

export const HANGERS = ['by size', 'sawtooth', 'rings and wire', 'rings on hooks', 'cleat'] as const;

/** What is round the picture, as far as it changes how it may hang. */
export const SURROUNDINGS = [
  'plaster',
  'masonry',
  'stud wall',
  'above a bed or seat',
  'above heat',
  'earthquake country',
  'children',
] as const;

const name = z.string().max(200).optional().describe('What it is called on your shelf.');
const load = mass.optional().describe("The maker's rated load of one. Default unknown.");

export const hooks = z.union([z.literal(1), z.literal(2)]);

export const hanging = z
  .strictObject({
    hanger: z
      .enum(HANGERS)
      .optional()
      .describe(
        '"by size": a sawtooth hanger for what is small and light, a cleat for what is heavy, rings and wire for all else; "rings on hooks": each ring on a hook of its own, without wire. Default "by size".',
      ),
    hooks: hooks.optional().describe('How many points on the wall. Default 2, of a sawtooth hanger 1.'),
    hooksApart: length
      .optional()
      .describe(
        'Between two hooks. Default half the distance between the rings, or more where the wire would rise by less than 30 degrees; without wire the whole of it.',
      ),
    hangerDown: length
      .optional()
      .describe(
        'From the top of the frame to where ring, teeth or cleat take the load. Default about three tenths of the height, of sawtooth and cleat the middle of the upper rail.',
      ),
    hangerIn: length
      .optional()
      .describe("From the frame's outer edge in to the middle of a ring. Default the middle of the wood."),
    wireBelowTop: length
      .optional()
      .describe(
        'From the top of the frame down to the top of the taut wire. Default 2 in (50 mm in a metric job), of a small frame half way down to the rings.',
      ),
    wire: z
      .strictObject({
        name,
        load,
        breaksAt: mass.optional().describe('Where it breaks. Default unknown.'),
        margin: z
          .number()
          .min(1)
          .max(100)
          .optional()
          .describe('How many times the load it must be able to take before it breaks. Default 5.'),
      })
      .optional(),
    knots: length
      .optional()
      .describe('Wire that each end takes for its knot and twist. Default 4 in (100 mm in a metric job).'),
    hook: z
      .strictObject({
        name,
        load,
        seat: length
          .optional()
          .describe("From the nail's hole down to where the wire or ring sits. Default unknown: then no hole is told."),
        standOff: length
          .optional()
          .describe('How far off the wall it holds the wire. Default 1/8 in (3 mm in a metric job).'),
      })
      .optional()
      .describe('On the wall.'),
    fitting: z
      .strictObject({
        name,
        load,
        width: length.optional().describe('Of its plate. Default unknown.'),
      })
      .optional()
      .describe('On the frame: a ring on its plate, a sawtooth hanger, a cleat.'),
    outOfLevel: length
      .optional()
      .describe('How far one hook or ring may sit lower than the other. Default 1/8 in (3 mm in a metric job).'),
    weight: mass.optional().describe('Of the finished frame, weighed. Default: reckoned from its parts.'),
    bumpers: length.optional().describe('Thickness of the bumpers at the lower corners. Default 0: none.'),
    surroundings: z.array(z.enum(SURROUNDINGS)).optional().describe('What is round it. Default nothing is known.'),
  })
  .meta({ id: 'Hanging', description: 'How the finished frame hangs.' });

export type WrittenHanging = Readonly<z.infer<typeof hanging>>;
